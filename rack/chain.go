package rack

import (
	"slices"

	"strake/tape"
)

// chain is what offcuts are worth to the runs still to be laid. With lengths in
// steps of 6 in and runs of 250 in, a run that begins with a whole board ends
// in a cut, and so does the next; but the offcut of the second may fill the
// third without one. So an offcut that leads to such a run is worth a cut.
//
// value[k][o] is what an offcut of o units saves in the last k runs, in ticks
// of scrap, kerf and crosscuts, if boards were to be had in any number and
// joints anywhere; the offcut itself left over costs nothing. It is 0 wherever
// lengths are dense, and then not worked out.
type chain struct {
	unit  tape.Length
	value [][]tape.Length
}

// dense is the part of the places near the end of a run that whole boards come
// to from which on offcuts are taken to be worth nothing: any run can then be
// closed without a cut.
const dense = 0.3

// longestChain is how many runs ahead are looked at: beyond, values repeat.
const longestChain = 64

// newChain works the values out for the runs in the order of laying.
func newChain(runs []run, boards []item, s shop, unit tape.Length) *chain {
	c := &chain{unit: chainUnit(runs, boards, s, unit)}
	unit = c.unit
	var lengths []int
	for _, b := range boards {
		lengths = append(lengths, int(b.length()/unit))
	}
	slices.Sort(lengths)
	lengths = slices.Compact(lengths)
	if len(lengths) == 0 {
		return c
	}
	longest := lengths[len(lengths)-1]
	c.value = append(c.value, make([]tape.Length, longest+1))
	var cost []tape.Length // of the runs from here on, by the offcut to begin with
	for k := 1; k <= min(len(runs), longestChain); k++ {
		l := link{chain: c, shop: s, r: runs[len(runs)-k], lengths: lengths, dense: dense, next: cost}
		if cost = l.costs(longest); cost == nil {
			return c
		}
		save := make([]tape.Length, longest+1)
		for o := range save {
			save[o] = cost[0] - cost[o]
		}
		c.value = append(c.value, save)
	}
	return c
}

// chainUnit is the largest unit that boards, runs and kerf are whole numbers
// of, or near enough.
func chainUnit(runs []run, boards []item, s shop, unit tape.Length) tape.Length {
	all := []tape.Length{s.blade}
	for _, b := range boards {
		all = append(all, b.length())
	}
	for _, r := range runs {
		all = append(all, r.length(), r.farNeed-r.nearNeed)
	}
	if u := gcd(all); u >= tape.Sixteenth {
		return u
	}
	return unit
}

// link is one run of a chain.
type link struct {
	*chain
	shop
	r       run
	lengths []int
	dense   float64       // the part of the places from which on lengths count as dense
	next    []tape.Length // costs of the runs after it; nil: none
}

// costs are what the runs from this one on cost at least, by the offcut that
// the first of them may begin with; nil where lengths are dense.
func (l link) costs(longest int) []tape.Length {
	most := int(l.r.length() / l.unit)
	least := int((l.r.wholeLeast - l.r.startMost + l.unit - 1) / l.unit)
	sums := l.sums(most)
	from, _ := slices.BinarySearch(sums, most-longest)
	if most < 1 || float64(len(sums)-from) > l.dense*float64(min(longest, most)) {
		return nil
	}
	ends := make([]tape.Length, most+1) // the cost from a place with a joint on
	for x := max(0, most-longest); x <= most; x++ {
		ends[x] = l.end(x, least, most)
	}
	out := make([]tape.Length, longest+1)
	for o := range out {
		out[o] = tape.Longest
		if o > 0 && tape.Length(o)*l.unit < l.shortest {
			continue
		}
		first, _ := slices.BinarySearch(sums, most-longest-o)
		for _, s := range sums[first:] {
			if o+s > most {
				break
			}
			out[o] = min(out[o], ends[o+s])
		}
	}
	for o := range out {
		out[o] = min(out[o], out[0]) // an offcut need not be used
	}
	return out
}

// sums are the lengths that whole boards come to, up to most.
func (l link) sums(most int) []int {
	can := make([]bool, most+1)
	can[0] = true
	out := []int{0}
	for s := 1; s <= most; s++ {
		for _, b := range l.lengths {
			if b <= s && can[s-b] {
				can[s] = true
				out = append(out, s)
				break
			}
		}
	}
	return out
}

// end is the least cost from a place on where whole boards have come to.
func (l link) end(x, least, most int) tape.Length {
	best := tape.Longest
	if x >= least && !l.r.farCut && tape.Length(x)*l.unit <= l.r.wholeMost-l.r.startLeast {
		best = l.after(0)
	}
	if tape.Length(most-x)*l.unit < l.shortest {
		return best
	}
	loss := l.loss(l.r.farMitre)
	play := int((l.r.farReach - l.r.farNeed) / l.unit)
	for _, b := range l.lengths {
		spare := b - (most - x)
		if spare <= 0 {
			continue
		}
		if left := spare - int((loss+l.unit-1)/l.unit); left > 0 && tape.Length(left)*l.unit >= l.shortest {
			for t := left; t <= left+play && t < b; t++ {
				best = min(best, crosscut+loss+l.after(t))
			}
		} else {
			best = min(best, crosscut+tape.Length(spare)*l.unit+l.after(0))
		}
	}
	return best
}

// after is what the runs after this one cost with an offcut at hand.
func (l link) after(o int) tape.Length {
	if l.next == nil {
		return 0
	}
	return l.next[o]
}

// idle tells whether all offcuts are worth nothing in so many runs.
func (c *chain) idle(runs int) bool { return c == nil || len(c.value) < 2 || runs == 0 }

// worth is what an offcut saves in so many runs.
func (c *chain) worth(length tape.Length, runs int) tape.Length {
	if c == nil || len(c.value) == 0 {
		return 0
	}
	v := c.value[max(0, min(runs, len(c.value)-1))]
	return v[max(0, min(int(length/c.unit), len(v)-1))]
}
