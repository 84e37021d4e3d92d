// Package wood is how flooring moves: species with their coefficients, the
// moisture content that air brings wood to, and what a change of moisture does
// to a width.
//
// Red oak changes by 0.00369 of its width for each point of moisture content
// between 6 and 14 %. A 5 in board that goes from 6 to 9 % is wider by
// 5 x 0.00369 x 3 = 0.055 in; a floor of 15 ft across the boards wants
// 180 x 0.00369 = 0.66 in for each point. Air of 70 °F and 40 % brings wood to
// 7.7 %.
package wood

import "strake/tape"

// The two published formulas, by the names that outputs give them. For the same
// board they differ, by up to a fifth as it is said in the trade.
const (
	ByCoefficient = "change coefficient, Wood Handbook eq. 13-2, for 6 to 14 %"
	ByShrinkage   = "shrinkage from green to oven-dry, Wood Handbook eq. 13-3, up to 30 %"
	ByOvenDry     = "oven-dry shrinkage over fibre saturation at 28 %, common practice, no source"
)

// The range of moisture contents, in percent, that change coefficients hold for.
const LinearLeast, LinearMost = 6.0, 14.0

// Change is how much a width changes over so many points of moisture content
// (ByCoefficient, both contents between 6 and 14 %).
func (s Species) Change(width tape.Length, points float64) tape.Length {
	return scaled(width, float64(s.Tangential*points))
}

// Between is how much a width of this total shrinkage (percent, along the rings
// for plain-sawn boards) changes from one moisture content to another, both in
// percent and neither over 30 (ByShrinkage; contents above count as 30).
func Between(width tape.Length, shrinkage, from, to float64) tape.Length {
	if shrinkage <= 0 {
		return 0
	}
	from, to = min(from, 30), min(to, 30)
	return scaled(width, (to-from)/(3000/shrinkage-30+from))
}

// OvenDry is how much a width changes by the rule that takes the whole
// shrinkage as spread evenly below 28 % (ByOvenDry).
func OvenDry(width tape.Length, shrinkage, from, to float64) tape.Length {
	return scaled(width, shrinkage/100*(to-from)/28)
}

// Moved is how a width changes between two moisture contents, and by which
// formula: the coefficient from 6 to 14 %, else the shrinkage.
func (s Species) Moved(width tape.Length, from, to float64) (tape.Length, string) {
	if min(from, to) >= LinearLeast && max(from, to) <= LinearMost {
		return s.Change(width, to-from), ByCoefficient
	}
	total := s.Shrinkage
	if total == 0 {
		total = EffectiveShrinkage(s.Tangential)
	}
	return Between(width, total, from, to), ByShrinkage
}

func scaled(width tape.Length, by float64) tape.Length {
	return tape.Nearest(tape.Length(float64(width)*by), tape.Tick)
}
