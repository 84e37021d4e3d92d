package ics

import (
	"fmt"
	"strings"

	"strake/schedule"
)

// Events are the days of a calendar that have dates: each day of work, what is
// waited for, the delivery and the rental.
func Events(c schedule.Calendar) []Event {
	var out []Event
	for i, d := range c.Days {
		if d.Day > 0 {
			e := workday(c, d)
			e.ID = fmt.Sprintf("day-%d", i+1)
			out = append(out, e)
		}
	}
	for _, w := range c.Waits {
		out = append(out, Event{ID: "wait-" + slug(w.What), Summary: "Wait: " + w.What, Description: w.Why, From: w.From, To: w.To})
	}
	if d := c.Job.Delivery; d > 0 {
		out = append(out, Event{ID: "delivery", Summary: "Boards come", Description: "To where no floor is opened up. Look at lots and cartons before the driver leaves.", From: d, To: d})
	}
	if r := c.Rental; r.Needed && r.From > 0 {
		out = append(out, Event{ID: "rental", Summary: "Floor nailer and compressor in the house", From: r.From, To: r.To, Tentative: !c.Firm(),
			Description: note(c, fmt.Sprintf("%d days from pick-up to return, rows on %d of them. Rack and cut before.", r.Days(), r.Worked))})
	}
	return out
}

func workday(c schedule.Calendar, d schedule.Workday) Event {
	e := Event{From: d.Day, To: d.Day, Tentative: c.Tentative(d)}
	var what, lines []string
	for _, s := range d.Slots {
		what = append(what, c.Says(s))
		lines = append(lines, fmt.Sprintf("%.2f h  %s", s.Hours, c.Says(s)))
	}
	for _, n := range d.Night {
		lines = append(lines, "Tonight, "+strings.Join(n.Rooms, ", ")+": "+n.Say)
	}
	e.Summary = fmt.Sprintf("Floor, %.4g h: %s", d.Hours(), strings.Join(what, "; "))
	e.Description = strings.Join(lines, "\n")
	if e.Tentative {
		e.Description = note(c, e.Description)
	}
	return e
}

// note puts before text what it waits for.
func note(c schedule.Calendar, s string) string {
	if n := c.Work.Hold.Note(); n != "" {
		return strings.ToUpper(n[:1]) + n[1:] + ".\n" + s
	}
	return s
}

// slug is words as a part of a name.
func slug(s string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r >= 'a' && r <= 'z', r >= '0' && r <= '9':
			return r
		case r == ' ':
			return '-'
		}
		return -1
	}, strings.ToLower(s))
}
