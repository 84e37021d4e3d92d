package drawing

import (
	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/row"
	"strake/sheet"
	"strake/words"
)

var (
	seamPen   = sheet.Pen{Width: 0.8, Ink: sheet.Black}
	splinePen = sheet.Pen{Width: 1.1, Ink: sheet.Black, Dash: []float64{1.2, 0.8}}
)

// drawSplines draws each stretch where groove meets groove, heavy and dashed,
// names it, and points an arrow the way the tongues lead in what lies behind.
func (d *draw) drawSplines() {
	d.drawSeams()
	for _, r := range d.p.Lay.Runs {
		if words.Turned(d.p, r) && len(r.Pieces) > 0 {
			d.inZone(r)
			d.drawBackwards(r)
		}
	}
	for _, f := range d.p.AllFields() {
		d.along = f.Layout.Dir
		d.drawSplinesOf(f.Layout.Splines)
	}
	for _, f := range d.p.AllFields() {
		d.along = f.Layout.Dir
		d.nameSplines(f.Layout.Splines)
	}
	d.along = plane.Dir{}
}

func (d *draw) drawSplinesOf(ss []row.SplineLine) {
	for _, s := range ss {
		a, b := d.at(plane.P(s.Along.From, s.Y)), d.at(plane.P(s.Along.To, s.Y))
		d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{a, b}, Pen: splinePen})
		d.labels.line(a, b, splinePen.Width)
	}
}

// nameSplines writes the length of each spline beside it, off the joints.
func (d *draw) nameSplines(ss []row.SplineLine) {
	turn := d.turnOf()
	for _, s := range ss {
		a, b := d.at(plane.P(s.Along.From, s.Y)), d.at(plane.P(s.Along.To, s.Y))
		text := sheet.Text{Text: "spline " + d.say.Of(s.Along.Len()), Size: small, Anchor: sheet.Middle, Turn: turn}
		var tries []sheet.Text
		for _, size := range []float64{small, tiny} {
			for _, dy := range []float64{3.4, -1.4, 5.5, -3.5} {
				for _, k := range []float64{0.5, 0.3, 0.7, 0.4, 0.6, 0.15, 0.85} {
					t := text
					t.Size, t.At = size, between(a, b, k).Add(up(turn).Times(-dy))
					tries = append(tries, t)
				}
			}
		}
		if t, ok := d.labels.first(tries, nil); ok {
			d.onWhite(t)
		}
	}
}

// drawSeams draws the lines where two fields meet, and the header between.
func (d *draw) drawSeams() {
	for _, f := range d.p.Fields {
		d.along = f.Part.Dir
		for _, e := range f.Part.Edges {
			if e.Kind == floor.Meeting {
				d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{d.at(e.From), d.at(e.To)}, Pen: seamPen})
				d.labels.line(d.at(e.From), d.at(e.To), seamPen.Width)
			}
		}
	}
	d.along = plane.Dir{}
}

// drawBackwards puts a small arrow near the right end of a turned run.
func (d *draw) drawBackwards(r lay.Run) {
	lo, hi := r.Outline.Box()
	a, b := d.at(plane.P(hi.X, hi.Y)), d.at(plane.P(hi.X, lo.Y))
	back := d.at(plane.P(lo.X, hi.Y)).Sub(a)
	down, in := b.Sub(a), unit(back)
	tall := length(down)
	down = unit(down)
	foot := a.Add(in.Times(1.6))
	top, tip := foot.Add(down.Times(0.2*tall)), foot.Add(down.Times(0.85*tall))
	wing := min(0.9, 0.3*tall)
	neck := tip.Sub(down.Times(1.6 * wing))
	d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{top, tip}, Pen: thin},
		sheet.Polygon{Rings: [][]sheet.Pt{{tip, neck.Add(in.Times(wing)), neck.Sub(in.Times(wing))}}, Fill: sheet.Black})
	d.labels.reserve(strip(top, tip, wing))
}
