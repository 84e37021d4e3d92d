package plan_test

import (
	"os"
	"testing"

	"strake/finding"
)

// Three rooms off a hall are laid one after the other: the order of laying goes
// from room to room as often as there is a room to go to, and still buries
// nothing. The rows of the hall come first, and each room's rows follow each other
// without a gap.
func TestRoomsAreFinishedOneByOne(t *testing.T) {
	text, err := os.ReadFile("../examples/cases/three-rooms.yaml")
	if err != nil {
		t.Fatal(err)
	}
	p := planText(t, string(text))
	for _, f := range p.Findings {
		if f.Level == finding.Stop {
			t.Error(f)
		}
	}
	hops, was := 0, 0
	row := map[int]int{} // the last of each part
	for _, r := range p.Layout.Runs {
		if r.Part != was {
			hops, was = hops+1, r.Part
		}
		if last, ok := row[r.Part]; ok && r.Row != last+1 {
			t.Errorf("row %d part %d follows row %d", r.Row, r.Part, last)
		}
		row[r.Part] = r.Row
	}
	if len(row) != 4 || hops != 3 {
		t.Errorf("%d parts of rows, %d changes between them", len(row), hops)
	}
}

// The rows on each arm round a core are those that lie beside it, not those that
// both arms started from.
func TestFrontsCountTheirOwnRows(t *testing.T) {
	text, err := os.ReadFile("../examples/cases/ring-hall.yaml")
	if err != nil {
		t.Fatal(err)
	}
	p := planText(t, string(text))
	if len(p.Layout.Closures) != 1 {
		t.Fatalf("closures %v", p.Layout.Closures)
	}
	c := p.Layout.Closures[0]
	parted := [2]int{}
	for _, r := range p.Layout.Runs {
		if r.Row < c.Row && r.Part > 0 {
			parted[r.Part-1]++
		}
	}
	if len(c.Rows) != 2 || c.Rows[0] != parted[0] || c.Rows[1] != parted[1] || parted[0] == 0 || parted[0] >= c.Row-1 {
		t.Errorf("arms of %v rows, %v lie beside the core", c.Rows, parted)
	}
}
