package trim

import (
	"slices"

	"strake/ready"
	"strake/tape"
)

// NotTold is what is said where a job tells nothing of heights.
var NotTold = ready.Verdict{Say: ready.Look, Rule: "heights", Where: "openings, stairs, appliances", Measured: "nothing is written of heights", Source: common,
	Do: "Before boards are ordered, measure how high the floor beyond each opening lies over the subfloor, what is under each door leaf, the risers of a stair, and the opening of each appliance; write them under heights."}

// Verdicts is what there is to say of heights, in the order of the work: what
// decides the order of boards first. There is something where the job tells any.
func Verdicts(j Job, f Floor) []ready.Verdict {
	if !j.Told {
		return nil
	}
	w := work{j, f}
	return slices.Concat(w.buildVerdicts(), w.applianceVerdicts(), w.riserVerdicts(), w.meetingVerdicts(), w.untold(),
		w.leafVerdicts(), w.trackVerdicts(), w.jambVerdicts(), w.coverVerdicts())
}

// Sheet is all that is worked out of heights, for lists.
type Sheet struct {
	Floor      Stack // where nothing is shimmed
	Builds     []Compared
	Meetings   []Meeting
	Flights    []Flight
	Swings     []Swing
	Hung       []Hung
	Undercuts  []Undercut
	Fits       []Fit
	Covered    []Covered
	Riser      string // the limit of the difference within a flight, and whose it is
	RiserFrom  string // where it comes from
	JambClear  tape.Length
	SheetGuess bool // the sheet's thickness was not told: felt is taken
}

// Of is the sheet of a job's heights.
func Of(j Job, f Floor) Sheet {
	w := work{j, f}
	r := w.rule(RiserApart)
	return Sheet{Floor: w.stack(w.chosen(), 0), Builds: w.compared(), Meetings: w.meetings(), Flights: w.flights(), Swings: w.swings(),
		Hung: w.hung(), Undercuts: w.undercuts(), Fits: w.fits(), Covered: w.covered(),
		Riser: r.words, RiserFrom: r.Source, JambClear: w.rule(JambClear).Is, SheetGuess: !j.SheetTold && f.Felt}
}
