package main

import (
	"bytes"
	"fmt"
	"path/filepath"
	"strings"

	"strake/drawing"
	"strake/finding"
	"strake/paper"
	"strake/plan"
	"strake/sheet/svg"
)

type rowsCmd struct {
	Job string `arg:"" help:"The job file (YAML). strake new writes one."`
	Out string `short:"o" placeholder:"FOLDER" help:"Folder to write to (default: beside the job; bedroom.yaml goes to bedroom-rows)."`
}

// Help says what is compared.
func (rowsCmd) Help() string {
	return `Compares the ways the rows could lie: along each long wall, halfway between walls that are nearly parallel, across the joists, through the widest doorway, and what the job wishes for. For each, the start with the widest narrowest rip, in words and as a small drawing. Then what 1/8 in at the start line, or 0.5 mm a row, would do at every wall.

Prints the comparison and writes to the folder:
  choices.txt  the same
  choices.svg  a small drawing of each`
}

func (c *rowsCmd) Run(r rim) error {
	j, fs, err := readJob(r, c.Job)
	if err != nil {
		return err
	}
	ch := plan.Choose(j)
	if len(ch.Candidates) == 0 {
		p := plan.Plan{Job: j, Findings: append(fs, ch.Findings...)}
		r.tell(func(a *answer) { a.planned(p) })
		fmt.Fprint(r.out, paper.Findings(p))
		if finding.Worst(p.Findings) == finding.Stop {
			return errFindings
		}
		return nil
	}
	var text, picture bytes.Buffer
	if err := paper.Choices(&text, ch); err != nil {
		return err
	}
	if err := svg.Write(&picture, drawing.Choices(ch)); err != nil {
		return err
	}
	out := c.Out
	if out == "" {
		out = strings.TrimSuffix(c.Job, filepath.Ext(c.Job)) + "-rows"
	}
	files := []file{{"choices.txt", text.Bytes()}, {"choices.svg", picture.Bytes()}}
	moved, err := writeAll(r.path(out), files)
	if err != nil {
		return err
	}
	r.tell(func(a *answer) { a.choices(ch); a.wrote(out, files) })
	fmt.Fprint(r.out, text.String())
	fmt.Fprintf(r.out, "\nWritten to %s: %s\n%s", out, strings.Join(names(files), ", "), moved)
	return nil
}
