package saw

import (
	"slices"

	"strake/plane"
	"strake/tape"
)

// shape is a piece's outline as it is read, pocket by pocket.
type shape struct {
	lo, hi                  plane.Pt
	leftBehind, leftAhead   tape.Length // X of the corners of the left end
	rightBehind, rightAhead tape.Length
	low, high               [2]tape.Length // Y of the edges behind and ahead, at the left and the right end
	ripped                  bool
	sawn                    []pocket // pockets that are rips
	notches                 []Notch
}

// read sorts one pocket: what takes up a whole long side is a rip, a whole
// end a mitre, anything else a notch.
func (s *shape) read(c pocket) {
	whole := c.covers(s.lo, s.hi)
	if !whole[foot] && !whole[right] && !whole[head] && !whole[left] {
		s.notch(c)
		return
	}
	if whole[head] || whole[foot] {
		s.rip(c, whole)
	}
	if whole[right] || whole[left] {
		if i, ok := stepped(c, whole); ok {
			s.step(c, i, whole[right])
			return
		}
		s.mitre(c, whole)
	}
}

// rip reads the edge at the two ends from the sides of a pocket that run along
// the board.
func (s *shape) rip(c pocket, whole [4]bool) {
	var flat []plane.Pt
	for i := 0; i+1 < len(c); i++ {
		if !steep(c[i], c[i+1]) {
			flat = append(flat, c[i], c[i+1])
		}
	}
	if len(flat) == 0 {
		return
	}
	s.ripped = true
	s.sawn = append(s.sawn, c)
	first, last := flat[0].Y, flat[len(flat)-1].Y
	if whole[head] { // run from right to left
		s.high = [2]tape.Length{last, first}
		return
	}
	s.low = [2]tape.Length{first, last}
}

// mitre reads the ends' corners from the sides of a pocket that run across.
func (s *shape) mitre(c pocket, whole [4]bool) {
	n := len(c)
	if whole[right] && steep(c[0], c[1]) {
		s.rightBehind, s.rightAhead = c[0].X, c[1].X
	}
	if whole[left] && steep(c[n-2], c[n-1]) {
		s.leftAhead, s.leftBehind = c[n-2].X, c[n-1].X
	}
}

// steep tells whether a line runs across the board rather than along it: ends
// are mitred to some 60 degrees off square, and no taper comes near that.
func steep(a, b plane.Pt) bool { return 2*(b.Y-a.Y).Abs() > (b.X - a.X).Abs() }

func (s *shape) notch(c pocket) {
	lo, hi := plane.Ring(c).Box()
	n := Notch{Along: hi.X - lo.X, Across: hi.Y - lo.Y,
		End: LeftEnd, FromEnd: lo.X - s.lo.X, Edge: BehindEdge, FromEdge: lo.Y - s.lo.Y}
	if d := s.hi.X - hi.X; d < n.FromEnd {
		n.End, n.FromEnd = RightEnd, d
	}
	if d := s.hi.Y - hi.Y; d < n.FromEdge {
		n.Edge, n.FromEdge = AheadEdge, d
	}
	for i := 0; i+1 < len(c); i++ {
		n.Slanted = n.Slanted || c[i].X != c[i+1].X && c[i].Y != c[i+1].Y
	}
	n.Corner = n.Slanted && len(c) == 2
	s.notches = append(s.notches, n)
}

// bends are the widths of r at the corners inside its sawn edges.
func (s *shape) bends(r plane.Ring) []Bend {
	var out []Bend
	for _, c := range s.sawn {
		for i := 1; i+1 < len(c); i++ {
			if !steep(c[i-1], c[i]) && !steep(c[i], c[i+1]) {
				out = append(out, Bend{c[i].X - s.lo.X, width(r, c[i].X)})
			}
		}
	}
	slices.SortFunc(out, func(a, b Bend) int { return int(a.FromLeft - b.FromLeft) })
	return out
}

func width(r plane.Ring, x tape.Length) tape.Length {
	sum := tape.Length(0)
	for _, s := range (plane.Region{r}).Section(x, false) {
		sum += s.Len()
	}
	return sum
}
