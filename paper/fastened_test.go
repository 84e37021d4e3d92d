package paper_test

import (
	"context"
	"os"
	"testing"

	"strake/fasten"
	"strake/jobfile"
	"strake/paper"
	"strake/plan"
	"strake/plane"
	"strake/tape"
	"strake/words"
)

// kitchen is the plan of a job with a pipe to be kept free.
func kitchen(t *testing.T) plan.Plan {
	t.Helper()
	data, err := os.ReadFile("../examples/keepers-kitchen.yaml")
	if err != nil {
		t.Fatal(err)
	}
	j, _, err := jobfile.ReadJob("keepers-kitchen", data)
	if err != nil {
		t.Fatal(err)
	}
	return plan.Make(context.Background(), j)
}

// Every place of a row that lies in a part to be kept free, its margin counted, lies in
// the stretch that is told for the row.
func TestKeepOffHoldsEveryPlace(t *testing.T) {
	p := kitchen(t)
	places := 0
	for _, x := range p.Nailing().Free {
		told := map[string]paper.KeptOff{}
		for _, k := range paper.KeepOff(p, x) {
			told[k.Row] = k
		}
		grown := x.Grown()
		for _, r := range p.Lay.Runs {
			lo, hi := r.Outline.Box()
			for i := range tape.Length(400) {
				for k := range tape.Length(8) {
					at := plane.Pt{X: lo.X + (hi.X-lo.X)*i/400, Y: lo.Y + (hi.Y-lo.Y)*k/8}
					if !within(grown, p.Lay.Zones[r.Zone].Dir.FromRow(at)) {
						continue
					}
					places++
					s, ok := told[words.Row(r)]
					if from := at.X - lo.X; !ok || from < s.From || from > s.To {
						t.Errorf("%s: row %s at %v is not told: %v", x.Name, words.Row(r), from, s)
					}
				}
			}
		}
	}
	if places < 20 {
		t.Errorf("only %d places looked at", places)
	}
}

// within tells whether a convex outline, whichever way round, holds a place.
func within(ring []plane.XY, p plane.XY) bool {
	left, right := false, false
	for i, a := range ring {
		c := ring[(i+1)%len(ring)].Sub(a).Cross(p.Sub(a))
		left, right = left || c > 0, right || c < 0
	}
	return !left || !right
}

// The rows that are told are all that are nailed, their fasteners all that there are.
func TestFastenedRowsAreAll(t *testing.T) {
	p := kitchen(t)
	_, u, _ := p.Nailing().Use()
	want := fasten.Sum(fasten.Places(p.Lay, u))
	got, other := fasten.Total{}, 0
	for _, r := range paper.FastenedRows(p) {
		got.Nailer, got.Hand, got.Face = got.Nailer+r.Total.Nailer, got.Hand+r.Total.Hand, got.Face+r.Total.Face
		if r.Plain != (r.Row.Fasten == "nailer") {
			t.Errorf("row %s, %q: plain is %v", r.Row.Name, r.Row.Fasten, r.Plain)
		}
		if !r.Plain {
			other++
		}
	}
	if got.Nailer != want.Nailer || got.Hand != want.Hand || got.Face != want.Face {
		t.Errorf("%+v, want %+v", got, want)
	}
	if other < 2 {
		t.Errorf("%d rows by hand", other)
	}
}
