package main

import (
	"bytes"
	"context"
	"encoding/csv"
	"encoding/json"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"strake/examples"
)

// layFile is plan.json as anybody could read it, in ticks of 125 nm.
type layFile struct {
	Kerf int64
	Runs []struct {
		ID, Row, Order int
		Outline        []int64
		Pieces         []int
	}
	Pieces []struct {
		ID, Run, Board int
		Outline        []int64
		Left, Right    string
		Behind, Ahead  string
	}
	Boards []struct {
		ID            int
		Length, Width int64
	}
}

// span is how far an outline reaches along the rows.
func span(outline []int64) int64 {
	lo, hi := int64(math.MaxInt64), int64(math.MinInt64)
	for i := 0; i < len(outline); i += 2 {
		lo, hi = min(lo, outline[i]), max(hi, outline[i])
	}
	return hi - lo
}

// Totals of every list, worked out again from plan.json by other means: the pieces and
// rows of rows.csv, the cuts of cuts.csv, the boards of fasteners.csv and of the
// summary, the figures on row cards.
func TestTotalsFromPlanJSON(t *testing.T) {
	for _, name := range []string{"ferry-parlour", "ticket-office", "sail-loft", "keepers-kitchen"} {
		dir := t.TempDir()
		data, err := examples.Read(name)
		if err != nil {
			t.Fatal(err)
		}
		job := filepath.Join(dir, "job.yaml")
		if err := os.WriteFile(job, data, 0o600); err != nil {
			t.Fatal(err)
		}
		var out, errs bytes.Buffer
		if code := run([]string{"plan", job, "-o", dir}, rim{ctx: context.Background(), out: &out, err: &errs}); code != exitOK {
			t.Fatalf("%s: %d\n%s%s", name, code, out.String(), errs.String())
		}
		tick := 125e-6 / 25.4 // in inches
		if !strings.Contains(string(data), "unit: in") && !strings.Contains(string(data), "unit: ft") {
			tick = 125e-6
		}
		holdTotals(t, name, dir, out.String(), tick)
	}
}

func holdTotals(t *testing.T, name, dir, summary string, tick float64) {
	t.Helper()
	var l layFile
	data, err := os.ReadFile(filepath.Join(dir, "plan.json"))
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(data, &l); err != nil {
		t.Fatal(err)
	}
	var long float64
	for _, p := range l.Pieces {
		long += float64(span(p.Outline)) * tick
	}
	var rows float64
	for _, r := range l.Runs {
		rows += float64(span(r.Outline)) * tick
	}
	head, lines := csvOf(t, filepath.Join(dir, "rows.csv"))
	unit := "in"
	if tick == 125e-6 {
		unit = "mm"
	}
	near := func(what string, got, want float64) {
		t.Helper()
		if math.Abs(got-want) > 1e-3*float64(len(lines)) {
			t.Errorf("%s: %s %.3f, by plan.json %.3f", name, what, got, want)
		}
	}
	if len(lines) != len(l.Pieces) {
		t.Errorf("%s: %d pieces in rows.csv, plan.json has %d", name, len(lines), len(l.Pieces))
	}
	near("length of pieces in rows.csv", sum(t, head, lines, "length, "+unit, nil), long)
	seen := map[string]bool{}
	near("length of rows in rows.csv", sum(t, head, lines, "row length, "+unit, func(line []string) bool {
		first := !seen[line[0]]
		seen[line[0]] = true
		return first
	}), rows)

	// A sawn end is one that is neither as the mill made it nor as it was butted on.
	sawn, ripped := 0, 0
	for _, p := range l.Pieces {
		for _, e := range []string{p.Left, p.Right} {
			if e == "cut" {
				sawn++
			}
		}
		if p.Behind == "ripped" || p.Ahead == "ripped" {
			ripped++
		}
	}
	_, cuts := csvOf(t, filepath.Join(dir, "cuts.csv"))
	count := map[string]int{}
	for _, c := range cuts {
		count[c[0]]++
	}
	if got := count["crosscut"] + count["mitre"]; got < sawn {
		t.Errorf("%s: %d ends in cuts.csv, plan.json has %d that are cut", name, got, sawn)
	}
	if count["rip"] != ripped {
		t.Errorf("%s: %d rips in cuts.csv, plan.json has %d pieces ripped", name, count["rip"], ripped)
	}
	if m := regexp.MustCompile(`(\d+) boards used`).FindStringSubmatch(summary); m == nil || m[1] != strconv.Itoa(len(l.Boards)) {
		t.Errorf("%s: the summary says %v boards, plan.json has %d", name, m, len(l.Boards))
	}
	head, lines = csvOf(t, filepath.Join(dir, "fasteners.csv"))
	if got := sum(t, head, lines, "boards", nil); int(got) != len(l.Pieces) {
		t.Errorf("%s: fasteners.csv counts %v boards in rows, plan.json has %d pieces", name, got, len(l.Pieces))
	}
	if len(lines) != len(l.Runs) {
		t.Errorf("%s: %d rows in fasteners.csv, plan.json has %d", name, len(lines), len(l.Runs))
	}
}

func csvOf(t *testing.T, file string) (head []string, lines [][]string) {
	t.Helper()
	f, err := os.Open(file)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	all, err := csv.NewReader(f).ReadAll()
	if err != nil || len(all) == 0 {
		t.Fatal(file, err)
	}
	return all[0], all[1:]
}

// sum adds up a column, of the lines that count.
func sum(t *testing.T, head []string, lines [][]string, column string, counts func([]string) bool) float64 {
	t.Helper()
	at := -1
	for i, h := range head {
		if h == column {
			at = i
		}
	}
	if at < 0 {
		t.Fatalf("no column %q in %q", column, head)
	}
	s := 0.0
	for _, l := range lines {
		if counts != nil && !counts(l) || l[at] == "" {
			continue
		}
		x, err := strconv.ParseFloat(l[at], 64)
		if err != nil {
			t.Fatal(err)
		}
		s += x
	}
	return s
}
