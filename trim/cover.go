package trim

import (
	"fmt"
	"strings"

	"strake/ready"
	"strake/room"
	"strake/tape"
)

// Gap is what the boards leave at one wall.
type Gap struct {
	Wall     room.Wall
	Least    tape.Length // the least and the greatest gap there; beside rows the taper is what they differ by
	Greatest tape.Length
	Beside   bool        // rows lie beside it, else they end at it
	Cover    tape.Length // base and shoe
}

// Covered is a wall's gap under what covers it.
type Covered struct {
	Gap
	Winter tape.Length // what the gap grows by until winter
	Laps   tape.Length // what is left of the cover; below 0 the gap shows
	Wanted tape.Length // the lap asked for
}

// covered are all walls.
func (w work) covered() []Covered {
	var out []Covered
	for _, g := range w.f.Walls {
		for _, c := range w.job.Covers {
			if c.Wall == g.Wall || c.Wall == (room.Wall{g.Wall[1], g.Wall[0]}) {
				g.Cover = c.Thickness
			}
		}
		c := Covered{Gap: g, Wanted: w.f.Limits.Lap.Value}
		if g.Beside {
			c.Winter = w.f.Winter
		}
		c.Laps = g.Cover - g.Greatest - c.Winter
		out = append(out, c)
	}
	return out
}

const srcCover = "cover is gap, taper and movement with a lap: common practice, no source. Movement: one board's, which shrinks towards its nails; along the boards wood hardly moves"

// coverVerdicts tell each wall whose cover is short, and the rest in one. Laps are
// judged where boards are laid: before, the gap is at most what leaves a whole one.
func (w work) coverVerdicts() []ready.Verdict {
	var out []ready.Verdict
	var well []string
	for _, c := range w.covered() {
		v := ready.Verdict{Say: ready.Look, Rule: "base and shoe over the gap", Where: "wall " + c.Wall.String(), Measured: w.gapWords(c),
			Limit: fmt.Sprintf("a lap of %s, %s", w.say(c.Wanted), w.f.Limits.Lap.Source), Source: srcCover}
		switch {
		case c.Laps >= c.Wanted, !w.f.Laid && c.Laps >= 0: // the range alone leaves the lap, and no more
			well = append(well, c.Wall.String())
			continue
		case c.Laps < 0:
			v.Say, v.Do = ready.Fix, fmt.Sprintf("%s of the gap would show: a shoe or a base that is thicker by %s, the drywall undercut so that the gap lies under it, or a smaller least gap if the maker allows it.", w.up(-c.Laps), w.up(c.Wanted-c.Laps))
		default:
			v.Do = fmt.Sprintf("It covers, and laps by %s only: a shoe thicker by %s gives the whole lap.", w.say(c.Laps), w.up(c.Wanted-c.Laps))
		}
		out = append(out, v)
	}
	if len(well) > 0 {
		out = append(out, ready.Verdict{Say: ready.Go, Rule: "base and shoe over the gap", Where: "walls " + strings.Join(well, ", "), Measured: "gap, taper and movement are covered", Limit: "a lap of " + w.say(w.f.Limits.Lap.Value), Source: srcCover})
	}
	return out
}

func (w work) gapWords(c Covered) string {
	how := "as laid"
	if !w.f.Laid {
		how = "as planned at most"
	}
	s := fmt.Sprintf("cover %s over a gap of %s %s", w.say(c.Cover), w.say(c.Greatest), how)
	if t := c.Greatest - c.Least; w.f.Laid && c.Beside && w.say(t) != w.say(0) {
		s += fmt.Sprintf(", %s of it taper", w.say(t))
	}
	if c.Winter > 0 {
		s += fmt.Sprintf(", and %s more by winter", w.say(c.Winter))
	}
	return s
}
