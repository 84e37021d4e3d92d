package check

import (
	"math/big"

	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// laidEnd is one end of a run as laid. What is said of the left end holds of
// the right one with X turned about: in is 1 where the run lies towards +X of
// the end, else -1.
type laidEnd struct {
	lay.EndRange
	in   tape.Length
	at   tape.Length // X where the pieces end
	edge floor.AlignedEdge
	met  bool // edge is the one it comes to
}

func (s *laidSite) leftEnd(n *laidRun) laidEnd  { return s.endOf(n, n.plan.LeftEnd, 1, n.From) }
func (s *laidSite) rightEnd(n *laidRun) laidEnd { return s.endOf(n, n.plan.RightEnd, -1, n.to) }

func (s *laidSite) endOf(n *laidRun, r lay.EndRange, in, at tape.Length) laidEnd {
	e := laidEnd{EndRange: r, in: in, at: at}
	best := tape.Longest
	for _, f := range s.At[n.zone.ID].Edges {
		if f.Name != r.Edge || (edge{f.From, f.To}).flat() || (f.To.Y < f.From.Y) != (in > 0) {
			continue
		}
		y := (edge{f.From, f.To}).y()
		if off := max(y.From-n.plan.High, n.plan.Low-y.To, 0); off < best {
			best, e.edge, e.met = off, f, true
		}
	}
	return e
}

// square turns a distance along the row into one square to the edge; without
// one it is the same.
func (e laidEnd) square(along tape.Length) tape.Length {
	if !e.met {
		return along
	}
	line := edge{e.edge.From, e.edge.To}
	return nearest(new(big.Rat).Mul(rat(along), frac(line.y().Len(), line.length())))
}

// wall is where along the row the edge is that the end comes to: where it
// stands farthest into the row. Without one, where the pieces may begin.
func (e laidEnd) wall() tape.Length {
	if !e.met {
		return e.Reach
	}
	line := edge{e.edge.From, e.edge.To}
	along := nearest(new(big.Rat).Mul(rat(e.edge.Range.Least), frac(line.length(), line.y().Len())))
	return e.Reach - e.in*along
}

// gap is the gap between the pieces and the edge, square to it.
func (e laidEnd) gap() tape.Length {
	return e.square(e.in * (e.at - e.wall()))
}

// name is what the end comes to.
func (e laidEnd) name() string {
	if e.Edge == "" {
		return "its end"
	}
	return e.Edge
}

// away says how far along its row a place lies, from what the row's left end
// comes to.
func (s *laidSite) away(n *laidRun, x tape.Length) string {
	return s.tape.Of(x - s.leftEnd(n).wall())
}

// from names what places along a run are measured from.
func (s *laidSite) from(n *laidRun) string {
	e := s.leftEnd(n)
	if !e.met {
		return "the left end of " + n.name
	}
	return e.Edge
}

// at says where along a run a place lies: 5' 3-1/2" from wall D-A.
func (s *laidSite) at(n *laidRun, x tape.Length) string {
	return s.away(n, x) + " from " + s.from(n)
}

// both says where along two runs two places lie.
func (s *laidSite) both(a, b *laidRun, x, y tape.Length) string {
	if s.from(a) == s.from(b) {
		return s.away(a, x) + " and " + s.at(b, y)
	}
	return s.at(a, x) + " and " + s.at(b, y)
}

// strip is what of the floor a run lies on: the part of its strip that holds
// the middle of the run.
func (s *laidSite) strip(n *laidRun) plane.Region {
	mid := n.From + (n.to-n.From)/2
	var best plane.Region
	var most tape.Length
	for _, p := range s.At[n.zone.ID].Reach.Strip(n.plan.Low, n.plan.High).Parts() {
		lo, hi := p.Box()
		if w := (plane.Span{From: lo.X, To: hi.X}).Meet(n.extent()).Len(); w > most || lo.X <= mid && mid <= hi.X && w == most {
			best, most = p, w
		}
	}
	return best
}
