package rack

import (
	"context"
	"math/rand/v2"
	"slices"
	"testing"

	"strake/row"
	"strake/tape"
)

// steppedFloor is a few runs, all of one length or each of its own, with boards
// in steps of 6 in.
func steppedFloor(seed uint64, same bool) (*engine, []run) {
	rng := rand.New(rand.NewPCG(seed, 31))
	e := &engine{ctx: context.Background(), rng: rand.New(rand.NewPCG(seed, 2)), budget: Budget, polishing: Polishing / 40, unit: tape.Inch,
		shop: shop{shortest: 8 * inch, jointMin: 6 * inch, preferred: 6 * inch, woodFirst: true}}
	var runs []run
	var need tape.Length
	l := tape.Length(0)
	for i := range 8 {
		if i == 0 || !same {
			l = tape.Length(100+2*rng.IntN(80)) * inch
		}
		r := run{Run: row.Run{Low: tape.Length(i) * 5 * inch}, index: i, sign: 1, level: i, farNeed: l, farReach: l}
		r.farCut = !same && rng.IntN(6) == 0
		r.exact()
		runs, need = append(runs, r), need+l
	}
	for sum := tape.Length(0); sum < need*11/10; {
		b := tape.Length(12+6*rng.IntN(12)) * inch
		e.stock.boards = append(e.stock.boards, item{board: len(e.stock.boards), to: b, groove: true, tongue: true})
		sum += b
	}
	return e, runs
}

// Whatever is racked takes no fewer cuts, and loses no less, than the bounds;
// and many floors of stepped lengths take just that: they can be met.
func TestBoundsHold(t *testing.T) {
	for _, same := range []bool{true, false} {
		met, positive := 0, 0
		const floors = 30
		for seed := range uint64(floors) {
			e, runs := steppedFloor(seed, same)
			plan := e.fillAll(runs)
			w := e.worthOf(plan)
			if unfilled(plan) > 0 {
				continue
			}
			if w.Crosscuts < w.FewestCuts {
				t.Errorf("alike %v, seed %d: %d crosscuts, the bound is %d", same, seed, w.Crosscuts, w.FewestCuts)
			}
			begun := slices.ContainsFunc(plan, func(f filled) bool {
				return slices.ContainsFunc(f.pieces, func(q placed) bool { return q.nearCut })
			})
			if !begun && w.Cost() < w.Chain {
				t.Errorf("alike %v, seed %d: lost %s with %d crosscuts, the chain bound is %s", same, seed, w.Lost, w.Crosscuts, w.Chain)
			}
			if w.FewestCuts > 0 || w.Chain > 0 {
				positive++
			}
			if same && w.Cost() == w.Chain || !same && w.Crosscuts == w.FewestCuts {
				met++
			}
		}
		t.Logf("alike %v: above 0 on %d, met on %d of %d floors", same, positive, met, floors)
		if met < floors/6 || positive < floors/3 {
			t.Errorf("alike %v: the bound was met on %d of %d floors and above 0 on %d", same, met, floors, positive)
		}
	}
}
