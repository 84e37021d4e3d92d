package rack

import (
	"slices"

	"strake/tape"
)

// Polishing is the work usually spent on a filled floor to better it: a room
// is then planned in about a third of a second.
const Polishing = 150_000_000

// windows that are opened again: so many runs, neighbours or not.
const window = 4

// patience is how many tries a run that end in nothing better are enough.
const patience = 400

// polish opens a few runs again, where joints lie close or a board was cut,
// fills them anew against the runs on both sides, and keeps what is better. It
// stops when nothing is left to better or the work is spent. With only some
// boards known at a time, what is laid is not opened again.
func (e *engine) polish(fs []filled) []filled {
	e.report(fs)
	if e.atHand > 0 || e.hopeless(fs) {
		return fs
	}
	end := min(e.budget, e.work+e.polishing)
	g := e.ledger(slices.Clone(fs))
	bad := g.bad()
	for failed := 0; e.work < end && e.ctx.Err() == nil && failed < patience*len(fs) && len(bad) > 0; {
		open := g.choose(bad[e.rng.IntN(len(bad))])
		e.work += len(open)
		switch took, better := g.reopen(open); {
		case better:
			failed, bad = 0, g.bad()
			e.report(g.fs)
		case took:
			bad = g.bad()
			fallthrough
		default:
			failed++
		}
	}
	return g.fs
}

// choose picks the runs to open with a bad one: its neighbours, which change
// their joints together; runs from anywhere, whose boards are others; or runs
// that its boards are shared with, and theirs. At times all that share a board
// with one of these are opened too, so that boards come back whole.
func (g *ledger) choose(bad int) []int {
	open := []int{bad}
	switch g.rng.IntN(3) {
	case 0:
		at := max(0, min(bad-g.rng.IntN(window), len(g.fs)-window))
		open = nil
		for i := at; i < min(at+window, len(g.fs)); i++ {
			open = append(open, i)
		}
	case 1:
		for range window - 1 {
			open = append(open, g.rng.IntN(len(g.fs)))
		}
	default:
		open = g.sharing(open, window, func(placed) bool { return true })
	}
	slices.Sort(open)
	open = slices.DeleteFunc(slices.Compact(open), g.isLaid)
	if whole := g.sharing(open, 2*window+1, func(placed) bool { return true }); len(whole) <= 2*window && g.rng.IntN(2) == 0 {
		return whole
	}
	return g.sharing(open, 2*window, func(q placed) bool { return q.nearMitre || q.farMitre })
}

// jointsOf are the joints of all runs but those left out, by strip.
func jointsOf(fs []filled, out map[int]bool) map[int][]tape.Length {
	joints := map[int][]tape.Length{}
	for i, f := range fs {
		if out[i] || !f.ok {
			continue
		}
		f.noted(joints)
	}
	return joints
}

// around are the joints of the strips on both sides of a run.
func (e *engine) around(r run, joints map[int][]tape.Length) behind {
	both := func(k int) [2][]tape.Length {
		return [2][]tape.Length{within(joints[r.level-k], r), within(joints[r.level+k], r)}
	}
	return e.sides(both(1), both(2))
}

// joined is what the joints of a filled run cost against both sides.
func (e *engine) joined(f filled, joints map[int][]tape.Length) int64 {
	if !f.ok {
		return 0
	}
	b := e.around(f.run, joints)
	var c int64
	for _, q := range f.pieces[1:] {
		if j := e.joint(q.start, f.least, b); j < impossible {
			c += j
		} else {
			c += costH * 4
		}
	}
	return c
}

