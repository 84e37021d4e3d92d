package site

import (
	"math"
	"strings"
	"testing"

	"strake/ready"
	"strake/tape"
)

// inches is a floor of an inch job.
func inches(sqft float64) Floor { return Floor{sqft, tape.Paper(tape.UnitInch)} }

// square is square feet as an area.
func square(sqft float64) tape.Area {
	foot := tape.Area(12 * tape.Inch)
	return tape.Area(sqft * float64(foot*foot))
}

// dry is a site that nothing speaks against.
func dry() Site {
	return Site{Told: true, Level: Above, Base: Wood, Heated: No, Sheet: Sheet{Kind: "felt", Perm: 5}}
}

func TestSites(t *testing.T) {
	for _, v := range Verdicts(dry(), inches(200)) {
		if v.Say != ready.Go {
			t.Errorf("a dry site: %+v", v)
		}
	}
	for name, c := range map[string]struct {
		change func(s *Site)
		rule   string
		say    ready.Say
		holds  bool
		do     string
	}{
		"below grade":          {func(s *Site) { s.Level = Below }, "level against the ground", ready.Other, true, "below grade"},
		"level open":           {func(s *Site) { s.Level = "" }, "level against the ground", ready.Look, false, "level: above"},
		"bare slab":            {func(s *Site) { s.Base, s.SlabDays = Concrete, 400 }, "what the boards are nailed to", ready.Fix, true, "Nothing is nailed to concrete"},
		"young slab":           {func(s *Site) { s.Base, s.SlabDays = OnSlab, 59 }, "age of the concrete", ready.Wait, true, "until it is 60 days old"},
		"old slab":             {func(s *Site) { s.Base, s.SlabDays = OnSlab, 60 }, "age of the concrete", ready.Go, false, "test it"},
		"slab of no known age": {func(s *Site) { s.Base = OnSlab }, "age of the concrete", ready.Look, false, "slab_days"},
		"hot floor":            {func(s *Site) { s.Heated, s.Surface = Yes, 85 }, "heating in the floor", ready.Fix, true, "5 °F a day"},
		"warm floor":           {func(s *Site) { s.Heated, s.Surface = Yes, 80 }, "heating in the floor", ready.Look, false, "Ask the boards' maker"},
		"heated, how far":      {func(s *Site) { s.Heated = Yes }, "heating in the floor", ready.Wait, false, "surface: 80 F"},
		"bath":                 {func(s *Site) { s.Room = "bath" }, "wet room", ready.Other, true, "another product"},
		"laundry":              {func(s *Site) { s.Room = "laundry" }, "wet room", ready.Other, true, "another product"},
		"flat not asked":       {func(s *Site) { s.Flat = Yes }, "rules of the building", ready.Wait, false, "in writing"},
		"flat, no":             {func(s *Site) { s.Flat, s.Allowed = Yes, No }, "rules of the building", ready.Other, true, "Ask what is"},
		"polyethylene":         {func(s *Site) { s.Sheet = Sheet{Kind: "polyethylene"} }, "sheet under the boards", ready.Fix, true, "shuts water in"},
		"on a bare slab":       {func(s *Site) { s.Base, s.SlabDays, s.Sheet = Concrete, 400, Sheet{Kind: "polyethylene"} }, "sheet under the boards", ready.Look, false, "On the slab is its place"},
		"tight sheet":          {func(s *Site) { s.Sheet.Perm = 0.6 }, "sheet under the boards", ready.Fix, true, "shuts water in"},
		"least sheet":          {func(s *Site) { s.Sheet.Perm = 0.7 }, "sheet under the boards", ready.Go, false, "Laps"},
		"open sheet":           {func(s *Site) { s.Sheet.Perm = 10.1 }, "sheet under the boards", ready.Fix, false, "tighter"},
		"sheet not known":      {func(s *Site) { s.Sheet.Perm = 0 }, "sheet under the boards", ready.Look, false, "on the roll"},
		"glue and sheet":       {func(s *Site) { s.Glue = Yes }, "glue and a rolled sheet", ready.Fix, true, "Leave out one"},
		"glue allowed":         {func(s *Site) { s.Glue, s.GlueOver = Yes, Yes }, "glue and a rolled sheet", ready.Go, false, ""},
		"standing water":       {func(s *Site) { s.Crawl = Crawl{Told: true, Water: Yes} }, "standing water", ready.Fix, true, "drained"},
		"open ground":          {func(s *Site) { s.Crawl = Crawl{Told: true, Cover: No, Water: No} }, "ground cover", ready.Fix, true, "6 mil"},
		"low crawl space":      {func(s *Site) { s.Crawl = Crawl{Told: true, Cover: Yes, Height: 17 * tape.Inch} }, "height below the joists", ready.Fix, false, "licensed"},
	} {
		s := dry()
		c.change(&s)
		var found []ready.Verdict
		for _, v := range Verdicts(s, inches(200)) {
			if v.Rule == c.rule {
				found = append(found, v)
			}
		}
		if len(found) != 1 || found[0].Say != c.say || found[0].Holds != c.holds || !strings.Contains(found[0].Do, c.do) || found[0].Source == "" {
			t.Errorf("%s: %+v", name, found)
		}
	}
	if vs := Verdicts(Site{}, inches(200)); len(vs) != 1 || vs[0].Say != ready.Look {
		t.Errorf("nothing told: %+v", vs)
	}
}

