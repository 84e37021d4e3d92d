package rack

import (
	"strake/lay"
	"strake/stock"
	"strake/tape"
)

// marksOf are the marks of the boards, in the order of the tally, of several
// widths one after the other; nil where no board has any.
func marksOf(a Ask, widths []tape.Length) []stock.Marks {
	var out []stock.Marks
	any := false
	for _, b := range a.Boards.Each() {
		if b.Known != stock.Tallied { // none of these has marks
			for _, w := range widths {
				if w == b.Pitch() {
					out = append(out, stock.Marks{})
				}
			}
			continue
		}
		for _, c := range b.Tally {
			any = any || c.Marks != stock.Marks{}
			for range c.Count {
				out = append(out, c.Marks)
			}
		}
	}
	if !any {
		return nil
	}
	return out
}

// mark is what is known of a board besides its length.
func (e *engine) mark(board int) stock.Marks {
	if board < 0 || board >= len(e.marks) {
		return stock.Marks{}
	}
	return e.marks[board]
}

// delivered puts the boards on the pile as they can be used: culls not at all,
// and one with a damaged end as an offcut that ends there.
func (e *engine) delivered(ls []tape.Length) {
	e.full = ls
	for i, l := range ls {
		e.fresh = append(e.fresh, e.usable(i, l))
		if !e.mark(i).Fault.Cull() {
			e.stock.restore(e.fresh[i])
		}
	}
}

// usable is what of a board can be laid. Its damaged end is cut off so that
// what is left is a whole number of units.
func (e *engine) usable(i int, l tape.Length) item {
	m := e.mark(i)
	t := item{board: i, to: l, groove: true, tongue: true, lot: e.lotOf(m)}
	if m.Fault != stock.SpoiledGroove && m.Fault != stock.SpoiledTongue {
		return t
	}
	lost := max(m.Spoiled, e.blade)
	left := max(0, (l-lost)/e.unit*e.unit)
	t.rough = true
	if m.Fault == stock.SpoiledGroove {
		t.from, t.groove = l-left, false
	} else {
		t.to, t.tongue = left, false
	}
	return t
}

// lotOf numbers the cartons and shades.
func (e *engine) lotOf(m stock.Marks) int {
	k := [2]string{m.Carton, m.Shade}
	n, ok := e.lots[k]
	if !ok {
		if e.lots == nil {
			e.lots = map[[2]string]int{}
		}
		n = len(e.lots)
		e.lots[k] = n
	}
	return n
}

// whole is a board as it can be used, nothing of it laid.
func (e *engine) whole(board int) item {
	if board < len(e.fresh) {
		return e.fresh[board]
	}
	return e.stock.boards[board]
}

// restore lays an item where it belongs: a board that has both its ends, the
// start of a row, or the end of one.
func (p *pile) restore(t item) {
	if t.groove && t.tongue {
		p.boards = append(p.boards, t)
	} else {
		p.lay(t)
	}
}

// suits tells whether an item may lie in a run. Crooked boards are kept out of
// first and last rows, which no nailer pulls tight; boards off in width lie only
// where the row is ripped along its whole length. Where boards are scarce all
// may lie anywhere.
func (e *engine) suits(t item, r run) bool {
	if e.marks == nil || e.scarce {
		return true
	}
	switch e.mark(t.board).Fault {
	case stock.Crooked:
		return t.length() < stock.StraightEnough || nailed(r)
	case stock.OffWidth:
		return r.Widest < r.High-r.Low
	}
	return true
}

// nailed tells whether a floor nailer fits all along a run.
func nailed(r run) bool {
	for _, s := range r.Nailing {
		if s.By != lay.Nailer {
			return false
		}
	}
	return true
}

// suited are the items that may lie in a run.
func (e *engine) suited(ts []item, r run) []item {
	if e.marks == nil {
		return ts
	}
	var out []item
	for _, t := range ts {
		if e.suits(t, r) {
			out = append(out, t)
		}
	}
	return out
}

// What marks cost, in the evenness of lengths: they weigh less than anything
// that shows.
const (
	costCrooked = 24 * costLength  // a crooked board whole in mid-field: short runs and cuts first
	costShade   = 60 * costLength  // a board off in shade: used last
	costAlike   = 60 * costLength  // each neighbour of the same carton, or shade
	costApart   = 300 * costLength // a shade where another has its part of the floor
)

// markPrice is what the marks of an item cost in a run.
func (e *engine) markPrice(t item, r run) int64 {
	if e.marks == nil {
		return 0
	}
	m := e.mark(t.board)
	var c int64
	switch m.Fault {
	case stock.Crooked:
		if t.length() >= stock.StraightEnough && r.length() >= shortRun {
			c += costCrooked
		}
	case stock.OffShade:
		c += costShade
	}
	if e.shadesApart {
		if m.Shade != e.shadeHere {
			c += costApart
		}
	}
	return c
}

// mixPrice is what it costs an item to lie at a place of a run, before it a
// board (-1 none), for the neighbours it shares carton or shade with.
func (e *engine) mixPrice(t item, r run, at tape.Length, before int) int64 {
	n := e.same(before, t.board)
	for _, o := range e.alongside {
		if o.from < at+t.length() && at < o.to {
			n += e.same(o.board, t.board)
		}
	}
	return costAlike * int64(n)
}

// beside is a piece in a row beside the run at hand, along it as racked.
type beside struct {
	from, to tape.Length
	board    int
}

// lookAround notes the pieces of the rows beside a run, and which
// shade's part of the floor it lies in.
func (e *engine) lookAround(r run, near []filled) {
	if e.marks == nil {
		return
	}
	e.alongside = e.alongside[:0]
	for _, f := range near {
		if f.level != r.level-1 && f.level != r.level+1 {
			continue
		}
		for _, q := range f.pieces {
			from, to := ordered(r.sign*f.sign*q.start, r.sign*f.sign*q.end)
			e.alongside = append(e.alongside, beside{from, to, q.board})
		}
	}
	e.shadeHere = e.shadeOf(r)
}

// shadeParts divides the runs among the shades, in the order of the tally, by
// the length of boards there is of each.
func (e *engine) shadeParts(runs []run) {
	if !e.shadesApart {
		return
	}
	var names []string
	have := map[string]tape.Length{}
	var all tape.Length
	for i, t := range e.fresh {
		m := e.mark(i)
		if m.Fault.Cull() {
			continue
		}
		if _, ok := have[m.Shade]; !ok {
			names = append(names, m.Shade)
		}
		have[m.Shade] += t.length()
		all += t.length()
	}
	var need tape.Length
	for _, r := range runs {
		need += r.length()
	}
	e.shadeAt = make([]string, len(runs))
	at := tape.Length(0)
	for _, r := range runs {
		middle := float64(at+r.length()/2) / float64(max(1, need)) * float64(all)
		at += r.length()
		upto := 0.0
		for _, n := range names {
			if upto += float64(have[n]); middle <= upto || n == names[len(names)-1] {
				e.shadeAt[r.index] = n
				break
			}
		}
	}
}

func (e *engine) shadeOf(r run) string {
	if r.index >= len(e.shadeAt) {
		return ""
	}
	return e.shadeAt[r.index]
}
