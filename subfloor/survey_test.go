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
		{Survey{On: OnSlab, SlabSaid: true, Layers: []Layer{{Concrete, 0}}}, ""},
		{Survey{On: OnWood, Rule: USWood, Layers: ply, Joists: 16 * in}, "go panel over joists; look flatness"},
		{Survey{On: OnWood, Squeaks: []Squeak{{"by the door", 4 * ft, 3 * ft}}, Joists: 16 * in}, "fix squeak"},
		{Survey{On: OnWood, Rule: USWood, Readings: []Reading{{Place: "a", Edge: 6 * ft, Gap: in / 8}, {Place: "b", Edge: 6 * ft, Gap: in / 4, Hump: true}, {Place: "c", Edge: 4 * ft, Gap: in / 8}}}, "go flatness; fix flatness; look flatness"},
		{Survey{On: OnWood, Rule: USWood, Grid: dip}, "fix flatness"},
		{Survey{On: OnSlab, Rule: USWood, Grid: holed}, "fix nailing base; look grid of heights with holes; go flatness"},
		{Survey{On: OnSlab, Rule: USWood, Grid: dip}, "fix nailing base; fix flatness; go F-numbers"},
		{Survey{On: OnSlab, Rule: USWood, Layers: []Layer{{Plywood, 3 * in / 4}, {Concrete, 0}}, Grid: dip}, "fix flatness"},
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
		if strings.Contains(v.Do, "Sand it down") != sand || sand != strings.Contains(v.Do, `No more than 1/8"`) || sand != strings.Contains(v.Do, "cu ft") || strings.Contains(v.Do, "taken off") != sand {
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

// What lies on a slab and takes nails is wood: a dip in it is not filled with what
// sets, a hump not ground; and what nobody knows the thickness of is not called
// too thin to sand.
func TestWoodOverSlab(t *testing.T) {
	in, ft := tape.Inch, tape.Foot
	over := Survey{On: OnSlab, Rule: USWood, Layers: []Layer{{Plywood, 3 * in / 4}, {Concrete, 0}},
		Readings: []Reading{{Place: "a", Edge: 6 * ft, Gap: in / 2}, {Place: "b", Edge: 6 * ft, Gap: in / 2, Hump: true}}}
	for _, v := range over.Verdicts(tape.Paper(tape.UnitInch)) {
		if v.Say != ready.Fix || strings.Contains(v.Do, "Fill") || strings.Contains(v.Do, "Grind") || strings.Contains(v.Do, "joists") {
			t.Errorf("%s: %s", v.Where, v.Do)
		}
	}
	blind := Survey{On: OnWood, Rule: USWood, Layers: []Layer{{Plywood, 3 * in / 4}}, Readings: over.Readings[1:]}
	vs := blind.Verdicts(tape.Paper(tape.UnitInch))
	if d := vs[len(vs)-1].Do; !strings.Contains(d, "not known") || strings.Contains(d, "no thicker") {
		t.Error(d)
	}
}

// Over 180 sq ft with a tenth for cuts: 198 sq ft are 6.2 sheets of 32 sq ft, so
// seven; a block every 24 in is half a foot of it for each square foot, 99 ft. Over
// joists 24 in apart a first layer under 23/32 in wants the thick one over it, as
// the table's two come to 23/32 and 15/32 in. Prices from memory, no source.
func TestRemedyCost(t *testing.T) {
	if Sheets(180) != 7 || BlockFeet(180) != 99 {
		t.Errorf("%d sheets, %d ft", Sheets(180), BlockFeet(180))
	}
	if c := AlongRemedies()[0].Cost(180); c != "7 sheets of 4 by 8 ft, roughly 140 to 280 USD" {
		t.Error(c)
	}
	if c := AlongRemedies()[1].Cost(180); c != "99 ft of 2x6, roughly 69 to 129 USD" {
		t.Error(c)
	}
	if AlongRemedies()[2].Cost(180) != "" || AlongRemedies()[0].Cost(0) != "" {
		t.Error("a price for what is not bought, or not known")
	}
	wide, _ := PanelFor(24 * tape.Inch)
	narrow, _ := PanelFor(16 * tape.Inch)
	for _, tt := range []struct {
		p     Panel
		thick tape.Length
		want  tape.Length
	}{{narrow, tape.Inch / 2, halfIn}, {wide, tape.Inch / 2, fullIn}, {wide, 5 * tape.Eighth, fullIn}, {wide, 3 * tape.Inch / 4, halfIn}} {
		if got := ThinRemedies(tt.p, tt.thick)[0].Height; got != tt.want {
			t.Errorf("%v over joists %v: %v higher, want %v", tt.thick, tt.p.Upto, got, tt.want)
		}
	}
	thin := Survey{On: OnWood, Layers: []Layer{{OSB, 5 * tape.Eighth}}, Joists: 24 * tape.Inch, SqFt: 180}.Verdicts(tape.Paper(tape.UnitInch))
	if d := thin[0].Do; !strings.Contains(d, "roughly 245 to 420 USD") || !strings.Contains(d, "from memory") || !strings.Contains(thin[0].Measured, "OSB") {
		t.Errorf("%+v", thin[0])
	}
}

// OSB of 1/2 in holds no nail (an installer's published guide): that is said, with
// what to lay over it, and not that something comes out.
func TestThinOSB(t *testing.T) {
	vs := Survey{On: OnWood, Layers: []Layer{{OSB, tape.Inch / 2}}, Joists: 16 * tape.Inch}.Verdicts(tape.Paper(tape.UnitInch))
	if len(vs) != 1 || vs[0].Say != ready.Fix || !strings.Contains(vs[0].Measured, "too thin") || !strings.Contains(vs[0].Do, "plywood over it") || vs[0].Source != srcLayers {
		t.Errorf("%+v", vs)
	}
}
