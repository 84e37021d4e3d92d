package examples_test

import (
	"context"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"strake/drawing"
	"strake/finding"
	"strake/floor"
	"strake/jobfile"
	"strake/lay"
	"strake/plan"
	"strake/row"
	"strake/setout"
)

// The case rooms: floors that go wrong in practice, each planned, passed by the
// checker, and showing what it stands for.
func TestCases(t *testing.T) {
	for name, shows := range map[string]func(p plan.Plan, c plan.Choices) bool{
		"ring-hall": func(p plan.Plan, _ plan.Choices) bool { // the two arms meet beyond the core
			return len(p.Layout.Closures) == 1 && p.Layout.Closures[0].Loop && told(p, "fronts that meet")
		},
		"closet-behind": func(p plan.Plan, _ plan.Choices) bool {
			return len(p.Layout.Splines) == 1 && slices.ContainsFunc(p.Lay.Zones, func(z lay.Zone) bool { return z.Ahead < 0 })
		},
		"hearth-askew": func(p plan.Plan, _ plan.Choices) bool {
			n := 0
			for _, z := range p.Lay.Zones {
				if z.Kind == lay.Frame {
					n++
				}
			}
			return n == 3
		},
		"three-rooms": func(p plan.Plan, _ plan.Choices) bool {
			return len(setout.Stages(p)) == 4 && len(setout.DoorLines(p)) == 3
		},
		"trapezoid": func(p plan.Plan, c plan.Choices) bool { // half of the taper at each wall, or all at one
			return len(c.Candidates) > 1 && len(c.Candidates[0].Score.Tapers) == 2 &&
				slices.ContainsFunc(c.Candidates, func(k row.Candidate) bool { return len(k.Score.Tapers) == 1 })
		},
		"bay-window": func(p plan.Plan, _ plan.Choices) bool {
			return slices.ContainsFunc(p.Lay.Runs, func(r lay.Run) bool { return r.LeftEnd.Mitred || r.RightEnd.Mitred })
		},
		"galley": func(p plan.Plan, c plan.Choices) bool {
			return slices.ContainsFunc(c.Candidates, func(k row.Candidate) bool { return k.Score.Joists == row.AlongJoists }) &&
				slices.ContainsFunc(c.Candidates, func(k row.Candidate) bool { return k.Score.Joists == row.AcrossJoists })
		},
		"mixed-widths": func(p plan.Plan, _ plan.Choices) bool { // rows of four widths in turn
			return len(p.Layout.Courses().Widths) == 6 && told(p, "rows of several widths") && told(p, "boards left over")
		},
		"between-old-floors": func(p plan.Plan, _ plan.Choices) bool {
			return told(p, "joining an old floor") && slices.ContainsFunc(p.Floor.Edges, func(e floor.Edge) bool { return e.Kind == floor.Flush })
		},
	} {
		t.Run(name, func(t *testing.T) {
			data, err := os.ReadFile(filepath.Join("cases", name+".yaml"))
			if err != nil {
				t.Fatal(err)
			}
			j, _, err := jobfile.ReadJob(name, data)
			if err != nil {
				t.Fatal(err)
			}
			p := plan.MakeWithin(context.Background(), j, 1_000_000)
			for _, f := range p.Findings {
				if f.Level == finding.Stop {
					t.Error(f)
				}
			}
			if !shows(p, plan.Choose(j)) {
				t.Errorf("does not show what it is for: %d splines, closures %v", len(p.Layout.Splines), p.Layout.Closures)
			}
			if s := drawing.Floor(p); len(s.Items) < 50 {
				t.Errorf("the drawing has %d items", len(s.Items))
			}
		})
	}
	files, _ := filepath.Glob("cases/*.yaml")
	if len(files) != 9 {
		t.Errorf("%d case files", len(files))
	}
}

func told(p plan.Plan, rule string) bool {
	return slices.ContainsFunc(p.Findings, func(f finding.Finding) bool { return strings.HasPrefix(f.Rule, rule) })
}
