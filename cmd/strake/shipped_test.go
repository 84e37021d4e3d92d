package main

import (
	"bytes"
	"context"
	"encoding/csv"
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
)

// layFile is plan.json as anybody could read it, in ticks of 125 nm.
type layFile struct {
	Kerf  int64
	Zones []struct {
		ID, Ahead int
		Kind      string
		Dir       [2]float64
	}
	Runs []struct {
		ID, Zone, Row, Part, Order int
		Low, High                  int64
		Outline                    []int64
		Pieces                     []int
	}
	Pieces []layPiece
	Boards []struct {
		ID            int
		Length, Width int64
		Parts         []struct {
			Kind    string
			Outline []int64
		}
	}
}

// layPiece is a piece: its outline on the floor and in its board, and what its sides are.
type layPiece struct {
	ID, Run, Board int
	Outline        []int64
	InBoard        []int64 `json:"in_board"`
	Turned         bool
	Off            []int64
	Left, Right    string
	Behind, Ahead  string
}

// shippedPlan is what strake plan writes for a shipped job.
type shippedPlan struct {
	name    string
	job     string
	summary string
	files   map[string][]byte
	lay     layFile
	unit    string  // in or mm, as lists have it
	tick    float64 // of plan.json, in that unit
}

var shippedPlans = sync.OnceValues(func() ([]shippedPlan, error) {
	var out []shippedPlan
	jobs, _ := filepath.Glob("../../examples/*.yaml")
	cases, _ := filepath.Glob("../../examples/cases/*.yaml")
	for _, job := range append(jobs, cases...) {
		p, err := planOf(job)
		if err != nil {
			return nil, err
		}
		out = append(out, p)
	}
	return out, nil
})

// shipped plans every job of examples once, without the packet.
func shipped(t *testing.T) []shippedPlan {
	t.Helper()
	if testing.Short() {
		t.Skip("SKIPPED with -short: thirteen jobs are planned")
	}
	out, err := shippedPlans()
	if err != nil || len(out) < 13 {
		t.Fatalf("%d jobs planned: %v", len(out), err)
	}
	return out
}

func planOf(job string) (shippedPlan, error) {
	p := shippedPlan{name: strings.TrimSuffix(filepath.Base(job), ".yaml"), files: map[string][]byte{}, unit: "in", tick: 125e-6 / 25.4}
	data, err := os.ReadFile(job)
	if err != nil {
		return p, err
	}
	p.job = string(data)
	if !strings.Contains(p.job, "unit: in") && !strings.Contains(p.job, "unit: ft") {
		p.unit, p.tick = "mm", 125e-6
	}
	dir, err := os.MkdirTemp("", "strake-shipped")
	if err != nil {
		return p, err
	}
	defer os.RemoveAll(dir)
	var out, errs bytes.Buffer
	if code := run([]string{"plan", job, "-o", dir, "--paper", "none"}, rim{ctx: context.Background(), out: &out, err: &errs}); code != exitOK {
		return p, &os.PathError{Op: "plan", Path: job + ": " + out.String() + errs.String(), Err: os.ErrInvalid}
	}
	p.summary = out.String()
	entries, err := os.ReadDir(dir)
	if err != nil {
		return p, err
	}
	for _, e := range entries {
		if p.files[e.Name()], err = os.ReadFile(filepath.Join(dir, e.Name())); err != nil {
			return p, err
		}
	}
	return p, json.Unmarshal(p.files["plan.json"], &p.lay)
}

// csv is a list as records by the heads of their columns.
func (p shippedPlan) csv(t *testing.T, name string) []map[string]string {
	t.Helper()
	all, err := csv.NewReader(bytes.NewReader(p.files[name])).ReadAll()
	if err != nil || len(all) == 0 {
		t.Fatalf("%s: %s: %d lines, %v", p.name, name, len(all), err)
	}
	var out []map[string]string
	for _, line := range all[1:] {
		m := map[string]string{}
		for i, h := range all[0] {
			m[h] = line[i]
		}
		out = append(out, m)
	}
	return out
}

// box is how far an outline reaches.
func box(outline []int64) (x0, y0, x1, y1 int64) {
	x0, y0, x1, y1 = math.MaxInt64, math.MaxInt64, math.MinInt64, math.MinInt64
	for i := 0; i < len(outline); i += 2 {
		x0, x1 = min(x0, outline[i]), max(x1, outline[i])
		y0, y1 = min(y0, outline[i+1]), max(y1, outline[i+1])
	}
	return x0, y0, x1, y1
}

// span is how far an outline reaches along the rows.
func span(outline []int64) int64 {
	x0, _, x1, _ := box(outline)
	return x1 - x0
}

// areaOf is the area of an outline in square ticks.
func areaOf(outline []int64) float64 {
	s := 0.0
	n := len(outline)
	for i := 0; i < n; i += 2 {
		x, y, u, v := outline[i], outline[i+1], outline[(i+2)%n], outline[(i+3)%n]
		s += float64(x)*float64(v) - float64(u)*float64(y)
	}
	return s / 2
}

func quietRim(out *bytes.Buffer) rim {
	return rim{ctx: context.Background(), out: out, err: out}
}

func isFile(name string) bool {
	_, err := os.Stat(name)
	return err == nil
}

func fileOf(t *testing.T, dir, name string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(dir, name))
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}
