package jobfile

import (
	"fmt"
	"math"

	"strake/limits"
	"strake/stock"
	"strake/tape"
)

// boards checks the stock, and sets what is known about the lengths.
func boards(d *decoder, j *draft) {
	if d.given(at("boards", "widths")) {
		severalWidths(d, j)
		return
	}
	if d.given(at("boards", "pattern")) {
		d.failPath(at("boards", "pattern"), "a pattern goes with boards of several face widths", "", widthsLike(d.unit.Imperial()))
	}
	boardLengths(d, j, &j.Boards, at("boards", "lengths"))
	path := at("boards", "ten_boards")
	if ten := receivedTen(d, j); ten > 0 {
		j.Boards.TenBoards, path = ten, at("received", "ten_boards")
	}
	tenBoards(d, j, j.Boards, path)
}

// receivedTen is the width over ten boards by what was measured of the delivery,
// where boards give none of their own; else 0.
func receivedTen(d *decoder, j *draft) tape.Length {
	if len(j.Received.Tens) == 0 || d.given(at("boards", "ten_boards")) {
		return 0
	}
	var sum float64
	for _, x := range j.Received.Tens {
		sum += x
	}
	return tape.Length(math.Round(sum / float64(len(j.Received.Tens)) * float64(mm)))
}

// boardLengths checks the lengths of boards that stand at a path, and sets what
// is known about them.
func boardLengths(d *decoder, j *draft, b *stock.Boards, path string) {
	if b.Known == stock.Unknown {
		return
	}
	var ways []string
	for _, way := range []struct {
		key   string
		known stock.Known
	}{{"tally", stock.Tallied}, {"one", stock.OneSize}, {"mix", stock.MixOnly}} {
		if d.given(at(path, way.key)) {
			ways = append(ways, way.key)
			b.Known = way.known
		}
	}
	switch {
	case len(ways) == 0 && d.given(path) && !d.given(at(path, "count")):
		d.failPath(path, "nothing says how long the boards are", "", lengthsLike(d.unit.Imperial()))
	case len(ways) > 1:
		d.failPath(at(path, ways[1]), "the lengths are given in more than one way", fmt.Sprint(ways), "one of tally, one and mix")
	}
	if d.given(at(path, "count")) && !d.given(at(path, "one")) {
		d.failPath(at(path, "count"), "a count goes with one length", "", countLike(d.unit.Imperial()))
	}
	if d.given(at(path, "shift")) {
		shifted(d, j, *b, path)
	}
	if d.given(at(path, "mix")) {
		graded(d, &b.Mix, at(path, "mix"))
		mix(d, j, b.Mix, at(path, "mix"))
	}
	doubts(d, b, path)
}

// countLike is an example of a count.
func countLike(imperial bool) string {
	if imperial {
		return "lengths: {one: 48 in, count: 36}, or the numbers in the tally, such as 36 x 48 in"
	}
	return "lengths: {one: 1200 mm, count: 36}, or the numbers in the tally, such as 36 x 1200 mm"
}

// doubts settles how far tallied lengths may be off.
func doubts(d *decoder, b *stock.Boards, path string) {
	if d.given(at(path, "trusted")) {
		b.Doubted = !b.Doubted
	}
	for _, key := range []string{"read_to", "slip", "trusted"} {
		if d.given(at(path, key)) && b.Known != stock.Tallied {
			d.failPath(at(path, key), "how far lengths are off goes with a tally", "", "a tally of the boards, or leave "+key+" out")
		}
	}
	if b.Known != stock.Tallied {
		return
	}
	if !d.given(at(path, "read_to")) {
		b.ReadTo = stock.StepOf(b.Tally)
	}
	if !d.given(at(path, "slip")) {
		b.Slip = stock.UsualSlip
	}
}

// mix checks the spread of lengths.
// graded fills a mix in from its grade; figures besides would say it twice.
func graded(d *decoder, m *stock.Mix, path string) {
	g, ok := stock.FindGrade(m.Grade)
	if !ok {
		return
	}
	for _, key := range []string{"least", "most", "mean"} {
		if d.given(at(path, key)) {
			d.failPath(at(path, key), key+" stands beside a grade, which says it already", "", "a grade, or least, most and mean")
			return
		}
	}
	m.Least, m.Most, m.Mean = g.Least, g.Most, g.Mean
}

func mix(d *decoder, j *draft, m stock.Mix, path string) {
	s := tape.Paper(j.Unit)
	if m.Least == 0 || m.Most == 0 || m.Mean == 0 {
		return // not read, and said so
	}
	switch {
	case m.Least > m.Most:
		d.failPath(at(path, "most"), "the longest board is shorter than the shortest", s.Of(m.Most), "at least "+s.Of(m.Least))
	case m.Mean < m.Least || m.Mean > m.Most:
		d.failPath(at(path, "mean"), "the mean lies outside the shortest and the longest", s.Of(m.Mean), "from "+s.Of(m.Least)+" to "+s.Of(m.Most))
	case m.Most > m.Least && (m.Mean == m.Least || m.Mean == m.Most):
		d.failPath(at(path, "mean"), "with this mean all boards would have one length, and the mix has others", s.Of(m.Mean), "a mean between "+s.Of(m.Least)+" and "+s.Of(m.Most)+", or one length (one) for all")
	case m.Step > 0 && m.Step > m.Most-m.Least && m.Most > m.Least:
		d.failPath(at(path, "step"), "the step is more than the spread of lengths", s.Of(m.Step), "at most "+s.Of(m.Most-m.Least))
	}
}

// tenBoards checks the ten-board width against the face: more than a tenth
// off, it is the width of some other number of boards.
func tenBoards(d *decoder, j *draft, b stock.Boards, path string) {
	s := tape.Paper(j.Unit)
	if b.TenBoards == 0 || b.Face == 0 {
		return
	}
	if ten := 10 * b.Face; b.TenBoards < ten-b.Face || b.TenBoards > ten+b.Face {
		d.failPath(path, "ten boards of "+s.Of(b.Face)+" cannot measure this", s.Of(b.TenBoards), "near "+s.Of(ten))
	}
}

// pairs checks figures that hold each other: least and greatest.
func pairs(d *decoder, j *draft) {
	l := limits.Default(j.Boards.Face, j.Boards.Thickness)
	for _, k := range limitKeys {
		if f, ok := j.figures[k.key]; ok {
			*k.to(&l) = f
		}
	}
	ordered(d, j, "jamb_least", "jamb_greatest", l.JambLeast, l.JambGreatest)
	ordered(d, j, "transition_least", "transition_greatest", l.TransitionLeast, l.TransitionGreatest)
	_, least := j.figures["joint_min"]
	if _, most := j.figures["joint_preferred"]; least && most {
		ordered(d, j, "joint_min", "joint_preferred", l.JointMin, l.JointPreferred)
	}
}

// ordered checks that lo is not above hi, at the one of the two that the job
// gives.
func ordered(d *decoder, j *draft, lo, hi string, a, b limits.Figure) {
	if a.Value <= b.Value {
		return
	}
	s := tape.Paper(j.Unit)
	if _, ok := j.figures[hi]; ok {
		d.failPath(at("limits", hi), hi+" is below "+lo, s.Of(b.Value), "at least "+s.Of(a.Value))
		return
	}
	d.failPath(at("limits", lo), lo+" is above "+hi, s.Of(a.Value), "at most "+s.Of(b.Value))
}
