package rack

import (
	"strake/tape"
)

// mixable tells whether two boards of this floor are told apart by carton or
// shade.
func (e *engine) mixable() bool {
	for i := range e.marks {
		if m := e.marks[i]; m.Carton != e.marks[0].Carton || m.Shade != e.marks[0].Shade {
			return true
		}
	}
	return false
}

// sameAmong counts the neighbours of one carton and shade that some rows have,
// those filled anew as they are now.
func (g *ledger) sameAmong(runs []int, next map[int]filled) int {
	if !g.mixes {
		return 0
	}
	n := 0
	for _, i := range runs {
		f, ok := next[i]
		if !ok {
			f = g.fs[i]
		}
		n += g.sameBeside(f, g.near(f.run, next))
	}
	return n
}

// astray is how many alike neighbours a board counts for that lies in another
// shade's part of the floor.
const astray = 4

// sameBeside counts the pairs of neighbours of one carton and shade: in the
// row, and between it and the rows beside.
func (g *ledger) sameBeside(f filled, beside []filled) int {
	n := 0
	for i, q := range f.pieces {
		if g.shadesApart && g.mark(q.board).Shade != g.shadeOf(f.run) {
			n += astray
		}
		if i > 0 {
			n += g.same(f.pieces[i-1].board, q.board)
		}
		lo, hi := ordered(f.sign*q.start, f.sign*q.end)
		for _, o := range beside {
			for _, p := range o.pieces {
				if from, to := ordered(o.sign*p.start, o.sign*p.end); from < hi && lo < to {
					n += g.same(p.board, q.board)
				}
			}
		}
	}
	return n
}

func ordered(a, b tape.Length) (lo, hi tape.Length) { return min(a, b), max(a, b) }

// same counts what two neighbours had better not share: the carton, and the
// shade where shades are spread.
func (e *engine) same(a, b int) int {
	p, q := e.mark(a), e.mark(b)
	n := 0
	if p.Carton != "" && p.Carton == q.Carton {
		n++
	}
	if p.Shade != "" && p.Shade == q.Shade && !e.shadesApart {
		n++
	}
	return n
}
