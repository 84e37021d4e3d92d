package check

import (
	"fmt"

	"strake/finding"
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

var _ = declare("fastening",
	"How a run is fastened is told from end to end of it; the floor nailer is used only where it has its room behind the tongue edge and ahead of it; hand nails go through the tongue only where a row lies behind and one ahead. What is shorter than the distance of two fasteners is let pass.",
	holdFasten)

// fastenersApart is the farthest that fasteners of solid plank lie apart: 8 in (NWFA
// fastener schedule, 2019, as reprinted by Hardwood Floors, Aug/Sep 2025). On a
// shorter stretch none need fall.
const fastenersApart = 8 * tape.Inch

// unfit is a finding about a part of a run that cannot be fastened as told.
func (s *site) unfit(r Rule, n *run, t plane.Span) finding.Finding {
	return r.stop(n.name+", from "+s.say(t.From)+" to "+s.say(t.To), n.Pieces...)
}

// holdFasten lets hand and face nails pass where the nailer would fit: they
// hold as well, and cost no more than time.
func holdFasten(r Rule, s *site) []finding.Finding {
	var out []finding.Finding
	for _, n := range s.runs {
		if n.fault != "" {
			continue
		}
		if what, limit := s.stretchMiss(n); what != "" {
			f := r.stop(n.name, n.Pieces...)
			f.Measured, f.Limit = what, limit
			f.Do = "Say of each stretch of the run how it is fastened: plan again, or mend the file."
			out = append(out, f)
			continue
		}
		for _, t := range n.Nailing {
			switch t.By {
			case lay.Nailer:
				out = append(out, s.holdNailer(r, n, t.Along)...)
			case lay.HandNail:
				out = append(out, s.holdHand(r, n, t.Along)...)
			}
		}
	}
	return out
}

// stretchMiss holds the stretches of a run to its length: in order, end to
// end, and from one end to the other.
func (s *site) stretchMiss(n *run) (what, limit string) {
	x := boxOf(n.Outline).x()
	if len(n.Nailing) == 0 {
		return "nothing is said", "from " + s.say(x.From) + " to " + s.say(x.To)
	}
	for i, t := range n.Nailing {
		switch {
		case t.By != lay.Nailer && t.By != lay.HandNail && t.By != lay.FaceNail:
			return fmt.Sprintf("%q", t.By), "nailer, hand or face"
		case t.Along.From.Abs() > tape.Longest || t.Along.To.Abs() > tape.Longest || t.Along.Empty():
			return "a stretch from " + s.say(t.Along.From) + " to " + s.say(t.Along.To), "one with a length, on the floor"
		case i > 0 && t.Along.From != n.Nailing[i-1].Along.To:
			return "a stretch ends at " + s.say(n.Nailing[i-1].Along.To) + ", the next begins at " + s.say(t.Along.From), "one place"
		}
	}
	from, to := n.Nailing[0].Along.From, n.Nailing[len(n.Nailing)-1].Along.To
	if from > x.From || to < x.To {
		return "told from " + s.say(from) + " to " + s.say(to), "the run, from " + s.say(x.From) + " to " + s.say(x.To)
	}
	return "", ""
}

// tongueEdge is the line of the run's tongue edge.
func (n *run) tongueEdge() tape.Length {
	if n.zone.Ahead < 0 {
		return n.Low
	}
	return n.High
}

// beside is the band from so far behind the run's tongue edge to so far ahead
// of it.
func (n *run) beside(behind, ahead tape.Length) plane.Span {
	y := n.tongueEdge()
	if n.zone.Ahead < 0 {
		return plane.Span{From: y - ahead, To: y + behind}
	}
	return plane.Span{From: y - behind, To: y + ahead}
}

// holdNailer holds a stretch said to be for the nailer to the room it leaves.
func (s *site) holdNailer(r Rule, n *run, on plane.Span) []finding.Finding {
	behind, ahead := s.lim.NailerBehind, s.lim.NailerAhead
	b := band{n.zone.at.Bare, n.beside(behind.Value, ahead.Value)}
	var out []finding.Finding
	for _, t := range b.shut(on.Meet(boxOf(n.Outline).x())) {
		if t.Len() < fastenersApart {
			continue
		}
		back, on := clearance(n.zone.at.Bare, n.tongueEdge(), t.From+t.Len()/2)
		if n.zone.Ahead < 0 {
			back, on = on, back
		}
		f := s.unfit(r, n, t)
		f.Measured = fmt.Sprintf("for the nailer, with %s behind the tongue edge and %s ahead of it", s.say(back), s.say(on))
		f.Limit = fmt.Sprintf("at least %s behind and %s ahead", s.say(behind.Value), s.say(ahead.Value))
		f.Source = behind.Source
		f.Do = "Nail this stretch by hand through the tongue, or through the face where no row lies behind or ahead."
		out = append(out, f)
	}
	return out
}

// holdHand holds a stretch said to be nailed by hand through the tongue to the
// rows beside it: the first row and the last are nailed through the face
// (common practice, no source).
func (s *site) holdHand(r Rule, n *run, on plane.Span) []finding.Finding {
	var out []finding.Finding
	for i, line := range []tape.Length{n.Low, n.High} {
		which := "behind"
		if (i == 1) == (n.zone.Ahead > 0) {
			which = "ahead"
		}
		for _, t := range s.alone(n, line, on.Meet(boxOf(n.Outline).x())) {
			if t.Len() < fastenersApart {
				continue
			}
			f := s.unfit(r, n, t)
			f.Measured, f.Limit = "nailed by hand, and no row lies "+which, "a row behind and one ahead"
			f.Do = "Nail this stretch through the face."
			out = append(out, f)
		}
	}
	return out
}

// alone are the parts of a stretch along which no run lies on the other side
// of a line of n's strip: no run of the zone there, and none of another zone
// within an inch.
func (s *site) alone(n *run, line tape.Length, on plane.Span) []plane.Span {
	left := []plane.Span{on}
	cut := func(t plane.Span) {
		var rest []plane.Span
		for _, l := range left {
			rest = append(rest, l.Cut(t)...)
		}
		left = rest
	}
	for _, o := range s.runs {
		switch {
		case o == n || o.fault != "":
		case o.zone == n.zone && (line == n.Low && o.High == line || line == n.High && o.Low == line):
			cut(boxOf(o.Outline).x())
		case o.zone != n.zone:
			b := boxOf(turn{o.zone.Dir, n.zone.Dir}.of(o.Outline))
			if b.lo.Y-tape.Inch <= line && line <= b.hi.Y+tape.Inch {
				cut(b.x())
			}
		}
	}
	return left
}
