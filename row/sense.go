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

// spread gives each run its sense and its place in the order of laying, from
// the longest run of the start row on.
func (l *Layout) spread(a floor.Aligned, rooms []floor.RoomOutline, turning Turning) {
	g := l.grid(a)
	if turning == TurnNone {
		for i := range g.cells {
			g.cells[i].ahead = 1
		}
	} else {
		g.reach(g.longestOf(l.StartRow, l.Runs), turning)
	}
	l.sort(g, rooms)
	l.Starts = g.starts(l.Runs)
	l.splines(g)
	l.Closures = l.closures(g)
	l.areas(g, a.Bare)
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

// starts counts the places where a first row has none behind it to go on from,
// and marks its runs.
func (g grid) starts(runs []Run) int {
	n := 0
	for i, c := range g.cells {
		if c.turn == 0 && !slices.ContainsFunc(g.down[i], func(j int) bool { return g.cells[j].ahead > 0 }) {
			n++
			for _, k := range c.runs {
				runs[k].First = true
			}
		}
	}
	return n
}
