package drawing

import (
	"fmt"
	"strings"

	"strake/lay"
	"strake/plane"
	"strake/sheet"
	"strake/words"
)

// boardSizes are the sizes of writing in boards on tiles, the largest first.
var boardSizes = []float64{small, tiny, least}

// Around writing in a board nothing else stands nearer than this, mm: a board is a frame
// for it, and rows are low.
const tightly = 0.25

// nameEveryBoard writes in each piece its board's number and its length: as large as there
// is room for, in two lines where it is too short for one. What has no room for both is
// kept for the list beside the drawing, and the number alone stands in it where that goes.
func (d *draw) nameEveryBoard() {
	for _, r := range d.p.Lay.Runs {
		d.inZone(r)
		if r.Unfilled {
			d.nameUnfilled(r)
		}
		for i, id := range r.Pieces {
			d.nameThisBoard(r, i+1, d.p.Lay.Pieces[id])
		}
	}
	d.along = plane.Dir{}
}

func (d *draw) nameThisBoard(r lay.Run, place int, p lay.Piece) {
	if texts := d.boardTexts(p); texts != nil {
		for _, t := range texts {
			d.onPaper(t)
		}
		return
	}
	lo, hi := p.Outline.Box()
	d.apart(d.at(lo).Add(d.at(hi)).Times(0.5), "row "+words.Row(r), fmt.Sprintf("piece %d: board %s, %s", place, words.Board(p.Board), d.say.Of(hi.X-lo.X)))
	s := d.newSlot(p)
	for _, size := range boardSizes {
		if texts := s.fit([]string{words.Board(p.Board)}, size, nil); texts != nil {
			d.onPaper(texts[0])
			return
		}
	}
}

// boardTexts are the texts that say number and length in a piece; nil: there is no room.
func (d *draw) boardTexts(p lay.Piece) []sheet.Text {
	lo, hi := p.Outline.Box()
	no, long := words.Board(p.Board), d.say.Of(hi.X-lo.X)
	var ways [][]string
	for _, s := range d.boardWords(p) {
		if s != no {
			ways = append(ways, []string{s})
		}
	}
	ways = append(ways, []string{no, long})
	s, bands := d.newSlot(p), d.bands(p)
	for _, size := range boardSizes {
		for _, w := range ways {
			if texts := s.fit(w, size, bands); texts != nil {
				return texts
			}
		}
	}
	for _, size := range boardSizes { // over the hatch of a sawn end, which goes on beside it
		for _, w := range ways[len(ways)-2:] {
			if texts := s.fit(w, size, nil); texts != nil {
				return texts
			}
		}
	}
	return nil
}

// slot is a piece as a place to write in.
type slot struct {
	d     *draw
	ring  [][]sheet.Pt
	mid   sheet.Pt
	along sheet.Pt // the way of writing
	head  sheet.Pt // from the foot of writing to its head
	turn  float64
	long  float64
	high  float64
}

func (d *draw) newSlot(p lay.Piece) slot {
	lo, hi := p.Outline.Box()
	s := slot{d: d, ring: [][]sheet.Pt{d.ring(p.Outline)}, mid: d.at(lo).Add(d.at(hi)).Times(0.5), turn: d.turnOf(), long: d.on(hi.X - lo.X), high: d.on(hi.Y - lo.Y)}
	s.along, s.head = unit(d.at(plane.P(hi.X, lo.Y)).Sub(d.at(lo))), up(s.turn)
	return s
}

// shifts are how far from the middle of a piece its writing may stand, as parts of its
// length or height.
var shifts = []float64{0, 0.1, -0.1, 0.2, -0.2, 0.3, -0.3, 0.4, -0.4}

// fit sets lines of writing over one another in the piece, off keep and off all other
// writing; nil where they have no room.
func (s slot) fit(lines []string, size float64, keep [][]sheet.Pt) []sheet.Text {
	n := float64(len(lines))
	if (n-1)*size*lineOver+size*figureHigh > s.high || s.width(lines, size) > s.long {
		return nil
	}
	for _, across := range shifts[:5] {
		for _, shift := range shifts {
			mid := s.mid.Add(s.along.Times(shift * s.long)).Add(s.head.Times(across * s.high))
			var out []sheet.Text
			for i, l := range lines {
				base := mid.Add(s.head.Times(size * (((n-1)/2-float64(i))*lineOver - figureHigh/2)))
				out = append(out, sheet.Text{Text: l, At: base, Size: size, Anchor: sheet.Middle, Turn: s.turn})
			}
			if s.takes(out, keep) {
				return out
			}
		}
	}
	return nil
}

// Of writing in boards, in its sizes: how high figures are, and how far apart two lines.
const (
	figureHigh = 0.72
	lineOver   = 0.95
)

// belowLine is the part of the height of a text's box that lies under its line.
const belowLine = 0.21 / 0.98

func (s slot) width(lines []string, size float64) float64 {
	w := 0.0
	for _, l := range lines {
		w = max(w, sheet.Text{Text: l, Size: size}.Printed())
	}
	return w
}

// takes tells whether texts lie in the piece and on nothing.
func (s slot) takes(texts []sheet.Text, keep [][]sheet.Pt) bool {
	for _, t := range texts {
		o := printed(t, tightly)
		if !within(s.ring, printed(t, tightly/2)) || !clearOf(keep, o) || !s.d.labels.free(o) {
			return false
		}
	}
	return true
}

// onPaper writes t on white and takes the room that it has in print.
func (d *draw) onPaper(t sheet.Text) {
	d.labels.reserve(printed(t, tightly))
	d.text = append(d.text, sheet.Polygon{Rings: [][]sheet.Pt{printed(t, 0.1)}, Fill: sheet.White}, t)
}

// printed is the room that t takes up in the letters that paper is printed in, with by
// more on every side; nothing hangs below its line where it has no such letters.
func printed(t sheet.Text, by float64) []sheet.Pt {
	b := t.PrintedBox()
	if !strings.ContainsAny(t.Text, tails) {
		up := b[3].Sub(b[0]).Times(belowLine)
		b[0], b[1] = b[0].Add(up), b[1].Add(up)
	}
	along, head := unit(b[1].Sub(b[0])).Times(by), unit(b[3].Sub(b[0])).Times(by)
	return []sheet.Pt{b[0].Sub(along).Sub(head), b[1].Add(along).Sub(head), b[2].Add(along).Add(head), b[3].Sub(along).Add(head)}
}

// tails are letters and signs that hang below their line.
const tails = "gjpqy(),;[]Q_@"
