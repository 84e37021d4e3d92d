package fasten

import (
	"strings"
	"testing"

	"strake/lay"
	"strake/plane"
	"strake/ready"
	"strake/tape"
)

func TestFloorVerdicts(t *testing.T) {
	style := tape.Paper(tape.UnitInch)
	pieces := []lay.Piece{{Outline: plane.Rect(plane.P(0, 0), plane.P(40*in, 5*in)), Ahead: lay.Tongue}}
	l := lay.Lay{Zones: []lay.Zone{{Ahead: 1, Dir: plane.Dir{X: 1}}}, Pieces: pieces,
		Runs: []lay.Run{{High: 5 * in, Outline: pieces[0].Outline, Pieces: []int{0}, Nailing: []lay.Stretch{{Along: plane.Span{To: 40 * in}, By: lay.Nailer}}}}}
	pipe := Free{Name: "pipe", What: "pipe", Outline: []plane.XY{{X: 0, Y: 0}, {X: 500, Y: 0}, {X: 500, Y: 127}, {X: 0, Y: 127}}, Margin: in}
	deep := pipe
	deep.Known, deep.Depth = true, 6*in
	for _, tt := range []struct {
		f    Floor
		want string
	}{
		{Floor{Thickness: 3 * in / 4, Face: 5 * in}, "go fastener schedule; look fastener tip"},
		{Floor{Thickness: 3 * in / 4, Face: 7 * in, Base: in}, "go fastener schedule; go fastener tip; look glue-assist"},
		{Floor{Thickness: 3 * in / 4, Face: 5 * in, Base: 3 * in / 4}, "go fastener schedule; look fastener tip"},
		{Floor{Thickness: 3 * in / 4, Face: 5 * in, Base: 3 * in / 4, Slab: true}, "go fastener schedule; go fastener tip"},
		{Floor{Thickness: 3 * in / 4, Face: 5 * in, Base: 3 * in / 4, Slab: true, Own: Own{Length: 2 * in}}, "go fastener schedule; fix fastener tip"},
		{Floor{Thickness: 3 * in / 4, Face: 5 * in, Base: in, Own: Own{Spacing: 12 * in, By: ready.Maker, Source: "leaflet"}}, "look fastener schedule; go fastener tip"},
		{Floor{Thickness: 3 * in / 4, Face: 5 * in, Base: in, Own: Own{Length: in / 2}}, "look fastener schedule; fix fastener tip"},
		{Floor{Thickness: 5 * in / 4, Face: 5 * in}, "look fasteners"},
		{Floor{Thickness: 5 * in / 4, Face: 5 * in, Base: 2 * in, Own: Own{Length: 5 * in / 2, Spacing: 8 * in, End: 2 * in}}, "go fastener tip"},
		{Floor{Thickness: 3 * in / 4, Face: 5 * in, Base: in, Gap: 3 * in / 4, Cover: in / 2}, "go fastener schedule; go fastener tip; look face nails in sight"},
		{Floor{Thickness: 3 * in / 4, Face: 5 * in, Base: in, Gap: 3 * in / 4, Cover: 21 * in / 16}, "go fastener schedule; go fastener tip"},
		{Floor{Thickness: 3 * in / 4, Face: 5 * in, Base: in, Free: []Free{pipe}}, "go fastener schedule; go fastener tip; look keep free of fasteners"},
		{Floor{Thickness: 3 * in / 4, Face: 5 * in, Base: in, Free: []Free{pipe, deep}, Lay: l}, "go fastener schedule; go fastener tip; fix keep free of fasteners; go keep free of fasteners"},
	} {
		var got []string
		for _, v := range tt.f.Verdicts(style) {
			got = append(got, string(v.Say)+" "+v.Rule)
			if v.Measured == "" || v.Source == "" || v.Say != ready.Go && v.Do == "" {
				t.Errorf("not all is said: %+v", v)
			}
			if v.Say == ready.Fix && v.Where == "pipe" && !strings.Contains(v.Measured, "3 fasteners") {
				t.Errorf("those at 2, 9-3/16 and 16-3/8 in meet a pipe that ends at 19-11/16 in: %s", v.Measured)
			}
		}
		if s := strings.Join(got, "; "); s != tt.want {
			t.Errorf("%+v:\n%s, want\n%s", tt.f, s, tt.want)
		}
	}
}

// Base and shoe of 9/16 and 3/4 in over a gap of 3/4 in hide nails up to 7/16 in from
// the edge, an eighth of shadow left; those that would have to go nearer than 1/4 in
// stay at 1/2 in, in sight. Common practice, no source.
func TestFaceNailsUnderTheShoe(t *testing.T) {
	for _, tt := range []struct{ cover, want tape.Length }{{21 * in / 16, 7 * in / 16}, {2 * in, half}, {17 * in / 16, half}, {0, half}, {9 * in / 8, in / 4}} {
		_, u, _ := Floor{Thickness: 3 * in / 4, Face: 5 * in, Gap: 3 * in / 4, Cover: tt.cover}.Use()
		if u.Edge != tt.want {
			t.Errorf("cover %v: nails %v from the edge, want %v", tt.cover, u.Edge, tt.want)
		}
	}
}

// Felt of 1/32 in lifts the board and its fasteners by as much: a 2 in cleat that ends
// 7/8 in below the top of the subfloor (common practice, no source) ends 27/32 in below
// it, and comes out of a 3/4 in panel by 3/32 in. A pipe whose top lies 1-7/8 in below
// is reached to the margin without felt, and not over it.
func TestPaperLiftsTips(t *testing.T) {
	style := tape.Paper(tape.UnitInch)
	f := Floor{Thickness: 3 * in / 4, Face: 5 * in, Base: 3 * in / 4, Paper: in / 32}
	v := f.Verdicts(style)[1]
	if !strings.HasPrefix(v.Measured, `27/32"`) || !strings.Contains(v.Measured, "sheet") || !strings.HasSuffix(v.Limit, `by 3/32"`) {
		t.Errorf("%+v", v)
	}
	f.Paper = 0
	if v := f.Verdicts(style)[1]; !strings.HasPrefix(v.Measured, `7/8"`) || strings.Contains(v.Measured, "sheet") {
		t.Errorf("%+v", v)
	}
	if v := (Floor{Thickness: 20 * tape.Millimetre, Face: 5 * in}).Verdicts(tape.Paper(tape.UnitMillimetre))[1]; !strings.Contains(v.Do, "within 38 mm") {
		t.Error(v.Do)
	}
}
