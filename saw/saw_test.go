package saw

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"strake/lay"
	"strake/plane"
	"strake/tape"
)

const in = tape.Inch

// piece is one of these corners, in eighths of an inch.
func piece(behind, ahead lay.Profile, corners ...[2]tape.Length) lay.Piece {
	var r plane.Ring
	for _, c := range corners {
		r = append(r, plane.P(c[0]*tape.Eighth, c[1]*tape.Eighth))
	}
	return lay.Piece{Outline: r, Behind: behind, Ahead: ahead}
}

func TestOf(t *testing.T) {
	square := func(l tape.Length) Cuts { return Cuts{Behind: l, Ahead: l} }
	with := func(c Cuts, change func(*Cuts)) Cuts { change(&c); return c }
	tests := []struct {
		name  string
		piece lay.Piece
		want  Cuts
	}{
		{"a whole board, 40 by 5 in", piece(lay.Groove, lay.Tongue, [2]tape.Length{80, 8}, [2]tape.Length{400, 8}, [2]tape.Length{400, 48}, [2]tape.Length{80, 48}), square(40 * in)},
		{"a rip of 3 in that keeps the groove", piece(lay.Groove, lay.Ripped, [2]tape.Length{0, 0}, [2]tape.Length{320, 0}, [2]tape.Length{320, 24}, [2]tape.Length{0, 24}),
			with(square(40*in), func(c *Cuts) { c.Rip = Rip{Done: true, Left: 3 * in, Right: 3 * in, Keeps: lay.Groove} })},
		{"a taper of 3 to 2-1/2 in, ahead", piece(lay.Groove, lay.Ripped, [2]tape.Length{0, 0}, [2]tape.Length{320, 0}, [2]tape.Length{320, 20}, [2]tape.Length{0, 24}),
			with(square(40*in), func(c *Cuts) { c.Rip = Rip{Done: true, Left: 3 * in, Right: 5 * in / 2, Keeps: lay.Groove} })},
		{"a taper of 2-1/2 to 3 in, behind", piece(lay.Ripped, lay.Tongue, [2]tape.Length{0, 4}, [2]tape.Length{320, 0}, [2]tape.Length{320, 24}, [2]tape.Length{0, 24}),
			with(square(40*in), func(c *Cuts) { c.Rip = Rip{Done: true, Left: 5 * in / 2, Right: 3 * in, Keeps: lay.Tongue} })},
		{"a taper to a point", piece(lay.Groove, lay.Ripped, [2]tape.Length{0, 0}, [2]tape.Length{320, 0}, [2]tape.Length{0, 8}),
			with(square(40*in), func(c *Cuts) { c.Rip = Rip{Done: true, Left: in, Keeps: lay.Groove} })},
		{"a sawn edge that bends", piece(lay.Groove, lay.Ripped, [2]tape.Length{0, 0}, [2]tape.Length{320, 0}, [2]tape.Length{320, 20}, [2]tape.Length{160, 30}, [2]tape.Length{0, 32}),
			with(square(40*in), func(c *Cuts) {
				c.Rip = Rip{Done: true, Left: 4 * in, Right: 5 * in / 2, Keeps: lay.Groove, Bends: []Bend{{20 * in, 15 * in / 4}}}
			})},
		{"the right end mitred, longer ahead", piece(lay.Groove, lay.Tongue, [2]tape.Length{0, 0}, [2]tape.Length{300, 0}, [2]tape.Length{316, 40}, [2]tape.Length{0, 40}),
			Cuts{Behind: 75 * in / 2, Ahead: 79 * in / 2, Right: 2 * in}},
		{"the left end mitred, longer behind", piece(lay.Groove, lay.Tongue, [2]tape.Length{0, 0}, [2]tape.Length{320, 0}, [2]tape.Length{320, 40}, [2]tape.Length{8, 40}),
			Cuts{Behind: 40 * in, Ahead: 39 * in, Left: in}},
		{"mitred and tapered", piece(lay.Groove, lay.Ripped, [2]tape.Length{0, 0}, [2]tape.Length{320, 0}, [2]tape.Length{312, 20}, [2]tape.Length{0, 32}),
			Cuts{Behind: 40 * in, Ahead: 39 * in, Right: -in, Rip: Rip{Done: true, Left: 4 * in, Right: 5 * in / 2, Keeps: lay.Groove}}},
		{"a corner notch of 10 by 2 in, right, ahead", piece(lay.Groove, lay.Tongue, [2]tape.Length{0, 0}, [2]tape.Length{320, 0}, [2]tape.Length{320, 24}, [2]tape.Length{240, 24}, [2]tape.Length{240, 40}, [2]tape.Length{0, 40}),
			with(square(40*in), func(c *Cuts) { c.Notches = []Notch{{10 * in, 2 * in, RightEnd, 0, AheadEdge, 0, false, false}} })},
		{"a notch of 6 by 1 in behind, 4 in from the left", piece(lay.Groove, lay.Tongue, [2]tape.Length{0, 0}, [2]tape.Length{32, 0}, [2]tape.Length{32, 8}, [2]tape.Length{80, 8}, [2]tape.Length{80, 0}, [2]tape.Length{320, 0}, [2]tape.Length{320, 40}, [2]tape.Length{0, 40}),
			with(square(40*in), func(c *Cuts) { c.Notches = []Notch{{6 * in, in, LeftEnd, 4 * in, BehindEdge, 0, false, false}} })},
		{"half of a column's hole in the right end", piece(lay.Groove, lay.Tongue, [2]tape.Length{0, 0}, [2]tape.Length{320, 0}, [2]tape.Length{320, 8}, [2]tape.Length{296, 8}, [2]tape.Length{296, 28}, [2]tape.Length{320, 28}, [2]tape.Length{320, 40}, [2]tape.Length{0, 40}),
			with(square(40*in), func(c *Cuts) {
				c.Notches = []Notch{{3 * in, 5 * in / 2, RightEnd, 0, BehindEdge, in, false, false}}
			})},
		{"an end in a step, left, 3 by 2 in missing behind", piece(lay.Groove, lay.Tongue, [2]tape.Length{24, 0}, [2]tape.Length{320, 0}, [2]tape.Length{320, 40}, [2]tape.Length{0, 40}, [2]tape.Length{0, 16}, [2]tape.Length{24, 16}),
			with(square(40*in), func(c *Cuts) { c.Notches = []Notch{{3 * in, 2 * in, LeftEnd, 0, BehindEdge, 0, false, false}} })},
		{"an end in a step over slanted cuts, left, missing behind", piece(lay.Groove, lay.Tongue, [2]tape.Length{25, 0}, [2]tape.Length{320, 0}, [2]tape.Length{320, 40}, [2]tape.Length{0, 40}, [2]tape.Length{1, 16}, [2]tape.Length{24, 16}),
			Cuts{Behind: 40*in - 5*in/24, Ahead: 40 * in, Left: -5 * in / 24, Notches: []Notch{{3 * in, 2 * in, LeftEnd, in / 8, BehindEdge, 0, true, false}}}},
		{"an end in a step over slanted cuts, right, missing ahead", piece(lay.Groove, lay.Tongue, [2]tape.Length{0, 0}, [2]tape.Length{320, 0}, [2]tape.Length{319, 24}, [2]tape.Length{296, 24}, [2]tape.Length{295, 40}, [2]tape.Length{0, 40}),
			Cuts{Behind: 40 * in, Ahead: 40*in - 5*in/24, Right: -5 * in / 24, Notches: []Notch{{3 * in, 2 * in, RightEnd, in / 8, AheadEdge, 0, true, false}}}},
		{"an end that points, left: no board is longer than its point", piece(lay.Groove, lay.Tongue, [2]tape.Length{8, 0}, [2]tape.Length{320, 0}, [2]tape.Length{320, 40}, [2]tape.Length{2, 40}, [2]tape.Length{30, 12}, [2]tape.Length{0, 8}),
			with(square(40*in), func(c *Cuts) {
				c.Notches = []Notch{{15 * in / 4, 4 * in, LeftEnd, 0, AheadEdge, 0, true, false}, {in, in, LeftEnd, 0, BehindEdge, 0, true, true}}
			})},
		{"a slanted corner", piece(lay.Groove, lay.Tongue, [2]tape.Length{0, 0}, [2]tape.Length{320, 0}, [2]tape.Length{320, 40}, [2]tape.Length{160, 40}, [2]tape.Length{0, 32}),
			with(square(40*in), func(c *Cuts) { c.Notches = []Notch{{20 * in, in, LeftEnd, 0, AheadEdge, 0, true, true}} })},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if tt.piece.Outline.Area2() <= 0 {
				t.Fatal("the outline must run counter-clockwise")
			}
			if d := cmp.Diff(tt.want, Of(tt.piece)); d != "" {
				t.Errorf("want(-) got(+):\n%s", d)
			}
		})
	}
}

