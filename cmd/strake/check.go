package main

import (
	"fmt"
	"os"

	"strake/check"
	"strake/finding"
	"strake/jobfile"
	"strake/paper"
	"strake/plan"
)

type checkCmd struct {
	Job      string `arg:"" help:"The job file (YAML). strake new writes one."`
	Readings bool   `help:"Print the table of readings too: each against the fitted room, and corners to check on site."`
	Lay      string `placeholder:"FILE" help:"A written board layout (plan.json) to hold against the job (default: none, only readings and rows are looked at)."`
}

// Help says what is looked at.
func (checkCmd) Help() string {
	return `Without --lay: the readings are fitted and the rows set out, and everything noticed is printed; no boards are laid.

With --lay FILE: the board layout in FILE is proved against the job's floor and limits: nothing overlaps, everything is covered, every board adds up, tongues meet grooves, joints and rips keep their limits. The floor is worked out again from the job, so a layout of an older state of the job fails where the two differ.

Nothing is written to disk. Figures are printed in the job's unit: feet and inches, inches, or millimetres.`
}

func (c *checkCmd) Run(r rim) error {
	j, fs, err := readJob(r, c.Job)
	if err != nil {
		return err
	}
	p := plan.Rows(j)
	p.Findings = append(fs, p.Findings...)
	if c.Lay != "" && finding.Worst(p.Findings) != finding.Stop {
		data, err := os.ReadFile(r.path(c.Lay))
		if err != nil {
			return err
		}
		if p.Lay, err = jobfile.ReadLay(data); err != nil {
			return fmt.Errorf("%s: %w", c.Lay, err)
		}
		p.Findings = append(p.Findings, check.Lay(p.Lay, p.Floor, j.Limits, j.Boards, p.Pins...)...)
	}
	fmt.Fprint(r.out, paper.Findings(p))
	if c.Readings {
		fmt.Fprintln(r.out)
		if err := paper.Readings(r.out, p); err != nil {
			return err
		}
	}
	if finding.Worst(p.Findings) == finding.Stop {
		return errFindings
	}
	return nil
}
