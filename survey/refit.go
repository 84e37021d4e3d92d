package survey

import (
	"math"
	"sort"
)

// large is the blunder (mm) above which the fitted corners are so far out that
// the linear test misleads: the suspects are then tried one by one.
const large = 40

// most is how many readings are tried by leaving them out.
const most = 30

// refit tests the worst readings by leaving each out and fitting again: the
// statistic is the root of what the square sum falls by.
func (p *Report) refit(r Result, c *checks, rs []Reading, at map[int]int) {
	order := p.byTest()
	if len(order) == 0 || math.Abs(p.Verdicts[order[0]].Blunder) < large {
		return
	}
	if len(order) > most {
		for _, k := range order[most:] {
			p.Verdicts[k].Test = 0
		}
		order = order[:most]
	}
	full := r.net.observations(rs, r.model)
	all := c.squares()
	for _, k := range order {
		v := &p.Verdicts[k]
		x, sum := r.without(loosen(full, r.model), rs, v.Reading, c.x)
		o, _ := r.net.reading(v.Reading, rs[v.Reading], r.model)
		v.Blunder = -o.misfit(x)
		v.Test = math.Copysign(math.Sqrt(math.Max(0, all-sum)), -v.Blunder)
	}
}

// byTest lists the checked readings, the highest statistic first.
func (p *Report) byTest() []int {
	var out []int
	for k, v := range p.Verdicts {
		if v.Test != 0 {
			out = append(out, k)
		}
	}
	sort.SliceStable(out, func(a, b int) bool {
		return math.Abs(p.Verdicts[out[a]].Test) > math.Abs(p.Verdicts[out[b]].Test)
	})
	return out
}

// without fits again without one reading.
func (r Result) without(obs []observation, rs []Reading, skip int, from []float64) ([]float64, float64) {
	var rest []observation
	for _, o := range obs {
		if o.reading != skip {
			rest = append(rest, o)
		}
	}
	others := append(append([]Reading(nil), rs[:skip]...), rs[skip+1:]...)
	return r.net.bestPlace(rest, others, from, r.model)
}

// bestPlace fits from a given place and, in a net small enough, from a fresh
// start as well, and returns the better.
func (n *net) bestPlace(obs []observation, rs []Reading, from []float64, m Model) ([]float64, float64) {
	x := append([]float64(nil), from...)
	n.descend(obs, x)
	sum := squareSum(obs, x)
	if n.count > 60 {
		return x, sum
	}
	y, _ := n.start(rs)
	n.fix(m, y)
	n.descend(obs, y)
	if s := squareSum(obs, y); s < sum {
		return y, s
	}
	return x, sum
}
