package sheet

// Overlap tells whether two convex outlines share area; touching does not
// count. Two outlines are apart when the line along some side of one has the
// other wholly on its far side.
func Overlap(a, b []Pt) bool { return !parted(a, b) && !parted(b, a) }

// parted tells whether a side of a parts it from b.
func parted(a, b []Pt) bool {
	for i, p := range a {
		side := a[(i+1)%len(a)].Sub(p)
		loA, hiA := along(a, p, side)
		loB, hiB := along(b, p, side)
		if hiA <= loB+slack || hiB <= loA+slack {
			return true
		}
	}
	return false
}

// slack lets outlines touch though their corners were rounded.
const slack = 1e-9

// along is how far the points of a lie to the left of the line, as products
// with its length.
func along(a []Pt, from, line Pt) (lo, hi float64) {
	for i, p := range a {
		q := p.Sub(from)
		d := float64(line.X*q.Y) - float64(line.Y*q.X)
		if i == 0 || d < lo {
			lo = d
		}
		if i == 0 || d > hi {
			hi = d
		}
	}
	return
}

// Holds tells whether a place lies in an area, as a Polygon's rings make it.
func Holds(rings [][]Pt, p Pt) bool {
	in := false
	for _, r := range rings {
		for i, a := range r {
			b := r[(i+1)%len(r)]
			if (a.Y <= p.Y) != (b.Y <= p.Y) && p.X < a.X+float64((b.X-a.X)*(p.Y-a.Y)/(b.Y-a.Y)) {
				in = !in
			}
		}
	}
	return in
}
