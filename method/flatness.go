package method

import (
	"fmt"
	"slices"
	"strings"

	"strake/section"
	"strake/sheet"
	"strake/subfloor"
)

func flatness(f facts) Card {
	s := f.Underfloor()
	return Card{Name: "check-flatness", Title: "Check how flat the subfloor is",
		Why: "A board over a dip sinks and squeaks, over a hump it rocks, and its joints open. Flat is what counts, not level: a slope is no fault." + f.flatRule(s),
		Steps: []string{
			"Screws and nail heads down, splinters and old staples off, swept. The sheet is not yet laid.",
			"Try the straightedge (" + f.edges(s) + "): turn it end for end in the same spot. The gap below must stay the same.",
			"Slide it slowly over the whole floor, along, across and on the slant, a step of about " + f.inches(24*inch) + " between. A lamp behind it shows every gap.",
			"It bridges a DIP: measure the largest gap with a wedge, a drill bit or a rule.",
			"It rocks on a HUMP: hold it so that both ends stand off alike, and measure the gap under one end.",
			"Draw round the place on the floor and write in it: - and the gap for a dip, + and the gap for a hump.",
			"Write it down with place, length of the straightedge, gap, how long and how wide. Put right what is over; read again until it is not.",
		},
		Caution: f.cautions("knee pads, closed shoes; gloves for staples; safety glasses and a respirator for what is sanded",
			[]string{"A floor that sags or bounces is a matter for an engineer. Joists are never planed, notched or cut."}, flattening),
		Sources: append(flatSources(s), srcHowTo),
		Figures: []Figure{f.dipFigure(), f.humpFigure(), f.slideFigure()},
	}
}

// flatRule is what the job holds its subfloor to.
func (f facts) flatRule(s subfloor.Survey) string {
	var out []string
	for _, l := range s.Rule.At {
		if len(out) == 3 {
			break
		}
		if s.Rule.Apart {
			out = append(out, fmt.Sprintf("%s between points %s apart", f.fine.Of(l.Gap), f.say.Of(l.Length)))
			continue
		}
		out = append(out, fmt.Sprintf("%s under %s", f.fine.Of(l.Gap), f.say.Of(l.Length)))
	}
	if len(out) == 0 {
		return ""
	}
	return " Here at most " + list(out) + " (" + s.By + ")."
}

// edges are the straightedges that the rule speaks of.
func (f facts) edges(s subfloor.Survey) string {
	if len(s.Rule.At) == 0 || s.Rule.Apart {
		return "a straight bar that you trust"
	}
	var out []string
	for _, l := range s.Rule.At {
		out = append(out, f.say.Of(l.Length))
	}
	return strings.Join(slices.Compact(out), " or ")
}

func flatSources(s subfloor.Survey) []string {
	if s.Rule.Source == "" {
		return nil
	}
	return []string{"flatness: " + s.Rule.Source}
}

// bumpy is a subfloor whose top goes through heights, from x 0 on evenly spaced
// over wide.
func (c pic) bumpy(wide, deep float64, height func(x float64) float64) {
	at := []section.XY{section.At(wide, -deep), section.At(0, -deep)}
	slices.Reverse(at)
	for i := range 61 {
		x := wide - wide*float64(i)/60
		at = append(at, section.At(x, height(x)))
	}
	c.Cut("", section.Plywood, at, 0, 1, len(at)-1)
}

// bell is a smooth hump about m, so wide to either side, so high.
func bell(m, wide, high float64) func(float64) float64 {
	return func(x float64) float64 {
		d := (x - m) / wide
		if d*d >= 1 {
			return 0
		}
		return high * (1 - d*d) * (1 - d*d)
	}
}

func (f facts) dipFigure() Figure {
	c := f.at(full)
	c.bumpy(84, 12, bell(42, 36, -4.5))
	c.tool(section.Rect(2, 0.2, 82, 6), 0, section.At(0, 0))
	c.dark(ring(0, 0, 17, 3.4, 17, -1.4), 0, section.At(34, -3.2))
	c.tool(section.Rect(17, -0.9, 24, 2.9), 0, section.At(34, -3.2))
	c.Word(section.At(20, 2), section.Middle, "straightedge")
	c.Arrow(section.At(64, 15), section.At(50, -0.4))
	c.Bold(section.At(62, 17), section.Middle, "measure here")
	return c.free("A DIP: it bridges", 0)
}

func (f facts) humpFigure() Figure {
	c := f.at(full)
	c.bumpy(84, 12, bell(42, 34, 4.5))
	c.tool(section.Rect(2, 4.7, 82, 10.5), 0, section.At(0, 0))
	c.Word(section.At(42, 6.6), section.Middle, "held level: alike at both ends")
	for _, x := range []float64{5, 79} {
		c.span(x, 0, 4.7)
	}
	c.Bold(section.At(16, 14), section.Middle, "measure here")
	c.Pointer(section.At(9, 13), section.At(5.6, 3))
	return c.free("A HUMP: it rocks", 0)
}

// slideFigure is how the straightedge goes over the floor, seen from above.
func (f facts) slideFigure() Figure {
	c := f.at(full)
	c.Area("", sheet.White, section.Heavy, section.Rect(0, 0, 104, 40)...)
	for i := range 4 {
		x := 6 + 13*float64(i)
		c.tool(section.Rect(x, 3, x+2.4, 37), 0, section.At(0, 0))
	}
	c.Arrow(section.At(26, 20), section.At(44, 20))
	for i := range 3 {
		y := 5 + 9*float64(i)
		c.tool(section.Rect(58, y, 92, y+2.4), 0, section.At(0, 0))
	}
	c.Arrow(section.At(97, 8), section.At(97, 24))
	c.Area("", sheet.White, section.Hidden, circle(section.At(84, 33), 5)...)
	c.Bold(section.At(84, 32), section.Middle, "+")
	c.Note(section.At(80.6, 35.6), "Marked on the floor: - for a dip, + for a hump, with the gap and how far it reaches")
	c.Note(section.At(75, 15.2), "Then across, then on the slant")
	return c.free("OVER THE WHOLE FLOOR, step by step (seen from above)", 58)
}
