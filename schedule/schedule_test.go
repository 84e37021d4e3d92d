package schedule

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"
)

func day(t interface{ Fatal(...any) }, s string) Day {
	d, err := ParseDay(s)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// room is the work of a square room, so many feet a side, under carpet, rows of
// 5 in: two by hand, three last.
func room(side float64) Work {
	w := Work{Name: "test room", Imperial: true, SqFt: side * side, Rooms: []string{"room"}, Walls: 4*side - 6, Base: true, BaseOn: true, Shoe: true,
		Doors: []string{"hall"}, Layers: []Layer{{Name: "carpet", Rate: "carpet_out"}, {Name: "foam"}}, LayersTold: true, FlatTold: true,
		ReadUnder: 10, ReadBoards: 20, Cartons: int(side*side*1.1/20) + 1, Jambs: []string{"hall", "closet"}, Sheet: true, Fields: 1,
		Openings: []string{"hall", "closet"}}
	n := int(side * 12 / 5)
	for i := range n {
		r := Row{Name: fmt.Sprint(i + 1), Number: i + 1, Rooms: w.Rooms}
		z := FieldRows
		switch {
		case i < 2:
			z = FirstRows
		case i >= n-3:
			z = LastRows
		}
		r.SqFt[z] = side * side / float64(n)
		w.Rows = append(w.Rows, r)
	}
	return w
}

func (c Calendar) hoursOf(keys ...string) float64 {
	h := 0.0
	for _, s := range c.Steps {
		for _, k := range keys {
			if s.Key == k {
				h += s.Hours()
			}
		}
	}
	return h
}

// Common practice, no source: one person, for the first time, takes about a day to
// strip and prepare a room of some 400 sq ft and three to lay it, three to five in
// all; some 90 sq ft a person-day was measured on real jobs, where guides promise
// 200 to 300.
func TestFourHundredSquareFeet(t *testing.T) {
	c := Make(room(20), Job{Start: day(t, "2027-03-01")})
	strip := c.hoursOf("test", "empty", "doors off", "base off", "tear out", "clean", "look", "squeaks", "flatten", "overlay")
	lay := c.hoursOf("deliver", "read boards", "undercut", "go", "sheet", "set out", "rack", "first rows", "field", "last rows")
	days := c.Hours() / UsualHours
	t.Logf("strip and prepare %.2f h, lay %.2f h, in all %.2f h: %.2f days, %.1f sq ft a person-day", strip, lay, c.Hours(), days, 400/days)
	if strip < 6 || strip > 10 {
		t.Errorf("strip and prepare: %.2f h, about a day", strip)
	}
	if lay < 20 || lay > 28 {
		t.Errorf("lay: %.2f h, about three days", lay)
	}
	if days < 3 || days > 5 {
		t.Errorf("in all %.2f days, three to five", days)
	}
	if per := 400 / days; per < 80 || per > 100 {
		t.Errorf("%.1f sq ft a person-day, about 90", per)
	}
	// Last rows are slow: several times the field's for each row.
	last, field := c.hoursOf("last rows")/3, c.hoursOf("field")/43
	if last < 3*field || last > 8*field {
		t.Errorf("a last row takes %.2f h, a row of the field %.2f", last, field)
	}
}

func TestCrews(t *testing.T) {
	hours := func(c Crew) float64 { return Make(room(20), Job{Crew: c}).Hours() }
	if a, h, e := hours(Alone), hours(Helped), hours(Experienced); !(h < a && e < a && 2*h > a) {
		t.Errorf("alone %g, with helper %g, experienced %g: a helper saves time, and never more than half", a, h, e)
	}
	for _, r := range Rates {
		if r.Alone <= 0 || r.Helped < 0.5 || r.Helped > 1 || r.Experienced <= 0 || r.Experienced > 1 || r.Source == "" || r.Doc == "" {
			t.Errorf("rate %+v", r)
		}
	}
}

// jobs are any calendars of a person.
func jobs(t *rapid.T) Job {
	j := Job{Start: day(t, "2027-03-01") + Day(rapid.IntRange(0, 30).Draw(t, "start")), Hours: rapid.Float64Range(0.25, 14).Draw(t, "hours"),
		Crew: rapid.SampledFrom([]Crew{"", Helped, Experienced}).Draw(t, "crew")}
	for w := range 6 {
		if rapid.Bool().Draw(t, "weekday off") {
			j.DaysOff = append(j.DaysOff, time.Weekday(w))
		}
	}
	if rapid.Bool().Draw(t, "delivery told") {
		j.Delivery = j.Start + Day(rapid.IntRange(-10, 30).Draw(t, "delivery"))
	}
	return j
}

func works(t *rapid.T) Work {
	w := room(rapid.Float64Range(5, 40).Draw(t, "side"))
	w.Paint = rapid.Bool().Draw(t, "paint")
	w.OnSite = rapid.Bool().Draw(t, "finished on site")
	w.Here = rapid.Bool().Draw(t, "boards are there")
	w.Hold.Kind = rapid.SampledFrom([]HoldKind{Free, Unread, Until}).Draw(t, "hold")
	w.Hold.Day = day(t, "2027-03-01") + Day(rapid.IntRange(0, 90).Draw(t, "until"))
	return w
}

// A day never holds more than its hours, nothing is done on a day off, days follow
// each other, and all the hours of all steps are laid, each step after the other.
func TestDaysHoldTheirHours(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		j, w := jobs(t), works(t)
		if rapid.Bool().Draw(t, "open") {
			w.Hold.Kind = Open
		}
		c := Make(w, j)
		done := make([]float64, len(c.Steps))
		at := 0
		for i, d := range c.Days {
			if d.Hours() > j.Hours || d.Hours() == 0 {
				t.Fatalf("%s: %g h of %g", d.When(), d.Hours(), j.Hours)
			}
			if d.Day > 0 && j.free(d.Day) {
				t.Fatalf("%s is off", d.When())
			}
			if i > 0 && d.Day > 0 && d.Day <= c.Days[i-1].Day {
				t.Fatalf("%s after %s", d.When(), c.Days[i-1].When())
			}
			for _, s := range d.Slots {
				if s.Step < at {
					t.Fatalf("%s: step %d after step %d", d.When(), s.Step, at)
				}
				at = s.Step
				done[s.Step] += s.Hours
			}
		}
		for i, s := range c.Steps {
			if done[i] != s.Hours() {
				t.Fatalf("%s: %g h of %g", s.What, done[i], s.Hours())
			}
		}
	})
}

