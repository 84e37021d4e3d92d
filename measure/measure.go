// Package measure is the measuring sheet: what to read with the tape, before
// anything is known but the rough shape.
//
// A room of four walls wants five readings to be rigid; with five or so more no
// reading goes unchecked. The sheet lists first what fixes the shape, then the
// places to mark on the walls, the widths where rows close and the checks, each
// in an order that saves steps for one person alone, with a box to write in;
// then doorways, what stays, and the widths again once the base is off. It says
// where to hold the tape and how.
package measure

import (
	"strake/plane"
	"strake/room"
	"strake/survey"
	"strake/tape"
)

// Ask is what a measuring sheet is made from.
type Ask struct {
	Name     string
	Sketch   room.Sketch
	Rough    []survey.Reading // guesses
	Have     []survey.Reading // readings taken already
	Unplaced []string         // doorways with figures missing: these are 0
	Floating []string         // what stays with its place along its wall missing: that is 0
	Model    survey.Model
	Rows     Rows
	Unit     tape.Unit
	Checks   int // at most this many checks; 0: as many as it takes; less: none
}

// Line is one thing to read and write down.
type Line struct {
	What string // A-C
	Why  string // diagonal
	Hook string // where the tape is hooked, "" nowhere in particular
}

// Section is lines of one kind.
type Section struct {
	Title, Note string
	Lines       []Line
}

// Sheet is what to measure.
type Sheet struct {
	Ask      Ask
	Sections []Section // in order; lines are numbered through
	Buys     []string  // what each check buys, in the order in which they were chosen
	Notes    []string  // what the sheet rests on, and what it leaves open
	Marks    []room.Point
	Built    room.Built // the rough shape, marks included
	Stays    []Outline  // what stays, as far as it is known
	plan     survey.Sheet
}

// Outline is something that stays, in the rough shape, mm.
type Outline struct {
	Name    string
	Corners []plane.XY
}

// Make works out the sheet.
func Make(a Ask) Sheet {
	s := Sheet{Ask: a}
	sketch := s.sketched()
	rough := survey.Adjust(sketch, append(append([]survey.Reading(nil), a.Rough...), a.Have...), a.Model)
	want := survey.Want{Rough: a.Rough, Have: a.Have, Closing: closing(rough.Built, a.Rows), Step: a.step(), Checks: a.Checks}
	s.plan = survey.Suggest(sketch, want, a.Model)
	s.marks()
	sketch.Points = append(append([]room.Point(nil), sketch.Points...), s.Marks...)
	fit := survey.Adjust(sketch, append(append([]survey.Reading(nil), a.Rough...), a.Have...), a.Model)
	s.Built = fit.Built
	for _, st := range s.Built.Stays {
		if o := fit.Outline(st); len(o) > 0 {
			s.Stays = append(s.Stays, Outline{st.Name, o})
		}
	}
	s.sections()
	s.buys()
	s.notes()
	return s
}

// step is what the tape is read to.
func (a Ask) step() tape.Length {
	if a.Unit.Imperial() {
		return tape.Sixteenth
	}
	return tape.Millimetre
}

// style prints the places of marks, which are whole inches or centimetres.
func (a Ask) style() tape.Style {
	s := tape.Paper(a.Unit)
	s.Step = tape.Inch
	if !a.Unit.Imperial() {
		s.Step = tape.Centimetre
	}
	return s
}

// marks collects the marks to make, in the order of the walk.
func (s *Sheet) marks() {
	seen := map[string]bool{}
	for _, k := range s.plan.Walk {
		for _, p := range s.plan.Items[k].Ask.Marks {
			if !seen[p.Name] {
				seen[p.Name] = true
				s.Marks = append(s.Marks, p)
			}
		}
	}
}
