package rack

import (
	"slices"

	"strake/tape"
)

// laidSo lays a run of boards of one length: its first piece what is left of a
// last one where that is long enough, else cut from a board; whole boards; and
// its last piece what is left of a first one, or cut.
func (e *engine) laidSo(r run, p pile, w way) ([]placed, bool) {
	boards := slices.Clone(p.boards)
	whole := func() (item, bool) {
		if len(boards) == 0 {
			return item{}, false
		}
		t := boards[0]
		boards = boards[1:]
		return t, true
	}
	first, left, ok := e.firstOf(r, p, w, whole)
	if !ok {
		return nil, false
	}
	out := []placed{first}
	at := first.end
	for at+e.pattern.board <= r.farReach && (r.farReach-at != e.pattern.board || !r.farCut) {
		t, ok := whole()
		if !ok {
			return nil, false
		}
		out = append(out, placed{item: t, start: at, end: at + t.length()})
		at += t.length()
	}
	if at >= r.wholeLeast && !r.farCut {
		last := &out[len(out)-1]
		last.tongueOff = last.end > r.farReach-e.tongue
		return out, last.tongue || last.farCut
	}
	last, ok := e.lastOf(r, append(slices.Clone(p.tails), left...), at, whole)
	return append(out, last), ok
}

// firstOf is the first piece of a run, with what is left of the board that it
// was cut from for this run's own last one.
func (e *engine) firstOf(r run, p pile, w way, whole func() (item, bool)) (q placed, left []item, ok bool) {
	if w.first == e.pattern.board && !r.nearCut {
		t, ok := whole()
		return placed{item: t, start: w.start, end: w.start + t.length()}, nil, ok
	}
	end := w.start + w.first
	var best item
	for _, h := range inTime(p.heads, r.index, len(p.heads)) {
		if l := h.length(); !r.nearCut && l <= w.first && end-l <= r.startMost && l >= e.shortest {
			return placed{item: h, start: end - l, end: end}, nil, true
		}
		if h.length() >= w.first+e.loss(r.nearMitre) && (!ok || h.length() < best.length()) {
			best, ok = h, true
		}
	}
	if !ok {
		if best, ok = whole(); !ok {
			return placed{}, nil, false
		}
	}
	f, ok := e.cutFirst(r, best, w.first, 0)
	if !ok {
		return placed{}, nil, false
	}
	if spare := (item{board: best.board, from: best.from, to: best.to - w.first - e.loss(r.nearMitre), groove: best.groove}); best.groove && spare.length() >= e.shortest {
		left = append(left, spare)
	}
	return *f.piece, left, true
}

// lastOf is the last piece of a run, from a place on.
func (e *engine) lastOf(r run, tails []item, at tape.Length, whole func() (item, bool)) (placed, bool) {
	length := r.farReach - at
	var best item
	ok := false
	for _, t := range inTime(tails, r.index, len(tails)) {
		if !t.groove {
			continue
		}
		if end := at + t.length(); !r.farCut && end <= r.farReach && end >= r.farNeed {
			return placed{item: t, start: at, end: end}, true
		}
		if t.length() >= length+e.loss(r.farMitre) && (!ok || t.length() < best.length()) {
			best, ok = t, true
		}
	}
	if !ok {
		if best, ok = whole(); !ok {
			return placed{}, false
		}
	}
	near := item{board: best.board, from: best.from, to: best.from + length, groove: true, sawn: best.sawn}
	return placed{item: near, start: at, end: r.farReach, farCut: true, farMitre: r.farMitre}, best.length() > length
}
