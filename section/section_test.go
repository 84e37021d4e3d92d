package section

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"

	"strake/sheet"
	"strake/sheet/png"
	"strake/stock"
	"strake/tape"
)

var oak = stock.Boards{Face: 5 * tape.Inch, TenBoards: 805 * tape.Inch / 16, Thickness: 3 * tape.Inch / 4, SideTongue: tape.Inch / 4}

// wall is a drawing with something of everything: a wall, a gap, boards on a sheet
// and a panel over joists, fasteners, dimensions and notes.
func wall() Figure {
	p := ProfileOf(oak)
	c := New(0.5)
	c.Cut("joist", Framing, Rect(20, -120, 58, -19))
	c.Cut("panel", Plywood, Rect(-30, -19, 19+p.Pitch()+50, -0.8), 1, 3)
	c.Cut("felt", Solid, Rect(19, -0.8, 19+p.Pitch()+50, 0))
	c.Cut("wall", Plaster, Rect(-12, -0.8, 0, 120), 2)
	c.Cut("base", Trim, Rect(0, 22, 12, 100))
	c.Board("first", p, 19, 0, p.Face, Square, Tongued)
	c.Board("next", p, 19+p.Pitch(), 0, 50, Grooved, GoesOn)
	c.Break(At(19+p.Pitch()+50, -19), At(19+p.Pitch()+50, p.Thick))
	pocket := p.Pocket(19+p.Face, 0)
	c.Nail(Cleat, pocket, 50, -135)
	c.Break(At(-30, -19), At(-30, 0))
	c.Dim(Above, At(0, 120), At(19, p.Thick), `gap 3/4"`)
	c.Dim(Above, At(19, p.Thick), At(19+p.Face, p.Thick), `5"`)
	c.Dim(Leftward, At(-12, 0), At(-12, 22), `7/8"`)
	c.Angle(pocket, -135, -180, 12, "45°")
	c.Note(At(6, 60), "Base: nailed to the wall, never to the boards")
	c.Note(At(10, 8), "Gap: left free all round")
	c.Note(At(80, 10), "First board, its groove to the wall")
	c.NoteLine(At(165, -0.4), "Felt")
	c.Note(At(150, -10), "Panel")
	c.Note(At(40, -70), "Joist")
	c.Arrow(At(-40, 60), At(-14, 60))
	return Below(4, c.Figure(0), Bar(true, "1:2"))
}

// materials are all hatches with their names.
func materials() Figure {
	c := New(1)
	for i, n := range []string{"Plain", "EndGrain", "Grain", "Plywood", "Strands", "Framing", "Concrete", "Masonry", "Tile", "Plaster", "Trim", "Soft", "Carpet", "Spline", "Solid"} {
		x, y := float64(i%3)*55, -float64(i/3)*32
		c.Cut(n, Material(i), Rect(x, y, x+45, y+20))
		c.Word(At(x+22, y-5), Middle, n)
	}
	return c.Figure(0)
}

// TestLook writes the figures as pictures into the directory that SECTION_LOOK names.
func TestLook(t *testing.T) {
	dir := os.Getenv("SECTION_LOOK")
	if dir == "" {
		t.Skip("SECTION_LOOK is not set: no pictures asked for")
	}
	for name, f := range map[string]Figure{"wall": wall(), "materials": materials()} {
		w, err := os.Create(filepath.Join(dir, name+".png"))
		if err != nil {
			t.Fatal(err)
		}
		if err := png.Write(w, sheet.Sheet{W: f.W, H: f.H, Items: f.Items}, 150); err != nil {
			t.Fatal(err)
		}
		w.Close()
	}
}

func ring(f Figure, name string) []sheet.Pt {
	for _, it := range f.Items {
		if p, ok := it.(sheet.Polygon); ok && p.Name == name {
			return p.Rings[0]
		}
	}
	return nil
}

// What is drawn measures on paper what it is times the scale.
func TestTrueToScale(t *testing.T) {
	f := wall()
	b := boxOf([]sheet.Item{sheet.Polygon{Rings: [][]sheet.Pt{ring(f, "first")}}})
	w := boxOf([]sheet.Item{sheet.Polygon{Rings: [][]sheet.Pt{ring(f, "wall")}}})
	for what, x := range map[string][2]float64{
		"gap":             {(b.x0 - w.x1) / 0.5, 19},
		"face and tongue": {(b.x1 - b.x0) / 0.5, 127 + 6.35},
		"thickness":       {(b.y1 - b.y0) / 0.5, 19.05},
	} {
		if math.Abs(x[0]-x[1]) > 1e-9 {
			t.Errorf("%s: drawn %v, is %v", what, x[0], x[1])
		}
	}
	n := boxOf([]sheet.Item{sheet.Polygon{Rings: [][]sheet.Pt{ring(f, "next")}}})
	if air := (n.x0 - (b.x1 - 6.35*0.5)) / 0.5; math.Abs(air-oak.Air().Millimetres()) > 1e-9 {
		t.Errorf("air of the joint drawn %v", air)
	}
}

