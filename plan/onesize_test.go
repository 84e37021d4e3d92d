package plan_test

import (
	"context"
	"math/rand/v2"
	"testing"

	"strake/finding"
	"strake/paper"
	"strake/plan"
	"strake/stock"
	"strake/tape"
)

// Boards of one length and no shift, on any floor: what is laid passes the
// checker.
func TestOneLengthOnAnyFloor(t *testing.T) {
	t.Parallel()
	laid := 0
	for seed := range uint64(floorCount(30)) {
		f := floors{rand.New(rand.NewPCG(seed, 22))}
		j := f.job(seed)
		j.Boards.Known, j.Boards.Tally = stock.OneSize, nil
		j.Boards.One = tape.Length(24+f.IntN(60)) * tape.Inch
		p := plan.MakeWithin(context.Background(), j, light)
		for _, g := range p.Findings {
			if g.Level == finding.Stop {
				t.Errorf("floor %d: %v", seed, g)
			}
		}
		if len(p.Lay.Pieces) > 0 {
			laid++
		}
	}
	if laid*15 < floorCount(30)*14 {
		t.Errorf("only %d floors laid", laid)
	}
}

// In a plain room boards of 36 and 48 in fall into no line: no H-joint, no
// cluster, and nothing under the preferred distance.
func TestOneLengthFallsIntoNoLine(t *testing.T) {
	for _, l := range []float64{36, 48} {
		j := roomJob(200, 100, 5, 0.75, 0.5, 0.75)
		j.Boards.Known, j.Boards.Tally, j.Boards.One = stock.OneSize, nil, in(l)
		p := plan.Make(context.Background(), j)
		if y, n := paper.YardsticksOf(p), paper.Count(p); y.H > 0 || y.Cluster > 2 || n.UnderPreferred > 0 {
			t.Errorf("boards of %v in: %d H-joints, longest cluster %d, %d pairs under the preferred distance", l, y.H, y.Cluster, n.UnderPreferred)
		}
	}
}
