package subfloor

import "strake/tape"

// Panel is what a subfloor needs over joists of a spacing.
type Panel struct {
	Upto         tape.Length // joists on centre
	Plywood, OSB tape.Length // least thickness
	APA          string      // performance category and span rating of the panel trade's own table
	How          string
	Source       string
}

const thirtySecond = tape.Inch / 32

// panels is the table by rising spacing. Thickness is as panels are sold: 23/32 in
// is called 3/4 in.
var panels = []Panel{
	{16 * tape.Inch, 5 * tape.Eighth, 23 * thirtySecond, "19/32, span rating 40/20 or 20 oc", "", "NWFA minimum as quoted by Wood Floor Business; APA hardwood floor table (Hardwood Floors, Feb 2018)"},
	{192 * tape.Inch / 10, 23 * thirtySecond, 23 * thirtySecond, "23/32, span rating 48/24 or 24 oc", "tongue-and-groove panels", "NWFA minimum from memory; APA hardwood floor table (Hardwood Floors, Feb 2018)"},
	{24 * tape.Inch, 7 * tape.Eighth, 7 * tape.Eighth, "7/8, span rating 60/32 or 32 oc, or two layers, 23/32 and 15/32, joints offset by half a panel", "glued and fastened", "NWFA minimum as quoted by Wood Floor Business; Weyerhaeuser technical note; APA hardwood floor table"},
}

// PanelFor is the row of the table for joists so far apart; ok is false beyond
// 24 in, where an engineer has to say.
func PanelFor(spacing tape.Length) (Panel, bool) {
	for _, p := range panels {
		if spacing <= p.Upto {
			return p, true
		}
	}
	return Panel{}, false
}

// slack is how much thinner than its name a panel may be sold: 5/8 in ones are
// made to 19/32, 3/4 to 23/32.
const slack = thirtySecond

// Enough tells whether a nailing base of a material is thick enough; sheathing of
// boards counts like plywood.
func (p Panel) Enough(of Material, thick tape.Length) bool { return thick+slack >= p.Needs(of) }

// Needs is the least thickness of a material.
func (p Panel) Needs(of Material) tape.Length {
	if of == OSB {
		return p.OSB
	}
	return p.Plywood
}

// Spare is how much can be sanded off a panel before it is too thin, 0 where it
// is no thicker than it has to be.
func (p Panel) Spare(of Material, thick tape.Length) tape.Length {
	return max(0, thick-p.Needs(of))
}

// Lean is how rows lie to the joists.
type Lean string

// The ways.
const (
	Across   Lean = "across"
	Diagonal Lean = "diagonal"
	Along    Lean = "along"
)

// LeanOf is how rows lie that make so many degrees with the joists: within 30
// along, beyond 60 across (common practice, no source: diagonal is 45).
func LeanOf(degrees float64) Lean {
	for degrees < 0 {
		degrees += 180
	}
	for degrees >= 180 {
		degrees -= 180
	}
	if degrees > 90 {
		degrees = 180 - degrees
	}
	switch {
	case degrees < 30:
		return Along
	case degrees <= 60:
		return Diagonal
	}
	return Across
}

// How far apart screws go that pull a squeaking panel down to its joists.
const (
	ScrewsApart = 6 * tape.Inch
	SrcScrews   = "common practice, no source: a screw every 6 in into each joist where it squeaks, through the panel and 1 in into the wood at least"
)

// Screws is how many screws a place takes that squeaks: long by wide, its joists
// so far apart across the length.
func Screws(long, wide, spacing tape.Length) int {
	joists := int(long/spacing) + 1
	each := int(wide/ScrewsApart) + 1
	return joists * each
}
