package main

import (
	"math"
	"math/rand/v2"

	"strake/tape"
)

// mix is a spread of board lengths: a Beta curve between two lengths, on a
// step.
type mix struct {
	name        string
	a, b        float64
	least, most tape.Length
	step        tape.Length
}

const inch = tape.Inch

// The mixes are invented: what cartons of short, mixed and stepped boards may
// hold, and a strip floor with a mean of 30 in.
var (
	mixed   = mix{"mixed", 1.6, 2.2, 12 * inch, 84 * inch, tape.Sixteenth}
	shorts  = mix{"short-heavy", 1.2, 3.2, 12 * inch, 84 * inch, tape.Sixteenth}
	stepped = mix{"stepped 6 in", 1.6, 2.2, 12 * inch, 84 * inch, 6 * inch}
	strip   = mix{"strip", 1.12, 2.88, 9 * inch, 84 * inch, tape.Sixteenth}
)

// draw draws boards until they come to this length, in the order in which they
// come out of the cartons.
func (m mix) draw(seed uint64, goal tape.Length) []tape.Length {
	rng := rand.New(rand.NewPCG(seed, 99))
	var out []tape.Length
	for sum := tape.Length(0); sum < goal; {
		x := beta(rng, m.a, m.b)
		l := tape.Nearest(m.least+tape.Length(x*float64(m.most-m.least)), m.step)
		out = append(out, l)
		sum += l
	}
	return out
}

// beta draws from a Beta curve whose shapes are both over 1, by rejection from
// the flat curve as high as its mode: slow and plain.
func beta(rng *rand.Rand, a, b float64) float64 {
	mode := (a - 1) / (a + b - 2)
	top := math.Pow(mode, a-1) * math.Pow(1-mode, b-1)
	for {
		x := rng.Float64()
		if rng.Float64()*top <= math.Pow(x, a-1)*math.Pow(1-x, b-1) {
			return x
		}
	}
}
