package plan_test

import (
	"math"
	"strings"
	"testing"

	"strake/plan"
	"strake/plane"
	"strake/room"
	"strake/row"
	"strake/survey"
	"strake/tape"
	"strake/words"
)

func ripAt(t *testing.T, p plan.Plan, edge string, above bool) row.Rip {
	t.Helper()
	for _, r := range p.Layout.Rips {
		if r.Edge == edge && r.Above == above {
			return r
		}
	}
	t.Fatalf("no rip at %s in %v", edge, p.Layout.Rips)
	return row.Rip{}
}

// The rip at a hearth's front is in doubt by the width to the wall that it
// stands against, by its depth as the tape reads it off a wall that is not quite
// straight, and by the row width, once for each row. By hand: 0.17 mm of the
// tape, 0.8 mm of hook, 1/16 in of rounding and 1.5 mm of wall are 1.77 mm.
func TestDoubtAtHearth(t *testing.T) {
	j := roomJob(180, 144, 5, 0.75, 0.5, 0.75)
	j.Boards.TenBoards = in(50)
	j.Sketch.Stays = []room.Stay{{Name: "hearth", Kind: room.Hearth, Meets: room.MeetsFlush,
		Wall: room.Wall{"C", "D"}, From: "C", At: in(60), Width: in(50), Depth: in(20)}}
	p := plan.Rows(j)
	ends, ok := p.Survey.Across(survey.AlongWall(room.Wall{"A", "B"}), room.Wall{"A", "B"}, room.Wall{"C", "D"})
	if !ok {
		t.Fatal("no width across")
	}
	r, first := ripAt(t, p, "hearth", false), ripAt(t, p, "wall A-B", true)
	n := float64(r.Row - first.Row)
	want := math.Hypot(math.Hypot(ends[0].SD, 1.77), n*j.Boards.PitchSD().Millimetres())
	if got := r.SD.Millimetres(); math.Abs(got/want-1) > 0.1 {
		t.Errorf("doubt at the hearth %.2f mm, by hand %.2f", got, want)
	}
	if s := words.RipWidths(r, words.In(j.Unit)); !strings.Contains(s, " ± ") {
		t.Errorf("printed without its doubt: %s", s)
	}
}

// A column set out from a side wall: the rip below it hangs on one distance
// along that wall, the rip above it on two.
func TestDoubtAtColumn(t *testing.T) {
	j := roomJob(180, 144, 5, 0.75, 0.5, 0.75)
	j.Boards.TenBoards = in(50)
	j.Sketch.Stays = []room.Stay{{Name: "column", Kind: room.Column, Meets: room.MeetsGap, Cover: in(0.75),
		Wall: room.Wall{"B", "C"}, From: "B", At: in(60), Off: in(70), Width: in(24), Depth: in(24)}}
	p := plan.Rows(j)
	pitch := j.Boards.PitchSD().Millimetres()
	first := ripAt(t, p, "wall A-B", true)
	turn := p.Survey.SD(func(at func(string) plane.XY) float64 {
		u, v := at("A").Sub(at("B")), at("C").Sub(at("B"))
		return u.Unit().Dot(v.Unit()) // a small angle off square
	})
	one := math.Sqrt(0.17*0.17 + 0.8*0.8 + math.Pow(tape.Sixteenth.Millimetres(), 2)/12)
	for _, c := range []struct {
		above bool
		reads float64
	}{{false, 1}, {true, 2}} {
		r := ripAt(t, p, "column", c.above)
		// Wall B-C turns on B, and the column stands 94 in off it; the tape's own
		// scale moves 60 to 84 in by 0.2 mm.
		own := math.Hypot(math.Hypot(one*math.Sqrt(c.reads), 0.22), turn*in(94).Millimetres())
		want := math.Hypot(own, float64(r.Row-first.Row)*pitch)
		if got := r.SD.Millimetres(); math.Abs(got/want-1) > 0.1 {
			t.Errorf("above %v: doubt %.3f mm, by hand %.3f", c.above, got, want)
		}
	}
}

// What settles a closing row in doubt is a width that a tape can reach: clear of
// a cabinet that stands at one end of it.
func TestSettledClearOfCabinet(t *testing.T) {
	j := roomJob(180, 141.9, 5, 0.75, 0.5, 0.5)
	j.Boards.TenBoards = in(50)
	j.Tape = survey.Tape()
	j.Tape.HookMM = 6
	j.Limits.NarrowestRip.Value = in(1.75)
	j.Sketch.Stays = []room.Stay{{Name: "cabinet", Kind: room.Cabinet, Meets: room.MeetsGap, Cover: in(1),
		Wall: room.Wall{"B", "C"}, From: "B", At: in(60), Width: in(40), Depth: in(24)}}
	for _, f := range plan.Rows(j).Findings {
		if strings.HasSuffix(f.Rule, "in doubt") && strings.Contains(f.Where, "wall C-D") {
			if !strings.Contains(f.Do, "clear of the cabinet") {
				t.Errorf("what settles it: %s", f.Do)
			}
			return
		}
	}
	t.Error("no row at wall C-D is in doubt")
}
