package schedule

import (
	"slices"
	"time"
)

// Day is a day, counted from 1 January 1970; 0 stands for none.
type Day int

const dateForm = "2006-01-02"

// ParseDay reads a date written as 2027-03-01.
func ParseDay(s string) (Day, error) {
	t, err := time.Parse(dateForm, s)
	if err != nil {
		return 0, err
	}
	return Day(t.Unix() / 86400), nil
}

func (d Day) time() time.Time { return time.Unix(int64(d)*86400, 0).UTC() }

// String is the date: 2027-03-01.
func (d Day) String() string { return d.time().Format(dateForm) }

// Compact is the date as calendars write it: 20270301.
func (d Day) Compact() string { return d.time().Format("20060102") }

// Weekday is the day of the week.
func (d Day) Weekday() time.Weekday { return d.time().Weekday() }

// Said is the date with its day of the week: Mon 2027-03-01.
func (d Day) Said() string { return d.time().Format("Mon 2006-01-02") }

// free tells whether nobody works on a day.
func (j Job) free(d Day) bool {
	return slices.Contains(j.DaysOff, d.Weekday()) || slices.Contains(j.Off, d)
}
