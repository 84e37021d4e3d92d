package plane

import (
	"slices"

	"strake/tape"
)

// Parts are the connected parts of g, each one outer ring first and then its
// holes, from left to right (by the low corner of their boxes, then upwards).
func (g Region) Parts() []Region {
	var parts []Region
	for _, r := range g {
		if r.Area2() > 0 {
			parts = append(parts, Region{r})
		}
	}
	for _, r := range g {
		if r.Area2() < 0 {
			if i := innermost(parts, r); i >= 0 {
				parts[i] = append(parts[i], r)
			}
		}
	}
	slices.SortStableFunc(parts, func(a, b Region) int {
		p, _ := a[0].Box()
		q, _ := b[0].Box()
		if p.X != q.X {
			return int(p.X - q.X)
		}
		return int(p.Y - q.Y)
	})
	return parts
}

// innermost is the smallest part whose outer ring holds the hole, -1 if none.
func innermost(parts []Region, hole Ring) int {
	best := -1
	for i, p := range parts {
		if p[0].holds(hole) && (best < 0 || p[0].Area2() < parts[best][0].Area2()) {
			best = i
		}
	}
	return best
}

// holds tells whether r goes round s, which it may touch but not cross: some
// corner of s that is not on r's line decides.
func (r Ring) holds(s Ring) bool {
	for _, p := range s {
		if w := r.Where(p); w != 0 {
			return w > 0
		}
	}
	return true
}

// Where tells whether p is inside the ring (1), on its line (0) or outside
// (-1), whichever way the ring runs. Exact.
func (r Ring) Where(p Pt) int {
	in := -1
	for i, a := range r {
		b := r[(i+1)%len(r)]
		if p.Y < min(a.Y, b.Y) || p.Y > max(a.Y, b.Y) || p.X > max(a.X, b.X) {
			continue // the side neither holds p nor lies to its right
		}
		crosses := (a.Y > p.Y) != (b.Y > p.Y)
		if p.X < min(a.X, b.X) { // it lies to the right as a whole
			if crosses {
				in = -in
			}
			continue
		}
		side := Side(a, b, p)
		if side == 0 {
			return 0
		}
		if crosses && (side > 0) == (b.Y > a.Y) {
			in = -in
		}
	}
	return in
}

// Section is the stretches of Y that the region covers on the upright line at
// x, looking just to its right (or, with leftwards, just to its left). Places
// on slanted edges are rounded to a tick.
func (g Region) Section(x tape.Length, leftwards bool) []Span {
	turn, at := right, -x // X to the right of x becomes Y below -x
	if !leftwards {
		turn, at = left, x
	}
	var c cutter
	for _, r := range g.turned(turn) {
		if n := countAbove(r, at); n > 0 && n < len(r) {
			c.add(r, at)
		}
	}
	slices.SortStableFunc(c.crossings, crossing.before)
	var out []Span
	for i := 0; i+1 < len(c.crossings); i += 2 {
		a, b := c.crossings[i].at.X, c.crossings[i+1].at.X
		if !leftwards {
			a, b = -b, -a // turned left, Y became -X
		}
		out = append(out, Span{a, b})
	}
	slices.SortFunc(out, func(a, b Span) int { return int(a.From - b.From) })
	return out
}
