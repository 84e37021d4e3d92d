package subfloor

import (
	"strings"
	"testing"

	"strake/ready"
	"strake/tape"
)

func said(vs []ready.Verdict) string {
	var out []string
	for _, v := range vs {
		out = append(out, string(v.Say)+" "+v.Rule)
	}
	return strings.Join(out, "; ")
}

func TestVerdicts(t *testing.T) {
	in, ft := tape.Inch, tape.Foot
	ply := []Layer{{Plywood, 3 * in / 4}}
	dip := Grid{Step: ft, Cols: 7, Rows: 1, Height: make([]tape.Length, 7)}
	dip.Height[3] = -in / 2
	holed := Grid{Step: ft, Cols: 7, Rows: 1, Height: make([]tape.Length, 7), Hole: make([]bool, 7)}
	holed.Hole[3] = true
	for _, tt := range []struct {
		s    Survey
		want string
	}{
		{Survey{On: OnWood, Layers: ply, Joists: 16 * in, Rows: Across}, "go panel over joists"},
		{Survey{On: OnWood, Layers: []Layer{{Plywood, in / 2}}, Joists: 16 * in, Rows: Along}, "fix panel over joists; fix rows along the joists"},
		{Survey{On: OnWood, Layers: ply, Joists: 30 * in}, "fix panel over joists"},
		{Survey{On: OnWood, Layers: ply}, "look nailing base"},
		{Survey{On: OnWood, Layers: []Layer{{Carpet, 0}, {Particleboard, 5 * in / 8}}, Joists: 16 * in}, "fix layer under the floor; fix layer under the floor; fix nailing base"},
		{Survey{On: OnWood, Layers: []Layer{{Unknown, 0}}}, "look layer under the floor"},
		{Survey{On: OnSlab, Rows: Along, Layers: []Layer{{Concrete, 0}}}, "fix nailing base"},
		{Survey{On: OnSlab, Layers: []Layer{{Plywood, 3 * in / 4}, {Concrete, 0}}}, ""},
		{Survey{On: OnWood, Squeaks: []Squeak{{"by the door", 4 * ft, 3 * ft}}, Joists: 16 * in}, "fix squeak"},
		{Survey{On: OnWood, Rule: USWood, Readings: []Reading{{Place: "a", Edge: 6 * ft, Gap: in / 8}, {Place: "b", Edge: 6 * ft, Gap: in / 4, Hump: true}, {Place: "c", Edge: 4 * ft, Gap: in / 8}}}, "go flatness; fix flatness; look flatness"},
		{Survey{On: OnWood, Rule: USWood, Grid: dip}, "fix flatness"},
		{Survey{On: OnSlab, Rule: USWood, Grid: holed}, "fix nailing base; look grid of heights with holes; go flatness"},
		{Survey{On: OnSlab, Rule: USWood, Grid: dip}, "fix nailing base; fix flatness; go F-numbers"},
		{Survey{On: OnWood, Built: 1962, Layers: []Layer{{Resilient, 0}, {Plywood, 3 * in / 4}}, Joists: 16 * in}, "fix layer under the floor; go panel over joists"},
	} {
		vs := tt.s.Verdicts(tape.Paper(tape.UnitFoot))
		if got := said(vs); got != tt.want {
			t.Errorf("%+v:\n%s, want\n%s", tt.s, got, tt.want)
		}
		for _, v := range vs {
			if v.Measured == "" || v.Source == "" || v.Where == "" || v.Say != ready.Go && v.Do == "" {
				t.Errorf("not all is said: %+v", v)
			}
			if strings.Contains(v.Do, "cut a joist") {
				t.Error(v.Do)
			}
		}
	}
}

// The dust and old-material gate holds everything up; a hump on a panel that has
// nothing to spare is not sanded.
func TestGates(t *testing.T) {
	in, ft := tape.Inch, tape.Foot
	vs := Survey{On: OnWood, Built: 1962, Layers: []Layer{{Resilient, 0}}}.Verdicts(tape.Paper(tape.UnitInch))
	if !vs[0].Holds || !strings.HasPrefix(vs[0].Do, "Stop") {
		t.Errorf("%+v", vs[0])
	}
	vs = Survey{On: OnWood, Built: 1962, Layers: []Layer{{Carpet, 0}, {Sheet, 0}}}.Verdicts(tape.Paper(tape.UnitInch))
	if !vs[0].Holds || !strings.HasPrefix(vs[0].Where, "layer 2") {
		t.Errorf("carpet is torn out before what lies under it is tested: %+v", vs[0])
	}
	hump := []Reading{{Place: "a", Edge: 6 * ft, Gap: in / 4, Hump: true, Wide: 2 * ft}}
	for thick, sand := range map[tape.Length]bool{5 * in / 8: false, 3 * in / 4: true} {
		vs := Survey{On: OnWood, Rule: USWood, Layers: []Layer{{Plywood, thick}}, Joists: 16 * in, Readings: hump}.Verdicts(tape.Paper(tape.UnitInch))
		v := vs[len(vs)-1]
		if strings.Contains(v.Do, "Sand it down") != sand || sand != strings.Contains(v.Do, `No more than 1/8"`) || !strings.Contains(v.Do, "cu ft") {
			t.Errorf("%v: %s", thick, v.Do)
		}
	}
	g := Grid{Step: ft, Cols: 7, Rows: 1, Height: make([]tape.Length, 7)}
	g.Height[3] = in
	w := Survey{On: OnWood, Rule: USWood, Layers: []Layer{{Plywood, 3 * in / 4}}, Joists: 16 * in, Grid: g}.Work()
	if !w.Flat || w.MostOff > in/8 || w.UpAt == 0 {
		t.Errorf("%+v", w)
	}
}
