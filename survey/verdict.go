package survey

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/stat/distuv"
)

// Baarda's figures for one wrong reading among many (from memory): a standardised
// residual above 3.29 happens once in a thousand good readings; a blunder of 4.13
// deviations, over the root of the local redundancy, shows with chance 0.8; what
// lies within 9.2 (chi-square, two degrees, 0.99) of the highest squared
// statistic may be the wrong one too.
const (
	critical  = 3.29
	shows     = 4.13
	withinTop = 9.2
)

// Verdict is what the fit says of one reading.
type Verdict struct {
	Reading    int     // index into the readings
	Adjusted   float64 // what the tape would say in the fitted room, mm
	Residual   float64 // computed less observed, mm
	SD         float64 // standard deviation it was given, mm
	Redundancy float64 // the part of an error in it that its own residual shows, 0 to 1
	Test       float64 // standardised residual; 0 where nothing checks the reading
	Smallest   float64 // the smallest blunder in it that would show, mm; +Inf: none
	Checked    bool    // Smallest is within Model.ShowMM
	Blunder    float64 // how much too long it was read, if it alone is wrong, mm
	BlunderSD  float64 // the doubt of Blunder, mm
	Suspect    bool
	Slips      []Slip  // of a suspect: known slips that come to just this blunder, the likeliest first
	unheld     float64 // Residual with the squares loosened
}

// Report is what a surveyor asks of a fitted network.
type Report struct {
	Verdicts  []Verdict // of the readings that were used, in their order
	Spare     int       // redundancy by what was measured; squares do not count
	Assumed   int       // how many readings short: corners the shape takes for square
	Variance  float64   // variance factor: weighted square sum over Spare; 1 is expected; 0 without spare
	Chance    float64   // of a square sum as large with nothing wrong (chi-square); 1 without spare
	Wrong     bool      // a reading is wrong: a test above 3.29, or a chance under one in a thousand
	Suspects  []int     // index into Verdicts, worst first
	Locatable bool      // one suspect stands alone
	Alike     [][]int   // index into Verdicts: sets that cannot be told apart
	Others    []string  // doorways and given angles that may be the wrong one too
	Squares   []string  // corners that the shape takes for square
	Strained  []Strain  // corners taken for square that the readings push out of square
	Remedies  []Remedy  // readings that would check the unchecked
	Swapped   [2]int    // index into Verdicts: two readings that fit with their values swapped; equal: none
	Locate    *Remedy   // the reading that would tell the suspects apart
	Apart     []*Remedy // the reading that would tell most of each set of Alike apart; nil: none would, or one is wrong
}

// Report tests the readings, finds the one that is probably wrong, and works
// out which reading more would help.
func (r Result) Report(rs []Reading) Report {
	if r.net == nil {
		return Report{Chance: 1}
	}
	c := r.net.check(r.net.observations(rs, r.model), r.x, r.model)
	rep := Report{Chance: 1, Spare: int(math.Round(c.spare)), Assumed: int(math.Round(c.loose))}
	if c.cov == nil {
		return rep
	}
	if c.spare > 0.5 {
		rep.Variance = c.squares() / c.spare
		rep.Chance = distuv.ChiSquared{K: c.spare}.Survival(c.squares())
	}
	at := map[int]int{} // observation -> verdict
	for i, o := range c.obs {
		if o.reading >= 0 {
			at[i] = len(rep.Verdicts)
			rep.Verdicts = append(rep.Verdicts, c.verdict(i, rs[o.reading], r.model))
		}
	}
	rep.Alike = c.sets(at, r.model)
	rep.judge(&c, at)
	rep.Squares, rep.Strained = c.taken(), c.strained(r.x, r.model)
	rep.suspect(r, &c, rs, at)
	rep.swap(r, &c, rs, at)
	rep.remedy(r, &c, rs, at)
	rep.asBuilt(r, rs)
	return rep
}

// asBuilt states adjusted values and residuals of the room that is built, not
// of the fit with loosened squares that the tests run on.
func (p *Report) asBuilt(r Result, rs []Reading) {
	for i := range p.Verdicts {
		v := &p.Verdicts[i]
		v.unheld, v.Residual = v.Residual, r.Residuals[v.Reading]
		v.Adjusted = rs[v.Reading].Value.Millimetres() + v.Residual
	}
}

func (c *checks) verdict(i int, rd Reading, m Model) Verdict {
	o := c.obs[i]
	v := Verdict{
		Reading: o.reading, Residual: o.misfit(c.x), SD: o.sd,
		Redundancy: c.redundancy(i), Test: c.statistic(i),
		Smallest: smallest(o.sd, c.redundancy(i)), BlunderSD: math.Inf(1),
	}
	v.Adjusted = rd.Value.Millimetres() + v.Residual
	v.Checked = v.Smallest <= m.ShowMM
	if v.Redundancy >= least {
		v.Blunder, v.BlunderSD = -v.Residual/v.Redundancy, o.sd/math.Sqrt(v.Redundancy)
	}
	return v
}

// smallest is the smallest blunder that would show, mm.
func smallest(sd, redundancy float64) float64 {
	if redundancy < least {
		return math.Inf(1)
	}
	return shows * sd / math.Sqrt(redundancy)
}

// suspect ranks the readings that may be the wrong one.
func (p *Report) suspect(r Result, c *checks, rs []Reading, at map[int]int) {
	if !p.Wrong {
		return
	}
	p.refit(r, c, rs, at)
	top := 0.0
	for _, v := range p.Verdicts {
		top = math.Max(top, v.Test*v.Test)
	}
	for k, v := range p.Verdicts {
		if v.Test != 0 && v.Test*v.Test >= top-withinTop {
			p.Verdicts[k].Suspect = true
			p.Verdicts[k].Slips = slips(rs[v.Reading], v.Blunder, v.BlunderSD)
			p.Suspects = append(p.Suspects, k)
		}
	}
	slices.SortStableFunc(p.Suspects, func(a, b int) int { return p.worse(a, b) })
	p.Locatable = len(p.Suspects) == 1
}

// worse orders suspects: the higher statistic first; of equal ones, the one
// whose blunder is a slip that people make.
func (p *Report) worse(a, b int) int {
	x, y := p.Verdicts[a], p.Verdicts[b]
	if d := math.Abs(y.Test) - math.Abs(x.Test); math.Abs(d) > 0.02 {
		return int(math.Copysign(1, d))
	}
	return min(1, len(y.Slips)) - min(1, len(x.Slips))
}

// sets are the readings whose tests correlate so far that an error in one
// cannot be told from an error in another, chained together.
func (c *checks) sets(at map[int]int, m Model) [][]int {
	group := map[int]int{}
	find := func(i int) int {
		for group[i] != i {
			i = group[i]
		}
		return i
	}
	for i := range c.obs {
		group[i] = i
	}
	for i := range c.obs {
		for j := range i {
			_, a := at[i]
			_, b := at[j]
			if a && b && math.Abs(c.correlation(i, j)) > m.Alike {
				group[find(i)] = find(j)
			}
		}
	}
	members := map[int][]int{}
	var order []int
	for i := range c.obs {
		if k, ok := at[i]; ok {
			g := find(i)
			if members[g] == nil {
				order = append(order, g)
			}
			members[g] = append(members[g], k)
		}
	}
	var out [][]int
	for _, g := range order {
		if len(members[g]) > 1 {
			out = append(out, members[g])
		}
	}
	return out
}
