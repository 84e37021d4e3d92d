package wood

import (
	"math"
	"testing"

	"strake/tape"
)

// Weights of 3/4 in boards by the specific gravities of the Wood Handbook's
// strength tables, to the hundredth of a pound; an oak floor as laid is quoted
// by the trade at 2.7 to 2.8 lb (a load of 2,700 lb for 1,000 sq ft).
func TestWeightOfBoards(t *testing.T) {
	for name, want := range map[string]float64{
		"red oak": 2.75, "White Oak, select": 2.97, "sugar maple": 2.75, "shagbark hickory": 3.14,
		"black walnut": 2.40, "cherry": 2.18, "white ash": 2.62, "douglas fir": 2.10,
	} {
		if got, ok := PoundsPerSqFt(name, 3*tape.Inch/4); !ok || math.Abs(got-want) > 0.006 {
			t.Errorf("%s: %.3f lb, want %.2f", name, got, want)
		}
	}
	if _, ok := PoundsPerSqFt("merbau", tape.Inch); ok {
		t.Error("merbau has no known weight here")
	}
}
