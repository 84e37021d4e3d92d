package saw

import (
	"math"

	"strake/plane"
	"strake/tape"
)

// stepped tells whether a pocket that takes up one end and no long side goes over it
// in steps, as where a board reaches under a jamb with half its width: i is the stretch
// across the board that lies farthest out, from c[i] to c[i+1].
func stepped(c pocket, whole [4]bool) (i int, ok bool) {
	if whole[head] || whole[foot] || whole[left] && whole[right] {
		return 0, false
	}
	i, across := -1, 0
	for k := 0; k+1 < len(c); k++ {
		if !steep(c[k], c[k+1]) {
			continue
		}
		across++
		if i < 0 || outer(c[k], c[k+1], whole[right]) > outer(c[i], c[i+1], whole[right]) {
			i = k
		}
	}
	return i, across > 1
}

// outer is how far out the middle of a stretch lies.
func outer(a, b plane.Pt, rightEnd bool) tape.Length {
	if rightEnd {
		return a.X + b.X
	}
	return -a.X - b.X
}

// step reads an end in steps: cut along the stretch that lies farthest out, and what
// is left of the end beside it are notches.
func (s *shape) step(c pocket, i int, rightEnd bool) {
	a, b := c[i], c[i+1]
	at := func(y tape.Length) tape.Length {
		return a.X + tape.Length(math.Round(float64(y-a.Y)/float64(b.Y-a.Y)*float64(b.X-a.X)))
	}
	if past(at(s.lo.Y), s.lo.X, s.hi.X) || past(at(s.hi.Y), s.lo.X, s.hi.X) {
		s.notch(c) // an end that points: square where it is longest, all of it sawn off that
		return
	}
	if rightEnd {
		s.rightBehind, s.rightAhead = at(s.lo.Y), at(s.hi.Y)
	} else {
		s.leftBehind, s.leftAhead = at(s.lo.Y), at(s.hi.Y)
	}
	for _, part := range []pocket{c[:i+1], c[i+1:]} {
		if len(part) > 1 {
			s.notch(part)
		}
	}
}

// past tells whether a place lies off the piece by more than a saw kerf: a board that long
// is not there.
func past(x, lo, hi tape.Length) bool {
	const kerf = 3 * tape.Millimetre
	return x < lo-kerf || x > hi+kerf
}
