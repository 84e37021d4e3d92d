package method

import (
	"fmt"

	"strake/tape"
)

func tryNailer(f facts) Card {
	gauge := ""
	if f.gauge != "" {
		gauge = " (" + f.gauge + ", if the boards' maker names no other)"
	}
	load := fmt.Sprintf("Fit the foot for boards %s thick and load %s%s.", f.say.Of(f.thick), f.nails(), gauge)
	return Card{Name: "try-the-nailer", Title: "Try the nailer on scrap",
		Why: "A head that stands proud keeps the next board away; one driven too deep splits the tongue and holds nothing. Pressure and foot are found on scrap, before row 1.",
		Steps: []string{
			"Fix a piece of the same subfloor, with the same sheet on it. Lay a board of this floor on it.",
			load,
			"Begin with the pressure that the nailer's maker gives; where none is given with 70 psi (5 bar), then 5 psi (0.3 bar) more at a time.",
			"Foot flat on the face, nose in the corner above the tongue. Drive three: " + f.spaced() + ".",
			"Hold each head against the drawings. Proud: more pressure. Sunk, or the tongue split or crushed: less pressure, or another foot.",
			"Push the groove of a scrap over the tongue by hand: it must close, with no hump at a head.",
			f.tips(),
			"Write down: pressure __________ foot __________ date __________. Try again each morning and after a change of boards, fasteners or hose.",
		},
		Caution: f.cautions("safety glasses, hearing protection (who helps too), closed shoes, knee pads",
			[]string{"The tongue splits at every setting: stop, and ask the boards' maker."}, shooting, keepOut),
		Sources: f.sources(true, srcStart, srcAngle),
		Figures: []Figure{f.headFigure(sunk), f.headFigure(seated), f.headFigure(proud), f.nailerFigure()},
	}
}

// tips says where the tips end.
func (f facts) tips() string {
	if !f.known || f.use.Tip(f.under) <= 0 {
		return "Turn the scrap over and see how far the tips come through: no pipe, cable or heating may lie there."
	}
	down := "Turn the scrap over: tips end about " + f.fine.Of(f.use.Tip(f.under)) + " below the subfloor's top"
	if out := f.use.Out(f.under, f.base); f.base > 0 && out > 0 {
		down += ", " + f.fine.Of(out) + " out of its underside"
	}
	return down + ": no pipe, cable or heating may lie there."
}

// head is how a fastener was driven.
type head int

const (
	sunk head = iota
	seated
	proud
)

// over is how far a head lies off its seat along the fastener, above 0 outward.
func (h head) over() tape.Length {
	switch h {
	case sunk:
		return -tape.Inch * 3 / 16
	case proud:
		return tape.Inch * 3 / 16
	}
	return 0
}

func (h head) title() string {
	return map[head]string{sunk: "TOO DEEP: less pressure", seated: "RIGHT", proud: "TOO PROUD: more pressure"}[h]
}
