package main

import (
	_ "embed"
	"fmt"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"time"
)

// solver is a program that can be had here, and how its log is read.
type solver struct {
	name  string
	call  func(path string, limit int) *exec.Cmd
	lines *regexp.Regexp // value and seconds of each better solution
	done  string         // in the log when the best is proved
}

// solved is what a solver says of a floor.
type solved struct {
	name          string
	value         float64 // +Inf: none found
	first, proved float64 // seconds; +Inf: not in the time allowed
}

//go:embed highs.mjs
var driver []byte

// found are the solvers at hand, and in words those that are not.
func found(highs, dir string) (have []solver, skipped []string) {
	folder, _ := filepath.Abs(highs)
	script := filepath.Join(dir, "highs.mjs")
	_, node := exec.LookPath("node")
	if _, err := os.Stat(filepath.Join(folder, "node_modules", "highs")); highs != "" && err == nil && node == nil && os.WriteFile(script, driver, 0o600) == nil {
		have = append(have, solver{
			name:  "HiGHS",
			call:  func(p string, t int) *exec.Cmd { return exec.Command("node", script, folder, p, strconv.Itoa(t)) },
			lines: regexp.MustCompile(`(?m)^ .{60,}?\s(-?[\d.e+]+)\s+(?:Large|inf|[\d.]+%)\s+\d+\s+\d+\s+\d+\s+\d+\s+([\d.]+)s$`),
			done:  "status Optimal",
		})
	} else {
		skipped = append(skipped, "HiGHS (wants node and the npm package highs)")
	}
	if _, err := exec.LookPath("cbc"); err == nil {
		have = append(have, solver{
			name: "CBC",
			call: func(p string, t int) *exec.Cmd {
				return exec.Command("cbc", p, "sec", strconv.Itoa(t), "solve", "quit")
			},
			lines: regexp.MustCompile(`Integer solution of (-?[\d.e+]+) found.*\(([\d.]+) seconds\)`),
			done:  "Result - Optimal solution found",
		})
	} else {
		skipped = append(skipped, "CBC (wants the Debian package coinor-cbc)")
	}
	return
}

// solve runs the solver and reads its log.
func (v solver) solve(path string, limit int) solved {
	start := time.Now()
	log, err := v.call(path, limit).CombinedOutput()
	all := time.Since(start).Seconds()
	out := solved{v.name, math.Inf(1), math.Inf(1), math.Inf(1)}
	if err != nil {
		fmt.Fprintln(os.Stderr, v.name, "failed:", err)
	}
	for _, m := range v.lines.FindAllStringSubmatch(string(log), -1) {
		value, _ := strconv.ParseFloat(m[1], 64)
		seconds, _ := strconv.ParseFloat(m[2], 64)
		if value < out.value-1e-6 {
			out.value, out.first = math.Round(value*1e6)/1e6, seconds
		}
	}
	if strings.Contains(string(log), v.done) {
		out.proved = all
	}
	// A best found without a search has no line of its own.
	if m := final.FindStringSubmatch(string(log)); m != nil {
		if value, _ := strconv.ParseFloat(m[1], 64); value < out.value-1e-6 {
			out.value, out.first = value, all
		}
	}
	return out
}

var final = regexp.MustCompile(`(?m)^(?:Objective value:|objective)\s+(-?[\d.e+]+)$`)

func seconds(x float64, none string) string {
	if math.IsInf(x, 1) {
		return none
	}
	return fmt.Sprintf("%.2f s", x)
}

func (s solved) firstText() string  { return seconds(s.first, "") }
func (s solved) provedText() string { return seconds(s.proved, "not proved") }

func (s solved) valueText() string {
	if math.IsInf(s.value, 1) {
		return "none"
	}
	return fmt.Sprintf("%g", s.value)
}
