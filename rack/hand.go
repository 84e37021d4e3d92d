package rack

// known is the part of a pile that a run can be chosen from: all of it, or the
// boards of the open cartons and the offcuts that lie about. As many boards as
// a run takes come out of the next cartons.
func (e *engine) known(p pile, r run) pile {
	p = e.kinds.only(p, r)
	if e.atHand > 0 && len(p.boards) > e.atHand {
		p.boards = p.boards[:e.atHand:e.atHand]
	}
	p.boards, p.heads, p.tails = e.suited(p.boards, r), e.suited(p.heads, r), e.suited(p.tails, r)
	most := heap
	if e.scarce {
		most = len(p.heads) + len(p.tails)
	}
	p.heads, p.tails = inTime(p.heads, r.index, most), inTime(p.tails, r.index, most)
	return p
}

// inTime are up to so many of the items that have been cut when a run is laid.
func inTime(ts []item, run, most int) []item {
	var out []item
	for _, t := range ts {
		if len(out) < most && t.after <= run && (t.before == 0 || run < t.before) {
			out = append(out, t)
		}
	}
	return out
}