// More area never takes less time, but for what it makes that a few rows count with
// those before them (brief) and that each step is rounded up by itself; a day off more never ends the work earlier,
// nor does an hour less a day.
func TestMoreIsNeverLess(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		j := jobs(t)
		a := rapid.Float64Range(5, 40).Draw(t, "side")
		b := a + rapid.Float64Range(0, 5).Draw(t, "more")
		x, y := Make(room(a), j), Make(room(b), j)
		if y.Hours() < x.Hours()-brief || y.Hours() >= x.Hours() && y.End < x.End {
			t.Fatalf("%g ft: %g h to %s; %g ft: %g h to %s", a, x.Hours(), x.End, b, y.Hours(), y.End)
		}
		w := works(t)
		x = Make(w, j)
		k := j
		k.Off = append(k.Off, j.Start+Day(rapid.IntRange(0, 60).Draw(t, "off")))
		if y := Make(w, k); y.End < x.End {
			t.Fatalf("%s off: ends %s, before %s", k.Off[0], y.End, x.End)
		}
		k = j
		k.Hours = max(0.25, j.Hours-rapid.Float64Range(0, 4).Draw(t, "less"))
		if y := Make(w, k); y.End < x.End {
			t.Fatalf("%g h a day instead of %g: ends %s, before %s", k.Hours, j.Hours, y.End, x.End)
		}
	})
}

// firstLaying is the first day with work that waits for readings.
func firstLaying(c Calendar) (Workday, bool) {
	for _, d := range c.Days {
		for _, s := range d.Slots {
			switch c.Steps[s.Step].Key {
			case "sheet", "set out", "rack", "first rows", "field", "last rows":
				return d, true
			}
		}
	}
	return Workday{}, false
}

// What readings say outranks the calendar.
func TestReadingsOutrankTheCalendar(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		j, w := jobs(t), works(t)
		w.Hold.Kind = Until
		c := Make(w, j)
		if d, ok := firstLaying(c); !ok || d.Day < w.Hold.Day || !c.Tentative(d) {
			t.Fatalf("laying begins %s, readings say %s", d.When(), w.Hold.Day)
		}
		w.Hold.Kind = Open
		if rapid.Bool().Draw(t, "rows are done") {
			j.Done = []Done{{1, 2, 3}}
		}
		c = Make(w, j)
		for _, d := range c.Days {
			for _, s := range d.Slots {
				if st := c.Steps[s.Step]; st.Lays() && d.Day != 0 {
					t.Fatalf("%s on %s, and nobody knows a day", st.What, d.When())
				}
			}
		}
		if c.End != 0 || c.Rental.From != 0 || !c.Rental.Needed {
			t.Fatalf("ends %s, rental from %s", c.End, c.Rental.From)
		}
	})
}

