package row

import (
	"slices"

	"strake/tape"
)

// Closure is a row that closes over two or more fronts: both arms of the floor
// round something that stays or a core, or the main front and one started from
// a carried line. They must lie in register where it is laid.
type Closure struct {
	Row   int         // of the run that closes
	Arms  []int       // rows behind it, by their parts from left to right
	Parts []int       // of the same
	At    tape.Length // of the line they meet on from the front of the start row
	Long  tape.Length // of the run that closes: a header there would be so long
	Loop  bool        // all arms go back to one start; else one of them has a start of its own
}

// closures are the places where fronts meet, in the order of laying.
func (l Layout) closures(g grid) []Closure {
	var out []Closure
	start := l.startFront()
	for i, c := range g.cells {
		behind, line := g.down[i], c.low
		if c.ahead < 0 {
			behind, line = g.up[i], c.high
		}
		var arms []int
		for _, j := range behind {
			if g.cells[j].ahead == c.ahead {
				arms = append(arms, j)
			}
		}
		if len(arms) < 2 {
			continue
		}
		slices.SortFunc(arms, func(a, b int) int {
			return int(l.Runs[g.cells[a].runs[0]].Left.Reach - l.Runs[g.cells[b].runs[0]].Left.Reach)
		})
		k := Closure{Row: l.Runs[c.runs[0]].Row, At: (line - start).Abs(), Loop: g.oneStart(arms)}
		for _, r := range c.runs {
			k.Long += l.Runs[r].Length()
		}
		for _, j := range arms {
			r := l.Runs[g.cells[j].runs[0]]
			k.Arms, k.Parts = append(k.Arms, r.Row), append(k.Parts, r.Part)
		}
		out = append(out, k)
	}
	return out
}

// startFront is the front of the row that is laid first.
func (l Layout) startFront() tape.Length {
	for _, r := range l.Runs {
		if r.Row == l.StartRow {
			return r.Front()
		}
	}
	return 0
}

// oneStart tells whether all arms go back to one cell over cells of their
// sense.
func (g grid) oneStart(arms []int) bool {
	first := -1
	for _, a := range arms {
		roots := g.roots(a)
		if len(roots) != 1 || first >= 0 && roots[0] != first {
			return false
		}
		first = roots[0]
	}
	return true
}

// roots are the cells that a cell goes back to and that go back to none.
func (g grid) roots(i int) []int {
	seen := map[int]bool{}
	var out []int
	for queue := []int{i}; len(queue) > 0; queue = queue[1:] {
		k := queue[0]
		if seen[k] {
			continue
		}
		seen[k] = true
		back := g.down[k]
		if g.cells[k].ahead < 0 {
			back = g.up[k]
		}
		n := 0
		for _, j := range back {
			if g.cells[j].ahead == g.cells[k].ahead {
				queue = append(queue, j)
				n++
			}
		}
		if n == 0 {
			out = append(out, k)
		}
	}
	slices.Sort(out)
	return out
}
