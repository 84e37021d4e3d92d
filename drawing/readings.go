package drawing

import (
	"fmt"
	"math"

	"strake/plan"
	"strake/plane"
	"strake/sheet"
	"strake/survey"
)

// The page of the readings, A4 across, and its parts in mm.
const (
	readW, readH = 297.0, 210.0
	readEdge     = 12.0
	readTop      = 36.0
	readFoot     = 34.0
	biggest      = 9.0 // what the largest misfit is drawn as
)

// Readings draws the rooms twice: left as fitted, with every reading as a line;
// right the same lines with what each misses by, drawn large enough to see.
// Suspects are heavy, unchecked readings dashed.
func Readings(p plan.Plan) sheet.Sheet {
	s := sheet.Sheet{Title: p.Job.Name + ", readings", W: readW, H: readH}
	d := &readings{p: p, s: &s, rep: p.Survey.Report(p.Job.Readings)}
	d.write(readEdge, readEdge+5, 6, p.Job.Name, true)
	d.write(readEdge, readEdge+11, 3.2, "Readings against the fitted room. Seen from above.", false)
	half := (readW - 3*readEdge) / 2
	d.half(readEdge, half, "as fitted", false)
	factor := d.factor()
	d.half(2*readEdge+half, half, fmt.Sprintf("what each reading misses by, drawn %.0f times", factor), true)
	d.legend()
	return s
}

type readings struct {
	p     plan.Plan
	s     *sheet.Sheet
	rep   survey.Report
	boxes [][4]sheet.Pt
	scale float64 // of the rooms on paper
}

func (d *readings) write(x, y, size float64, text string, bold bool) {
	t := sheet.Text{Text: text, At: sheet.Pt{X: x, Y: y}, Size: size, Bold: bold, Ink: sheet.Black}
	d.boxes = append(d.boxes, t.Box())
	d.s.Put(t)
}

// half draws the rooms into a half of the page.
func (d *readings) half(x, width float64, title string, misfits bool) {
	d.write(x, readTop-4, 4, title, true)
	lo, hi := d.extent()
	high := readH - readTop - readFoot
	d.scale = math.Min((width-16)/math.Max(1, hi.X-lo.X), (high-16)/math.Max(1, hi.Y-lo.Y))
	place := func(q plane.XY) sheet.Pt {
		return sheet.Pt{X: x + width/2 + (q.X-(lo.X+hi.X)/2)*d.scale, Y: readTop + high/2 - (q.Y-(lo.Y+hi.Y)/2)*d.scale}
	}
	for _, r := range d.p.Built.Rooms {
		pts, _ := d.p.Built.Outline(r)
		ring := make([]sheet.Pt, len(pts))
		for i, q := range pts {
			ring[i] = place(q)
		}
		d.s.Put(sheet.Polygon{Rings: [][]sheet.Pt{ring}, Pen: sheet.Pen{Width: 0.7, Ink: sheet.Black}})
	}
	for _, r := range d.p.Built.Rooms {
		ring := r.Ring()
		for i, c := range ring {
			d.letter(ring, i, c, place)
		}
	}
	for i := range d.rep.Verdicts {
		d.line(i, place, misfits)
	}
}

// letter writes a corner's name outside it.
func (d *readings) letter(ring []string, i int, c string, place func(plane.XY) sheet.Pt) {
	n := len(ring)
	at := d.p.Built.At[c]
	u, v := d.p.Built.At[ring[(i+n-1)%n]].Sub(at), d.p.Built.At[ring[(i+1)%n]].Sub(at)
	if u.Len() == 0 || v.Len() == 0 {
		return
	}
	out := u.Unit().Add(v.Unit()).Times(-1)
	if v.Cross(u) < 0 {
		out = out.Times(-1)
	}
	if out.Len() < 0.05 {
		out = v.Unit().Left().Times(-1)
	}
	out = out.Unit()
	q := place(at)
	d.try(sheet.Text{Text: c, At: sheet.Pt{X: q.X + out.X*4, Y: q.Y - out.Y*4 + 1.4}, Size: 4, Anchor: sheet.Middle, Bold: true, Ink: sheet.Black})
}

