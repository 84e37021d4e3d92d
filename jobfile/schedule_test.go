package jobfile_test

import (
	"errors"
	"reflect"
	"strings"
	"testing"
	"time"

	"strake/jobfile"
	"strake/schedule"
)

const scheduleKeys = `schedule:
  start: 2027-03-01
  delivery: 2027-03-08
  who: with helper
  hours: 6.5
  days_off: [Saturday, sunday]
  off: [2027-03-26, 2027-03-29]
  climate_since: 2027-02-01
  climate_days: 6
  rest_days: 0
  lab_days: 10
  cure_days: 4
  rates: {field: {hours: 2.8, source: my last floor}, rack: {hours: 0}}
  done: [{rows: 1 to 12, hours: 9.5}, {rows: 13, hours: 0.5}]
`

func TestScheduleKeys(t *testing.T) {
	j, _, err := jobfile.ReadJob("s.yaml", []byte(dryJob+scheduleKeys))
	if err != nil {
		t.Fatal(err)
	}
	day := func(s string) schedule.Day {
		d, err := schedule.ParseDay(s)
		if err != nil {
			t.Fatal(err)
		}
		return d
	}
	want := schedule.Job{Told: true, Start: day("2027-03-01"), Delivery: day("2027-03-08"), ClimateSince: day("2027-02-01"), Crew: schedule.Helped, Hours: 6.5,
		DaysOff: []time.Weekday{time.Saturday, time.Sunday}, Off: []schedule.Day{day("2027-03-26"), day("2027-03-29")},
		ClimateDays: 6, RestDays: schedule.LeastWait, LabDays: 10, CureDays: 4,
		Own:  map[string]schedule.Own{"field": {Hours: 2.8, Source: "my last floor"}, "rack": {Source: "job file"}},
		Done: []schedule.Done{{First: 1, Last: 12, Hours: 9.5}, {First: 13, Last: 13, Hours: 0.5}},
	}
	if !reflect.DeepEqual(j.Schedule, want) {
		t.Errorf("read %+v\nwant %+v", j.Schedule, want)
	}
}

func TestScheduleErrors(t *testing.T) {
	for _, c := range []struct{ from, to, what string }{
		{"  start: 2027-03-01\n", "", "“start” is missing"},
		{"start: 2027-03-01", "start: 1 March", "this is not a date"},
		{"start: 2027-03-01", "start: 2027-02-30", "this is not a date"},
		{"start: 2027-03-01", "start: 1927-03-01", "this date is out of range"},
		{"delivery: 2027-03-08", "delivery: 2029-03-08", "more than a year from the start, 2027-03-01"},
		{"delivery: 2027-03-08", "delivery: 2025-03-08", "more than a year from the start, 2027-03-01"},
		{"climate_since: 2027-02-01", "climate_since: 2029-02-01", "more than a year from the start"},
		{"with helper", "two men", "is not known here"},
		{"hours: 6.5", "hours: 0", "a number from 0.25 to 16"},
		{"hours: 6.5", "hours: 25", "a number from 0.25 to 16"},
		{"sunday]", "sundays]", "is not known here"},
		{"[Saturday, sunday]", "[monday, tuesday, wednesday, thursday, friday, saturday, sunday]", "no day of the week is left to work on"},
		{"2027-03-29]", "next monday]", "this is not a date"},
		{"climate_days: 6", "climate_days: -1", "a whole number from 0 to 365"},
		{"rest_days: 0", "rest_days: 3.5", "a whole number from 0 to 365"},
		{"field: {", "feild: {", "“feild” is not a key here"},
		{"hours: 2.8, ", "", "“hours” is missing"},
		{"hours: 2.8", "hours: -2", "a number from 0 to 1000"},
		{"rows: 1 to 12", "rows: 12 to 1", "these are no rows"},
		{"rows: 1 to 12", "rows: first", "these are no rows"},
		{"rows: 13", "rows: 12", "some of these rows are told before already"},
		{"hours: 0.5", "hours: 0", "a number from 0.05 to 10000"},
	} {
		text := strings.Replace(scheduleKeys, c.from, c.to, 1)
		if text == scheduleKeys {
			t.Fatalf("%q is not in the keys", c.from)
		}
		_, _, err := jobfile.ReadJob("s.yaml", []byte(dryJob+text))
		var errs jobfile.Errors
		if !errors.As(err, &errs) || len(errs) != 1 || !strings.Contains(err.Error(), c.what) || !strings.Contains(err.Error(), "s.yaml:") || !strings.Contains(err.Error(), "accepted:") {
			t.Errorf("%s for %s: %v", c.to, c.from, err)
		}
	}
}
