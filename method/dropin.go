package method

func dropIn(f facts) Card {
	return Card{Name: "drop-in-board", Title: "Drop a board in from above",
		Why: "Where boards lie on both sides already, no board slides in. With the lower lip of its groove sawn off it drops in: for a board that is replaced, and for one that closes a gap between two rows.",
		Steps: []string{
			"Replacing a board: saw set to its thickness, " + f.say.Of(f.thick) + ", no deeper. Two cuts along its middle, to about " + f.inches(inch/2) + " from its ends. Split the middle out with a chisel, then ease out the sides: the neighbours' tongue and groove stay whole.",
			"Pull or punch down every nail. Vacuum. The sheet below is patched if it was cut.",
			"Cut the new board to the length of the hole, a hair less: a card goes in at one end.",
			"Saw or plane off the lower lip of its groove, and of its end groove: only the lip, all of it, right up to the back of the groove. Where an end tongue meets a tongue, that comes off too.",
			"Try it dry: tongue in first, held at a slant, then down. It must drop by hand. Mark what binds and pare it.",
			"Glue: a bead along the neighbour's tongue, one in the neighbour's groove, and on the subfloor under the board where the boards' maker allows it.",
			"Drop it, tap it down over a scrap. Face-nail both ends and along the lip side: drilled, set, filled. Weights on it till the glue has set: ________ hours by its label.",
		},
		Caution: f.cautions("safety glasses, hearing protection, dust mask; knee pads",
			[]string{"A plunge cut kicks: both hands on the saw, guard working. Nails lie along the tongue edge.",
				"Below the saw may lie pipes, cables or heating: depth tried on scrap first."}, holding),
		Sources: f.sources(false, srcHowTo),
		Figures: []Figure{f.lipFigure(), f.tiltFigure(), f.droppedFigure()},
	}
}
