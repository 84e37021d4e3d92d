package trim

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"strake/ready"
	"strake/room"
	"strake/tape"
)

// From memory: a leaf keeps 1/8 to 1/4 in over the floor. One that is 1 in over
// the subfloor has 7/32 in left over boards and felt; one at 3/4 in is cut by 9/32.
func TestLeaves(t *testing.T) {
	leaf := func(name string, clear tape.Length, change func(*Leaf)) Opening {
		o := Opening{Name: name, Leaf: Leaf{Told: true, Of: "solid wood", Clear: clear}}
		if change != nil {
			change(&o.Leaf)
		}
		return o
	}
	low := 3 * qtr
	for _, c := range []struct {
		o     Opening
		say   ready.Say
		holds bool
		cut   tape.Length
		do    string
	}{
		{leaf("clears", inch, nil), ready.Go, false, 0, ""},
		{leaf("low", low, nil), ready.Fix, false, 9 * inch / 32, `Cut 9/32" off its bottom`},
		{leaf("strip", inch, func(l *Leaf) { l.Strip = inch / 8 }), ready.Fix, false, 5 * inch / 32, "Cut"},
		{leaf("rated", low, func(l *Leaf) { l.Rated = true }), ready.Fix, true, 9 * inch / 32, "is not cut on site: ask its maker, or the authority"},
		{leaf("exterior", low, func(l *Leaf) { l.Exterior = true }), ready.Fix, true, 9 * inch / 32, "is not cut"},
		{leaf("steel", low, func(l *Leaf) { l.Of = "steel" }), ready.Fix, true, 9 * inch / 32, "is not cut"},
		{leaf("hollow", low, func(l *Leaf) { l.Of = "hollow-core" }), ready.Fix, false, 9 * inch / 32, "write cut_most"},
		{leaf("rail", low, func(l *Leaf) { l.Of, l.CutMost = "hollow-core", qtr }), ready.Fix, false, 9 * inch / 32, "more than its maker lets be cut"},
		{leaf("away", low, func(l *Leaf) { l.Beyond = true }), ready.Look, false, 0, "Write height"},
	} {
		w := at(Job{Openings: []Opening{c.o}})
		w.f.Doorways = []room.Doorway{{Name: c.o.Name, Beyond: room.BeyondTransition}}
		v := find(t, Verdicts(w.job, w.f), "door leaf over the floor", c.o.Name)
		if s := w.swings()[0]; v.Say != c.say || v.Holds != c.holds || s.Cut != c.cut || !strings.Contains(v.Do, c.do) {
			t.Errorf("%s: %+v, %+v", c.o.Name, v, s)
		}
		if cuts := strings.Contains(v.Do, "off its bottom"); cuts && (c.holds || !strings.Contains(v.Do, "alarm contacts")) {
			t.Errorf("%s: %s", c.o.Name, v.Do)
		}
	}
}

// A strip stands on the higher of the two floors, whichever way the leaf opens.
func TestLeafOverAStrip(t *testing.T) {
	for _, c := range []struct {
		beyond tape.Length // 25/32 in is here
		away   bool
		left   tape.Length
	}{
		{inch, false, 3 * inch / 8}, {inch, true, 3 * inch / 8},
		{half, false, 19 * inch / 32}, {half, true, 19 * inch / 32},
	} {
		w := at(Job{Openings: []Opening{{Name: "hall", Known: true, Height: c.beyond, Leaf: Leaf{Told: true, Of: "solid wood", Clear: 3 * half, Strip: inch / 8, Beyond: c.away}}}})
		if s := w.swings()[0]; s.Left != c.left {
			t.Errorf("%+v: %+v", c, s)
		}
	}
}

