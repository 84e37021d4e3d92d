package trim

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"strake/limits"
	"strake/ready"
	"strake/room"
	"strake/tape"
)

const (
	inch = tape.Inch
	half = inch / 2
	qtr  = inch / 4
)

// plain is a floor of 3/4 in boards on felt, in inches.
func plain() Floor {
	return Floor{Board: 3 * qtr, Felt: true, Unit: tape.UnitInch, Limits: limits.Default(5*inch, 3*qtr)}
}

func at(j Job) work { j.Told = true; return work{j, plain()} }

// find is the verdict of a rule at a place.
func find(t *testing.T, vs []ready.Verdict, rule, where string) ready.Verdict {
	t.Helper()
	for _, v := range vs {
		if v.Rule == rule && v.Where == where {
			return v
		}
	}
	t.Fatalf("no verdict %q at %q in %+v", rule, where, vs)
	return ready.Verdict{}
}

// 2010 ADA Standards, 303.2: 1/4 in may stand upright; 303.3: from 1/4 to 1/2 in
// is bevelled no steeper than 1:2; 303.4: more is a ramp. Half an inch in all is
// 1/4 in upright and 1/4 in bevelled over at least 1/2 in.
func TestADA303(t *testing.T) {
	for _, c := range []struct {
		diff, run tape.Length
		ramp      bool
	}{
		{0, 0, false}, {qtr, 0, false}, {-qtr, 0, false},
		{3 * inch / 8, qtr, false}, {half, half, false}, {-half, half, false},
		{half + inch/64, half + inch/32, true},
	} {
		w := at(Job{})
		run, ramp := Bevel(c.diff, w.rule(UprightMost).Is, w.rule(BevelledMost).Is)
		if run != c.run || ramp != c.ramp {
			t.Errorf("%v: run %v, ramp %v", c.diff, run, ramp)
		}
		v, told := w.level(Meeting{Diff: c.diff})
		if told != (c.run > 0) || told && (!strings.Contains(v.Source, "ADA") || strings.Contains(v.Do, "ramp") != c.ramp) {
			t.Errorf("%v: %v %+v", c.diff, told, v)
		}
	}
}

// A guide to transition strips: T-mould to 1/8 in, reducer to about 1/2 in; flush
// to 1/16 in, and a threshold against carpet, sills and higher floors, are common
// practice without a source.
func TestStrips(t *testing.T) {
	w := at(Job{})
	for _, c := range []struct {
		covering string
		diff     tape.Length
		want     Strip
	}{
		{"tile", 0, None}, {"tile", inch / 16, None}, {"tile", -inch / 16, None},
		{"vinyl", inch/16 + 1, TMould}, {"vinyl", inch / 8, TMould}, {"vinyl", -inch / 8, TMould},
		{"tile", inch/8 + 1, Reducer}, {"tile", half, Reducer}, {"tile", half + 1, Ramp},
		{"tile", -inch/8 - 1, Threshold}, {"tile", -half, Threshold}, {"tile", -half - 1, Ramp},
		{"carpet", 0, Threshold}, {"carpet", qtr, Threshold}, {"carpet", inch, Ramp},
		{"sill", 0, Threshold}, {"sill", -inch, Threshold}, {"sill", inch, Ramp},
	} {
		if got := w.strip(c.covering, c.diff); got != c.want {
			t.Errorf("%s, %v: %s, want %s", c.covering, c.diff, got, c.want)
		}
	}
	// From memory: 3/8 in of stem and 3/8 in to either side are 1-1/8 in.
	if got := w.gap(TMould); !strings.HasPrefix(got, `1-1/8" from floor to floor`) {
		t.Error(got)
	}
	if got := w.gap(None); got != `a fine joint of 1/16" at row ends, a soft joint of 1/4" beside rows` {
		t.Error(got)
	}
}

// A greater difference never asks for a lighter strip.
func TestStripsGrow(t *testing.T) {
	order := map[Strip]int{None: 0, TMould: 1, Reducer: 2, Threshold: 2, Ramp: 3}
	rapid.Check(t, func(t *rapid.T) {
		a := tape.Length(rapid.Int64Range(0, int64(inch)).Draw(t, "a"))
		b := tape.Length(rapid.Int64Range(0, int64(inch)).Draw(t, "more"))
		covering := rapid.SampledFrom([]string{"tile", "carpet", "vinyl", "sill", "other", ""}).Draw(t, "covering")
		sign := tape.Length(rapid.SampledFrom([]int{1, -1}).Draw(t, "sign"))
		w := at(Job{})
		if less, more := w.strip(covering, sign*a), w.strip(covering, sign*(a+b)); order[less] > order[more] {
			t.Fatalf("%s: %v takes a %s, %v a %s", covering, sign*a, less, sign*(a+b), more)
		}
	})
}

