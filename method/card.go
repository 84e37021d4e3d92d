package method

import (
	"strake/plan"
	"strake/sheet"
)

// Card is one piece of hand work on one sheet.
type Card struct {
	Name    string // a slug, for file names
	Title   string
	Why     string
	Steps   []string // in the order they are done
	Caution []string // what is worn comes first, who decides last
	Sources []string // of the figures on the card that are not the job's own
	Figures []Figure
}

// Figure is one drawing of a card, at most Widest mm wide.
type Figure struct {
	Title string
	Scale string  // such as "full size"; "not to scale" where it is none
	W, H  float64 // mm of paper
	Items []sheet.Item
}

// Widest is the most that a figure measures across, in mm.
const Widest = 186.0

// maker is a card, and when a job wants it; nil: always.
type maker struct {
	make func(facts) Card
	when func(facts) bool
}

// makers are by the order of the work.
var makers = []maker{
	{make: flatness},
	{make: readMoisture},
	{make: tryNailer},
	{make: blockStart},
	{make: nailByHand},
	{make: rackAhead},
	{make: pullTight},
	{make: splineTurn, when: func(f facts) bool { return f.turns }},
	{make: dropIn},
	{make: lastRows},
	{make: scribe},
	{make: pipeHole, when: func(f facts) bool { return len(f.pipes) > 0 }},
	{make: undercut, when: func(f facts) bool { return len(f.jambs) > 0 }},
}

// Cards are the cards that a job wants, by the order of the work; none where the
// boards are not known. A spline turn is among them where the plan has a spline,
// a pipe where one stands in the floor, an undercut where boards pass under a
// jamb; the others always are.
func Cards(p plan.Plan) []Card {
	if p.Job.Boards.Thickness <= 0 {
		return nil
	}
	f := factsOf(p)
	var out []Card
	for _, m := range makers {
		if m.when == nil || m.when(f) {
			out = append(out, m.make(f))
		}
	}
	return out
}
