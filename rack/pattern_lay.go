package rack

import (
	"slices"

	"strake/tape"
)

// pattern is a floor whose joints are to move by a fixed shift from row to row.
type pattern struct {
	steps
	phase map[int]tape.Length // of each field: where a joint of its row 0 lies, along X
	rows  map[int][]stretch   // of each field: those that the phase was chosen for
}

// newPattern is the pattern of an ask, nil where joints fall as they may: no
// shift is asked for, or the boards are not all of one length.
func newPattern(a Ask, ls []tape.Length) *pattern {
	if !a.Boards.Shift.Fixed() || len(ls) == 0 || slices.Min(ls) != slices.Max(ls) {
		return nil
	}
	s := stepsOf(ls[0], a.Boards.Shift, a.Limits.Kerf.Value, a.Limits.ShortestPiece.Value)
	if s.num == 0 {
		return nil
	}
	return &pattern{steps: s}
}

// setOut chooses the phase of each field, once: the best of its runs, or, where
// some lie already, that of the last of them.
func (e *engine) setOut(runs []run) {
	p := e.pattern
	if p == nil || p.phase != nil {
		return
	}
	p.phase, p.rows = map[int]tape.Length{}, map[int][]stretch{}
	for _, r := range runs {
		short := r.length() < shortRun && r.length() <= p.board-e.loss(r.nearMitre)
		if !r.alone && len(r.must) == 0 && !short {
			p.rows[r.field] = append(p.rows[r.field], e.stretch(r))
		}
	}
	for field, rows := range p.rows {
		p.phase[field] = p.best(rows)
	}
	for _, r := range runs {
		if at := e.laid[r.index]; len(at) > 0 {
			p.phase[r.field] = p.over(at[0] - p.off(e.rowOf(r)))
		}
	}
}

// rowOf is the row of a run, counted across its field.
func (e *engine) rowOf(r run) int { return r.level - r.field*farApart }

// stretch is what a run is in the pattern.
func (e *engine) stretch(r run) stretch {
	s := stretch{row: e.rowOf(r), from: r.nearReach, to: r.farReach}
	if !r.nearCut {
		s.left = r.startMost - r.nearReach
	}
	if !r.farCut {
		s.right = r.farReach - r.wholeLeast
	}
	if r.sign < 0 {
		s.from, s.to, s.left, s.right = -s.to, -s.from, s.right, s.left
	}
	return s
}

// offGrid is how far the joints of a filled run lie off the pattern at most.
func (e *engine) offGrid(f filled) tape.Length {
	s := e.pattern
	var off tape.Length
	x := s.phase[f.field] + s.off(e.rowOf(f.run))
	for _, q := range f.pieces[1:] {
		d := s.over(f.sign*q.start - x)
		off = max(off, min(d, s.board-d))
	}
	return off
}

// way is a way to lay a run of boards of one length: where its first joint
// lies from its near end, and what that leaves at the far one.
type way struct {
	first, last tape.Length
	start       tape.Length // where the first piece begins
	off         tape.Length // how far off the pattern
	apart       tape.Length // from the joints beside it
	ok          bool        // pieces can be so long, and joints may lie there
}

// patterned lays a run to the pattern, or as near to it as can be; one that the
// pattern has no joint in, or that is short, in one piece.
func (e *engine) patterned(r run, p pile, joints map[int][]tape.Length) (out []placed, least tape.Length, ok bool) {
	if e.pattern == nil || r.alone || len(r.must) > 0 {
		return nil, 0, false
	}
	p.boards, p.heads, p.tails = e.suited(p.boards, r), e.suited(p.heads, r), e.suited(p.tails, r)
	if e.onePiece(r) {
		p.heads, p.tails = inTime(p.heads, r.index, len(p.heads)), inTime(p.tails, r.index, len(p.tails))
		if out, _, ok := e.single(r, p, p.boards[:min(1, len(p.boards))]); ok {
			return out, e.jointMin, true
		}
	}
	w, ok := e.wayOf(r, joints)
	if !ok {
		return nil, 0, false
	}
	out, ok = e.laidSo(r, p, w)
	return out, min(e.jointMin, w.apart), ok
}

