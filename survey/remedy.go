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
}

// remedies is how many are worked out; the measuring sheet has them all.
const remedies = 6

// remedy works out the readings that would check the unchecked, and the one
// that would tell suspects apart.
func (p *Report) remedy(r Result, c *checks, rs []Reading, at map[int]int) {
	open := p.unchecked()
	if len(open) == 0 && (!p.Wrong || p.Locatable) {
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
			return
		}
		p.Remedies = append(p.Remedies, m)
		open = less(open, m.Checks)
	}
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
