package trim

import (
	"fmt"
	"strings"

	"strake/ready"
	"strake/tape"
)

// Swing is a door leaf over the new floor.
type Swing struct {
	Opening
	Under tape.Length // the highest of what it passes or stands over, over the subfloor
	Left  tape.Length // what is left under it; below 0 it does not open
	Cut   tape.Length // off its bottom, 0 none
	Known bool        // Under is known: not where it opens over a floor of no told height
}

// swings are the leaves of the job.
func (w work) swings() []Swing {
	var out []Swing
	for _, o := range w.job.Openings {
		if o.Leaf.Told {
			out = append(out, w.swing(w.chosen(), o))
		}
	}
	return out
}

// swing is a leaf over a build-up.
func (w work) swing(b Build, o Opening) Swing {
	here := w.stack(b, o.Shim).Height()
	s := Swing{Opening: o, Known: true, Under: here}
	switch {
	case o.Leaf.Beyond && o.Known:
		s.Under = w.beyond(o)
	case o.Leaf.Beyond && !w.inside(o.Name):
		s.Known = false
		return s
	}
	if o.Leaf.Strip > 0 {
		s.Under = here + o.Leaf.Strip
		if o.Known {
			s.Under = max(s.Under, w.beyond(o)+o.Leaf.Strip)
		}
	}
	s.Left = w.over(o.Leaf.Clear) - s.Under
	if s.Left < w.rule(LeafLeast).Is {
		s.Cut = max(w.rule(LeafClear).Is, w.rule(LeafLeast).Is) - s.Left
	}
	return s
}

func (w work) leafVerdicts() []ready.Verdict {
	var out []ready.Verdict
	for _, s := range w.swings() {
		out = append(out, w.leaf(s))
	}
	return out
}

// cables is said wherever a leaf or a frame is cut.
const cables = "Look for cables and alarm contacts in leaf and frame before you saw."

func (w work) leaf(s Swing) ready.Verdict {
	r, aim := w.rule(LeafLeast), w.rule(LeafClear)
	v := ready.Verdict{Say: ready.Go, Rule: "door leaf over the floor", Where: s.Name, Limit: "at least " + r.words, Source: r.Source}
	if !s.Known {
		v.Say, v.Measured, v.Do = ready.Look, "it opens over a floor whose height is not told", "Write height under heights, openings."
		return v
	}
	v.Measured = w.say(s.Left) + " left under it"
	if s.Left < 0 {
		v.Measured = w.say(-s.Left) + " too low to open"
	}
	if s.Cut == 0 {
		v.Do = join(r.stricter, w.stands(s))
		return v
	}
	v.Say = ready.Fix
	if no := s.Leaf.Uncut(); no != "" {
		v.Holds, v.Do = true, no
		return v
	}
	v.Do = fmt.Sprintf("Cut %s off its bottom, for %s over the floor (%s). Lay boards and a strip under it and mark it in place: floors are not level under a swing. %s", w.up(s.Cut), w.say(aim.Is), aim.By, cables)
	if s.Leaf.Of == "hollow-core" {
		v.Do += w.rail(s, &v)
	}
	v.Do = join(v.Do, w.stands(s))
	return v
}

// stands reminds of a strip whose height is not told.
func (w work) stands(s Swing) string {
	if s.Leaf.Strip > 0 || !s.Opening.Known || w.strip(s.Covering, w.diff(w.chosen(), s.Opening)) == None {
		return ""
	}
	return "The strip under it stands up over the floors: write strip under leaf once it is chosen."
}

// join is two sentences, either of which may be missing.
func join(a, b string) string { return strings.TrimSpace(a + " " + b) }

// Uncut says why a leaf is not cut, "" where it may be.
func (l Leaf) Uncut() string {
	switch {
	case l.Rated:
		return "A fire-rated leaf is not cut on site: ask its maker, or the authority that has it rated. A lower build-up, or another leaf."
	case l.Exterior:
		return "An exterior leaf is not cut: it would not seal any more. Ask its maker; a lower build-up inside its swing, or a higher sill and another leaf."
	case l.Of == "steel" || l.Of == "glass":
		return "A leaf of " + l.Of + " is not cut on site: ask its maker. A lower build-up, hinges set higher where the head leaves room, or another leaf."
	}
	return ""
}

// rail says what limits the cut of a hollow-core leaf.
func (w work) rail(s Swing, v *ready.Verdict) string {
	switch most := s.Leaf.CutMost; {
	case most == 0:
		return " It is hollow: only the solid rail at its bottom may be cut. Ask its maker how much, and write cut_most."
	case s.Cut > most:
		v.Limit += "; its maker lets " + w.say(most) + " be cut off"
		return " That is more than its maker lets be cut: the rail has to be glued in again after the cut, or another leaf."
	default:
		v.Limit += "; its maker lets " + w.say(most) + " be cut off"
		return ""
	}
}
