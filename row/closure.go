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
	Rows  []int       // how many each arm has had to itself: since they parted, or since its own start
	At    tape.Length // of the line they meet on from the front of the start row
	Long  tape.Length // of the run that closes: a header there would be so long
	Loop  bool        // all arms go back to one start; else one of them has a start of its own
}

// closures are the places where fronts meet, in the order of laying.
func (l Layout) closures(g grid) []Closure {
	var out []Closure
	start := l.startFront()
	for i, c := range g.cells {
		line := c.low
		if c.ahead < 0 {
			line = c.high
		}
		arms := g.behind(i)
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
		k.Rows = g.apart(arms)
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

// apart is how many rows each arm has had to itself: those it goes back to that
// are not behind every arm.
func (g grid) apart(arms []int) []int {
	behind := make([]map[int]bool, len(arms))
	count := map[int]int{}
	for k, a := range arms {
		behind[k] = g.before(a)
		for i := range behind[k] {
			count[i]++
		}
	}
	var out []int
	for k := range arms {
		rows := map[tape.Length]bool{}
		for i := range behind[k] {
			if count[i] == len(arms) {
				continue
			}
			rows[g.cells[i].low] = true
			for _, j := range g.behind(i) {
				if len(g.cells[j].runs) > 1 { // of one strip, but in runs of their own already
					rows[g.cells[j].low] = true
				}
			}
		}
		out = append(out, len(rows))
	}
	return out
}

// before is a cell and all that it goes back to over cells of its sense.
func (g grid) before(i int) map[int]bool {
	seen := map[int]bool{}
	for queue := []int{i}; len(queue) > 0; queue = queue[1:] {
		k := queue[0]
		if seen[k] {
			continue
		}
		seen[k] = true
		queue = append(queue, g.behind(k)...)
	}
	return seen
}

// behind are the cells behind one that are laid in its sense.
func (g grid) behind(k int) []int {
	back := g.down[k]
	if g.cells[k].ahead < 0 {
		back = g.up[k]
	}
	var out []int
	for _, j := range back {
		if g.cells[j].ahead == g.cells[k].ahead {
			out = append(out, j)
		}
	}
	return out
}

// roots are the cells that a cell goes back to and that go back to none.
func (g grid) roots(i int) []int {
	var out []int
	for k := range g.before(i) {
		if len(g.behind(k)) == 0 {
			out = append(out, k)
		}
	}
	slices.Sort(out)
	return out
}
