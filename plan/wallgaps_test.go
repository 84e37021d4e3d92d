package plan_test

import (
	"context"
	"testing"

	"strake/floor"
	"strake/plan"
	"strake/tape"
	"strake/trim"
)

// hair is what a corner that was rounded to a tick may differ by.
const hair = 20 * tape.Micrometre

// The gaps that boards leave at each wall lie in the range that each wall has, and
// no wall is forgotten.
func TestGapsAtWalls(t *testing.T) {
	for _, name := range []string{"sail-loft.yaml", "ticket-office.yaml", "ferry-parlour.yaml"} {
		j := exampleJob(t, name)
		p := plan.MakeWithin(context.Background(), j, 0)
		laid := gapsOf(p)
		ranges := gapsOf(plan.Rows(j))
		if len(p.Lay.Pieces) == 0 || len(ranges) == 0 || len(laid) != len(ranges) {
			t.Fatalf("%s: %d pieces, gaps at %d of %d walls", name, len(p.Lay.Pieces), len(laid), len(ranges))
		}
		for wall, g := range laid {
			var least, greatest tape.Length
			for _, e := range p.Floor.Edges {
				if e.Kind == floor.Wall && e.Wall.String() == wall {
					r := e.Ends
					if g.Beside {
						r = floor.Range{Least: min(e.Ends.Least, e.Sides.Least), Greatest: max(e.Ends.Greatest, e.Sides.Greatest)}
					}
					if least == 0 || r.Least < least {
						least = r.Least
					}
					greatest = max(greatest, r.Greatest)
				}
			}
			if g.Least < least-hair || g.Greatest > greatest+hair || g.Least > g.Greatest {
				t.Errorf("%s, wall %s: %v to %v, its range is %v to %v", name, wall, g.Least, g.Greatest, least, greatest)
			}
			if g.Cover != j.Base+j.Shoe {
				t.Errorf("%s, wall %s: cover %v", name, wall, g.Cover)
			}
		}
	}
}

// gapsOf are the gaps of a plan by their walls.
func gapsOf(p plan.Plan) map[string]trim.Gap {
	out := map[string]trim.Gap{}
	for _, g := range p.HeightsFloor().Walls {
		out[g.Wall.String()] = g
	}
	return out
}

// In a square room the rows and the two gaps beside them add up to its width, and
// the boards of each row with the two gaps at its ends to its length.
func TestGapsAddUp(t *testing.T) {
	j := benchRoom(t, 3*tape.Inch/4, 3*tape.Inch/4)
	p := plan.MakeWithin(context.Background(), j, 0)
	gaps := gapsOf(p)
	if len(gaps) != len(j.Sketch.Rooms[0].Corners) {
		t.Fatalf("%v", gaps)
	}
	low, high := p.Aligned.Bare.Box()
	top, bottom := low.Y, high.Y
	for _, x := range p.Lay.Pieces {
		lo, hi := x.Outline.Box()
		top, bottom = max(top, hi.Y), min(bottom, lo.Y)
	}
	var beside, ends []trim.Gap
	for _, g := range gaps {
		if g.Beside {
			beside = append(beside, g)
		} else {
			ends = append(ends, g)
		}
	}
	if len(beside) < 2 || len(ends) < 2 {
		t.Fatalf("%v", gaps)
	}
	found := [2]bool{}
	for _, g := range beside {
		found[0] = found[0] || (g.Least-(bottom-low.Y)).Abs() < hair || (g.Greatest-(bottom-low.Y)).Abs() < hair
		found[1] = found[1] || (g.Least-(high.Y-top)).Abs() < hair || (g.Greatest-(high.Y-top)).Abs() < hair
	}
	if !found[0] || !found[1] {
		t.Errorf("boards end %v and %v off the room, gaps %+v", bottom-low.Y, high.Y-top, beside)
	}
}
