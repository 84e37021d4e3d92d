package setout_test

import (
	"os"
	"slices"
	"testing"

	"strake/lay"
	"strake/plan"
	"strake/setout"
	"strake/tape"
)

// Each row of a drift table, as its boards lie: its front stands as far from the front
// of the row that the line was snapped for as the table says, all along, so that it can
// be measured near both ends; and the line lies in the room of the table.
func TestDrifts(t *testing.T) {
	rows := 0
	for _, name := range []string{"sail-loft", "ferry-parlour", "ticket-office", "keepers-kitchen", "three-rooms", "hearth-askew"} {
		p := shippedPlan(t, name)
		for _, d := range setout.Drifts(p) {
			if d.From.Room != d.Room {
				t.Errorf("%s: %s is measured from a line in %s", name, d.Room, d.From.Room)
			}
			for _, r := range d.Rows {
				for _, part := range r.Parts {
					rows += held(t, p, name, d, r, part)
				}
			}
		}
	}
	if rows < 30 {
		t.Errorf("only %d rows could be held to their boards", rows)
	}
}

// held holds one part of a row to its boards, where it lies in the zone of the line.
func held(t *testing.T, p plan.Plan, name string, d setout.Drift, r setout.Drifted, part int) int {
	t.Helper()
	from := slices.IndexFunc(p.Lay.Runs, func(x lay.Run) bool {
		return x.Row == d.From.Row && (d.From.Part == 0 || x.Part == d.From.Part)
	})
	n := 0
	for _, x := range p.Lay.Runs {
		if x.Row != r.Row || x.Part != part || from < 0 || x.Zone != p.Lay.Runs[from].Zone || p.Lay.Zones[x.Zone].Ahead < 0 || len(x.Pieces) == 0 {
			continue
		}
		n++
		if got := x.High - p.Lay.Runs[from].High; got != r.At {
			t.Errorf("%s, %s: row %d part %d lies %v from row %d, the table says %v", name, d.Room, r.Row, part, got, d.From.Row, r.At)
		}
		var front, all tape.Length
		for _, id := range x.Pieces {
			at := p.Lay.Pieces[id].Outline
			lo, hi := at.Box()
			all += hi.X - lo.X
			for i, a := range at {
				if b := at[(i+1)%len(at)]; a.Y == x.High && b.Y == x.High {
					front += (b.X - a.X).Abs()
				}
			}
		}
		if 10*front < 7*all {
			t.Errorf("%s, %s: row %d part %d has its front along %v of %v", name, d.Room, r.Row, part, front, all)
		}
	}
	return n
}

// shippedPlan is a job of the examples or of their cases, planned.
func shippedPlan(t *testing.T, name string) plan.Plan {
	t.Helper()
	data, err := os.ReadFile("../examples/" + name + ".yaml")
	if err != nil {
		data, err = os.ReadFile("../examples/cases/" + name + ".yaml")
	}
	if err != nil {
		t.Fatal(err)
	}
	return planOf(t, name, data)
}
