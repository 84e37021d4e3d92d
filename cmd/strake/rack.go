package main

import (
	"cmp"
	"fmt"
	"io"
	"os"
	"slices"
	"strconv"
	"strings"

	"strake/finding"
	"strake/job"
	"strake/paper"
	"strake/plan"
	"strake/rack"
	"strake/stock"
	"strake/tape"
	"strake/words"
)

type rackCmd struct {
	Job    string `arg:"" help:"The job file (YAML). strake new writes one."`
	Boards string `required:"" placeholder:"FILE" help:"The boards at hand, one length a line (4 x 36 in for four alike), of several face widths with the face before it (3: 58); a fault may stand behind it (58, crooked); - reads them from standard input."`
	Rows   int    `default:"3" help:"How many rows to propose."`
}

// Validate refuses a command that asks for nothing.
func (c rackCmd) Validate() error {
	if c.Rows < 1 {
		return fmt.Errorf("--rows=%d: ask for one row at least", c.Rows)
	}
	return nil
}

// Help says what is proposed.
func (rackCmd) Help() string {
	return `Proposes the next rows from the boards at hand: which boards, in which order, and what is cut. What lies already is read from the job file's section laid, and held to: joints keep their distance from the last rows, from where their first pieces were read to begin. Rows laid before the last one named count as laid too; name the last two, as joints keep off both:

    laid:
      11: [58", 71", 44-1/2"]
      12: {pieces: [33", 60-1/4", 80"], start: 3/4"}

A board split? Leave it out of the boards at hand, and ask again: these boards are all there is.

Where all boards at hand have one length and the job gives a shift, the rows go on with the pattern of the last row as laid.

A fault may stand behind the length of a board, as in a tally of the job: 58", crooked or 58", damaged groove end, 4".

A number without a unit is in the job's own unit. Lengths are trusted as far as the job trusts its tally (read_to, slip and trusted under lengths). Nothing is written to disk. strake check JOB --laid looks over the rows as laid.`
}

func (c *rackCmd) Run(r rim) error {
	j, fs, err := readJob(r, c.Job)
	if err != nil {
		return err
	}
	boards, err := c.boards(r, j)
	if err != nil {
		return err
	}
	p := plan.Rows(j)
	laid, more := []rack.Laid(nil), []finding.Finding(nil)
	if finding.Worst(p.Findings) != finding.Stop {
		laid, more = p.LaidJoints()
	}
	if p.Findings = slices.Concat(fs, p.Findings, more); finding.Worst(p.Findings) == finding.Stop {
		r.tell(func(a *answer) { a.planned(p) })
		fmt.Fprint(r.out, paper.Findings(p))
		return errFindings
	}
	if j.Boards.Shift.Fixed() && slices.ContainsFunc(boards, func(b plan.AtHand) bool { return b.Length != boards[0].Length }) {
		fmt.Fprintln(r.out, "note: boards of several lengths are at hand: joints fall where they look best, and not by the job's shift")
	}
	missing, sawn := false, map[int]bool{}
	for _, next := range plan.Next(r.ctx, p, boards, laid, c.Rows) {
		r.tell(func(a *answer) { a.Job = j.Name; a.NextRows = append(a.NextRows, rowOf(p, next, boards)) })
		fmt.Fprintln(r.out, proposed(p, next, boards, sawn))
		missing = missing || !next.Filled
	}
	if missing {
		return errFindings
	}
	return nil
}

// counted is how many boards a line stands for, as in a tally: 4 x 36".
func counted(line string) (int, string) {
	i := strings.IndexAny(line, "xX×")
	if i < 0 {
		return 1, line
	}
	n, err := strconv.Atoi(strings.TrimSpace(line[:i]))
	if err != nil || n < 1 || n > mostCounted {
		return 1, line
	}
	return n, strings.TrimLeft(line[i:], "xX×")
}

// mostCounted is the most boards of one line: no more are at hand.
const mostCounted = 1000

