package trim

import (
	"strings"
	"testing"

	"strake/ready"
	"strake/room"
	"strake/tape"
)

// A gap of 3/4 in with 1/8 in of taper and 1/32 in by winter wants 29/32 in, and 1/4 in
// of lap besides.
func TestCover(t *testing.T) {
	ab, bc := room.Wall{"A", "B"}, room.Wall{"B", "C"}
	for _, c := range []struct {
		name  string
		cover tape.Length
		say   ready.Say
		laps  tape.Length
		do    string
	}{
		{"all of it", 5 * qtr, ready.Go, 11 * inch / 32, ""},
		{"just the lap", 37 * inch / 32, ready.Go, qtr, ""},
		{"a short lap", inch, ready.Look, 3 * inch / 32, `thicker by 5/32"`},
		{"the gap shows", 3 * qtr, ready.Fix, -5 * inch / 32, `5/32" of the gap would show`},
	} {
		w := at(Job{})
		w.f.Laid, w.f.Winter = true, inch/32
		w.f.Walls = []Gap{{Wall: ab, Least: 3 * qtr, Greatest: 7 * inch / 8, Beside: true, Cover: c.cover}}
		if x := w.covered()[0]; x.Laps != c.laps {
			t.Errorf("%s: %+v", c.name, x)
		}
		where := "wall A-B"
		if c.say == ready.Go {
			where = "walls A-B"
		}
		v := find(t, Verdicts(w.job, w.f), "base and shoe over the gap", where)
		if v.Say != c.say || !strings.Contains(v.Do, c.do) {
			t.Errorf("%s: %+v", c.name, v)
		}
	}
	// Before boards are laid only what shows is told.
	for cover, want := range map[tape.Length]ready.Say{inch: ready.Go, 3 * qtr: ready.Fix} {
		w := at(Job{})
		w.f.Winter, w.f.Walls = inch/32, []Gap{{Wall: ab, Least: 3 * qtr, Greatest: 7 * inch / 8, Beside: true, Cover: cover}}
		if vs := w.coverVerdicts(); len(vs) != 1 || vs[0].Say != want {
			t.Errorf("%v: %+v", cover, vs)
		}
	}
	// Row ends do not move, and a wall may have a cover of its own.
	w := at(Job{Covers: []Cover{{Wall: room.Wall{"C", "B"}, Thickness: half}}})
	w.f.Winter, w.f.Walls = inch/32, []Gap{{Wall: bc, Least: qtr, Greatest: qtr, Cover: inch}}
	if x := w.covered()[0]; x.Winter != 0 || x.Cover != half || x.Laps != qtr {
		t.Errorf("%+v", x)
	}
}

// Every build-up of what is stocked stands there once, the job's own among them.
func TestBuilds(t *testing.T) {
	w := at(Job{Panel: qtr, Stocked: Stocked{Boards: []tape.Length{half, 3 * qtr}, Panels: []tape.Length{qtr, half}}})
	bs := w.builds()
	if len(bs) != 6 {
		t.Fatalf("%v", bs)
	}
	seen := map[Build]int{}
	for i, b := range bs {
		seen[b]++
		if i > 0 && b.Board+b.Panel < bs[i-1].Board+bs[i-1].Panel {
			t.Errorf("not by height: %v", bs)
		}
	}
	if seen[w.chosen()] != 1 || len(seen) != 6 {
		t.Errorf("%v", seen)
	}
	// 3/4 in boards meet tile at 25/32 in flush, with 1/4 in of panel they do not.
	w.job.Openings = []Opening{{Name: "hall", Covering: "tile", Known: true, Height: 25 * inch / 32}}
	v := find(t, Verdicts(w.job, w.f), "build-up", "of what is stocked")
	if v.Say != ready.Look || !strings.Contains(v.Do, `3/4" boards, no panel (25/32" high, flush with 1 of 1 floors beyond)`) || !strings.Contains(v.Do, `1/2" boards on a 1/4" panel (25/32" high`) {
		t.Errorf("%+v", v)
	}
	// One that an appliance speaks against is not called better.
	w.job.Appliances = []Appliance{{Name: "range", Opening: 35 * inch, Height: 34*inch + 3*qtr, Boards: Under}}
	if v := find(t, Verdicts(w.job, w.f), "build-up", "of what is stocked"); strings.Contains(v.Do, "Better") || !strings.Contains(v.Do, "None of what is stocked") {
		t.Errorf("%+v", v)
	}
	w.job.Appliances = nil
	w.job.Panel = 0
	if v := find(t, Verdicts(w.job, w.f), "build-up", "of what is stocked"); v.Say != ready.Go {
		t.Errorf("%+v", v)
	}
}

// Metric jobs are told in millimetres, and nothing is said where nothing is told.
func TestUnits(t *testing.T) {
	mm := tape.Millimetre
	j := Job{Told: true, SheetTold: true, Sheet: mm, Openings: []Opening{{Name: "hall", Covering: "tile", Known: true, Height: 12 * mm}}}
	f := plain()
	f.Board, f.Unit = 20*mm, tape.UnitMillimetre
	v := find(t, Verdicts(j, f), "height against the floor beyond", "hall")
	if v.Measured != "this floor 21 mm over the subfloor, tile 12 mm: 9 mm higher" || !strings.Contains(v.Limit, "T-mould to 3.2 mm") {
		t.Errorf("%+v", v)
	}
	for _, v := range Verdicts(j, f) {
		if strings.Contains(v.Measured+v.Limit+v.Do, `"`) {
			t.Errorf("inches in a metric job: %+v", v)
		}
	}
	j.Told = false
	if vs := Verdicts(j, f); len(vs) != 0 {
		t.Errorf("%+v", vs)
	}
}

// Every verdict has a place, a rule and a source.
func TestEveryVerdictHasASource(t *testing.T) {
	w := at(Job{Openings: []Opening{{Name: "hall", Covering: "tile", Known: true, Leaf: Leaf{Told: true, Of: "glass"}, Jambs: Jambs{Told: true, Of: "wood"}}, {Name: "closet", Track: Track{Told: true, Of: "sliding"}}},
		Stairs: []Stair{{Name: "stair", Risers: seven(3)}}, Appliances: []Appliance{{Name: "range", Opening: 36 * inch, Height: 35 * inch, Boards: Under, Feet: qtr}},
		Stocked: Stocked{Boards: []tape.Length{half}}})
	w.f.Walls = []Gap{{Wall: room.Wall{"A", "B"}, Greatest: inch}}
	vs := Verdicts(w.job, w.f)
	if len(vs) < 8 {
		t.Errorf("%d verdicts", len(vs))
	}
	for _, v := range vs {
		if v.Rule == "" || v.Where == "" || v.Measured == "" || v.Source == "" || v.Say != ready.Go && v.Do == "" {
			t.Errorf("%+v", v)
		}
	}
}
