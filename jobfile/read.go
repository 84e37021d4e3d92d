package jobfile

import (
	"bytes"
	"fmt"
	"slices"
	"strings"

	"strake/finding"
	"strake/job"
	"strake/room"
	"strake/stock"
	"strake/survey"
	"strake/tape"
)

// ReadJob reads a job file. The name is only for print. When anything is
// wrong the error is an Errors with all of it, and the job holds what could be
// read. The findings are about values that are allowed but odd.
func ReadJob(name string, data []byte) (job.Job, []finding.Finding, error) {
	d := newDecoder(name, data)
	j := draft{Job: job.Job{
		Unit: tape.UnitInch, Seed: 1, Name: title(name), Tape: survey.Tape(),
		Boards: stock.Boards{SideTongue: sideTongue, EndTongue: endTongue, Hand: stock.RightHand},
	}}
	d.read(data, &j)
	j.settle()
	oneStep(j.Readings)
	if errs := d.errs.sorted(); len(errs) > 0 {
		return j.Job, nil, errs
	}
	return j.Job, odd(d, &j), nil
}

// title is what a job is called that has no name: its file's, without folders
// and ending, so that the papers do not tell where it lay.
func title(file string) string {
	base := file[strings.LastIndexAny(file, `/\`)+1:]
	if i := strings.LastIndex(base, "."); i > 0 {
		base = base[:i]
	}
	if base == "" {
		return file
	}
	return base
}

// Sketch is a job before it was measured.
type Sketch struct {
	Job      job.Job          // its boards may be missing, and figures of doorways and of what stays
	Rough    []survey.Reading // guesses
	Unplaced []string         // doorways with figures missing: these are 0
	Floating []string         // what stays, set out from a wall, with its distance along it missing
}

// ReadSketch reads a job for what is to be measured in it: boards, and figures
// of doorways and of what stays, may be missing. Errors are those of ReadJob.
func ReadSketch(name string, data []byte) (Sketch, error) {
	d := newDecoder(name, data)
	d.sketch = true
	j := draft{Job: job.Job{Unit: tape.UnitInch, Seed: 1, Name: title(name), Tape: survey.Tape()}}
	d.read(data, &j)
	oneStep(j.Readings)
	if errs := d.errs.sorted(); len(errs) > 0 {
		return Sketch{Job: j.Job}, errs
	}
	return Sketch{Job: j.Job, Rough: j.rough, Unplaced: d.unplaced(j.Sketch.Doorways), Floating: d.floating(j.Sketch.Stays)}, nil
}

// floating names what stays by a wall and no one knows where along it.
func (d *decoder) floating(ss []room.Stay) []string {
	var out []string
	for _, s := range ss {
		if len(s.Corners) == 0 && !d.given(at("stays", s.Name, "at")) {
			out = append(out, s.Name)
		}
	}
	return out
}

// unplaced names the doorways that have figures missing.
func (d *decoder) unplaced(ws []room.Doorway) []string {
	var out []string
	for _, w := range ws {
		keys := []string{at("doorways", w.Name, "at"), at("doorways", w.Name, "width"), at("doorways", w.Name, "thickness")}
		if w.Beyond == room.BeyondRoom {
			keys = append(keys, at("doorways", w.Name, "beyond", "at"))
		}
		if slices.ContainsFunc(keys, func(k string) bool { return !d.given(k) }) {
			out = append(out, w.Name)
		}
	}
	return out
}

// oneStep gives every reading the finest step that any was written to: one
// person reads one tape alike, and 14' 11" among sixteenths is no rounder than
// its neighbours. A reading that is to be trusted less says so with its doubt.
func oneStep(rs []survey.Reading) {
	var finest tape.Length
	for _, r := range rs {
		if r.Step > 0 && (finest == 0 || r.Step < finest) {
			finest = r.Step
		}
	}
	for i := range rs {
		rs[i].Step = finest
	}
}

// read reads the tree and checks what its parts say of each other. The YAML
// library has been seen to panic on strange input, though not its parser; if
// it does, that is an error in the file as far as the reader can tell.
func (d *decoder) read(data []byte, j *draft) {
	defer func() {
		if r := recover(); r != nil {
			d.failAt(1, 1, "this file cannot be read", fmt.Sprint(r), "a plain job; strake new writes a first one")
		}
	}()
	if len(data) >= 3 && string(data[:3]) == "\ufeff" {
		data = data[3:]
	}
	if bytes.HasPrefix(bytes.TrimLeft(data, " \t\r\n{"), []byte(`"strake_lay"`)) {
		d.failAt(1, 1, "this is a written board layout, not a job", "strake_lay", "a job; strake check JOB --lay FILE holds a layout against its job")
		return
	}
	root := d.parse(data)
	if root == nil {
		return
	}
	jobTable.read(d, root, j)
	cross(d, j)
}