// reopen fills some runs anew, and tells whether that was taken over and
// whether it was better. What is no worse is taken over too: a way on may lead
// from there.
func (g *ledger) reopen(open []int) (took, better bool) {
	p := g.freed(open)
	have := p.length()
	before := worth{wood: g.lost(g.fs, open, have-g.left.length(), g.left)}
	for _, i := range open {
		before.unfilled += unfilled(g.fs[i : i+1])
	}
	near := g.beside(open)
	for _, i := range near {
		before.looks += g.looks[i]
	}
	before.same = g.sameAmong(near, nil)
	joints := g.without(open)
	next, missing := make(map[int]filled, len(open)), 0
	for n, k := range g.rng.Perm(len(open)) {
		f := g.fs[open[k]]
		ahead := len(g.fs) - 1 - open[k]
		if n == len(open)-1 {
			ahead = 0
		}
		g.turnTo(f.run, ahead)
		if !f.ok {
			f.least = g.jointMin
		}
		g.lookAround(f.run, g.near(f.run, next))
		out, ok := g.attempt(f.run, g.known(p, f.run), g.around(f.run, joints), f.least, effort{pool: 64, shuffles: 2, nodes: 1000})
		if f.pieces, f.ok = out, ok; !ok {
			if missing++; missing > before.unfilled {
				return false, false
			}
			next[open[k]] = f
			continue
		}
		g.order = f.index
		p.use(out, g.shop)
		g.tidy(&p)
		f.noted(joints)
		next[open[k]] = f
	}
	return g.better(open, near, next, joints, p, have, before)
}

// better takes the newly filled runs over if they are worth more.
func (g *ledger) better(open, near []int, next map[int]filled, joints map[int][]tape.Length, p pile, have tape.Length, before worth) (took, better bool) {
	var after worth
	for _, i := range near {
		f, ok := next[i]
		if !ok {
			f = g.fs[i]
		}
		after.looks += g.joined(f, joints)
	}
	after.same = g.sameAmong(near, next)
	var fs []filled
	for _, f := range next {
		fs = append(fs, f)
	}
	all := make([]int, len(fs))
	for i := range fs {
		all[i] = i
	}
	after.unfilled = unfilled(fs)
	after.wood = g.lost(fs, all, have-p.length(), p)
	if g.less(before, after) {
		return false, false
	}
	g.free(open)
	for i, f := range next {
		g.fs[i] = f
	}
	g.use(open)
	g.joints, g.left = joints, p
	g.weigh(near)
	return true, g.less(after, before)
}

// sharing are some runs and those, up to so many in all, that share a board
// with one of them, where its piece is such a one.
func (g *ledger) sharing(open []int, most int, such func(placed) bool) []int {
	for k := 0; k < len(open); k++ {
		for _, q := range g.fs[open[k]].pieces {
			if !such(q) {
				continue
			}
			for _, i := range g.users[q.board] {
				if len(open) < most && !slices.Contains(open, i) && !g.isLaid(i) {
					open = append(open, i)
				}
			}
		}
	}
	slices.Sort(open)
	return open
}

// freed is the pile with the boards of opened runs back on it: whole again, or
// the piece alone where the rest stays laid.
func (g *ledger) freed(open []int) pile {
	back := map[int]bool{}
	p := g.left.clone()
	for _, i := range open {
		for _, q := range g.fs[i].pieces {
			switch {
			case g.only(q.board, open):
				back[q.board] = true
			case !q.nearMitre && !q.farMitre:
				p.lay(g.between(q, i))
			}
		}
	}
	mine := func(t item) bool { return back[t.board] }
	p.heads, p.tails = slices.DeleteFunc(p.heads, mine), slices.DeleteFunc(p.tails, mine)
	for b := range back {
		p.restore(g.whole(b))
	}
	slices.SortFunc(p.boards, func(a, b item) int { return a.board - b.board })
	g.tidy(&p)
	return p
}

// only tells whether no other runs than these use a board.
func (g *ledger) only(board int, runs []int) bool {
	return !slices.ContainsFunc(g.users[board], func(i int) bool { return !slices.Contains(runs, i) })
}

// between is what is left of a piece of run i as an offcut: for runs on the
// same side of those that have the rest of its board.
func (g *ledger) between(q placed, i int) item {
	t := q.item
	t.sawn, t.after, t.before = q.sawn || q.farCut || q.nearCut, 0, 0
	for _, j := range g.users[q.board] {
		switch {
		case j < i:
			t.after = max(t.after, j+1)
		case j > i && (t.before == 0 || j < t.before):
			t.before = j
		}
	}
	return t
}

// lay puts a piece back on the pile as an offcut.
func (p *pile) lay(t item) {
	if t.tongue {
		p.heads = append(p.heads, t)
	} else {
		p.tails = append(p.tails, t)
	}
}
