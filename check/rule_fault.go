package check

import (
	"fmt"

	"strake/finding"
	"strake/lay"
	"strake/plane"
	"strake/stock"
)

var _ = declare("faults of boards",
	"A board is marked as the tally marks it; culls are not laid, a damaged end lies in no piece, and a crooked board lies only where the floor nailer fits, a board off in width only where the row is ripped, unless boards are too few.",
	holdFaults)

// marked is a sort of boards: of a length, marked alike.
type marked struct {
	kind
	stock.Marks
}

func holdFaults(r Rule, s *site) []finding.Finding {
	var out []finding.Finding
	for _, p := range s.pieces {
		out = append(out, s.faulty(r, p)...)
	}
	return append(out, s.miscounted(r)...)
}

// miscounted are the sorts of boards of which more are used than were tallied
// with those marks.
func (s *site) miscounted(r Rule) []finding.Finding {
	have := map[marked]int{}
	told := false // the tally marks some boards
	for _, b := range append([]stock.Boards{s.stock}, s.stock.Widths...) {
		for _, c := range b.Tally {
			have[marked{s.kindOf(b.Pitch(), c.Length), c.Marks}] += c.Count
			told = told || c.Marks != stock.Marks{}
		}
	}
	var out []finding.Finding
	for _, b := range s.lay.Boards {
		k := marked{s.kindOf(b.Width, b.Length), b.Marks}
		if !told && b.Marks == (stock.Marks{}) {
			continue // counted by the rule of the stock
		}
		if have[k]--; have[k] != -1 {
			continue
		}
		f := r.stop(fmt.Sprintf("board %d", b.ID+1))
		f.Measured, f.Limit = "more of its length used than were tallied as "+sayMarks(b.Marks), "the marks of the tally"
		f.Do = "Mark the boards as the tally does, or plan with it anew."
		out = append(out, f)
	}
	return out
}

func sayMarks(m stock.Marks) string {
	out := "sound"
	if m.Fault != stock.Sound {
		out = string(m.Fault)
	}
	if m.Carton != "" {
		out += ", carton " + m.Carton
	}
	if m.Shade != "" {
		out += ", shade " + m.Shade
	}
	return out
}

// faulty holds one piece to what is wrong with its board.
func (s *site) faulty(r Rule, p *piece) []finding.Finding {
	b := s.lay.Boards[p.Board]
	say := func(level finding.Level, measured, limit, do string) []finding.Finding {
		f := r.stop(p.label(), p.ID)
		f.Level, f.Measured, f.Limit, f.Do = level, measured, limit, do
		f.Source = "common practice, no source"
		return []finding.Finding{f}
	}
	switch {
	case b.Fault.Cull():
		return say(finding.Stop, "its board is "+string(b.Fault), "culls are not laid", "Take another board.")
	case b.Spoiled > 0 && !s.damage(b).Meet(p.cut.x()).Empty():
		return say(finding.Stop, "it reaches into the damaged end of its board", s.say(b.Spoiled)+" of the "+string(b.Fault)+" are no use", "Cut that end off first.")
	case b.Fault == stock.Crooked && p.box.x().Len() >= stock.StraightEnough && !s.nailedAlong(p):
		return say(finding.Warn, "a crooked board where no floor nailer fits", "crooked boards of "+s.say(stock.StraightEnough)+" and more lie in mid-field", "Take a straight board there.")
	case b.Fault == stock.OffWidth && p.Behind != lay.Ripped && p.Ahead != lay.Ripped:
		return say(finding.Warn, "a board off in width that keeps both its edges", "such boards lie where the row is ripped", "Take a board of the right width there.")
	}
	return nil
}

// damage is the part of a board that is no use, along it.
func (s *site) damage(b lay.Board) plane.Span {
	if (b.Fault == stock.SpoiledTongue) != (s.stock.Hand == stock.LeftHand) {
		return plane.Span{From: b.Length - b.Spoiled, To: b.Length}
	}
	return plane.Span{From: 0, To: b.Spoiled}
}

// nailedAlong tells whether the floor nailer fits all along the run of p.
func (s *site) nailedAlong(p *piece) bool {
	for _, n := range p.run.Nailing {
		if n.By != lay.Nailer {
			return false
		}
	}
	return true
}
