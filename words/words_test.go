package words

import (
	"math"
	"strings"
	"testing"

	"strake/floor"
	"strake/internal/sample"
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

const in = tape.Inch

func TestLengths(t *testing.T) {
	for _, tt := range []struct {
		unit      tape.Unit
		l         tape.Length
		long, rip string
	}{
		{tape.UnitFoot, 151*in + 3*in/8 + in/50, `12' 7-3/8"`, `151-13/32"`},
		{tape.UnitInch, 3*in + 3*in/4, `3-3/4"`, `3-3/4"`},
		{tape.UnitInch, 3*in + 25*in/32, `3-13/16"`, `3-25/32"`},
		{tape.UnitMillimetre, 95*tape.Millimetre + 4800, "96 mm", "95.5 mm"},
		{tape.UnitMetre, 3844*tape.Millimetre + 1600, "3844 mm", "3844 mm"},
		{tape.UnitCentimetre, tape.Millimetre / 4, "0 mm", "0.5 mm"},
	} {
		s := In(tt.unit)
		if s.Of(tt.l) != tt.long || s.Rip(tt.l) != tt.rip {
			t.Errorf("%v in %s: %s and %s, want %s and %s", tt.l, tt.unit, s.Of(tt.l), s.Rip(tt.l), tt.long, tt.rip)
		}
	}
	s := In(tape.UnitInch)
	if got := s.Rips(3*in, 3*in+in/200); got != `3"` {
		t.Errorf("widths that print alike are one: %s", got)
	}
	if got := s.Rips(3*in, 4*in); got != `3" to 4"` {
		t.Errorf("a taper has two: %s", got)
	}
}

func TestRowPart(t *testing.T) {
	for _, tt := range []struct {
		row, part int
		want      string
	}{{12, 0, "12"}, {12, 1, "12a"}, {12, 2, "12b"}, {3, 26, "3z"}, {3, 27, "3aa"}} {
		if got := RowPart(tt.row, tt.part); got != tt.want {
			t.Errorf("row %d part %d is %q, want %q", tt.row, tt.part, got, tt.want)
		}
	}
	if got := Piece(lay.Run{Row: 12, Part: 1}, 2); got != "row 12a piece 2" {
		t.Error(got)
	}
	if Board(0) != "1" {
		t.Error("boards count from 1 on paper")
	}
}

func TestMeets(t *testing.T) {
	s := In(tape.UnitInch)
	r := func(a, b tape.Length) floor.Range { return floor.Range{Least: a, Greatest: b} }
	for _, tt := range []struct {
		e    floor.AlignedEdge
		want string
	}{
		{floor.AlignedEdge{Kind: floor.Wall, Range: r(3*in/4, in)}, `gap 3/4" to 1"`},
		{floor.AlignedEdge{Kind: floor.Wall, Range: r(3*in/4, 3*in/4)}, `gap 3/4"`},
		{floor.AlignedEdge{Kind: floor.Jamb, Range: r(-in/2, -in/4)}, `undercut jamb, boards 1/4" to 1/2" under its face`},
		{floor.AlignedEdge{Kind: floor.Jamb, Range: r(in/2, in)}, `gap 1/2" to 1"`},
		{floor.AlignedEdge{Kind: floor.Flush, Range: r(in/16, in/16), InPlace: true}, `flush, fine joint 1/16", cut measured in place`},
		{floor.AlignedEdge{Kind: floor.Flush, Range: r(in/4, in/4), InPlace: true, Beside: true}, `flush, soft joint 1/4"`},
		{floor.AlignedEdge{Kind: floor.Transition, Range: r(3*in/8, 5*in/8)}, `under the transition, gap 3/8" to 5/8"`},
		{floor.AlignedEdge{Kind: floor.Nosing, Range: r(0, in/32)}, `nosing, gap 0" to 1/32"`},
		{floor.AlignedEdge{Kind: floor.Stays, Range: r(in/2, in)}, `gap 1/2" to 1" under its cover`},
	} {
		if got := Meets(tt.e, s); got != tt.want {
			t.Errorf("got %q, want %q", got, tt.want)
		}
	}
}

// A room's walls go by the job's own order of corners, though the outline is
// always run counter-clockwise.
func TestWallNames(t *testing.T) {
	p := sample.Rectangle()
	p.Built.Rooms[0].Corners = []string{"A", "D", "C", "B"}
	var names []string
	for _, w := range Walls(p) {
		names = append(names, w.Name)
	}
	if got := strings.Join(names, " "); got != "B-A C-B D-C A-D" {
		t.Error(got)
	}
}

// What is said to be at the top of the sheet is what is topmost there: one wall, all that
// are level with one another, or where none lies level a corner.
func TestTop(t *testing.T) {
	p := sample.Hearth()
	says := func(want string) {
		t.Helper()
		if got := Top(p); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	says("Wall E-F is at the top of the sheet.")
	p.Aligned.Dir = plane.Dir{X: 0, Y: 1}
	says("Wall F-A is at the top of the sheet.")
	p.Aligned.Dir = plane.Dir{X: math.Sqrt2 / 2, Y: math.Sqrt2 / 2}
	says("Corner F is at the top of the sheet.")
	p = sample.Rectangle()
	says("Wall C-D is at the top of the sheet.")
	q := p.Floor.Rooms[0] // a second room beside it, as high and shorter
	low, high := q.Corners[0], q.Corners[2]
	p.Floor.Rooms = append(p.Floor.Rooms, floor.RoomOutline{Name: "beside", Names: []string{"E", "F", "G", "H"},
		Corners: []plane.XY{{X: high.X + 100, Y: low.Y}, {X: high.X + 600, Y: low.Y}, {X: high.X + 600, Y: high.Y}, {X: high.X + 100, Y: high.Y}}})
	says("Walls C-D and G-H are at the top of the sheet.")
	p.Floor.Rooms[1].Corners[2].Y += 1000 // and higher
	p.Floor.Rooms[1].Corners[3].Y += 1000
	says("Wall G-H is at the top of the sheet.")
	p.Floor.Rooms = nil
	says("")
}

// Row 1 of the sample lies in a doorway: the line is that of row 2, whose front
// is two rows of 5-1/32 in from -5-17/32 in: 4-17/32 in off the wall.
func TestLine(t *testing.T) {
	l, ok := Line(sample.Hearth())
	if !ok || l.Row != "2" || l.Wall != "wall A-B" || l.LeftCorner != "A" || l.RightCorner != "B" {
		t.Fatalf("got %+v", l)
	}
	if want := 4*in + 17*in/32; l.Left != want || l.Right != want {
		t.Errorf("%v and %v from the wall, want %v", l.Left, l.Right, want)
	}
	want := `Snap the working line 4-17/32" from wall A-B at corner A and 4-17/32" at corner B: ` +
		`the front edge of row 2, without its tongue, keeps to it.`
	if got := LineText(l, In(tape.UnitInch)); got != want {
		t.Error(got)
	}
}

// With the tongues facing -Y the front of a row is its lower edge.
func TestLineOtherWay(t *testing.T) {
	p := sample.Rectangle()
	up, _ := Line(p)
	p.Lay.Zones[0].Ahead = -1
	down, ok := Line(p)
	if !ok || up.Y-down.Y != p.Layout.Pitch {
		t.Errorf("fronts at %v and %v", up.Y, down.Y)
	}
}

func TestLineNone(t *testing.T) {
	p := sample.Rectangle()
	p.Lay.Runs = nil
	if _, ok := Line(p); ok {
		t.Error("no rows, no line")
	}
	p = sample.Rectangle()
	p.Aligned.Edges = nil
	if l, ok := Line(p); !ok || l.Wall != "" {
		t.Errorf("no wall to measure from: a line told by its marks alone, not %+v", l)
	}
}

// A wall out of parallel gives two distances.
func TestLineSlanted(t *testing.T) {
	p := sample.Rectangle()
	p.Aligned.Edges[0].To.Y = -10 * tape.Millimetre // corner B lies lower
	l, ok := Line(p)
	if !ok || l.Right-l.Left != 10*tape.Millimetre || l.LeftCorner != "A" || l.RightCorner != "" {
		t.Errorf("got %+v", l)
	}
}