// Boards of a delivery lie for seven days by habit, unless readings say go already
// or the log says later.
func TestRestCountsFromDelivery(t *testing.T) {
	start := day(t, "2027-03-01")
	first := func(k HoldKind, until Day, rest int) Day {
		w := room(20)
		w.Hold = Hold{Kind: k, Day: until}
		d, _ := firstLaying(Make(w, Job{Start: start, Delivery: start + 7, RestDays: rest}))
		return d.Day
	}
	for _, c := range []struct {
		kind HoldKind
		on   Day
		rest int
		want Day
	}{
		{Free, 0, 0, start + 7}, {Unread, 0, 0, start + 14}, {Unread, 0, 3, start + 10}, {Unread, 0, LeastWait, start + 7},
		{Until, start + 12, 0, start + 14}, {Until, start + 20, 0, start + 20},
	} {
		if got := first(c.kind, c.on, c.rest); got != c.want {
			t.Errorf("%+v: laying begins %s, want %s", c, got, c.want)
		}
	}
}

// A paint test holds up the base, a test of a covering the tear out, and nothing
// before.
func TestLaboratoryIsWaitedFor(t *testing.T) {
	w := room(10)
	w.Layers[0].Test = true
	c := Make(w, Job{Start: day(t, "2027-03-01")})
	on := map[string]Day{}
	for i, s := range c.Steps {
		if d, _, ok := c.DaysOf(i); ok && on[s.Key] == 0 {
			on[s.Key] = d.Day
		}
	}
	if on["test"] != c.Job.Start || on["base off"] != c.Job.Start || on["tear out"] != c.Job.Start+1+UsualLab {
		t.Errorf("test %s, base off %s, tear out %s", on["test"], on["base off"], on["tear out"])
	}
}

func TestRental(t *testing.T) {
	w := room(20)
	start := day(t, "2027-03-01") // a Monday
	c := Make(w, Job{Start: start, ClimateSince: start - 30, DaysOff: []time.Weekday{time.Saturday, time.Sunday}})
	r := c.Rental
	worked := 0
	for _, d := range c.Days {
		for _, s := range d.Slots {
			if c.Steps[s.Step].Key == "field" {
				worked++
				if d.Day < r.From || d.Day > r.To {
					t.Errorf("field on %s, nailer from %s to %s", d.When(), r.From, r.To)
				}
				break
			}
			if c.Steps[s.Step].Key == "rack" && d.Day > r.From {
				t.Errorf("racked on %s, after the nailer came", d.When())
			}
		}
	}
	if !r.Needed || r.Worked != worked || r.Days() != int(r.To-r.From)+1 || worked == 0 {
		t.Errorf("%+v, worked on %d days", r, worked)
	}
	if r.From.Weekday() == time.Saturday || r.To.Weekday() == time.Sunday {
		t.Errorf("%+v", r)
	}
}

// Rows done with twice the hours make those left take twice theirs, and leave out
// what was before them.
func TestRefit(t *testing.T) {
	w := room(20)
	start := day(t, "2027-03-01")
	usual := Make(w, Job{Start: start})
	half := 0.0
	for _, r := range w.Rows[2:22] {
		half += r.SqFt[FieldRows] * 3.3 / 100
	}
	c := Make(w, Job{Start: start, Done: []Done{{3, 22, 2 * half}, {900, 901, 5}}})
	c2 := Make(w, Job{Start: start, Done: []Done{{1, 22, 1}}})
	if f := c.Refit.Factor; f < 1.999 || f > 2.001 || c.Refit.Rows != 20 || len(c.Refit.Strange) != 1 {
		t.Errorf("%+v", c.Refit)
	}
	one := Make(w, Job{Start: start, Done: []Done{{3, 22, 2 * half}}})
	if f := one.Refit.Factor; f < 1.999 || f > 2.001 {
		t.Errorf("factor %v, want 2", f)
	}
	if got, want := one.hoursOf("last rows"), 2*usual.hoursOf("last rows"); got < want-0.5 || got > want+0.5 {
		t.Errorf("last rows %g h, want about %g", got, want)
	}
	if d, _ := firstLaying(one); d.Day != start || one.hoursOf("tear out", "clean", "sheet", "go") != 0 {
		t.Errorf("goes on %s", d.When())
	}
	if c2.Refit.Factor >= 1 {
		t.Errorf("rows laid in an hour: factor %v", c2.Refit.Factor)
	}
	fs := c.Findings()
	if len(fs) == 0 || fs[0].Rule != "rows done" {
		t.Errorf("findings %v", fs)
	}
}