// try writes a text unless it would lie on another; it tells whether it did.
func (d *readings) try(t sheet.Text) bool {
	box := t.Box()
	for _, b := range d.boxes {
		if sheet.Overlap(box[:], b[:]) {
			return false
		}
	}
	d.boxes = append(d.boxes, box)
	d.s.Put(t)
	return true
}

// line draws one reading; on the right half a bar square to it shows the
// misfit: to the left of the line (from its first end) where the room is
// longer than the reading.
func (d *readings) line(i int, place func(plane.XY) sheet.Pt, misfits bool) {
	v := d.rep.Verdicts[i]
	r := d.p.Job.Readings[v.Reading]
	a, ok := d.p.Built.At[r.From]
	b, ok2 := d.p.Built.At[r.To]
	if !ok || !ok2 || r.Kind != survey.Between {
		return
	}
	p, q := place(a), place(b)
	pen := sheet.Pen{Width: 0.2, Ink: sheet.Mid}
	suspect := v.Suspect && d.rep.Wrong
	switch {
	case suspect:
		pen = sheet.Pen{Width: 0.9, Ink: sheet.Black}
	case !v.Checked:
		pen = sheet.Pen{Width: 0.35, Ink: sheet.Dark, Dash: []float64{1.6, 1.2}}
	}
	d.s.Put(sheet.Polyline{Name: r.Name(), Points: []sheet.Pt{p, q}, Pen: pen})
	if !misfits || b.Sub(a).Len() == 0 {
		return
	}
	u := b.Sub(a).Unit().Left().Times(v.Residual * d.factor() * d.scale)
	mid := p.Add(q).Times(0.5)
	tip := mid.Add(sheet.Pt{X: u.X, Y: -u.Y})
	d.s.Put(sheet.Polyline{Points: []sheet.Pt{mid, tip}, Pen: sheet.Pen{Width: 1.1, Ink: sheet.Black}})
	label := fmt.Sprintf("%s %+.1f", r.Name(), v.Residual)
	for _, k := range []float64{0.5, 0.35, 0.65, 0.25, 0.75} {
		at := p.Add(q.Sub(p).Times(k))
		if d.try(sheet.Text{Text: label, At: sheet.Pt{X: at.X, Y: at.Y - 1}, Size: 2.4, Anchor: sheet.Middle, Ink: sheet.Black}) {
			return
		}
	}
}

// factor is how many times misfits are drawn: a round figure that makes the
// largest about biggest mm on paper.
func (d *readings) factor() float64 {
	most := 0.0
	for _, v := range d.rep.Verdicts {
		most = math.Max(most, math.Abs(v.Residual))
	}
	if most*d.scale < 1e-9 {
		return 1
	}
	f := biggest / (most * d.scale)
	ten := math.Pow(10, math.Floor(math.Log10(f)))
	for _, k := range []float64{5, 2, 1} {
		if k*ten <= f {
			return k * ten
		}
	}
	return ten
}

func (d *readings) extent() (lo, hi plane.XY) {
	first := true
	for _, r := range d.p.Built.Rooms {
		pts, _ := d.p.Built.Outline(r)
		for _, q := range pts {
			if first {
				lo, hi, first = q, q, false
			}
			lo.X, lo.Y = math.Min(lo.X, q.X), math.Min(lo.Y, q.Y)
			hi.X, hi.Y = math.Max(hi.X, q.X), math.Max(hi.Y, q.Y)
		}
	}
	return
}

func (d *readings) legend() {
	y := readH - readFoot + 8
	for _, l := range []struct {
		pen  sheet.Pen
		text string
	}{
		{sheet.Pen{Width: 0.9, Ink: sheet.Black}, "suspect: probably the wrong one"},
		{sheet.Pen{Width: 0.35, Ink: sheet.Dark, Dash: []float64{1.6, 1.2}}, "unchecked: an error in it would not show"},
		{sheet.Pen{Width: 0.2, Ink: sheet.Mid}, "checked"},
		{sheet.Pen{Width: 1.1, Ink: sheet.Black}, "bar square to a reading: the fitted room less the reading, mm; all figures stand in readings.txt"},
	} {
		d.s.Put(sheet.Polyline{Points: []sheet.Pt{{X: readEdge, Y: y - 1}, {X: readEdge + 14, Y: y - 1}}, Pen: l.pen})
		d.write(readEdge+17, y, 3, l.text, false)
		y += 5
	}
}
