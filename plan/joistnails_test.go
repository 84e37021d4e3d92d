package plan_test

import (
	"context"
	"math"
	"testing"

	"strake/fasten"
	"strake/lay"
	"strake/plan"
	"strake/room"
	"strake/tape"
)

// In a plan whose joists are told from a wall, every row end to end nailed through the
// face has a nail over each joist between its first and last ones, measured from that
// wall; without that they lie where the schedule puts them.
func TestFaceNailsOverJoists(t *testing.T) {
	j := roomJob(144, 120, 5, 0.75, 0.5, 0.75)
	j.Joists.Along, j.Joists.Spacing = room.Wall{"B", "C"}, 16*tape.Inch
	free := plan.MakeWithin(context.Background(), j, 0)
	j.Joists.First, j.Joists.Placed = 10*tape.Inch, true
	told := plan.MakeWithin(context.Background(), j, 0)
	over := func(p []fasten.Place, width float64) (on, all int) {
		for _, x := range p {
			if x.By != lay.FaceNail {
				continue
			}
			all++
			off := math.Mod(width-x.At.X.Inches()-10+1600, 16) // from wall B-C, which lies at the far end of the rows
			if math.Min(off, 16-off) < 0.05 {
				on++
			}
		}
		return on, all
	}
	_, u, _ := told.Nailing().Use()
	_, v, _ := free.Nailing().Use()
	on, all := over(fasten.Places(told.Lay, u), 144)
	before, fewer := over(fasten.Places(free.Lay, v), 144)
	if on < 16 || on <= before || all < fewer {
		t.Errorf("%d of %d face nails stand over joists, %d of %d where they are not known", on, all, before, fewer)
	}
}
