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
	Lay      string `xor:"lay" placeholder:"FILE" help:"A written board layout (plan.json) to hold against the job (default: none, only readings and rows are looked at)."`
	Laid     bool   `xor:"lay" help:"Hold the rows as laid, the job file's section laid, to the limits, and look at nothing else."`
}

// Help says what is looked at.
func (checkCmd) Help() string {
	return `Without --lay and --laid: the readings are fitted and the rows set out, and everything noticed is printed; no boards are laid.

With --lay FILE: the board layout in FILE is proved against the job's floor and limits: nothing overlaps, everything is covered, every board adds up, tongues meet grooves, joints and rips keep their limits. The floor is worked out again from the job, so a layout of an older state of the job fails where the two differ.

With --laid: the rows of the job file's section laid, nailed or laid dry, are held to the limits, without asking for the rest of the floor: what they add up to against the gaps at their ends, joints of neighbouring rows, joints in line over one row, in steps and in clusters, short end pieces, and how far a tongue edge has drifted. Each joint that breaks or strains a limit is named with its place. The exit code is 1 where a limit is broken, 0 where one is only strained:

    laid:
      11: [58", 71", 44-1/2"]
      12: {pieces: [33", 60-1/4", 80"], start: 3/4", cut: right, tongue: 52-5/8"}

Nothing is written to disk. Figures are printed in the job's unit: feet and inches, inches, or millimetres.`
}

func (c *checkCmd) Run(r rim) error {
	j, fs, err := readJob(r, c.Job)
	if err != nil {
		return err
	}
	p := plan.Rows(j)
	if c.Laid {
		return c.laid(r, p, fs)
	}
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
	p.Findings = append(p.Findings, p.ReadyFindings()...)
	r.tell(func(a *answer) { a.planned(p) })
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

// laid prints what there is to say of the rows as laid, and of the rest only
// what stops the rows from being set out.
func (c *checkCmd) laid(r rim, p plan.Plan, fs []finding.Finding) error {
	switch {
	case len(p.Job.Laid) == 0:
		return fmt.Errorf("%s: no rows as laid; write them under laid, such as\nlaid:\n  11: [58\", 71\", 44-1/2\"]", c.Job)
	case finding.Worst(p.Findings) == finding.Stop:
		p.Findings = append(fs, p.Findings...)
	default:
		p.Findings = p.CheckLaid()
	}
	r.tell(func(a *answer) { a.planned(p) })
	fmt.Fprint(r.out, paper.Findings(p))
	if finding.Worst(p.Findings) == finding.Stop {
		return errFindings
	}
	return nil
}
