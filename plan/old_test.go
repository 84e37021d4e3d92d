package plan_test

import (
	"fmt"
	"strings"
	"testing"

	"strake/check"
	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/plan"
	"strake/tape"
)

// between is a strip between two old floors, rows across it or along them.
func between(offers, more string, angle float64) string {
	return fmt.Sprintf(`strake: 1
rooms: {strip: {corners: [A, B, C, D]}}
readings: {A-B: 64, B-C: 120, C-D: 64, D-A: 120, A-C: 136, B-D: 136}
doorways:
  west: {wall: D-A, from: A, at: 12, width: 96, thickness: 3, ends: 2, beyond: flush, old_floor: {offers: %s, row_width: 5, row_edge_at: 24}}
boards: {face: 5, thickness: 3/4, side_tongue: 1/4, end_tongue: 1/4, lengths: {mix: {least: 12, most: 84, mean: 42}}}
base: 1/2
shoe: 3/4
wishes: {rows_along: A-B, turned_by: %v%s}
`, offers, angle, more)
}

// atOld are the row ends of a plan at the old floor, with how each is made.
func atOld(p plan.Plan) map[lay.Profile]int {
	out := map[lay.Profile]int{}
	for _, r := range p.Lay.Runs {
		if first := p.Lay.Pieces[r.Pieces[0]]; r.LeftEnd.Edge == "doorway west" {
			out[first.Left]++
		}
		if last := p.Lay.Pieces[r.Pieces[len(r.Pieces)-1]]; r.RightEnd.Edge == "doorway west" {
			out[last.Right]++
		}
	}
	return out
}

// Row ends mate with what the old floor offers, square or slanted: a groove on
// its tongue, a spline in its groove or in the one that is cut into its edge; the
// checker refuses one end that does not.
func TestEndsAtAnOldFloor(t *testing.T) {
	t.Parallel()
	for _, tt := range []struct {
		offers string
		end    lay.Profile
		says   string
	}{
		{"tongue", lay.Groove, "take the tongue of its row ends"},
		{"groove", lay.Spline, "a spline into the groove of its row ends"},
		{"square", lay.Spline, "groove them on the job"},
	} {
		for _, angle := range []float64{0, 20, -37} {
			p := planText(t, between(tt.offers, "", angle))
			for _, f := range p.Findings {
				if f.Level == finding.Stop {
					t.Errorf("%s at %v degrees: %s", tt.offers, angle, f)
				}
			}
			ends := atOld(p)
			if len(ends) != 1 || ends[tt.end] < 14 {
				t.Errorf("%s at %v degrees: ends made %v", tt.offers, angle, ends)
			}
			if f, ok := toldOf(p, "joining an old floor"); !ok || !strings.Contains(f.Do, tt.says) {
				t.Errorf("%s at %v degrees: told %v", tt.offers, angle, f)
			}
			refusesBare(t, p)
		}
	}
}

// refusesBare leaves one end at the old floor as the saw left it.
func refusesBare(t *testing.T, p plan.Plan) {
	t.Helper()
	l := p.Lay
	l.Pieces = append([]lay.Piece(nil), l.Pieces...)
	for _, r := range l.Runs {
		if q := &l.Pieces[r.Pieces[0]]; r.LeftEnd.Edge == "doorway west" && q.InBoard[0].X > 0 {
			q.Left = lay.Cut
			break
		} else if q := &l.Pieces[r.Pieces[len(r.Pieces)-1]]; r.RightEnd.Edge == "doorway west" {
			q.Right = lay.Cut
			break
		}
	}
	for _, f := range check.Lay(l, p.Floor, p.Job.Limits, p.Job.Boards) {
		if f.Rule == "old floor" && f.Level == finding.Stop && strings.Contains(f.Where, "doorway west") {
			return
		}
	}
	t.Error("an end that mates with nothing was let pass")
}

// Named by its doorway, the old floor's row edge is where a row edge lies: wished
// or pinned, without a point in the opening.
func TestRowsRunOnInRegister(t *testing.T) {
	for name, text := range map[string]string{
		"wished": between("groove", ", edge_on: west", 0),
		"pinned": between("groove", "", 0) + "pins: {row_edge_on: west}\n",
		"free":   between("groove", "", 0),
	} {
		p := planText(t, text)
		for _, f := range p.Findings {
			if f.Level == finding.Stop {
				t.Errorf("%s: %s", name, f)
			}
		}
		mark, _ := p.Built.Mark("west")
		if a, _, _ := floor.Jambs(p.Built, [2]string{"D", "A"}, "A", 24*tape.Inch, 0); a.Sub(mark).Len() > 1e-6 {
			t.Errorf("the row edge lies at %v, want %v", mark, a)
		}
		y, c := p.Layout.Dir.ToRow(mark).Y, p.Layout.Courses()
		on := min(y-c.Below(y), c.Above(y)-y) <= tape.Tick
		f, _ := toldOf(p, "joining an old floor")
		if runs := strings.HasPrefix(f.Do, "They run on"); on != (name != "free") || runs != on {
			t.Errorf("%s: in register %v, told %v", name, on, f)
		}
	}
}
