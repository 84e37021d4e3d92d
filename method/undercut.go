package method

import (
	"fmt"
	"slices"
)

func undercut(f facts) Card {
	sheet := "with the sheet under it, if one is laid"
	if f.under > 0 {
		sheet = "on the sheet (" + f.fine.Of(f.under) + ") that lies under the floor"
	}
	if slices.ContainsFunc(f.jambs, func(j jamb) bool { return j.lift > 0 }) {
		sheet = "on all that will lie under it there (panel, shim, sheet)"
	}
	return Card{Name: "undercut-a-jamb", Title: "Undercut a jamb",
		Why: "Boards that pass under the jamb and its casing need no fitting round them, and move unseen. " + f.jambWords(),
		Steps: []string{
			"Off with the base beside it, the door leaf out of its hinges.",
			"Lay a scrap of this floor's board, face up, " + sheet + ", right at the jamb. The scrap sets the height, not the tape: the subfloor is not everywhere alike.",
			"Lay the saw flat on the scrap, a sheet of card between as play. Mark the line round jamb, stop and casing.",
			"Saw level, the blade flat on the scrap all the time: casing first, then the jamb. " + f.deepWords(),
			"Stop when the saw is through to the depth. Knock the piece out with a chisel, flat side up. Vacuum.",
			"Slide the scrap in: it goes under without force and without a gap to see. Binds: another stroke on card. Never force a board under: it lifts the jamb.",
			"The boards end behind the face of the casing by " + f.say.Rip(-f.lim.JambGreatest.Value) + " to " + f.say.Rip(-f.lim.JambLeast.Value) + ", and do not touch what stands in the wall.",
		},
		Caution: f.cautions("safety glasses, hearing protection, dust mask; knee pads",
			[]string{"Old paint may hold lead: have it tested before it is sawn."}, inJambs),
		Sources: f.sources(false, "how deep boards pass under: "+f.lim.JambLeast.Source, srcHowTo),
		Figures: []Figure{f.jambSawFigure(), f.jambSlidFigure()},
	}
}

// jambWords are the heights of the job.
func (f facts) jambWords() string {
	var out []string
	for _, j := range f.jambs {
		if j.height <= 0 {
			out = append(out, j.name)
			continue
		}
		out = append(out, fmt.Sprintf("%s, %s over the subfloor", j.name, f.fine.Of(j.height)))
	}
	return "Here: " + few(out, 4) + "."
}

// deepWords say where the floor stops inside the wall.
func (f facts) deepWords() string {
	var out []string
	for _, j := range f.jambs {
		if j.deep > 0 {
			out = append(out, f.say.Of(j.deep)+" at "+j.name)
		}
	}
	if len(out) == 0 {
		return "The floor goes on through the doorway: saw the jamb through."
	}
	return "Where the floor stops inside the wall saw only so deep: " + few(out, 3) + "."
}
