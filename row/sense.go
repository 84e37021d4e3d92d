package row

import (
	"slices"

	"strake/floor"
	"strake/plane"
	"strake/tape"
)

// From the start row the order of laying spreads ahead, tongues leading. What
// lies behind that row, and is reached from no row behind it, is a pocket: a
// closet behind the start wall, a room off the side. A pocket with a long row
// of its own to start from is started there, from a carried line. Any other is
// laid backwards: its boards are turned end for end, groove meets groove along
// the line where the turn is made, and a spline (slip tongue) glued into the
// first of the two makes it a tongue. Behind a turned closet there may be more
// floor ahead again, and so on.
//
// A tongue never meets a tongue: what is reached ahead takes in all that lies
// ahead of it and was not reached before, and what is reached backwards all
// that lies behind it, so fronts only part and never meet head on.

// Turning says which pockets are laid backwards from a spline.
type Turning string

// The ways.
const (
	TurnShort Turning = ""     // those with no long row of their own to start from
	TurnAll   Turning = "all"  // every pocket
	TurnNone  Turning = "none" // none: each is started from a carried line
)

// SplineLine is a stretch of a row line where groove meets groove.
type SplineLine struct {
	Y     tape.Length
	Along plane.Span
}

// Area is a part of the floor whose tongues face one way.
type Area struct {
	Ahead   int
	Outline plane.Region // to the walls; nil: all of the floor
}

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

// spread gives each run its sense and its place in the order of laying, from
// the longest run of the start row on.
func (l *Layout) spread(a floor.Aligned, turning Turning) {
	g := l.grid(a)
	if turning == TurnNone {
		for i := range g.cells {
			g.cells[i].ahead = 1
		}
	} else {
		g.reach(g.longestOf(l.StartRow, l.Runs), turning)
	}
	l.Starts = g.starts()
	l.sort(g.cells)
	l.splines(g)
	l.Closures = l.closures(g)
	l.areas(g, a.Bare)
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
	low := lo.Y - mod(lo.Y-l.Offset, l.Pitch)
	if len(l.Runs) > 0 {
		low = min(low, l.Runs[0].Low)
		hi.Y = max(hi.Y, l.Runs[len(l.Runs)-1].High)
	}
	for ; low < hi.Y; low += l.Pitch {
		g.strip(strip(a.Bare, low, low+l.Pitch).Parts(), low, low+l.Pitch, byLow[low], l.Runs)
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
		k := max(0, holding(cs, runs[i]))
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

// longestOf is the cell of a row with the longest run.
func (g grid) longestOf(row int, runs []Run) int {
	best := 0
	for i, c := range g.cells {
		if b := g.cells[best]; runs[c.runs[0]].Row == row && (runs[b.runs[0]].Row != row || c.long > b.long) {
			best = i
		}
	}
	return best
}

// reach spreads from a cell, in turns ahead and backwards; what hangs on
// nothing reached so far has a start of its own, at its lowest row.
func (g grid) reach(first int, turning Turning) {
	seed := first
	for start := 1; seed >= 0; start++ {
		seeds := []int{seed}
		for _, p := range g.pockets(seed) {
			if turning == TurnShort && g.hasStart(p, seed) {
				seeds = append(seeds, p...)
			}
		}
		g.wave(seeds, start)
		seed = slices.IndexFunc(g.cells, func(c cell) bool { return c.ahead == 0 })
	}
}

// pockets are what lies behind a cell and all that is reached ahead of it, in
// connected pieces.
func (g grid) pockets(seed int) [][]int {
	ahead := g.closed([]int{seed}, g.up, nil)
	var behind []int
	for i := range ahead {
		behind = append(behind, g.down[i]...)
	}
	slices.Sort(behind)
	all := g.closed(behind, g.down, ahead)
	var out [][]int
	done := map[int]bool{}
	for i := range g.cells {
		if !all[i] || done[i] {
			continue
		}
		var piece []int
		for queue := []int{i}; len(queue) > 0; queue = queue[1:] {
			if k := queue[0]; all[k] && !done[k] {
				done[k] = true
				piece = append(piece, k)
				queue = append(append(queue, g.up[k]...), g.down[k]...)
			}
		}
		out = append(out, piece)
	}
	return out
}

// closed is all that is reached from some cells over certain links, without
// what is left out.
func (g grid) closed(from []int, links [][]int, out map[int]bool) map[int]bool {
	seen := map[int]bool{}
	for queue := slices.Clone(from); len(queue) > 0; queue = queue[1:] {
		if i := queue[0]; !seen[i] && !out[i] && g.cells[i].ahead == 0 {
			seen[i] = true
			queue = append(queue, links[i]...)
		}
	}
	return seen
}

// hasStart tells whether a pocket's rows are long enough to start one from a
// carried line: its first row is half as long as the row the floor starts with.
func (g grid) hasStart(pocket []int, seed int) bool {
	lowest := pocket[0]
	for _, i := range pocket {
		if g.cells[i].low < g.cells[lowest].low || g.cells[i].low == g.cells[lowest].low && g.cells[i].long > g.cells[lowest].long {
			lowest = i
		}
	}
	return 2*g.cells[lowest].long >= g.cells[seed].long
}

// wave reaches all that hangs together with the seeds.
func (g grid) wave(seeds []int, start int) {
	front := seeds
	for turn := 0; len(front) > 0; turn++ {
		sense, on, back := 1, g.up, g.down
		if turn%2 == 1 {
			sense, on, back = -1, g.down, g.up
		}
		var all []int
		for queue := front; len(queue) > 0; queue = queue[1:] {
			i := queue[0]
			if c := &g.cells[i]; c.ahead == 0 {
				c.ahead, c.turn, c.start = sense, turn, start
				all = append(all, i)
				queue = append(queue, on[i]...)
			}
		}
		front = nil
		for _, i := range all {
			for _, j := range back[i] {
				if g.cells[j].ahead == 0 {
					front = append(front, j)
				}
			}
		}
	}
}

// starts counts the places where a first row has none behind it to go on from.
func (g grid) starts() int {
	n := 0
	for i, c := range g.cells {
		if c.turn == 0 && !slices.ContainsFunc(g.down[i], func(j int) bool { return g.cells[j].ahead > 0 }) {
			n++
		}
	}
	return n
}

// sort numbers the runs in the order of laying and puts them into it: turn by
// turn, rows in the direction of their tongues, from left to right.
func (l *Layout) sort(cs []cell) {
	type place struct{ start, turn, row, part int }
	at := make([]place, len(l.Runs))
	for _, c := range cs {
		for _, i := range c.runs {
			r := &l.Runs[i]
			r.Ahead = c.ahead
			at[i] = place{c.start, c.turn, r.Row * c.ahead, r.Part}
		}
	}
	order := make([]int, len(l.Runs))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(x, y int) int {
		a, b := at[x], at[y]
		for _, d := range []int{a.start - b.start, a.turn - b.turn, a.row - b.row, a.part - b.part} {
			if d != 0 {
				return d
			}
		}
		return 0
	})
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
