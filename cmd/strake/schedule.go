package main

import (
	"bytes"
	"fmt"
	"io"
	"slices"
	"strings"
	"time"

	"strake/finding"
	"strake/paper"
	"strake/plan"
	"strake/schedule"
	"strake/schedule/ics"
	"strake/schedule/takeoff"
)

type scheduleCmd struct {
	Job string `arg:"" help:"The job file (YAML). strake new writes one."`
	Out string `short:"o" placeholder:"FOLDER" help:"Also write schedule.txt, schedule.csv and schedule.ics to this folder."`
}

// Help says what goes in.
func (scheduleCmd) Help() string {
	return `Prints the steps of the job in order with their hours, the days they fall on, what can be walked on each night, what waits, and when floor nailer and compressor are rented. Areas, walls, openings, layers and rows are those of the plan; hours go by rates that are printed with their source and can be replaced.

    schedule:
      start: 2027-03-01
      delivery: 2027-03-08
      who: alone                # or: with helper, experienced
      hours: 7
      days_off: [sunday]
      off: [2027-03-26]
      rates: {field: {hours: 2.8, source: my last floor}}
      done: [{rows: 1 to 12, hours: 9.5}]

Readings of moisture outrank the calendar: while strake ready holds, rows are not laid before the day that the acclimation log tells, and where it tells none they have no date. Rows that are done, with the hours they took, set the pace of those left.

With -o FOLDER: schedule.txt is what is printed, schedule.csv the steps for a spreadsheet, schedule.ics the days for a calendar (RFC 5545). The same job gives the same files, byte for byte. The exit code is 1 where rows cannot be set out or readings hold without a day.`
}

func (c *scheduleCmd) Run(r rim) error {
	j, fs, err := readJob(r, c.Job)
	if err != nil {
		return err
	}
	p := plan.Rows(j)
	if fs = slices.Concat(fs, p.Findings); finding.Worst(fs) == finding.Stop {
		r.tell(func(a *answer) { a.Job = j.Name; a.found(fs) })
		tell(r, fs)
		fmt.Fprintln(r.out, "The rows cannot be set out yet, so there is no work to schedule: see strake check.")
		return errFindings
	}
	cal := schedule.Make(takeoff.Of(p), j.Schedule)
	files, others, err := schedulePapers(cal)
	if err != nil {
		return err
	}
	today, err := schedule.ParseDay(time.Now().Format(time.DateOnly))
	if err != nil {
		return err
	}
	late := past(cal, today)
	r.tell(func(a *answer) { a.scheduled(cal); a.found(slices.Concat(cal.Findings(), late)) })
	fmt.Fprint(r.out, string(files[0].data))
	for _, f := range late {
		fmt.Fprintln(r.out, f)
	}
	if c.Out != "" {
		moved, err := writeAll(r.path(c.Out), files, others...)
		if err != nil {
			return err
		}
		r.tell(func(a *answer) { a.wrote(c.Out, files) })
		fmt.Fprintf(r.out, "\nWritten to %s: %s\n%s", c.Out, strings.Join(names(files), ", "), moved)
	}
	if cal.Work.Hold.Kind == schedule.Open {
		return errFindings
	}
	return nil
}

// schedulePapers are the files of a schedule: those there are, and all there may be.
func schedulePapers(c schedule.Calendar) (files []file, others []writer, err error) {
	all := []struct {
		name  string
		write func(io.Writer) error
		no    bool
	}{
		{"schedule.txt", func(w io.Writer) error { return paper.Schedule(w, c) }, false},
		{"schedule.csv", func(w io.Writer) error { return paper.ScheduleCSV(w, c) }, false},
		{"schedule.ics", func(w io.Writer) error { return ics.Write(w, c.Work.Name, c.Job.Start, ics.Events(c)) }, !c.Dated()},
	}
	for _, x := range all {
		others = append(others, writer{name: x.name})
		if x.no {
			continue
		}
		var b bytes.Buffer
		if err := x.write(&b); err != nil {
			return nil, nil, fmt.Errorf("%s: %w", x.name, err)
		}
		files = append(files, file{x.name, b.Bytes()})
	}
	return files, others, nil
}

// past are dates that lie before today. Only here is a clock read: the files do
// not know what day it is.
func past(c schedule.Calendar, today schedule.Day) []finding.Finding {
	var out []finding.Finding
	for _, x := range []struct {
		what, do string
		day      schedule.Day
		is       bool
	}{
		{"start", "Look at the year; if work is under way, write the day it goes on as start, and the rows done under done.", c.Job.Start, true},
		{"delivery", "If the boards have not come, write the day they will.", c.Job.Delivery, len(c.Job.Done) == 0 && !c.Work.Here},
	} {
		if x.is && x.day > 0 && x.day < today {
			out = append(out, finding.Finding{Level: finding.Warn, Rule: "date in the past", Where: "schedule, " + x.what, Measured: x.day.String(), Limit: "today is " + today.String(), Do: x.do})
		}
	}
	return out
}
