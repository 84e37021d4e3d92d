package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"strake/drawing"
	"strake/finding"
	"strake/job"
	"strake/jobfile"
	"strake/paper"
	"strake/plan"
	"strake/sheet/svg"
)

type planCmd struct {
	Job  string `arg:"" help:"The job file (YAML). strake new writes one."`
	Out  string `short:"o" placeholder:"FOLDER" help:"Folder to write to (default: the job's name and -plan beside the job). Files there of the same names are kept once as NAME.before."`
	Seed uint64 `help:"Another seed gives another board layout of the same quality (default: the job's)."`
}

// Help says what is written where.
func (planCmd) Help() string {
	return `Writes to the folder:
  plan.svg      the room to scale: rows, boards, joints, rips and what each edge meets
  rows.txt      each row with its pieces in order, lengths to 1/16 in or 1 mm
  rows.csv      the same for a spreadsheet
  cuts.txt      the cut list: crosscuts, rips, mitres, notches, tongues to take off
  cuts.csv      the same for a spreadsheet
  plan.json     the whole board layout, exact, for strake check --lay
  findings.txt  what was noticed, with measured value, limit and what to do`
}

func (c *planCmd) Run(r rim) error {
	j, fs, err := readJob(r, c.Job)
	if err != nil {
		return err
	}
	if c.Seed != 0 {
		j.Seed = c.Seed
	}
	p := plan.Make(r.ctx, j)
	p.Findings = append(fs, p.Findings...)
	files, err := papers(p)
	if err != nil {
		return err
	}
	out := c.Out
	if out == "" {
		out = strings.TrimSuffix(c.Job, filepath.Ext(c.Job)) + "-plan"
	}
	if err := writeAll(r.path(out), files); err != nil {
		return err
	}
	fmt.Fprint(r.out, paper.Summary(p))
	fmt.Fprintf(r.out, "\nWritten to %s: %s\n", out, strings.Join(names(files), ", "))
	if finding.Worst(p.Findings) == finding.Stop {
		fmt.Fprintln(r.out, "The plan does not hold yet; see findings.txt.")
		return errFindings
	}
	return nil
}

// file is one paper of a plan.
type file struct {
	name string
	data []byte
}

func names(fs []file) []string {
	var out []string
	for _, f := range fs {
		out = append(out, f.name)
	}
	return out
}

// papers are all files of a plan. Without a layout there are only findings.
func papers(p plan.Plan) ([]file, error) {
	writers := []struct {
		name  string
		write func(io.Writer, plan.Plan) error
	}{
		{"plan.svg", func(w io.Writer, p plan.Plan) error { return svg.Write(w, drawing.Floor(p)) }},
		{"rows.txt", paper.RowsText},
		{"rows.csv", paper.RowsCSV},
		{"cuts.txt", paper.CutsText},
		{"cuts.csv", paper.CutsCSV},
		{"plan.json", func(w io.Writer, p plan.Plan) error { return jobfile.WriteLay(w, p.Lay) }},
	}
	out := []file{}
	if len(p.Lay.Runs) > 0 {
		for _, w := range writers {
			var b bytes.Buffer
			if err := w.write(&b, p); err != nil {
				return nil, fmt.Errorf("%s: %w", w.name, err)
			}
			out = append(out, file{w.name, b.Bytes()})
		}
	}
	return append(out, file{"findings.txt", []byte(paper.Findings(p))}), nil
}

// writeAll writes the files to a folder; a file that would be overwritten with
// something else is first kept as NAME.before.
func writeAll(dir string, files []file) error {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return err
	}
	for _, f := range files {
		path := filepath.Join(dir, f.name)
		old, err := os.ReadFile(path)
		switch {
		case err == nil && bytes.Equal(old, f.data):
			continue
		case err == nil:
			if err := os.Rename(path, path+".before"); err != nil {
				return err
			}
		case !errors.Is(err, os.ErrNotExist):
			return err
		}
		if err := os.WriteFile(path, f.data, 0o644); err != nil {
			return err
		}
	}
	return nil
}

func (r rim) path(p string) string {
	if r.dir == "" || filepath.IsAbs(p) {
		return p
	}
	return filepath.Join(r.dir, p)
}

// readJob reads a job file and says what is odd about it.
func readJob(r rim, name string) (job.Job, []finding.Finding, error) {
	data, err := os.ReadFile(r.path(name))
	if err != nil {
		return job.Job{}, nil, err
	}
	return jobfile.ReadJob(name, data)
}
