package drawing

import (
	"fmt"
	"math"

	"strake/sheet"
)

// chart is a pair of axes on a page: what is drawn in it is placed by its figures.
type chart struct {
	box            box
	x0, x1, y0, y1 float64
	s              *sheet.Sheet
}

// newChart puts axes in a box, from x0 to x1 and y0 to y1.
func newChart(s *sheet.Sheet, b box, x0, x1, y0, y1 float64) chart {
	return chart{b, x0, x1, y0, y1, s}
}

// at is the place of a pair of figures.
func (c chart) at(x, y float64) sheet.Pt {
	return sheet.Pt{X: c.box.a.X + (x-c.x0)/(c.x1-c.x0)*c.box.w(), Y: c.box.b.Y - (y-c.y0)/(c.y1-c.y0)*c.box.h()}
}

// roundStep is a round step (1, 2 or 5 of a power of ten) that cuts a span into at
// most so many parts.
func roundStep(span float64, parts int) float64 {
	raw := span / float64(parts)
	ten := math.Pow(10, math.Floor(math.Log10(raw)))
	for _, k := range []float64{1, 2, 5} {
		if raw <= k*ten*(1+1e-9) {
			return k * ten
		}
	}
	return 10 * ten
}

// across draws level lines at round figures with their names at the left.
func (c chart) across(parts int, unit string) {
	by := roundStep(c.y1-c.y0, parts)
	for y := math.Ceil(c.y0/by-1e-9) * by; y <= c.y1+1e-9; y += by {
		a, b := c.at(c.x0, y), c.at(c.x1, y)
		c.s.Put(sheet.Polyline{Points: []sheet.Pt{a, b}, Pen: sheet.Pen{Width: 0.13, Ink: sheet.Mid}},
			sheet.Text{Text: fmt.Sprintf("%g%s", math.Round(y*1000)/1000+0, unit), At: sheet.Pt{X: a.X - 1.5, Y: a.Y + tiny/3}, Size: small, Anchor: sheet.End, Ink: sheet.Black})
	}
}

// down draws upright lines at whole multiples of by from x0 on, with their names
// below; of a name that would come too near the one before only the line is drawn.
func (c chart) down(by float64, name func(float64) string) {
	free := math.Inf(-1)
	for x := math.Ceil(c.x0/by-1e-9) * by; x <= c.x1+1e-9; x += by {
		a, b := c.at(x, c.y0), c.at(x, c.y1)
		c.s.Put(sheet.Polyline{Points: []sheet.Pt{a, b}, Pen: sheet.Pen{Width: 0.13, Ink: sheet.Mid}})
		t := sheet.Text{Text: name(x), At: sheet.Pt{X: a.X, Y: a.Y + small + 1.5}, Size: small, Anchor: sheet.Middle, Ink: sheet.Black}
		if half := t.Width() / 2; a.X-half > free {
			c.s.Put(t)
			free = a.X + half + 2
		}
	}
}

// frame draws the two axes.
func (c chart) frame() {
	c.s.Put(sheet.Polyline{Points: []sheet.Pt{c.at(c.x0, c.y1), c.at(c.x0, c.y0), c.at(c.x1, c.y0)}, Pen: sheet.Pen{Width: 0.35, Ink: sheet.Black}})
}

// band tints the figures from lo to hi.
func (c chart) band(lo, hi float64) {
	lo, hi = max(lo, c.y0), min(hi, c.y1)
	if lo >= hi {
		return
	}
	c.s.Put(sheet.Polygon{Name: "within limits", Rings: [][]sheet.Pt{{c.at(c.x0, lo), c.at(c.x1, lo), c.at(c.x1, hi), c.at(c.x0, hi)}}, Fill: sheet.Light})
}

// curve draws y over the whole width, from a figure on.
func (c chart) curve(name string, from, to float64, y func(float64) float64, pen sheet.Pen) {
	const parts = 120
	var ps []sheet.Pt
	for i := range parts + 1 {
		x := from + (to-from)*float64(i)/parts
		if v := y(x); v >= c.y0 && v <= c.y1 {
			ps = append(ps, c.at(x, v))
		}
	}
	if len(ps) > 1 {
		c.s.Put(sheet.Polyline{Name: name, Points: ps, Pen: pen})
	}
}
