package trim

import (
	"strings"

	"strake/ready"
	"strake/tape"
)

// The keys of the limits.
const (
	FlushMost      = "flush_most"
	TMouldMost     = "t_mould_most"
	ReducerMost    = "reducer_most"
	UprightMost    = "upright_most"
	BevelledMost   = "bevelled_most"
	TMouldStem     = "t_mould_stem"
	RiserApart     = "risers_apart_most"
	RiserMost      = "riser_most"
	LeafLeast      = "leaf_clear_least"
	LeafClear      = "leaf_clear"
	JambClear      = "jamb_clear"
	ApplianceClear = "appliance_clear_least"
)

const (
	common    = "common practice, no source"
	srcFlush  = "common practice, no source: what a hand does not feel"
	srcStrips = "a guide to transition strips (engineerfix.com): T-mould to 1/8 in, reducer to about 1/2 in"
	srcADA    = "2010 ADA Standards for Accessible Design, 303.2 to 303.4: up to 1/4 in upright; above it, up to 1/2 in, bevelled no steeper than 1:2; more is a ramp. Made for public places: in a private house a good test of what trips"
	srcRisers = "US model code for houses (IRC), as three summaries of stair codes have it; the code adopted where you are comes first"
	srcLeaf   = "from memory: 1/8 to 1/4 in over the new floor and any saddle"
	srcJamb   = "common practice, no source: room for a board to slide in"
	srcStem   = "from memory: a stem of 3/8 in, and 3/8 in to either side of it"
)

func length(l tape.Length) float64 { return float64(l) }

// Guides are the limits of trade guidance, all of them lengths in ticks.
var Guides = ready.Guides{
	{Key: FlushMost, Doc: "Two floors count as flush up to this difference.", Is: length(tape.Sixteenth), Source: srcFlush},
	{Key: TMouldMost, Doc: "A T-mould takes up to this difference.", Is: length(tape.Eighth), Source: srcStrips},
	{Key: ReducerMost, Doc: "A reducer or threshold takes up to this difference.", Is: length(tape.Inch / 2), Source: srcStrips},
	{Key: UprightMost, Doc: "A change of level up to this may stand upright.", Is: length(tape.Inch / 4), Source: srcADA},
	{Key: BevelledMost, Doc: "A change of level up to this may be bevelled, 1 up in 2 along; more is a ramp.", Is: length(tape.Inch / 2), Source: srcADA},
	{Key: TMouldStem, Doc: "How wide the stem of a T-mould is.", Is: length(3 * tape.Eighth), Source: srcStem},
	{Key: RiserApart, Doc: "The largest and the smallest riser of a flight differ by this much at most.", Is: length(3 * tape.Eighth), Source: srcRisers},
	{Key: RiserMost, Doc: "No riser is higher.", Is: length(7*tape.Inch + 3*tape.Inch/4), Source: srcRisers},
	{Key: LeafLeast, Doc: "A door leaf keeps at least so much over the floor.", Is: length(tape.Eighth), Source: srcLeaf},
	{Key: LeafClear, Doc: "A door leaf that is cut is cut to so much over the floor.", Is: length(tape.Inch / 4), Source: srcLeaf},
	{Key: JambClear, Doc: "A jamb is undercut by so much more than the boards are high.", Is: length(tape.Inch / 32), Source: srcJamb},
	{Key: ApplianceClear, Doc: "An appliance with its feet turned in keeps at least so much below the counter.", Is: length(tape.Eighth), Source: common},
}

// limit is the limit that stands for a key, as a length, with its words.
type limit struct {
	ready.Ruling
	Is       tape.Length
	words    string
	stricter string // what an outranked limit asks beyond it, "" nothing
}

// atMost are the limits that are upper ones.
var atMost = map[string]bool{FlushMost: true, TMouldMost: true, ReducerMost: true, UprightMost: true, BevelledMost: true, RiserApart: true, RiserMost: true}

// called are the limits that are no trade guidance, by whose they are.
var called = map[string]string{UprightMost: "a published standard", BevelledMost: "a published standard", RiserApart: "the US model code", RiserMost: "the US model code"}

// rule is the limit that stands for a key.
func (w work) rule(key string) limit {
	r, _ := Guides.Rule(w.job.Limits, key)
	say := func(x float64) string { return w.say(tape.Length(x)) }
	words := r.Said(say)
	if name := called[key]; name != "" {
		words = strings.Replace(words, ready.Guidance.String(), name, 1)
	}
	return limit{r, tape.Length(r.Is), words, r.StricterSaid(atMost[key], say)}
}
