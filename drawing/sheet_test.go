package drawing

import (
	"bytes"
	"strings"
	"testing"

	"strake/internal/sample"
	"strake/plan"
	"strake/plane"
	"strake/sheet"
	"strake/tape"
)

func has(p plan.Plan, part string) bool {
	for _, t := range texts(Floor(p)) {
		if strings.Contains(t.Text, part) {
			return true
		}
	}
	return false
}

func TestFit(t *testing.T) {
	for _, tt := range []struct {
		unit  tape.Unit
		w, h  float64 // of the floor, m
		row   float64 // mm
		scale string
		paper string
	}{
		{tape.UnitMillimetre, 2, 1.5, 150, "1:10", "A3 paper"},
		{tape.UnitMetre, 3.6, 2.5, 150, "1:20", "A3 paper"},
		{tape.UnitCentimetre, 5.5, 4, 150, "1:25", "A3 paper"},
		{tape.UnitMillimetre, 10, 8, 150, "1:50", "A3 paper"},
		{tape.UnitMillimetre, 18, 12, 150, "1:50", "A2 paper"},
		{tape.UnitMillimetre, 60, 30, 150, "1:100", "A1 paper"},
		{tape.UnitFoot, 4.88, 3.96, 150, "1/2 in = 1 ft (1:24)", "17 x 11 in paper"},
		{tape.UnitFoot, 4.88, 3.96, 57, "3/4 in = 1 ft (1:16)", "22 x 17 in paper"},
		{tape.UnitMillimetre, 10, 8, 20, "1:50", "A3 paper"},
		{tape.UnitInch, 9, 7, 150, "1/4 in = 1 ft (1:48)", "17 x 11 in paper"},
	} {
		p, s := fit(tt.unit, tt.w*1000, tt.h*1000, tt.row)
		if s.String() != tt.scale || p.name != tt.paper {
			t.Errorf("%v by %v m in %s: %v on %s, want %s on %s", tt.w, tt.h, tt.unit, s, p.name, tt.scale, tt.paper)
		}
		if free := p.area().less(around); tt.w*1000 > free.w()*s.one || tt.h*1000 > free.h()*s.one {
			t.Errorf("%v by %v m does not fit at %v", tt.w, tt.h, s)
		}
	}
}

// The drawing is seen from above: rows run up the sheet when the tongues face
// +Y, and turning the rows by half a turn turns the sheet.
func TestTopOfTheSheet(t *testing.T) {
	p := sample.Rectangle()
	if !has(p, "Seen from above. Wall C-D is at the top of the sheet.") {
		t.Error("the rows lie along A-B with the room to their left: C-D is on top")
	}
	v := newView(p, usual)
	if a, c := v.at(plane.P(0, 0)), v.at(plane.P(0, tape.Metre)); c.Y >= a.Y || c.X != a.X {
		t.Errorf("Y must run up the sheet: %v, %v", a, c)
	}
	p.Aligned.Dir = p.Aligned.Dir.Flip()
	if !has(p, "Wall A-B is at the top of the sheet.") {
		t.Error("with the rows turned round A-B is on top")
	}
}

func TestExample(t *testing.T) {
	p := sample.Hearth()
	if !has(p, "EXAMPLE LAYOUT, BOARDS NOT YET KNOWN") {
		t.Error("an example layout must say so")
	}
	p.Lay.Example = false
	if has(p, "EXAMPLE") {
		t.Error("a layout of known boards is no example")
	}
}

func TestUnfilled(t *testing.T) {
	p := sample.ShortOfBoards()
	n := 0
	for _, x := range texts(Floor(p)) {
		if x.Text == "no boards left" {
			n++
		}
	}
	// The last row is a point too narrow to write in.
	if open := len(p.Lay.Runs) - 20; n < open-1 {
		t.Errorf("%d rows say that there are no boards, of %d", n, open)
	}
	if has(sample.Hearth(), "no boards left") {
		t.Error("all rows have boards")
	}
}

// A layout without boards is drawn as rows to be filled.
func TestLayoutOnly(t *testing.T) {
	p := sample.Rectangle()
	p.Lay.Runs, p.Lay.Pieces, p.Lay.Boards = nil, nil, nil
	s := Floor(p)
	if !has(p, "A-B  3620 mm") || len(s.Items) < 50 {
		t.Error("the room must still be drawn")
	}
}

func TestEdgesAreNamed(t *testing.T) {
	p := sample.Hearth()
	for _, want := range []string{
		`hall doorway: under the transition, gap 3/8" to 5/8"`, "flush (4)", "flush (5)", "hearth",
		`gap 3/4" to 1"`, `rip 3-1/8"`, "working line", `face 5", row width 5-1/32"`,
		"(5) hearth: flush, fine joint 1/16\", cut measured in place",
	} {
		if !has(p, want) {
			t.Errorf("nothing says %q", want)
		}
	}
}

// The arrow points where the tongues face.
func TestTongueArrow(t *testing.T) {
	tip := func(p plan.Plan) sheet.Pt {
		d := newDraw(p, usual)
		d.drawTongues()
		return d.lines[1].(sheet.Polygon).Rings[0][0]
	}
	p := sample.Rectangle()
	up := tip(p)
	p.Lay.Zones[0].Ahead = -1
	if down := tip(p); down.Y <= up.Y {
		t.Errorf("tongues up at %v, down at %v", up, down)
	}
}

func TestSameBytes(t *testing.T) {
	for name, p := range plans() {
		if !bytes.Equal(drawn(t, p), drawn(t, p)) {
			t.Errorf("%s: two drawings of one plan differ", name)
		}
	}
}

// A corner's letter lies outside every other room, nearer to its corner than to
// any other.
func TestCornerLetters(t *testing.T) {
	p := sample.TwoRooms()
	d := newDraw(p, usual)
	var all []sheet.Pt
	for _, r := range p.Floor.Rooms {
		all = append(all, d.ring(toRow(p, r.Corners))...)
	}
	for i, r := range p.Floor.Rooms {
		other := d.ring(toRow(p, p.Floor.Rooms[1-i].Corners))
		for k, name := range r.Names {
			for _, x := range texts(Floor(p)) {
				if x.Text != name {
					continue
				}
				if own := d.ring(toRow(p, r.Corners))[k]; nearestTo(middle(x), all) != own {
					t.Errorf("%s stands nearer to another corner, at %v", name, x.At)
				}
				if inside([][]sheet.Pt{other}, middle(x)) {
					t.Errorf("%s stands in the other room, at %v", name, x.At)
				}
			}
		}
	}
}
