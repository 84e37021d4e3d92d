package check

import (
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// contact is a stretch where an edge of one piece lies against an edge of
// another. Within a zone it is exact; between zones it is found to within
// touching ticks.
type contact struct {
	a, b   *piece
	ea, eb edge       // sides of their outlines, each in its own zone's frame
	sa, sb plane.Span // the stretch of each that touches: X of a long edge, Y of an end
}

// slack is how far off each other's line two straight lines may lie and still
// be one that was rounded twice: 0.71 tick for each rounding of a corner, and
// up to two of them.
const slack = 2

// touching is how far off each other's line edges of two zones may lie and
// still touch: 8 micrometres. Whether they lie close enough is not asked here:
// "overlap" and "cover" measure that.
const touching = 64 * tape.Tick

// corners is the length below which two edges of different zones only meet at
// a corner.
const corners = 2 * touching

func (s *site) findContacts() []contact {
	var out []contact
	for i, z := range s.zones {
		out = append(out, z.contacts()...)
		for _, y := range s.zones[i+1:] {
			out = append(out, between(z, y)...)
		}
	}
	return out
}

// sideOf is an edge with the piece it bounds.
type sideOf struct {
	p *piece
	e edge
}

// contacts are the square contacts within a zone: long edges on one line, and
// ends on one line of different runs. (Pieces of one run follow each other by
// the run's list.)
func (z *zone) contacts() []contact {
	type line struct {
		flat bool
		at   tape.Length
	}
	plus, minus := map[line][]sideOf{}, map[line][]sideOf{}
	var order []line
	for _, p := range z.pieces {
		for _, e := range sides(p.Outline) {
			if !e.square() {
				continue
			}
			k := line{e.flat(), e.a.X}
			if e.flat() {
				k.at = e.a.Y
			}
			if f := e.faces(); f == highEdge || f == rightEnd {
				plus[k] = append(plus[k], sideOf{p, e})
				order = append(order, k)
			} else {
				minus[k] = append(minus[k], sideOf{p, e})
			}
		}
	}
	var out []contact
	for _, k := range order {
		for _, a := range plus[k] {
			for _, b := range minus[k] {
				out = touch(out, a, b, k.flat)
			}
		}
		delete(plus, k)
	}
	return out
}

func touch(out []contact, a, b sideOf, flat bool) []contact {
	span := a.e.y().Meet(b.e.y())
	if flat {
		span = a.e.x().Meet(b.e.x())
	}
	if span.Empty() || a.p == b.p || !flat && a.p.run == b.p.run {
		return out
	}
	return append(out, contact{a.p, b.p, a.e, b.e, span, span})
}

// turn takes places of one zone's frame into another's. Frames of one
// direction are one frame, and nothing is rounded. Otherwise a place moves by
// half a tick each way at most, plus what floats lose on a floor of 200 m,
// which is under a millionth of a tick.
type turn struct{ from, to plane.Dir }

func (t turn) of(r plane.Ring) plane.Ring {
	if t.from == t.to {
		return r
	}
	out := make(plane.Ring, len(r))
	for i, p := range r {
		out[i] = t.to.ToRow(t.from.FromRow(p))
	}
	return out
}

func (t turn) region(g plane.Region) plane.Region {
	var out plane.Region
	for _, r := range g {
		out = append(out, t.of(r))
	}
	return out
}

// between are the contacts of pieces of z with pieces of y.
func between(z, y *zone) []contact {
	var out []contact
	there, back := turn{y.Dir, z.Dir}, turn{z.Dir, y.Dir}
	for _, q := range y.pieces {
		r := there.of(q.Outline)
		b := boxOf(r)
		for _, p := range z.pieces {
			if !p.box.near(b, touching) {
				continue
			}
			for i, e := range sides(p.Outline) {
				for j, f := range sides(r) {
					if max(e.beside(f, int64(touching)), f.beside(e, int64(touching))) > corners { // either may be the short one
						g := sides(q.Outline)[j]
						h := sides(back.of(p.Outline))[i]
						out = append(out, contact{p, q, e, g, e.along(f), g.along(h)})
					}
				}
			}
		}
	}
	return out
}

// axis is the stretch of e along the way it mostly lies.
func (e edge) axis() plane.Span {
	if e.long() {
		return e.x()
	}
	return e.y()
}

// along is the stretch of e that f covers, along the way e mostly lies.
func (e edge) along(f edge) plane.Span {
	if e.long() {
		return e.x().Meet(f.x())
	}
	return e.y().Meet(f.y())
}

// toBoard takes a place on the floor into the frame of p's board.
func (p *piece) toBoard(q plane.Pt) plane.Pt {
	if p.Turned {
		return p.cut.lo.Add(p.box.hi.Sub(q))
	}
	return p.cut.lo.Add(q.Sub(p.box.lo))
}

// claim is what p says of one of its four sides.
func (p *piece) claim(s side) lay.Profile {
	switch s {
	case leftEnd:
		return p.Left
	case rightEnd:
		return p.Right
	case lowEdge:
		return p.Behind
	default:
		return p.Ahead
	}
}

// profile is what p carries along one side of its outline: what it claims
// where the side lies on the edge of its board, else what a saw leaves.
func (p *piece) profile(e edge) lay.Profile {
	s := e.faces()
	c := p.claim(s)
	if p.fault != "" {
		return c
	}
	a, b := p.toBoard(e.a), p.toBoard(e.b)
	if s == lowEdge || s == highEdge {
		if a.Y == b.Y && (a.Y == 0 || a.Y == p.board.Width) {
			return c
		}
		return lay.Ripped
	}
	if a.X == b.X && (a.X == 0 || a.X == p.board.Length) || (c == lay.Spline || c == lay.Groove) && p.outermost(e) {
		return c
	}
	return lay.Cut
}

// outermost tells whether an end side of p reaches as far as p does.
func (p *piece) outermost(e edge) bool {
	if e.faces() == leftEnd {
		return min(e.a.X, e.b.X) == p.box.lo.X
	}
	return max(e.a.X, e.b.X) == p.box.hi.X
}

// routed is what a sawn stretch of p was made on the job; as it is where it
// was not.
func (p *piece) routed(as lay.Profile, e edge, on plane.Span) lay.Profile {
	if as != lay.Ripped && as != lay.Cut {
		return as
	}
	for _, r := range p.Routed {
		line := edge{r.From, r.To}
		if !e.holds(r.From) || !e.holds(r.To) {
			continue
		}
		over := line.y()
		if e.long() {
			over = line.x()
		}
		if over.From <= on.From+corners && over.To >= on.To-corners {
			return r.As
		}
	}
	return as
}

// holds tells whether a place lies on the line of e, to the slack of rounding.
func (e edge) holds(p plane.Pt) bool {
	d := e.offLine(p)
	return d.Abs() <= slack
}
