package paper

import (
	"fmt"
	"io"
	"strings"

	"strake/schedule"
)

// Schedule writes schedule.txt: whether laying may begin, the steps with hours and
// days, what is left out, day by day with what can be walked on, waits, rental and
// rates with their sources.
func Schedule(w io.Writer, c schedule.Calendar) error {
	var b strings.Builder
	b.WriteString(head(c.Work.Name, "steps and days", false))
	wrap(&b, c.Work.Hold.Says(), "", "")
	for _, v := range c.Work.Hold.Why {
		wrap(&b, Reason(v.Rule, v.Where, v.Measured, v.Limit), "  - ", "    ")
	}
	if len(c.Work.Hold.Other) > 0 {
		wrap(&b, "Besides, nothing may be laid while this stands:", "", "")
	}
	for _, v := range c.Work.Hold.Other {
		wrap(&b, Reason(v.Rule, v.Where, v.Measured, v.Limit), "  - ", "    ")
	}
	b.WriteString("\n")
	wrap(&b, Pace(c), "", "")
	if c.Refit.Rows > 0 {
		wrap(&b, c.Refit.Says(), "", "")
	}
	stepsText(&b, c)
	leftOutText(&b, c)
	daysText(&b, c)
	waitsText(&b, c)
	rentalText(&b, c)
	ratesText(&b, c)
	if fs := c.Findings(); len(fs) > 0 {
		b.WriteString("\nWhat to look at\n")
		for _, f := range fs {
			findingText(&b, f)
		}
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// Reason is a verdict in a line.
func Reason(rule, where, measured, limit string) string {
	s := rule + ", " + where
	if measured != "" {
		s += ": " + measured
	}
	if limit != "" {
		s += " (" + limit + ")"
	}
	return s
}

// Pace is how long all of it takes, by whom, and from when to when.
func Pace(c schedule.Calendar) string {
	hours := c.Hours()
	s := fmt.Sprintf("%.4g hours of work, by %s", hours, c.Pace())
	if n := len(c.Days); n > 0 {
		s += fmt.Sprintf(": %d days with work", n)
	}
	switch {
	case !c.Dated():
		s += ". The job gives no first day, so no days are told"
	case c.End > 0:
		s += fmt.Sprintf(", from %s to %s", c.Days[0].When(), c.End.Said())
	}
	return s + "."
}

func stepsText(b *strings.Builder, c schedule.Calendar) {
	b.WriteString("\nSteps\n")
	n := 0
	for i, s := range c.Steps {
		if s.Out != "" {
			continue
		}
		n++
		when := c.WhenOf(i)
		first := fmt.Sprintf("%3d %6.2f h  ", n, s.Hours())
		indent := strings.Repeat(" ", len(first))
		if when != "" {
			when = "  [" + when + "]"
		}
		wrap(b, s.What+when, first, indent)
		for _, p := range s.Parts {
			wrap(b, partText(p, c), indent, indent+"  ")
		}
		wrap(b, s.Note, indent, indent)
	}
}

func partText(p schedule.Part, c schedule.Calendar) string {
	unit := "for " + p.Used.Unit.Said(c.Work.Imperial)
	if p.Used.Unit == schedule.Each {
		unit = "each"
	}
	return fmt.Sprintf("%s at %.3g h %s", p.Of, p.Used.Hours, unit)
}

func leftOutText(b *strings.Builder, c schedule.Calendar) {
	title := "\nLeft out\n"
	for _, s := range c.Steps {
		if s.Out != "" {
			b.WriteString(title)
			title = ""
			wrap(b, s.What+": "+s.Out, "  - ", "    ")
		}
	}
}

func daysText(b *strings.Builder, c schedule.Calendar) {
	if len(c.Days) == 0 {
		return
	}
	b.WriteString("\nDay by day, with what can be walked on at night\n")
	for _, d := range c.Days {
		note := ""
		if c.Tentative(d) {
			note = "  (" + c.Work.Hold.Note() + ")"
		}
		fmt.Fprintf(b, "\n  %s  %.4g h%s\n", d.When(), d.Hours(), note)
		for _, s := range d.Slots {
			wrap(b, c.Says(s), fmt.Sprintf("    %5.2f h  ", s.Hours), "             ")
		}
		for _, n := range d.Night {
			wrap(b, strings.Join(n.Rooms, ", ")+": "+n.Say, "      tonight  ", "               ")
		}
	}
}

func waitsText(b *strings.Builder, c schedule.Calendar) {
	if len(c.Waits) == 0 {
		return
	}
	b.WriteString("\nWhat waits\n")
	for _, s := range c.Waits {
		wrap(b, fmt.Sprintf("%s to %s: %s (%s)", s.From.Said(), s.To.Said(), s.What, s.Why), "  - ", "    ")
	}
}

func rentalText(b *strings.Builder, c schedule.Calendar) {
	r := c.Rental
	if !r.Needed {
		return
	}
	b.WriteString("\nTo rent: floor nailer and compressor\n")
	s := fmt.Sprintf("%s to %s: %d days from pick-up to return, rows on %d of them", r.Start(), r.Return(), r.Days(), r.Worked)
	if n := c.Work.Hold.Note(); n != "" {
		s += "; " + n + ", so reserve and do not fetch"
	}
	wrap(b, s+".", "  ", "  ")
	wrap(b, "Lay dry before what can be laid dry, with all cuts but starter rips and what is measured in place; first rows are nailed by hand without it.", "  ", "  ")
}

func ratesText(b *strings.Builder, c schedule.Calendar) {
	b.WriteString("\nRates, to be replaced under schedule, rates\n")
	for _, u := range c.UsedRates() {
		unit := "for " + u.Unit.Said(c.Work.Imperial)
		if u.Unit == schedule.Each {
			unit = "each"
		}
		wrap(b, fmt.Sprintf("%.3g h %s [%s]", u.Hours, unit, u.Source), fmt.Sprintf("  %-15s", u.Key), strings.Repeat(" ", 17))
	}
}
