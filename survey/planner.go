package survey

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// planner works out what further readings would do, without their values: a
// reading more takes its share out of the covariance, and of the share that
// every other reading has in its own residual.
type planner struct {
	model Model
	cov   *mat.SymDense
	rows  [][]entry // readings taken or chosen, weighted
	sd    []float64
	share [][]float64 // rows x cov x rows'
	cands []candidate
	used  []bool // by candidate
}

// plannerOf starts from the readings of a check.
func (c *checks) plannerOf(m Model, cands []candidate) *planner {
	p := &planner{model: m, cov: mat.NewSymDense(c.cov.SymmetricDim(), nil), cands: cands, used: make([]bool, len(cands))}
	p.cov.CopySym(c.cov)
	var keep []int
	for i, o := range c.obs {
		if o.reading >= 0 {
			keep = append(keep, i)
			p.rows, p.sd = append(p.rows, c.rows[i]), append(p.sd, o.sd)
		}
	}
	for _, i := range keep {
		line := make([]float64, 0, len(keep))
		for _, j := range keep {
			line = append(line, c.share[i][j])
		}
		p.share = append(p.share, line)
	}
	return p
}

// effect is what one candidate would do: pull is its covariance with each
// reading taken, own its own doubt in its own deviations, squared.
type effect struct {
	pull []float64
	own  float64
}

func (p *planner) effect(k int) effect {
	t := times(p.cov, p.cands[k].row)
	e := effect{pull: make([]float64, len(p.rows)), own: dot(t, p.cands[k].row)}
	for i, row := range p.rows {
		e.pull[i] = dot(t, row)
	}
	return e
}

// shareAfter is share[i][j] once the candidate is taken; the candidate itself
// is the index len(rows).
func (p *planner) shareAfter(e effect, i, j int) float64 {
	n := len(p.rows)
	switch {
	case i == n && j == n:
		return e.own / (1 + e.own)
	case i == n:
		return e.pull[j] / (1 + e.own)
	case j == n:
		return e.pull[i] / (1 + e.own)
	}
	return p.share[i][j] - e.pull[i]*e.pull[j]/(1+e.own)
}

// redundancyAfter is the local redundancy of reading i once the candidate is
// taken.
func (p *planner) redundancyAfter(e effect, i int) float64 {
	return math.Max(0, 1-p.shareAfter(e, i, i))
}

// take adds candidate k to the readings.
func (p *planner) take(k int) {
	e := p.effect(k)
	n := len(p.rows)
	next := make([][]float64, n+1)
	for i := range next {
		next[i] = make([]float64, n+1)
		for j := range next[i] {
			next[i][j] = p.shareAfter(e, i, j)
		}
	}
	p.share = next
	t := times(p.cov, p.cands[k].row)
	p.cov.SymRankOne(p.cov, -1/(1+e.own), mat.NewVecDense(len(t), t))
	p.rows, p.sd = append(p.rows, p.cands[k].row), append(p.sd, p.cands[k].sd)
	p.used[k] = true
}

// plain tells whether candidate k needs no mark on a wall and no doorway.
func (p *planner) plain(k int) bool {
	return len(p.cands[k].ask.Marks) == 0 && p.cands[k].ask.Through == ""
}

// vague is the doubt, in a candidate's own deviations squared, above which the
// readings so far do not fix it: loosened squares leave hundreds of deviations,
// a fixed shape a few.
const vague = 20 * 20

// mostInDoubt is the unused candidate from lo to before hi that the readings so far fix least, and
// its standard deviation in mm; -1 when all are fixed. Walls come before
// diagonals, diagonals before marks on walls and readings through doorways.
func (p *planner) mostInDoubt(lo, hi int) (int, float64) {
	best, worst := -1, 0.0
	for k := lo; k < hi; k++ {
		if p.used[k] {
			continue
		}
		q := p.effect(k).own
		if q < vague {
			continue
		}
		if !p.plain(k) {
			q *= 1e-6
		}
		if q > worst*(1+1e-9) {
			best, worst = k, q
		}
	}
	if best < 0 {
		return -1, 0
	}
	return best, p.cands[best].sd * math.Sqrt(p.effect(best).own)
}