// onePiece tells whether a run is best laid in one piece: it is short, or the
// pattern has no joint in it.
func (e *engine) onePiece(r run) bool {
	return r.length() < shortRun || e.onGrid(r, e.rowOf(r)) >= r.length()
}

// wayOf is the way nearest to the pattern that leaves no piece too short and
// keeps joints off those beside as far as the pattern itself does; where none
// keeps them off so far, the one that keeps them farthest.
func (e *engine) wayOf(r run, joints map[int][]tape.Length) (way, bool) {
	grid := e.onGrid(r, e.rowOf(r))
	beside := e.beside(r, joints)
	keep := min(e.jointMin, e.pattern.apart(1))
	var best way
	for _, f := range e.firstPieces(r, grid, beside, keep) {
		w := e.way(r, f, grid, beside)
		if w.ok && (!best.ok || w.betterThan(best, keep)) {
			best = w
		}
	}
	return best, best.ok
}

func (w way) betterThan(v way, keep tape.Length) bool {
	if a, b := min(w.apart, keep), min(v.apart, keep); a != b {
		return a > b
	}
	return w.off < v.off
}

// onGrid is the first piece that the pattern gives a run in row so many.
func (e *engine) onGrid(r run, row int) tape.Length {
	x := r.sign * (e.pattern.phase[r.field] + e.pattern.off(row))
	return e.pattern.over(x - r.nearReach)
}

// beside are the joints beside a run, along it as racked: those that lie there,
// and those that the pattern will have in a row not laid yet.
func (e *engine) beside(r run, joints map[int][]tape.Length) []tape.Length {
	out := e.around(r, joints).one
	for _, d := range []int{-1, 1} {
		if len(joints[r.level+d]) > 0 {
			continue
		}
		for at := r.nearReach + e.onGrid(r, e.rowOf(r)+d); at < r.farReach; at += e.pattern.board {
			out = append(out, at)
		}
	}
	slices.Sort(out)
	return out
}

// firstPieces are the lengths of a first piece worth a look: that of the
// pattern, and those at which one thing or another just holds.
func (e *engine) firstPieces(r run, grid tape.Length, beside []tape.Length, keep tape.Length) []tape.Length {
	s := e.pattern
	all := r.length()
	out := []tape.Length{grid, s.board, s.shortest, s.board - e.loss(r.nearMitre), s.over(all - s.shortest), s.over(all), s.over(all - s.board + e.loss(r.farMitre))}
	for _, y := range beside {
		out = append(out, s.over(y+keep-r.nearReach), s.over(y-keep-r.nearReach))
	}
	for _, n := range r.never {
		out = append(out, s.over(n.from-r.nearReach), s.over(n.to-r.nearReach))
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// way is what a first piece of a length makes of a run.
func (e *engine) way(r run, first, grid tape.Length, beside []tape.Length) way {
	s := e.pattern
	w := way{first: first, start: r.nearReach, apart: tape.Longest}
	d := (first - grid).Abs() % s.board
	w.off = min(d, s.board-d)
	if !r.nearCut && first <= r.startMost-r.nearReach { // a whole board begins that far in
		w.start, w.first = r.nearReach+first, s.board
	}
	at := w.start + w.first
	w.last = s.over(r.farReach - at)
	if !r.farCut && w.last <= r.farReach-r.wholeLeast { // the board before it closes the run
		w.last = s.board
	}
	if at >= r.farReach {
		return w // one board cannot reach farther than it is long
	}
	w.ok = s.holds(w.first, w.last) && (!r.nearCut || w.first <= s.board-e.loss(r.nearMitre)) && (!r.farCut || w.last <= s.board-e.loss(r.farMitre))
	for ; at < r.farReach && (r.farCut || at < r.wholeLeast); at += s.board {
		w.apart = min(w.apart, nearest(beside, at))
		w.ok = w.ok && !slices.ContainsFunc(r.never, func(n span) bool { return n.from < at && at < n.to })
	}
	return w
}
