package check

import (
	"math/big"

	"strake/finding"
	"strake/plane"
	"strake/tape"
)

var _ = declare("zones",
	"The zones together make the floor, and no two share any of it, to 3 ticks x the length of the zone lines.",
	holdZones)

// holdZones turns all outlines into the first zone's frame. Zone lines are
// rounded in each frame and once more in turning, see overlapBetween. Along
// the floor's own edges an outline is drawn out by a few ticks first, so that
// rounding there is not taken for a piece of floor without a zone.
func holdZones(r Rule, s *site) []finding.Finding {
	if len(s.zones[0].Outline) == 0 {
		return nil // one zone, the whole floor
	}
	base := s.zones[0]
	var outlines []plane.Region
	var lines tape.Length
	for _, z := range s.zones {
		outlines = append(outlines, turn{z.Dir, base.Dir}.region(z.spread(4)))
		lines += z.lines()
	}
	missing, twice := shares(base.at.Bare, outlines)
	limit := rat(3 * (lines + 1) / 2)
	var out []finding.Finding
	for _, v := range []struct {
		a    *big.Rat
		what string
	}{{missing, " in no zone"}, {twice, " in two zones"}} {
		if v.a.Cmp(limit) > 0 {
			f := r.stop("floor")
			f.Measured, f.Limit = s.sayArea(v.a)+v.what, s.sayArea(limit)
			f.Do = "Draw the zone lines so that the zones share them."
			out = append(out, f)
		}
	}
	return out
}

// shares is how much of the floor lies in none of the outlines, and in two.
func shares(of plane.Region, outlines []plane.Region) (missing, twice *big.Rat) {
	missing, twice = area(of), new(big.Rat)
	for i, g := range outlines {
		missing.Sub(missing, common(of, g))
		for _, h := range outlines[i+1:] {
			twice.Add(twice, common(of, g, h))
		}
	}
	return missing.Add(missing, twice), twice
}

// spread is the zone's outline drawn out by d past the floor's edges, zone
// lines left where they are.
func (z *zone) spread(d tape.Length) plane.Region {
	var g plane.Region
	for _, r := range z.Outline {
		es := sides(r)
		off := make([]tape.Length, len(es))
		for i, e := range es {
			if z.lineLength(e) == 0 {
				off[i] = -d
			}
		}
		g = append(g, shift(es, off))
	}
	return g
}
