package method

import (
	"strake/tape"
	"strake/words"
)

func splineTurn(f facts) Card {
	how := "Cut the spline to the length of the row"
	if l := words.SplineLength(f.Plan); l > 0 {
		how = "The plan wants " + f.say.Of(l) + " of spline in all. Cut it to the length of the row"
	}
	return Card{Name: "spline-turn", Title: "Turn the rows round with a spline",
		Why: "Behind the start row boards are laid the other way, groove against groove. A spline (slip tongue) glued into the laid groove gives them a tongue to start from.",
		Steps: []string{
			"The rows ahead are nailed, five at least. Take the backer away; vacuum the start row's groove.",
			how + ", no end of it at an end joint. Try it dry: half goes in, half stands out, here about " + f.fine.Of(f.tongue) + ".",
			"A thin bead of glue at the back of the laid groove; none on the half that stands out, unless the maker says so.",
			"Tap the spline in with a scrap till it stands proud evenly. Wipe off at once what is pressed out.",
			"Turn the first board end for end: its groove goes on the spline, its tongue faces the other way, and its end tongue changes sides (arrows on the row cards).",
			"Push it home with a tapping block on its tongue: joint shut, faces level.",
			"Nail it through its own tongue, now on the far side, and lay on from there as usual.",
			"No wedges near it till the glue has had its time: ________ minutes by its label.",
		},
		Caution: f.cautions("safety glasses and hearing protection; gloves for glue; knee pads",
			[]string{"Glue: windows open, no flame near it, gloves; its label goes before all.", "Check the start row once more before the first turned board: it cannot be moved afterwards."}, keepOut),
		Sources: f.sources(false, srcSpline),
		Figures: []Figure{f.glueFigure(), f.splineFigure(), f.turnPlan(), f.turnedFigure()},
	}
}

const inch = tape.Inch
