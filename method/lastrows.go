package method

import (
	"fmt"
	"slices"

	"strake/floor"
	"strake/row"
	"strake/words"
)

func lastRows(f facts) Card {
	return Card{Name: "last-rows", Title: "Close at the wall: the last rows",
		Why: "MEASURE FIRST: the last board is ripped to what is there, not to what was planned." + f.planned(),
		Steps: []string{
			"Where the mallet has no room, about " + f.say.Of(f.lim.NailerAhead.Value) + " before the wall (try yours), nail by hand through the tongue while the drill fits; the last row through the face.",
			"The row before the last nailed: measure from its shoulder (tongue not counted) square to the wall, at both ends, in the middle and at every end joint.",
			"Less the gap, " + f.gaps() + ", that is the board's width there: A ________ B ________ C ________",
			"Narrower than " + f.say.Rip(f.lim.NarrowestRip.Value) + " anywhere: glue the strip to the board before it and lay the two as one.",
			"Mark the widths on the face from the groove edge, join the marks, rip on the waste side: the tongue side falls off.",
			"Far end first, working toward you: groove over the tongue at a slant, down, end joint tapped shut. Two rows that do not go in one by one are joined first and go down together.",
			"Glue in the groove. Draw the row in with the pull bar every " + f.inches(16*inch) + ", wedges keep it. Face-nail " + f.faceEdge() + " from the wall edge: drilled, set, filled. All wedges out again.",
		},
		Caution: f.cautions("safety glasses, hearing protection, dust mask at the saw; knee pads",
			[]string{"The pull bar scratches: a scrap or tape under it."}, ripping),
		Sources: f.sources(false, srcLast, srcMeasure+"; "+srcFace, "room for the nailer: "+f.lim.NailerAhead.Source),
		Figures: []Figure{f.stationsFigure(), f.angleInFigure(), f.drawInFigure()},
	}
}

// planned says how wide the rows at closing walls are planned, in brackets: what is
// cut is measured.
func (f facts) planned() string {
	rips := slices.Clone(f.closing)
	slices.SortStableFunc(rips, func(a, b row.Rip) int { return rank(a) - rank(b) }) // walls first
	var out []string
	for _, r := range rips {
		s := fmt.Sprintf("row %d at %s (%s)", r.Row, r.Edge, words.RipWidths(r, f.say))
		if !slices.Contains(out, s) {
			out = append(out, s)
		}
	}
	if len(out) == 0 {
		return ""
	}
	return " Planned: " + few(out, 2) + "."
}

func rank(r row.Rip) int {
	if r.Kind == floor.Wall {
		return 0
	}
	return 1
}
