package plan

import (
	"fmt"
	"math"
	"strings"

	"strake/finding"
	"strake/lay"
	"strake/room"
	"strake/tape"
)

// Boards of several face widths: the rows take turns by a pattern.

// orderMore is what is ordered beyond the length that the rows measure, for
// cuts and culls: a tenth, the rule of thumb (common practice, no source).
const orderMore = 0.10

// turnedFindings stop a plan whose rows are of several widths and change at a
// doorway or come to a frame: there the rows of one part would have to meet
// lines of another, or boards of one width fit all round.
func (p Plan) turnedFindings() []finding.Finding {
	var out []finding.Finding
	if len(p.Job.Boards.Widths) == 0 {
		return nil
	}
	say := func(where, what string) {
		out = append(out, finding.Finding{Level: finding.Stop, Rule: "rows of several widths", Where: where, Measured: what,
			Limit: "rows of one width", Do: "Let the rows go on through, or lay this part with boards of one width as a job of its own."})
	}
	for _, d := range p.Built.Doorways {
		if d.Rows == room.RowsTurn || d.Rows == room.RowsHeader {
			say(d.Said(), "the rows are to change there")
		}
	}
	for _, s := range p.Built.Stays {
		if s.Frame != room.NoFrame {
			say(s.Name, "a frame is to go round it")
		}
	}
	return out
}

// widthFindings say by which pattern rows of several widths follow each other,
// and what the rows of each width take of what was delivered.
func (p Plan) widthFindings(style tape.Style) []finding.Finding {
	b := p.Job.Boards
	if len(b.Widths) == 0 || len(p.Layout.Runs) == 0 {
		return nil
	}
	fine := style
	fine.Step = style.Step / 2
	var faces []string
	c := p.Layout.Courses()
	for i, first := 0, c.Row(p.Layout.Runs[0].Low); i < len(c.Widths); i++ {
		w, _ := b.OfPitch(c.Width(first + i))
		faces = append(faces, fine.Of(w.Face))
	}
	x := finding.Finding{Level: finding.Note, Rule: "rows of several widths", Where: "floor",
		Measured: fmt.Sprintf("from row 1 on, over and over: %s; %s to a turn", strings.Join(faces, ", "), fine.Of(c.Period()))}
	if len(b.Pattern) == 0 {
		x.Measured += "; proposed, as it uses up what was delivered evenly"
		x.Do = "Another order of the same rows is as good: write it as pattern under boards."
	}
	out := []finding.Finding{x}
	need := p.lengthByWidth()
	for _, w := range b.Each() {
		f := finding.Finding{Level: finding.Note, Rule: "rows of several widths", Where: "boards of " + fine.Of(w.Face)}
		take := need[w.Pitch()]
		f.Measured = "the rows take " + style.Up(take)
		have, known := w.Delivered()
		order := style.Up(tape.Length(math.Ceil(float64(take) * (1 + orderMore))))
		switch {
		case take == 0:
			f.Measured, f.Do = "no row of the floor is of this width", "Leave it out, or write a pattern that has it."
		case !known:
			f.Do = fmt.Sprintf("With a tenth for cuts and culls that is %s to order.", order)
		case have < take:
			f.Level = finding.Warn
			f.Measured += ", and " + style.Of(have) + " were delivered"
			f.Do = fmt.Sprintf("%s are missing: with a tenth for cuts and culls order %s in all, or write a pattern with fewer such rows.", style.Up(take-have), order)
		default:
			f.Measured += " of " + style.Of(have) + " delivered"
			f.Do = fmt.Sprintf("%s are left over, less what cuts take.", style.Of(have-take))
		}
		out = append(out, f)
	}
	return out
}

// lengthByWidth is the length of the rows of each width.
func (p Plan) lengthByWidth() map[tape.Length]tape.Length {
	out := map[tape.Length]tape.Length{}
	for _, f := range p.AllFields() {
		for _, r := range f.Layout.Runs {
			out[r.High-r.Low] += r.Length()
		}
	}
	return out
}

// leftFinding says what whole boards of each width are left over once the
// floor is laid.
func (p Plan) leftFinding(l lay.Lay, style tape.Style) []finding.Finding {
	if len(p.Job.Boards.Widths) == 0 || l.Example {
		return nil
	}
	fine := style
	fine.Step = style.Step / 2
	var says []string
	for _, w := range p.Job.Boards.Each() {
		n, sum := 0, tape.Length(0)
		for _, c := range l.Spare {
			if c.Width == w.Pitch() {
				n, sum = n+c.Count, sum+c.Length*tape.Length(c.Count)
			}
		}
		says = append(says, fmt.Sprintf("%d of %s (%s)", n, fine.Of(w.Face), style.Of(sum)))
	}
	return []finding.Finding{{Level: finding.Note, Rule: "boards left over", Where: "floor", Measured: "whole boards: " + strings.Join(says, ", "),
		Do: "Keep a few of each width for repairs."}}
}

// rowsDoubt is what so many rows from one on leave in doubt of a width across
// them, a standard deviation in mm: boards of one width are off alike.
func (p Plan) rowsDoubt(from, to int) float64 {
	b := p.Job.Boards
	if len(b.Widths) == 0 {
		return float64(to-from) * b.PitchSD().Millimetres()
	}
	rows := map[tape.Length]float64{}
	seen := map[int]bool{}
	for _, r := range p.Layout.Runs {
		if !seen[r.Row] && min(from, to) <= r.Row && r.Row < max(from, to) {
			rows[r.High-r.Low]++
		}
		seen[r.Row] = true
	}
	sum := 0.0
	for _, w := range b.Each() {
		d := rows[w.Pitch()] * w.PitchSD().Millimetres()
		sum += float64(d * d)
	}
	return math.Sqrt(sum)
}
