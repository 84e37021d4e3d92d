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
