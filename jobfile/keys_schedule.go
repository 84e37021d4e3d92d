package jobfile

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"

	"github.com/goccy/go-yaml/ast"

	"strake/schedule"
)

const dayWords = "a date, such as 2027-03-01"

var dateSchema = map[string]any{"type": "string", "pattern": "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"}

// The days that a schedule may name. A range far wider than anyone plans: it is
// there to catch a slip.
const (
	firstDay = "2000-01-01"
	lastDay  = "2199-12-31"
)

// day reads a date.
func (d *decoder) day(n ast.Node) (schedule.Day, bool) {
	s, ok := d.text(n, dayWords)
	if !ok {
		return 0, false
	}
	x, err := schedule.ParseDay(s)
	if err != nil {
		d.fail(n.GetToken(), "this is not a date", s, "year, month and day, such as 2027-03-01")
		return 0, false
	}
	if s < firstDay || s > lastDay {
		d.fail(n.GetToken(), "this date is out of range", s, "a date from "+firstDay+" to "+lastDay)
		return 0, false
	}
	return x, true
}

// date is a key whose value is a date.
func date[T any](key, doc string, to func(*T) *schedule.Day) field[T] {
	return custom(key, doc, shape{words: dayWords, schema: dateSchema}, func(d *decoder, n ast.Node, t *T) {
		if x, ok := d.day(n); ok {
			*to(t) = x
		}
	})
}

// offField reads single days off.
func offField() field[schedule.Job] {
	s := shape{words: "a list of dates, such as [2027-03-29, 2027-04-02]", schema: map[string]any{"type": "array", "items": dateSchema}}
	return custom("off", "Single days on which nobody works.", s, func(d *decoder, n ast.Node, j *schedule.Job) {
		nodes, _ := d.items(n, s.words)
		for i, v := range nodes {
			d.under(strconv.Itoa(i), v, func(n ast.Node) {
				if x, ok := d.day(n); ok {
					j.Off = append(j.Off, x)
				}
			})
		}
	})
}

// weekdays are the days of the week as a job names them, by time.Weekday.
var weekdays = []string{"sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"}

func daysOffField() field[schedule.Job] {
	var enum []any
	for _, w := range weekdays {
		enum = append(enum, w)
	}
	s := shape{words: "a list of days of the week, such as [saturday, sunday]", schema: map[string]any{"type": "array", "items": map[string]any{"enum": enum}}}
	return custom("days_off", "Days of the week on which nobody works.", s, func(d *decoder, n ast.Node, j *schedule.Job) {
		nodes, _ := d.items(n, s.words)
		for i, v := range nodes {
			d.under(strconv.Itoa(i), v, func(n ast.Node) {
				t, ok := d.text(n, "a day of the week")
				if !ok {
					return
				}
				k := slices.Index(weekdays, strings.ToLower(t))
				if k < 0 {
					d.notOne(n.GetToken(), t, weekdays)
					return
				}
				if !slices.Contains(j.DaysOff, time.Weekday(k)) {
					j.DaysOff = append(j.DaysOff, time.Weekday(k))
				}
			})
		}
	})
}

// days is a key whose value is a number of days; none is a wait of no days.
func days(key, doc string, to func(*schedule.Job) *int) field[schedule.Job] {
	s := shape{words: "a whole number", schema: map[string]any{"type": "integer", "minimum": 0, "maximum": 365}}
	return custom(key, doc, s, func(d *decoder, n ast.Node, j *schedule.Job) {
		if v, ok := d.whole(n, 0, 365); ok {
			if *to(j) = v; v == 0 {
				*to(j) = schedule.LeastWait
			}
		}
	})
}

var ownTable = table[schedule.Own]{fields: []field[schedule.Own]{
	figure("hours", "Hours for each, or for 100 sq ft or 100 ft in a job in feet or inches, for 10 m2 or 10 m in one in metres.", 0, 1000, func(o *schedule.Own) *float64 { return &o.Hours }).must(),
	text("source", "Where it comes from.", func(o *schedule.Own) *string { return &o.Source }).or(fromJob),
}}

// ratesField reads rates that replace the usual ones, by their keys.
func ratesField() field[schedule.Job] {
	tb := table[schedule.Job]{}
	for _, r := range schedule.Rates {
		f := sub(r.Key, r.Doc, ownTable, func(j *schedule.Job) *schedule.Own { return &schedule.Own{} })
		f.shape.keys = nil // told once, with rates
		f.shape.words = "{hours: , source: }"
		f.read = func(d *decoder, n ast.Node, j *schedule.Job) {
			o := schedule.Own{Source: fromJob}
			before := len(d.errs)
			if ownTable.read(d, n, &o); len(d.errs) > before {
				return
			}
			if j.Own == nil {
				j.Own = map[string]schedule.Own{}
			}
			j.Own[r.Key] = o
		}
		tb.fields = append(tb.fields, f.or(fmt.Sprintf("%g h for %s, alone for the first time (%s)", r.Alone, r.Unit.Said(true), r.Source)))
	}
	return sub("rates", "Hours of your own. Each is {hours: , source: }: hours for each, for 100 sq ft or for 100 ft; in a job in metres for 10 m2 or 10 m.", tb, func(j *schedule.Job) *schedule.Job { return j })
}

