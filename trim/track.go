package trim

import (
	"fmt"

	"strake/ready"
	"strake/tape"
)

// Hung is a bifold or sliding door over the new floor.
type Hung struct {
	Opening
	Left tape.Length // under its leaves, over the new floor
	Need tape.Length // for its guide, or to clear the floor
	Lift tape.Length // how far they are to be lifted, 0 not
}

func (w work) hung() []Hung {
	var out []Hung
	for _, o := range w.job.Openings {
		if o.Track.Told {
			out = append(out, w.hang(w.chosen(), o))
		}
	}
	return out
}

func (w work) hang(b Build, o Opening) Hung {
	h := Hung{Opening: o, Left: w.over(o.Track.Clear) - w.stack(b, o.Shim).Height()}
	h.Need = max(o.Track.Guide, w.rule(LeafLeast).Is)
	h.Lift = max(0, h.Need-h.Left)
	return h
}

func (w work) trackVerdicts() []ready.Verdict {
	var out []ready.Verdict
	for _, h := range w.hung() {
		r := w.rule(LeafLeast)
		v := ready.Verdict{Say: ready.Go, Rule: h.Track.Of + " door over the floor", Where: h.Name, Measured: w.say(h.Left) + " left under its leaves",
			Limit: "at least " + r.words, Source: r.Source}
		if h.Track.Guide > r.Is {
			v.Limit = "at least " + w.say(h.Track.Guide) + ", its guide on the floor"
		}
		if h.Left < 0 {
			v.Measured = "its leaves reach " + w.say(-h.Left) + " below the new floor"
		}
		switch {
		case h.Lift == 0:
		case h.Lift <= h.Track.Lifts:
			v.Say, v.Do = ready.Look, fmt.Sprintf("Turn its hangers or pivots up by %s of the %s they have, and screw the floor guide to the new floor.", w.up(h.Lift), w.say(h.Track.Lifts))
		default:
			v.Say = ready.Fix
			v.Do = fmt.Sprintf("It lacks %s", w.up(h.Lift-h.Track.Lifts))
			if h.Track.Lifts > 0 {
				v.Do += ", turned up by the " + w.say(h.Track.Lifts) + " that its hangers or pivots have"
			}
			v.Do += ": that comes off its leaves, where their maker lets them be cut, or its track is set higher. " + cables
		}
		out = append(out, v)
	}
	return out
}
