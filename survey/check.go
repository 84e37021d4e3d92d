package survey

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// The search for a wrong reading runs on the same network with every square
// corner loosened to Model.LooseDeg: it then keeps the shape from falling over
// where no reading holds it, and checks nothing. So redundancy counts tape
// readings (with given angles and doorways, which are measured too), and a
// crooked corner is not taken for a slip of the tape.
type checks struct {
	net   *net
	x     []float64
	obs   []observation // square corners left out
	rows  [][]entry     // weighted design, one row an observation
	cov   *mat.SymDense // of the unknowns, squares loosened
	share [][]float64   // rows x cov x rows': 1 less its diagonal is the local redundancy
	spare float64       // sum of local redundancies
	loose float64       // square corners that the shape rests on
	soft  []observation // the square corners, as trusted in the fit
	rests []float64     // the share of each that the shape rests on, 0 to 1
}

// least is the local redundancy below which nothing checks a reading: its
// smallest blunder that shows is over 30 times what a tape misses by.
const least = 1e-3

// check prepares the search from the fitted unknowns.
func (n *net) check(obs []observation, from []float64, m Model) checks {
	x := append([]float64(nil), from...)
	loose := loosen(obs, m)
	n.descend(loose, x)
	c := checks{net: n, x: x, cov: n.inverse(loose, x)}
	if c.cov == nil {
		return c
	}
	for i, o := range loose {
		row := n.sparse(o, n.gradient(o, x))
		if o.soft {
			rest := quadratic(c.cov, row)
			c.loose += rest
			c.soft, c.rests = append(c.soft, obs[i]), append(c.rests, rest)
			continue
		}
		c.obs, c.rows = append(c.obs, o), append(c.rows, row)
	}
	c.fillShare()
	return c
}

func loosen(obs []observation, m Model) []observation {
	out := append([]observation(nil), obs...)
	for i := range out {
		if out[i].soft {
			out[i].sd *= math.Max(1, m.LooseDeg/m.SquareDeg)
		}
	}
	return out
}

func (c *checks) fillShare() {
	c.share = make([][]float64, len(c.rows))
	for i, row := range c.rows {
		t := times(c.cov, row)
		c.share[i] = make([]float64, len(c.rows))
		for j, other := range c.rows {
			c.share[i][j] = dot(t, other)
		}
		c.spare += c.redundancy(i)
	}
}

// redundancy is the part of an error in observation i that shows in its own
// residual.
func (c *checks) redundancy(i int) float64 { return math.Max(0, 1-c.share[i][i]) }

// correlation is that of the test statistics of i and j.
func (c *checks) correlation(i, j int) float64 {
	return alike(c.share[i][i], c.share[j][j], c.share[i][j])
}

func alike(ii, jj, ij float64) float64 {
	if 1-ii < least || 1-jj < least {
		return 0
	}
	return -ij / math.Sqrt((1-ii)*(1-jj))
}

// statistic is the standardised residual of observation i: normal with
// deviation 1 where nothing is wrong. 0 where nothing checks it.
func (c *checks) statistic(i int) float64 {
	r := c.redundancy(i)
	if r < least {
		return 0
	}
	return c.obs[i].misfit(c.x) / c.obs[i].sd / math.Sqrt(r)
}

// squares is the weighted square sum of all but the loosened corners.
func (c *checks) squares() float64 { return squareSum(c.obs, c.x) }

// times is cov times a sparse row.
func times(cov *mat.SymDense, row []entry) []float64 {
	out := make([]float64, cov.SymmetricDim())
	for _, e := range row {
		for k := range out {
			out[k] += e.v * cov.At(e.i, k)
		}
	}
	return out
}

func dot(t []float64, row []entry) float64 {
	sum := 0.0
	for _, e := range row {
		sum += e.v * t[e.i]
	}
	return sum
}

// quadratic is row x cov x row'.
func quadratic(cov *mat.SymDense, row []entry) float64 { return dot(times(cov, row), row) }

// Strain is a corner that was taken for square, that no reading fixes, and that
// the readings all the same push out of square.
type Strain struct {
	Corner         string
	Degrees, Limit float64
}

// pushed is how many deviations a corner may be pushed before that is said.
const pushed = 2.5

// resting is the share of a square corner above which the shape rests on it.
const resting = 0.3

// taken lists the corners that the shape takes for square.
func (c *checks) taken() []string {
	var out []string
	for i, o := range c.soft {
		if c.rests[i] > resting {
			out = append(out, o.corner)
		}
	}
	return out
}

// strained lists them, by the unknowns of the fit itself.
func (c *checks) strained(x []float64, m Model) []Strain {
	var out []Strain
	for i, o := range c.soft {
		if off := o.misfit(x) / o.sd; c.rests[i] > resting && math.Abs(off) > pushed {
			out = append(out, Strain{o.corner, off * m.SquareDeg, pushed * m.SquareDeg})
		}
	}
	return out
}
