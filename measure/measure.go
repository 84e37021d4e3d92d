// Package measure is the measuring sheet: what to read with the tape, before
// anything is known but the rough shape.
//
// A room of four walls wants five readings to be rigid; with six more no
// reading goes unchecked. The sheet lists them in an order that saves steps
// for one person alone, each with a box to write in, and says where to hold
// the tape and how.
package measure

import (
	"fmt"
	"strings"

	"strake/plane"
	"strake/room"
	"strake/survey"
	"strake/tape"
)

// Ask is what a measuring sheet is made from.
type Ask struct {
	Name   string
	Sketch room.Sketch
	Rough  []survey.Reading // guesses
	Have   []survey.Reading // readings taken already
	Model  survey.Model
	Along  room.Wall // rows will run along it; empty: the longest
	Unit   tape.Unit
	Checks int // at most this many checks; 0: as many as it takes
}

// Line is one reading to take.
type Line struct {
	What string // A-C
	Why  string
	Hook string // where the tape is hooked
}

// Sheet is what to measure.
type Sheet struct {
	Ask      Ask
	Lines    []Line // in the order that saves steps
	Openings []Line // doorways and what stays: to be filled in beside
	Unmet    string // why not everything is checked, "" when it is
	Guessed  bool   // no size was given: every wall was taken for 3 m
	At       map[string]plane.XY
}

// Make works out the sheet.
func Make(a Ask) Sheet {
	s := Sheet{Ask: a, Guessed: len(a.Rough)+len(a.Have) == 0}
	rough := survey.Adjust(a.Sketch, append(append([]survey.Reading(nil), a.Rough...), a.Have...), a.Model)
	s.At = rough.Built.At
	step := tape.Sixteenth
	if !a.Unit.Imperial() {
		step = tape.Millimetre
	}
	plan := survey.Suggest(a.Sketch, survey.Want{Rough: a.Rough, Have: a.Have, Closing: s.closing(rough.Built), Step: step, Checks: a.Checks}, a.Model)
	style := tape.Paper(a.Unit)
	style.Step = tape.Inch
	if !a.Unit.Imperial() {
		style.Step = tape.Centimetre
	}
	number, checks := map[int]int{}, 0
	for k, it := range plan.Items {
		if it.Purpose == survey.Proves {
			checks++
			number[k] = checks
		}
	}
	for _, k := range plan.Walk {
		it := plan.Items[k]
		s.Lines = append(s.Lines, Line{What: it.Ask.Name(style), Why: why(it, number[k], checks), Hook: hook(it)})
	}
	s.Unmet = plan.Unmet
	s.openings()
	return s
}

// why says what a reading is for and, of a check, what those up to it buy.
func why(it survey.Item, number, checks int) string {
	if it.Purpose != survey.Proves {
		return string(it.Purpose)
	}
	buys := fmt.Sprintf("leaves %d unchecked, %d that cannot be told apart", it.Unchecked, it.Alike)
	if it.Unchecked == 0 && it.Alike == 0 {
		buys = "every reading is checked then"
	}
	return fmt.Sprintf("check %d of %d: %s", number, checks, buys)
}

// hook is the end where the tape is hooked.
func hook(it survey.Item) string {
	for _, m := range it.Ask.Marks {
		if m.Name == it.Hook {
			return "the mark on wall " + m.Wall.String()
		}
	}
	return it.Hook
}

// short is the longest wall (mm) that needs no widths at three stations.
const short = 1800

// closing are the walls that rows will start from, or nearly: the widths from
// them across are those that rows close in.
func (s Sheet) closing(b room.Built) []room.Wall {
	dir := s.Ask.Along
	if dir == (room.Wall{}) {
		dir = longest(b)
	}
	d := b.At[dir[1]].Sub(b.At[dir[0]])
	if d.Len() == 0 {
		return nil
	}
	var out []room.Wall
	for _, r := range b.Rooms {
		ring := r.Ring()
		for i, c := range ring {
			w := room.Wall{c, ring[(i+1)%len(ring)]}
			v := b.At[w[1]].Sub(b.At[w[0]])
			if v.Len() > short && v.Unit().Dot(d.Unit()) > 0.97 {
				out = append(out, w)
			}
		}
	}
	return out
}

func longest(b room.Built) room.Wall {
	var best room.Wall
	length := 0.0
	for _, r := range b.Rooms {
		ring := r.Ring()
		for i, c := range ring {
			n := ring[(i+1)%len(ring)]
			if l := b.At[n].Sub(b.At[c]).Len(); l > length+0.5 {
				best, length = room.Wall{c, n}, l
			}
		}
	}
	return best
}

// openings asks for doorways and what stays.
func (s *Sheet) openings() {
	for _, d := range s.Ask.Sketch.Doorways {
		where := fmt.Sprintf("doorway %s, wall %s", d.Name, d.Wall)
		s.Openings = append(s.Openings,
			Line{What: where + ": from corner " + d.From + " to the near jamb", Why: "place"},
			Line{What: where + ": between the jambs", Why: "width"},
			Line{What: where + ": thickness of the wall there", Why: "depth"})
		if d.Beyond == room.BeyondRoom {
			s.Openings = append(s.Openings, Line{What: fmt.Sprintf("doorway %s, wall %s: from corner %s to the near jamb", d.Name, d.OtherWall, d.OtherFrom), Why: "place, other side"})
		}
	}
	for _, st := range s.Ask.Sketch.Stays {
		if len(st.Corners) > 0 {
			s.Openings = append(s.Openings, Line{What: st.Name + ": each corner " + strings.Join(st.Corners, ", ") + " from two room corners", Why: "place"})
			continue
		}
		s.Openings = append(s.Openings,
			Line{What: fmt.Sprintf("%s: along wall %s from corner %s to its near side", st.Name, st.Wall, st.From), Why: "place"},
			Line{What: st.Name + ": along the wall", Why: "width"},
			Line{What: st.Name + ": square to the wall", Why: "depth"})
	}
}

// How is where to hold the tape and how, a line each. All of it is common
// practice, no source.
var How = []string{
	"Measure at the wall, just above the base while it is on. Take the widths where rows close again at floor level once the base is off.",
	"Inside corners: push the case into the corner and add its length, or burn the first inch (100 mm): start at that mark, read, and take it off again.",
	"Alone: hook the tape over a nail in a block where the sheet says “hook at”, walk, and read at the other end.",
	"A wall that bows: pull a string from corner to corner over two equal blocks and measure from string to wall in the middle and at the quarters.",
	"Write down what the tape says, to the mark, and do not correct anything: readings that disagree say which one is wrong.",
	"Three widths where rows close: at both ends and in the middle, square to the rows.",
}
