package check

import (
	"strake/lay"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// drawn is the face of p and every kept tongue of it that mates with nothing,
// as outlines that do not overlap.
func (s *site) drawn(p *piece) []plane.Ring {
	out := []plane.Ring{p.Outline}
	for _, e := range sides(p.Outline) {
		if !e.square() || p.profile(e) != lay.Tongue || s.jointed(p, e.faces()) {
			continue
		}
		if f, ok := p.oldBeside(e); ok && f.Old != room.OffersTongue { // it goes into the old floor
			continue
		}
		for _, free := range s.free(p, e) {
			out = append(out, s.tongue(e, free))
		}
	}
	return out
}

// jointed tells whether another piece of the run follows p on that side.
func (s *site) jointed(p *piece, on side) bool {
	ps := p.run.pieces
	return on == leftEnd && ps[0] != p || on == rightEnd && ps[len(ps)-1] != p
}

// free are the stretches of e, a side of p with a tongue, where the tongue is
// kept and touches no other piece.
func (s *site) free(p *piece, e edge) []plane.Span {
	left := []plane.Span{e.axis()}
	cut := func(t plane.Span) {
		var rest []plane.Span
		for _, l := range left {
			rest = append(rest, l.Cut(t)...)
		}
		left = rest
	}
	for _, c := range s.touching[p.ID] {
		if c.a == p && c.ea == e {
			cut(c.sa)
		}
		if c.b == p && c.eb == e {
			cut(c.sb)
		}
	}
	if e.long() {
		for _, t := range p.Off {
			cut(t)
		}
	}
	return left
}

// tongue is the outline of the tongue along a stretch of e.
func (s *site) tongue(e edge, on plane.Span) plane.Ring {
	side, end := s.stock.SideTongue, s.stock.EndTongue
	across := func(from, to tape.Length) plane.Ring {
		return plane.Rect(plane.P(on.From, from), plane.P(on.To, to))
	}
	along := func(from, to tape.Length) plane.Ring {
		return plane.Rect(plane.P(from, on.From), plane.P(to, on.To))
	}
	switch e.faces() {
	case lowEdge:
		return across(e.a.Y-side, e.a.Y)
	case highEdge:
		return across(e.a.Y, e.a.Y+side)
	case leftEnd:
		return along(e.a.X-end, e.a.X)
	default:
		return along(e.a.X, e.a.X+end)
	}
}
