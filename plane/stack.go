package plane

import (
	"slices"

	"strake/tape"
)

// Stack joins parts that lie on one another, without overlap, along lines of
// equal Y: strips of one floor become one outline again. Where two sides run
// along each other in opposite ways both go; all corners stay where they were.
func Stack(parts ...Region) Region {
	s := stack{from: map[Pt][]Pt{}}
	level := map[tape.Length]*[2][]Span{} // sides to the right, to the left
	var order []tape.Length
	for _, g := range parts {
		for _, r := range g {
			for i, p := range r {
				q := r[(i+1)%len(r)]
				if p.Y != q.Y {
					s.from[p] = append(s.from[p], q)
					continue
				}
				if level[p.Y] == nil {
					level[p.Y] = &[2][]Span{}
					order = append(order, p.Y)
				}
				k := 0
				if q.X < p.X {
					k = 1
				}
				level[p.Y][k] = append(level[p.Y][k], Span{min(p.X, q.X), max(p.X, q.X)})
			}
		}
	}
	for _, y := range order {
		to, fro := level[y][0], level[y][1]
		for _, t := range outside(to, fro) {
			s.from[Pt{t.From, y}] = append(s.from[Pt{t.From, y}], Pt{t.To, y})
		}
		for _, t := range outside(fro, to) {
			s.from[Pt{t.To, y}] = append(s.from[Pt{t.To, y}], Pt{t.From, y})
		}
	}
	return s.trace()
}

// outside is what is left of some spans where others do not cover them.
func outside(ss, less []Span) []Span {
	out := slices.Clone(ss)
	for _, t := range less {
		var next []Span
		for _, s := range out {
			next = append(next, s.Cut(t)...)
		}
		out = next
	}
	return slices.DeleteFunc(out, Span.Empty)
}

// stack holds the sides that are left, by where they start.
type stack struct{ from map[Pt][]Pt }

// trace follows the sides round; where several go on, the one that keeps to
// the same area.
func (s stack) trace() Region {
	starts := make([]Pt, 0, len(s.from))
	for p := range s.from {
		starts = append(starts, p)
	}
	slices.SortFunc(starts, func(a, b Pt) int {
		if a.Y != b.Y {
			return int(a.Y - b.Y)
		}
		return int(a.X - b.X)
	})
	var out Region
	for _, p := range starts {
		for len(s.from[p]) > 0 {
			if r := s.round(p); len(r) > 2 {
				out = append(out, r)
			}
		}
	}
	return out
}

// round takes one closed line off, from p on.
func (s stack) round(p Pt) Ring {
	r := Ring{p}
	at, back := s.take(p, 0), p
	for at != r[0] && len(s.from[at]) > 0 {
		r = append(r, at)
		k := s.hugging(back, at)
		back, at = at, s.take(at, k)
	}
	return r
}

func (s stack) take(p Pt, k int) Pt {
	to := s.from[p][k]
	s.from[p] = slices.Delete(s.from[p], k, k+1)
	return to
}

// hugging is the side from p that is reached first, turning clockwise from
// where p was come from: between them lies the area on the left.
func (s stack) hugging(back, p Pt) int {
	best := 0
	for k := 1; k < len(s.from[p]); k++ {
		if before(p, back, s.from[p][k], s.from[p][best]) {
			best = k
		}
	}
	return best
}

// before tells whether, turning clockwise about p from back, q is met before r.
func before(p, back, q, r Pt) bool {
	hq, hr := Side(back, p, q), Side(back, p, r)
	// Seen from back towards p: to the left is met first, then straight on, then right.
	if hq != hr {
		return hq > hr
	}
	return Side(p, r, q) > 0
}
