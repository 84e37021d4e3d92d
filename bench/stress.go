package main

import (
	"fmt"
	"math/rand/v2"
	"regexp"
	"strings"

	"strake/rack"
	"strake/tape"
)

// triplet is the hardest exact fit there is: three boards a run, no slack and
// not a board to spare. The rule is that of Falkenauer's triplets ("A hybrid
// grouping genetic algorithm for bin packing", Journal of Heuristics 2:5-30,
// 1996; from memory): of a run of 1000 the first board is 380 to 490, the
// second 250 to half of what is left, the third the rest.
func triplet(seed uint64, runs int) []tape.Length {
	rng := rand.New(rand.NewPCG(seed, 1996))
	var out []tape.Length
	for range runs {
		first := 380 + rng.IntN(111)
		second := 250 + rng.IntN((1000-first)/2-250+1)
		for _, l := range []int{first, second, 1000 - first - second} {
			out = append(out, tape.Length(l)*tape.Sixteenth)
		}
	}
	rng.Shuffle(len(out), func(i, j int) { out[i], out[j] = out[j], out[i] })
	return out
}

// exact is the room of the triplets: joints and ends as they come, no kerf.
func exact(runs int) place {
	return place{runs: runs, length: 1000 * tape.Sixteenth, face: 5 * inch, wood: true}
}

const stressHead = `
## Exact fits

Three boards a run, no slack, no board to spare, joint limit and kerf off, all
in units of a thousandth of the run, by the rule of Falkenauer's triplets
(Journal of Heuristics 2:5-30, 1996; the rule from memory). Target: at most one
cut in 20 runs.

| runs | floors | cuts | cuts in 20 runs | floors without a cut | runs not filled | mean time | |
|---|---|---|---|---|---|---|---|
`

// stressed racks the exact fits.
func stressed(only *regexp.Regexp) string {
	if !only.MatchString("triplets") {
		return ""
	}
	var s strings.Builder
	s.WriteString(stressHead)
	for _, c := range []struct{ runs, floors int }{{20, 10}, {40, 5}, {83, 3}} {
		var cuts, bare, open, time float64
		for seed := range c.floors {
			a := exact(c.runs).ask(triplet(uint64(seed), c.runs), uint64(seed))
			a.Polishing = 4 * rack.Polishing
			l, t := timed(a)
			q := judge(l, exact(c.runs).need())
			cuts, open, time = cuts+q.cuts, open+q.unfilled, time+t
			if q.cuts == 0 && q.unfilled == 0 {
				bare++
			}
		}
		rate := cuts / float64(c.runs*c.floors) * 20
		fmt.Fprintf(&s, "| %d | %d | %.0f | %.2f | %.0f | %.0f | %.1f s | %s |\n", c.runs, c.floors, cuts, rate, bare, open, time/float64(c.floors), verdict(rate+open, 1))
	}
	return s.String()
}
