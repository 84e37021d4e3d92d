package drawing

import (
	"bytes"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"strake/examples"
	"strake/jobfile"
	"strake/plan"
	"strake/plane"
	"strake/room"
	"strake/sheet"
	"strake/sheet/svg"
	"strake/survey"
	"strake/tape"
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

// oblong is the same room with a width, an offset and a length along a wall,
// and without diagonals: some of it is unchecked.
func oblong() plan.Plan {
	p := readingsPlan(0)
	p.Job.Readings = append(p.Job.Readings[:4:4],
		survey.Reading{Kind: survey.Width, From: "M", Wall: room.Wall{"C", "D"}, Value: 144 * tape.Inch, Step: tape.Sixteenth},
		survey.Reading{Kind: survey.Off, From: "N", Wall: room.Wall{"A", "B"}, Value: 144*tape.Inch + tape.Sixteenth, Step: tape.Sixteenth},
		survey.Reading{Kind: survey.Along, From: "A", To: "N", Wall: room.Wall{"A", "B"}, Value: 90 * tape.Inch, Step: tape.Sixteenth})
	p.Survey = survey.Adjust(p.Job.Sketch, p.Job.Readings, survey.Tape())
	p.Built = p.Survey.Built
	return p
}

func TestReadingsGolden(t *testing.T) {
	for name, p := range map[string]plan.Plan{"shed": readingsPlan(0), "slip": readingsPlan(tape.Inch), "oblong": oblong()} {
		var b bytes.Buffer
		if err := svg.Write(&b, Readings(p)); err != nil {
			t.Fatal(err)
		}
		path := filepath.Join("testdata", name+".readings.svg")
		if *update {
			if err := os.WriteFile(path, b.Bytes(), 0o666); err != nil {
				t.Fatal(err)
			}
			continue
		}
		want, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(b.Bytes(), want) {
			t.Errorf("%s differs from %s: look at both, then run with -update", name, path)
		}
	}
}

// Each reading lies where the tape lay, whichever way it was held: the ends
// are as far apart as the reading says, to the misfit.
func TestReadingsLieWhereTheTapeLay(t *testing.T) {
	for _, p := range []plan.Plan{readingsPlan(0), oblong()} {
		d := &readings{p: p, rep: p.Survey.Report(p.Job.Readings)}
		for _, v := range d.rep.Verdicts {
			r := p.Job.Readings[v.Reading]
			a, b, ok := d.span(r)
			if got, want := b.Sub(a).Len(), v.Adjusted; !ok || math.Abs(got-want) > 2 {
				t.Errorf("%s: %.2f mm drawn, %.2f fitted", r.Name(), got, want)
			}
		}
		if _, _, ok := d.span(survey.Reading{From: "A", To: "Z"}); ok {
			t.Error("a reading to nowhere is drawn")
		}
	}
}

// An unchecked reading is dashed and a checked one is not.
func TestReadingsUncheckedAreDashed(t *testing.T) {
	p := oblong()
	rep := p.Survey.Report(p.Job.Readings)
	dashed := map[string]bool{}
	for _, it := range Readings(p).Items {
		if l, ok := it.(sheet.Polyline); ok && l.Name != "" {
			dashed[l.Name] = len(l.Pen.Dash) > 0
		}
	}
	open := 0
	for _, v := range rep.Verdicts {
		if !v.Checked {
			open++
		}
		if name := p.Job.Readings[v.Reading].Name(); dashed[name] == v.Checked {
			t.Errorf("%s: checked %v, dashed %v", name, v.Checked, dashed[name])
		}
	}
	if open == 0 || open == len(rep.Verdicts) {
		t.Errorf("%d of %d unchecked: the test wants some of each", open, len(rep.Verdicts))
	}
}

// The largest misfit is drawn a few mm long, by a round figure, as the rule
// says; the rooms stand at a ruler's scale, inside their half.
func TestReadingsScale(t *testing.T) {
	for _, slip := range []tape.Length{0, tape.Sixteenth, tape.Inch, 5 * tape.Inch} {
		p := readingsPlan(slip)
		d := &readings{p: p, rep: p.Survey.Report(p.Job.Readings)}
		d.fit()
		most := noticed
		for _, v := range d.rep.Verdicts {
			most = math.Max(most, math.Abs(v.Residual))
		}
		if long := most * d.times / d.scale.one; long > biggest || long < 0.4*biggest {
			t.Errorf("slip %v: the largest misfit is drawn %.1f mm long", slip, long)
		}
		if w := (d.hi.X - d.lo.X) / d.scale.one; w > d.width()-2*readAround {
			t.Errorf("slip %v: the room is %.0f mm wide on paper", slip, w)
		}
	}
	for f, want := range map[float64]float64{1: 1, 1.9: 1, 2: 2, 4.99: 2, 5: 5, 9.9: 5, 230: 200, 0.07: 0.05} {
		if got := round125(f); math.Abs(got-want) > 1e-9*want {
			t.Errorf("%v is rounded to %v, want %v", f, got, want)
		}
	}
}

// Turned as the plan lies, with the rows along the wall from A to D.
func TestReadingsTurned(t *testing.T) {
	p := readingsPlan(0)
	p.Aligned.Dir = plane.Dir{X: 0, Y: 1}
	d := &readings{p: p, rep: p.Survey.Report(p.Job.Readings)}
	d.fit()
	a, b, c := d.place(p.Built.At["A"]), d.place(p.Built.At["D"]), d.place(p.Built.At["B"])
	if math.Abs(a.Y-b.Y) > 0.2 || b.X < a.X || c.Y < a.Y {
		t.Errorf("A %v, D %v, B %v: A-D runs level to the right, B lies below", a, b, c)
	}
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
		apart(t, texts)
		if n := len(texts); n < 12 || !strings.Contains(texts[2].Text+texts[3].Text, "The room as fitted") {
			t.Errorf("%d texts, the third %q", n, texts[2].Text)
		}
	}
}

// apart tells of texts that lie on another or off the sheet.
func apart(t *testing.T, texts []sheet.Text) {
	t.Helper()
	for i, a := range texts {
		x := a.Box()
		for _, c := range x {
			if c.X < 0 || c.Y < 0 || c.X > readW || c.Y > readH {
				t.Errorf("%q leaves the sheet", a.Text)
				break
			}
		}
		for _, b := range texts[:i] {
			y := b.Box()
			if sheet.Overlap(x[:], y[:]) {
				t.Errorf("%q lies on %q", a.Text, b.Text)
			}
		}
	}
}

// The same for the example jobs, where closets and ties crowd the sheet, and
// for a job with a long name.
func TestReadingsTextsApart(t *testing.T) {
	for _, e := range examples.List() {
		data, err := examples.Read(e.Name)
		if err != nil {
			t.Fatal(err)
		}
		j, _, err := jobfile.ReadJob(e.Name, data)
		if err != nil {
			t.Fatal(err)
		}
		p := plan.Rows(j)
		p.Job.Name = strings.Repeat("a long name of a job ", 8)
		s := Readings(p)
		apart(t, texts(s))
		named := 0
		for _, x := range texts(s) {
			if len(x.Text) == 1 {
				named++
			}
		}
		corners := 0
		for _, r := range p.Built.Rooms {
			corners += len(r.Corners)
		}
		if named < 2*corners {
			t.Errorf("%s: %d letters for twice %d corners", e.Name, named, corners)
		}
	}
}
