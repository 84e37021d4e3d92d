package plan_test

import (
	"context"
	"math"
	"slices"
	"testing"

	"strake/plan"
	"strake/ready"
	"strake/tape"
	"strake/trim"
)

// The kitchen: what comes out is counted, and a board's movement by winter is that
// of the rules of moisture. Coefficient of red oak 0.00369 (Wood Handbook, table
// 13-5), 4 in wide, from halfway to winter's content.
func TestHeightsOfAPlan(t *testing.T) {
	j := exampleJob(t, "keepers-kitchen.yaml")
	p := plan.MakeWithin(context.Background(), j, 0)
	f := p.HeightsFloor()
	if f.Old != 7*tape.Inch/16 || !f.Laid || len(f.Walls) != 4 {
		t.Errorf("%+v", f)
	}
	s, ok := j.Moisture.Climate.Season()
	if !ok {
		t.Fatal("no season")
	}
	if want := 4 * 0.00369 * (s.Aim - s.Low); math.Abs(f.Winter.Inches()-want) > 1e-4 {
		t.Errorf("by winter %.5f in, want %.5f", f.Winter.Inches(), want)
	}
	if sheet, told := p.HeightSheet(); !told || len(sheet.Covered) != 4 || sheet.Floor.Height() != 25*tape.Inch/32 {
		t.Errorf("%+v", sheet)
	}
	// Row ends do not move; boards beside the rows do.
	for _, c := range trim.Of(j.Trim, f).Covered {
		if (c.Winter > 0) != c.Beside {
			t.Errorf("%+v", c)
		}
	}
}

// A panel over the subfloor is nailed into as well, and what lies under the
// subfloor lies that much deeper.
func TestPanelUnderTheNails(t *testing.T) {
	j := exampleJob(t, "keepers-kitchen.yaml")
	before := plan.Rows(j).Nailing()
	j.Trim.Panel = tape.Inch / 2
	after := plan.Rows(j).Nailing()
	if after.Base != before.Base+tape.Inch/2 || before.Base != 3*tape.Inch/4 {
		t.Errorf("base %v, with a panel %v", before.Base, after.Base)
	}
	if len(after.Free) != 1 || after.Free[0].Depth != before.Free[0].Depth+tape.Inch/2 {
		t.Errorf("%+v", after.Free)
	}
}

// A job that tells nothing of heights is asked for them before the first board,
// and its plan says nothing of them.
func TestNothingOfHeights(t *testing.T) {
	j := exampleJob(t, "sail-loft.yaml")
	p := plan.Rows(j)
	of := func(v ready.Verdict) bool { return v.Rule == trim.NotTold.Rule }
	if !slices.ContainsFunc(p.Ready(), of) {
		t.Error("nobody asks for heights")
	}
	for _, f := range p.ReadyFindings() {
		t.Errorf("%v", f)
	}
}
