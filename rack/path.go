package rack

import (
	"strake/tape"
)

// first is a way a run may begin: nothing laid yet, or one piece laid whose
// far end is a joint.
type first struct {
	at    int // place of its far end, in units from the base
	piece *placed
	cost  int64
}

// pass is one search along a run: places are base + k units.
type pass struct {
	shop
	r      run
	base   tape.Length
	unit   tape.Length
	least  tape.Length // joint distance held to
	behind behind
	firsts []first
	even   func(item) int64                               // evenness price of an item
	mixed  func(t item, at tape.Length, before int) int64 // what lying there costs an item for its neighbours; nil: nothing
	seen   map[tape.Length][]int64                        // joint costs by base, of one attempt
	work   *int                                           // units of work spent: one for each place tried
}

// finish is a way the run may end: from place at, after items tried before
// stage, with the last piece.
type finish struct {
	cost  int64
	at    int
	stage int
	last  *placed
}

// paths holds the tables of one search, to be used again by the next.
type paths struct {
	cost  []int64
	first []int32 // index of the first that a place starts from, -1 none
	bare  []bool  // nothing is laid yet at this place
	bits  []uint64
	joint []int64
	guide guide
}

func (t *paths) size(n, items int) {
	if cap(t.cost) < n {
		t.cost, t.first, t.bare = make([]int64, n), make([]int32, n), make([]bool, n)
	}
	t.cost, t.first, t.bare = t.cost[:n], t.first[:n], t.bare[:n]
	words := items * ((n + 63) / 64)
	if cap(t.bits) < words {
		t.bits = make([]uint64, words)
	}
	t.bits = t.bits[:words]
	clear(t.bits)
	for i := range n {
		t.cost[i], t.first[i], t.bare[i] = impossible, -1, false
	}
}

// search finds the cheapest filling of the run with the items in this order;
// ok is false when there is none.
func (p *pass) search(items []item, t *paths) (out []placed, cost int64, ok bool) {
	n := int((p.r.farReach-p.base)/p.unit) + 1
	if n < 1 {
		return nil, 0, false
	}
	t.size(n, len(items))
	t.joint = p.jointsAlong(n)
	best := finish{cost: impossible}
	for i, f := range p.firsts {
		p.begin(f, i, n, t, &best)
	}
	words := (n + 63) / 64
	for s, it := range items {
		p.step(it, s, n, t.bits[s*words:(s+1)*words], t, &best)
		*p.work += n
	}
	if best.cost >= impossible {
		return nil, 0, false
	}
	return p.trace(best, items, words, t), best.cost, true
}

// jointsAlong is the cost of a joint at each place, worked out once for all
// passes from the same base.
func (p *pass) jointsAlong(n int) []int64 {
	if at, ok := p.seen[p.base]; ok && len(at) == n {
		return at
	}
	w := sweep{make([]int64, n), p.base, p.unit}
	w.joints(p.shop, p.least, p.behind)
	for _, s := range p.r.never {
		lo, hi := w.span(s.from+1, s.to-1, 0)
		for k := lo; k <= hi; k++ {
			w.at[k] = impossible
		}
	}
	if p.r.length() < shortRun && !p.scarce {
		for k := range w.at {
			w.at[k] = sum(w.at[k], p.waste(shortJoint))
		}
	}
	if p.seen != nil {
		p.seen[p.base] = w.at
	}
	*p.work += n
	return w.at
}

// jumps tells whether a piece from a to b would have something that stays
// inside it.
func (p *pass) jumps(a, b tape.Length) bool {
	for _, s := range p.r.must {
		if a < s.from && b > s.to {
			return true
		}
	}
	return false
}

// begin sets a first piece, and ends the run with it where it reaches.
func (p *pass) begin(f first, i, n int, t *paths, best *finish) {
	if f.piece != nil && p.jumps(f.piece.start, f.piece.end) {
		return
	}
	cost := f.cost
	if f.piece != nil {
		if end := f.piece.end; p.wholeAt(end) && f.piece.tongue {
			p.offer(best, finish{cost: cost + p.tongueCost(end), at: -1 - i, last: nil})
		}
		if f.at >= n || t.joint[f.at] >= impossible {
			return
		}
		cost += t.joint[f.at]
	}
	if f.at < n && cost < t.cost[f.at] {
		t.cost[f.at], t.first[f.at], t.bare[f.at] = cost, int32(i), f.piece == nil
	}
}

func (p *pass) tongueCost(end tape.Length) int64 {
	if end > p.r.farReach-p.tongue {
		return tongueOffCost
	}
	return 0
}

func (p *pass) offer(best *finish, f finish) {
	if f.cost < best.cost {
		*best = f
	}
}

