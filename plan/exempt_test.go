package plan_test

import (
	"strings"
	"testing"

	"strake/check"
	"strake/finding"
	"strake/lay"
	"strake/plan"
	"strake/tape"
)

// ripFindings are what the checker says of narrow rips under this limit, with
// wall A-B and the wall across exempt down to a figure.
func ripFindings(p plan.Plan, limit, to tape.Length, why string) (stops []string) {
	lim := p.Job.Limits
	lim.NarrowestRip.Value = limit
	l := p.Lay
	l.Exempt = nil
	for _, w := range []string{"wall A-B", "wall C-D"} {
		l.Exempt = append(l.Exempt, lay.Exemption{Rule: "narrowest rip", Run: -1, Edge: w, To: to, Why: why})
	}
	for _, f := range check.Lay(l, p.Floor, lim, p.Job.Boards) {
		if f.Rule == "narrowest rip" && f.Level == finding.Stop {
			stops = append(stops, f.Do)
		}
	}
	return stops
}

// A room of 144 in has two rips of 3-3/4 in from 5 in boards at best. An
// exemption stands only where no start line keeps the limit, and only down to
// its figure: the lay's word alone is not enough.
func TestExemptionsAreProved(t *testing.T) {
	p := made(t, roomJob(180, 144, 5, 0.75, 0.5, 0.5))
	if got := ripFindings(p, in(4), in(3.75), "none does"); len(got) != 0 {
		t.Errorf("4 in cannot be kept by any start: %v", got)
	}
	if got := ripFindings(p, in(4), in(3.8), "none does"); len(got) != 2 || !strings.Contains(got[0], "narrower than it says") {
		t.Errorf("narrower than the figure: %v", got)
	}
	// The same room laid with a sliver, though 3-3/4 in was to be had.
	j := roomJob(180, 144, 5, 0.75, 0.5, 0.5)
	j.Limits.NarrowestRip.Value = in(0.5)
	j.Wishes.EdgeOn = "E" // a corner just inside, so that the start rip is 1 in
	j.Sketch.Points = append(j.Sketch.Points, pointAt("E", 1.75))
	q := made(t, j)
	if w := q.Layout.Rips[0].Narrowest; w >= in(2) {
		t.Fatalf("the start rip is %v: the wish was not kept", w)
	}
	if got := ripFindings(q, in(2), in(0.5), "I say so"); len(got) == 0 || !strings.Contains(got[0], "some start line keeps every rip") {
		t.Errorf("an exemption that no need made: %v", got)
	}
}
