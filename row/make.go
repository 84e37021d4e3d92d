package row

import (
	"fmt"
	"slices"
	"strings"

	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/limits"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// Make lays out the rows of a floor: the direction, the offset with the widest
// narrowest rip, and the runs. It returns the floor in the frame of the rows,
// from which racking and the checker start too.
func Make(f floor.Floor, b room.Built, pitch tape.Length, lim limits.Limits, w Wishes, style tape.Style) (Layout, floor.Aligned) {
	d, from, fs := direction(b, w)
	l, a := layRows(f, b, d, from, []tape.Length{pitch}, lim, w, style)
	l.Findings = append(fs, l.Findings...)
	return l, a
}

// layRows is Make for one direction, with rows of these widths in turn.
func layRows(f floor.Floor, b room.Built, d plane.Dir, from basis, widths []tape.Length, lim limits.Limits, w Wishes, style tape.Style) (Layout, floor.Aligned) {
	return layIn(f.In(d), f, b, from, widths, lim, w, style)
}

// layIn is layRows on a floor turned into the frame of its rows.
func layIn(a floor.Aligned, f floor.Floor, b room.Built, from basis, widths []tape.Length, lim limits.Limits, w Wishes, style tape.Style) (Layout, floor.Aligned) {
	l := Layout{Dir: a.Dir, Why: from.why, Along: from.wall, Across: from.across, Pitch: slices.Max(widths)}
	if len(widths) > 1 {
		l.Pattern = widths
	}
	if len(a.Need) == 0 {
		l.Findings = append(l.Findings, finding.Finding{Level: finding.Stop, Rule: "rows",
			Measured: "nothing is left to board inside the gaps", Limit: "least gap " + style.Of(lim.GapLeast.Value),
			Do: "Check the readings, or enter a smaller gap if the maker allows it."})
		return l, a
	}
	p := newProblem(a, widths, lim)
	offset, s := p.best()
	offset, s, fs := p.wished(offset, s, a, b, w, style)
	if w.Line != nil {
		offset, s = p.bestOf(p.through(a.Dir.ToRow(*w.Line).Y))
		fs = nil
	}
	at, by, more := p.pinned(w.Pins, a, style)
	if by.Kind != "" && w.Line == nil {
		offset, s, fs = at, p.at(at), nil
		l.Pin = by.String()
	}
	l.Findings = append(append(l.Findings, fs...), more...)
	l.Offset, l.Pins = offset, p.keepable(w.Pins, a)
	l.Face = face(a, lines{l.Courses()})
	l.Runs = runs(a, l.Face, l.Courses(), lim.ShortestPiece.Value)
	if n := len(l.Runs); n > 0 {
		l.Rows = l.Runs[n-1].Row
	}
	l.rips(p, a, f)
	l.StartRow = l.startRow(w, b)
	if r := l.pinnedStart(w.Pins); r > 0 {
		l.StartRow, w.Middle = r, true
	}
	if w.Middle { // what lies behind goes the other way
		w.Turning = TurnAll
	}
	l.spread(a, f.Rooms, w.Turning)
	l.zones(a, lim)
	l.odd(p, a)
	fine := style
	fine.Step = style.Step / 2 // as rips are told
	if len(p.closing) > 0 {
		l.Why += "; narrowest rip at a closing edge " + s.tell(l.Pitch, fine)
	}
	l.Findings = append(l.Findings, l.sliverFindings(lim, style)...)
	return l, a
}

// wished is the offset with a row edge on the wished corner, or with a full
// board at the wished edge, where that makes no rip too narrow.
func (p problem) wished(best tape.Length, s score, a floor.Aligned, b room.Built, w Wishes, style tape.Style) (tape.Length, score, []finding.Finding) {
	f := finding.Finding{Rule: "row edge on a corner", Where: "corner " + w.EdgeOn, Limit: "at least " + style.Of(slices.Max(p.limits))}
	at, ok := b.Mark(w.EdgeOn)
	if _, corner := b.At[w.EdgeOn]; !corner {
		f.Where = "row edge of the old floor in " + room.DoorwaySaid(w.EdgeOn)
	}
	offsets := p.through(a.Dir.ToRow(at).Y)
	if !ok && w.FullAt != "" {
		f.Rule, f.Where = "full board at an edge", w.FullAt
		offsets = p.offsetsOf(lay.Pin{Kind: lay.PinFull, Where: w.FullAt}, a)
		ok = len(offsets) > 0
		if !ok {
			f.Level, f.Measured, f.Do = finding.Warn, "no row closes against it in this direction", "Name an edge that lies beside the rows, or wish for another direction."
			return best, s, []finding.Finding{f}
		}
	}
	if !ok {
		return best, s, nil
	}
	y, t := p.bestOf(offsets)
	f.Measured = "narrowest rip " + t.tell(p.widest(), style)
	if !t.sliver() || !s.spares(t) {
		f.Level, f.Do = finding.Note, "The wish is kept."
		return y, t, []finding.Finding{f}
	}
	f.Level, f.Do = finding.Warn, "The wish is not kept: it would leave a sliver. The best start is used instead."
	return best, s, []finding.Finding{f}
}

// rips reads the rip at each closing edge off the offset.
func (l *Layout) rips(p problem, a floor.Aligned, f floor.Floor) {
	for _, e := range p.closing {
		is := p.rip(e, l.Courses())
		r := Rip{Edge: a.Edges[e.index].Name, Index: e.index, Kind: a.Edges[e.index].Kind, Wall: f.Edges[e.index].Wall,
			Above: e.above, Width: is.of, Limit: is.limit, Narrowest: is.left, Bow: e.bow}
		r.Left, r.Right = r.Narrowest, r.Narrowest
		if spread := e.slant - e.play; spread > 0 { // a taper: the other end is wider by what play does not take up
			wide := min(r.Width, r.Narrowest+e.high-e.low)
			rises := (a.Edges[e.index].To.Y > a.Edges[e.index].From.Y) == (a.Edges[e.index].To.X > a.Edges[e.index].From.X)
			if rises == e.above {
				r.Left = wide
			} else {
				r.Right = wide
			}
		}
		r.Row = l.rowAt(e)
		r.Neck = l.neck(r, e, a)
		l.Rips = append(l.Rips, r)
	}
}

// rowAt is the number of the row that closes against an edge.
func (l *Layout) rowAt(e edge) int {
	for _, r := range l.Runs {
		if e.above && r.Low <= e.need && e.need < r.High || !e.above && r.Low < e.need && e.need <= r.High {
			return r.Row
		}
	}
	return 0
}

func (l *Layout) odd(p problem, a floor.Aligned) {
	for _, e := range p.odd {
		l.Odd = append(l.Odd, Odd{Edge: a.Edges[e.index].Name, Index: e.index, Under: e.under(l.Courses(), p.limits)})
	}
}

// sliverFindings name each closing edge whose rip no offset could keep, and
// each edge that leaves points anyway.
func (l *Layout) sliverFindings(lim limits.Limits, style tape.Style) []finding.Finding {
	var out []finding.Finding
	fine := style
	fine.Step = style.Step / 2
	var slivers []string
	var least Rip
	for _, r := range l.Rips {
		if r.Narrowest >= r.Limit {
			continue
		}
		if slivers == nil || r.Narrowest < least.Narrowest {
			least = r
		}
		if !slices.Contains(slivers, r.Edge) {
			slivers = append(slivers, r.Edge)
		}
	}
	if slivers != nil {
		do := "No start line keeps every rip in this direction. Try the other direction, or move what can be moved."
		for _, pin := range l.Pins {
			if pin.Kind == lay.PinThrough {
				do = "No start line keeps every rip in this direction, which the pin \"" + pin.String() + "\" gives. Take it out, and another may."
			}
		}
		if l.Pin != "" {
			do = "The pin \"" + l.Pin + "\" is kept as the job asks. Take it out, and the best start line is used."
		}
		out = append(out, finding.Finding{Level: finding.Warn, Rule: "narrowest rip", Where: strings.Join(slivers, ", "),
			Measured: fine.Of(least.Narrowest), Limit: "at least " + fine.Of(least.Limit), Source: lim.NarrowestRip.Source, Do: do})
	}
	return append(out, l.oddFindings(style)...)
}

// oddFindings name each edge too slanted for one rip once, with the length of all
// its stretches where rows run out narrow.
func (l *Layout) oddFindings(style tape.Style) []finding.Finding {
	under := map[string]tape.Length{}
	var out []finding.Finding
	for _, o := range l.Odd {
		under[o.Edge] += o.Under
	}
	for _, o := range l.Odd {
		if u := under[o.Edge]; u > 0 {
			delete(under, o.Edge)
			out = append(out, finding.Finding{Level: finding.Note, Rule: slantedRule, Where: o.Edge,
				Measured: fmt.Sprintf("rows run out narrow over %s of it", style.Of(u)),
				Do:       "Rows end in points here whatever the start; cut them to the edge one by one."})
		}
	}
	return out
}

// slantedRule is what findings on edges too slanted for one rip are called.
const slantedRule = "edge too slanted for one rip"

// neck is the narrowest section of the runs of a row beside an edge.
func (l *Layout) neck(r Rip, e edge, a floor.Aligned) tape.Length {
	from, to := a.Edges[e.index].From.X, a.Edges[e.index].From.X
	for _, g := range a.Edges {
		if g.Group == e.group {
			from, to = min(from, g.From.X, g.To.X), max(to, g.From.X, g.To.X)
		}
	}
	least := r.Width
	for _, run := range l.Runs {
		if run.Row != r.Row {
			continue
		}
		lo, hi := max(from, run.Left.Reach), min(to, run.Right.Reach)
		xs := []tape.Length{lo, hi}
		for _, ring := range run.Shape {
			for _, p := range ring {
				xs = append(xs, p.X)
			}
		}
		for _, x := range xs {
			for _, leftwards := range []bool{false, true} {
				if x < lo || x > hi || x == lo && leftwards || x == hi && !leftwards {
					continue
				}
				for _, s := range run.Shape.Section(x, leftwards) {
					least = min(least, s.Len())
				}
			}
		}
	}
	return least
}
