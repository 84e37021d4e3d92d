package rack

import (
	"slices"

	"strake/tape"
)

// Polishing is the work usually spent on a filled floor to better it: a room
// is then planned in about a third of a second.
const Polishing = 150_000_000

// windows that are opened again: so many neighbouring runs.
const window = 4

// polish opens a few neighbouring runs again, where joints lie close or a board
// was cut, fills them anew against the runs on both sides, and keeps what is
// better. It stops when nothing is left to better or the work is spent.
func (e *engine) polish(fs []filled) []filled {
	e.report(fs)
	if unfilled(fs) > 0 || e.atHand > 0 {
		return fs
	}
	end := min(e.budget, e.work+e.polishing)
	fs = slices.Clone(fs)
	failed := 0
	for e.work < end && e.ctx.Err() == nil && failed < 40*len(fs) {
		bad := e.bad(fs)
		if len(bad) == 0 {
			break
		}
		at := bad[e.rng.IntN(len(bad))] - e.rng.IntN(window)
		at = max(0, min(at, len(fs)-window))
		if e.reopen(fs, at, min(window, len(fs)-at)) {
			failed = 0
			e.report(fs)
		} else {
			failed++
		}
	}
	return fs
}

// bad are the runs that could be better: a cut that is not asked for, or a
// joint that costs anything.
func (e *engine) bad(fs []filled) []int {
	joints := jointsOf(fs, nil)
	var out []int
	for i, f := range fs {
		if e.costOf(f, joints) > 0 {
			out = append(out, i)
		}
	}
	return out
}

// jointsOf are the joints of all runs but those left out, by the low line of
// their strip.
func jointsOf(fs []filled, out map[int]bool) map[tape.Length][]tape.Length {
	joints := map[tape.Length][]tape.Length{}
	for i, f := range fs {
		if out[i] || !f.ok {
			continue
		}
		f.noted(joints)
	}
	return joints
}

// around are the joints of the strips on both sides of a run.
func (e *engine) around(r run, joints map[tape.Length][]tape.Length) behind {
	both := func(k tape.Length) []tape.Length {
		at := slices.Concat(within(joints[r.Low-k*e.pitch], r), within(joints[r.Low+k*e.pitch], r))
		slices.Sort(at)
		return at
	}
	return behind{both(1), both(2)}
}

// costOf is what a filled run costs against both sides.
func (e *engine) costOf(f filled, joints map[tape.Length][]tape.Length) int64 {
	b := e.around(f.run, joints)
	var c int64
	for _, q := range f.pieces[1:] {
		if j := e.joint(q.start, f.least, b); j < impossible {
			c += j
		} else {
			c += costH * 4
		}
	}
	for _, q := range f.pieces {
		if q.farCut && !f.farCut || q.nearCut && !f.nearCut {
			c += e.waste(crosscut)
		}
	}
	return c
}

// reopen fills count runs from at on anew, with those that share a board with
// them; it tells whether that was better.
func (e *engine) reopen(fs []filled, at, count int) bool {
	open := e.sharing(fs, at, count)
	if open == nil {
		return false
	}
	inside := map[int]bool{}
	for _, i := range open {
		inside[i] = true
	}
	p := e.freed(fs, open)
	before := e.costNear(fs, open)
	next := slices.Clone(fs)
	joints := jointsOf(fs, inside)
	for _, k := range e.rng.Perm(len(open)) {
		f := &next[open[k]]
		out, ok := e.attempt(f.run, p, e.around(f.run, joints), f.least, effort{pool: 64, shuffles: 2, nodes: 1000})
		if !ok {
			return false
		}
		f.pieces = out
		p.use(out, e.shop)
		f.noted(joints)
	}
	if e.costNear(next, open) >= before {
		return false
	}
	copy(fs, next)
	e.left = p
	return true
}

// costNear is the cost of some runs and of those two before and after them.
func (e *engine) costNear(fs []filled, open []int) int64 {
	joints := jointsOf(fs, nil)
	done := map[int]bool{}
	var c int64
	for _, k := range open {
		for i := max(0, k-2); i < min(len(fs), k+3); i++ {
			if !done[i] {
				done[i] = true
				c += e.costOf(fs[i], joints)
			}
		}
	}
	return c
}

// sharing are count runs from at on and all runs that share a board with one
// of them, in order; nil when that comes to too many.
func (e *engine) sharing(fs []filled, at, count int) []int {
	users := map[int][]int{} // board -> runs
	for i, f := range fs {
		for _, q := range f.pieces {
			users[q.board] = append(users[q.board], i)
		}
	}
	in := map[int]bool{}
	var open []int
	add := func(i int) {
		if !in[i] {
			in[i] = true
			open = append(open, i)
		}
	}
	for i := at; i < at+count; i++ {
		add(i)
	}
	for k := 0; k < len(open); k++ {
		for _, q := range fs[open[k]].pieces {
			for _, i := range users[q.board] {
				add(i)
			}
		}
		if len(open) > 2*window {
			return nil
		}
	}
	slices.Sort(open)
	return open
}

// freed is the pile with the boards of opened runs back on it, whole again.
func (e *engine) freed(fs []filled, open []int) pile {
	back := map[int]bool{}
	for _, i := range open {
		for _, q := range fs[i].pieces {
			back[q.board] = true
		}
	}
	mine := func(t item) bool { return back[t.board] }
	p := e.left.clone()
	p.heads, p.tails = slices.DeleteFunc(p.heads, mine), slices.DeleteFunc(p.tails, mine)
	for _, b := range e.stock.boards {
		if back[b.board] {
			p.boards = append(p.boards, b)
		}
	}
	slices.SortFunc(p.boards, func(a, b item) int { return a.board - b.board })
	return p
}
