package rack

import (
	"fmt"
	"slices"
	"strings"

	"strake/finding"
	"strake/stock"
	"strake/tape"
)

// markFindings say what became of the boards with faults.
func (e *engine) markFindings(a Ask, plan []filled) []finding.Finding {
	if e.marks == nil {
		return nil
	}
	var out []finding.Finding
	add := func(f finding.Finding, ok bool) {
		if ok {
			out = append(out, f)
		}
	}
	add(e.cullFinding(a.Style))
	add(e.crookedFinding(plan))
	add(e.misplacedFinding(plan))
	add(e.unusedFinding(plan, a.Style))
	return out
}

// cullFinding says which boards are not laid at all.
func (e *engine) cullFinding(style tape.Style) (finding.Finding, bool) {
	count := map[stock.Fault]int{}
	var length, all tape.Length
	for i := range e.fresh {
		l := e.fresh[i].length()
		all += l
		if f := e.mark(i).Fault; f.Cull() {
			count[f]++
			length += l
		}
	}
	f := finding.Finding{Level: finding.Note, Rule: "culls", Measured: e.tally(count) + ", " + style.Of(length) + " in all",
		Limit: fmt.Sprintf("%.1f %% of the boards, by length", 100*float64(length)/float64(max(1, all))),
		Do:    "They are not in the layout. Keep them until the floor lies, for pieces cut from their good parts; makers often allow 5 % of culls."}
	return f, length > 0
}

// tally lists faults with their counts, in the order that faults are listed.
func (e *engine) tally(count map[stock.Fault]int) string {
	var parts []string
	for _, f := range stock.Faults {
		if n := count[f]; n > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", n, f))
		}
	}
	return strings.Join(parts, ", ")
}

// crookedFinding says where crooked boards are pulled straight.
func (e *engine) crookedFinding(plan []filled) (finding.Finding, bool) {
	names := e.rowsWith(plan, func(f filled, q placed) bool {
		return e.mark(q.board).Fault == stock.Crooked && q.length() >= stock.StraightEnough && nailed(f.run)
	})
	f := finding.Finding{Level: finding.Note, Rule: "crooked boards", Where: "rows " + strings.Join(names, ", "), Measured: "a crooked board lies whole in each",
		Do: "Pull it straight before it is nailed: a block screwed to the subfloor and a wedge or pry bar, more fasteners than usual; keep face and fingers clear of the bar."}
	return f, len(names) > 0
}

// misplacedFinding says where a board lies that would not, were there more.
func (e *engine) misplacedFinding(plan []filled) (finding.Finding, bool) {
	if !e.scarce {
		return finding.Finding{}, false
	}
	strict := *e
	strict.scarce = false
	names := e.rowsWith(plan, func(f filled, q placed) bool { return !strict.suits(q.item, f.run) })
	f := finding.Finding{Level: finding.Warn, Rule: "boards are scarce", Where: "rows " + strings.Join(names, ", "), Measured: "crooked boards in first or last rows, or boards off in width where the row is not ripped",
		Do: "A few sound boards more would take their places; else choose the straightest of them there."}
	return f, len(names) > 0
}

// unusedFinding says which faulty boards found no place.
func (e *engine) unusedFinding(plan []filled, style tape.Style) (finding.Finding, bool) {
	used := map[int]bool{}
	for _, f := range plan {
		for _, q := range f.pieces {
			used[q.board] = true
		}
	}
	count := map[stock.Fault]int{}
	var length tape.Length
	for i := range e.fresh {
		if f := e.mark(i).Fault; f != stock.Sound && !f.Cull() && !used[i] {
			count[f]++
			length += e.fresh[i].length()
		}
	}
	f := finding.Finding{Level: finding.Note, Rule: "faulty boards left over", Measured: e.tally(count) + ", " + style.Of(length) + " in all", Do: "The floor does without them."}
	return f, length > 0
}

// rowsWith are the names of the rows with a piece like that.
func (e *engine) rowsWith(plan []filled, like func(filled, placed) bool) []string {
	var out []string
	for _, f := range plan {
		if f.ok && slices.ContainsFunc(f.pieces, func(q placed) bool { return like(f, q) }) {
			out = append(out, f.name())
		}
	}
	return out
}
