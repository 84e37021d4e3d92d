// Package wood is how flooring moves: species with their coefficients, and
// what a change of moisture does to a width.
//
// Red oak changes by 0.00369 of its width for each point of moisture content
// between 6 and 14 %. A 5 in board that goes from 6 to 9 % is wider by
// 5 x 0.00369 x 3 = 0.055 in; a floor of 15 ft across the boards wants
// 180 x 0.00369 = 0.66 in for each point.
package wood

import (
	"sort"
	"strings"

	"strake/tape"
)

// Species is a wood with its change coefficient for plain-sawn (tangential)
// boards: the part of its width that it changes by for each point of moisture
// content, from 6 to 14 %.
type Species struct {
	Name       string
	Tangential float64
	Source     string
}

const (
	handbook = "Wood Handbook (FPL-GTR-190), table 13-5"
	trade    = "NWFA A200 coefficients, as reprinted by a trade magazine"
)

// table is by the first words of the name; the longest match counts.
var table = []Species{
	{"ash", 0.00274, handbook}, {"beech", 0.00431, handbook}, {"birch", 0.00338, handbook},
	{"cherry", 0.00248, handbook}, {"hickory", 0.00411, trade}, {"pecan", 0.00315, handbook},
	{"maple", 0.00353, handbook}, {"red maple", 0.00289, handbook},
	{"red oak", 0.00369, handbook}, {"white oak", 0.00365, handbook}, {"oak", 0.00369, handbook + ", red oak"},
	{"walnut", 0.00274, handbook}, {"black locust", 0.00252, handbook}, {"locust", 0.00252, handbook},
	{"douglas fir", 0.00267, trade}, {"heart pine", 0.00263, trade}, {"longleaf pine", 0.00263, trade},
	{"southern yellow pine", 0.00265, trade}, {"pine", 0.00265, trade + ", southern yellow pine"},
	{"teak", 0.00186, trade}, {"jatoba", 0.00300, trade}, {"merbau", 0.00158, trade},
}

// Find is the species that a name speaks of: "white oak, select" is white oak.
func Find(name string) (Species, bool) {
	words := " " + strings.NewReplacer("-", " ", ",", " ").Replace(strings.ToLower(name)) + " "
	known := append([]Species(nil), table...)
	sort.SliceStable(known, func(i, j int) bool { return len(known[i].Name) > len(known[j].Name) })
	for _, s := range known {
		if strings.Contains(words, " "+s.Name+" ") {
			return s, true
		}
	}
	return Species{}, false
}

// Change is how much a width changes over so many points of moisture content
// (Wood Handbook eq. 13-2, both contents between 6 and 14 %).
func (s Species) Change(width tape.Length, points float64) tape.Length {
	return tape.Nearest(tape.Length(float64(float64(width)*s.Tangential)*points), tape.Tick)
}
