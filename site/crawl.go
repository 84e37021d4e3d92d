package site

import (
	"strake/ready"
	"strake/tape"
)

// crawl looks below the floor: standing water first.
func (s Site) crawl(f Floor) []ready.Verdict {
	c := s.Crawl
	if !c.Told {
		return nil
	}
	var out []ready.Verdict
	add := func(v ready.Verdict) {
		v.Where = "crawl space"
		out = append(out, v)
	}
	switch c.Water {
	case Yes:
		add(ready.Verdict{Say: ready.Fix, Rule: "standing water", Measured: "yes", Limit: "none", Holds: true,
			Do: "Lay nothing above it. Have it drained and its way in closed by somebody who does that, and visible mould looked at; then dry the space and read the subfloor again.", Source: srcCrawl})
	case "":
		add(ready.Verdict{Say: ready.Look, Rule: "standing water", Measured: "not answered", Do: "Look into the crawl space, best after rain, and write water: no or yes under site, crawl.", Source: common})
	}
	switch c.Cover {
	case No:
		add(ready.Verdict{Say: ready.Fix, Rule: "ground cover", Measured: "not all of the ground", Limit: "all of the ground", Holds: true,
			Do: "Cover all of it with polyethylene of at least 6 mil (0.15 mm), laps of 6 in (150 mm), as far up the walls and sealed there.", Source: srcCrawl})
	case "":
		add(ready.Verdict{Say: ready.Look, Rule: "ground cover", Measured: "not answered", Do: "Is all the ground covered by a sheet? Write cover: yes or no under site, crawl.", Source: common})
	default:
		add(ready.Verdict{Say: ready.Go, Rule: "ground cover", Measured: "all of the ground", Limit: "all of the ground", Source: srcCrawl})
	}
	imperial := f.Style.Unit.Imperial()
	if is, unit := Guides.Rule(s.Limits, CrawlHeight); c.Height > 0 {
		r, unit := is.In(imperial, unit)
		v := ready.Verdict{Say: ready.Go, Rule: "height below the joists", Measured: f.Style.Of(c.Height), Limit: "at least " + r.Words(unit), Source: r.Source}
		if c.Height.Inches() < is.Is-1e-9 {
			v.Say, v.Do = ready.Fix, "So low a space stays damp and cannot be looked into. Ask somebody licensed what can be done about it; local code has a figure of its own."
		}
		add(v)
	}
	if c.Vents > 0 && f.SqFt > 0 && c.Closed != Yes {
		want := s.vents(f.SqFt)
		v := ready.Verdict{Say: ready.Go, Rule: "vents", Measured: f.Style.Area(c.Vents), Limit: "at least " + f.Style.Area(tape.SquareFeet(want)) + " for " + f.Style.Area(tape.SquareFeet(f.SqFt)) + " of floor", Source: srcVents}
		if c.Vents.SquareFeet() < want-1e-6 {
			v.Say, v.Do = ready.Fix, "Open more, one within "+near(imperial)+" of each corner; or have the space closed and conditioned, as local code allows. The area taken is that of this floor: the space may be larger."
		}
		add(v)
	}
	return out
}

// vents is the square feet of openings asked for: 1 for 150 of floor, 1 for
// 1,500 where the ground is covered.
func (s Site) vents(sqft float64) float64 {
	if s.Crawl.Cover == Yes {
		return sqft / 1500
	}
	return sqft / 150
}

// near is how far from a corner a vent stands at most.
func near(imperial bool) string {
	if imperial {
		return "3 ft"
	}
	return "0.9 m"
}
