package fasten

import (
	"math"

	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// Free is a part of the floor plan that fasteners keep out of.
type Free struct {
	Name    string
	What    string      // pipe, heating, cable
	Outline []plane.XY  // mm, on the floor plan
	Margin  tape.Length // kept free round it
	Depth   tape.Length // its top, below the top of the subfloor
	Known   bool        // Depth is known; else anything is taken to be reached
}

// Grown is its outline with the margin round it, mm on the floor plan: what is marked
// on the subfloor. It is meant for convex outlines, as jobs give them.
func (f Free) Grown() []plane.XY {
	m, n := f.Margin.Millimetres(), len(f.Outline)
	out := make([]plane.XY, n)
	for i, c := range f.Outline {
		before, after := f.Outline[(i+n-1)%n], f.Outline[(i+1)%n]
		u, v := c.Sub(before).Unit(), c.Sub(after).Unit() // both lead out of the outline at c
		sin := math.Abs(u.Cross(v))
		if sin == 0 {
			out[i] = c
			continue
		}
		out[i] = c.Add(u.Add(v).Times(m / sin))
	}
	return out
}

// Meets are the fasteners that come into a part to be kept free, seen from above,
// from where they enter to their tips; none where all end above it by the margin.
func (f Free) Meets(l lay.Lay, ps []Place, u Use, paper tape.Length) []Place {
	var out []Place
	for _, p := range ps {
		if f.Known && p.By != lay.FaceNail && u.Tip(paper) < f.Depth-f.Margin {
			continue
		}
		d := zoneOf(l, l.Runs[runOf(l, p.Piece)].Zone).Dir
		if f.near(d.FromRow(p.At), d.FromRow(p.Tip)) {
			out = append(out, p)
		}
	}
	return out
}

func runOf(l lay.Lay, piece int) int {
	id := l.Pieces[piece].Run
	for i, r := range l.Runs {
		if r.ID == id {
			return i
		}
	}
	return 0
}

// near tells whether a stretch comes within the margin of the outline.
func (f Free) near(a, b plane.XY) bool {
	if holds(f.Outline, a) || holds(f.Outline, b) {
		return true
	}
	m := f.Margin.Millimetres()
	for i, c := range f.Outline {
		d := f.Outline[(i+1)%len(f.Outline)]
		if cross(a, b, c, d) || math.Min(math.Min(off(a, c, d), off(b, c, d)), math.Min(off(c, a, b), off(d, a, b))) <= m {
			return true
		}
	}
	return false
}

// holds tells whether a ring holds a place.
func holds(ring []plane.XY, p plane.XY) bool {
	in := false
	for i, a := range ring {
		b := ring[(i+1)%len(ring)]
		if (a.Y <= p.Y) != (b.Y <= p.Y) && (p.X < a.X+(b.X-a.X)*(p.Y-a.Y)/(b.Y-a.Y)) {
			in = !in
		}
	}
	return in
}

// cross tells whether two stretches cross.
func cross(a, b, c, d plane.XY) bool {
	ab, cd := b.Sub(a), d.Sub(c)
	return ab.Cross(c.Sub(a))*ab.Cross(d.Sub(a)) < 0 && cd.Cross(a.Sub(c))*cd.Cross(b.Sub(c)) < 0
}

// off is how far a place is from a stretch.
func off(p, a, b plane.XY) float64 {
	ab := b.Sub(a)
	n := ab.Dot(ab)
	if n == 0 {
		return p.Sub(a).Len()
	}
	k := math.Min(1, math.Max(0, p.Sub(a).Dot(ab)/n))
	return p.Sub(a.Add(ab.Times(k))).Len()
}