// Where the outline starts and where on the floor it lies do not matter.
func TestOfAnyStart(t *testing.T) {
	p := piece(lay.Groove, lay.Ripped, [2]tape.Length{0, 0}, [2]tape.Length{320, 0}, [2]tape.Length{312, 20}, [2]tape.Length{100, 28},
		[2]tape.Length{100, 20}, [2]tape.Length{60, 20}, [2]tape.Length{60, 30}, [2]tape.Length{0, 32})
	want := Of(p)
	for i := range p.Outline {
		q := p
		q.Outline = append(append(plane.Ring{}, p.Outline[i:]...), p.Outline[:i]...).Move(plane.P(7*in, -3*in))
		if d := cmp.Diff(want, Of(q)); d != "" {
			t.Errorf("starting at corner %d: %s", i, d)
		}
	}
}

// The joint's air lies at the tongue edge.
func TestFigure(t *testing.T) {
	air := in / 32
	for keeps, want := range map[lay.Profile]tape.Length{lay.Tongue: 3*in - air, lay.Groove: 3 * in, "": 3 * in} {
		if got := Figure(3*in, keeps, air); got != want {
			t.Errorf("keeping %q: %v, want %v", keeps, got, want)
		}
	}
	if got := Figure(in/64, lay.Tongue, air); got != 0 {
		t.Errorf("a point is no width: %v", got)
	}
}