// 1,200 sq ft want 8 sq ft of vents, 0.8 over covered ground (our arithmetic on
// IRC R408 as a study guide has it).
func TestVents(t *testing.T) {
	s := Site{Crawl: Crawl{Cover: No}}
	if got := s.vents(1200); math.Abs(got-8) > 1e-12 {
		t.Errorf("%g", got)
	}
	s.Crawl.Cover = Yes
	if got := s.vents(1200); math.Abs(got-0.8) > 1e-12 {
		t.Errorf("%g", got)
	}
	for vents, want := range map[float64]ready.Say{0.8: ready.Go, 0.7: ready.Fix} {
		s := dry()
		s.Crawl = Crawl{Told: true, Cover: Yes, Water: No, Vents: square(vents)}
		for _, v := range Verdicts(s, inches(1200)) {
			if v.Rule == "vents" && v.Say != want {
				t.Errorf("%g sq ft: %+v", vents, v)
			}
		}
	}
}

func TestMakersLimit(t *testing.T) {
	s := dry()
	s.Base, s.SlabDays = OnSlab, 70
	s.Limits = Limits{SlabDays: {{Is: 90, By: ready.Maker, Source: "leaflet"}}}
	for _, v := range Verdicts(s, inches(0)) {
		if v.Rule == "age of the concrete" && (v.Say != ready.Wait || v.Source != "leaflet" || !strings.Contains(v.Limit, "the maker's, before 60 days of trade guidance")) {
			t.Errorf("%+v", v)
		}
	}
}

// Figures in metric jobs are said in their units.
func TestMetricSite(t *testing.T) {
	s := dry()
	s.Heated, s.Surface = Yes, 85
	s.Crawl = Crawl{Told: true, Cover: Yes, Water: No, Height: 400 * tape.Millimetre, Vents: square(0.1)}
	var text strings.Builder
	for _, v := range Verdicts(s, Floor{1200, tape.Paper(tape.UnitMillimetre)}) {
		text.WriteString(v.Rule + ": " + v.Measured + "; " + v.Limit + "; " + v.Do + "\n")
	}
	for _, want := range []string{"up to 29.4 °C at the surface; at most 26.7 °C", "3 °C a day", "400 mm; at least 457 mm", "0.01 m2; at least 0.07 m2 for 111.48 m2 of floor", "0.9 m of each corner"} {
		if !strings.Contains(text.String(), want) {
			t.Errorf("%q is not said in:\n%s", want, text.String())
		}
	}
	for _, not := range []string{"°F", " in,", "sq ft", " ft "} {
		if strings.Contains(text.String(), not) {
			t.Errorf("%q is said in:\n%s", not, text.String())
		}
	}
}
