package method

import "fmt"

func scribe(f facts) Card {
	at := ""
	if len(f.stone) > 0 {
		at = fmt.Sprintf(" Here: %s, with a joint of %s at row ends and %s beside the rows.", few(f.stone, 2), f.say.Rip(f.lim.FlushEnd.Value), f.say.Rip(f.lim.FlushSide.Value))
	}
	return Card{Name: "scribe", Title: "Scribe to a wall or stone that is not straight",
		Why: "Stone, brick and old walls wave. The board's edge copies the wave, so that the gap is even and the joint to the last row stays straight." + at,
		Steps: []string{
			"Lay the board to be fitted on top of the last row, touching the wall at the wall's nearest point.",
			"Make it parallel to the row: the overlap of its groove edge over the row's shoulder is the same at both ends. Hold it there with weights. More overlap than the scriber opens: rip the board nearer to its width first.",
			"Set the scriber to this overlap plus the gap that is wanted (at walls here " + f.gaps() + "). Lock it; do not touch the setting again.",
			"Draw it along the wall, its two points always square to the row, the pencil on the board. Tape on the face makes the line easy to see.",
			"Saw just outside the line, blade leaning so that the underside is shorter. Pare or sand to the line.",
			"Try it in place. Where it touches first, mark and pare again. Twice is usual.",
			"A row end at stone goes the same way: overlap along the row instead of across it. A deep profile (brick, moulding): make a card template first, try it, and draw round it.",
			"The joint beside stone or tile is filled with what stays soft, never with grout, where the maker asks for it.",
		},
		Caution: f.cautions("safety glasses, hearing protection and a dust mask when sawing; knee pads",
			[]string{"Clamp the board for the jigsaw; both hands behind the blade.", "Stone and brick are not ground to fit: that is silica dust, and a hearth may be part of what keeps fire from wood."}, holding, byFire),
		Sources: f.sources(false, srcHowTo),
		Figures: []Figure{f.scribeFigure(), f.fittedFigure()},
	}
}
