package survey

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"

	"strake/plane"
	"strake/room"
	"strake/tape"
)

// Result is the fitted place with what the fit says about the readings.
type Result struct {
	Built     room.Built
	Residuals []float64 // by reading, computed less observed, mm; NaN where a reading was not used
	Deviation []float64 // by reading, the standard deviation it was given, mm
	Redundant int       // readings beyond those the shape needs; negative: that many are assumed
	S0        float64   // square root of the weighted square sum over all redundancy
	SquareSum float64   // weighted square sum of the readings alone
	Converged bool
	Apart     []string // rooms that nothing joins to the first

	net        *net
	model      Model
	step       tape.Length // what most readings were read to
	x          []float64
	covariance *mat.SymDense // of the free unknowns, mm²
	free       []int
}

// Adjust fits the corners of a sketch to the readings by weighted least
// squares: Gauss-Newton steps, damped while they do not help (Levenberg's
// way). The first corner is the origin and the first wall runs along X.
func Adjust(s room.Sketch, rs []Reading, m Model) Result {
	n := newNet(s)
	x, apart := n.start(rs)
	n.fix(m, x)
	obs := n.observations(rs, m)
	res := Result{net: n, model: m, step: stepOf(rs), Apart: apart, Converged: n.descend(obs, x), x: x}
	for i, f := range n.free {
		if f {
			res.free = append(res.free, i)
		}
	}
	res.covariance = n.inverse(obs, x)
	res.fill(s, rs, obs, m)
	return res
}

// steps is how many Gauss-Newton steps are tried; five or six are usual.
const steps = 60

// descend lowers the weighted square sum of obs from x, in place.
func (n *net) descend(obs []observation, x []float64) bool {
	damp := 1e-3
	cost := squareSum(obs, x)
	for range steps {
		a, g := n.normal(obs, x)
		moved, next := n.tryStep(obs, x, a, g, cost, &damp)
		if next == nil {
			return moved < 1e-3
		}
		copy(x, next)
		cost = squareSum(obs, x)
		if moved < 1e-7 {
			return true
		}
	}
	return false
}

// tryStep finds a damping at which a step helps; nil when none does.
func (n *net) tryStep(obs []observation, x []float64, a *mat.SymDense, g []float64, cost float64, damp *float64) (moved float64, next []float64) {
	for range 30 {
		d := n.solve(a, g, *damp)
		next = slices.Clone(x)
		moved = 0
		for k, v := range d {
			next[k] += v
			moved = math.Max(moved, math.Abs(v))
		}
		if c := squareSum(obs, next); c <= cost*(1+1e-12) {
			*damp = math.Max(*damp/10, 1e-12)
			return moved, next
		}
		*damp *= 4
	}
	return moved, nil
}

func squareSum(obs []observation, x []float64) float64 {
	sum := 0.0
	for _, o := range obs {
		v := o.misfit(x) / o.sd
		sum += v * v
	}
	return sum
}

// gradient is the derivative of an observation's misfit by the unknowns it
// needs, by central differences (0.01 mm; the scale by 0.01 mm per m).
func (n *net) gradient(o observation, x []float64) []float64 {
	out := make([]float64, len(o.needs))
	for k, i := range o.needs {
		const h = 0.01
		keep := x[i]
		x[i] = keep + h
		up := o.misfit(x)
		x[i] = keep - h
		down := o.misfit(x)
		x[i] = keep
		out[k] = (up - down) / (2 * h)
	}
	return out
}

// normal is the normal matrix and the downhill gradient over all unknowns;
// fixed unknowns have a one on the diagonal and nothing else.
func (n *net) normal(obs []observation, x []float64) (*mat.SymDense, []float64) {
	a := mat.NewSymDense(n.count, nil)
	g := make([]float64, n.count)
	for _, o := range obs {
		d := n.gradient(o, x)
		v := o.misfit(x) / o.sd
		row := n.sparse(o, d)
		for _, p := range row {
			g[p.i] -= p.v * v
			for _, q := range row {
				if q.i >= p.i {
					a.SetSym(p.i, q.i, a.At(p.i, q.i)+p.v*q.v)
				}
			}
		}
	}
	for i, f := range n.free {
		if !f {
			a.SetSym(i, i, 1)
		}
	}
	return a, g
}

