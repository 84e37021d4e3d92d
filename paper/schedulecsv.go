package paper

import (
	"io"
	"strconv"

	"strake/schedule"
)

var scheduleHead = []string{"step", "what", "quantity", "rate", "hours each", "of", "hours", "first day", "last day", "note", "source"}

// ScheduleCSV writes schedule.csv, a line for each quantity of each step; steps left
// out have no hours. Without a total, so that a column can be summed.
func ScheduleCSV(w io.Writer, c schedule.Calendar) error {
	lines := [][]string{scheduleHead}
	n := 0
	for i, s := range c.Steps {
		if s.Out != "" {
			lines = append(lines, []string{"", s.What, "", "", "", "", "", "", "", "left out: " + s.Out, ""})
			continue
		}
		n++
		first, last, note := "", "", ""
		if a, z, ok := c.DaysOf(i); ok {
			first, last = dayCell(a), dayCell(z)
		}
		if s.Lays() && s.Key != "go" {
			note = c.Work.Hold.Note()
		}
		for _, p := range s.Parts {
			lines = append(lines, []string{strconv.Itoa(n), s.What, p.Of, p.Used.Key, hourCell(p.Used.Hours), p.Used.Unit.Said(c.Work.Imperial), hourCell(p.Hours), first, last, note, p.Used.Source})
		}
	}
	return table(w, lines)
}

// dayCell is a day as spreadsheets read it.
func dayCell(d schedule.Workday) string {
	if d.Day == 0 {
		return d.When()
	}
	return d.Day.String()
}

func hourCell(x float64) string { return strconv.FormatFloat(x, 'f', 3, 64) }