// Jambs are sawn by what lies under the boards there, the board, and 1/32 in to
// slide in (common practice, no source), only under the leaf where the floor
// stops; what must not be cut is not.
func TestJambs(t *testing.T) {
	jamb := func(name string, j Jambs) Opening {
		j.Told = true
		return Opening{Name: name, Jambs: j}
	}
	w := at(Job{Panel: qtr, Openings: []Opening{
		jamb("wood", Jambs{Of: "wood"}), jamb("through", Jambs{Of: "wood"}), jamb("met", Jambs{Of: "wood"}),
		jamb("rated", Jambs{Of: "wood", Rated: true}), jamb("steel", Jambs{Of: "steel"}), jamb("brick", Jambs{Of: "masonry"}), jamb("front", Jambs{Of: "wood", Exterior: true}),
	}})
	w.job.Openings[0].Shim = inch / 8
	for _, d := range []struct {
		name     string
		undercut bool
		beyond   room.Beyond
	}{{"wood", true, room.BeyondTransition}, {"through", true, room.BeyondRoom}, {"met", false, room.BeyondTransition}, {"rated", true, room.BeyondTransition},
		{"steel", false, room.BeyondTransition}, {"brick", true, room.BeyondTransition}, {"front", true, room.BeyondTransition}} {
		w.f.Doorways = append(w.f.Doorways, room.Doorway{Name: d.name, Undercut: d.undercut, Beyond: d.beyond, Ends: 9 * inch / 4})
	}
	us := w.undercuts()
	if u := us[0]; u.Height != inch/8+qtr+inch/32+3*qtr+inch/32 || u.Deep != 9*inch/4 {
		t.Errorf("%+v", u)
	}
	if us[1].Deep != 0 {
		t.Errorf("the floor goes on: %+v", us[1])
	}
	vs := Verdicts(w.job, w.f)
	for name, want := range map[string]struct {
		say   ready.Say
		holds bool
		do    string
	}{
		"wood":    {ready.Go, false, `Saw 1-3/16" over the subfloor at that spot: a scrap of flooring`},
		"through": {ready.Go, false, "alarm contacts"},
		"met":     {ready.Look, false, "write undercut: yes"},
		"rated":   {ready.Fix, true, "undercut: no"},
		"steel":   {ready.Go, false, "A steel frame is not cut: boards are scribed round it."},
		"brick":   {ready.Fix, true, "undercut: no"},
		"front":   {ready.Fix, true, "undercut: no"},
	} {
		v := find(t, vs, "undercut of jambs and casings", name)
		if v.Say != want.say || v.Holds != want.holds || !strings.Contains(v.Do, want.do) {
			t.Errorf("%s: %+v", name, v)
		}
		if want.holds && strings.Contains(v.Do, "Saw") {
			t.Errorf("%s is sawn: %s", name, v.Do)
		}
	}
	if v := find(t, vs, "undercut of jambs and casings", "wood"); !strings.Contains(v.Do, `2-1/4" deep`) {
		t.Error(v.Do)
	}
}

func TestTracks(t *testing.T) {
	for _, c := range []struct {
		track Track
		say   ready.Say
		left  tape.Length
		do    string
	}{
		{Track{Clear: inch}, ready.Go, 7 * inch / 32, ""},
		{Track{Clear: inch, Guide: half, Lifts: half}, ready.Look, 7 * inch / 32, `up by 9/32" of the 1/2"`},
		{Track{Clear: inch, Guide: half, Lifts: qtr}, ready.Fix, 7 * inch / 32, `lacks 1/32", turned up by the 1/4"`},
		{Track{Clear: 29 * inch / 32, Lifts: inch / 8}, ready.Go, inch / 8, ""},
		{Track{Clear: 27 * inch / 32, Lifts: inch / 16}, ready.Look, inch / 16, `up by 1/16" of the 1/16"`},
		{Track{Clear: half}, ready.Fix, -9 * inch / 32, `lacks 13/32": that comes off`},
	} {
		c.track.Told, c.track.Of = true, "bifold"
		w := at(Job{Openings: []Opening{{Name: "closet", Track: c.track}}})
		v := find(t, Verdicts(w.job, w.f), "bifold door over the floor", "closet")
		if below := strings.Contains(v.Measured, "below the new floor"); below != (c.left < 0) {
			t.Errorf("%+v", v)
		}
		if h := w.hung()[0]; h.Left != c.left || v.Say != c.say || !strings.Contains(v.Do, c.do) {
			t.Errorf("%+v: %+v %+v", c.track, h, v)
		}
	}
}

