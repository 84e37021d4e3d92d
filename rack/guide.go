package rack

import (
	"slices"

	"strake/tape"
)

// guide tells, for every place along a run, the least that it can cost to get
// from there to the end if every board could be used as often as wanted. No
// filling is cheaper, so it tells early which beginnings lead nowhere, and
// when there is nothing left to look for.
type guide struct {
	joint []int64 // cost of a joint at each place before the end
	node  []int64 // of a joint there and the rest of the run; past the end, of closing there
	tail  []int64 // of closing from each place with a tail
	exact []int64 // of closing at each place from the end on without a cut
	stop  int     // places from here on close the run
	less  int     // from here on the last piece would be too short to be cut
	far   int     // before this place only joints count
}

// choice is a board length with its price.
type choice struct {
	hop   int
	price int64
}

// farSight is how many of the longest boards the guide looks back from the end
// of a run: farther off nearly every place can be completed.
const farSight = 3

// guided works out the guide of a pass for these boards.
func (p *pass) guided(boards []choice, tails []item, t *paths) *guide {
	n := int((p.r.farReach-p.base)/p.unit) + 1
	g := &t.guide
	g.stop = int((p.r.farNeed - p.base + p.unit - 1) / p.unit)
	g.less = int((p.r.farReach-p.shortest-p.base)/p.unit) + 1
	longest := 0
	for _, b := range boards {
		longest = max(longest, b.hop)
	}
	g.far = max(0, g.stop-farSight*longest)
	g.joint = p.jointsAlong(n)
	g.node = resized(g.node, g.stop+longest)
	g.exact = resized(g.exact, longest+1)
	p.closings(g)
	p.back(g, boards, tails)
	return g
}

func resized(s []int64, n int) []int64 {
	if cap(s) < n {
		return make([]int64, n)
	}
	return s[:n]
}

// closings is the cost of ending the run with a whole board of which the far
// end would lie at each place from the end on.
func (p *pass) closings(g *guide) {
	whole := item{tongue: true}
	for i := range g.exact {
		q := g.stop + i
		end := p.base + tape.Length(q)*p.unit
		g.exact[i] = impossible
		if p.wholeAt(end) {
			g.exact[i] = p.tongueCost(end)
		}
		if q >= len(g.node) {
			continue
		}
		g.node[q] = g.exact[i]
		if end >= p.r.farReach+p.r.over() {
			g.node[q] = min(g.node[q], p.cutCost(whole, end-p.r.farReach))
		}
	}
}

// back works the costs out from the end.
func (p *pass) back(g *guide, boards []choice, tails []item) {
	p.ending(g, tails)
	for k := g.stop - 1; k >= g.far; k-- {
		best := g.tail[k]
		if g.joint[k] >= impossible && k > 0 {
			g.node[k] = impossible
			continue
		}
		if k < g.less {
			for _, b := range boards {
				best = min(best, b.price+g.node[k+b.hop])
			}
		} else {
			for _, b := range boards {
				best = min(best, b.price+g.closeOrGoOn(k+b.hop))
			}
		}
		g.node[k] = sum(best, g.joint[k])
	}
	*p.work += (g.stop - g.far) * len(boards)
	p.beyond(g)
}

// ending is the cost of ending the run from each place with the cheapest tail.
func (p *pass) ending(g *guide, tails []item) {
	g.tail = resized(g.tail, g.stop)
	for k := range g.tail {
		g.tail[k] = impossible
	}
	for _, t := range tails {
		from := max(0, ceilDiv(p.r.farNeed-t.length()-p.base, p.unit))
		for k := from; k < g.stop; k++ {
			g.tail[k] = min(g.tail[k], p.closing(t, k))
		}
		*p.work += max(0, g.stop-from)
	}
}

// beyond fills the places too far off to be worked out: a joint there, and what
// the cheapest place in sight costs.
func (p *pass) beyond(g *guide) {
	if g.far == 0 {
		return
	}
	rest := impossible
	for k := g.far; k < g.stop; k++ {
		rest = min(rest, g.node[k])
	}
	for k := range g.far {
		g.node[k] = sum(rest, g.joint[k])
	}
	*p.work += g.stop
}

func (g *guide) closeOrGoOn(q int) int64 {
	if q < g.stop {
		return g.node[q]
	}
	return g.exact[q-g.stop]
}

// sum adds costs; impossible stays impossible.
func sum(a, b int64) int64 {
	if a >= impossible || b >= impossible {
		return impossible
	}
	return a + b
}

// closing is the cost of ending the run from place k with what is left of a
// board near its groove end.
func (p *pass) closing(t item, k int) int64 {
	at := p.base + tape.Length(k)*p.unit
	end, length := at+t.length(), p.r.farReach-at
	switch {
	case t.length() < p.shortest || end < p.r.farNeed:
		return impossible
	case p.wholeAt(end):
		return 0
	case end >= p.r.farReach+p.r.over() && length >= p.shortest:
		return p.cutCost(t, end-p.r.farReach)
	}
	return impossible
}

// choices are the distinct lengths among boards, the cheapest first.
func choices(hops []int, prices []int64) []choice {
	out := make([]choice, 0, len(hops))
	for i, h := range hops {
		out = append(out, choice{h, prices[i]})
	}
	slices.SortFunc(out, func(a, b choice) int {
		if a.hop != b.hop {
			return a.hop - b.hop
		}
		return int(a.price - b.price)
	})
	return slices.CompactFunc(out, func(a, b choice) bool { return a.hop == b.hop })
}
