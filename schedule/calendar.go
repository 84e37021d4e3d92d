package schedule

import "fmt"

// Slot is a part of a step on one day.
type Slot struct {
	Step  int
	Hours float64
	Upto  string // of rows: the last one that lies whole at the end of it, "" none yet
	rows  int    // of the step's rows so many lie whole
	from  int    // so many lay whole before
}

// Workday is a day with work on it. Laying days that have no date are counted
// instead.
type Workday struct {
	Day    Day // 0: it has no date
	Number int // without a date: which day of laying
	Slots  []Slot
	Night  []Night
}

// Hours are those worked that day.
func (d Workday) Hours() float64 {
	h := 0.0
	for _, s := range d.Slots {
		h += s.Hours
	}
	return h
}

// Span is a stretch of days on which something waits or is there, both ends
// counted.
type Span struct {
	What     string
	From, To Day
	Why      string
}

// Calendar is when what is done.
type Calendar struct {
	Work   Work
	Job    Job
	Steps  []Step
	Refit  Refit
	Days   []Workday
	Waits  []Span
	Rental Rental
	Go     Day // the day laying begins by this calendar, 0: it has no date
	End    Day // the last day of work, 0: it has no date
}

// Dated tells whether days of work have dates at all.
func (c Calendar) Dated() bool { return c.Job.Start > 0 }

// Firm tells whether the days of laying hold as far as readings go.
func (c Calendar) Firm() bool { return c.Work.Hold.Kind == Free && len(c.Work.Hold.Other) == 0 }

// Hours are those of all steps.
func (c Calendar) Hours() float64 {
	h := 0.0
	for _, s := range c.Steps {
		h += s.Hours()
	}
	return h
}

// Make is the calendar of some work. Without a first day in the job it has steps
// with hours, and no days.
func Make(w Work, j Job) Calendar {
	p := planner{w, j, 1}
	c := Calendar{Work: w, Job: j, Refit: p.refit()}
	p.factor = c.Refit.Factor
	c.Steps = p.steps()
	if j.Start == 0 {
		return c
	}
	b := builder{Calendar: &c, day: j.Start, room: j.quarters()}
	for i := range c.Steps {
		if c.Steps[i].Out == "" {
			b.step(i)
		}
	}
	c.Rental = c.rental()
	c.nights()
	return c
}

// builder lays steps over days, one after the other.
type builder struct {
	*Calendar
	day    Day // where the next work goes at the earliest
	room   int // quarters left on that day
	number int // of days without a date
	loose  bool
	until  [cured + 1]Day // what each gate waits for, as far as known
}

// dayOf is the day of work that the next quarter goes on.
func (b *builder) dayOf() *Workday {
	if b.loose {
		if b.number == 0 || b.room == 0 {
			b.number++
			b.room = b.Job.quarters()
		}
		if n := len(b.Days); n > 0 && b.Days[n-1].Day == 0 && b.Days[n-1].Number == b.number {
			return &b.Days[n-1]
		}
		b.Days = append(b.Days, Workday{Number: b.number})
		return &b.Days[len(b.Days)-1]
	}
	for b.room == 0 || b.Job.free(b.day) {
		b.day++
		b.room = b.Job.quarters()
	}
	if n := len(b.Days); n == 0 || b.Days[n-1].Day != b.day {
		b.Days = append(b.Days, Workday{Day: b.day})
	}
	return &b.Days[len(b.Days)-1]
}

// notBefore moves on to a day.
func (b *builder) notBefore(d Day) {
	if !b.loose && b.day < d {
		b.day, b.room = d, b.Job.quarters()
	}
}

// step lays one step.
func (b *builder) step(i int) {
	s := &b.Steps[i]
	b.open(s.gate)
	left := s.quarters()
	all, laid := left, 0
	for left > 0 {
		d := b.dayOf()
		q := min(left, b.room)
		left -= q
		b.room -= q
		slot := Slot{Step: i, Hours: float64(q) / 4}
		if s.places {
			slot.from, slot.rows = laid, whole(s.rows, float64(all-left)/float64(all))
			laid = slot.rows
			if slot.rows > 0 {
				slot.Upto = s.rows[slot.rows-1].Name
			}
		}
		d.Slots = append(d.Slots, slot)
	}
	b.close(s)
	if !b.loose {
		b.End = b.day
	} else {
		b.End = 0
	}
}

// whole is how many of the rows lie whole after a part of the step.
func whole(rows []Row, part float64) int {
	all, sum := 0.0, 0.0
	for _, r := range rows {
		all += weight(r)
	}
	for i, r := range rows {
		if sum += weight(r); sum > all*part+1e-9 {
			return i
		}
	}
	return len(rows)
}

func weight(r Row) float64 { return r.SqFt[0] + r.SqFt[1] + r.SqFt[2] }

// open waits for what a gate waits for.
func (b *builder) open(g gate) {
	switch g {
	case lab, cured:
		b.notBefore(b.until[g])
	case climate:
		since := b.Job.ClimateSince
		if since == 0 {
			since = b.Job.Start
		}
		to := since + waitDays(b.Job.ClimateDays, UsualClimate)
		if to > b.Job.Start {
			b.wait("house at living climate", since, to, fmt.Sprintf("heating or cooling on, windows and doors in: for %d days or more before the subfloor is read and boards come", to-since))
		}
		b.notBefore(to)
	case delivery:
		b.notBefore(b.Job.Delivery)
	case rested:
		b.rest()
	}
}

// rest waits for boards and readings: the hold outranks every other date.
func (b *builder) rest() {
	b.notBefore(b.until[rested])
	switch h := b.Work.Hold; h.Kind {
	case Until:
		b.wait("boards come to rest, by the log", b.day, h.Day, "strake ready holds: the log tells the day")
		b.notBefore(h.Day)
	case Open:
		b.loose = true
		return
	}
	b.dayOf()
	b.Go = b.day
}

// close begins a wait.
func (b *builder) close(s *Step) {
	if b.loose {
		return
	}
	switch s.after {
	case labWait:
		b.until[lab] = b.day + 1 + waitDays(b.Job.LabDays, UsualLab)
		b.wait("the laboratory", b.day+1, b.until[lab], "nothing suspect is touched before it has answered")
	case restWait:
		b.settle()
	case glueWait:
		b.until[cured] = b.day + GlueDays
	case cureWait:
		b.until[cured] = b.day + 1 + waitDays(b.Job.CureDays, FinishDays)
		b.wait("the finish", b.day+1, b.until[cured], "nobody walks on it; its label goes before these days")
	}
}

// settle is the wait for boards that lie in the room, counted from the day they
// came. Readings that say go already need none.
func (b *builder) settle() {
	if b.Work.Hold.Kind == Free {
		return
	}
	came := b.Job.Delivery
	switch {
	case came > 0:
	case b.Work.Here:
		came = b.Job.Start
	default:
		came = b.day
	}
	b.until[rested] = came + waitDays(b.Job.RestDays, UsualRest)
	b.wait("boards lie in the room", came, b.until[rested], "the days are a habit: the moisture reading decides, and may say sooner or later")
}

// wait notes a stretch of days that ends before a day.
func (b *builder) wait(what string, from, before Day, why string) {
	if before > from {
		b.Waits = append(b.Waits, Span{what, from, before - 1, why})
	}
}
