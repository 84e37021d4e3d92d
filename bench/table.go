package main

import (
	"fmt"
	"strings"
)

const racking = `# What racking is worth

Written by ` + "`make bench-rack`" + `. Means of %d seeds (the hall of strip: of two); times on
the machine that it was run on (2 cores, one used), all else the same anywhere.

The bench room is invented, for measuring only: 40 runs of 276 in, boards of
5 in face, 12 to 84 in long, lengths taken as exact to 1/16 in. Kerf 1/8 in,
shortest end piece 8 in, joints 6 in apart at least and 10 in by preference.
Board lengths follow Beta curves on 12 to 84 in: mixed (1.6, 2.2), short-heavy
(1.2, 3.2), stepped as mixed to the nearest 6 in; strip (1.12, 2.88) on 9 to
84 in, mean 30 in. Stock 1.03 times the need where all is tallied (strip 1.05),
1.10 with 24 boards at hand.

Waste is scrap and kerf over the length of all runs; whole boards and offcuts of
8 in and more that are left are not; a cut takes a whole kerf even where less
is left beyond it. Evenness is the mean piece of the last third of the runs over
that of the first. A crosscut is measured and sawn on site; a
tongue taken off is none. H-joint: within 2 in of a joint two runs back. Cluster:
a joint that makes three in neighbouring runs, each under 10 in from the next. Stair:
the same shift (1 in more or less, up to 14 in) twice running. All are told from
the outlines of the pieces, not from what the search thought of them.

`

// page is the whole document.
func page(rs []result, stress string) string {
	var s strings.Builder
	seeds := 0
	for _, r := range rs {
		seeds = max(seeds, r.seeds)
	}
	fmt.Fprintf(&s, racking, seeds)
	s.WriteString("## Measured\n\n| case | waste % | crosscuts | H-joints | clusters | stairs | joints under 10 in | seeds with a joint under 10 in | smallest | first answer | bettered | heap | offcuts left | evenness |\n|---|---|---|---|---|---|---|---|---|---|---|---|---|---|\n")
	for _, r := range rs {
		s.WriteString(r.row(r.name, r.mean))
		if r.layer.joints > 0 || r.bout.layer {
			fmt.Fprintf(&s, "| — the careful layer, same boards | %.3f | %.1f | %.1f | %.1f | %.1f | %.1f %% | | %.2f in | | | | %.1f | |\n",
				r.layer.waste, r.layer.cuts, r.layer.h, r.layer.clusters, r.layer.stairs, r.layer.near, r.layer.least.Inches(), r.layer.offcuts)
		}
	}
	s.WriteString("\n## Against the targets\n\n| case | figure | target | measured | |\n|---|---|---|---|---|\n")
	for _, r := range rs {
		for _, t := range r.targets {
			m := r.measured(t.what)
			fmt.Fprintf(&s, "| %s | %s | at most %.4g | %.4g | %s |\n", r.name, t.what, t.most, m, verdict(m, t.most))
		}
		if r.mean.unfilled > 0 || r.mean.relaxed > 0 {
			fmt.Fprintf(&s, "| %s | runs not filled; joint distance relaxed | 0 | %.2f; %.2f | missed |\n", r.name, r.mean.unfilled, r.mean.relaxed)
		}
	}
	s.WriteString(careless + stress)
	return s.String()
}

func (r result) row(name string, q quality) string {
	return fmt.Sprintf("| %s | %.4f | %.2f | %.2f | %.2f | %.2f | %.2f %% | %d of %d | %.2f in | %.0f ms | %.0f ms | %.0f MB | %.1f | %.2f |\n",
		name, q.waste, q.cuts, q.h, q.clusters, q.stairs, q.near, r.seeds-r.far, r.seeds, q.least.Inches(), q.firstTime*1000, q.time*1000, r.heap, q.offcuts, q.even)
}

func verdict(got, most float64) string {
	if got <= most+1e-9 {
		return "met"
	}
	return "**missed**"
}

const careless = `
The careful layer is simulated: eight boards in hand, a pile of offcuts, the
first board in hand that keeps its joint 6 in off, the last board of a run the
one whose offcut is of most use (invented as a yardstick; no source).
`
