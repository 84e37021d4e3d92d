package check

import (
	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/limits"
	"strake/plane"
	"strake/stock"
)

// Zones holds a lay to every rule. at gives, for each Zone.ID, the floor in
// that zone's frame, in ticks. A lay that cannot be read (a piece of no run, an
// outline that crosses itself) gets the findings of the rule "shape" alone:
// nothing can be measured on it. Of one made for another floor nothing else is
// told. No finding of level Stop means that the lay
// holds; notes name whatever was relaxed or exempt.
func Zones(l lay.Lay, at map[int]floor.Aligned, lim limits.Limits, b stock.Boards, pins ...lay.Pin) []finding.Finding {
	return held(l, at, nil, lim, b, pins)
}

// held is Zones with what boards must cover in zones where stepped rows may stay
// farther off a wall.
func held(l lay.Lay, at map[int]floor.Aligned, need map[int]plane.Region, lim limits.Limits, b stock.Boards, pins []lay.Pin) []finding.Finding {
	if fs := readable(l, at, b); len(fs) > 0 {
		return fs
	}
	s := survey(l, at, lim, b)
	s.pins = pins
	for _, z := range s.zones {
		z.need = need[z.ID]
	}
	if fs := s.otherFloor(); len(fs) > 0 {
		return fs
	}
	var out []finding.Finding
	for _, r := range Rules() {
		if r.hold != nil {
			out = append(out, r.hold(r, s)...)
		}
	}
	return plainly(out)
}

// Lay holds a lay to every rule, on the floor turned into each zone's frame,
// and to the pins of its job. See Zones.
func Lay(l lay.Lay, f floor.Floor, lim limits.Limits, b stock.Boards, pins ...lay.Pin) []finding.Finding {
	at, need := map[int]floor.Aligned{}, map[int]plane.Region{}
	less, any := lessCover(f, l, pins)
	for _, z := range l.Zones {
		if zoneFault(z) != "" { // readable says what is wrong
			continue
		}
		at[z.ID] = f.In(z.Dir)
		if any {
			need[z.ID] = less.In(z.Dir).Need
		}
	}
	return held(l, at, need, lim, b, pins)
}
