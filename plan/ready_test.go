package plan_test

import (
	"context"
	"strings"
	"testing"

	"strake/finding"
	"strake/moisture"
	"strake/plan"
	"strake/ready"
	"strake/site"
	"strake/tape"
)

// A floor whose subfloor is too wet is planned all the same, and the plan stops
// the laying; a job that says nothing of it gets no finding.
func TestWetSubfloor(t *testing.T) {
	j := exampleJob(t, "sail-loft.yaml")
	j.Moisture, j.Site = moisture.Job{}, site.Site{}
	before := plan.MakeWithin(context.Background(), j, 0)
	if len(before.ReadyFindings()) != 0 || finding.Worst(before.Findings) == finding.Stop {
		t.Fatalf("%v", before.Findings)
	}
	if ready.Worst(before.Ready()) != ready.Wait {
		t.Errorf("nothing was read: %+v", before.Ready())
	}
	for range 40 {
		j.Moisture.Subfloor.Reads = append(j.Moisture.Subfloor.Reads, 15)
	}
	j.Site = site.Site{Told: true, Level: site.Above, Base: site.Wood, Heated: site.No}
	p := plan.MakeWithin(context.Background(), j, 0)
	if len(p.Lay.Runs) != len(before.Lay.Runs) || len(p.Lay.Runs) == 0 {
		t.Errorf("%d runs, %d before", len(p.Lay.Runs), len(before.Lay.Runs))
	}
	levels := map[string]finding.Level{}
	for _, f := range p.Findings {
		levels[f.Rule] = f.Level
	}
	if levels["moisture of the wood subfloor"] != finding.Stop || levels["no readings yet"] != finding.Warn {
		t.Errorf("%v", levels)
	}
	if _, told := levels["level against the ground"]; told {
		t.Error("what is as it should be is no finding")
	}
}

// The area that readings are asked for by is that of the floor: the bench room
// has some 383 sq ft.
func TestAreaOfReadings(t *testing.T) {
	j := benchRoom(t, 3*tape.Inch/4, 3*tape.Inch/4)
	j.Moisture.Subfloor.Reads = []float64{9, 9}
	asked := 0
	for _, v := range plan.Rows(j).Ready() {
		if v.Rule == "number of readings" {
			asked++
			if !strings.HasPrefix(v.Limit, "at least 10 for 38") {
				t.Error(v.Limit)
			}
		}
	}
	if asked != 1 {
		t.Errorf("asked %d times", asked)
	}
}
