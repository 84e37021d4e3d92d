package drawing

import (
	"strake/plane"
	"strake/sheet"
	"strake/words"
)

var chain = sheet.Pen{Width: 0.35, Ink: sheet.Black, Dash: []float64{6, 1.2, 1, 1.2}}

// drawLine draws the working line along its row and marks it at both ends.
func (d *draw) drawLine() {
	line, ok := words.Line(d.p)
	if !ok {
		return
	}
	a, b := d.at(plane.P(line.From, line.Y)), d.at(plane.P(line.To, line.Y))
	a.X, b.X = a.X-2.6, b.X+2.6
	d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{a, b}, Pen: chain})
	d.labels.line(a, b, 0)
	// The marks lie between the walls and the rows' numbers.
	for _, m := range [][]sheet.Pt{
		{a.Add(sheet.Pt{X: 1.4}), a.Add(sheet.Pt{Y: -0.6}), a.Add(sheet.Pt{Y: 0.6})},
		{b.Sub(sheet.Pt{X: 1.4}), b.Add(sheet.Pt{Y: -0.6}), b.Add(sheet.Pt{Y: 0.6})},
	} {
		d.lines = append(d.lines, sheet.Polygon{Rings: [][]sheet.Pt{m}, Fill: sheet.Black})
		d.labels.reserve(m)
	}
}