func TestMeetings(t *testing.T) {
	w := at(Job{Openings: []Opening{
		{Name: "hall", Covering: "tile", Known: true, Height: half},
		{Name: "den", Covering: "laminate", Known: true, Layers: []Layer{{"laminate", 3 * inch / 8}, {"plywood", 3 * inch / 8}}},
		{Name: "hearth", Covering: "stone", Known: true, Height: inch, Shim: inch / 8},
		{Name: "top", Known: false}, {Name: "closet"},
	}})
	w.f.Doorways = []room.Doorway{
		{Name: "hall", Beyond: room.BeyondTransition, Width: 30 * inch}, {Name: "den", Beyond: room.BeyondFlush},
		{Name: "top", Beyond: room.BeyondStair}, {Name: "closet", Beyond: room.BeyondRoom}, {Name: "porch", Beyond: room.BeyondTransition},
	}
	w.f.Stays = []room.Stay{{Name: "hearth", Meets: room.MeetsFlush}}
	want := []struct {
		name   string
		beyond tape.Length
		diff   tape.Length
		strip  Strip
		flush  bool
	}{
		{"hall", half, 9 * inch / 32, Reducer, false}, {"den", 3 * qtr, inch / 32, None, true},
		{"hearth", inch, -3 * inch / 32, TMould, true}, {"top", 0, 0, Nosing, false},
	}
	ms := w.meetings()
	if len(ms) != len(want) {
		t.Fatalf("%+v", ms)
	}
	for i, c := range want {
		if m := ms[i]; m.Name != c.name || m.Beyond != c.beyond || m.Diff != c.diff || m.Strip != c.strip || m.Flush != c.flush {
			t.Errorf("%+v, want %+v", m, c)
		}
	}
	vs := Verdicts(w.job, w.f)
	if v := find(t, vs, "height against the floor beyond", "hall"); v.Say != ready.Look || !strings.Contains(v.Measured, `25/32" over the subfloor, tile 1/2": 9/32" higher`) {
		t.Errorf("%+v", v)
	}
	if v := find(t, vs, "height against the floor beyond", "den"); v.Say != ready.Go {
		t.Errorf("%+v", v)
	}
	// The job has the hearth met flush: 3/32 in lower, it is not.
	if v := find(t, vs, "height against the floor beyond", "hearth"); v.Say != ready.Fix || !strings.Contains(v.Do, "it is not") {
		t.Errorf("%+v", v)
	}
	if v := find(t, vs, "height against the floor beyond", "porch"); v.Say != ready.Look || v.Measured != "not told" {
		t.Errorf("%+v", v)
	}
	if v := find(t, vs, "risers of a stair", "top"); v.Say != ready.Look || v.Measured != "not told" {
		t.Errorf("%+v", v)
	}
	if v := find(t, vs, "change of level", "hall"); v.Measured != `9/32"` {
		t.Errorf("%+v", v)
	}
}

// What is measured from what lies there now, with its thickness known, says the
// same as what is measured from the subfloor.
func TestMeasuredFromNow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string, least, most tape.Length) tape.Length {
			return inch / 32 * tape.Length(rapid.IntRange(int(32*least/inch), int(32*most/inch)).Draw(t, name))
		}
		old := draw("old", 0, inch)
		sub := at(Job{Panel: draw("panel", 0, half)})
		sub.f.Old = old
		for _, covering := range []string{"tile", "carpet"} {
			o := Opening{Name: covering, Covering: covering, Known: true, Height: draw("height", 0, 2*inch)}
			o.Leaf = Leaf{Told: true, Of: "solid wood", Clear: draw("clear", inch, 3*inch), Beyond: rapid.Bool().Draw(t, "beyond"), Strip: draw("strip", 0, qtr)}
			sub.job.Openings = append(sub.job.Openings, o)
		}
		sub.job.Openings = append(sub.job.Openings, Opening{Name: "closet", Track: Track{Told: true, Of: "sliding", Clear: draw("track", inch, 3*inch), Lifts: draw("lifts", 0, half)}})
		sub.job.Appliances = []Appliance{{Name: "range", Opening: draw("opening", 34*inch, 37*inch), Height: 34 * inch, Boards: Under, Feet: inch}}
		head := rapid.Bool().Draw(t, "head")
		sub.job.Stairs = []Stair{{Name: "stair", Head: head, Risers: []tape.Length{7 * inch, draw("riser", 6*inch, 8*inch), 7 * inch}}}

		now := work{sub.job, sub.f}
		now.job.From = Now
		now.job.Openings = append([]Opening(nil), sub.job.Openings...)
		for i := range now.job.Openings {
			o := &now.job.Openings[i]
			o.Height, o.Leaf.Clear, o.Track.Clear = o.Height-old, o.Leaf.Clear-old, o.Track.Clear-old
		}
		now.job.Appliances = []Appliance{sub.job.Appliances[0]}
		now.job.Appliances[0].Opening -= old
		s := sub.job.Stairs[0]
		s.Risers = append([]tape.Length(nil), s.Risers...)
		if head {
			s.Risers[2] += old // the tread below is that much farther from the old floor's top
		} else {
			s.Risers[0] -= old
		}
		now.job.Stairs = []Stair{s}

		a, b := Of(sub.job, sub.f), Of(now.job, now.f)
		for i := range a.Meetings {
			if x, y := a.Meetings[i], b.Meetings[i]; x.Diff != y.Diff || x.Strip != y.Strip {
				t.Fatalf("%+v and %+v", x, y)
			}
		}
		for i := range a.Swings {
			if x, y := a.Swings[i], b.Swings[i]; x.Left != y.Left || x.Cut != y.Cut {
				t.Fatalf("%+v and %+v", x, y)
			}
		}
		if x, y := a.Hung[0], b.Hung[0]; x.Left != y.Left || x.Lift != y.Lift {
			t.Fatalf("%+v and %+v", x, y)
		}
		if x, y := a.Fits[0], b.Fits[0]; x.Left != y.Left || x.Room != y.Room {
			t.Fatalf("%+v and %+v", x, y)
		}
		for i, r := range a.Flights[0].Then {
			if b.Flights[0].Then[i] != r {
				t.Fatalf("%v and %v", a.Flights[0].Then, b.Flights[0].Then)
			}
		}
	})
}
