package rack

import (
	"math/rand/v2"
	"slices"

	"strake/tape"
)

// dive fills a run board by board, always with what the guide says costs
// least, and turns back where a board is used up that the guide counted on.
// It is quick where a flawless filling exists, which is nearly always; and
// with few boards it is as good as trying all orders.
type dive struct {
	*pass
	*guide
	items  []item // whole boards first, then tails
	whole  int    // how many are whole boards
	hops   []int
	prices []int64
	used   []bool
	path   []int
	nodes  int // left to try
	best   int64
	done   int64 // good enough: nothing that counts can be gained
	begun  int   // first of the best
	trying int   // first being tried
	found  []int // items of the best, the last one closing the run
	steps  [][]step
}

// step is a board that could come next, with the least that the run then costs.
type step struct {
	item  int
	cost  int64
	extra int64 // of it for its neighbours
}

// dived looks for a filling cheaper than most; it gives the least that any
// can cost with these items, or less than anything if it was not made for such
// a run.
func (p *pass) dived(items []item, t *paths, nodes int, most int64, rng *rand.Rand) (out []placed, cost, bound int64) {
	n := int((p.r.farReach-p.base)/p.unit) + 1
	if n < 1 || len(p.r.must) > 0 || p.r.length() < p.shortest {
		return nil, impossible, -impossible
	}
	d := &dive{pass: p, nodes: nodes, best: most, begun: -1}
	d.sort(items, rng)
	d.guide = p.guided(choices(d.hops, d.prices), d.items[d.whole:], t)
	order, all := d.starts(n)
	bound = most // every start that is missing costs more
	if len(order) > 0 {
		bound = order[0].cost
	}
	if !all || bound >= impossible {
		bound = -impossible
	}
	d.done = bound + costStair
	d.used = make([]bool, len(d.items))
	for _, s := range order {
		if d.nodes <= 0 || d.best <= d.done || s.cost >= d.best {
			break
		}
		d.start(s)
	}
	if d.begun < 0 {
		return nil, impossible, bound
	}
	return d.pieces(), d.best, bound
}

// noise is how much prices are shaken, so that no two dives are alike.
const noise = costLength * 4

// sort takes the items that can be dived with: whole boards on the unit by
// length, and ends.
func (d *dive) sort(items []item, rng *rand.Rand) {
	var tails []item
	slices.SortStableFunc(items, func(a, b item) int { return int(a.length() - b.length()) })
	for _, it := range items {
		hop := int(it.length() / d.unit)
		switch {
		case it.length() < d.shortest || !it.groove:
		case !it.tongue:
			tails = append(tails, it)
		case tape.Length(hop)*d.unit == it.length():
			d.items = append(d.items, it)
			d.hops = append(d.hops, hop)
			d.prices = append(d.prices, d.even(it)+rng.Int64N(noise)-noise/2)
		}
	}
	d.whole = len(d.items)
	d.items = append(d.items, tails...)
}

// starts are the ways to begin, the most promising first; all is false where
// some way is not for a dive.
func (d *dive) starts(n int) (out []step, all bool) {
	all = true
	for i, f := range d.firsts {
		cost := f.cost
		switch {
		case f.at >= d.stop || f.at >= n:
			all = false // one piece is the whole run
			continue
		case f.piece == nil:
			cost += d.node[f.at] - d.joint[f.at] // at the wall there is no joint
			if d.joint[f.at] >= impossible {
				continue
			}
		default:
			cost = sum(cost, d.node[f.at])
		}
		if cost < d.best {
			out = append(out, step{item: i, cost: cost})
		}
	}
	slices.SortStableFunc(out, func(a, b step) int { return sign(a.cost - b.cost) })
	return out, all
}

func sign(d int64) int {
	switch {
	case d < 0:
		return -1
	case d > 0:
		return 1
	}
	return 0
}

func (d *dive) start(s step) {
	f := d.firsts[s.item]
	cost := f.cost
	if f.piece != nil {
		cost += d.joint[f.at]
	}
	before := d.best
	d.trying = s.item
	d.from(f.at, cost, 0)
	if d.best < before {
		d.begun = s.item
	}
}

// from goes on from place k, so much having been spent.
func (d *dive) from(k int, spent int64, depth int) {
	d.nodes--
	*d.work += len(d.items)
	if len(d.steps) <= depth {
		d.steps = append(d.steps, nil)
	}
	next := d.options(k, spent, d.steps[depth][:0])
	d.steps[depth] = next
	for _, s := range next {
		if d.nodes <= 0 || d.best <= d.done || s.cost >= d.best {
			return
		}
		d.path = append(d.path, s.item)
		if q := k + d.hop(s.item); s.item >= d.whole || q >= d.stop {
			d.best, d.found = s.cost, append(d.found[:0], d.path...)
		} else {
			d.used[s.item] = true
			d.from(q, spent+d.prices[s.item]+s.extra+d.joint[q], depth+1)
			d.used[s.item] = false
		}
		d.path = d.path[:len(d.path)-1]
	}
}

// neighbourly is what item i costs at place k for its neighbours.
func (d *dive) neighbourly(i, k int) int64 {
	if d.mixed == nil {
		return 0
	}
	before := -1
	switch {
	case len(d.path) > 0:
		before = d.items[d.path[len(d.path)-1]].board
	case d.firsts[d.trying].piece != nil:
		before = d.firsts[d.trying].piece.board
	}
	return d.mixed(d.items[i], d.base+tape.Length(k)*d.unit, before)
}

func (d *dive) hop(i int) int {
	if i >= d.whole {
		return 0
	}
	return d.hops[i]
}

// options are the boards that may come next, the most promising first.
func (d *dive) options(k int, spent int64, out []step) []step {
	last := -1
	for i := range d.whole {
		if d.used[i] || last >= 0 && d.hops[i] == d.hops[last] && (d.mixed == nil || d.items[i].lot == d.items[last].lot) {
			continue // a board of the same length was tried
		}
		last = i
		rest := impossible
		if k < d.less {
			rest = d.node[k+d.hops[i]]
		} else {
			rest = d.closeOrGoOn(k + d.hops[i])
		}
		extra := d.neighbourly(i, k)
		if c := spent + d.prices[i] + extra + rest; rest < impossible && c < d.best {
			out = append(out, step{i, c, extra})
		}
	}
	for i := d.whole; i < len(d.items); i++ {
		if rest := d.closing(d.items[i], k); rest < impossible && spent+rest < d.best {
			out = append(out, step{item: i, cost: spent + rest})
		}
	}
	slices.SortStableFunc(out, func(a, b step) int { return sign(a.cost - b.cost) })
	return out
}

// pieces are those of the best filling.
func (d *dive) pieces() []placed {
	f := d.firsts[d.begun]
	var out []placed
	if f.piece != nil {
		out = append(out, *f.piece)
	}
	at := d.base + tape.Length(f.at)*d.unit
	for _, i := range d.found[:len(d.found)-1] {
		t := d.items[i]
		out = append(out, placed{item: t, start: at, end: at + t.length()})
		at += t.length()
	}
	return append(out, d.last(d.items[d.found[len(d.found)-1]], at))
}

// last is the piece that closes the run: whole where it fits, else cut.
func (d *dive) last(t item, at tape.Length) placed {
	if end := at + t.length(); d.wholeAt(end) {
		return placed{item: t, start: at, end: end, tongueOff: t.tongue && end > d.r.farReach-d.tongue}
	}
	return d.cutLast(t, at)
}
