package row

import (
	"testing"

	"strake/floor"
	"strake/plane"
	"strake/tape"
)

// A wall 1 in out over 20 ft slants 0.30 in in 6 ft, which is over 1/4 in, also
// where play takes up 1/4 in of the taper.
func TestTaperIsSeenByTheSlant(t *testing.T) {
	e := floor.AlignedEdge{From: plane.P(0, 0), To: plane.P(20*tape.Foot, tape.Inch), Beside: true}
	got, ok := taperOf(Rip{Edge: "wall A-B", Left: in(4), Right: in(4.75)}, e, 20*tape.Foot)
	if !ok || (got.Per6-in(0.3)).Abs() > 1 || !got.Shown || got.By != in(0.75) {
		t.Errorf("%v in 6 ft, seen %v, %v by %v", got.Per6, got.Shown, ok, got.By)
	}
	e.To.Y = in(0.8) // 0.24 in in 6 ft
	if got, _ := taperOf(Rip{Edge: "wall A-B", Left: in(4), Right: in(4.75)}, e, 20*tape.Foot); got.Shown {
		t.Errorf("%v in 6 ft is seen", got.Per6)
	}
}

// A bowed wall is judged from end to end: half of its bow lies along the rows,
// the wall slants by 1 in over 20 ft.
func TestTaperOfABowedWall(t *testing.T) {
	half, mid := 10*tape.Foot, tape.Inch
	a := floor.Aligned{Edges: []floor.AlignedEdge{
		{Name: "wall A-B", Group: 1, From: plane.P(0, 0), To: plane.P(half, mid), Beside: true},
		{Name: "wall A-B", Group: 1, From: plane.P(half, mid), To: plane.P(2*half, mid), Beside: true},
		{Name: "wall B-C", Group: 2, From: plane.P(2*half, mid), To: plane.P(3*half, 9*mid), Beside: true},
	}}
	f := Field{Aligned: a, Layout: Layout{Rips: []Rip{{Edge: "wall A-B", Index: 1, Left: in(4), Right: in(5)}}}}
	got := f.Tapers(nil)
	if len(got) != 1 || (got[0].Per6-in(0.3)).Abs() > 1 || !got[0].Shown {
		t.Errorf("%+v", got)
	}
}