var doneTable = table[schedule.Done]{fields: []field[schedule.Done]{
	doneRowsField().must(),
	figure("hours", "What they took, all told.", 0.05, 10000, func(r *schedule.Done) *float64 { return &r.Hours }).must(),
}}

func doneRowsField() field[schedule.Done] {
	s := shape{words: "a row or rows by their numbers, such as 4 or 1 to 12", schema: map[string]any{"type": []any{"string", "integer"}, "pattern": `^[0-9]+( to [0-9]+)?$`}}
	return custom("rows", "The rows, by the numbers of the row list.", s, func(d *decoder, n ast.Node, r *schedule.Done) {
		t, ok := d.text(n, s.words)
		if !ok {
			return
		}
		a, b, several := strings.Cut(t, " to ")
		if !several {
			b = a
		}
		from, err := strconv.Atoi(strings.TrimSpace(a))
		to, err2 := strconv.Atoi(strings.TrimSpace(b))
		if err != nil || err2 != nil || from < 1 || to < from || to > 99_999 {
			d.fail(n.GetToken(), "these are no rows", t, s.words)
			return
		}
		r.First, r.Last = from, to
	})
}

func scheduleField() field[draft] {
	tb := table[schedule.Job]{fields: []field[schedule.Job]{
		date("start", "The first day of work; where rows are done, the day that work goes on.", func(j *schedule.Job) *schedule.Day { return &j.Start }).must(),
		date("delivery", "The day that the boards come, or came.", func(j *schedule.Job) *schedule.Day { return &j.Delivery }).or("as soon as they may: with the subfloor done and the house at living climate"),
		choice("who", "Who works: alone (one person, for the first time), with helper, or experienced (one person who has laid floors before).", []schedule.Crew{schedule.Alone, schedule.Helped, schedule.Experienced}, func(j *schedule.Job) *schedule.Crew { return &j.Crew }).or("alone"),
		figure("hours", "Hours of work a day.", 0.25, 16, func(j *schedule.Job) *float64 { return &j.Hours }).or(fmt.Sprint(schedule.UsualHours)),
		daysOffField().or("every day is worked"),
		offField().or("none"),
		date("climate_since", "Since when the house is heated or cooled as it is lived in.", func(j *schedule.Job) *schedule.Day { return &j.ClimateSince }).or("from the first day of work on"),
		days("climate_days", "For so many days at least it is, before the subfloor is read and boards come.", func(j *schedule.Job) *int { return &j.ClimateDays }).or(fmt.Sprint(schedule.UsualClimate)),
		days("rest_days", "For so many days boards lie in the room before all is read again. A habit: the moisture reading decides.", func(j *schedule.Job) *int { return &j.RestDays }).or(fmt.Sprint(schedule.UsualRest)),
		days("lab_days", "So many days a laboratory takes.", func(j *schedule.Job) *int { return &j.LabDays }).or(fmt.Sprint(schedule.UsualLab)),
		days("cure_days", "For so many days nobody works on a floor that was finished on site.", func(j *schedule.Job) *int { return &j.CureDays }).or(fmt.Sprint(schedule.FinishDays)),
		ratesField().or("the usual ones, each with its source"),
		list("done", "Rows really laid, with the hours they took: what is left is planned at that pace.", "entry", doneTable, func(_ *decoder, _ ast.Node, j *schedule.Job, r schedule.Done) { j.Done = append(j.Done, r) }).or("none"),
	}}
	return told(sub("schedule", "When the work is done: strake schedule lays it over days.", tb, func(j *draft) *schedule.Job { return &j.Schedule }), func(j *draft) { j.Schedule.Told = true })
}

// schedule checks that there is a day to work on, that dates belong together and
// that rows are done once.
func (n *names) schedule() {
	s := n.j.Schedule
	path := at("schedule", "days_off")
	if len(s.DaysOff) == 7 {
		n.d.failPath(path, "no day of the week is left to work on", "", "at most six days of the week")
	}
	const apart = 400
	for key, day := range map[string]schedule.Day{"delivery": s.Delivery, "climate_since": s.ClimateSince} {
		from := s.Start - apart
		if key == "climate_since" {
			from = 0
		}
		if day > 0 && s.Start > 0 && (day < from || day > s.Start+apart) {
			n.d.failPath(at("schedule", key), "this lies more than a year from the start, "+s.Start.String(), day.String(), "a date of the same job; look at the year")
		}
	}
	for i, a := range s.Done {
		for _, b := range s.Done[:i] {
			if a.First <= b.Last && b.First <= a.Last {
				n.d.failPath(at("schedule", "done", strconv.Itoa(i), "rows"), "some of these rows are told before already", fmt.Sprintf("%d to %d, and %d to %d", b.First, b.Last, a.First, a.Last), "each row once")
			}
		}
	}
}
