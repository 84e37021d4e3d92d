package row

import (
	"slices"

	"strake/floor"
	"strake/lay"
	"strake/limits"
	"strake/tape"
)

// score is how good an offset is: first whether any rip at a closing edge is
// under its limit, then the rip there that keeps least of its board, then the
// least length under the limit at the other edges, then the next rips, then the
// fewest rows. Of boards of one width the first two are the narrowest rip.
type score struct {
	rips  []ripped // the one that keeps least of its board first
	under tape.Length
	rows  int
}

// narrowest is the width of the rip that keeps least of its board; full where
// there is none.
func (s score) narrowest(full tape.Length) tape.Length {
	if len(s.rips) == 0 {
		return full
	}
	return s.rips[0].left
}

// sliver tells whether some rip is under its limit.
func (s score) sliver() bool { return slices.ContainsFunc(s.rips, ripped.sliver) }

// better compares two scores of one layout.
func (s score) better(t score) bool {
	if a, b := s.sliver(), t.sliver(); a != b {
		return b
	}
	if len(s.rips) > 0 {
		if c := s.rips[0].compare(t.rips[0]); c != 0 {
			return c > 0
		}
	}
	if s.under != t.under {
		return s.under < t.under
	}
	if c := slices.CompareFunc(s.rips, t.rips, ripped.compare); c != 0 {
		return c > 0
	}
	return s.rows < t.rows
}

// problem is the choice of an offset, stated in lengths across the rows.
type problem struct {
	widths  []tape.Length // of the rows, over and over
	limits  []tape.Length // the narrowest rip of each
	closing []edge
	odd     []edge
	corners []tape.Length // of both insets
	low     tape.Length   // of Need
	high    tape.Length
}

func newProblem(a floor.Aligned, widths []tape.Length, lim limits.Limits) problem {
	p := problem{widths: widths}
	widest := p.widest()
	for _, w := range widths {
		p.limits = append(p.limits, lim.RipFrom(w))
	}
	for _, e := range besides(a) {
		switch {
		case e.notches(lim):
		case e.closing(widest, lim):
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

// lines are the row lines with one at offset where the pattern begins.
func (p problem) lines(offset tape.Length) lay.Courses {
	return lay.Courses{Offset: offset, Widths: p.widths}
}

// rip is the row against an edge.
func (p problem) rip(e edge, c lay.Courses) ripped {
	k := index(e.row(c), len(p.widths))
	return ripped{e.rip(c), p.widths[k], p.limits[k]}
}

// at is the score of an offset.
func (p problem) at(offset tape.Length) score {
	c := p.lines(offset)
	var s score
	for _, e := range p.closing {
		s.rips = append(s.rips, p.rip(e, c))
	}
	slices.SortFunc(s.rips, ripped.compare)
	for _, e := range p.odd {
		s.under += e.under(c, p.limits)
	}
	s.rows = c.Row(p.high-1) - c.Row(p.low) + 1
	return s
}

func (p problem) widest() tape.Length { return slices.Max(p.widths) }

// of is an offset within the period of the pattern.
func (p problem) of(y tape.Length) tape.Length { return mod(y, p.lines(0).Period()) }

// through are the offsets that put a row line at y: any line of the pattern.
func (p problem) through(y tape.Length) []tape.Length {
	c := p.lines(0)
	var out []tape.Length
	for k := range p.widths {
		out = append(out, p.of(y-c.Line(k)))
	}
	return out
}

// candidates are all offsets at which the best may lie: each rip changes with
// slope +1, -1 or 0 between the corners of the two insets (less a line of the
// pattern, modulo its period), so the share that the least of them keeps peaks
// at such a corner or where a rising and a falling one are equal. Half ticks
// are tried on both sides. Of several widths no rip is to be under its limit
// before shares are looked at, so places where one is just at it are among them.
func (p problem) candidates() []tape.Length {
	seen := map[tape.Length]bool{}
	add := func(y tape.Length) {
		for _, o := range p.through(y) {
			seen[o] = true
		}
	}
	for _, c := range p.corners {
		add(c)
	}
	for _, e := range p.closing {
		add(e.reach)
		add(e.need)
		add(e.need + 1)
		add(e.need - 1)
		p.atLimit(e, add)
	}
	p.equal(func(o tape.Length) { seen[p.of(o)] = true })
	out := make([]tape.Length, 0, len(seen))
	for y := range seen {
		out = append(out, y)
	}
	slices.Sort(out)
	return out
}

// atLimit are the heights of a line that leaves the row against an edge just
// at a limit.
func (p problem) atLimit(e edge, add func(tape.Length)) {
	if len(p.widths) < 2 {
		return
	}
	for _, l := range p.limits {
		if e.above {
			add(e.reach + l)
		} else {
			add(e.reach - l)
		}
	}
}

// equal are the offsets at which two rips, one rising with the offset and one
// falling, keep equal shares of their boards.
func (p problem) equal(add func(tape.Length)) {
	for _, r := range p.closing {
		for _, f := range p.closing {
			if r.above && !f.above {
				p.equalRips(r.reach, f.reach, add)
			}
		}
	}
}

// equalRips are those of the edges that boards reach down to low and up to
// high: row i has its upper line at low at first and rises, row k has its lower
// line at high, or some periods off, and is left behind.
func (p problem) equalRips(low, high tape.Length, add func(tape.Length)) {
	c := p.lines(0)
	period := c.Period()
	for i, w := range p.widths {
		from := low - c.Line(i+1) // the offset at which nothing is left of row i
		for k, v := range p.widths {
			to := from + mod(high-c.Line(k)-from, period) // and of row k
			for ; to <= from+w+v; to += period {
				o := from + (to-from)*w/(w+v)
				add(o)
				add(o + 1)
			}
		}
	}
}

// best is the offset with the best score, the smallest of equals.
func (p problem) best() (tape.Length, score) { return p.bestOf(p.candidates()) }

func (p problem) bestOf(offsets []tape.Length) (tape.Length, score) {
	var at tape.Length
	var s score
	for i, y := range offsets {
		if t := p.at(y); i == 0 || t.better(s) {
			at, s = y, t
		}
	}
	return at, s
}
