package plan

import (
	"fmt"
	"math"

	"strake/finding"
	"strake/plane"
	"strake/room"
	"strake/row"
	"strake/survey"
	"strake/tape"
)

// doubts gives each rip at a wall or at something that stays its standard
// deviation: that of the width across the boards from the start edge, at
// whichever end it is larger, and that of the row width, once for each row
// between. The rip at the start edge
// is set from that edge itself and has none.
func (p *Plan) doubts() {
	start, ok := p.startRip()
	if !ok {
		return
	}
	for i := range p.Layout.Rips {
		r := &p.Layout.Rips[i]
		if i == start {
			continue
		}
		ends, ok := p.acrossTo(start, r.Index)
		if !ok {
			continue
		}
		width := math.Max(ends[0].SD, ends[1].SD)
		if sd := math.Hypot(width, p.rowsDoubt(p.Layout.Rips[start].Row, r.Row)); !math.IsInf(sd, 0) && !math.IsNaN(sd) {
			r.SD = tape.Nearest(tape.Length(sd*float64(tape.Millimetre)), tape.Tick)
		}
	}
}

// acrossTo is the width across the boards from the start edge to another, a
// wall or a side of something that stays; not ok where nothing is known of it.
func (p *Plan) acrossTo(start, edge int) (ends [2]survey.Doubt, ok bool) {
	from, to := p.Floor.Edges[p.Layout.Rips[start].Index].Wall, p.Floor.Edges[edge]
	if to.Wall != (room.Wall{}) && to.Wall != from {
		return p.Survey.Across(p.heading(), from, to.Wall)
	}
	for _, s := range p.Built.Stays {
		if s.Name == to.Stay {
			return p.Survey.AcrossStay(p.heading(), from, s, to.Side)
		}
	}
	return ends, false
}

// pastTo names what stands up in the way of that width, "" nothing.
func (p *Plan) pastTo(start, edge int) string {
	from, to := p.Floor.Edges[p.Layout.Rips[start].Index].Wall, p.Floor.Edges[edge]
	if to.Wall != (room.Wall{}) {
		return p.Survey.PastAcross(p.heading(), from, to.Wall)
	}
	for _, s := range p.Built.Stays {
		if s.Name == to.Stay {
			return p.Survey.PastAcrossStay(p.heading(), from, s, to.Side)
		}
	}
	return ""
}

// startRip is the longest wall that the first rows lie along.
func (p *Plan) startRip() (int, bool) {
	best := -1
	for i, r := range p.Layout.Rips {
		if r.Above && p.Floor.Edges[r.Index].Wall != (room.Wall{}) && (best < 0 || r.Row < p.Layout.Rips[best].Row) {
			best = i
		}
	}
	return best, best >= 0
}

func (p *Plan) heading() survey.Heading {
	if p.Layout.Along == (room.Wall{}) {
		return survey.Toward(plane.XY(p.Layout.Dir))
	}
	if p.Layout.Across {
		return survey.SquareTo(p.Layout.Along)
	}
	return survey.AlongWall(p.Layout.Along)
}

// doubtFindings say where two standard deviations could turn a rip into a
// sliver, or take or add a row, and what settles it; and where a wall bows.
func (p *Plan) doubtFindings(style tape.Style) []finding.Finding {
	fine := style
	fine.Step = style.Step / 2
	var out []finding.Finding
	told := map[string]bool{} // a wall that a doorway splits is told of once
	for _, r := range p.Layout.Rips {
		if f, ok := p.sliverInDoubt(r, fine); ok && !told[f.Where] {
			told[f.Where] = true
			out = append(out, f)
		}
		if r.Bow >= tape.Millimetre {
			out = append(out, p.bowFinding(r, fine))
		}
	}
	return out
}

