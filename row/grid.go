package row

import (
	"slices"

	"strake/floor"
	"strake/plane"
	"strake/tape"
)

// cell is a connected part of one strip, gaps included: its runs are laid in
// one sense.
type cell struct {
	low, high tape.Length
	part      plane.Region
	runs      []int       // into Layout.Runs
	long      tape.Length // its longest run
	ahead     int         // 0 not reached yet
	turn      int         // how many turns after the start it is laid
	start     int         // which start it hangs on, 1 first
}

// grid is the cells with what touches them, and parts of the floor without
// runs.
type grid struct {
	cells    []cell
	empty    []cell
	up, down [][]int
}

func (l *Layout) grid(a floor.Aligned) grid {
	var g grid
	byLow := map[tape.Length][]int{}
	for i, r := range l.Runs {
		byLow[r.Low] = append(byLow[r.Low], i)
	}
	lo, hi := a.Bare.Box()
	c := l.Courses()
	n := c.Row(lo.Y)
	if len(l.Runs) > 0 {
		n = min(n, c.Row(l.Runs[0].Low))
		hi.Y = max(hi.Y, l.Runs[len(l.Runs)-1].High)
	}
	for ; c.Line(n) < hi.Y; n++ {
		low, high := c.Line(n), c.Line(n+1)
		g.strip(strip(a.Bare, low, high).Parts(), low, high, byLow[low], l.Runs)
	}
	g.touch(l.Runs)
	return g
}

// strip is a strip of a region. Its upper corners are those that the upper
// line alone cuts: the strip above then has the same.
func strip(g plane.Region, low, high tape.Length) plane.Region {
	out := g.Strip(low, high)
	for _, c := range slices.Concat(g.Below(high)...) {
		if c.Y != high {
			continue
		}
		for _, r := range out {
			for i, p := range r {
				if p.Y == high && (p.X-c.X).Abs() <= 2 {
					r[i] = c
				}
			}
		}
	}
	return out
}

// strip adds the parts of one strip as cells, each with its runs. A run in
// none (it lies behind jambs) goes to the first.
func (g *grid) strip(parts []plane.Region, low, high tape.Length, rs []int, runs []Run) {
	cs := make([]cell, len(parts))
	for i, p := range parts {
		cs[i] = cell{low: low, high: high, part: p}
	}
	if len(cs) == 0 && len(rs) > 0 {
		cs = []cell{{low: low, high: high}}
	}
	for _, i := range rs {
		k := 0
		if len(cs) > 1 {
			k = max(0, holding(cs, runs[i]))
		}
		cs[k].runs, cs[k].long = append(cs[k].runs, i), max(cs[k].long, runs[i].Length())
	}
	for _, i := range rs { // a run that goes on behind a jamb takes in the part on its other side
		own := slices.IndexFunc(cs, func(c cell) bool { return slices.Contains(c.runs, i) })
		for k := range cs {
			if k != own && len(cs[k].runs) == 0 && places(cs[k], runs[i]) > 0 {
				cs[own].part, cs[k].part = append(cs[own].part, cs[k].part...), nil
			}
		}
	}
	cs = slices.DeleteFunc(cs, func(c cell) bool { return len(c.runs) == 0 && len(c.part) == 0 })
	for _, c := range cs {
		if len(c.runs) > 0 {
			g.cells = append(g.cells, c)
		} else {
			g.empty = append(g.empty, c)
		}
	}
}

// holding is the part of a strip that a run lies in most, looked up at places
// along its middle; -1 when it lies in none.
func holding(cs []cell, r Run) int {
	best, most := -1, 0
	for i, c := range cs {
		if n := places(c, r); n > most {
			best, most = i, n
		}
	}
	return best
}

// places counts at how many places of a grid over it a run lies in a cell.
func places(c cell, r Run) int {
	if len(c.part) == 0 {
		return 0
	}
	lo, hi := r.Shape[0].Box()
	from, to := max(lo.X, r.Left.Reach), min(hi.X, r.Right.Reach)
	if a, b := c.part[0].Box(); b.X < from || to < a.X {
		return 0
	}
	n := 0
	for k := tape.Length(1); k < 24; k++ {
		for j := tape.Length(1); j < 4; j++ {
			if c.part[0].Where(plane.P(from+(to-from)*k/24, lo.Y+(hi.Y-lo.Y)*j/4)) >= 0 {
				n++
			}
		}
	}
	return n
}

// touch finds, for each cell, the cells whose runs touch it from ahead (up)
// and from behind (down).
func (g *grid) touch(runs []Run) {
	g.up, g.down = make([][]int, len(g.cells)), make([][]int, len(g.cells))
	byLow := map[tape.Length][]int{}
	for i, c := range g.cells {
		byLow[c.low] = append(byLow[c.low], i)
	}
	for i, c := range g.cells {
		for _, j := range byLow[c.high] {
			if len(meet(c, g.cells[j], runs)) > 0 {
				g.up[i], g.down[j] = append(g.up[i], j), append(g.down[j], i)
			}
		}
	}
}

// meet are the stretches of the row line between two cells where runs of both
// lie against it.
func meet(low, high cell, runs []Run) []plane.Span {
	var out []plane.Span
	for _, i := range low.runs {
		for _, j := range high.runs {
			out = append(out, meeting(runs[i], runs[j])...)
		}
	}
	return out
}

// meeting are the stretches where run r, below, and run q lie against each
// other.
func meeting(r, q Run) []plane.Span {
	both := plane.Span{From: max(r.Left.Reach, q.Left.Reach), To: min(r.Right.Reach, q.Right.Reach)}
	var out []plane.Span
	for _, s := range onLine(r.Shape, r.High) {
		for _, t := range onLine(q.Shape, q.Low) {
			if m := s.Meet(t).Meet(both); !m.Empty() {
				out = append(out, m)
			}
		}
	}
	return out
}

// onLine are the stretches of a region's sides that lie on the line Y = y.
func onLine(g plane.Region, y tape.Length) []plane.Span {
	var out []plane.Span
	for _, r := range g {
		for i, p := range r {
			if q := r[(i+1)%len(r)]; p.Y == y && q.Y == y && p.X != q.X {
				out = append(out, plane.Span{From: min(p.X, q.X), To: max(p.X, q.X)})
			}
		}
	}
	return out
}
