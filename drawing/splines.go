package drawing

import (
	"strake/lay"
	"strake/plane"
	"strake/sheet"
	"strake/words"
)

var splinePen = sheet.Pen{Width: 1.1, Ink: sheet.Black, Dash: []float64{1.2, 0.8}}

// drawSplines draws each stretch where groove meets groove, heavy and dashed,
// names it, and points an arrow the way the tongues lead in what lies behind.
func (d *draw) drawSplines() {
	for _, s := range d.p.Layout.Splines {
		a, b := d.at(plane.P(s.Along.From, s.Y)), d.at(plane.P(s.Along.To, s.Y))
		d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{a, b}, Pen: splinePen})
		text := sheet.Text{Text: "spline " + d.say.Of(s.Along.Len()), Size: small, Anchor: sheet.Middle}
		var tries []sheet.Text
		for _, dy := range []float64{3.4, -1.4, 5.5, -3.5} {
			for _, k := range []float64{0.5, 0.3, 0.7} {
				t := text
				t.At = sheet.Pt{X: a.X + (b.X-a.X)*k, Y: a.Y + dy}
				tries = append(tries, t)
			}
		}
		if t, ok := d.labels.first(tries, nil); ok {
			d.onWhite(t)
		}
	}
	for _, r := range d.p.Lay.Runs {
		if words.Turned(d.p, r) && len(r.Pieces) > 0 {
			d.drawBackwards(r)
		}
	}
}

// drawBackwards puts a small arrow near the right end of a turned run.
func (d *draw) drawBackwards(r lay.Run) {
	lo, hi := r.Outline.Box()
	a, b := d.at(plane.P(hi.X, hi.Y)), d.at(plane.P(hi.X, lo.Y))
	tall := b.Y - a.Y
	x, top, tip := a.X-1.6, a.Y+0.2*tall, b.Y-0.15*tall
	wing := min(0.9, 0.3*tall)
	d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{{X: x, Y: top}, {X: x, Y: tip}}, Pen: thin},
		sheet.Polygon{Rings: [][]sheet.Pt{{{X: x, Y: tip}, {X: x - wing, Y: tip - 1.6*wing}, {X: x + wing, Y: tip - 1.6*wing}}}, Fill: sheet.Black})
}
