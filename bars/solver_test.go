//go:build solver

package bars

import (
	"fmt"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"strake/tape"
)

// weight is what a bar more counts against length, in inches.
const weight = 100_000

// program is a case as an integer program in CPLEX LP form: each piece in one bar,
// each bar of at most one length, few bars first, then little length.
func program(a Ask) string {
	var goal, rows, ints []string
	n, k := len(a.Pieces), len(a.Pieces)
	for j := range k {
		var one, load []string
		for l, s := range a.Sold {
			y := fmt.Sprintf("y%d_%d", j, l)
			goal = append(goal, fmt.Sprintf("%d %s", weight+int(s/in), y))
			one = append(one, y)
			load = append(load, fmt.Sprintf("- %g %s", (s+a.Kerf).Inches(), y))
			ints = append(ints, y)
		}
		rows = append(rows, strings.Join(one, " + ")+" <= 1")
		sum := ""
		for i := range n {
			sum += fmt.Sprintf(" + %g x%d_%d", (a.Pieces[i] + a.Kerf).Inches(), i, j)
			ints = append(ints, fmt.Sprintf("x%d_%d", i, j))
		}
		rows = append(rows, sum+" "+strings.Join(load, " ")+" <= 0")
	}
	for i := range n {
		var in []string
		for j := range k {
			in = append(in, fmt.Sprintf("x%d_%d", i, j))
		}
		rows = append(rows, strings.Join(in, " + ")+" = 1")
	}
	return "Minimize\n obj: " + strings.Join(goal, " + ") + "\nSubject To\n " + strings.Join(rows, "\n ") + "\nBinary\n " + strings.Join(ints, "\n ") + "\nEnd\n"
}

// The fewest bars and their least length are those that CBC (COIN-OR) proves.
func TestBarsAgainstCBC(t *testing.T) {
	cbc, err := exec.LookPath("cbc")
	if err != nil {
		t.Skip("SKIPPED: cbc (Debian package coinor-cbc) is not installed, so nothing was held against it")
	}
	r := rand.New(rand.NewPCG(8, 4))
	d := t.TempDir()
	for i := range 25 {
		a := random(r, 11)
		slices.Sort(a.Sold)
		a.Sold = slices.Compact(a.Sold)
		p, out := filepath.Join(d, "case.lp"), filepath.Join(d, "case.sol")
		if err := os.WriteFile(p, []byte(program(a)), 0o600); err != nil {
			t.Fatal(err)
		}
		if log, err := exec.Command(cbc, p, "ratio", "0", "allow", "0", "sec", "120", "solve", "solution", out, "quit").CombinedOutput(); err != nil {
			t.Fatalf("%v: %s", err, log)
		}
		sol, err := os.ReadFile(out)
		if err != nil {
			t.Fatal(err)
		}
		var value float64
		if _, err := fmt.Sscanf(string(sol), "Optimal - objective value %g", &value); err != nil {
			t.Fatalf("case %d is not solved: %.80s", i, sol)
		}
		got := Of(a)
		if mine := len(got.Bars)*weight + int(got.Bought/tape.Inch); !got.Proved || mine != int(value+0.5) {
			t.Errorf("case %d %+v: %d (proved %v), CBC %g", i, a, mine, got.Proved, value)
		}
	}
}
