package row

import (
	"slices"

	"strake/floor"
	"strake/lay"
	"strake/limits"
	"strake/plane"
	"strake/tape"
)

// edge is an edge of the floor beside the rows, as the row lines meet it.
//
// With the floor above it (a lower edge), boards may reach down to reach and
// must cover down to need: reach is the highest its least gap comes, need the
// lowest of its greatest gap. need less reach is the play less the slant. With
// the floor below it both are the other way up.
type edge struct {
	index       int // of its first edge
	group       int
	above       bool // the floor lies above the edge
	reach, need tape.Length
	slant, play tape.Length
	bow         tape.Length // how far it strays from the straight line between its ends
	run         tape.Length // its length along the rows, inside the gaps
	whole       tape.Length // the same of the edge itself
	low, high   tape.Length // of the edge moved in by its least gap
}

// bare fills the slant, the length and the bow of the edge itself, before its
// gap.
func (e *edge) bare(a floor.Aligned) {
	var ps []plane.Pt
	for _, g := range a.Edges {
		if g.Group == e.group {
			ps = append(ps, g.From, g.To)
		}
	}
	slices.SortFunc(ps, func(p, q plane.Pt) int { return int(p.X - q.X) })
	from, to := ps[0], ps[len(ps)-1]
	low, high := plane.Ring(ps).Box()
	e.slant, e.whole = high.Y-low.Y, to.X-from.X
	for _, p := range ps {
		e.bow = max(e.bow, (p.Y - heightAt(from, to, p.X)).Abs())
	}
}

// heightAt is the height of the line from a to b at x.
func heightAt(a, b plane.Pt, x tape.Length) tape.Length {
	if a.X == b.X {
		return a.Y
	}
	return a.Y + tape.Length(roundHalf(float64(x-a.X)/float64(b.X-a.X)*float64(b.Y-a.Y)))
}

// besides are the edges beside the rows that are left at the least gaps; those
// of one bowed wall are one.
func besides(a floor.Aligned) []edge {
	seen := map[int]int{}
	var out []edge
	for r, ring := range a.Reach {
		for i, p := range ring {
			id := a.ReachEdge[r][i]
			q := ring[(i+1)%len(ring)]
			if id < 0 || !a.Edges[id].Beside || p.X == q.X {
				continue
			}
			lo, hi := min(p.Y, q.Y), max(p.Y, q.Y)
			e := a.Edges[id]
			if k, ok := seen[e.Group]; ok {
				out[k].low, out[k].high = min(out[k].low, lo), max(out[k].high, hi)
				out[k].run += (q.X - p.X).Abs()
				continue
			}
			seen[e.Group] = len(out)
			out = append(out, edge{
				index: id, group: e.Group, above: q.X > p.X, low: lo, high: hi, run: (q.X - p.X).Abs(), play: e.Range.Play(),
			})
			out[len(out)-1].bare(a)
		}
	}
	for i := range out {
		out[i].meet(a)
	}
	return out
}

// meet fills reach and need from the two insets; where the greatest gaps leave
// nothing of the edge, its play is added to the reach.
func (e *edge) meet(a floor.Aligned) {
	first := true
	for r, ring := range a.Need {
		for i, p := range ring {
			if id := a.NeedEdge[r][i]; id < 0 || a.Edges[id].Group != e.group {
				continue
			}
			q := ring[(i+1)%len(ring)]
			lo, hi := min(p.Y, q.Y), max(p.Y, q.Y)
			switch {
			case first && e.above, !first && e.above && lo < e.need:
				e.need = lo
			case first, !e.above && hi > e.need:
				e.need = hi
			}
			first = false
		}
	}
	if e.above {
		e.reach = e.high
	} else {
		e.reach = e.low
	}
	if first {
		e.need = e.low + e.play
		if !e.above {
			e.need = e.high - e.play
		}
	}
}

// notches tells whether the edge is shorter than the shortest piece: a jamb, a
// pipe, a jog. The row passes it with a notch in a longer board, and no rip is
// made for it.
func (e edge) notches(lim limits.Limits) bool { return e.whole < lim.ShortestPiece.Value }

// closing tells whether one rip can close the edge its whole length: its
// slant, less its play, is under the row width less the narrowest rip. Of
// several widths the widest is asked: the start line can put it there.
func (e edge) closing(widest tape.Length, lim limits.Limits) bool {
	return e.slant-e.play < widest-lim.RipFrom(widest)
}

// row is the row against the edge: the one that holds need, which with the
// floor above lies above its low line or on it.
func (e edge) row(c lay.Courses) int {
	if e.above {
		return c.Row(e.need)
	}
	return c.Row(e.need - 1)
}

// rip is the narrowest that the row against the edge is: its whole width when
// a line lies in the play, so that a full board closes it; 0 when the row runs
// out to a point.
func (e edge) rip(c lay.Courses) tape.Length {
	n := e.row(c)
	left := c.Line(n+1) - e.reach
	if !e.above {
		left = e.reach - c.Line(n)
	}
	return min(c.Width(n), max(0, left))
}

// under is the length of the edge, along the rows, where its row is narrower
// than the limit of its width.
func (e edge) under(c lay.Courses, limits []tape.Length) tape.Length {
	if e.high == e.low {
		if e.rip(c) < limits[index(e.row(c), len(limits))] {
			return e.run
		}
		return 0
	}
	low, high := e.low, e.high
	if !e.above { // seen from the other side, rows and edge upside down
		low, high = -high, -low
		c, limits = upsideDown(c), slices.Clone(limits)
		slices.Reverse(limits)
	}
	n := narrowUpTo(high, c, limits) - narrowUpTo(low, c, limits)
	return tape.Length(float64(float64(n) / float64(e.high-e.low) * float64(e.run)))
}

// narrowUpTo counts the heights up to y, from a line far below, at which less
// than the limit of its row is left up to the next line.
func narrowUpTo(y tape.Length, c lay.Courses, limits []tape.Length) tape.Length {
	var all tape.Length
	for _, l := range limits {
		all += l
	}
	n := c.Row(y)
	k := index(n, len(limits))
	sum := tape.Length((n-k)/len(limits)) * all
	for _, l := range limits[:k] {
		sum += l
	}
	return sum + max(0, y-c.Line(n)-(c.Width(n)-limits[k]))
}

// upsideDown is the lines at -Y of those given.
func upsideDown(c lay.Courses) lay.Courses {
	out := lay.Courses{Offset: -c.Offset, Widths: slices.Clone(c.Widths)}
	slices.Reverse(out.Widths)
	return out
}

// index is the place of row n in a pattern of so many.
func index(n, rows int) int {
	if n %= rows; n < 0 {
		n += rows
	}
	return n
}

// mod is a modulo m, never negative.
func mod(a, m tape.Length) tape.Length {
	if a %= m; a < 0 {
		a += m
	}
	return a
}
