package trim

import (
	"fmt"

	"strake/ready"
	"strake/room"
	"strake/tape"
)

// Undercut is how high jambs and casings of an opening are sawn off.
type Undercut struct {
	Opening
	Stack  Stack
	Height tape.Length // over the subfloor there
	Deep   tape.Length // only so far into the wall, where the floor stops there; 0: all of it
	Not    string      // why they are not cut, "" where they are
	Plan   bool        // the plan lets boards pass under them
}

func (w work) undercuts() []Undercut {
	var out []Undercut
	for _, o := range w.job.Openings {
		if !o.Jambs.Told {
			continue
		}
		s := w.stack(w.chosen(), o.Shim)
		u := Undercut{Opening: o, Stack: s, Height: s.Height() + w.rule(JambClear).Is, Not: whole(o.Jambs)}
		if d, ok := w.doorway(o.Name); ok {
			u.Plan = d.Undercut
			if d.Beyond != room.BeyondRoom {
				u.Deep = d.Ends
			}
		}
		out = append(out, u)
	}
	return out
}

// whole says why jambs are not cut, "" where they are.
func whole(j Jambs) string {
	switch {
	case j.Rated:
		return "a fire-rated frame is not cut: ask its maker, or the authority that has it rated"
	case j.Exterior:
		return "an exterior frame is not cut: it keeps water out. Ask its maker"
	case j.Of == "steel":
		return "a steel frame is not cut: boards are scribed round it"
	case j.Of == "masonry":
		return "masonry is not cut: boards are scribed round it"
	}
	return ""
}

func (w work) jambVerdicts() []ready.Verdict {
	var out []ready.Verdict
	for _, u := range w.undercuts() {
		out = append(out, w.jamb(u))
	}
	return out
}

func (w work) jamb(u Undercut) ready.Verdict {
	r := w.rule(JambClear)
	v := ready.Verdict{Say: ready.Go, Rule: "undercut of jambs and casings", Where: u.Name, Source: srcJamb}
	if r.Source != srcJamb {
		v.Source = r.Source
	}
	switch {
	case u.Not != "" && u.Plan:
		v.Say, v.Holds, v.Measured, v.Limit = ready.Fix, true, "the job has boards pass under them", u.Not
		v.Do = "Write undercut: no at this doorway and plan again: rows then end before the frame with a gap, or are scribed to it under a cover."
	case u.Not != "":
		v.Measured, v.Do = "left as they are", first(u.Not)+"."
	case !u.Plan:
		v.Say, v.Measured = ready.Look, "the job has boards end before them"
		v.Do = "If they are to be undercut, write undercut: yes at this doorway: " + w.cut(u)
	default:
		v.Measured, v.Limit, v.Do = w.say(u.Height)+" over the subfloor there: "+w.words(u.Stack)+", and "+w.say(r.Is)+" to slide in", r.words+" to slide in", w.cut(u)
	}
	return v
}

// cut says how the saw is led.
func (w work) cut(u Undercut) string {
	s := fmt.Sprintf("Saw %s over the subfloor at that spot: a scrap of flooring laid on the sheet there, and the panel if there is one, is the guide for the saw (common practice, no source).", w.say(u.Height))
	if u.Deep > 0 {
		s += fmt.Sprintf(" Only %s deep from this side: the floor stops there, under the leaf.", w.say(u.Deep))
	}
	return s + " " + cables
}

// first is s as the beginning of a sentence.
func first(s string) string {
	if s == "" {
		return s
	}
	return string(s[0]-'a'+'A') + s[1:]
}
