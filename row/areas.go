package row

import (
	"slices"

	"strake/floor"
	"strake/plane"
	"strake/tape"
)

// sort numbers the runs in the order of laying and puts them into it: cell by
// cell, and each from left to right.
func (l *Layout) sort(g grid, rooms []floor.RoomOutline) {
	cs := g.cells
	for _, c := range cs {
		for _, i := range c.runs {
			l.Runs[i].Ahead = c.ahead
		}
	}
	var order []int
	for _, c := range l.order(g, rooms) {
		runs := slices.Clone(cs[c].runs)
		slices.SortStableFunc(runs, func(i, j int) int { return l.Runs[i].Part - l.Runs[j].Part })
		order = append(order, runs...)
	}
	was := l.Runs
	l.Runs = make([]Run, len(was))
	now := make([]int, len(was))
	for k, i := range order {
		l.Runs[k] = was[i]
		l.Runs[k].Order = k + 1
		now[i] = k
	}
	for c := range cs {
		for k, i := range cs[c].runs {
			cs[c].runs[k] = now[i]
		}
	}
}

// splines are the stretches where the sense turns round.
func (l *Layout) splines(g grid) {
	for i, c := range g.cells {
		for _, j := range g.up[i] {
			if c.ahead < 0 && g.cells[j].ahead > 0 {
				for _, s := range meet(c, g.cells[j], l.Runs) {
					l.Splines = append(l.Splines, SplineLine{c.high, s})
				}
			}
		}
	}
}

// areas are the outlines of what is laid ahead and of what is laid backwards;
// one area without an outline when nothing turns.
func (l *Layout) areas(g grid, bare plane.Region) {
	var sides [2][]plane.Region
	all := slices.Concat(g.cells, g.adopted())
	for _, c := range all {
		k := 0
		if c.ahead < 0 {
			k = 1
		}
		sides[k] = append(sides[k], c.part)
	}
	l.Areas = []Area{{Ahead: 1}}
	if len(sides[1]) > 0 {
		l.Areas = []Area{{1, outline(sides[0], bare)}, {-1, outline(sides[1], bare)}}
	}
}

// outline is the outline of strips together, without the corners that row
// lines made on walls.
func outline(parts []plane.Region, bare plane.Region) plane.Region {
	corner := map[plane.Pt]bool{}
	for _, r := range bare {
		for _, p := range r {
			corner[p] = true
		}
	}
	out := plane.Stack(parts...)
	for k, r := range out {
		var kept plane.Ring
		for i, p := range r {
			before, after := r[(i+len(r)-1)%len(r)], r[(i+1)%len(r)]
			if corner[p] || before.Y == p.Y || after.Y == p.Y {
				kept = append(kept, p)
			}
		}
		out[k] = kept
	}
	return out
}

// adopted are the parts of the floor without runs, each in the sense of one
// that it lies against, if any.
func (g grid) adopted() []cell {
	out := slices.Clone(g.empty)
	for changed := true; changed; {
		changed = false
		for i := range out {
			if out[i].ahead != 0 {
				continue
			}
			for _, d := range slices.Concat(g.cells, out) {
				if d.ahead != 0 && against(out[i], d) {
					out[i].ahead, changed = d.ahead, true
					break
				}
			}
		}
	}
	return out
}

// against tells whether two parts share a stretch of a row line.
func against(c, d cell) bool {
	if c.low == d.high {
		c, d = d, c
	}
	if c.high != d.low {
		return false
	}
	for _, s := range onLine(c.part, c.high) {
		for _, t := range onLine(d.part, d.low) {
			if !s.Meet(t).Empty() {
				return true
			}
		}
	}
	return false
}

// Front is the edge of a run that its tongues lead.
func (r Run) Front() tape.Length {
	if r.Ahead < 0 {
		return r.Low
	}
	return r.High
}

// AreaOf is the index of the area that a run belongs to.
func (l Layout) AreaOf(r Run) int {
	return slices.IndexFunc(l.Areas, func(a Area) bool { return a.Ahead == r.Ahead })
}
