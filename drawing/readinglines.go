package drawing

import (
	"fmt"
	"math"
	"slices"

	"strake/plane"
	"strake/sheet"
	"strake/survey"
)

// span is where the tape lay for a reading in the fitted room; false when it
// names what is not there.
func (d *readings) span(r survey.Reading) (a, b plane.XY, ok bool) {
	at := d.p.Built.At
	a, ok = at[r.From]
	if r.Kind == survey.Between {
		b, to := at[r.To]
		return a, b, ok && to && a != b
	}
	p, okP := at[r.Wall[0]]
	q, okQ := at[r.Wall[1]]
	if !ok || !okP || !okQ || p == q {
		return a, b, false
	}
	u := q.Sub(p).Unit()
	foot := func(c plane.XY) plane.XY { return p.Add(u.Times(u.Dot(c.Sub(p)))) }
	switch r.Kind {
	case survey.Off:
		b = foot(a)
	case survey.Along:
		to, okTo := at[r.To]
		b, ok = foot(to), okTo
	case survey.Width:
		b, ok = d.across(r.From, a, p, u)
	}
	return a, b, ok && a != b
}

// across is where a line from a, square to the wall that the point of this
// name lies on, meets the line through p along u.
func (d *readings) across(name string, a, p, u plane.XY) (plane.XY, bool) {
	for _, pt := range d.p.Built.Points {
		if pt.Name != name {
			continue
		}
		w := d.p.Built.At[pt.Wall[1]].Sub(d.p.Built.At[pt.Wall[0]])
		if w.Len() == 0 || math.Abs(w.Unit().Left().Cross(u)) < 0.1 {
			return a, false
		}
		n := w.Unit().Left()
		return a.Add(n.Times(p.Sub(a).Cross(u) / n.Cross(u))), true
	}
	return a, false
}

func (d *readings) suspect(i int) bool { return d.rep.Wrong && d.rep.Verdicts[i].Suspect }

// line draws one reading.
func (d *readings) line(i int) {
	r := d.p.Job.Readings[d.rep.Verdicts[i].Reading]
	a, b, ok := d.span(r)
	if !ok {
		return
	}
	pen := checkedPen
	switch {
	case d.suspect(i):
		pen = suspectPen
	case !d.rep.Verdicts[i].Checked:
		pen = uncheckedPen
	}
	d.s.Put(sheet.Polyline{Name: r.Name(), Points: []sheet.Pt{d.place(a), d.place(b)}, Pen: pen})
}

// order is the readings in the order they get their bars and names: suspects,
// unchecked ones, the others, of these the largest misfit first.
func (d *readings) order() []int {
	rank := func(i int) int {
		switch {
		case d.suspect(i):
			return 0
		case !d.rep.Verdicts[i].Checked:
			return 1
		}
		return 2
	}
	out := make([]int, len(d.rep.Verdicts))
	for i := range out {
		out[i] = i
	}
	slices.SortStableFunc(out, func(i, j int) int {
		if a, b := rank(i), rank(j); a != b {
			return a - b
		}
		x, y := math.Abs(d.rep.Verdicts[i].Residual), math.Abs(d.rep.Verdicts[j].Residual)
		return int(math.Round(100 * (y - x)))
	})
	return out
}

// tapeName is a reading's name where there is little room.
func tapeName(r survey.Reading) string {
	if r.Kind == survey.Off || r.Kind == survey.Width {
		return r.From + " to wall " + r.Wall.String()
	}
	return r.From + "-" + r.To
}

// parts of a reading at which a bar or a name may stand.
var parts = []float64{0.5, 0.42, 0.58, 0.35, 0.65, 0.27, 0.73, 0.2, 0.8, 0.13, 0.87}

// misfits draws every reading's misfit as a bar square to it, all bars first,
// then its name and figure beside it.
func (d *readings) misfits() {
	order := d.order()
	where := map[int]float64{}
	for _, i := range order {
		if a, b, ok := d.span(d.p.Job.Readings[d.rep.Verdicts[i].Reading]); ok {
			where[i] = d.bar(d.place(a), d.place(b), d.rep.Verdicts[i].Residual)
		}
	}
	for _, i := range order {
		v := d.rep.Verdicts[i]
		r := d.p.Job.Readings[v.Reading]
		if a, b, ok := d.span(r); ok {
			d.name(d.place(a), d.place(b), fmt.Sprintf("%s %s", tapeName(r), tenths(v.Residual)), where[i], v.Residual)
		}
	}
}

// flagged names the suspects and the unchecked readings.
func (d *readings) flagged() {
	for _, i := range d.order() {
		v := d.rep.Verdicts[i]
		r := d.p.Job.Readings[v.Reading]
		if a, b, ok := d.span(r); ok && (d.suspect(i) || !v.Checked) {
			d.name(d.place(a), d.place(b), tapeName(r), 0.5, 0)
		}
	}
}

// tenths prints mm with its sign, nothing as 0.
func tenths(mm float64) string {
	if math.Abs(mm) < 0.05 {
		return "0"
	}
	return fmt.Sprintf("%+.1f", mm)
}

// bar draws a misfit at the first part of the line where no other bar or text
// is in the way, and tells which. The room being longer than the reading, it
// lies on the left of the line from p to q.
func (d *readings) bar(p, q sheet.Pt, mm float64) float64 {
	u := unit(q.Sub(p))
	tip := sheet.Pt{X: u.Y, Y: -u.X}.Times(mm * d.times / d.scale.one)
	if length(tip) < 0.4 {
		return parts[0]
	}
	best := parts[0]
	strip := func(k float64) []sheet.Pt {
		foot := between(p, q, k)
		side := u.Times(barPen.Width/2 + 0.3)
		return []sheet.Pt{foot.Sub(side), foot.Add(side), foot.Add(side).Add(tip), foot.Sub(side).Add(tip)}
	}
	for _, k := range parts {
		if !d.labels.taken.over(strip(k)) {
			best = k
			break
		}
	}
	d.labels.reserve(strip(best))
	foot := between(p, q, best)
	d.s.Put(sheet.Polyline{Points: []sheet.Pt{foot, foot.Add(tip)}, Pen: barPen})
	return best
}

// name writes a reading's name along its line, off the side its bar is on,
// near the part at, on a white ground; nothing where there is no room.
func (d *readings) name(p, q sheet.Pt, text string, at, mm float64) {
	turn := reading(p, q)
	away := up(turn)
	u := unit(q.Sub(p))
	bar := sheet.Pt{X: u.Y, Y: -u.X}.Times(mm)
	if away.X*bar.X+away.Y*bar.Y > 0 { // the bar is above: write below
		away = away.Times(-1)
	}
	var texts []sheet.Text
	for _, side := range []float64{1, -1} {
		for _, k := range append([]float64{at}, parts...) {
			t := sheet.Text{Text: text, Size: tiny, Anchor: sheet.Middle, Turn: turn, Ink: sheet.Black}
			mid := between(p, q, k).Add(away.Times(side * (0.5*tiny + 0.8)))
			t.At = mid.Sub(up(turn).Times(0.36 * tiny))
			texts = append(texts, t)
		}
	}
	if t, ok := d.labels.first(texts, func(t sheet.Text) bool { return t.Width() < 1.5*length(q.Sub(p)) && d.offWalls(t) }); ok {
		d.s.Put(sheet.Polygon{Rings: [][]sheet.Pt{grown(t, 0.1)}, Fill: sheet.White}, t)
	}
}
