package row

import (
	"slices"

	"strake/floor"
	"strake/limits"
	"strake/tape"
)

// score is how good an offset is: first the narrowest rip at any closing edge,
// then the least length under the limit at the other edges, then the next
// narrowest rips, then the fewest rows.
type score struct {
	rips  []tape.Length // ascending
	under tape.Length
	rows  int
}

func (s score) narrowest(pitch tape.Length) tape.Length {
	if len(s.rips) == 0 {
		return pitch
	}
	return s.rips[0]
}

// better compares two scores of one layout.
func (s score) better(t score) bool {
	if len(s.rips) > 0 && s.rips[0] != t.rips[0] {
		return s.rips[0] > t.rips[0]
	}
	if s.under != t.under {
		return s.under < t.under
	}
	if c := slices.Compare(s.rips, t.rips); c != 0 {
		return c > 0
	}
	return s.rows < t.rows
}

// problem is the choice of an offset, stated in lengths across the rows.
type problem struct {
	pitch   tape.Length
	limit   tape.Length
	closing []edge
	odd     []edge
	corners []tape.Length // of both insets
	low     tape.Length   // of Need
	high    tape.Length
}

func newProblem(a floor.Aligned, pitch tape.Length, lim limits.Limits) problem {
	p := problem{pitch: pitch, limit: lim.NarrowestRip.Value}
	for _, e := range besides(a) {
		switch {
		case e.notches(lim):
		case e.closing(pitch, lim):
			p.closing = append(p.closing, e)
		default:
			p.odd = append(p.odd, e)
		}
	}
	for _, r := range slices.Concat(a.Reach, a.Need) {
		for _, c := range r {
			p.corners = append(p.corners, c.Y)
		}
	}
	lo, hi := a.Need.Box()
	p.low, p.high = lo.Y, hi.Y
	return p
}

// at is the score of an offset.
func (p problem) at(offset tape.Length) score {
	var s score
	for _, e := range p.closing {
		s.rips = append(s.rips, e.rip(offset, p.pitch))
	}
	slices.Sort(s.rips)
	for _, e := range p.odd {
		s.under += e.under(offset, p.pitch, p.limit)
	}
	below := mod(p.low-offset, p.pitch) // Need above the line under its low edge
	s.rows = int((p.high - p.low + below + p.pitch - 1) / p.pitch)
	return s
}

// candidates are all offsets at which the best may lie: each rip changes with
// slope +1, -1 or 0 between the corners of the two insets (modulo the pitch),
// so the least of them peaks at such a corner or where a rising and a falling
// one are equal. Half ticks are tried on both sides.
func (p problem) candidates() []tape.Length {
	seen := map[tape.Length]bool{}
	add := func(y tape.Length) { seen[mod(y, p.pitch)] = true }
	for _, c := range p.corners {
		add(c)
	}
	var rising, falling []tape.Length
	for _, e := range p.closing {
		add(e.reach)
		add(e.need)
		add(e.need + 1)
		add(e.need - 1)
		if e.above {
			rising = append(rising, e.reach)
		} else {
			falling = append(falling, e.reach)
		}
	}
	for _, r := range rising {
		for _, f := range falling {
			for _, sum := range []tape.Length{r + f, r + f + p.pitch} {
				half := (sum - mod(sum, 2)) / 2
				add(half)
				add(half + 1)
			}
		}
	}
	out := make([]tape.Length, 0, len(seen))
	for y := range seen {
		out = append(out, y)
	}
	slices.Sort(out)
	return out
}

// best is the offset with the best score, the smallest of equals.
func (p problem) best() (tape.Length, score) {
	var at tape.Length
	var s score
	for i, y := range p.candidates() {
		if t := p.at(y); i == 0 || t.better(s) {
			at, s = y, t
		}
	}
	return at, s
}
