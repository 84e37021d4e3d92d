package survey

import (
	"math"
	"slices"

	"strake/tape"
)

// judge decides whether something is wrong, and lists doorways and given angles
// that may be the wrong one too.
func (p *Report) judge(c *checks, at map[int]int) {
	worst := 0.0
	for _, v := range p.Verdicts {
		worst = math.Max(worst, math.Abs(v.Test))
	}
	p.Wrong = worst > critical || p.Chance < 0.001
	for i, o := range c.obs {
		if _, reading := at[i]; reading || o.name == tapeName || slices.Contains(p.Others, o.name) {
			continue
		}
		if t := c.together(o.name); t > critical && t*t >= worst*worst-withinTop {
			p.Others = append(p.Others, o.name)
		}
	}
}

// together is the test of one error that all equations of a name share: a
// doorway set out from the wrong place shifts both its jambs.
func (c *checks) together(name string) float64 {
	sum, spread := 0.0, 0.0
	for i, o := range c.obs {
		if o.name != name {
			continue
		}
		sum += o.misfit(c.x) / o.sd
		for j, other := range c.obs {
			if other.name == name {
				spread -= c.share[i][j]
			}
		}
		spread++
	}
	if spread < least {
		return 0
	}
	return math.Abs(sum) / math.Sqrt(spread)
}

// swap looks for two readings that fit once their values are swapped: two
// diagonals written in each other's place.
func (p *Report) swap(r Result, c *checks, rs []Reading, at map[int]int) {
	if !p.Wrong {
		return
	}
	all := c.squares()
	low := all / 10
	for i := range c.obs {
		for j := range i {
			a, ok := at[i]
			b, ok2 := at[j]
			if !ok || !ok2 {
				continue
			}
			va, vb := rs[p.Verdicts[a].Reading], rs[p.Verdicts[b].Reading]
			if va.Value == vb.Value || c.swapped(i, j, (vb.Value-va.Value).Millimetres()) > all/2 {
				continue
			}
			if sum := r.exchanged(rs, p.Verdicts[a].Reading, p.Verdicts[b].Reading, c.x); sum < low {
				low, p.Swapped = sum, [2]int{b, a}
			}
		}
	}
}

// swapped foretells the square sum when observation i was by mm longer and j by
// as much shorter than written.
func (c *checks) swapped(i, j int, mm float64) float64 {
	di, dj := mm/c.obs[i].sd, -mm/c.obs[j].sd
	vi, vj := c.obs[i].misfit(c.x)/c.obs[i].sd, c.obs[j].misfit(c.x)/c.obs[j].sd
	return c.squares() - 2*(vi*di+vj*dj) + di*di*(1-c.share[i][i]) + dj*dj*(1-c.share[j][j]) - 2*di*dj*c.share[i][j]
}

// exchanged is the square sum of the network with two readings swapped.
func (r Result) exchanged(rs []Reading, i, j int, from []float64) float64 {
	other := append([]Reading(nil), rs...)
	other[i].Value, other[j].Value = rs[j].Value, rs[i].Value
	_, sum := r.net.bestPlace(loosen(r.net.observations(other, r.model), r.model), other, from, r.model)
	return sum
}

func swapText(a, b string, va, vb tape.Length, style tape.Style) string {
	return a + " and " + b + " fit with their figures swapped: " + a + " " + style.Of(vb) + ", " + b + " " + style.Of(va) + "?"
}
