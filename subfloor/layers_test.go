package subfloor

import (
	"strings"
	"testing"

	"strake/tape"
)

// NWFA minimum as quoted by Wood Floor Business (the middle row from memory), and
// the APA hardwood floor table (Hardwood Floors, Feb 2018).
func TestPanelTable(t *testing.T) {
	in := tape.Inch
	for _, tt := range []struct {
		spacing, ply, osb tape.Length
		apa               string
	}{
		{12 * in, 5 * in / 8, 23 * in / 32, "40/20"},
		{16 * in, 5 * in / 8, 23 * in / 32, "40/20"},
		{192 * in / 10, 23 * in / 32, 23 * in / 32, "48/24"},
		{24 * in, 7 * in / 8, 7 * in / 8, "60/32"},
	} {
		p, ok := PanelFor(tt.spacing)
		if !ok || p.Plywood != tt.ply || p.OSB != tt.osb || !strings.Contains(p.APA, tt.apa) || p.Source == "" {
			t.Errorf("%v: %+v", tt.spacing, p)
		}
	}
	if _, ok := PanelFor(24*in + in/8); ok {
		t.Error("a panel for joists over 24 in")
	}
	p, _ := PanelFor(16 * in)
	if !p.Enough(Plywood, 19*in/32) || p.Enough(Plywood, in/2) || p.Enough(OSB, 5*in/8) || !p.Enough(OSB, 23*in/32) {
		t.Error("5/8 in plywood is sold as 19/32 in and will do at 16 in; 5/8 in OSB will not")
	}
	if p.Spare(Plywood, 5*in/8) != 0 || p.Spare(Plywood, 3*in/4) != in/8 {
		t.Error("only what the joists do not need may be sanded off")
	}
}

// No way out touches a joist with a saw, and what adds height says so.
func TestRemedies(t *testing.T) {
	for _, r := range append(ThinRemedies(panels[0], tape.Inch/2), AlongRemedies()...) {
		for _, bad := range []string{"cut", "notch", "plane ", "saw"} {
			if strings.Contains(r.What, bad) {
				t.Errorf("%q: %s", bad, r.What)
			}
		}
		if strings.Contains(r.What, "1/2 in") != (r.Height == tape.Inch/2) || r.Source == "" {
			t.Errorf("height of %q: %v", r.What, r.Height)
		}
	}
}

func TestLayers(t *testing.T) {
	in := tape.Inch
	fs := Fates([]Layer{{Carpet, 0}, {Foam, 0}, {Particleboard, 5 * in / 8}, {Plywood, 5 * in / 8}}, 1988)
	if !fs[2].Out || fs[2].Holds || fs[3].Out {
		t.Errorf("particleboard stays, or plywood goes: %+v", fs)
	}
	if thick, top, known := Nailing(fs); thick != 5*in/8 || top != Plywood || !known {
		t.Errorf("left to nail into: %v of %s", thick, top)
	}
	fs = Fates([]Layer{{Plywood, in / 4}, {Particleboard, 5 * in / 8}, {Plywood, in / 2}}, 0)
	if !fs[0].Out || !strings.Contains(fs[0].Why, "particleboard") {
		t.Error("what lies on particleboard stays when that goes")
	}
	for _, tt := range []struct {
		m     Material
		built int
		test  bool
	}{{Resilient, 1962, true}, {Resilient, 0, true}, {Sheet, 1980, true}, {Adhesive, 1980, true}, {Resilient, 1981, false}, {Carpet, 1962, false}} {
		if got := Fates([]Layer{{tt.m, 0}}, tt.built)[0].Test; got != tt.test {
			t.Errorf("%s of %d: test %v", tt.m, tt.built, got)
		}
		if f := Fates([]Layer{{tt.m, 0}}, tt.built)[0]; f.Source == "" || tt.test != (f.Source == srcTest) {
			t.Errorf("%s of %d: source %q", tt.m, tt.built, f.Source)
		}
	}
	if f := Fates([]Layer{{OSB, in / 2}}, 0)[0]; f.Holds {
		t.Error("1/2 in OSB holds")
	}
	if _, _, known := Nailing(Fates([]Layer{{Plywood, 0}}, 0)); known {
		t.Error("a thickness nobody told is known")
	}
	if thick, top, _ := Nailing(Fates([]Layer{{Concrete, 4 * in}}, 0)); thick != 0 || top != "" {
		t.Error("a nail holds in concrete")
	}
	if n := len(Fates([]Layer{{Concrete, 0}, {Plywood, in}}, 0)); n != 1 {
		t.Error("what lies below concrete is judged")
	}
	for _, m := range Materials() {
		if kinds[m].why == "" {
			t.Errorf("nothing is said of %s", m)
		}
	}
	if len(Materials()) != len(kinds) {
		t.Error("a material without a word, or a word without one")
	}
}

func TestLean(t *testing.T) {
	for d, want := range map[float64]Lean{0: Along, 29: Along, 31: Diagonal, 45: Diagonal, 60: Diagonal, 61: Across, 90: Across, 135: Diagonal, 180: Along, -45: Diagonal, -90: Across, 350: Along} {
		if got := LeanOf(d); got != want {
			t.Errorf("%g degrees: %s, want %s", d, got, want)
		}
	}
}

// 4 by 3 ft over joists 16 in apart: joists at 0, 16, 32 and 48 in, a screw at
// 0, 6 ... 36 in along each.
func TestScrews(t *testing.T) {
	if got := Screws(48*tape.Inch, 36*tape.Inch, 16*tape.Inch); got != 4*7 {
		t.Errorf("%d screws", got)
	}
}

// Nothing that is told to do puts compound under nails or sands a panel that is
// no thicker than it must be.
func TestDo(t *testing.T) {
	if d := Do(OnWood, Dip, true, true); !strings.Contains(d, "No compound") || strings.Contains(d, "Fill") {
		t.Error(d)
	}
	if d := Do(OnWood, Hump, false, true); strings.Contains(d, "Sand it") || !strings.Contains(Do(OnWood, Hump, true, true), "test") {
		t.Error(d)
	}
	if MayTake(OnWood, 0, true) != 0 || MayTake(OnWood, tape.Inch, false) != 0 || MayTake(OnWood, tape.Eighth, true) != tape.Eighth || MayTake(OnSlab, 0, false) != mostOff {
		t.Error("taken off where nothing may be")
	}
}

// What comes out is all that lies over the topmost layer that stays: its thickness
// is known only where each of those has one and something is told to stay.
func TestComesOut(t *testing.T) {
	in := tape.Inch
	ply := Layer{Plywood, 3 * in / 4}
	for _, c := range []struct {
		name   string
		layers []Layer
		want   tape.Length
		known  bool
	}{
		{"nothing over it", []Layer{ply}, 0, true},
		{"carpet and pad", []Layer{{Carpet, in / 2}, {Foam, 3 * in / 8}, ply}, 7 * in / 8, true},
		{"plywood over particleboard comes out too", []Layer{{Plywood, in / 4}, {Particleboard, 5 * in / 8}, ply}, 7 * in / 8, true},
		{"a thickness is missing", []Layer{{Carpet, 0}, ply}, 0, false},
		{"a slab stays", []Layer{{Carpet, in / 2}, {Concrete, 0}}, in / 2, true},
		{"nothing is told of what stays", []Layer{{Carpet, in / 2}}, in / 2, false},
		{"nothing is told", nil, 0, false},
	} {
		if got, known := ComesOut(Fates(c.layers, 1990)); got != c.want || known != c.known {
			t.Errorf("%s: %v, known %v", c.name, got, known)
		}
	}
}
