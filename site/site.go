// Package site is whether a nailed floor of solid boards belongs where it is
// wanted: asked first, before anything is measured.
//
// A basement is below grade: another product. A slab of 40 days is waited for. A
// bathroom floods and steams: another product. Over a wood subfloor goes a sheet
// that lets some vapour through, from 0.7 to 10 perm; polyethylene there is to be
// taken out. What nobody has answered is asked.
package site

import (
	"fmt"

	"strake/ready"
	"strake/tape"
)

// Level is where the floor lies against the ground outside.
type Level string

// The levels.
const (
	Above Level = "above"
	On    Level = "on"
	Below Level = "below"
)

// Base is what the floor is fastened to.
type Base string

// The bases. Plywood on a slab is a wood subfloor over concrete.
const (
	Wood        Base = "wood"
	Concrete    Base = "slab"
	OnSlab      Base = "plywood on slab"
	SleepersToo Base = "sleepers on slab"
)

// Answer is yes or no, or nothing yet.
type Answer string

// The answers.
const (
	Yes Answer = "yes"
	No  Answer = "no"
)

// Crawl is a crawl space below the floor.
type Crawl struct {
	Told   bool
	Cover  Answer      // its ground is covered by sheet, all of it
	Water  Answer      // water stands in it
	Height tape.Length // from the ground to the joists, 0 not known
	Vents  tape.Area   // of openings, 0 not known
	Closed Answer      // closed and conditioned: without vents on purpose
}

// Sheet is what is laid between subfloor and boards.
type Sheet struct {
	Kind string  // felt, paper, polyethylene ...; "" none told
	Perm float64 // permeance, 0 not known
}

// Site is what there is to know of the place.
type Site struct {
	Told     bool // the job has a section for it
	Level    Level
	Base     Base
	SlabDays int     // age of the concrete, 0 not known
	Heated   Answer  // heating in the floor
	Surface  float64 // its highest surface temperature in °F, 0 not known
	Room     string  // bath, laundry, or another word
	Crawl    Crawl
	Flat     Answer // a flat, or a house under rules of an association
	Allowed  Answer // its rules have been asked, and allow the floor
	Sheet    Sheet
	Glue     Answer // boards are glued as well as nailed
	GlueOver Answer // the adhesive's maker allows it over that sheet
	Limits   Limits
}

// Floor is what the verdicts want to know of the floor: its area in square feet, 0
// not known, and how figures are said.
type Floor struct {
	SqFt  float64
	Style tape.Style
}

// Verdicts is what there is to say of the site, in the order it is asked.
func Verdicts(s Site, f Floor) []ready.Verdict {
	if !s.Told {
		return []ready.Verdict{{Say: ready.Look, Rule: "does this floor belong here", Where: "site", Measured: "nothing is written of the site",
			Do: "Answer under site in the job: level, subfloor, heating, wet room, crawl space, age of concrete, flat.", Source: common}}
	}
	var out []ready.Verdict
	for _, ask := range []func() []ready.Verdict{s.level, s.base, s.age, func() []ready.Verdict { return s.heated(f) }, s.room} {
		out = append(out, ask()...)
	}
	out = append(out, s.crawl(f)...)
	for _, ask := range []func() []ready.Verdict{s.flat, s.sheet, s.glue} {
		out = append(out, ask()...)
	}
	return out
}

// one is a verdict alone.
func one(v ready.Verdict) []ready.Verdict { return []ready.Verdict{v} }

// asked is the verdict on a question that nobody has answered.
func asked(rule, key, do string) []ready.Verdict {
	return one(ready.Verdict{Say: ready.Look, Rule: rule, Where: "site", Measured: "not answered", Do: do + fmt.Sprintf(" Write “%s” under site.", key), Source: common})
}

