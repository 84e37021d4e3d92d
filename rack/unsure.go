package rack

import (
	"fmt"
	"slices"

	"strake/finding"
	"strake/stock"
	"strake/tape"
)

// finer is a finer tally to compare with: boards against a stop, read to
// 1/32 in or 1 mm, with half of that as slip.
func finer(style tape.Style) stock.Boards {
	if style.Unit.Imperial() {
		return stock.Boards{Known: stock.Tallied, ReadTo: tape.Inch / 32, Slip: tape.Inch / 64}
	}
	return stock.Boards{Known: stock.Tallied, ReadTo: tape.Millimetre, Slip: tape.Millimetre / 2}
}

// unsureFindings say how many rows end in a cut because the tally is not sure
// enough, what a finer one would save, and which rows are planned to close
// whole all the same because boards are scarce.
func (e *engine) unsureFindings(a Ask, plan []filled) []finding.Finding {
	var unsure, saved, daring int
	var off, play tape.Length
	fine := finer(a.Style)
	for _, f := range plan {
		if !f.ok || f.alone {
			continue
		}
		if cuts, asked := f.cuts(); !f.unsure {
			if cuts <= asked && e.doubted(f.undoubted()).unsure {
				daring++
			}
			continue
		}
		unsure++
		off, play = max(off, e.margin(f.run)/sureness), max(play, f.play())
	}
	if unsure > 0 && !e.untrusted {
		saved = e.savedBy(a, fine, plan)
	}
	style := a.Style
	var out []finding.Finding
	if unsure > 0 && !e.untrusted {
		do := "The last board of each is cut to measure when the others lie."
		if saved > 0 {
			do += fmt.Sprintf(" Measured against a stop and read to %s, with a slip of %s (lengths: read_to, slip), about %d of them could close whole.",
				fine.ReadTo, fine.Slip, saved)
		}
		out = append(out, finding.Finding{Level: finding.Note, Rule: "length error", Measured: fmt.Sprintf("%s end in a cut: read to %s, the boards of one may be off by %s together", rows(unsure), a.Boards.ReadTo, style.Of(off)),
			Limit: fmt.Sprintf("%s of play in the length of a row at the most; twice the error is kept from both its limits", style.Of(play)), Do: do})
	}
	if e.untrusted {
		out = append(out, finding.Finding{Level: finding.Note, Rule: "length error", Measured: "the tally is not trusted, as the job says", Limit: "every row ends in a cut",
			Do: "Cut the last board of each row to measure when the others lie."})
	}
	if daring > 0 {
		out = append(out, finding.Finding{Level: finding.Warn, Rule: "length error", Measured: fmt.Sprintf("%s have to close with whole boards though their lengths may be off by more than the play", rows(daring)),
			Limit: "no way was found to end more rows in a cut with these boards", Do: "Lay these rows dry first; the row list has the chance that each closes. A few more boards would do away with it."})
	}
	return out
}

// mostTried is how many runs a floor may have for it to be racked again.
const mostTried = 300

// savedBy is how many fewer rows end in a cut with a finer tally: racked again
// with the same lengths, as if they had been read so. 0 for large floors.
func (e *engine) savedBy(a Ask, fine stock.Boards, plan []filled) int {
	if len(plan) > mostTried || e.ctx.Err() != nil {
		return 0
	}
	a.Boards.ReadTo, a.Boards.Slip, a.Polishing, a.Progress = fine.ReadTo, fine.Slip, 0, nil
	a.Boards.Widths = slices.Clone(a.Boards.Widths)
	for i := range a.Boards.Widths {
		a.Boards.Widths[i].ReadTo, a.Boards.Widths[i].Slip = fine.ReadTo, fine.Slip
	}
	ls, widths, _ := supply(a)
	return max(0, uncut(newEngine(e.ctx, a, ls, widths).run(a.Fields))-uncut(plan))
}

// uncut counts the rows that close without a cut.
func uncut(plan []filled) int {
	n := 0
	for _, f := range plan {
		if cuts, _ := f.cuts(); f.ok && !f.alone && cuts == 0 && !f.unsure {
			n++
		}
	}
	return n
}

// undoubted is the run as its gaps make it.
func (r run) undoubted() run { return trusted([]run{r})[0] }

// play is how much the length of a run may vary.
func (r run) play() tape.Length { return r.nearNeed - r.nearReach + r.farReach - r.farNeed }

func rows(n int) string {
	if n == 1 {
		return "1 row"
	}
	return fmt.Sprintf("%d rows", n)
}
