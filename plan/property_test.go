package plan_test

import (
	"bytes"
	"context"
	"flag"
	"math/rand/v2"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"strake/finding"
	"strake/jobfile"
	"strake/plan"
)

// Whatever the floor: no panic, every run is filled or named as unfilled, what
// is filled is laid from end to end, a plan without a stop finding leaves
// nothing unfilled, and the same job gives the same bytes.
func TestAnyFloor(t *testing.T) {
	if f := flag.Lookup("rapid.checks"); f.Value.String() == f.DefValue { // each floor takes a tenth of a second
		if err := f.Value.Set(strconv.Itoa(floorCount(25))); err != nil {
			t.Fatal(err)
		}
		defer f.Value.Set(f.DefValue)
	}
	rapid.Check(t, func(t *rapid.T) {
		seed := rapid.Uint64().Draw(t, "floor")
		f := floors{rand.New(rand.NewPCG(seed, 5))}
		j := f.job(seed)
		j.Boards.Tally = j.Boards.Tally[:rapid.IntRange(0, len(j.Boards.Tally)).Draw(t, "boards left")]
		p := plan.MakeWithin(context.Background(), j, light)
		unfilled := 0
		for _, r := range p.Lay.Runs {
			if r.Unfilled == (len(r.Pieces) > 0) {
				t.Fatalf("row %d: unfilled %v with %d pieces", r.Row, r.Unfilled, len(r.Pieces))
			}
			if r.Unfilled {
				unfilled++
				continue
			}
			for i, k := range r.Pieces[1:] {
				_, end := p.Lay.Pieces[r.Pieces[i]].Outline.Box()
				start, _ := p.Lay.Pieces[k].Outline.Box()
				if end.X < start.X {
					t.Fatalf("row %d: a gap of %v between pieces", r.Row, start.X-end.X)
				}
			}
		}
		if unfilled > 0 && finding.Worst(p.Findings) != finding.Stop {
			t.Fatalf("%d runs unfilled and nothing stops the plan", unfilled)
		}
		var a, b bytes.Buffer
		if err := jobfile.WriteLay(&a, p.Lay); err != nil {
			t.Fatal(err)
		}
		if err := jobfile.WriteLay(&b, plan.MakeWithin(context.Background(), j, light).Lay); err != nil || !bytes.Equal(a.Bytes(), b.Bytes()) {
			t.Fatalf("the same job gives other bytes (%v)", err)
		}
	})
}
