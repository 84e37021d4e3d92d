package subfloor

import (
	"fmt"
	"math"
	"slices"

	"strake/tape"
)

// Remedy is a way out, with how much higher the floor comes and what it takes.
type Remedy struct {
	What   string
	Height tape.Length
	Source string
	Takes  Takes
}

// Takes is what a remedy is bought by.
type Takes int

// The kinds. Nothing is told of what it takes to look from below, or to lay rows
// another way.
const (
	Nothing Takes = iota
	Half          // sheets of 1/2 in plywood over the floor
	Full          // sheets of 3/4 in plywood (23/32 in) over the floor
	Blocks        // 2x6 between the joists
)

// half and full are layers of plywood as they are laid over a panel.
const (
	halfIn = tape.Inch / 2
	fullIn = 23 * thirtySecond
)

// ThinRemedies are ways out where a panel so thick is too thin for its joists.
// None of them cuts, notches or planes a joist. Over the widest spacing the table
// asks for 23/32 in and 15/32 in together: under a thinner first layer the second
// is the thick one.
func ThinRemedies(p Panel, thick tape.Length) []Remedy {
	over := Remedy{"a second layer of 1/2 in plywood, screwed down, its joints half a panel off those under it", halfIn, "as quoted by Wood Floor Business", Half}
	if p.Upto > 20*tape.Inch && thick+slack < fullIn {
		over = Remedy{"a second layer of 3/4 in (23/32) plywood, screwed down, its joints half a panel off those under it, where the maker of the panels agrees: with 1/2 in over so thin a one the two do not come to the table's", fullIn, "APA hardwood floor table, its two layers the other way about", Full}
	}
	return []Remedy{over,
		{"support from below: blocking or joists between those there, by somebody who knows structure, at the price that he gives", 0, "as quoted by Wood Floor Business", Nothing},
	}
}

// AlongRemedies are ways out where rows lie along the joists.
func AlongRemedies() []Remedy {
	return []Remedy{
		{"a layer of 1/2 in plywood, its long side across the panels there", halfIn, "NWFA as quoted by This Old House", Half},
		{"blocks of 2x6 between the joists, every 24 in (another text: every 16 in), from below", 0, "NWFA as quoted by This Old House", Blocks},
		{"rows across the joists, or at an angle to them, which costs nothing", 0, "NWFA guidelines", Nothing},
	}
}

// What panels and blocks cost, in USD: from memory, rough, and of no one year.
// Screws and glue are not in it.
const (
	halfFrom, halfTo   = 20, 40 // a sheet of 1/2 in plywood, 4 by 8 ft
	fullFrom, fullTo   = 35, 60 // a sheet of 3/4 in
	blockFrom, blockTo = 0.7, 1.3
)

// sheetSqFt is a sheet of 4 by 8 ft, and spare what is added for cuts (a tenth,
// common practice, no source).
const sheetSqFt, spareForCuts = 32, 1.1

// Sheets is how many sheets of 4 by 8 ft an area in square feet takes.
func Sheets(sqft float64) int { return int(math.Ceil(sqft*spareForCuts/sheetSqFt - 1e-9)) }

// BlockFeet is how many feet of block an area takes, in square feet: every 24 in a
// line of it across all joists.
func BlockFeet(sqft float64) int { return int(math.Ceil(sqft*spareForCuts/2 - 1e-9)) }

// Cost is what a remedy takes and roughly costs over an area in square feet, ""
// where either is not known.
func (r Remedy) Cost(sqft float64) string {
	n, from, to, of := Sheets(sqft), halfFrom, halfTo, "sheets of 4 by 8 ft"
	switch {
	case sqft <= 0 || r.Takes == Nothing:
		return ""
	case r.Takes == Full:
		from, to = fullFrom, fullTo
	case r.Takes == Blocks:
		feet := float64(BlockFeet(sqft))
		return fmt.Sprintf("%.0f ft of 2x6, roughly %.0f to %.0f USD", feet, feet*blockFrom, feet*blockTo)
	}
	return fmt.Sprintf("%d %s, roughly %d to %d USD", n, of, n*from, n*to)
}

// priced says where the prices of remedies come from, "" where none bears one.
func priced(rs []Remedy, sqft float64) string {
	if !slices.ContainsFunc(rs, func(r Remedy) bool { return r.Cost(sqft) != "" }) {
		return ""
	}
	return " Prices are from memory, without screws: ask for those of today."
}
