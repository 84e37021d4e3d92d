package method

import (
	"fmt"
	"strings"

	"strake/fasten"
	"strake/tape"
)

// lastWord is said at the end of every card.
const lastWord = "Local code and licensed practice first, then the makers' instructions, then this card."

// The sources of the cards' figures.
const (
	common     = "common practice, no source"
	srcStart   = "first pressure of 70 psi: an installer's published page (kaprizhardwoodfloors.com); steps of 5 psi: " + common
	srcBlocks  = "blocks: " + common + "; backer away after five rows: NOFMA tip sheet in Floor Covering Installer, and kaprizhardwoodfloors.com"
	srcFinish  = "finish nails by gun closer together: kaprizhardwoodfloors.com"
	srcAngle   = "45 degrees and where a nail enters: " + common
	srcSpline  = "glued spline and reversed rows: NOFMA tip sheet in Floor Covering Installer, and kaprizhardwoodfloors.com; the rest: " + common
	srcLast    = "glue in the groove of the last rows, wedge or pull bar: thewoodfloordoctor.com and Hardwood Floors, Oct 2017; the rest: " + common
	srcHowTo   = "how it is done: " + common
	srcFace    = "face nails about 1/2 in from the edge, nearer where base and shoe hide them only so: " + common
	srcMeasure = "three stations: " + common
)

// wear is what is worn, as the first caution of a card.
func wear(what string) string { return "Wear " + what + "." }

// pick is what a card takes of the job's cautions: those of a task, of which say
// says which; "" all.
type pick struct{ task, say string }

// The picks of cards.
var (
	shooting   = pick{"nail", "Single shots"}
	keepOut    = pick{"nail", "kept free"}
	ripping    = pick{"saw", "riving knife"}
	holding    = pick{"saw", "supported"}
	inJambs    = pick{"undercut", ""}
	lifting    = pick{"carry and stack", ""}
	flattening = pick{"make the subfloor flat", ""}
	byFire     = pick{"fireplace", ""}
)

// cautions are those of the job that a card takes, between what is worn, what is
// special to the card and who decides.
func (f facts) cautions(worn string, special []string, picks ...pick) []string {
	out := append([]string{wear(worn)}, special...)
	for _, k := range picks {
		for _, c := range f.Cautions() {
			if c.Task == k.task && strings.Contains(c.Do, k.say) {
				out = append(out, c.Do)
			}
		}
	}
	return append(out, lastWord)
}

// sources are those of the figures on a card, the fasteners' among them where it
// speaks of them.
func (f facts) sources(fasteners bool, of ...string) []string {
	if fasteners && f.known {
		of = append([]string{"fasteners: " + f.use.Source}, of...)
	}
	return of
}

// nails are the fasteners with their length, such as 2" cleats.
func (f facts) nails() string {
	kind := f.use.Kind
	if kind == "" {
		kind = fasten.Cleat
	}
	if !f.known {
		return string(kind) + "s of the length the boards' maker names"
	}
	return f.say.Of(f.use.Length) + " " + string(kind) + "s"
}

// spaced is how far apart fasteners stand.
func (f facts) spaced() string {
	if !f.known {
		return "as far apart as the boards' maker says"
	}
	return fmt.Sprintf("every %s at most, %s from each end", f.say.Of(f.use.Spacing), f.say.Of(f.use.End))
}

// gaps is the gap at a wall: one figure, or from the least to the greatest.
func (f facts) gaps() string {
	a, b := f.say.Of(f.gap.Least), f.say.Of(f.gap.Greatest)
	if a == b {
		return a
	}
	return a + " to " + b
}

// inches is a length that is a trade figure in inches: in the job's unit, in mm as
// round as it is meant.
func (f facts) inches(l tape.Length) string {
	if f.imperial {
		return tape.Style{Unit: tape.UnitInch}.Of(l)
	}
	step := tape.Millimetre
	switch {
	case l > 10*tape.Inch:
		step *= 50
	case l > tape.Inch/2:
		step *= 5
	}
	return f.say.Of(tape.Nearest(l, step))
}

// list is a, b and c.
func list(of []string) string {
	if len(of) < 2 {
		return strings.Join(of, "")
	}
	return strings.Join(of[:len(of)-1], ", ") + " and " + of[len(of)-1]
}

// few is list, or after most of them how many more there are.
func few(of []string, most int) string {
	if len(of) <= most {
		return list(of)
	}
	return fmt.Sprintf("%s and %d more", strings.Join(of[:most], ", "), len(of)-most)
}
