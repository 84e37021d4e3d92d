package drawing

import (
	"context"
	"strings"
	"testing"

	"strake/examples"
	"strake/job"
	"strake/jobfile"
	"strake/plan"
	"strake/room"
	"strake/sheet"
	"strake/subfloor"
	"strake/tape"
)

// Each mark is drawn once: a white triangle with + where it is built up, a black
// one with - where it is taken off, a dot where it is left, a question mark where
// nothing was read; figures lie on no other writing.
func TestHeightsSheet(t *testing.T) {
	data, err := examples.Read("ferry-parlour")
	if err != nil {
		t.Fatal(err)
	}
	j, _, err := jobfile.ReadJob("ferry-parlour", data)
	if err != nil {
		t.Fatal(err)
	}
	in := tape.Inch
	g := subfloor.Grid{Step: 12 * in, Cols: 12, Rows: 8, Height: make([]tape.Length, 96), Hole: make([]bool, 96)}
	g.Height[2*12+3], g.Height[5*12+8], g.Hole[5] = in, -in, true
	j.Subfloor = job.Subfloor{On: subfloor.OnWood, Layers: []subfloor.Layer{{Material: subfloor.Plywood, Thickness: 9 * in / 8}},
		Heights: job.Heights{Wall: room.Wall{"A", "B"}, From: "A", At: 24 * in, Off: 12 * in, Grid: g}}
	p := plan.MakeWithin(context.Background(), j, 0)
	marks, w := p.Heights()
	if !w.Flat || len(marks) != 96 {
		t.Fatalf("%d marks", len(marks))
	}
	up, off, dots, holes := 0, 0, 0, 0
	for _, m := range marks {
		switch c := changed(m.Change, j.Unit); {
		case !m.Read:
			holes++
		case c == "":
			dots++
		case m.Change > 0:
			up++
		default:
			off++
		}
	}
	if up == 0 || off == 0 || dots == 0 || holes != 1 {
		t.Fatalf("%d up, %d off, %d left, %d holes", up, off, dots, holes)
	}
	s := Heights(p)
	var texts []sheet.Text
	for _, it := range s.Items {
		switch v := it.(type) {
		case sheet.Polygon:
			if len(v.Rings) == 1 && len(v.Rings[0]) == 3 {
				up, off = up-one(v.Fill == sheet.White), off-one(v.Fill == sheet.Black)
			}
			dots -= one(v.Fill == sheet.Mid)
		case sheet.Text:
			if strings.HasPrefix(v.Text, "+") || strings.HasPrefix(v.Text, "-") || v.Text == "?" {
				texts = append(texts, v)
			}
			holes -= one(v.Text == "?")
		}
	}
	if up != 0 || off != 0 || dots != 0 || holes != 0 {
		t.Errorf("left of each: %d up, %d off, %d dots, %d holes", up, off, dots, holes)
	}
	for i, a := range texts {
		for _, b := range texts[:i] {
			x, y := a.Box(), b.Box()
			if x[0].X < y[1].X && y[0].X < x[1].X && x[2].Y < y[0].Y && y[2].Y < x[0].Y {
				t.Errorf("%q lies on %q", a.Text, b.Text)
			}
		}
	}
}

func one(b bool) int {
	if b {
		return 1
	}
	return 0
}

func TestChanged(t *testing.T) {
	for l, want := range map[tape.Length]string{3 * tape.Inch / 16: "+3/16", -5 * tape.Inch / 32: "-5/32", tape.Inch / 128: "", tape.Inch * 5 / 4: "+1-1/4"} {
		if got := changed(l, tape.UnitFoot); got != want {
			t.Errorf("%v: %q, want %q", l, got, want)
		}
	}
	if got := changed(-5*tape.Millimetre/2, tape.UnitMetre); got != "-2.5" {
		t.Errorf("%q", got)
	}
}
