package floor

import (
	"math"
	"testing"

	"strake/finding"
	"strake/limits"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

var style = tape.Style{Unit: tape.UnitInch}

// built is a place with corners in inches.
func built(s room.Sketch, at map[string][2]float64) room.Built {
	b := room.Built{Sketch: s, At: map[string]plane.XY{}}
	for c, p := range at {
		b.At[c] = plane.XY{X: p[0] * 25.4, Y: p[1] * 25.4}
	}
	return b
}

func in(v float64) tape.Length { return tape.Length(math.Round(v * float64(tape.Inch))) }

func sqin(a tape.Area) float64 { return float64(a) / 2 / float64(tape.Inch) / float64(tape.Inch) }

var boards = limits.Default(5*tape.Inch, 3*tape.Inch/4)
var trim = Trim{Base: tape.Inch / 2, Shoe: 3 * tape.Inch / 4}

// A room of 180 by 144 with a doorway of 30 in the wall C-D, in a wall 4-1/2
// thick, the floor ending under the door leaf at 2-1/4:
//
//	D-----[   ]---C
//	|             |
//	A-------------B
func doorRoom(undercut bool) room.Built {
	return built(room.Sketch{
		Rooms: []room.Room{{Name: "room", Corners: []string{"A", "B", "C", "D"}}},
		Doorways: []room.Doorway{{Name: "hall", Wall: room.Wall{"C", "D"}, From: "C", At: in(20), Width: in(30),
			Thickness: in(4.5), Ends: in(2.25), Undercut: undercut, Beyond: room.BeyondTransition}},
	}, map[string][2]float64{"A": {0, 0}, "B": {180, 0}, "C": {180, 144}, "D": {0, 144}})
}

func TestDoorwayInset(t *testing.T) {
	f, fs := New(doorRoom(true), trim, boards, style)
	if len(fs) != 0 {
		t.Fatal(fs)
	}
	a := f.In(plane.Dir{X: 1})
	// Least gaps: walls 3/4 in, jambs -1/2, transition 3/8:
	// 178.5 x 142.5 + (30 + 1) x (3/4 + 2-1/4 - 3/8).
	if got, want := sqin(a.Reach.Area2()), 178.5*142.5+31*2.625; math.Abs(got-want) > 0.01 {
		t.Errorf("reach %.3f sq in, want %.3f", got, want)
	}
	// Greatest: walls 1 in, jambs -1/4, transition 5/8.
	if got, want := sqin(a.Need.Area2()), 178.0*142+30.5*(1+2.25-0.625); math.Abs(got-want) > 0.01 {
		t.Errorf("need %.3f sq in, want %.3f", got, want)
	}
	kinds := map[Kind]int{}
	for i, r := range a.Reach {
		for k := range r {
			e := a.ReachEdge[i][k]
			if e < 0 {
				t.Fatalf("side %d of ring %d comes from no edge", k, i)
			}
			kinds[a.Edges[e].Kind]++
		}
	}
	if kinds[Jamb] != 2 || kinds[Transition] != 1 || kinds[Wall] != 5 {
		t.Errorf("sides by kind: %v", kinds)
	}
}

func TestRoomsThroughDoorwayTurned(t *testing.T) {
	// Two rooms of 120 x 100 through a wall 4 thick; turned by many angles the
	// union stays one ring (rooms that only touch would not).
	for turn := range 40 {
		th := float64(turn) * 0.173
		rot := func(x, y float64) [2]float64 {
			return [2]float64{x*math.Cos(th) - y*math.Sin(th), x*math.Sin(th) + y*math.Cos(th)}
		}
		b := built(room.Sketch{
			Rooms: []room.Room{{Name: "a", Corners: []string{"A", "B", "C", "D"}}, {Name: "b", Corners: []string{"E", "F", "G", "H"}}},
			Doorways: []room.Doorway{{Name: "d", Wall: room.Wall{"B", "C"}, From: "B", At: in(30), Width: in(32), Thickness: in(4),
				Beyond: room.BeyondRoom, OtherWall: room.Wall{"H", "E"}, OtherFrom: "E", OtherAt: in(30)}},
		}, map[string][2]float64{"A": rot(0, 0), "B": rot(120, 0), "C": rot(120, 100), "D": rot(0, 100),
			"E": rot(124, 0), "F": rot(244, 0), "G": rot(244, 100), "H": rot(124, 100)})
		f, _ := New(b, trim, boards, style)
		if len(f.Rings) != 1 || len(f.Edges) == 0 {
			t.Fatalf("turn %d: %d rings", turn, len(f.Rings))
		}
		a := f.In(plane.Dir{X: math.Cos(th), Y: math.Sin(th)})
		want := 2*118.5*98.5 + (32-1.5)*(4+1.5)
		if got := sqin(a.Reach.Area2()); math.Abs(got-want) > 0.02 || len(a.Reach) != 1 {
			t.Errorf("turn %d: reach %.4f, want %.4f, %d rings", turn, got, want, len(a.Reach))
		}
	}
}

func TestHearthAndColumn(t *testing.T) {
	b := built(room.Sketch{
		Rooms: []room.Room{{Name: "room", Corners: []string{"A", "B", "C", "D"}}},
		Stays: []room.Stay{
			{Name: "hearth", Kind: room.Hearth, Meets: room.MeetsFlush, Wall: room.Wall{"C", "D"}, From: "D", At: in(60), Width: in(60), Depth: in(20)},
			{Name: "post", Kind: room.Column, Meets: room.MeetsGap, Wall: room.Wall{"A", "B"}, From: "A", At: in(40), Off: in(50), Width: in(6), Depth: in(6)},
		},
	}, map[string][2]float64{"A": {0, 0}, "B": {180, 0}, "C": {180, 144}, "D": {0, 144}})
	f, fs := New(b, trim, boards, style)
	if finding.Worst(fs) == finding.Stop {
		t.Fatal(fs)
	}
	a := f.In(plane.Dir{X: 1})
	// Hearth: 1/16 at row ends, 1/4 beside; it cuts 3/4 less of the wall's gap.
	want := 178.5*142.5 - (60+0.125)*(20+0.25-0.75) - 7.5*7.5
	if got := sqin(a.Reach.Area2()); math.Abs(got-want) > 0.01 {
		t.Errorf("reach %.3f, want %.3f", got, want)
	}
	if len(a.Reach) != 2 {
		t.Errorf("%d rings, want an outer one and the post's hole", len(a.Reach))
	}
}

func TestCannotBe(t *testing.T) {
	b := doorRoom(false)
	b.Doorways[0].Width = in(220)
	b.At["C"], b.At["B"] = b.At["B"], b.At["C"]
	_, fs := New(b, trim, boards, style)
	rules := map[string]bool{}
	for _, f := range fs {
		rules[f.Rule] = true
	}
	if !rules["walls cross"] || !rules["doorway fits its wall"] {
		t.Errorf("findings %v", fs)
	}
}

// Common practice, no source: a gap of 3/8 in is hidden by a base of 1/2 in,
// with a lap of 1/8 in; a gap of 3/4 in is not.
func TestCoverOfTheGap(t *testing.T) {
	for _, c := range []struct {
		gap, cover float64
		level      finding.Level
		limit      string
		play       float64
	}{
		{0.375, 0.5, finding.Note, `lap of 1/4" wanted, 1/8" left`, 0},
		{0.75, 0.5, finding.Warn, `1/4" of the gap would show`, 0},
		{0.75, 1.25, "", "", 0.25},
	} {
		lim := boards
		lim.GapLeast.Value = in(c.gap)
		fs := coverFinding("base and shoe", in(c.cover), lim, style)
		if c.level == "" != (len(fs) == 0) || len(fs) > 0 && (fs[0].Level != c.level || fs[0].Limit != c.limit) {
			t.Errorf("gap %g under %g: %v", c.gap, c.cover, fs)
		}
		if r := under(in(c.cover), lim); r.Least != in(c.gap) || r.Play() != in(c.play) {
			t.Errorf("gap %g under %g: range %v", c.gap, c.cover, r)
		}
	}
}
