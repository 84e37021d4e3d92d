package method

func pullTight(f facts) Card {
	return Card{Name: "pull-a-row-tight", Title: "Pull a row tight",
		Why: "Boards are never quite straight. A joint that is open when it is nailed stays open, and the rows after it run off the line.",
		Steps: []string{
			"Look along the board. Bent more than two hands push straight: cut it short, or keep it for an end.",
			"Sweep groove and tongue clean. A chip in the joint cannot be pulled out of it.",
			"Tapping block: a scrap with its groove over the tongue. Strike the scrap, never the tongue; light blows, from the end that is tight already.",
			"A bent board: nail it where it is tight and work along from there, closing the joint just ahead of each nail.",
			"Too stiff for that: screw a block to the subfloor a hand ahead of the row; a pair of wedges between it and a scrap on the tongue. Drive them together till the joint shuts, nail, loosen. Or a chisel driven upright into the subfloor, levered against the scrap.",
			"At a wall: hook the pull bar over the board's edge and strike its other end. A flat bar levers against a block over a stud, never against plasterboard.",
			"Shut means that a business card does not go in. Nail " + f.spaced() + ".",
		},
		Caution: f.cautions("safety glasses (wedges and bars fly); gloves for the bars, none near a nailer; knee pads",
			[]string{"No finger between tongue and groove, nor behind a wedge or a bar under load.", "A board that closes only with great force is left out: it splits, or pulls its neighbours apart later."}, keepOut),
		Sources: f.sources(true, srcHowTo),
		Figures: []Figure{f.tapFigure(), f.barFigure(), f.wedgeFigure()},
	}
}
