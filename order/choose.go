package order

import (
	"slices"

	"strake/tape"
)

// begin takes the piece that a run begins with from the pile; 0 for none: a board
// is taken then.
func (h *hand) begin(run Run) tape.Length {
	best, most := -1, tape.Length(-1)
	for k, p := range h.pile {
		o := p.long
		if o <= most || o > run.Len() {
			continue
		}
		if end := run.From + o; o == run.Len() || run.To-end >= h.m.Shortest && h.free(end) {
			best, most = k, o
		}
	}
	if best < 0 {
		if h.layer == Strict {
			h.pile = h.pile[:0]
		}
		return 0
	}
	h.pile = slices.Delete(h.pile, best, best+1)
	return most
}

// next takes the board that is laid at x in a run that ends at to: one that keeps
// its joint off those beside and leaves no sliver, or one that reaches the end.
func (h *hand) next(x, to tape.Length) tape.Length {
	h.passTo(x)
	if h.layer == Careful {
		return h.choose(x, to)
	}
	for tried := 0; ; { // what did not fit does not fit later either
		for ; tried < len(h.boards); tried++ {
			if h.fits(x, to, h.boards[tried]) {
				return h.pick(tried)
			}
		}
		if h.enough() {
			return h.force(x, to)
		}
		h.take()
	}
}

// patience is how many boards lie in hand, about two cartons, before a joint is put
// where it should not be rather than opening more. Common practice, no source.
const patience = 24

// enough tells whether more boards would be opened for nothing: there are many in
// hand, or all that there are have one length.
func (h *hand) enough() bool {
	return len(h.boards) >= patience || len(h.boards) > 0 && h.m.Lengths.Longest() == h.m.Lengths.at[0]
}

// fits tells whether a board may be laid at x.
func (h *hand) fits(x, to, b tape.Length) bool {
	if x+b >= to {
		return to-x >= h.m.Shortest || x+b == to
	}
	return to-x-b >= h.m.Shortest && h.free(x+b)
}

// choose is the next board of a careful layer: the first in hand that goes on with
// the run and keeps the joint distance. Where none does the run is ended with the
// board whose rest is of most use: none at all, then the longest that can begin a
// run, then the least that is thrown away.
func (h *hand) choose(x, to tape.Length) tape.Length {
	for len(h.boards) < h.m.Hand {
		h.take()
	}
	for tried := 0; ; tried = len(h.boards) - 1 { // the one taken last
		for k, b := range h.boards[tried:] {
			if x+b < to && h.fits(x, to, b) {
				return h.pick(tried + k)
			}
		}
		if k := h.last(x, to, tried); k >= 0 {
			return h.pick(k)
		}
		if h.enough() {
			return h.force(x, to)
		}
		h.take()
	}
}

func (h *hand) pick(k int) tape.Length {
	b := h.boards[k]
	h.boards = append(h.boards[:k], h.boards[k+1:]...)
	return b
}

// last is the board in hand, of those from the so-manieth on, to end a run with; -1
// for none.
func (h *hand) last(x, to tape.Length, from int) int {
	best, worth := -1, tape.Length(-1)
	for k, b := range h.boards[from:] {
		if x+b < to {
			continue
		}
		if w := h.use(b - (to - x)); w > worth {
			best, worth = from+k, w
		}
	}
	return best
}

// use is what so much of a board beyond the end of a run is worth.
func (h *hand) use(spare tape.Length) tape.Length {
	switch rest := spare - h.m.Kerf; {
	case spare == 0:
		return tape.Longest
	case rest >= h.m.Shortest:
		return tape.Longest/2 + rest
	default:
		return tape.Longest/2 - spare
	}
}

// force takes the board that comes nearest to the joint distance: floors of very
// short boards leave no other way.
func (h *hand) force(x, to tape.Length) tape.Length {
	best, most := 0, tape.Length(-1)
	for k, b := range h.boards {
		d := h.distance(x + b)
		if x+b >= to {
			d = h.m.Joint
		}
		if d > most {
			best, most = k, d
		}
	}
	if most < h.m.Joint {
		h.n.Forced++
	}
	return h.pick(best)
}