// Nobody works on rows laid in glue before the next day, nor on a finish before its
// days are over; when all rows lie nothing is racked.
func TestFloorIsLeftFree(t *testing.T) {
	start := day(t, "2027-03-01")
	on := func(w Work, j Job) (last, next Day) {
		c := Make(w, j)
		for i, s := range c.Steps {
			if a, z, ok := c.DaysOf(i); ok && (s.Key == "last rows" || s.Key == "finish") {
				last = z.Day
			} else if ok && s.Key == "transitions" {
				next = a.Day
			}
		}
		return last, next
	}
	w := room(9)
	if last, next := on(w, Job{Start: start, Hours: 16}); next != last {
		t.Errorf("nailed %s, transitions %s: the same day will do", last, next)
	}
	w.Glued = true
	if last, next := on(w, Job{Start: start, Hours: 16}); next != last+GlueDays {
		t.Errorf("glued %s, transitions %s", last, next)
	}
	w.OnSite = true
	if last, next := on(w, Job{Start: start, Hours: 16, CureDays: 5}); next != last+6 {
		t.Errorf("finished %s, transitions %s", last, next)
	}
	c := Make(w, Job{Start: start, Done: []Done{{1, 99, 30}}})
	if c.hoursOf("rack", "field", "last rows") != 0 || c.hoursOf("base on") == 0 || c.Rental.Needed {
		t.Errorf("all rows lie: %+v", c.Days)
	}
}

// What can be walked on follows the rows.
func TestNights(t *testing.T) {
	w := room(20)
	w.Rooms = []string{"room", "closet"}
	w.Rows[len(w.Rows)-1].Rooms = []string{"closet"}
	w.OnSite = true
	c := Make(w, Job{Start: day(t, "2027-03-01")})
	var seen []string
	for _, d := range c.Days {
		for _, n := range d.Night {
			if n.Rooms[0] == "room" && (len(seen) == 0 || seen[len(seen)-1] != n.Say) {
				seen = append(seen, n.Say)
			}
		}
	}
	all := strings.Join(seen, "\n")
	for _, want := range []string{bare, "laid up to row ", lies, wet} {
		if !strings.Contains(all, want) {
			t.Errorf("no night says %q:\n%s", want, all)
		}
	}
	if last := seen[len(seen)-1]; last != lies {
		t.Errorf("at last: %s", last)
	}
	for _, d := range c.Days { // no row is named that is not laid
		for _, s := range d.Slots {
			if s.Upto != "" && s.rows == 0 {
				t.Errorf("%s: up to %s with no row whole", d.When(), s.Upto)
			}
		}
	}
}

func TestRowNames(t *testing.T) {
	row := func(n int) Row { return Row{Name: fmt.Sprint(n), Number: n} }
	if got := RowNames([]Row{row(35), row(36), row(37), row(1)}); got != "rows 35 to 37, 1" {
		t.Error(got)
	}
	if got := RowNames([]Row{row(4)}); got != "row 4" {
		t.Error(got)
	}
}

// Without a first day there are hours and no days.
func TestNoStart(t *testing.T) {
	c := Make(room(20), Job{})
	if len(c.Days) > 0 || c.Hours() == 0 || c.Findings()[0].Rule != "no start date" {
		t.Errorf("%d days, %g h, %v", len(c.Days), c.Hours(), c.Findings())
	}
}

// A delivery before the house is at living climate, on a day off or before the tear
// out is done is told.
func TestDelivery(t *testing.T) {
	start := day(t, "2027-03-01") // a Monday
	w := room(40)
	find := func(j Job) string {
		var out []string
		for _, f := range Make(w, j).Findings() {
			if f.Rule == "delivery" {
				out = append(out, f.Measured)
			}
		}
		return strings.Join(out, "\n")
	}
	got := find(Job{Start: start, Delivery: start + 6, DaysOff: []time.Weekday{time.Sunday}, ClimateSince: start + 4})
	if !strings.Contains(got, "nobody works") || !strings.Contains(got, "living climate") {
		t.Error(got)
	}
	if got := find(Job{Start: start, Delivery: start, ClimateSince: start - 9}); !strings.Contains(got, "Tear out") {
		t.Error(got)
	}
	if got := find(Job{Start: start, Delivery: start + 14}); got != "" {
		t.Error(got)
	}
}

// A step is left out because it is not needed, or because nobody knows whether it is.
func TestUntold(t *testing.T) {
	untold := func(w Work) string {
		var out []string
		for _, s := range Make(w, Job{}).Steps {
			if s.Untold {
				out = append(out, s.Key)
				if s.Out == "" {
					t.Errorf("%s is done, and nobody knows whether it is", s.Key)
				}
			}
		}
		return strings.Join(out, ", ")
	}
	if got := untold(room(10)); got != "" {
		t.Errorf("all is told, and yet %s", got)
	}
	w := room(10)
	w.LayersTold, w.Layers, w.FlatTold, w.Sheet, w.Doors, w.Cartons, w.AgeUnknown = false, nil, false, false, nil, 0, true
	if got := untold(w); got != "test, doors off, tear out, flatten, deliver, sheet" {
		t.Errorf("untold: %s", got)
	}
	w = room(10)
	w.Layers = nil
	if got := untold(w); got != "" {
		t.Errorf("nothing comes out, as told: %s", got)
	}
}
