package setout_test

import (
	"testing"

	"strake/setout"
)

// The rows of every room lie in its stage, each stage can rest when it is done,
// and what is said of doorways lies where a tape finds it.
func TestStagesAndDoorways(t *testing.T) {
	for _, name := range []string{"ferry-parlour", "ticket-office"} {
		p := planned(t, name)
		stages := setout.Stages(p)
		if len(stages) != len(p.Floor.Rooms) {
			t.Errorf("%s: %d stages for %d rooms", name, len(stages), len(p.Floor.Rooms))
		}
		for i, s := range stages {
			if i > 0 && s.From < stages[i-1].From {
				t.Errorf("%s: %s comes before %s", name, s.Room, stages[i-1].Room)
			}
			if n := len(s.Pauses); n == 0 || s.Pauses[n-1] != s.Last {
				t.Errorf("%s: %s cannot rest when it is done: %v", name, s.Room, s.Pauses)
			}
		}
		for _, l := range setout.DoorLines(p) {
			if !l.Along {
				continue
			}
			for _, d := range p.Built.Doorways {
				if d.Name != l.Doorway {
					continue
				}
				a, b := p.Built.At[d.Wall[0]], p.Built.At[d.Wall[1]]
				at := p.Aligned.Dir.ToRow(a.Add(b.Sub(a).Times(0.5))).Y
				if off := (rowFront(p, l.Row) - at).Abs() - (l.Depth[0]+l.Depth[1]).Abs()/2; off.Abs() > 200_000 { // the wall is not quite along the rows
					t.Errorf("%s: the front of row %d lies %v off the depth told", name, l.Row, off)
				}
			}
		}
	}
}