func (s Site) level() []ready.Verdict {
	v := ready.Verdict{Say: ready.Go, Rule: "level against the ground", Where: "site", Measured: string(s.Level) + " grade", Limit: "solid boards: on or above grade", Source: srcGrade}
	switch s.Level {
	case "":
		return asked(v.Rule, "level: above", "Is the floor above, on or below the level of the ground outside?")
	case Below:
		v.Say, v.Holds = ready.Other, true
		v.Do = "Solid boards do not belong below grade: walls and floor there take up water from the ground. Ask for an engineered or another product that its maker allows there."
	}
	return one(v)
}

func (s Site) base() []ready.Verdict {
	v := ready.Verdict{Say: ready.Go, Rule: "what the boards are nailed to", Where: "subfloor", Measured: string(s.Base), Limit: "wood that holds a nail", Source: srcBase}
	switch s.Base {
	case "":
		return asked(v.Rule, "subfloor: wood", "Are the boards nailed to wood, or what lies there?")
	case Concrete:
		v.Say, v.Holds = ready.Fix, true
		v.Do = "Nothing is nailed to concrete. Lay a vapour retarder and, over it, plywood or sleepers to nail to, or take a product that is glued to slabs; the makers of boards and adhesive say which."
	case OnSlab, SleepersToo:
		v.Do = "The vapour retarder belongs on the slab, under the wood. Nails must be short enough not to reach the slab or the sheet on it."
	}
	return one(v)
}

func (s Site) onSlab() bool { return s.Base == Concrete || s.Base == OnSlab || s.Base == SleepersToo }

func (s Site) age() []ready.Verdict {
	if !s.onSlab() {
		return nil
	}
	r, unit := Guides.Rule(s.Limits, SlabDays)
	v := ready.Verdict{Say: ready.Go, Rule: "age of the concrete", Where: "slab", Measured: fmt.Sprintf("%d days", s.SlabDays), Limit: "at least " + r.Words(unit), Source: r.Source}
	switch {
	case s.SlabDays == 0:
		return asked(v.Rule, "slab_days: 400", "How many days ago was the concrete poured?")
	case float64(s.SlabDays) < r.Is:
		v.Say, v.Holds, v.Do = ready.Wait, true, fmt.Sprintf("Wait until it is %.0f days old, then test the slab: age alone does not tell that it is dry.", r.Is)
	default:
		v.Do = "Age alone does not tell that it is dry: test it (moisture, slab)."
	}
	return one(v)
}

func (s Site) heated(f Floor) []ready.Verdict {
	is, unit := Guides.Rule(s.Limits, Surface)
	imperial := f.Style.Unit.Imperial()
	r, unit := is.In(imperial, unit)
	v := ready.Verdict{Say: ready.Go, Rule: "heating in the floor", Where: "site", Measured: string(s.Heated), Source: r.Source}
	switch {
	case s.Heated == "":
		return asked(v.Rule, "heated: no", "Is there heating in the floor, of water or wire?")
	case s.Heated == No:
		return one(v)
	case s.Surface == 0:
		v.Say, v.Do = ready.Wait, "Ask what its surface comes to at most, and the boards' maker whether they may lie over it; write surface: "+map[bool]string{true: "80 F", false: "27 C"}[imperial]+". Find every pipe and wire before the first nail."
	case s.Surface > is.Is:
		v.Say, v.Holds, v.Measured, v.Limit = ready.Fix, true, "up to "+warmth(s.Surface, imperial)+" at the surface", "at most "+r.Words(unit)
		v.Do = "Have the control limit the surface, and change it by no more than " + step(imperial) + " a day. Many makers allow no solid boards over heating: ask. Find every pipe and wire before the first nail."
	default:
		v.Say, v.Measured, v.Limit = ready.Look, "up to "+warmth(s.Surface, imperial)+" at the surface", "at most "+r.Words(unit)
		v.Do = "Ask the boards' maker whether they may lie over it. It has to run before boards are brought in. Find every pipe and wire before the first nail."
	}
	v.Do = join(v.Do, r.Stricter(true, unit))
	return one(v)
}

