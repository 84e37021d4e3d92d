package sheet

import (
	"math"
	"sort"
)

// Hatch fills the area of rings with parallel lines: gap mm apart, at an angle
// in degrees counter-clockwise from the page's x axis. The lines of two areas
// hatched alike run on from one to the other.
func Hatch(rings [][]Pt, angle, gap float64, pen Pen) []Item {
	if gap <= 0 {
		return nil
	}
	flat := make([][]Pt, len(rings))
	for i, r := range rings {
		for _, p := range r {
			flat[i] = append(flat[i], turned(p, angle))
		}
	}
	var out []Item
	lo, hi := heights(flat)
	for k := math.Ceil(lo / gap); float64(k*gap) <= hi; k++ {
		y := float64(k * gap)
		xs := crossings(flat, y)
		for i := 0; i+1 < len(xs); i += 2 {
			if xs[i+1]-xs[i] < 0.05 {
				continue
			}
			out = append(out, Polyline{Pen: pen, Points: []Pt{
				turned(Pt{xs[i], y}, -angle), turned(Pt{xs[i+1], y}, -angle)}})
		}
	}
	return out
}

func heights(rings [][]Pt) (lo, hi float64) {
	first := true
	for _, r := range rings {
		for _, p := range r {
			if first {
				lo, hi, first = p.Y, p.Y, false
			}
			lo, hi = math.Min(lo, p.Y), math.Max(hi, p.Y)
		}
	}
	return
}

// crossings are the places, from left to right, where the line at y enters or
// leaves the rings. A corner on the line counts with the side below it only.
func crossings(rings [][]Pt, y float64) []float64 {
	var xs []float64
	for _, r := range rings {
		for i, a := range r {
			b := r[(i+1)%len(r)]
			if (a.Y <= y) == (b.Y <= y) {
				continue
			}
			xs = append(xs, a.X+float64((b.X-a.X)*(y-a.Y)/(b.Y-a.Y)))
		}
	}
	sort.Float64s(xs)
	return xs
}
