package main

import "strake/schedule"

// jsonSchedule is a schedule in figures. Days are dates; where a day of laying has
// none, its number stands instead.
type jsonSchedule struct {
	Hold     string      `json:"hold"` // none, readings missing, until, open
	Until    string      `json:"not_before,omitempty"`
	Hours    float64     `json:"hours"`
	Pace     float64     `json:"rows_at_times_the_rates"`
	Ends     string      `json:"ends,omitempty"`
	Steps    []jsonStep  `json:"steps"`
	Days     []jsonDay   `json:"days,omitempty"`
	Waits    []jsonSpan  `json:"waits,omitempty"`
	Rental   *jsonRental `json:"rental,omitempty"`
	Verdicts []string    `json:"held_by,omitempty"`
}

type jsonStep struct {
	What  string  `json:"what"`
	Hours float64 `json:"hours"`
	Out   string  `json:"left_out,omitempty"`
	First string  `json:"first_day,omitempty"`
	Last  string  `json:"last_day,omitempty"`
}

type jsonDay struct {
	Date   string      `json:"date,omitempty"`
	Number int         `json:"laying_day,omitempty"`
	Hours  float64     `json:"hours"`
	Waits  bool        `json:"not_before_readings"`
	Does   []string    `json:"does"`
	Nights []jsonNight `json:"tonight"`
}

type jsonNight struct {
	Rooms []string `json:"rooms"`
	Says  string   `json:"says"`
}

type jsonSpan struct {
	What string `json:"what"`
	From string `json:"from"`
	To   string `json:"to"`
}

type jsonRental struct {
	From   string `json:"from"`
	To     string `json:"to"`
	Days   int    `json:"days"`
	Worked int    `json:"worked"`
}

var holdWords = map[schedule.HoldKind]string{schedule.Free: "none", schedule.Unread: "readings missing", schedule.Until: "until", schedule.Open: "open"}

func (a *answer) scheduled(c schedule.Calendar) {
	a.Job = c.Work.Name
	h := c.Work.Hold
	out := &jsonSchedule{Hold: holdWords[h.Kind], Hours: c.Hours(), Pace: c.Refit.Factor}
	if h.Kind == schedule.Until {
		out.Until = h.Day.String()
	}
	if c.End > 0 {
		out.Ends = c.End.String()
	}
	for _, v := range append(h.Why, h.Other...) {
		out.Verdicts = append(out.Verdicts, v.Rule+", "+v.Where)
	}
	for i, s := range c.Steps {
		x := jsonStep{What: s.What, Hours: s.Hours(), Out: s.Out}
		if first, last, ok := c.DaysOf(i); ok {
			x.First, x.Last = first.When(), last.When()
		}
		out.Steps = append(out.Steps, x)
	}
	for _, d := range c.Days {
		out.Days = append(out.Days, dayOf(c, d))
	}
	for _, w := range c.Waits {
		out.Waits = append(out.Waits, jsonSpan{w.What, w.From.String(), w.To.String()})
	}
	if r := c.Rental; r.Needed {
		out.Rental = &jsonRental{r.Start(), r.Return(), r.Days(), r.Worked}
	}
	a.Schedule = out
}

func dayOf(c schedule.Calendar, d schedule.Workday) jsonDay {
	out := jsonDay{Number: d.Number, Hours: d.Hours(), Waits: c.Tentative(d)}
	if d.Day > 0 {
		out.Date = d.Day.String()
	}
	for _, s := range d.Slots {
		out.Does = append(out.Does, c.Says(s))
	}
	for _, n := range d.Night {
		out.Nights = append(out.Nights, jsonNight{n.Rooms, n.Say})
	}
	return out
}