// step tries one item from every place, farthest first, so that it is used
// once at most.
func (p *pass) step(it item, stage, n int, bits []uint64, t *paths, best *finish) {
	l := it.length()
	hop := int(l / p.unit)
	price := p.even(it)
	short := l < p.shortest
	for k := n - 1; k >= 0; k-- {
		c := t.cost[k]
		if c >= best.cost || c >= impossible {
			continue
		}
		at := p.base + tape.Length(k)*p.unit
		end := at + l
		if end >= p.r.farNeed {
			if !short {
				p.end(it, stage, k, at, c+price, t.bare[k], best)
			}
			continue
		}
		if !it.tongue || l != tape.Length(hop)*p.unit || short && t.bare[k] {
			continue
		}
		j := t.joint[k+hop]
		if c+price+j < t.cost[k+hop] && j < impossible && !p.jumps(at, end) {
			t.cost[k+hop], t.bare[k+hop] = c+price+j, false
			bits[(k+hop)>>6] |= 1 << uint((k+hop)&63)
		}
	}
}

// wholeAt tells whether the run may close with the end of a whole board there.
func (p *pass) wholeAt(end tape.Length) bool {
	return !p.r.farCut && p.r.wholeLeast <= end && end <= p.r.wholeMost
}

// end closes the run with an item that reaches far enough: whole, or cut.
func (p *pass) end(it item, stage, k int, at tape.Length, cost int64, bare bool, best *finish) {
	if !it.groove && !bare {
		return // nothing there to join the piece before it
	}
	end := at + it.length()
	if p.wholeAt(end) && !p.jumps(at, end) {
		last := placed{item: it, start: at, end: end, tongueOff: it.tongue && end > p.r.farReach-p.tongue}
		c := cost
		if it.tongue {
			c += p.tongueCost(end)
		}
		p.offer(best, finish{cost: c, at: k, stage: stage, last: &last})
	}
	length := p.r.farReach - at
	spare := it.length() - length
	if spare < p.r.over() || length < p.shortest && !(bare && p.r.length() < p.shortest) || p.jumps(at, p.r.farReach) {
		return
	}
	last := p.cutLast(it, at)
	p.offer(best, finish{cost: cost + p.cutCost(it, spare), at: k, stage: stage, last: &last})
}

// cutLast is the last piece of the run, cut from an item's near part.
func (p *pass) cutLast(it item, at tape.Length) placed {
	end := p.r.farReach
	if it.tongue {
		end -= max(0, min(p.trim(at+it.length()-end), end-at-p.shortest))
	}
	near := item{board: it.board, from: it.from, to: it.from + end - at, groove: it.groove, sawn: it.sawn, rough: it.rough && !it.groove}
	return placed{item: near, start: at, end: end, farCut: true, farMitre: p.r.farMitre}
}

// trim is how much shorter than it could be the last piece is best cut, where
// the play at the end allows it and the offcut is then worth more.
func (p *pass) trim(spare tape.Length) tape.Length {
	left := spare - p.loss(p.r.farMitre)
	best, most := tape.Length(0), p.chain.worth(left, p.ahead)
	if p.chain.idle(p.ahead) || p.r.farMitre {
		return 0
	}
	for t := p.unit; t <= p.r.farReach-p.r.farNeed; t += p.unit {
		if w := p.chain.worth(left+t, p.ahead); left+t >= p.shortest && w > most {
			best, most = t, w
		}
	}
	return best
}

// cutCost is what a far cut costs that leaves so much of the item, the kerf
// included: an offcut that can be used is kept, the rest is lost.
func (p *pass) cutCost(it item, spare tape.Length) int64 {
	lost := spare
	keep := int64(0)
	if it.tongue {
		spare += p.trim(spare)
	}
	if loss := p.loss(p.r.farMitre); it.tongue && spare-loss >= p.shortest {
		lost, keep = loss, p.keep(spare-loss)
	}
	return p.waste(crosscut+lost) + keep
}

// trace reads the pieces of the best finish back to the first.
func (p *pass) trace(f finish, items []item, words int, t *paths) []placed {
	if f.at < 0 {
		piece := *p.firsts[-1-f.at].piece
		piece.tongueOff = piece.end > p.r.farReach-p.tongue
		return []placed{piece}
	}
	rev := []placed{*f.last}
	k := f.at
	for s := f.stage - 1; s >= 0; s-- {
		if t.bits[s*words+k>>6]&(1<<uint(k&63)) == 0 {
			continue
		}
		end := p.base + tape.Length(k)*p.unit
		rev = append(rev, placed{item: items[s], start: end - items[s].length(), end: end})
		k -= int(items[s].length() / p.unit)
	}
	if i := t.first[k]; i >= 0 && p.firsts[i].piece != nil {
		rev = append(rev, *p.firsts[i].piece)
	}
	out := make([]placed, 0, len(rev))
	for i := len(rev) - 1; i >= 0; i-- {
		out = append(out, rev[i])
	}
	return out
}
