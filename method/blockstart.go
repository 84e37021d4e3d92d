package method

func blockStart(f facts) Card {
	return Card{Name: "block-the-start-row", Title: "Block behind the start row",
		Why: "Every blow of the mallet drives the first rows back toward the wall. If they creep, all rows after them are off the line.",
		Steps: []string{
			"Check the start line first: read its distances again at both ends and in the middle.",
			"Take the straightest, longest boards. Set the front edge of the start row, its tongue not counted, to the line: all along, not only at the ends.",
			"Wall close behind: drive blocks as thick as the gap found there (" + f.gaps() + ") between the row and the bottom plate of the wall, one at each board end and one about every " + f.inches(24*inch) + " between. Plasterboard alone gives way.",
			"Wall far off, hollow or crooked: screw a straight board to the subfloor, its edge tight against the back of the row. Drill for the screws.",
			"Fasten the row: face nails along the back, by hand through the tongue (card: Nail by hand). The floor nailer comes later, when rows are broad enough to take its blow.",
			"Stretch a string over the line. At each end joint the row must touch it. Put right now what does not.",
			"When five rows are nailed, read the line again. Then take out every block and the backer: the gap stays empty.",
		},
		Caution: f.cautions("safety glasses; hearing protection when drilling or nailing by gun; knee pads",
			[]string{"A block left in the gap holds the floor when it swells: count them in, count them out."}, keepOut),
		Sources: f.sources(false, srcBlocks),
		Figures: []Figure{f.blocksFigure(), f.backerFigure()},
	}
}
