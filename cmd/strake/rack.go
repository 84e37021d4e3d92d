package main

import (
	"fmt"
	"io"
	"os"
	"strings"

	"strake/finding"
	"strake/paper"
	"strake/plan"
	"strake/rack"
	"strake/tape"
	"strake/words"
)

type rackCmd struct {
	Job    string `arg:"" help:"The job file (YAML). strake new writes one."`
	Boards string `required:"" placeholder:"FILE" help:"The boards at hand, one length a line; - reads them from standard input."`
	Laid   string `placeholder:"FILE" help:"The rows as laid, one a line: 12a: 58, 71, 44 is row 12a with its pieces from left to right (default: nothing is laid)."`
	Rows   int    `default:"3" help:"How many rows to propose."`
}

// Help says what is proposed.
func (rackCmd) Help() string {
	return `Proposes the next rows from the boards at hand: which boards, in which order, and what is cut. What is laid is held to: joints keep their distance from the last rows. Rows before the last one given count as laid too; give the last two, as joints keep off both.

A number without a unit is in the job's own unit. Lengths are taken as exact. Nothing is written to disk.`
}

func (c *rackCmd) Run(r rim) error {
	j, fs, err := readJob(r, c.Job)
	if err != nil {
		return err
	}
	boards, err := c.boards(r, j.Unit)
	if err != nil {
		return err
	}
	p := plan.Rows(j)
	if p.Findings = append(fs, p.Findings...); finding.Worst(p.Findings) == finding.Stop {
		fmt.Fprint(r.out, paper.Findings(p))
		return errFindings
	}
	laid, err := c.laid(r, p)
	if err != nil {
		return err
	}
	missing := false
	for _, next := range plan.Next(r.ctx, p, boards, laid, c.Rows) {
		fmt.Fprintln(r.out, proposed(p, next, boards))
		missing = missing || !next.Filled
	}
	if missing {
		return errFindings
	}
	return nil
}

// lines are the lines of a file that say something, with their numbers.
func lines(r rim, name string, each func(n int, line string) error) error {
	var data []byte
	var err error
	if name == "-" {
		data, err = io.ReadAll(r.in)
	} else {
		data, err = os.ReadFile(r.path(name))
	}
	if err != nil {
		return err
	}
	for i, line := range strings.Split(string(data), "\n") {
		line, _, _ = strings.Cut(line, "#")
		if line = strings.TrimSpace(line); line == "" {
			continue
		}
		if err := each(i+1, line); err != nil {
			return fmt.Errorf("%s line %d: %w", name, i+1, err)
		}
	}
	return nil
}

// What a board at hand may measure: a number in feet that was meant as inches
// is then not taken for one.
const (
	shortestBoard = 2 * tape.Inch
	longestBoard  = 24 * tape.Foot
)

// boards are the lengths at hand.
func (c *rackCmd) boards(r rim, unit tape.Unit) ([]tape.Length, error) {
	var out []tape.Length
	err := lines(r, c.Boards, func(_ int, line string) error {
		l, err := tape.Parse(line, unit)
		if err == nil && (l < shortestBoard || l > longestBoard) {
			err = fmt.Errorf("%q is read as %s: no board is that long; write the unit, such as 38-1/2\"", line, tape.Paper(unit).Of(l))
		}
		out = append(out, l)
		return err
	})
	if err == nil && len(out) == 0 {
		err = fmt.Errorf("%s: no boards; write one length a line", c.Boards)
	}
	return out, err
}

// laid are the rows as laid, and those before the last of them.
func (c *rackCmd) laid(r rim, p plan.Plan) ([]rack.Laid, error) {
	given := map[int][]tape.Length{}
	last := -1
	if c.Laid == "" {
		return nil, nil
	}
	err := lines(r, c.Laid, func(_ int, line string) error {
		name, pieces, ok := strings.Cut(line, ":")
		if !ok {
			return fmt.Errorf("%q: write the row, a colon, and its pieces with commas: 12a: 58, 71, 44", line)
		}
		i := runNamed(p, strings.TrimSpace(name))
		if i < 0 {
			return fmt.Errorf("the plan has no row %s", strings.TrimSpace(name))
		}
		last = max(last, i)
		at, err := joints(pieces, p.Job.Unit, p.Layout.Runs[i].Left.Reach)
		given[i] = at
		return err
	})
	var out []rack.Laid
	for i := range last + 1 {
		out = append(out, rack.Laid{Run: i, Joints: given[i]})
	}
	return out, err
}

// runNamed is the place of a run in the order of laying, -1 for none.
func runNamed(p plan.Plan, name string) int {
	for i, run := range p.Layout.Runs {
		if words.RowPart(run.Row, run.Part) == name {
			return i
		}
	}
	return -1
}

// joints are the places where pieces meet, the first beginning at from.
func joints(pieces string, unit tape.Unit, from tape.Length) ([]tape.Length, error) {
	var out []tape.Length
	for _, s := range strings.Split(pieces, ",") {
		l, err := tape.Parse(strings.TrimSpace(s), unit)
		if err != nil {
			return nil, err
		}
		from += l
		out = append(out, from)
	}
	return out[:len(out)-1], nil
}

// proposed is a proposal in words.
func proposed(p plan.Plan, next rack.Proposal, boards []tape.Length) string {
	run := p.Layout.Runs[next.Run]
	name := "row " + words.RowPart(run.Row, run.Part) + ": "
	if !next.Filled {
		return name + "the boards at hand do not fill it"
	}
	style := tape.Paper(p.Job.Unit)
	var out []string
	for _, q := range next.Pieces {
		s := style.Of(q.Length)
		if q.CutLeft || q.CutRight {
			s += " cut from " + style.Of(boards[q.Board])
		}
		out = append(out, s)
	}
	return name + strings.Join(out, ", ")
}