// warmth is a temperature in °F as it is said.
func warmth(f float64, imperial bool) string {
	if imperial {
		return fmt.Sprintf("%.0f °F", f)
	}
	return fmt.Sprintf("%.1f °C", (f-32)/1.8)
}

// step is by how much a day a heated floor may change: 5 °F.
func step(imperial bool) string {
	if imperial {
		return "5 °F"
	}
	return "3 °C"
}

func (s Site) room() []ready.Verdict {
	if s.Room != "bath" && s.Room != "laundry" {
		return nil
	}
	return one(ready.Verdict{Say: ready.Other, Rule: "wet room", Where: s.Room, Measured: s.Room, Limit: "no full bath, no laundry", Holds: true,
		Do: "Water on this floor is a matter of time, and boards cup by it. Take another product there and end the boards at its door.", Source: srcWet})
}

func (s Site) flat() []ready.Verdict {
	switch {
	case s.Flat != Yes || s.Allowed == Yes:
		return nil
	case s.Allowed == No:
		return one(ready.Verdict{Say: ready.Other, Rule: "rules of the building", Where: "flat", Measured: "not allowed", Holds: true,
			Do: "Ask what is: many want a sound-tested build-up, and carpet in part of the rooms.", Source: srcFlat})
	}
	return one(ready.Verdict{Say: ready.Wait, Rule: "rules of the building", Where: "flat", Measured: "not asked yet",
		Do: "Ask for the rules on sound and for permission in writing before carpet comes out; then write allowed: yes.", Source: srcFlat})
}

func (s Site) sheet() []ready.Verdict {
	poly := s.Sheet.Kind == "polyethylene"
	if s.Sheet.Kind == "" && s.Sheet.Perm == 0 {
		return nil
	}
	low, unit := Guides.Rule(s.Limits, PermLeast)
	high, _ := Guides.Rule(s.Limits, PermMost)
	v := ready.Verdict{Say: ready.Go, Rule: "sheet under the boards", Where: "subfloor", Measured: s.Sheet.Kind, Source: low.Source}
	if s.Sheet.Perm > 0 {
		v.Measured = join(s.Sheet.Kind, fmt.Sprintf("%g perm", s.Sheet.Perm))
	}
	v.Limit = fmt.Sprintf("%g to %g %s over wood, %s", low.Is, high.Is, unit, low.By)
	switch {
	case s.Base == Concrete && (poly || s.Sheet.Perm > 0 && s.Sheet.Perm < low.Is):
		v.Say, v.Limit = ready.Look, "such a sheet lies on the slab, below the wood that boards are nailed to"
		v.Do = "On the slab is its place, laps taped, with plywood or sleepers over it; between that wood and the boards no such sheet goes."
	case poly || s.Sheet.Perm > 0 && s.Sheet.Perm < low.Is:
		v.Say, v.Holds = ready.Fix, true
		v.Do = "Take another: under nailed boards over wood this shuts water in. Polyethylene belongs on a slab, below the wood that is nailed to, or on the ground of a crawl space. Number 15 felt or the like is usual here."
	case s.Sheet.Perm > high.Is:
		v.Say, v.Do = ready.Fix, "Take a tighter one: this hardly slows vapour."
	case s.Sheet.Perm == 0:
		v.Say, v.Do = ready.Look, "Look for its permeance (perm, ASTM E96) on the roll."
	default:
		v.Do = "Laps of at least 4 in."
	}
	return one(v)
}

func (s Site) glue() []ready.Verdict {
	if s.Glue != Yes || s.Sheet.Kind == "" && s.Sheet.Perm == 0 {
		return nil
	}
	v := ready.Verdict{Say: ready.Go, Rule: "glue and a rolled sheet", Where: "subfloor", Measured: "both", Limit: "one of the two, unless the adhesive's maker allows both", Source: common}
	if s.GlueOver != Yes {
		v.Say, v.Holds = ready.Fix, true
		v.Do = "Glue holds a board to the sheet and not to the floor. Leave out one of them, or ask the adhesive's maker, and write glue_over_sheet: yes if he allows it."
	}
	return one(v)
}
