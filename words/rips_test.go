package words

import (
	"testing"

	"strake/floor"
	"strake/plan"
	"strake/plane"
	"strake/row"
	"strake/tape"
)

// twoStretches is a wall that a doorway from 40 to 70 in parts, met by row 9.
func twoStretches(left, right row.Rip) plan.Plan {
	var p plan.Plan
	p.Layout.Pitch = 5 * in
	p.Aligned.Reach = plane.Region{plane.Rect(plane.P(in, 0), plane.P(99*in, 50*in))}
	p.Aligned.Edges = []floor.AlignedEdge{
		{Name: "wall C-D", Beside: true, Group: 0, From: plane.P(100*in, 50*in), To: plane.P(70*in, 50*in)},
		{Name: "wall C-D", Beside: true, Group: 1, From: plane.P(40*in, 50*in), To: plane.P(20*in, 50*in+in/8)},
		{Name: "wall C-D", Beside: true, Group: 1, From: plane.P(20*in, 50*in+in/8), To: plane.P(0, 50*in)}, // it bows
	}
	right.Edge, right.Index, right.Row = "wall C-D", 0, 9
	left.Edge, left.Index, left.Row = "wall C-D", 1, 9
	p.Layout.Rips = []row.Rip{right, left}
	return p
}

// Stretches of one wall that are ripped alike are one line; where they differ
// each says where along the row it lies, a bowed one with all its parts.
func TestRips(t *testing.T) {
	s := In(tape.UnitInch)
	three := row.Rip{Left: 3 * in, Right: 3 * in, SD: in / 20}
	four := row.Rip{Left: 4 * in, Right: 4*in + in/4}
	if got := Rips(twoStretches(three, three), s); len(got) != 1 || got[0] != (RipLine{"wall C-D", 9, `3" ± 1/8"`}) {
		t.Errorf("alike: %v", got)
	}
	got := Rips(twoStretches(four, three), s)
	want := []RipLine{{`wall C-D, 69" to 99"`, 9, `3" ± 1/8"`}, {`wall C-D, 0" to 39"`, 9, `4" at its left end, 4-1/4" at its right end`}}
	if len(got) != 2 || got[0] != want[0] || got[1] != want[1] {
		t.Errorf("got %v, want %v", got, want)
	}
	p := twoStretches(four, three)
	p.Layout.Rips[1].Row = 4 // another row: it is told apart by that
	if got := Rips(p, s); got[0].Edge != "wall C-D" || got[1].Edge != "wall C-D" {
		t.Errorf("in two rows: %v", got)
	}
}

// Two standard deviations, never rounded down.
func TestRipDoubtIsRoundedUp(t *testing.T) {
	s := In(tape.UnitInch)
	for sd, want := range map[tape.Length]string{in / 64: `3" ± 1/32"`, in/64 + 1: `3" ± 1/16"`, in / 16: `3" ± 1/8"`, 0: `3"`} {
		if got := RipWidths(row.Rip{Left: 3 * in, Right: 3 * in, SD: sd}, s); got != want {
			t.Errorf("%v: %s, want %s", sd, got, want)
		}
	}
}