// markedAs reads what stands behind the length of a board: a fault, and of a
// damaged end how much is no use, such as damaged groove end, 4".
func markedAs(s string, unit tape.Unit) (m stock.Marks, err error) {
	fault, rest, damaged := strings.Cut(strings.TrimSpace(s), ",")
	if fault == "" {
		return m, nil
	}
	m.Fault = stock.Fault(strings.TrimSpace(fault))
	if !slices.Contains(stock.Faults, m.Fault) {
		var all []string
		for _, f := range stock.Faults {
			all = append(all, string(f))
		}
		return m, fmt.Errorf("%q is no fault of a board; write one of %s", m.Fault, strings.Join(all, ", "))
	}
	if needs := m.Fault == stock.SpoiledGroove || m.Fault == stock.SpoiledTongue; needs != damaged {
		if needs {
			return m, fmt.Errorf("%q: write how much of it is no use, such as %s, 4\"", m.Fault, m.Fault)
		}
		return m, fmt.Errorf("%q: a length goes with a damaged end only", s)
	}
	if damaged {
		m.Spoiled, err = tape.Parse(rest, unit)
	}
	return m, err
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
	for i, line := range strings.Split(strings.TrimPrefix(string(data), "\ufeff"), "\n") {
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

// boards are those at hand, of several face widths the narrowest first.
func (c *rackCmd) boards(r rim, j job.Job) ([]plan.AtHand, error) {
	var out []plan.AtHand
	err := lines(r, c.Boards, func(_ int, line string) error {
		b, line, err := faceOf(j, line)
		if err != nil {
			return err
		}
		line, marks, _ := strings.Cut(line, ",")
		if b.Marks, err = markedAs(marks, j.Unit); err != nil {
			return err
		}
		count, line := counted(line)
		b.Length, err = tape.Parse(line, j.Unit)
		if l := b.Length; err == nil && (l < shortestBoard || l > longestBoard) {
			err = fmt.Errorf("%q is read as %s: no board is that long; write the unit, such as 38-1/2\"", line, tape.Paper(j.Unit).Of(l))
		}
		for range count {
			out = append(out, b)
		}
		return err
	})
	if err == nil && len(out) == 0 {
		err = fmt.Errorf("%s: no boards; write one length a line", c.Boards)
	}
	slices.SortStableFunc(out, func(a, b plan.AtHand) int { return cmp.Compare(a.Face, b.Face) })
	return out, err
}

// faceOf is a board of the face that a line begins with, where the job has
// several face widths, and the rest of the line.
func faceOf(j job.Job, line string) (plan.AtHand, string, error) {
	if len(j.Boards.Widths) == 0 {
		return plan.AtHand{}, line, nil
	}
	say := tape.Paper(j.Unit)
	say.Step /= 2
	var faces []string
	for _, w := range j.Boards.Each() {
		faces = append(faces, say.Of(w.Face))
	}
	face, rest, ok := strings.Cut(line, ":")
	if !ok {
		return plan.AtHand{}, line, fmt.Errorf("%q has no face width before it: the job has boards of %s, so write %s: %s", line, strings.Join(faces, ", "), faces[0], line)
	}
	f, err := tape.Parse(strings.TrimSpace(face), j.Unit)
	if err != nil {
		return plan.AtHand{}, line, err
	}
	if w, ok := j.Boards.OfFace(f); ok {
		return plan.AtHand{Face: w.Face}, strings.TrimSpace(rest), nil
	}
	return plan.AtHand{}, line, fmt.Errorf("the job has no boards of %s: its faces are %s", say.Of(f), strings.Join(faces, ", "))
}

// proposed is a proposal in words; sawn are the boards cut before.
func proposed(p plan.Plan, next rack.Proposal, boards []plan.AtHand, sawn map[int]bool) string {
	at := rack.Order(p.AllFields())[next.Run]
	run := p.Field(at.Field).Layout.Runs[at.Run]
	name := "row " + words.RowPart(run.Row, run.Part) + ": "
	if !next.Filled {
		return name + "the boards at hand do not fill it"
	}
	style := tape.Paper(p.Job.Unit)
	var out []string
	for _, q := range next.Pieces {
		s := style.Of(q.Length)
		if q.CutLeft || q.CutRight {
			from := " cut from "
			if sawn[q.Board] {
				from = " from what is left of "
			}
			sawn[q.Board] = true
			s += from + style.Of(boards[q.Board].Length)
		}
		if f := boards[q.Board].Fault; f != stock.Sound {
			s += " (" + string(f) + ")"
		}
		out = append(out, s)
	}
	if len(p.Job.Boards.Widths) > 0 {
		name += words.In(p.Job.Unit).Rip(words.Face(p, run.High-run.Low)) + " boards: "
	}
	return name + strings.Join(out, ", ") + kept(p, next, style)
}

// kept says how near joints come to those of the rows beside, and what was
// relaxed.
func kept(p plan.Plan, next rack.Proposal, style tape.Style) string {
	s := ""
	if next.Nearest > 0 {
		s = "; joints " + style.Down(next.Nearest) + " or more from those beside"
	}
	if limit := p.Job.Limits.JointMin.Value; next.Least < limit {
		s += fmt.Sprintf("; the boards at hand allow no more: at least %s was held to, the limit is %s", style.Of(next.Least), style.Of(limit))
	}
	if next.Measured {
		s += "; the last piece laid is cut to measure, as lengths may be off by more than the play"
	}
	if off := tape.Nearest(next.Off, style.Step); off > 0 {
		s += "; " + style.Of(off) + " off the pattern, as an end piece would be too short or a joint too near"
	}
	return s
}
