package floor

import (
	"math"

	"strake/plane"
)

// inset is the floor less a gap at each edge; a negative gap adds a strip
// behind the edge. gap is by index into Floor.Edges, mm.
//
// Each edge has a cutter of its own, run to the mitre point at a corner that
// stands into the floor, so that a wide gap does not eat past a narrow one.
func (f Floor) inset(gap []float64) (shape, error) {
	var solid, holes, strips, less []outline
	for _, r := range f.Rings {
		if o := outline(r.Corners); o.area() > 0 {
			solid = append(solid, o)
		} else {
			holes = append(holes, o)
		}
		for i := range r.Corners {
			switch g := gap[r.Edges[i]]; {
			case g > 0:
				less = append(less, f.pastSeams(r, i, bendOf(r, i, gap)).cutter())
			case g < 0:
				strips = append(strips, f.toSeams(r, i, bendOf(r, i, gap)).strip())
			case f.Edges[r.Edges[i]].Kind == Meeting:
				less = append(less, bendOf(r, i, gap).beyond(f.behind(r, i-1, gap), f.behind(r, i+1, gap)))
			}
		}
	}
	if len(holes) > 0 { // a strip behind a jamb may lie inside a hole
		rest, err := join(holes, strips)
		if err != nil {
			return nil, err
		}
		less = append(less, rest...)
	}
	return join(append(solid, strips...), less)
}

// wide is how far a strip behind a jamb runs past a seam, to be cut off along
// it, mm: two fields then meet on one line behind the jamb's face too.
const wide = 40.0

// toSeams runs an edge past its ends where a seam follows or comes before.
func (f Floor) toSeams(r Ring, i int, c bend) bend {
	n := len(r.Corners)
	if f.Edges[r.Edges[(i+n-1)%n]].Kind == Meeting {
		c.a = c.a.Sub(c.u.Times(wide))
	}
	if f.Edges[r.Edges[(i+1)%n]].Kind == Meeting {
		c.b = c.b.Add(c.u.Times(wide))
	}
	return c
}

// pastSeams runs a cutter past its ends where a seam meets it at a slant.
func (f Floor) pastSeams(r Ring, i int, c bend) bend {
	n := len(r.Corners)
	if f.Edges[r.Edges[(i+n-1)%n]].Kind == Meeting && !c.mitA {
		c.atA = wide
	}
	if f.Edges[r.Edges[(i+1)%n]].Kind == Meeting && !c.mitB {
		c.atB = wide
	}
	return c
}

// behind tells whether boards go behind a side of a ring.
func (f Floor) behind(r Ring, i int, gap []float64) bool {
	return gap[r.Edges[(i+len(r.Edges))%len(r.Edges)]] < 0
}

// beyond is what lies past a seam, and beside its ends where boards go behind
// the edge that meets it there.
func (c bend) beyond(before, after bool) outline {
	a, b, out := c.a, c.b, c.n.Times(-2*wide)
	if before {
		a = a.Sub(c.u.Times(wide))
	}
	if after {
		b = b.Add(c.u.Times(wide))
	}
	return outline{a, a.Add(out), b.Add(out), b}
}

// clear is how far a cutter runs past a line that its end would lie on, mm: two
// lines that only touch leave threads of floor between them.
const clear = 0.05

// bend is an edge of the floor with its neighbours' gaps, enough to inset it.
type bend struct {
	a, b       plane.XY // the edge
	u, n       plane.XY // along it; square to it into the floor
	gap        float64
	atA, atB   float64 // how far past a (backwards) and b (forwards) its cutter runs along u
	mitA, mitB bool    // run to the mitre point there instead
	ma, mb     plane.XY
}

func bendOf(r Ring, i int, gap []float64) bend {
	n := len(r.Corners)
	a, b := r.Corners[i], r.Corners[(i+1)%n]
	u := b.Sub(a).Unit()
	c := bend{a: a, b: b, u: u, n: u.Left(), gap: gap[r.Edges[i]]}
	prev := a.Sub(r.Corners[(i+n-1)%n]).Unit()
	next := r.Corners[(i+2)%n].Sub(b).Unit()
	gp, gn := gap[r.Edges[(i+n-1)%n]], gap[r.Edges[(i+1)%n]]
	c.ma, c.mitA, c.atA = joint(a, prev, u, gp, c.gap, -1)
	c.mb, c.mitB, c.atB = joint(b, u, next, c.gap, gn, 1)
	return c
}

// joint is where the offset lines of two edges that meet at p cross (u before
// p at gap g, v after it at gap h). At a corner that stands into the floor the
// cutter runs to it; at an inner one it runs past the corner as far as a strip
// behind the neighbour reaches, or as far as the neighbour leans away where its
// own gap leaves that to this one: a thorn would be left between the two. The
// lesser gap of two runs a little into the greater.
func joint(p, u, v plane.XY, g, h float64, end float64) (m plane.XY, mitre bool, past float64) {
	turn := u.Cross(v)
	if turn < 0 && turn < -0.02 && u.Dot(v) > -0.98 {
		// p + n_u g + u s = p + n_v h + v t
		w := v.Left().Times(h).Sub(u.Left().Times(g))
		s := w.Cross(v) / u.Cross(v)
		return p.Add(u.Left().Times(g)).Add(u.Times(s)), true, 0
	}
	other := h
	if end < 0 {
		other = g
	}
	switch mine := g + h - other; {
	case turn > 0 && other < 0:
		past = -other/math.Max(turn, 0.2) + overlap
	case turn > 0.2 && mine > other:
		past = mine*math.Max(0, u.Dot(v))/turn + clear
	case 0 < mine && mine <= other:
		past = clear
	}
	return p, false, past
}

// cutter covers the gap of an edge and 1 mm outside it.
func (c bend) cutter() outline {
	out := c.n.Times(-overlap)
	o := outline{c.a.Sub(c.u.Times(c.atA)).Add(out), c.b.Add(c.u.Times(c.atB)).Add(out)}
	if c.mitB {
		b := c.foot(c.mb, c.b, 1)
		o[1] = b.Add(out)
		o = append(o, b, c.mb)
	} else {
		o = append(o, c.b.Add(c.u.Times(c.atB)).Add(c.n.Times(c.gap)))
	}
	if c.mitA {
		a := c.foot(c.ma, c.a, -1)
		o[0] = a.Add(out)
		o = append(o, c.ma, a)
	} else {
		o = append(o, c.a.Sub(c.u.Times(c.atA)).Add(c.n.Times(c.gap)))
	}
	return o
}

// foot is where a cutter leaves the edge's line for its mitre point m: at the
// corner, or, where m lies short of it (the neighbour's boards pass behind
// their edge), straight under m.
func (c bend) foot(m, corner plane.XY, end float64) plane.XY {
	if t := c.u.Dot(m.Sub(corner)); t*end < 0 {
		return corner.Add(c.u.Times(t))
	}
	return corner
}

// strip is the floor gained behind an edge, with 1 mm of it inside. At a
// corner that stands into the floor it runs 1 mm on, into the room there: the
// wall it meets is not quite square to it, and a slit would be left.
func (c bend) strip() outline {
	in, out := c.n.Times(overlap), c.n.Times(c.gap)
	a, b := c.a, c.b
	if c.mitA {
		a = a.Sub(c.u.Times(overlap))
	}
	if c.mitB {
		b = b.Add(c.u.Times(overlap))
	}
	return outline{a.Add(out), b.Add(out), b.Add(in), a.Add(in)}
}
