package check

import (
	"strake/finding"
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// shortRule is the name that exemptions from the shortest piece carry.
const shortRule = "shortest piece"

var _ = declare(shortRule,
	"No piece at an end of a run is below the limit, but for a run that is itself shorter: that is one piece, and the lay names it.",
	holdShort)

func holdShort(r Rule, s *site) []finding.Finding {
	var out []finding.Finding
	for _, n := range s.runs {
		if len(n.pieces) == 0 {
			continue
		}
		x, named := s.exemptRun(n)
		if named {
			out = append(out, s.exemption(r, n, x))
			continue
		}
		out = append(out, s.short(r, n.pieces[0])...)
		if last := n.pieces[len(n.pieces)-1]; last != n.pieces[0] {
			out = append(out, s.short(r, last)...)
		}
	}
	return out
}

// short holds one end piece by its longer side.
func (s *site) short(r Rule, p *piece) []finding.Finding {
	if p.box.x().Len() >= s.lim.ShortestPiece.Value {
		return nil
	}
	f := r.stop(p.label(), p.ID)
	f.Measured, f.Limit = s.say(p.box.x().Len())+" long", "at least "+s.say(s.lim.ShortestPiece.Value)
	f.Source = s.lim.ShortestPiece.Source
	f.Do = "Begin or end the row with a longer board."
	return []finding.Finding{f}
}

func (s *site) exemptRun(n *run) (lay.Exemption, bool) {
	for _, x := range s.lay.Exempt {
		if x.Rule == shortRule && x.Run == n.ID {
			return x, true
		}
	}
	return lay.Exemption{}, false
}

// exemption holds what the lay says of a run to the floor.
func (s *site) exemption(r Rule, n *run, x lay.Exemption) finding.Finding {
	limit := s.lim.ShortestPiece
	room := s.roomFor(n)
	f := r.note(n.name, n.Pieces...)
	f.Measured, f.Limit, f.Source = "the run is "+s.say(room)+" long", s.say(limit.Value), limit.Source
	f.Do = x.Why
	why := ""
	switch {
	case room >= limit.Value:
		why = "the run is not shorter than the shortest piece, so fill it by the rule."
	case len(n.pieces) > 1:
		why = "a run this short is one piece."
	case s.continues(n):
		why = "the row goes on beside it, and it is one run with its neighbour."
	default:
		return f
	}
	f.Level, f.Do = finding.Stop, "The exemption does not hold: "+why
	return f
}

// roomFor is how long the run can be at the most: from where the floor stops
// its first piece to where it stops its last.
func (s *site) roomFor(n *run) tape.Length {
	first, last := n.pieces[0], n.pieces[len(n.pieces)-1]
	return n.zone.stopRight(last) - n.zone.stopLeft(first)
}

// endAt is the stretch across the row of p's end on that side; empty where the
// end is mitred or runs out to a point.
func (p *piece) endAt(on side) plane.Span {
	at := p.box.lo.X
	if on == rightEnd {
		at = p.box.hi.X
	}
	out := plane.Span{From: p.box.hi.Y, To: p.box.lo.Y}
	for _, e := range sides(p.Outline) {
		switch {
		case e.faces() == on && !e.upright():
			return plane.Span{}
		case e.faces() == on && e.a.X == at:
			out = plane.Span{From: min(out.From, e.y().From), To: max(out.To, e.y().To)}
		}
	}
	return out
}

// stopLeft is how far left p could go on over the whole width of its end, as
// far as boards may lie. An end that is mitred or a point follows the floor
// already and stands where it is.
func (z *zone) stopLeft(p *piece) tape.Length {
	end := p.endAt(leftEnd)
	if end.Empty() {
		return p.box.lo.X
	}
	at := min(p.box.lo.X, boxOfRegion(z.at.Reach).lo.X)
	for _, x := range z.across(end) {
		if x.From < p.box.lo.X+slack {
			at = max(at, min(x.To, p.box.lo.X))
		}
	}
	return at
}

// stopRight is the same to the right.
func (z *zone) stopRight(p *piece) tape.Length {
	end := p.endAt(rightEnd)
	if end.Empty() {
		return p.box.hi.X
	}
	at := max(p.box.hi.X, boxOfRegion(z.at.Reach).hi.X)
	for _, x := range z.across(end) {
		if x.To > p.box.hi.X-slack {
			at = min(at, max(x.From, p.box.hi.X))
		}
	}
	return at
}

// across are the stretches along the row of the sides of what boards may fill
// where they pass through a width, two ticks at its edges left out; whole
// ticks.
func (z *zone) across(width plane.Span) []plane.Span {
	width.From, width.To = width.From+slack, width.To-slack
	var out []plane.Span
	for _, e := range append(sidesOf(z.at.Reach), sidesOf(z.bound)...) {
		y := e.y().Meet(width)
		switch {
		case e.flat() && e.a.Y > width.From && e.a.Y < width.To:
			out = append(out, e.x())
		case !e.flat() && !y.Empty():
			f := e.swap()
			a, b := nearest(f.at(rat(y.From))), nearest(f.at(rat(y.To)))
			out = append(out, plane.Span{From: min(a, b), To: max(a, b)})
		}
	}
	return out
}

// continues tells whether another run of the same strip touches n.
func (s *site) continues(n *run) bool {
	for _, p := range n.pieces {
		for _, c := range s.touching[p.ID] {
			if c.a.run != c.b.run && c.a.zone == c.b.zone && c.a.run.Low == c.b.run.Low {
				return true
			}
		}
	}
	return false
}
