package rack

// known is the part of a pile that can be chosen from: all of it, or the
// boards of the open cartons and the offcuts that lie about. As many boards as
// a run takes come out of the next cartons.
func (e *engine) known(p pile) pile {
	if e.atHand > 0 && len(p.boards) > e.atHand {
		p.boards = p.boards[:e.atHand:e.atHand]
	}
	if !e.scarce {
		p.heads, p.tails = p.heads[:min(heap, len(p.heads))], p.tails[:min(heap, len(p.tails))]
	}
	return p
}
