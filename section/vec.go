package section

import (
	"math"

	"strake/sheet"
)

func length(p sheet.Pt) float64 { return math.Hypot(p.X, p.Y) }

// unit is p with length 1; to the right where it has none.
func unit(p sheet.Pt) sheet.Pt {
	l := length(p)
	if l == 0 {
		return sheet.Pt{X: 1}
	}
	return sheet.Pt{X: p.X / l, Y: p.Y / l}
}

func cross(p, q sheet.Pt) float64 { return float64(p.X*q.Y) - float64(p.Y*q.X) }

// crossing tells whether the lines a to b and p to q cross, ends not counted.
func crossing(a, b, p, q sheet.Pt) bool {
	d, e := b.Sub(a), q.Sub(p)
	return cross(d, p.Sub(a))*cross(d, q.Sub(a)) < 0 && cross(e, a.Sub(p))*cross(e, b.Sub(p)) < 0
}

// inside tells whether a place lies in a ring.
func inside(ring []sheet.Pt, p sheet.Pt) bool {
	in := false
	for i, a := range ring {
		b := ring[(i+1)%len(ring)]
		if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+float64((b.X-a.X)*(p.Y-a.Y))/(b.Y-a.Y) {
			in = !in
		}
	}
	return in
}

// box is the smallest upright rectangle round places.
type box struct{ x0, y0, x1, y1 float64 }

func noBox() box { return box{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)} }

func (b *box) take(ps ...sheet.Pt) {
	for _, p := range ps {
		b.x0, b.y0 = min(b.x0, p.X), min(b.y0, p.Y)
		b.x1, b.y1 = max(b.x1, p.X), max(b.y1, p.Y)
	}
}

// boxOf is the box round items, their pens not counted.
func boxOf(items []sheet.Item) box {
	b := noBox()
	for _, it := range items {
		switch it := it.(type) {
		case sheet.Polyline:
			b.take(it.Points...)
		case sheet.Polygon:
			for _, r := range it.Rings {
				b.take(r...)
			}
		case sheet.Text:
			t := it.Box()
			b.take(t[:]...)
		}
	}
	return b
}
