package trim

import "strake/tape"

// Strip is what lies between two floors.
type Strip string

// The strips, from the lightest to the heaviest; Ramp is a threshold that no
// guide lets take the difference by itself.
const (
	None      Strip = "flush"
	TMould    Strip = "T-mould"
	Reducer   Strip = "reducer"
	Threshold Strip = "threshold"
	Ramp      Strip = "ramp"
	Nosing    Strip = "nosing"
)

// Sold is how long strips are sold (a flooring store's list of mouldings).
const Sold = 78 * tape.Inch

// soft are coverings that no flush joint or T-mould goes against, and sills.
var soft = map[string]bool{"carpet": true, sill: true}

// sill is that of a sliding or outside door.
const sill = "sill"

// strip is what goes between this floor and one beyond that is so much lower;
// negative: higher.
func (w work) strip(covering string, diff tape.Length) Strip {
	d := diff.Abs()
	switch {
	case covering == sill && diff < 0: // it stands up by itself: boards end at it
		return Threshold
	case d > w.rule(ReducerMost).Is:
		return Ramp
	case soft[covering]:
		return Threshold
	case d <= w.rule(FlushMost).Is:
		return None
	case d <= w.rule(TMouldMost).Is:
		return TMould
	case diff > 0:
		return Reducer
	}
	return Threshold
}

// gap says how far boards stay off at a strip.
func (w work) gap(s Strip) string {
	l := w.f.Limits
	least, most := l.TransitionLeast.Value, l.TransitionGreatest.Value
	planned := "boards end " + w.say(least) + " to " + w.say(most) + " from where this floor is told to end"
	switch s {
	case None:
		return "a fine joint of " + w.say(l.FlushEnd.Value) + " at row ends, a soft joint of " + w.say(l.FlushSide.Value) + " beside rows"
	case TMould:
		stem := w.rule(TMouldStem).Is
		return w.say(stem+2*least) + " from floor to floor: the stem of " + w.say(stem) + " and " + w.say(least) + " to either side of it; " + planned
	case Nosing:
		return "none: the nosing is fitted, glued and fastened, and boards come up to it"
	}
	return w.say(least) + " to " + w.say(most) + " under it; " + planned
}

// how says what a strip is like, and which way round.
func (w work) how(s Strip, covering string, diff tape.Length) string {
	switch s {
	case None:
		return "Flush: no strip is needed, or a flat one."
	case TMould:
		return "T-mould: it lies on both floors and is fastened to neither, but to the subfloor between them."
	case Reducer:
		return "Reducer: it is fastened at this floor's edge and slopes down to the lower one."
	case Nosing:
		return "Nosing, fastened first."
	case Ramp:
		if diff < 0 {
			return "Too much for a strip: a panel under this floor, or a threshold that is made as a ramp."
		}
		return "Too much for a strip: another build-up, or a threshold that is made as a ramp."
	}
	if covering == "carpet" {
		return "Threshold: square against the carpet, which is tucked behind a new tack strip."
	}
	if diff < 0 && covering != sill {
		return "Threshold: made to both heights, since the floor beyond is the higher one."
	}
	return "Threshold: square against the " + name(covering) + "."
}

// name is a covering as it is said.
func name(covering string) string {
	if covering == "" || covering == "other" {
		return "floor beyond"
	}
	return covering
}

// Bevel is how far a change of level is to slope: what stands over upright,
// bevelled by 1:2. Ramp is true above most.
func Bevel(diff, upright, most tape.Length) (run tape.Length, ramp bool) {
	d := diff.Abs()
	return 2 * max(0, d-upright), d > most
}
