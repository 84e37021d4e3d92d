package drawing

import (
	"strings"
	"testing"

	"strake/room"
	"strake/sheet"
	"strake/survey"
	"strake/tape"

	"strake/plan"
)

// readingsPlan is a fitted room of 180 by 144 in; slip is added to one reading.
func readingsPlan(slip tape.Length) plan.Plan {
	var p plan.Plan
	p.Job.Name, p.Job.Unit = "Shed", tape.UnitInch
	s := room.Sketch{Rooms: []room.Room{{Name: "shed", Corners: []string{"A", "B", "C", "D"}}},
		Points: []room.Point{{Name: "M", Wall: room.Wall{"A", "B"}, From: "A", At: 90 * tape.Inch}, {Name: "N", Wall: room.Wall{"C", "D"}, From: "C", At: 90 * tape.Inch}}}
	read := func(a, b string, l tape.Length) {
		p.Job.Readings = append(p.Job.Readings, survey.Reading{From: a, To: b, Value: l, Step: tape.Sixteenth})
	}
	in := tape.Inch
	read("A", "B", 180*in)
	read("B", "C", 144*in)
	read("C", "D", 180*in)
	read("D", "A", 144*in)
	diagonal := tape.Nearest(tape.Length(230.5125*float64(in)), tape.Sixteenth)
	read("A", "C", diagonal+slip)
	read("B", "D", diagonal)
	cross := tape.Nearest(tape.Length(169.8117*float64(in)), tape.Sixteenth)
	for _, c := range []string{"C", "D"} {
		read("M", c, cross)
	}
	for _, c := range []string{"A", "B"} {
		read("N", c, cross)
	}
	p.Job.Sketch = s
	p.Survey = survey.Adjust(s, p.Job.Readings, survey.Tape())
	p.Built = p.Survey.Built
	return p
}

// A slip of an inch in one diagonal is the heavy line; no text lies on another.
func TestReadingsSheet(t *testing.T) {
	for _, slip := range []tape.Length{0, tape.Inch} {
		s := Readings(readingsPlan(slip))
		var texts []sheet.Text
		heavy := map[string]bool{}
		for _, it := range s.Items {
			switch v := it.(type) {
			case sheet.Text:
				texts = append(texts, v)
			case sheet.Polyline:
				if v.Name != "" && v.Pen.Width > 0.8 {
					heavy[v.Name] = true
				}
			}
		}
		if heavy["A-C"] != (slip != 0) || len(heavy) > 1 {
			t.Errorf("slip %v: heavy lines %v", slip, heavy)
		}
		for i, a := range texts {
			for _, b := range texts[:i] {
				x, y := a.Box(), b.Box()
				if sheet.Overlap(x[:], y[:]) {
					t.Errorf("%q lies on %q", a.Text, b.Text)
				}
			}
		}
		if n := len(texts); n < 12 || !strings.Contains(texts[2].Text+texts[3].Text, "as fitted") {
			t.Errorf("%d texts, the third %q", n, texts[2].Text)
		}
	}
}
