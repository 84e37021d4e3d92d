package paper

import (
	"strconv"

	"strake/plan"
	"strake/tape"
)

// A length as a number to reckon with, in the inches or mm of its job, without the
// rounding of the text beside it.

// unitOf is the unit of such numbers, and one of it.
func unitOf(p plan.Plan) (string, tape.Length) {
	if p.Job.Unit.Imperial() {
		return "in", tape.Inch
	}
	return "mm", tape.Millimetre
}

// asNumber is a length as a number of that unit.
func asNumber(l tape.Length, p plan.Plan) float64 {
	_, one := unitOf(p)
	return float64(l) / float64(one)
}

// figure is that number as it is written: to 1/10,000, no figures that say nothing.
func figure(l tape.Length, p plan.Plan) string {
	s := strconv.FormatFloat(asNumber(l, p), 'f', 4, 64)
	for s[len(s)-1] == '0' {
		s = s[:len(s)-1]
	}
	if s[len(s)-1] == '.' {
		s = s[:len(s)-1]
	}
	return s
}

// figureHeads head columns of such numbers.
func figureHeads(names []string, p plan.Plan) []string {
	unit, _ := unitOf(p)
	out := make([]string, len(names))
	for i, n := range names {
		out[i] = n + ", " + unit
	}
	return out
}

// ripFigures are what the saw is set to at both ends of a rip; empty where there is none.
func ripFigures(pc Piece, p plan.Plan) []string {
	if !pc.Cuts.Rip.Done {
		return []string{"", ""}
	}
	return []string{figure(pc.SawRip[0], p), figure(pc.SawRip[1], p)}
}
