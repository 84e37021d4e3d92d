package survey

import (
	"math"
	"testing"

	"strake/plane"
	"strake/room"
	"strake/tape"
)

// A room read without a diagonal, by offsets, distances along a wall and widths:
// exact readings (in mm) of a known crooked room give it back. Own figures, by
// plain trigonometry.
func TestOffsetsAlongAndWidths(t *testing.T) {
	at := map[string]plane.XY{"A": {}, "B": {X: 4000}, "C": {X: 4100, Y: 3000}, "D": {X: -60, Y: 2950}}
	s := quad(false)
	s.Points = []room.Point{{Name: "P", Wall: room.Wall{"A", "B"}, From: "A", At: 1000 * tape.Millimetre}}
	exact := func(r Reading, mm float64) Reading {
		r.Value, r.Step = ticks(mm), tape.Millimetre
		return r
	}
	wall := room.Wall{"A", "B"}
	slope := (at["C"].Y - at["D"].Y) / (at["C"].X - at["D"].X)
	rs := []Reading{
		exact(Reading{From: "A", To: "B"}, 4000),
		exact(Reading{From: "C", Kind: Off, Wall: wall}, 3000),
		exact(Reading{From: "D", Kind: Off, Wall: room.Wall{"B", "A"}}, 2950),
		exact(Reading{From: "A", To: "C", Kind: Along, Wall: wall}, 4100),
		exact(Reading{From: "B", To: "D", Kind: Along, Wall: wall}, 4060),
		exact(Reading{From: "P", Kind: Width, Wall: room.Wall{"C", "D"}}, 2950+1060*slope),
	}
	m := Tape()
	m.NoSquares = true
	r := Adjust(s, rs, m)
	if r.Redundant != 1 {
		t.Errorf("redundant %d, want 1", r.Redundant)
	}
	for c, want := range at {
		if d := r.Built.At[c].Sub(want).Len(); d > 0.001 {
			t.Errorf("%s is %.4f mm off", c, d)
		}
	}
}

// An offset from a wall to a corner of the room behind it counts behind it.
func TestOffsetBehindWall(t *testing.T) {
	s := room.Sketch{Rooms: []room.Room{{Name: "a", Corners: []string{"A", "B", "C", "D"}}, {Name: "b", Corners: []string{"E", "F", "G", "H"}}}}
	n := newNet(s)
	r := Reading{From: "F", Kind: Off, Wall: room.Wall{"B", "C"}, Value: 1}
	x := make([]float64, n.count)
	for c, p := range map[string]plane.XY{"B": {X: 3000}, "C": {X: 3000, Y: 2000}, "F": {X: 5000, Y: 100}, "D": {Y: 2000}} {
		x[n.index[c]], x[n.index[c]+1] = p.X, p.Y
	}
	if got := n.span(r)(x); math.Abs(got-2000) > 1e-9 {
		t.Errorf("F lies %.3f mm behind B-C, want 2000", got)
	}
	r.From = "D"
	if got := n.span(r)(x); math.Abs(got-3000) > 1e-9 {
		t.Errorf("D lies %.3f mm from B-C, want 3000", got)
	}
}

// A wall that bows: the outline has a corner at each bow, a point on the wall
// lies on its face, and a width to the bow fits the straight corners.
func TestBow(t *testing.T) {
	s := quad(false)
	s.Rooms[0].Bows = []room.Bow{
		{Wall: room.Wall{"C", "D"}, From: "D", At: 1000 * tape.Millimetre, Out: -20 * tape.Millimetre},
		{Wall: room.Wall{"D", "C"}, From: "C", At: 1000 * tape.Millimetre, Out: 10 * tape.Millimetre},
	}
	s.Points = []room.Point{
		{Name: "P", Wall: room.Wall{"A", "B"}, From: "A", At: 1000 * tape.Millimetre},
		{Name: "Q", Wall: room.Wall{"C", "D"}, From: "D", At: 2000 * tape.Millimetre},
	}
	mm := func(from, to string, v int) Reading {
		return Reading{From: from, To: to, Value: tape.Length(v) * tape.Millimetre, Step: tape.Millimetre}
	}
	rs := []Reading{mm("A", "B", 4000), mm("B", "C", 3000), mm("C", "D", 4000), mm("D", "A", 3000), mm("A", "C", 5000), mm("B", "D", 5000),
		{From: "P", Kind: Width, Wall: room.Wall{"C", "D"}, Value: 2980 * tape.Millimetre, Step: tape.Millimetre}}
	r := Adjust(s, rs, Tape())
	for i, v := range r.Residuals {
		if math.Abs(v) > 1e-6 {
			t.Errorf("%s misses by %g mm", rs[i].Name(), v)
		}
	}
	points, walls := r.Built.Outline(s.Rooms[0])
	want := []plane.XY{{}, {X: 4000}, {X: 4000, Y: 3000}, {X: 3000, Y: 3010}, {X: 1000, Y: 2980}, {Y: 3000}}
	if len(points) != len(want) || walls[3] != (room.Wall{"C", "D"}) || walls[5] != (room.Wall{"D", "A"}) {
		t.Fatalf("outline %v, walls %v", points, walls)
	}
	for i, w := range want {
		if points[i].Sub(w).Len() > 1e-6 {
			t.Errorf("point %d at %v, want %v", i, points[i], w)
		}
	}
	// Halfway between 20 in and 10 out: 5 in.
	if q := r.Built.At["Q"]; q.Sub(plane.XY{X: 2000, Y: 2995}).Len() > 1e-6 {
		t.Errorf("Q at %v", q)
	}
}
