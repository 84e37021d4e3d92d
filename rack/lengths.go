package rack

import (
	"fmt"
	"math"
	"math/rand/v2"

	"strake/finding"
	"strake/stock"
	"strake/tape"
)

// spareBoards is what is laid out on paper beyond the need when the boards are
// not known: a tenth, the rule of thumb.
const spareBoards = 0.10

// lengths are the boards to rack with: those tallied, as many of the one
// length as are bought, or a sample of the carton mix for the seed.
func lengths(a Ask) ([]tape.Length, []finding.Finding) {
	var out []tape.Length
	switch a.Boards.Known {
	case stock.Tallied:
		for _, c := range a.Boards.Tally {
			for range c.Count {
				out = append(out, c.Length)
			}
		}
	case stock.OneSize:
		n := a.Boards.OneCount
		if n == 0 {
			n = int(math.Ceil(float64(need(a))*(1+spareBoards)/float64(max(1, a.Boards.One)))) + 2 + runsOf(a)/2
			if a.Boards.Shift.Fixed() {
				n += runsOf(a) // at most one more is cut in a row
			}
		}
		for range n {
			out = append(out, a.Boards.One)
		}
	default:
		out = sample(a)
	}
	return coarse(out)
}

// need is the length of all runs.
func need(a Ask) tape.Length {
	var sum tape.Length
	for _, f := range a.Fields {
		for _, r := range f.Layout.Runs {
			sum += r.Length()
		}
	}
	return sum
}

// mean is the average of lengths, 0 of none.
func mean(ls []tape.Length) tape.Length {
	var sum tape.Length
	for _, l := range ls {
		sum += l
	}
	return sum / tape.Length(max(1, len(ls)))
}

func runsOf(a Ask) int {
	n := 0
	for _, f := range a.Fields {
		n += len(f.Layout.Runs)
	}
	return n
}

// coarse takes lengths down to 1/64 in where they have no larger unit in
// common (a tally in two systems), which is less than any tally is good for.
func coarse(ls []tape.Length) ([]tape.Length, []finding.Finding) {
	if g := gcd(ls); g == 0 || g >= finest {
		return ls, nil
	}
	for i := range ls {
		ls[i] -= ls[i] % finest
	}
	return ls, []finding.Finding{{Level: finding.Note, Rule: "tally", Measured: "the lengths have no common step",
		Limit: fmt.Sprintf("each taken down to a multiple of %s", finest), Do: "Tally in one system, inches or millimetres."}}
}

// sample draws boards from the carton mix until they are a tenth over the
// need. The lengths follow a Beta curve on least..most with the mix's mean,
// its two shapes adding up to 4 (as wide as carton tallies look: from memory).
func sample(a Ask) []tape.Length {
	m := a.Boards.Mix
	if m.Most <= 0 || m.Most < m.Least {
		return nil
	}
	step := m.Step
	if step == 0 {
		step = tape.Sixteenth
	}
	rng := rand.New(rand.NewPCG(a.Seed, 0xca27))
	mu := 0.5
	if m.Most > m.Least {
		mu = float64(m.Mean-m.Least) / float64(m.Most-m.Least)
	}
	mu = min(0.95, max(0.05, mu))
	goal := tape.Length(float64(need(a))*(1+spareBoards)) + 4*m.Most // a small floor loses more to its cuts
	var out []tape.Length
	for sum := tape.Length(0); sum < goal; {
		x := beta(rng, 4*mu, 4*(1-mu))
		l := m.Least + tape.Length(x*float64(m.Most-m.Least))
		l = max(step, l-l%step)
		out = append(out, l)
		sum += l
	}
	return out
}

// beta draws from a Beta distribution by two Gamma draws.
func beta(rng *rand.Rand, a, b float64) float64 {
	x, y := gamma(rng, a), gamma(rng, b)
	return x / (x + y)
}

// gamma draws from a Gamma distribution of shape a (Marsaglia and Tsang 2000,
// ACM TOMS 26:363, from memory; shapes under 1 by their boost).
func gamma(rng *rand.Rand, a float64) float64 {
	if a < 1 {
		return gamma(rng, a+1) * math.Pow(rng.Float64(), 1/a)
	}
	d := a - 1.0/3
	c := 1 / math.Sqrt(9*d)
	for {
		x := rng.NormFloat64()
		v := 1 + float64(c*x)
		if v <= 0 {
			continue
		}
		v = v * v * v
		if math.Log(1-rng.Float64()) < float64(0.5*x*x)+d-float64(d*v)+float64(d*math.Log(v)) {
			return d * v
		}
	}
}
