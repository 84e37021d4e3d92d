package check

import (
	"math/big"

	"strake/finding"
	"strake/floor"
	"strake/plane"
	"strake/tape"
)

var _ = declare("ends of a run",
	"A run ends between the place its end may reach at the least gap and the place it must reach at the greatest; it is square there unless said to be mitred; the edge named lies there; and the end is cut in place exactly where that edge is met flush.",
	holdEnds)

// holdEnds reads the outline for where a run ends: "outline of a run" holds
// that to the pieces.
func holdEnds(r Rule, s *site) []finding.Finding {
	var out []finding.Finding
	for _, n := range s.runs {
		if n.fault != "" {
			continue
		}
		for _, e := range n.ends() {
			what, limit := s.endMiss(e)
			if what == "" {
				what, limit = s.edgeMiss(e)
			}
			if what == "" {
				continue
			}
			f := r.stop(e.where())
			if ps := n.pieces; len(ps) > 0 && e.on == leftEnd {
				f.Pieces = []int{ps[0].ID}
			} else if len(ps) > 0 {
				f.Pieces = []int{ps[len(ps)-1].ID}
			}
			f.Measured, f.Limit = what, limit
			f.Do = "Say where the end may lie by the gaps at the edge it meets: plan again, or mend the file."
			out = append(out, f)
		}
	}
	return out
}

// endMiss holds the range of an end to the floor and to where the run ends.
func (s *site) endMiss(e runEnd) (what, limit string) {
	square, slanted := endSpans(e.run.Outline, e.on)
	switch {
	case e.Reach.Abs() > tape.Longest || e.Need.Abs() > tape.Longest:
		return "its range lies farther out than can be measured", "the floor"
	case e.past(e.Reach, e.Need):
		return "it may reach " + s.say(e.Reach) + " and must reach " + s.say(e.Need), "no less than it must"
	case e.past(e.Reach, e.at) || e.past(e.at, e.Need):
		return "the run ends at " + s.say(e.at), "from " + s.say(e.Reach) + " to " + s.say(e.Need) + ", as the lay has it"
	case slanted && !e.Mitred:
		return "the run does not end square", "square, as the lay does not call it mitred"
	}
	if x, ok := e.stopped(square); ok {
		return "it may reach " + s.say(e.Reach) + ", as the lay has it", s.say(x) + ", by the least gap"
	}
	r := e.run.strip(e.at, e.Need)
	if a, room := e.run.needIn(r), rat(perimeter(one(r))); a.Cmp(room) > 0 {
		return "it need only reach " + s.say(e.Need) + ", as the lay has it: " + s.sayArea(a) + " of what must be covered lies beyond", s.sayArea(room)
	}
	return "", ""
}

// stopped is where the least gap stops the end short of the place it is said
// to reach: a side that rows end at crosses the way there. Sides along the rows
// are left out: the end may narrow to them.
func (e runEnd) stopped(square []plane.Span) (tape.Length, bool) {
	at, short := e.Reach, false
	for _, f := range append(sidesOf(e.run.zone.at.Reach), sidesOf(e.run.zone.bound)...) {
		if f.faces() != e.on {
			continue
		}
		for _, width := range square {
			y := f.y().Meet(plane.Span{From: width.From + slack, To: width.To - slack})
			if y.Empty() {
				continue
			}
			x := nearest(f.swap().at(rat(y.From)))
			if other := nearest(f.swap().at(rat(y.To))); e.past(other, x) {
				x = other
			}
			if e.past(x, at+e.in*slack) && !e.past(x, e.at+e.in*slack) {
				at, short = x, true
			}
		}
	}
	return at, short
}

// needIn is how much of what must be covered lies in the outline of the run
// inside a rectangle.
func (n *run) needIn(r plane.Ring) *big.Rat {
	if area2(r).Sign() == 0 {
		return new(big.Rat)
	}
	return common(append(n.zone.must(), one(n.Outline), one(r))...)
}

// edgeMiss holds what an end says of the edge it meets. An end that names none
// comes to a point, or to the line of another zone; one that names an edge that
// is not there at all is for "made for this job" to tell.
func (s *site) edgeMiss(e runEnd) (what, limit string) {
	if e.Edge == "" {
		if e.InPlace {
			return "cut in place, and no edge is named", "an edge met flush"
		}
		return "", ""
	}
	if !e.run.zone.hasEdge(e.Edge) {
		return "", ""
	}
	there, like := false, false
	for _, f := range e.run.zone.at.Edges {
		if f.Name == e.Edge && e.meets(f) {
			there, like = true, like || f.InPlace == e.InPlace
		}
	}
	switch {
	case !there:
		return e.Edge + " does not lie there", "the edge that the row ends at"
	case !like && e.InPlace:
		return "cut in place at " + e.Edge, "only where an edge is met flush"
	case !like:
		return "not cut in place at " + e.Edge, "cut in place where an edge is met flush"
	}
	return "", ""
}

// meets tells whether an edge faces the end and, somewhere in the run's strip,
// passes the farthest place of the end at a distance of its gap range. Corners
// between the gaps lie off the edge's own, along it by up to 2-1/2 widths of the
// gap at a corner of 45 degrees: it is followed past its ends by four.
func (e runEnd) meets(f floor.AlignedEdge) bool {
	line := edge{f.From, f.To}
	if line.flat() || (line.b.Y < line.a.Y) != (e.on == leftEnd) {
		return false
	}
	wide := 4 * e.run.zone.widest()
	y := line.y()
	y = plane.Span{From: max(y.From-wide, e.run.Low), To: min(y.To+wide, e.run.High)}
	if y.Empty() {
		return false
	}
	a, b := line.swap().at(rat(y.From)), line.swap().at(rat(y.To))
	if a.Cmp(b) > 0 {
		a, b = b, a
	}
	along := func(gap tape.Length) *big.Rat { // a gap square to the edge, measured along the row
		return new(big.Rat).Mul(rat(e.in*gap), frac(line.length(), line.y().Len()))
	}
	near, far := f.Range.Least-endSlack, f.Range.Greatest+endSlack
	if e.in < 0 {
		near, far = far, near
	}
	a, b = new(big.Rat).Add(a, along(near)), new(big.Rat).Add(b, along(far))
	return a.Cmp(rat(e.Reach)) <= 0 && b.Cmp(rat(e.Reach)) >= 0
}

// endSlack is how far the place of an end may lie off the gaps of the edge it
// names. A doorway reaches 1 mm into its rooms so that they join, and where walls
// are not parallel its jambs step there by a few hundredths of a mm. How far the
// end may reach is held exactly, to the floor itself.
const endSlack = tape.Millimetre / 10

// widest is the widest gap of a zone's edges, to either side of them.
func (z *zone) widest() tape.Length {
	var w tape.Length
	for _, f := range z.at.Edges {
		w = max(w, f.Range.Greatest, -f.Range.Least)
	}
	return w
}