func (p *Plan) sliverInDoubt(r row.Rip, style tape.Style) (finding.Finding, bool) {
	two := 2 * r.SD
	if two == 0 {
		return finding.Finding{}, false
	}
	f := finding.Finding{Level: finding.Warn, Where: fmt.Sprintf("row %d at %s", r.Row, r.Edge),
		Measured: fmt.Sprintf("%s ± %s", style.Of(r.Narrowest), style.Up(two)), Do: p.settle(r)}
	limit := r.Limit
	switch play := p.Aligned.Edges[r.Index].Range.Play(); {
	case r.Narrowest-two <= play || r.Narrowest+two > r.Width+play:
		f.Rule = "number of rows in doubt"
		if r.Row != p.Layout.Rows {
			f.Rule = "closing row in doubt"
		}
		f.Limit = fmt.Sprintf("over %s and up to %s, or another row closes there", style.Of(play), style.Of(r.Width+play))
	case r.Narrowest >= limit && r.Narrowest-two < limit:
		f.Rule, f.Limit = "narrowest rip in doubt", "at least "+style.Of(limit)
		f.Source = p.Job.Limits.NarrowestRip.Source
	default:
		return f, false
	}
	return f, true
}

// settle is the reading that takes most of the doubt away: ten boards when
// they are what is least known, else the width across.
func (p *Plan) settle(r row.Rip) string {
	start, _ := p.startRip()
	if rows := p.rowsDoubt(p.Layout.Rips[start].Row, r.Row); 2*rows*rows > r.SD.Millimetres()*r.SD.Millimetres() {
		if len(p.Job.Boards.Widths) > 0 {
			return "Push ten boards of each width tight and measure over them, over twenty if there is room: that settles the row widths."
		}
		if p.Job.Boards.TenBoards == 0 {
			return "Push ten boards tight and measure over them: that settles the row width."
		}
		return "Measure ten boards again, over twenty if there is room: that settles the row width."
	}
	from, to := p.Layout.Rips[start].Edge, r.Edge
	if next, _ := p.Survey.NextReading(p.Job.Readings); next != "" && p.Survey.Redundant < 0 {
		return fmt.Sprintf("Measure %s, and the width from %s to %s at both ends.", next, from, to)
	}
	if p.apart(start, r.Index) {
		return fmt.Sprintf("No tape reaches from %s to %s. Snap the line of a row through the doorway, and measure from it to %s at both ends before that row is ripped.", from, to, to)
	}
	if past := p.pastTo(start, r.Index); past != "" {
		return fmt.Sprintf("Measure the width from %s to %s at two places far apart, square to the rows, clear of the %s that stands in the way at an end.", from, to, past)
	}
	return fmt.Sprintf("Measure the width from %s to %s at both ends, square to the rows.", from, to)
}

// apart tells whether the start edge and another lie in different rooms.
func (p *Plan) apart(start, edge int) bool {
	i, ok := p.roomOf(p.Layout.Rips[start].Index)
	j, ok2 := p.roomOf(edge)
	return ok && ok2 && i != j
}

// roomOf is the room of an edge by the wall that it lies on or is set out from.
func (p *Plan) roomOf(edge int) (int, bool) {
	e := p.Floor.Edges[edge]
	w := e.Wall
	for _, s := range p.Built.Stays {
		if s.Name == e.Stay && len(s.Corners) == 0 {
			w = s.Wall
		}
	}
	i, _, ok := p.Built.FindWall(w)
	return i, ok
}

// bowFinding says what a bowed wall beside the rows asks for.
func (p *Plan) bowFinding(r row.Rip, style tape.Style) finding.Finding {
	e := p.Aligned.Edges[r.Index]
	f := finding.Finding{Level: finding.Note, Rule: "wall that bows", Where: r.Edge,
		Measured: fmt.Sprintf("%s off a straight line", style.Up(r.Bow)),
		Limit:    fmt.Sprintf("play of the gap %s", style.Of(e.Range.Play()))}
	f.Do = fmt.Sprintf("The play takes it up: row %d is ripped straight, and the trim covers a gap of up to %s.", r.Row, style.Up(e.Range.Greatest))
	switch {
	case r.Bow <= e.Range.Play() && r.Left != r.Right: // straight only where the slant leaves play for it
		f.Do = fmt.Sprintf("The wall slants too, which takes the play: row %d tapers and bends with it. Cut each piece to its widths in the row list.", r.Row)
	case r.Bow > e.Range.Play():
		f.Level = finding.Warn
		f.Do = fmt.Sprintf("Scribe row %d to the wall, %s deep; the trim covers a gap of %s all along. A base that follows the wall hides it best.",
			r.Row, style.Up(r.Bow), style.Of(e.Range.Least))
	}
	return f
}
