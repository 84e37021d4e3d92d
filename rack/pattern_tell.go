package rack

import (
	"fmt"
	"strings"

	"strake/finding"
	"strake/stock"
	"strake/tape"
)

// patternFindings say what a fixed shift gives, and where it was broken.
func (e *engine) patternFindings(a Ask, plan []filled) []finding.Finding {
	p := e.pattern
	if p == nil {
		return nil
	}
	style := a.Style
	var out []finding.Finding
	for k, f := range a.Fields {
		if rows := p.rows[k]; len(rows) > 0 {
			out = append(out, e.given(style, f.Name, rows, plan, k))
		}
	}
	if d := p.apart(1); d < e.jointMin {
		out = append(out, finding.Finding{Level: finding.Warn, Rule: "pattern", Measured: "joints of neighbouring rows " + style.Of(d) + " apart, as the shift asks",
			Limit: "at least " + style.Of(e.jointMin), Source: a.Limits.JointMin.Source, Do: "Choose another shift: from " + style.Of(e.jointMin) + " to " + style.Of(p.board-e.jointMin) + "."})
	}
	return append(out, e.brokenFindings(a, plan)...)
}

// given is what the pattern gives a field.
func (e *engine) given(style tape.Style, name string, of []stretch, plan []filled, field int) finding.Finding {
	p := e.pattern
	f := finding.Finding{Level: finding.Note, Rule: "pattern", Where: name}
	first := ""
	for _, q := range plan {
		if q.field == field && q.ok && !q.alone && len(q.pieces) > 1 && e.offGrid(q) <= gridRounding {
			l := q.pieces[0].length()
			if q.sign < 0 {
				l = q.pieces[len(q.pieces)-1].length()
			}
			first = fmt.Sprintf("; row %s begins with %s", q.name(), style.Of(l))
			break
		}
	}
	f.Measured = fmt.Sprintf("joints of boards of %s move by %s from row to row%s; the smallest end piece %s", style.Of(p.board), style.Of(p.shift()), first, style.Of(p.smallestLaid(plan, field)))
	f.Limit = fmt.Sprintf("joints %s from those of the next row, %s two rows off, %s three rows off; the pattern repeats after %s", style.Of(p.apart(1)), style.Of(p.apart(2)), style.Of(p.apart(3)), rows(p.period()))
	if e.kinds.of == nil { // of several widths what is left is for rows of its own
		f.Do = p.hint(style, of)
	}
	return f
}

// smallestLaid is the smallest end piece of a field as laid.
func (p *pattern) smallestLaid(plan []filled, field int) tape.Length {
	out := tape.Longest
	for _, q := range plan {
		if q.field == field && q.ok && !q.alone && len(q.pieces) > 1 {
			out = min(out, q.pieces[0].length(), q.pieces[len(q.pieces)-1].length())
		}
	}
	return out
}

// hint says what what is left of last pieces is good for, in rows as long as
// most are.
func (p *pattern) hint(style tape.Style, of []stretch) string {
	count := map[tape.Length]int{}
	var length tape.Length
	for _, r := range of {
		l := r.to - r.from
		if count[l]++; count[l] > count[length] || count[l] == count[length] && l > length {
			length = l
		}
	}
	n, lost, ok := p.reuse(length)
	if !ok {
		return "What is left of a last piece begins no row of that length."
	}
	where := "the same row"
	if n > 0 {
		where = "a row " + rows(n) + " on"
	}
	return fmt.Sprintf("In rows of %s what is left of a last piece, where it is long enough, begins %s, with %s lost.", style.Of(length), where, style.Of(lost))
}

// brokenFindings name the rows that are off the pattern, and a shift with which
// fewer would be.
func (e *engine) brokenFindings(a Ask, plan []filled) []finding.Finding {
	p := e.pattern
	var off, free []string
	most := tape.Length(0)
	for _, q := range plan {
		if !q.ok || q.alone || e.isAsLaid(q) {
			continue
		}
		switch d := e.offGrid(q); {
		case d <= gridRounding:
		case len(q.must) > 0:
			free = append(free, q.name())
		default:
			off, most = append(off, q.name()), max(most, d)
		}
	}
	var out []finding.Finding
	if len(off) > 0 {
		out = append(out, finding.Finding{Level: finding.Warn, Rule: "pattern broken", Where: rowList(off), Measured: "off the pattern by up to " + a.Style.Of(most),
			Limit: "no end piece under " + a.Style.Of(p.shortest) + ", no joint nearer another than the pattern brings it", Source: a.Limits.ShortestPiece.Source,
			Do: e.otherShift(a)})
	}
	if len(free) > 0 {
		out = append(out, finding.Finding{Level: finding.Warn, Rule: "pattern broken", Where: rowList(free), Measured: "laid without the pattern",
			Limit: "a joint has to fall at what stays inside the row", Do: "Look at these rows in the drawing."})
	}
	return out
}

// gridRounding is what a part of a board may be off a whole number of ticks.
const gridRounding = 1

// isAsLaid tells whether a run lies already.
func (e *engine) isAsLaid(f filled) bool {
	_, ok := e.laid[f.index]
	return ok
}

// shifts are those that the trade knows, as parts of a board.
var shifts = []stock.Shift{{Num: 1, Den: 2}, {Num: 1, Den: 3}, {Num: 2, Den: 3}, {Num: 1, Den: 4}, {Num: 3, Den: 4}, {Num: 2, Den: 5}, {Num: 3, Den: 5}, {Num: 1, Den: 5}, {Num: 4, Den: 5}, {Num: 3, Den: 8}, {Num: 5, Den: 8}}

// otherShift names the shift with which the fewest rows would be off the
// pattern, of those that break no limit; of equals the nearest to the one asked
// for.
func (e *engine) otherShift(a Ask) string {
	p := e.pattern
	now := p.brokenIn(p.steps)
	best, fewest := stock.Shift{}, now
	for _, by := range shifts {
		s := stepsOf(p.board, by, p.kerf, p.shortest)
		if s.apart(1) < e.jointMin || s.apart(2) <= e.hReach && p.apart(2) > e.hReach {
			continue
		}
		n := p.brokenIn(s)
		if n < fewest || n == fewest && best.Fixed() && (s.shift()-p.shift()).Abs() < (best.Of(p.board)-p.shift()).Abs() {
			best, fewest = by, n
		}
	}
	if !best.Fixed() {
		return "No shift that is a common part of a board breaks fewer rows. Lay them as planned, or let the joints fall as they may: leave shift out."
	}
	return fmt.Sprintf("Lay them as planned. A shift of %d/%d of a board, %s, would leave %s with an end piece too short, instead of %d.", best.Num, best.Den, a.Style.Of(best.Of(p.board)), noneOr(fewest), now)
}

// brokenIn is how many rows other steps would break, at their best.
func (p *pattern) brokenIn(s steps) int {
	n := 0
	for _, rows := range p.rows {
		n += s.broken(rows, s.best(rows))
	}
	return n
}

func noneOr(n int) string {
	if n == 0 {
		return "none"
	}
	return rows(n)
}

// rowList names rows: rows 3, 7 and 12a.
func rowList(names []string) string {
	if len(names) == 1 {
		return "row " + names[0]
	}
	return "rows " + strings.Join(names[:len(names)-1], ", ") + " and " + names[len(names)-1]
}

// whyNear is why joints lie nearer than the limit.
func (e *engine) whyNear() string {
	if e.pattern != nil {
		return "the fixed shift and boards of one length allow no more"
	}
	return "no order of the boards left was found that keeps more"
}
