package schedule

import (
	"fmt"
	"strings"
)

// Says is what readings and other verdicts say of the day that laying may begin.
func (h Hold) Says() string {
	switch h.Kind {
	case Until:
		s := fmt.Sprintf("Hold: readings do not say go. By the log of the boards they will about %s; ", h.Day)
		if h.Late > 0 {
			s += fmt.Sprintf("nine times in ten between %s and %s. ", h.Early, h.Late)
		} else {
			s += "it allows no latest day. "
		}
		return s + "Not one board is laid before readings say go, whatever the days below."
	case Open:
		return "Hold: readings do not say go, and they tell no day on which they will. The days of laying have no date: they are counted from the day that readings say go."
	case Unread:
		return "Hold: readings are missing that say go or wait. The days of laying are the earliest there can be; not one board is laid before readings say go."
	}
	return "Readings say go."
}

// Note is what is said beside a day of laying, "" where it stands.
func (h Hold) Note() string {
	switch {
	case h.Kind == Free && len(h.Other) == 0:
		return ""
	case h.Kind == Free:
		return "not before what holds is settled"
	}
	return "not before readings say go"
}

// Lays tells whether a step comes after the readings that say go.
func (s Step) Lays() bool {
	switch s.Key {
	case "go", "sheet", "set out", "rack", "first rows", "field", "last rows", "finish", "transitions", "base on", "doors on":
		return true
	}
	return false
}

// Tentative tells whether work of a day waits for a go.
func (c Calendar) Tentative(d Workday) bool {
	if c.Firm() {
		return false
	}
	for _, s := range d.Slots {
		if st := c.Steps[s.Step]; st.Lays() && st.Key != "go" {
			return true
		}
	}
	return false
}

// When is the day as it is said.
func (d Workday) When() string {
	if d.Day == 0 {
		return fmt.Sprintf("laying day %d", d.Number)
	}
	return d.Day.Said()
}

// DaysOf are the first and last day of work on a step; not ok where it has none.
func (c Calendar) DaysOf(step int) (first, last Workday, ok bool) {
	for _, d := range c.Days {
		for _, s := range d.Slots {
			if s.Step == step {
				if !ok {
					first = d
				}
				last, ok = d, true
			}
		}
	}
	return first, last, ok
}

// Says is the slot in words, without its hours.
func (c Calendar) Says(s Slot) string {
	st := c.Steps[s.Step]
	words := st.What
	if st.places && s.rows < len(st.rows) && s.Upto != "" {
		words += ", as far as row " + s.Upto
	}
	return words
}

// Pace is who works, and when.
func (c Calendar) Pace() string {
	j := c.Job
	who := map[Crew]string{Helped: "two people, the first time", Experienced: "one person who has laid floors before"}[j.Crew]
	if who == "" {
		who = "one person, for the first time"
	}
	s := fmt.Sprintf("%s, %g h a day", who, float64(j.quarters())/4)
	var off []string
	for _, w := range j.DaysOff {
		off = append(off, w.String())
	}
	for _, d := range j.Off {
		off = append(off, d.String())
	}
	if len(off) > 0 {
		s += ", nobody works on " + strings.Join(off, ", ")
	}
	return s
}

// UsedRates are the rates that steps go by, each once, in the order of the work.
func (c Calendar) UsedRates() []Used {
	var out []Used
	seen := map[string]bool{}
	for _, r := range Rates {
		for _, s := range c.Steps {
			for _, p := range s.Parts {
				if p.Used.Key == r.Key && !seen[r.Key] {
					seen[r.Key] = true
					out = append(out, p.Used)
				}
			}
		}
	}
	return out
}

// Says is what rows really done say.
func (r Refit) Says() string {
	return fmt.Sprintf("The %d rows and parts of rows done took %.4g h, where the rates have %.4g h: what is left is planned at %.2f times the rates of rows.", r.Rows, r.Took, r.Planned, r.Factor)
}

// WhenOf is from when to when a step is done, "" where no days are told.
func (c Calendar) WhenOf(step int) string {
	first, last, ok := c.DaysOf(step)
	if !ok {
		return ""
	}
	if last.When() == first.When() {
		return first.When()
	}
	return first.When() + " to " + last.When()
}
