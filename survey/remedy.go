package survey

import (
	"math"

	"strake/tape"
)

// Remedy is a reading more, and what it would do.
type Remedy struct {
	Ask    Ask
	Checks []int   // verdicts that it would check (with the remedies before it)
	Fixes  float64 // it fixes what was in doubt by this (1 deviation, mm); 0: that was fixed
	Alike  float64 // Locate: the highest correlation left between two suspects
	Shows  bool    // Apart: it tells all of the set apart, by Model.Alike
}

// remedies is how many are worked out; the measuring sheet has them all.
const remedies = 6

// remedy works out the readings that would check the unchecked, and the one
// that would tell suspects apart.
func (p *Report) remedy(r Result, c *checks, rs []Reading, at map[int]int) {
	open := p.unchecked()
	p.Apart = make([]*Remedy, len(p.Alike))
	if len(open) == 0 && (!p.Wrong || p.Locatable) && len(p.Alike) == 0 {
		return
	}
	net := r.net.with()
	free, _ := r.candidates(net, r.x, rs, stepOf(rs))
	pl := c.plannerOf(r.model, free)
	if p.Wrong && !p.Locatable && len(p.Suspects) > 1 {
		p.Locate = pl.locate(p.Suspects)
	}
	for len(open) > 0 && len(p.Remedies) < remedies {
		m, ok := pl.next(open)
		if !ok {
			break
		}
		p.Remedies = append(p.Remedies, m)
		open = less(open, m.Checks)
	}
	if !p.Wrong && len(open) == 0 {
		for i, set := range p.Alike {
			p.Apart[i] = pl.apart(set)
		}
	}
}

// twin is the correlation above which only a very large error is told apart.
const twin = 0.95

// apart is the reading that tells most of a set apart: the one that leaves the
// fewest of them to be taken for one another, first by Model.Alike, and where
// no one reading does, by twin. nil where none helps, or where what is to be
// read anyhow tells them apart.
func (p *planner) apart(set []int) *Remedy {
	for _, above := range []float64{p.model.Alike, max(twin, p.model.Alike)} {
		now, pairs := p.mistaken(effect{pull: make([]float64, len(p.rows))}, set, above)
		if now == 0 {
			return nil
		}
		best, low := (*Remedy)(nil), float64(now)+0.01*float64(pairs)
		for k := range p.cands {
			if p.used[k] {
				continue
			}
			left, pairs := p.mistaken(p.effect(k), set, above)
			v := float64(left) + 0.01*float64(pairs)
			if !p.plain(k) {
				v += 0.005
			}
			if left < now && v < low {
				best, low = &Remedy{Ask: p.cands[k].ask, Shows: left == 0 && above == p.model.Alike}, v
			}
		}
		if best != nil {
			return best
		}
	}
	return nil
}

// mistaken is how many of a set, once a candidate of this effect is taken, are
// at most taken for one another, their tests correlated above a figure and
// chained together (0: all are told apart), and how many pairs of them are.
func (p *planner) mistaken(e effect, set []int, above float64) (most, pairs int) {
	group := make([]int, len(set))
	for a := range set {
		group[a] = a
	}
	for a, i := range set {
		for b, j := range set[:a] {
			if math.Abs(alike(p.shareAfter(e, i, i), p.shareAfter(e, j, j), p.shareAfter(e, i, j))) <= above {
				continue
			}
			pairs++
			from, to := group[a], group[b]
			for k := range group {
				if group[k] == from {
					group[k] = to
				}
			}
		}
	}
	size := map[int]int{}
	for _, g := range group {
		size[g]++
		most = max(most, size[g])
	}
	if most == 1 {
		most = 0
	}
	return most, pairs
}

func (p *Report) unchecked() []int {
	var out []int
	for k, v := range p.Verdicts {
		if !v.Checked {
			out = append(out, k)
		}
	}
	return out
}

func less(open, done []int) []int {
	var out []int
	for _, i := range open {
		hit := false
		for _, j := range done {
			hit = hit || i == j
		}
		if !hit {
			out = append(out, i)
		}
	}
	return out
}

// next takes the reading that checks most of open; while the shape is not
// fixed, the one that fixes most of it.
func (p *planner) next(open []int) (Remedy, bool) {
	if k, sd := p.mostInDoubt(0, len(p.cands)); k >= 0 {
		e := p.effect(k)
		m := Remedy{Ask: p.cands[k].ask, Fixes: sd, Checks: p.checkedBy(e, open)}
		p.take(k)
		return m, true
	}
	best, count, size := -1, 0, math.Inf(1)
	for k := range p.cands {
		if p.used[k] {
			continue
		}
		e := p.effect(k)
		n, s := len(p.checkedBy(e, open)), p.sizes(e, open)
		if !p.plain(k) {
			s *= 1.3 // a mark on a wall is more work
		}
		if n > count || n == count && n > 0 && s < size {
			best, count, size = k, n, s
		}
	}
	if best < 0 {
		return Remedy{}, false
	}
	m := Remedy{Ask: p.cands[best].ask, Checks: p.checkedBy(p.effect(best), open)}
	p.take(best)
	return m, true
}

// checkedBy lists those of open that a candidate of this effect would check.
func (p *planner) checkedBy(e effect, open []int) []int {
	var out []int
	for _, i := range open {
		if smallest(p.sd[i], p.redundancyAfter(e, i)) <= p.model.ShowMM {
			out = append(out, i)
		}
	}
	return out
}

// sizes is the sum of the smallest blunders that would show.
func (p *planner) sizes(e effect, open []int) float64 {
	sum := 0.0
	for _, i := range open {
		sum += math.Min(20*p.model.ShowMM, smallest(p.sd[i], p.redundancyAfter(e, i)))
	}
	return sum
}

// locate is the reading that leaves the suspects least alike.
func (p *planner) locate(suspects []int) *Remedy {
	best, low := -1, math.Inf(1)
	for k := range p.cands {
		if p.used[k] {
			continue
		}
		high := p.highest(p.effect(k), suspects)
		if !p.plain(k) {
			high += 0.02
		}
		if high < low {
			best, low = k, high
		}
	}
	if best < 0 {
		return nil
	}
	return &Remedy{Ask: p.cands[best].ask, Alike: p.highest(p.effect(best), suspects)}
}

// highest is the highest correlation between two suspects
// that a candidate of this effect would leave.
func (p *planner) highest(e effect, suspects []int) float64 {
	high := 0.0
	for a, i := range suspects {
		for _, j := range suspects[:a] {
			rho := alike(p.shareAfter(e, i, i), p.shareAfter(e, j, j), p.shareAfter(e, i, j))
			high = math.Max(high, math.Abs(rho))
		}
	}
	return high
}

// stepOf is the step that most readings were read to.
func stepOf(rs []Reading) tape.Length {
	count := map[tape.Length]int{}
	best := tape.Length(0)
	for _, r := range rs {
		count[r.Step]++
		if count[r.Step] > count[best] {
			best = r.Step
		}
	}
	return best
}
