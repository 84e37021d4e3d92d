package board

import (
	"testing"

	"pgregory.net/rapid"

	"strake/lay"
	"strake/plane"
	"strake/tape"
)

func in(v int) tape.Length { return tape.Length(v) * tape.Inch }

var saw = Saw{Length: in(84), Width: in(5), Blade: tape.Eighth, Useful: in(8)}

func kinds(ps []lay.Part) map[lay.PartKind]int {
	m := map[lay.PartKind]int{}
	for _, p := range ps {
		m[p.Kind]++
	}
	return m
}

func sum(t interface{ Fatalf(string, ...any) }, ps []lay.Part) {
	var a tape.Area
	for _, p := range ps {
		if p.Outline.Area2() <= 0 {
			t.Fatalf("%s part with doubled area %d", p.Kind, p.Outline.Area2())
		}
		lo, hi := p.Outline.Box()
		if lo.X < 0 || lo.Y < 0 || hi.X > saw.Length || hi.Y > saw.Width {
			t.Fatalf("%s part leaves the board: %v", p.Kind, p.Outline)
		}
		a += p.Outline.Area2()
	}
	if want := 2 * tape.Area(saw.Length) * tape.Area(saw.Width); a != want {
		t.Fatalf("parts have doubled area %d, board %d", a, want)
	}
}

// The board of the package comment: 46 in, ripped to 3-1/4 from its tongue
// side, with 37-7/8 in left over.
func TestRippedLastPiece(t *testing.T) {
	ps := saw.Parts([]Piece{{1, plane.Rect(plane.P(0, in(5)-in(13)/4), plane.P(in(46), in(5)))}})
	sum(t, ps)
	if k := kinds(ps); k[lay.IsPiece] != 1 || k[lay.IsKerf] != 2 || k[lay.IsStrip] != 1 || k[lay.IsOffcut] != 1 || len(ps) != 5 {
		t.Errorf("parts %v", k)
	}
	for _, p := range ps {
		lo, hi := p.Outline.Box()
		if d := hi.Sub(lo); p.Kind == lay.IsOffcut && d.X != in(84)-in(46)-tape.Eighth || p.Kind == lay.IsStrip && d.Y != in(5)-in(13)/4-tape.Eighth {
			t.Errorf("%s is %v", p.Kind, d)
		}
	}
}

// A mitred last piece: one cut straight across the board.
func TestMitredLastPiece(t *testing.T) {
	ps := saw.Parts([]Piece{{1, plane.Ring{{X: 0, Y: 0}, {X: in(40), Y: 0}, {X: in(43), Y: in(5)}, {X: 0, Y: in(5)}}}})
	sum(t, ps)
	if k := kinds(ps); k[lay.IsKerf] != 1 || k[lay.IsOffcut] != 1 || len(ps) != 3 {
		t.Errorf("parts %v", k)
	}
}

// A notch is one part of scrap.
func TestNotch(t *testing.T) {
	ps := saw.Parts([]Piece{{1, plane.Ring{{X: 0, Y: 0}, {X: in(60), Y: 0}, {X: in(60), Y: in(5)}, {X: in(30), Y: in(5)}, {X: in(30), Y: in(2)}, {X: in(20), Y: in(2)}, {X: in(20), Y: in(5)}, {X: 0, Y: in(5)}}}})
	sum(t, ps)
	if k := kinds(ps); k[lay.IsScrap] != 1 || k[lay.IsOffcut] != 1 || len(ps) != 4 {
		t.Errorf("parts %v", k)
	}
}

// Whatever the slants, the parts make up the board exactly.
func TestPartsPartition(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := func(lo, hi tape.Length, name string) tape.Length {
			return tape.Length(rapid.Int64Range(int64(lo), int64(hi)).Draw(t, name))
		}
		w := saw.Width
		b := l(in(20), in(50), "far end")
		low, high := tape.Length(0), tape.Length(0) // heights of the two long edges at the left end
		switch rapid.IntRange(0, 2).Draw(t, "rip") {
		case 1:
			low = l(tape.Inch/2, in(4), "low")
		case 2:
			high = l(tape.Inch/2, in(4), "high")
		}
		lowR, highR := low, high
		if low > 0 {
			lowR = l(tape.Inch/4, in(4), "low right")
		}
		if high > 0 {
			highR = l(tape.Inch/4, in(4), "high right")
		}
		dx := l(-in(3), in(3), "mitre")
		if rapid.Bool().Draw(t, "square") {
			dx = 0
		}
		r := plane.Ring{{X: 0, Y: low}, {X: b, Y: lowR}, {X: b + dx, Y: w - highR}, {X: 0, Y: w - high}}
		ps := []Piece{{1, r.Tidy()}}
		if rapid.Bool().Draw(t, "second") {
			from := max(b, b+dx) + 2*in(1)
			ps = append(ps, Piece{2, plane.Rect(plane.P(from, 0), plane.P(saw.Length, w))})
		}
		sum(t, saw.Parts(ps))
	})
}

// Two ends that come to a point face each other, a square cut and a mitre's way
// apart: the ways along both mitres would overlap, and the blanks end at one
// line between the points instead.
func TestPointsFaceEachOther(t *testing.T) {
	gap := tape.Eighth + tape.Eighth*142/100 // what racking leaves for a mitred cut
	tip := in(40)
	ps := saw.Parts([]Piece{
		{1, plane.Ring{{X: 0, Y: 0}, {X: tip - in(2), Y: 0}, {X: tip, Y: in(2)}, {X: tip - in(3), Y: in(5)}, {X: 0, Y: in(5)}}},
		{2, plane.Ring{{X: tip + gap + in(1), Y: 0}, {X: in(84), Y: 0}, {X: in(84), Y: in(5)}, {X: tip + gap + in(4), Y: in(5)}, {X: tip + gap, Y: in(1)}}},
	})
	sum(t, ps)
	if k := kinds(ps); k[lay.IsPiece] != 2 || k[lay.IsKerf] != 0 {
		t.Errorf("parts %v", k)
	}
}
