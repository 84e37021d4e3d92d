package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"

	"strake/jobfile"
	"strake/measure"
	"strake/sheet/svg"
)

type measureCmd struct {
	Job    string `arg:"" help:"The job file (YAML); rooms and doorways are enough."`
	Out    string `short:"o" placeholder:"FOLDER" help:"Folder to write to (default: the job's name and -measure beside the job)."`
	Checks *int   `placeholder:"N" help:"At most N readings beyond those that fix the shape (default: as many as it takes until an error in any reading shows, and in which)."`
}

// Help says what is written where.
func (measureCmd) Help() string {
	return `Works out what to measure, before or between readings: the fewest readings that make the rooms rigid, widths where rows will close, and checks until an error in any reading would show. Readings already in the job are taken into account; guesses under “rough” give the rough shape. Boards are not needed, nor the figures of doorways and of what stays.

Prints the sheet and writes to the folder:
  measure.txt      the readings to take, in an order that saves steps for one person
  measure-1.svg    the same on paper, with a sketch and a box for each figure; -2 and on as needed
  measure.yaml     the same as keys of a job file, to fill in and move into the job

A file that you filled in or changed is never overwritten: it is kept as measure.kept-1.yaml and so on.`
}

// Validate refuses a number of checks that is none.
func (c *measureCmd) Validate() error {
	if c.Checks != nil && *c.Checks < 0 {
		return fmt.Errorf("--checks %d: a number of readings, 0 or more", *c.Checks)
	}
	return nil
}

func (c *measureCmd) Run(r rim) error {
	data, err := os.ReadFile(r.path(c.Job))
	if err != nil {
		return err
	}
	k, err := jobfile.ReadSketch(c.Job, data)
	if err != nil {
		return err
	}
	s := measure.Make(c.ask(k))
	files, err := measureFiles(s)
	if err != nil {
		return err
	}
	out := c.Out
	if out == "" {
		out = strings.TrimSuffix(c.Job, filepath.Ext(c.Job)) + "-measure"
	}
	moved, err := writeAll(r.path(out), files, laterPages(r.path(out))...)
	if err != nil {
		return err
	}
	r.tell(func(a *answer) {
		a.Job = k.Job.Name
		a.toRead(s)
		a.wrote(out, files)
	})
	if _, err := r.out.Write(files[0].data); err != nil {
		return err
	}
	fmt.Fprintf(r.out, "\nWritten to %s: %s\n%s", out, strings.Join(names(files), ", "), moved)
	return nil
}

// ask is what the sheet is made from; no checks are asked for as less than 0.
func (c *measureCmd) ask(k jobfile.Sketch) measure.Ask {
	j, w := k.Job, k.Job.Wishes
	checks := 0
	if c.Checks != nil {
		checks = *c.Checks
		if checks == 0 {
			checks = -1
		}
	}
	return measure.Ask{Name: j.Name, Sketch: j.Sketch, Rough: k.Rough, Have: j.Readings, Unplaced: k.Unplaced, Floating: k.Floating, Model: j.Tape,
		Rows: measure.Rows{Along: w.Direction, Across: w.Across, Between: w.Between, Start: w.StartWall, Through: w.RunThrough},
		Unit: j.Unit, Checks: checks}
}

// laterPages are the pages of a sheet that lie in a folder: one that the new
// sheet has not is put aside, so that nobody fills in a page of another sheet.
func laterPages(dir string) []writer {
	var out []writer
	for n := 1; ; n++ {
		name := fmt.Sprintf("measure-%d.svg", n)
		if _, err := os.Lstat(filepath.Join(dir, name)); err != nil {
			return out
		}
		out = append(out, writer{name: name})
	}
}

func measureFiles(s measure.Sheet) ([]file, error) {
	var b bytes.Buffer
	if err := s.Text(&b); err != nil {
		return nil, err
	}
	out := []file{{"measure.txt", b.Bytes()}}
	for i, p := range s.Pages() {
		var b bytes.Buffer
		if err := svg.Write(&b, p); err != nil {
			return nil, err
		}
		out = append(out, file{fmt.Sprintf("measure-%d.svg", i+1), b.Bytes()})
	}
	var keys bytes.Buffer
	if err := s.Keys(&keys); err != nil {
		return nil, err
	}
	return append(out, file{"measure.yaml", keys.Bytes()}), nil
}
