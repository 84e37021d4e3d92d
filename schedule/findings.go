package schedule

import (
	"fmt"
	"strings"

	"strake/finding"
)

// Findings are what stands out in a calendar.
func (c Calendar) Findings() []finding.Finding {
	var out []finding.Finding
	add := func(level finding.Level, rule, where, measured, limit, do string) {
		out = append(out, finding.Finding{Level: level, Rule: rule, Where: where, Measured: measured, Limit: limit, Do: do, Source: common})
	}
	if !c.Dated() {
		add(finding.Warn, "no start date", "schedule", "hours only", "", "Write schedule: {start: 2027-03-01} with the first day of work, and days follow.")
	}
	if r := c.Job.Own; len(r) > 0 && c.Refit.Rows > 0 {
		for _, key := range []string{"first_rows", "field", "last_rows"} {
			if _, own := r[key]; own {
				add(finding.Note, "rates of rows", key, fmt.Sprintf("%.2f times your own figure", c.Refit.Factor), "", "Rows done speak louder than the figure: take one of the two out if it is told twice.")
			}
		}
	}
	for _, d := range c.Refit.Strange {
		add(finding.Warn, "rows done", fmt.Sprintf("rows %d to %d", d.First, d.Last), "the plan has no such rows", "", "Name them as the row list does; their hours are left out.")
	}
	out = append(out, c.deliveryFindings()...)
	if r := c.Rental; r.Needed && r.From > 0 && r.Off > 0 {
		add(finding.Note, "rental", "floor nailer and compressor", fmt.Sprintf("%d days in the house, %d of them nobody works", r.Days(), r.Off), "", "Ask for a rate by the week, or begin the field on the first day after those off.")
	}
	return out
}

// deliveryFindings hold the day the boards come to the days around it.
func (c Calendar) deliveryFindings() []finding.Finding {
	d := c.Job.Delivery
	if d == 0 || !c.Dated() || len(c.Job.Done) > 0 {
		return nil
	}
	var out []finding.Finding
	f := finding.Finding{Level: finding.Warn, Rule: "delivery", Where: d.Said(), Source: common}
	if c.Job.free(d) {
		f.Measured, f.Do = "a day on which nobody works", "Somebody has to be there and carry: the cartons are counted in on the next day of work."
		out = append(out, f)
	}
	since := c.Job.ClimateSince
	if since == 0 {
		since = c.Job.Start
	}
	if to := since + waitDays(c.Job.ClimateDays, UsualClimate); d < to {
		f.Measured, f.Limit = fmt.Sprintf("the house is at living climate since %s", since), fmt.Sprintf("not before %s", to)
		f.Do = "Have the boards come later, or heat or cool the house earlier: boards in a house that is not conditioned take up its damp."
		out = append(out, f)
	}
	if open := c.opened(d); len(open) > 0 {
		f.Measured, f.Limit = "that day or later there is still to do: "+strings.Join(open, ", "), "no floor opened up where boards lie"
		f.Do = "Stack them in a room that is not worked in, or have them come later."
		out = append(out, f)
	}
	return out
}

// opened are the steps that open a floor up and are not done before a day.
func (c Calendar) opened(d Day) []string {
	var out []string
	for i, s := range c.Steps {
		switch s.Key {
		case "tear out", "flatten", "overlay":
			if _, last, ok := c.DaysOf(i); ok && last.Day >= d {
				out = append(out, s.What)
			}
		}
	}
	return out
}
