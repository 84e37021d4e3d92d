package rack

import (
	"slices"

	"strake/stock"
)

// shiftsTried are the fixed shifts that boards of one length are laid to for a
// start where the job asks for none, as parts of a board: thirds and the like,
// so that joints come back in line late.
var shiftsTried = []stock.Shift{{Num: 1, Den: 3}, {Num: 2, Den: 5}, {Num: 3, Den: 8}, {Num: 2, Den: 7}, {Num: 3, Den: 7}, {Num: 1, Den: 2}}

// mostShifted is how many runs a floor may have for that.
const mostShifted = 300

// bestStart is the best of a first answer and of the fixed patterns, where all
// boards have one length: such boards fall into steps and lines of themselves,
// run by run, and a pattern keeps them out of both. The floor is bettered from
// there.
func (e *engine) bestStart(runs []run, out []filled) []filled {
	if !e.oneLength() || len(runs) > mostShifted || len(e.laid) > 0 || len(e.asked) > 0 || e.atHand > 0 {
		return out
	}
	best := e.weighed(out)
	for _, s := range shiftsTried {
		if e.spent() {
			break
		}
		steps := stepsOf(e.stock.boards[0].length(), s, e.blade, e.shortest)
		if steps.num == 0 {
			continue
		}
		p := *e
		p.pattern, p.progress = &pattern{steps: steps}, nil
		plan := p.greedy(runs)
		e.work = p.work
		was := e.left
		e.left = p.left
		if w := e.weighed(plan); e.less(w, best) {
			out, best = plan, w
			continue
		}
		e.left = was
	}
	return out
}

// oneLength tells whether all boards are sound and of one length.
func (e *engine) oneLength() bool {
	all := e.stock.boards
	return e.marks == nil && e.kinds.of == nil && len(all) > 0 &&
		!slices.ContainsFunc(all, func(t item) bool { return t.length() != all[0].length() })
}

// weighed is what a whole floor costs.
func (e *engine) weighed(fs []filled) worth {
	w := worth{unfilled: unfilled(fs)}
	joints := jointsOf(fs, nil)
	for _, f := range fs {
		w.looks += e.joined(f, joints)
		if f.ok && f.least < e.jointMin {
			w.looks += costH // worse than any line or stair
		}
	}
	cuts, lost := e.wood(fs)
	w.wood = int64(lost) + int64(crosscut)*int64(cuts)
	return w
}
