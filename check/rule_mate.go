package check

import (
	"strake/finding"
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

var _ = declare("tongue and groove",
	"At every end joint and along every long edge that two pieces share a tongue meets a groove, or a spline does; boards with plain ends meet plain.",
	holdMate)

func holdMate(r Rule, s *site) []finding.Finding {
	var out []finding.Finding
	for _, n := range s.runs {
		for i := 1; i < len(n.pieces); i++ {
			p, q := n.pieces[i-1], n.pieces[i]
			if !s.mateEnds(p.Right, q.Left) {
				out = append(out, mismatch(r, p, q, p.Right, q.Left))
			}
		}
	}
	for _, c := range s.contacts {
		if c.a.fault != "" || c.b.fault != "" {
			continue
		}
		a, b := c.profiles()
		ends := !c.ea.long() || !c.eb.long()
		switch {
		case ends && !s.mateEnds(a, b), !ends && !s.mateEdges(a, b):
			out = append(out, mismatch(r, c.a, c.b, a, b))
		case off(c.a, c.ea, c.sa), off(c.b, c.eb, c.sb):
			out = append(out, mismatch(r, c.a, c.b, offAs(a), offAs(b)))
		}
	}
	return out
}

// profiles are what the two pieces of a contact carry where they touch: a
// groove with a spline glued in along all of a stretch counts as a spline
// against a groove, and one with a spline along any of it against a tongue.
func (c contact) profiles() (a, b lay.Profile) {
	a, b = c.a.profile(c.ea), c.b.profile(c.eb)
	if c.a.zone != c.b.zone {
		a, b = c.a.routed(a, c.ea, c.sa), c.b.routed(b, c.eb, c.sb)
	}
	if c.ea.long() {
		a = slipped(a, b, c.a.Slip, c.sa)
	}
	if c.eb.long() {
		b = slipped(b, a, c.b.Slip, c.sb)
	}
	return a, b
}

func slipped(own, other lay.Profile, slip []plane.Span, on plane.Span) lay.Profile {
	if own != lay.Groove {
		return own
	}
	left := []plane.Span{on}
	for _, t := range slip {
		var rest []plane.Span
		for _, l := range left {
			rest = append(rest, l.Cut(t)...)
		}
		left = rest
	}
	var bare tape.Length
	for _, l := range left {
		bare += l.Len()
	}
	if bare <= corners || other != lay.Groove && bare < on.Len()-corners { // less is a corner rounded in two frames
		return lay.Spline
	}
	return own
}

func mismatch(r Rule, p, q *piece, a, b lay.Profile) finding.Finding {
	f := r.stop(p.label()+" and "+q.label(), p.ID, q.ID)
	f.Measured, f.Limit = string(a)+" against "+string(b), "tongue in groove, or a spline between grooves"
	f.Do = "Turn to a board whose profile fits, set a spline, or leave a stated gap at a header."
	return f
}

// mates tells whether two profiles lock.
func mates(a, b lay.Profile) bool {
	return (a == lay.Tongue || a == lay.Spline) && b == lay.Groove ||
		a == lay.Groove && (b == lay.Tongue || b == lay.Spline)
}

func (s *site) mateEnds(a, b lay.Profile) bool {
	if s.stock.EndTongue == 0 && a == lay.Plain && b == lay.Plain {
		return true
	}
	return mates(a, b)
}

func (s *site) mateEdges(a, b lay.Profile) bool { return s.stock.SideTongue == 0 || mates(a, b) }

// off tells whether p has its side tongue taken off somewhere along on.
func off(p *piece, e edge, on plane.Span) bool {
	if !e.long() || p.profile(e) != lay.Tongue {
		return false
	}
	for _, t := range p.Off {
		if !t.Meet(on).Empty() {
			return true
		}
	}
	return false
}

// offAs names a tongue for what is left of it.
func offAs(a lay.Profile) lay.Profile {
	if a == lay.Tongue {
		return lay.TongueOff
	}
	return a
}
