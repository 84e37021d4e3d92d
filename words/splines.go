package words

import (
	"fmt"

	"strake/lay"
	"strake/plan"
	"strake/tape"
)

// Turned tells whether a run is laid backwards: its boards turned end for end.
func Turned(p plan.Plan, r lay.Run) bool {
	for _, z := range p.Lay.Zones {
		if z.ID == r.Zone {
			return z.Ahead < 0
		}
	}
	return false
}

// SplineLength is the length of all splines of a plan.
func SplineLength(p plan.Plan) tape.Length {
	var sum tape.Length
	for _, f := range p.AllFields() {
		for _, s := range f.Layout.Splines {
			sum += s.Along.Len()
		}
	}
	return sum
}

// SplineText says how much spline there is and what it is for; "" for none.
func SplineText(p plan.Plan, s Lengths) string {
	n := 0
	for _, f := range p.AllFields() {
		n += len(f.Layout.Splines)
	}
	if n == 0 {
		return ""
	}
	places := "one stretch"
	if n > 1 {
		places = fmt.Sprintf("%d stretches", n)
	}
	return fmt.Sprintf("%s of spline (slip tongue) in %s: beyond it the boards are turned end for end and laid backwards", s.Of(SplineLength(p)), places)
}
