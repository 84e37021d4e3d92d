package rack

import (
	"fmt"
	"slices"
	"strings"

	"strake/finding"
	"strake/stock"
	"strake/tape"
)

// whyUnfilled says why runs are not filled, of each width by itself, and the
// least that would have to give way, each thing alone.
func (e *engine) whyUnfilled(a Ask, plan []filled) []finding.Finding {
	var out []finding.Finding
	if e.ctx.Err() != nil {
		return nil // nobody knows yet
	}
	for _, w := range e.kinds.widths(plan) {
		some, left := e.kinds.ofRuns(plan, e.left, w)
		open := slices.DeleteFunc(slices.Clone(some), func(f filled) bool { return f.ok })
		if len(open) > 0 {
			out = append(out, e.whyOpen(a, open, left, w))
		}
	}
	return out
}

// whyOpen says it of runs of one width; 0 where all boards are alike.
func (e *engine) whyOpen(a Ask, open []filled, left pile, width tape.Length) finding.Finding {
	var need, have, longest tape.Length
	for _, f := range open {
		need += f.length()
	}
	for _, b := range left.boards {
		have += b.length()
	}
	mine := e.kinds.only(e.stock, open[0].run)
	for _, b := range slices.Concat(mine.boards, mine.heads, mine.tails) {
		longest = max(longest, b.length())
	}
	f := finding.Finding{Level: finding.Stop, Rule: "boards run out", Measured: fmt.Sprintf("%s of %s in all are not filled", runs(len(open)), a.Style.Of(need)),
		Limit: fmt.Sprintf("%s of whole boards left", a.Style.Of(have)), Do: "Tally more boards, or allow a shorter shortest piece."}
	switch {
	case e.work > e.budget:
		f.Rule, f.Do = "search given up", "The work allowed was used up before a way was found for each; that need not mean that there is none."
	case have <= need:
	case longest < e.shortest:
		f.Rule, f.Do = "no way to fill a run", fmt.Sprintf("No board is as long as the shortest piece: the longest is %s.", a.Style.Of(longest))
	case slices.ContainsFunc(open, func(p filled) bool { return len(p.must) > 0 }):
		f.Rule, f.Do = "no way to fill a run", "A joint has to fall at what stays inside the row, and with these lengths a piece at an end comes out too short: allow a shorter shortest piece, shift the rows by row_edge_on, or add boards of other lengths."
	default: // it is not for want of wood
		f.Rule, f.Do = "no way to fill a run", "No order of these lengths fits: allow a shorter shortest piece or a smaller joint distance, or add boards of other lengths."
	}
	if width > 0 {
		f.Where = "rows of " + a.Style.Of(width)
	}
	f.Do = strings.Join(append([]string{f.Do}, e.wayOut(a, mine.length(), width)...), " ")
	return f
}

func runs(n int) string {
	if n == 1 {
		return "1 run"
	}
	return fmt.Sprintf("%d runs", n)
}

// tryWork is the work allowed to see whether a relaxation is enough.
const tryWork = 10_000_000

// wayOut says what would do for the runs of a width, each alone and no more than
// it takes.
func (e *engine) wayOut(a Ask, have, width tape.Length) []string {
	if e.ctx.Err() != nil || a.Boards.Known == stock.MixOnly {
		return nil
	}
	var ways []string
	short := -have // of wood, were not an inch of it lost
	for _, r := range e.oriented(a.Fields) {
		if width == 0 || r.wide() == width {
			short += max(0, r.farNeed-r.nearNeed)
		}
	}
	if n, l := e.moreBoards(a, short, width); n > 0 {
		ways = append(ways, fmt.Sprintf("%s of %s", more(n), a.Style.Of(l)))
	}
	if short <= 0 {
		if l, ok := e.shorterPiece(a, width); ok {
			ways = append(ways, fmt.Sprintf("a shortest piece of %s instead of %s", a.Style.Of(l), a.Style.Of(e.shortest)))
		}
	}
	switch len(ways) {
	case 0:
		return nil
	case 1:
		return []string{"This would do: " + ways[0] + "."}
	}
	return []string{"Either of these would do: " + ways[0] + ", or " + ways[1] + "."}
}

func more(n int) string {
	if n == 1 {
		return "1 board more"
	}
	return fmt.Sprintf("%d boards more", n)
}

// fills tells whether a changed ask can be filled, in the runs of a width.
func (e *engine) fills(a Ask, width tape.Length) bool {
	a.Polishing, a.Progress, a.Budget = 0, nil, tryWork
	ls, widths, _ := supply(a)
	plan := newEngine(e.ctx, a, ls, widths).run(a.Fields)
	return !slices.ContainsFunc(plan, func(f filled) bool { return !f.ok && (width == 0 || f.wide() == width) })
}

// mostMore is how many boards more are tried.
const mostMore = 64

// moreBoards is how many boards of the average length more would fill the floor,
// found by doubling and halving from what is short; 0 where none are found.
func (e *engine) moreBoards(a Ask, short, width tape.Length) (n int, length tape.Length) {
	length = e.meanBoard / e.unit * e.unit
	mine := a.Boards
	if width > 0 {
		mine, _ = a.Boards.OfPitch(width)
	}
	if length == 0 || mine.Known == stock.OneSize && mine.OneCount == 0 {
		return 0, 0
	}
	if mine.Known == stock.OneSize {
		length = mine.One
	}
	from := max(1, int((short+length-1)/length))
	n = least(from, from+mostMore, func(n int) bool { return e.fills(withMore(a, length, width, n), width) })
	return n, length
}

// withMore is the ask with so many boards more, for rows of a width.
func withMore(a Ask, length, width tape.Length, n int) Ask {
	more := func(b stock.Boards) stock.Boards {
		if b.OneCount += n; b.Known == stock.Tallied {
			b.Tally = append(slices.Clone(b.Tally), stock.Class{Length: length, Count: n})
		}
		return b
	}
	if width == 0 {
		a.Boards = more(a.Boards)
		return a
	}
	a.Boards.Widths = slices.Clone(a.Boards.Widths)
	for i, w := range a.Boards.Widths {
		if w.Pitch() == width {
			a.Boards.Widths[i] = more(w)
		}
	}
	return a
}

// shorterPiece is the longest shortest piece, in whole inches or centimetres
// less, that would fill the floor.
func (e *engine) shorterPiece(a Ask, width tape.Length) (tape.Length, bool) {
	step := tape.Inch
	if !a.Style.Unit.Imperial() {
		step = 10 * tape.Millimetre
	}
	with := func(n int) bool {
		b := a
		b.Limits.ShortestPiece.Value = max(0, e.shortest-tape.Length(n)*step)
		return e.fills(b, width)
	}
	most := int((e.shortest + step - 1) / step)
	n := least(1, most, with)
	return max(0, e.shortest-tape.Length(n)*step), n > 0
}

// least is the smallest number from lo to hi that will do, if what does goes on
// doing for all above; 0 where none does.
func least(lo, hi int, does func(int) bool) int {
	top := lo
	for step := 1; !does(top); step *= 2 {
		if top == hi {
			return 0
		}
		lo, top = top+1, min(top+step, hi)
	}
	for lo < top {
		if mid := (lo + top) / 2; does(mid) {
			top = mid
		} else {
			lo = mid + 1
		}
	}
	return top
}
