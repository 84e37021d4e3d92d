package drawing

import (
	"fmt"
	"math"

	"strake/plan"
	"strake/plane"
	"strake/room"
	"strake/sheet"
	"strake/survey"
)

// The page of the readings, A4 across, and its parts in mm.
const (
	readW, readH = 297.0, 210.0
	readEdge     = 12.0
	readTop      = 36.0
	readFoot     = 36.0
	readAround   = 14.0 // kept free round the rooms for letters and figures
	biggest      = 9.0  // the largest misfit is drawn no longer than this
	noticed      = 0.05 // misfits below this, mm, are nothing to enlarge
)

var (
	suspectPen   = sheet.Pen{Width: 0.9, Ink: sheet.Black}
	uncheckedPen = sheet.Pen{Width: 0.35, Ink: sheet.Dark, Dash: []float64{1.6, 1.2}}
	checkedPen   = sheet.Pen{Width: 0.2, Ink: sheet.Dark}
	barPen       = sheet.Pen{Width: 1.3, Ink: sheet.Dark}
	wallPen      = sheet.Pen{Width: 2, Ink: sheet.Light} // under the readings along it
)

// Readings draws the rooms twice: left as fitted, with every reading as a line;
// right the same lines with what each misses by, drawn large enough to see.
// Suspects are heavy, unchecked readings dashed. The rooms lie as on the plan.
func Readings(p plan.Plan) sheet.Sheet {
	s := sheet.Sheet{Title: p.Job.Name + ", readings", W: readW, H: readH}
	d := &readings{p: p, s: &s, rep: p.Survey.Report(p.Job.Readings)}
	d.labels.bounds = box{sheet.Pt{X: 2, Y: 2}, sheet.Pt{X: readW - 2, Y: readH - 2}}
	d.fit()
	d.write(readEdge, readEdge+5, 6, p.Job.Name, true)
	d.write(readEdge, readEdge+11, 3.2, "Readings against the fitted room, seen from above. Scale "+d.scale.String(), false)
	d.half(readEdge, "The room as fitted", false)
	d.half(2*readEdge+d.width(), fmt.Sprintf("What each reading misses by, %g times the scale of the room", d.times), true)
	d.legend()
	return s
}

// readings is the sheet of the readings while it is drawn.
type readings struct {
	p      plan.Plan
	s      *sheet.Sheet
	rep    survey.Report
	labels labels
	scale  scale
	times  float64  // how much larger than the rooms misfits are drawn
	lo, hi plane.XY // of the rooms, turned as they lie on the page
	x      float64  // left side of the half that is drawn
}

func (d *readings) width() float64  { return (readW - 3*readEdge) / 2 }
func (d *readings) height() float64 { return readH - readTop - readFoot }

// turned is a place of the floor plan as the plan drawing lies: rows level.
func (d *readings) turned(q plane.XY) plane.XY {
	v := plane.XY(d.p.Aligned.Dir)
	if v.Len() == 0 {
		return q
	}
	return plane.XY{X: v.Dot(q), Y: v.Cross(q)}
}

// place is a place of the floor plan on the page.
func (d *readings) place(q plane.XY) sheet.Pt {
	q = d.turned(q)
	return sheet.Pt{X: d.x + d.width()/2 + (q.X-(d.lo.X+d.hi.X)/2)/d.scale.one,
		Y: readTop + d.height()/2 - (q.Y-(d.lo.Y+d.hi.Y)/2)/d.scale.one}
}

// fit chooses the scale of the rooms, one that rulers are made in, and how
// much larger misfits are drawn: a round figure that makes the largest of them
// no longer than biggest and at least two fifths of it.
func (d *readings) fit() {
	d.extent()
	scales := metricScales
	if d.p.Job.Unit.Imperial() {
		scales = inchScales
	}
	w, h := d.width()-2*readAround, d.height()-2*readAround
	least := math.Max((d.hi.X-d.lo.X)/w, (d.hi.Y-d.lo.Y)/h)
	d.scale = scale{one: math.Max(1, math.Ceil(least))}
	for _, s := range scales {
		if s.one >= least {
			d.scale = s
			break
		}
	}
	most := noticed
	for _, v := range d.rep.Verdicts {
		most = math.Max(most, math.Abs(v.Residual))
	}
	d.times = round125(biggest * d.scale.one / most)
}

// round125 is the largest of 1, 2, 5 times a power of ten up to f.
func round125(f float64) float64 {
	ten := math.Pow(10, math.Floor(math.Log10(f)))
	for _, k := range []float64{5, 2} {
		if k*ten <= f {
			return k * ten
		}
	}
	return ten
}

func (d *readings) extent() {
	first := true
	for _, r := range d.p.Built.Rooms {
		pts, _ := d.p.Built.Outline(r)
		for _, q := range pts {
			q = d.turned(q)
			if first {
				d.lo, d.hi, first = q, q, false
			}
			d.lo.X, d.lo.Y = math.Min(d.lo.X, q.X), math.Min(d.lo.Y, q.Y)
			d.hi.X, d.hi.Y = math.Max(d.hi.X, q.X), math.Max(d.hi.Y, q.Y)
		}
	}
}

// write puts a text of the page's frame in its place.
func (d *readings) write(x, y, size float64, text string, bold bool) {
	t := sheet.Text{Text: text, At: sheet.Pt{X: x, Y: y}, Size: size, Bold: bold, Ink: sheet.Black}
	for t.Width() > readW-readEdge-x && t.Size > 2 {
		t.Size -= 0.1
	}
	d.labels.take(t)
	d.s.Put(t)
}

// half draws the rooms into a half of the page.
func (d *readings) half(x float64, title string, misfits bool) {
	d.x = x
	t := sheet.Text{Text: title, At: sheet.Pt{X: x, Y: readTop - 5}, Size: 3.6, Bold: true, Ink: sheet.Black}
	for t.Width() > d.width() {
		t.Size -= 0.1
	}
	d.labels.take(t)
	d.s.Put(t)
	for _, r := range d.p.Built.Rooms {
		d.s.Put(sheet.Polygon{Rings: [][]sheet.Pt{d.ring(r)}, Pen: wallPen})
	}
	for i := range d.rep.Verdicts {
		d.line(i)
	}
	for _, r := range d.p.Built.Rooms {
		d.letters(r)
	}
	if misfits {
		d.misfits()
	} else {
		d.flagged()
	}
	d.points()
}

func (d *readings) ring(r room.Room) []sheet.Pt {
	pts, _ := d.p.Built.Outline(r)
	out := make([]sheet.Pt, len(pts))
	for i, q := range pts {
		out[i] = d.place(q)
	}
	return out
}

func (d *readings) legend() {
	y := readH - readFoot + 7
	for _, l := range []struct {
		pen  sheet.Pen
		long float64
		text string
	}{
		{suspectPen, 14, "suspect: probably the wrong one"},
		{uncheckedPen, 14, "unchecked: an error in it would not show"},
		{checkedPen, 14, "checked"},
		{barPen, 0, ""},
	} {
		if l.text == "" {
			size := round125(14 * d.scale.one / d.times)
			l.long = size * d.times / d.scale.one
			l.text = fmt.Sprintf("%g mm of misfit; on the left of a reading, seen from the name it starts with, where the room is longer than it. All figures stand in readings.txt.", size)
		}
		d.s.Put(sheet.Polyline{Points: []sheet.Pt{{X: readEdge, Y: y - 1}, {X: readEdge + l.long, Y: y - 1}}, Pen: l.pen})
		d.write(readEdge+17, y, 3, l.text, false)
		y += 5.5
	}
}