// A dishwasher of 33-7/8 in under a counter 34-3/4 in over the subfloor has 3/32 in
// left over boards and felt, however boards lie to it.
func TestAppliances(t *testing.T) {
	for _, c := range []struct {
		name string
		a    Appliance
		say  ready.Say
		left tape.Length
		do   string
	}{
		{"under", Appliance{Opening: 34*inch + 3*qtr, Height: 33*inch + 7*inch/8, Boards: Under}, ready.Fix, 3 * inch / 32, "does not go back in"},
		{"front", Appliance{Opening: 34*inch + 3*qtr, Height: 33*inch + 7*inch/8, Boards: Front}, ready.Fix, 3 * inch / 32, "locked in behind the floor"},
		{"roomy", Appliance{Opening: 35 * inch, Height: 33*inch + 7*inch/8, Boards: Front}, ready.Go, 11 * inch / 32, ""},
		{"just", Appliance{Opening: 35 * inch, Height: 35*inch - 29*inch/32, Boards: Under}, ready.Go, inch / 8, ""},
		{"on a block", Appliance{Opening: 35 * inch, Height: 33*inch + 7*inch/8, Boards: Front, StandsOn: 9 * inch / 8}, ready.Fix, 0, "locked in"},
	} {
		c.a.Name = c.name
		w := at(Job{Appliances: []Appliance{c.a}})
		v := find(t, Verdicts(w.job, w.f), "appliance in its opening", c.name)
		if f := w.fits()[0]; f.Left != c.left || v.Say != c.say || v.Holds != (c.say == ready.Fix) || !strings.Contains(v.Do, c.do) {
			t.Errorf("%s: %+v %+v", c.name, f, v)
		}
	}
	w := at(Job{Appliances: []Appliance{{Name: "range", Opening: 35*inch + inch/8, Height: 34 * inch, Boards: Front, Feet: inch}}})
	for _, v := range Verdicts(w.job, w.f) {
		if v.Rule == "feet of an appliance" {
			t.Errorf("1/8 in below is near enough: %+v", v)
		}
	}
	w = at(Job{Appliances: []Appliance{{Name: "range", Opening: 36 * inch, Height: 34 * inch, Boards: Front, Feet: inch}}})
	if v := find(t, Verdicts(w.job, w.f), "feet of an appliance", "range"); !strings.Contains(v.Measured, `stays 1" below`) {
		t.Errorf("%+v", v)
	}
}

// Raising the floor never makes a door, a track or an appliance pass, and never
// asks for less to be cut.
func TestRaisedNeverPasses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string, least, most tape.Length) tape.Length {
			return tape.Length(rapid.Int64Range(int64(least), int64(most)).Draw(t, name))
		}
		o := Opening{Name: "door", Covering: "tile", Known: rapid.Bool().Draw(t, "known"), Height: draw("height", 0, 2*inch), Shim: draw("shim", 0, qtr)}
		o.Leaf = Leaf{Told: true, Of: "solid wood", Clear: draw("clear", 0, 3*inch), Beyond: rapid.Bool().Draw(t, "beyond"), Strip: draw("strip", 0, half)}
		o.Track = Track{Told: true, Clear: draw("track", 0, 3*inch), Guide: draw("guide", 0, inch), Lifts: draw("lifts", 0, inch)}
		a := Appliance{Name: "a", Opening: draw("opening", 34*inch, 36*inch), Height: draw("tall", 33*inch, 35*inch), Boards: rapid.SampledFrom([]Where{Under, Front}).Draw(t, "boards"), StandsOn: draw("stands", 0, inch)}
		low := Build{draw("board", half, inch), 0}
		high := Build{low.Board, draw("panel", 1, inch)}
		w := at(Job{Openings: []Opening{o}, Appliances: []Appliance{a}})
		if x, y := w.swing(low, o), w.swing(high, o); y.Left > x.Left || y.Cut < x.Cut {
			t.Fatalf("leaf: %+v, raised %+v", x, y)
		}
		if x, y := w.hang(low, o), w.hang(high, o); y.Left > x.Left || y.Lift < x.Lift {
			t.Fatalf("track: %+v, raised %+v", x, y)
		}
		if x, y := w.fit(low, a), w.fit(high, a); y.Pass && !x.Pass || y.Left > x.Left {
			t.Fatalf("appliance: %+v, raised %+v", x, y)
		}
	})
}