// Tongue and groove mate: no corner of one lies in the other.
func TestProfilesMate(t *testing.T) {
	for _, face := range []tape.Length{9 * tape.Inch / 4, 5 * tape.Inch, 200 * tape.Millimetre} {
		o := oak
		o.Face, o.TenBoards = face, 0
		p := ProfileOf(o)
		c := New(1)
		a, b := c.papers(p.Ring(p.Face, Grooved, Tongued)), c.papers(Shift(p.Ring(p.Face, Grooved, Tongued), At(p.Pitch(), 0)))
		for _, q := range a {
			if inside(b, q.Add(sheet.Pt{X: -1e-6})) {
				t.Errorf("face %v: the tongue's corner %v lies in the next board", face, q)
			}
		}
		for _, q := range b {
			if inside(a, q.Add(sheet.Pt{X: 1e-6})) {
				t.Errorf("face %v: the groove's corner %v lies in the tongue", face, q)
			}
		}
		if got := p.Ring(p.Face, Grooved, Tongued); got[len(got)-1].Y != 0 && got[0].Y != 0 {
			t.Error("no board stands on its underside")
		}
	}
}

// faults are texts on texts, texts outside the figure, leaders over texts and
// leaders that cross.
func faults(f Figure) []string {
	var out []string
	var texts []sheet.Text
	var leaders [][]sheet.Pt
	for _, it := range f.Items {
		switch it := it.(type) {
		case sheet.Text:
			texts = append(texts, it)
		case sheet.Polyline:
			if it.Name == leaderName {
				leaders = append(leaders, it.Points)
			}
		}
	}
	for i, a := range texts {
		x := a.Box()
		for _, c := range x {
			if c.X < 0 || c.Y < 0 || c.X > f.W || c.Y > f.H {
				out = append(out, fmt.Sprintf("%q leaves the figure", a.Text))
				break
			}
		}
		for _, b := range texts[:i] {
			y := b.Box()
			if sheet.Overlap(x[:], y[:]) {
				out = append(out, fmt.Sprintf("%q lies on %q", a.Text, b.Text))
			}
		}
		for _, l := range leaders {
			if passes(l[1], l[2], a) {
				out = append(out, fmt.Sprintf("a leader passes over %q", a.Text))
			}
		}
	}
	for i, a := range leaders {
		for _, b := range leaders[:i] {
			if crossing(a[1], a[2], b[1], b[2]) {
				out = append(out, "leaders cross")
			}
		}
	}
	return out
}

func TestNothingOverlaps(t *testing.T) {
	for _, f := range []Figure{wall(), materials()} {
		for _, x := range faults(f) {
			t.Error(x)
		}
	}
}

// Many notes on scattered places and many dimensions still keep apart.
func TestCrowd(t *testing.T) {
	for seed := range 60 {
		c := New(1)
		c.Cut("a", Plain, Rect(0, 0, 80, 50))
		for i := range 9 {
			c.Note(At(80*halton(i+seed*11, 2), 50*halton(i+seed*11, 3)), strings.Repeat("some words ", 1+(i+seed)%6))
			a, w := 80*halton(i+seed*7, 5), 30*halton(i+seed*5, 3)
			c.Dim(Side(i%3), At(a, a/2), At(a+w, a/2+w), `1' 2-3/16"`)
		}
		for _, x := range faults(c.Figure(50)) {
			if !strings.Contains(x, "leader") { // nine leaders through a crowd may have no way round
				t.Errorf("%d: %s", seed, x)
			}
			if x == "leaders cross" {
				t.Errorf("%d: %s", seed, x)
			}
		}
	}
}

// The rules can be broken, and are then seen.
func TestFaultsSee(t *testing.T) {
	f := wall()
	word := f.Items[len(f.Items)-1].(sheet.Text)
	q := word.Box()
	for want, it := range map[string]sheet.Item{
		"lies on":       word,
		"leaves":        sheet.Text{Text: "away", Size: 3, At: sheet.Pt{X: f.W - 1, Y: 9}},
		"passes over":   sheet.Polyline{Name: leaderName, Points: []sheet.Pt{{}, q[0].Add(sheet.Pt{X: -2, Y: 1}), q[2]}},
		"leaders cross": sheet.Polyline{Name: leaderName, Points: []sheet.Pt{{}, {X: 110, Y: 0}, {X: 110, Y: f.H}}},
	} {
		g := f
		g.Items = append(append([]sheet.Item(nil), f.Items...), it)
		if got := strings.Join(faults(g), "\n"); !strings.Contains(got, want) {
			t.Errorf("%q is not seen: %s", want, got)
		}
	}
}

func TestSame(t *testing.T) {
	if !reflect.DeepEqual(wall(), wall()) || !reflect.DeepEqual(materials(), materials()) {
		t.Error("two drawings of one thing differ")
	}
}

// Hatches stay in their areas.
func TestHatchesStayIn(t *testing.T) {
	shape := []sheet.Pt{{X: 0, Y: 0}, {X: 40, Y: 0}, {X: 40, Y: 12}, {X: 25, Y: 12}, {X: 25, Y: 30}, {X: 0, Y: 30}}
	for m := Plain; m <= Solid; m++ {
		its := hatch(m, shape, 1)
		if (m == Plain || m == Solid) != (len(its) == 0) {
			t.Errorf("material %d: %d items", m, len(its))
		}
		b := boxOf(its)
		if len(its) > 0 && (b.x0 < -0.3 || b.y0 < -0.3 || b.x1 > 40.3 || b.y1 > 30.3) {
			t.Errorf("material %d reaches %v", m, b)
		}
		for _, it := range its {
			l, ok := it.(sheet.Polyline)
			if !ok {
				continue
			}
			for i := 1; i < len(l.Points); i++ {
				if q := l.Points[i-1].Add(l.Points[i]).Times(0.5); q.X > 25.4 && q.Y > 12.4 {
					t.Errorf("material %d: a line outside, at %v", m, q)
					break
				}
			}
		}
	}
}
