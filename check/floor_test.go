package check

import (
	"testing"

	"strake/floor"
	"strake/plane"
)

// The plain room as a floor in mm, and the lay held through it: the floor is
// turned into the frame of the rows by the floor's own arithmetic.
func TestLayOnItsFloor(t *testing.T) {
	mm := func(x, y float64) plane.XY { return plane.XY{X: x * 25.4, Y: y * 25.4} }
	corners := []plane.XY{mm(-0.75, -0.75), mm(100.75, -0.75), mm(100.75, 12.25), mm(-0.75, 12.25)}
	f := floor.Floor{Rings: []floor.Ring{{Corners: corners, Edges: []int{0, 1, 2, 3}}}}
	for i, c := range corners {
		f.Edges = append(f.Edges, floor.Edge{Name: "wall " + string("ABCD"[i]) + "-" + string("BCDA"[i]), Kind: floor.Wall, Ends: gaps, Sides: gaps, From: c, To: corners[(i+1)%4]})
	}
	b := plainRoom()
	for _, got := range Lay(b.lay, f, b.lim, b.stock) {
		t.Error(got)
	}
	b.sawn(4, in(0.25))
	b.follow()
	if fs := Lay(b.lay, f, b.lim, b.stock); len(fs) != 1 || fs[0].Rule != "gap" {
		t.Errorf("a piece too near the wall: %v", fs)
	}
	b.lay.Zones[0].Dir = plane.Dir{}
	if fs := Lay(b.lay, f, b.lim, b.stock); len(fs) == 0 || fs[0].Rule != "shape" {
		t.Errorf("a zone without direction: %v", fs)
	}
}