type entry struct {
	i int
	v float64
}

// sparse is one weighted row of the design, each free unknown once.
func (n *net) sparse(o observation, d []float64) []entry {
	var row []entry
	for k, i := range o.needs {
		if !n.free[i] {
			continue
		}
		if at := slices.IndexFunc(row, func(e entry) bool { return e.i == i }); at < 0 {
			row = append(row, entry{i, d[k] / o.sd})
		}
	}
	return row
}

// solve is the step for this damping; unknowns that no observation holds stay.
func (n *net) solve(a *mat.SymDense, g []float64, damp float64) []float64 {
	b := mat.NewSymDense(n.count, nil)
	b.CopySym(a)
	for i := range n.count {
		b.SetSym(i, i, a.At(i, i)*(1+damp)+1e-12)
	}
	var c mat.Cholesky
	out := make([]float64, n.count)
	if !c.Factorize(b) {
		return out
	}
	var v mat.VecDense
	if c.SolveVecTo(&v, mat.NewVecDense(n.count, g)) != nil {
		return out
	}
	for i := range out {
		if n.free[i] {
			out[i] = v.AtVec(i)
		}
	}
	return out
}

// tether is the weight that keeps what nothing fixes within a hundred metres: it
// keeps the matrix regular and moves nothing that is fixed.
const tether = 1e-10

// inverse is the covariance of all unknowns (0 for the fixed ones), mm². What
// nothing fixes has a deviation of metres. Nil when the numbers run out.
func (n *net) inverse(obs []observation, x []float64) *mat.SymDense {
	a, _ := n.normal(obs, x)
	for i, f := range n.free {
		if f {
			a.SetSym(i, i, a.At(i, i)+tether)
		}
	}
	var c mat.Cholesky
	if !c.Factorize(a) {
		return nil
	}
	out := mat.NewSymDense(n.count, nil)
	if c.InverseTo(out) != nil {
		return nil
	}
	for i, f := range n.free {
		if !f {
			out.SetSym(i, i, 0)
		}
	}
	return out
}

// fill reads the result out of the fitted unknowns.
func (r *Result) fill(s room.Sketch, rs []Reading, obs []observation, m Model) {
	r.Built = room.Built{Sketch: s, At: map[string]plane.XY{}}
	for name := range r.net.index {
		r.Built.At[name] = r.net.at(name, r.x)
	}
	for name := range r.net.points {
		r.Built.At[name] = r.net.at(name, r.x)
	}
	r.Residuals = make([]float64, len(rs))
	r.Deviation = make([]float64, len(rs))
	for i := range rs {
		r.Residuals[i] = math.NaN()
	}
	used, total := 0, 0.0
	for _, o := range obs {
		v := o.misfit(r.x)
		total += v * v / o.sd / o.sd
		if o.reading >= 0 {
			r.Residuals[o.reading], r.Deviation[o.reading] = v, o.sd
			r.SquareSum += v * v / o.sd / o.sd
			used++
		}
	}
	r.Redundant = used + r.hard() - r.shape()
	if d := len(obs) - len(r.free); d > 0 {
		r.S0 = math.Sqrt(total / float64(d))
	}
}

// shape is how many independent readings the shape needs: two for each corner
// less what the datum holds, three as a rule.
func (r *Result) shape() int {
	n := 0
	for _, i := range r.free {
		if i != r.net.scale() {
			n++
		}
	}
	return n
}

// hard is how many equations doorways and given angles add.
func (r *Result) hard() int {
	n := 0
	for _, d := range r.net.sketch.Doorways {
		if d.Beyond == room.BeyondRoom {
			n += 3 // a rigid joint; the fourth equation checks the width
		}
	}
	for _, rm := range r.net.sketch.Rooms {
		n += len(rm.Angles)
	}
	return n
}
