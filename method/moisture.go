package method

import (
	"fmt"

	"strake/moisture"
	"strake/section"
	"strake/sheet"
)

func readMoisture(f facts) Card {
	sub, boards := f.ReadingsWanted()
	species := f.Job.Boards.Species
	if species == "" {
		species = "the boards' species"
	}
	below := fmt.Sprintf("Subfloor: at least %d readings over the whole of it, also along outside walls and over what is damp below. The meter is set to what the subfloor is made of.", sub)
	if f.slab {
		below = fmt.Sprintf("What the boards are nailed into: at least %d readings, the meter set to what it is. The slab under it is tested by probes or dishes, not with a wood meter.", sub)
	}
	return Card{Name: "read-moisture", Title: "Read moisture with a meter",
		Why: "Boards laid too wet open, laid too dry they buckle. No number of days tells when they are ready: the meter does. " + f.moistureRule(),
		Steps: []string{
			"Heating or cooling runs as it will when people live there. The meter's battery and its check block are right.",
			"Set it to " + species + ", and for the warmth of the wood as its leaflet says. A wrong setting reads points too high or low.",
			"Pin meter: both pins in a line along the grain, pressed in fully, in the middle of the width, well away from ends, edges and knots. Pinless: its whole plate flat on wood, no metal below.",
			fmt.Sprintf("Boards: at least %d, from several cartons and from the middle of each.", boards),
			below,
			"Write each reading with its place on the moisture form. Add them up and divide by how many: the mean counts. A single one far off is looked into.",
			"Over a limit: do not lay, also if the day is fixed. Find out why, wait, read again.",
		},
		Caution: f.cautions("gloves for cartons, knee pads",
			[]string{"Pins are sharp and leave holes: read where it does not show.", "Standing water, mould or a wet crawl space: a specialist first."}),
		Sources: []string{"how many readings: NWFA practice as Hardwood Floors gives it (Aug 2017, Sep 2019)", "how it is read: " + common + "; the meter's leaflet first"},
		Figures: []Figure{f.pinMeterFigure(), f.plateFigure(), f.pinsFigure(), f.spotsFigure()},
	}
}

// moistureRule are the limits that hold here.
func (f facts) moistureRule() string {
	l := f.Job.Moisture.Limits
	m, mu := moisture.Guides.Rule(l, moisture.BoardsMost)
	d, du := moisture.DifferenceOf(l, f.face)
	if f.slab {
		return fmt.Sprintf("Limit here: boards %s.", m.Words(mu))
	}
	s, su := moisture.Guides.Rule(l, moisture.SubfloorMost)
	return fmt.Sprintf("Limits here: boards at most %s; subfloor at most %s; means at most %s apart (%s).", amount(m.Is, mu), amount(s.Is, su), amount(d.Is, du), d.By)
}

func amount(x float64, unit string) string { return fmt.Sprintf("%g %s", x, unit) }

// meter is a hand meter whose underside's middle is at a place.
func (c pic) meter(at section.XY) {
	c.tool(ring(-11, 0, 11, 0, 13, 4, 13, 13, 9, 16, -9, 16, -13, 13, -13, 4), 0, at)
	c.tool(ring(-7, 6.5, 7, 6.5, 7, 13, -7, 13), 0, at)
	c.Word(at.Add(section.At(0, 8.4)), section.Middle, "%")
}

// pinMeterFigure is a meter with pins, pressed in along the grain.
func (f facts) pinMeterFigure() Figure {
	c := f.at(full)
	c.Cut("", section.Grain, section.Rect(0, 0, 78, 9), 1, 3)
	at := section.At(39, 13)
	for _, x := range []float64{-5, 5} {
		c.dark(ring(x-0.6, 0, x-0.6, -6, x, -7.6, x+0.6, -6, x+0.6, 0), 0, at)
	}
	c.meter(at)
	c.Arrow(section.At(64, 26), section.At(64, 14))
	c.Word(section.At(66, 28), section.Middle, "press fully in")
	return c.free("WITH PINS: in line with the grain", 0)
}

// plateFigure is a meter with a plate, flat on a board.
func (f facts) plateFigure() Figure {
	c := f.at(full)
	c.Cut("", section.Grain, section.Rect(0, 0, 78, 9), 1, 3)
	c.dark(ring(-11, 0, 11, 0, 11, 1, -11, 1), 0, section.At(39, 9.2))
	c.meter(section.At(39, 10.2))
	c.Word(section.At(64, 20), section.Middle, "plate flat,")
	c.Word(section.At(64, 15.5), section.Middle, "no metal below")
	return c.free("PINLESS: whole plate on the wood", 0)
}

// pinsFigure is where a board is read.
func (f facts) pinsFigure() Figure {
	c := f.at(full)
	const x1, y1 = 116.0, 22.0
	c.Faced("", section.Grain, section.Rect(0, 0, x1, y1))
	m := section.At(x1/2, y1/2)
	for _, s := range []float64{-1, 1} {
		c.Area("", sheet.Black, section.Light, circle(m.Add(section.At(3*s, 0)), 1.1)...)
	}
	c.tick(m.Add(section.At(0, 6.4)))
	for _, at := range []section.XY{section.At(6, y1/2), section.At(x1-6, y1/2), section.At(28, 3.2)} {
		c.cross(at)
	}
	c.Note(m.Add(section.At(3, 0)), "Both pins in line with the grain, middle of the width")
	c.Note(section.At(x1-4.5, y1/2-1.4), "Not near an end")
	c.Note(section.At(30, 2.4), "Not at an edge")
	return c.free("ON A BOARD (seen from above)", 42)
}

// spotsFigure is where a floor is read.
func (f facts) spotsFigure() Figure {
	c := f.at(full)
	const x1, y1 = 116.0, 46.0
	c.Area("", sheet.White, section.Heavy, section.Rect(0, 0, x1, y1)...)
	spot := func(x, y float64) { c.Area("", sheet.Black, section.Light, circle(section.At(x, y), 1.1)...) }
	for i := range 5 {
		for k := range 3 {
			if i == 4 && k == 2 {
				continue
			}
			spot(5+22*float64(i), 5+17.5*float64(k))
		}
	}
	for i := range 4 { // cartons, one open
		c.Faced("", section.Plain, section.Rect(88+float64(i), 28+3.6*float64(i), 110+float64(i), 31.6+3.6*float64(i)))
		spot(99+float64(i), 29.8+3.6*float64(i))
	}
	c.Note(section.At(27, 22.5), "Subfloor: over the whole of it")
	c.Note(section.At(71, 5), "Also along outside walls")
	c.Note(section.At(100, 33.4), "Boards: from several cartons")
	return c.free("IN THE ROOM (seen from above)", 42)
}
