package drawing

import (
	"fmt"
	"math"

	"strake/plan"
	"strake/plane"
	"strake/setout"
	"strake/sheet"
	"strake/tape"
	"strake/words"
)

// Lines draws the lines to snap in the rooms: each from mark to mark, with what
// is taped at both ends and the diagonal that checks it.
func Lines(p plan.Plan) sheet.Sheet { return linesOn(p, usual) }

func linesOn(p plan.Plan, choose sizing) sheet.Sheet {
	d := newDraw(p, choose)
	if d.empty() {
		d.nothing()
		return d.sheet()
	}
	d.drawStays()
	d.drawEdges()
	lines, _ := setout.Lines(p)
	doors := setout.DoorLines(p)
	for _, l := range lines {
		d.drawSnapped(d.where(l.Left.Place()), d.where(l.Right.Place()))
	}
	for _, l := range doors {
		at := l.Places()
		d.drawSnapped(d.where(at[0]), d.where(at[1]))
	}
	d.drawScaleBar()
	d.drawTop()
	d.tapedFrom(lines)
	d.nameCorners() // before the marks, which are taped from them
	for _, l := range lines {
		d.nameSnapped(l)
	}
	for _, l := range doors {
		d.nameDoorLine(l)
	}
	d.nameStays()
	d.linesColumn()
	d.frame()
	s := d.sheet()
	s.Title = p.Job.Name + ": lines to snap"
	return s
}

// where is a place of the floor plan on the page.
func (d *draw) where(at plane.XY) sheet.Pt { return d.at(d.p.Aligned.Dir.ToRow(at)) }

// drawSnapped draws a line to snap.
func (d *draw) drawSnapped(a, b sheet.Pt) {
	d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{a, b}, Pen: chain})
	d.labels.line(a, b, 0)
}

// nameSnapped writes a line's row and its two marks along it.
func (d *draw) nameSnapped(l setout.Line) {
	a, b := d.where(l.Left.Place()), d.where(l.Right.Place())
	u := unit(b.Sub(a))
	turn := 0.0
	if u.Y*u.Y > u.X*u.X {
		turn = -90
		if u.Y > 0 {
			a, b, u = b, a, u.Times(-1)
			l.Left, l.Right = l.Right, l.Left
		}
	}
	name := "row " + words.RowPart(l.Row, l.Part)
	if l.Start {
		name += ", start"
	}
	long := length(b.Sub(a))
	d.writeAlong(u, turn,
		beside{fmt.Sprintf("%s from %s", d.say.Rip(l.Left.At), l.Left.From.Short), a, sheet.Start, long},
		beside{fmt.Sprintf("%s from %s", d.say.Rip(l.Right.At), l.Right.From.Short), b, sheet.End, long},
		beside{name, between(a, b, 0.5), sheet.Middle, long / 2})
}

// beside is what is written beside a line, at one of its ends or at its middle.
type beside struct {
	text   string
	at     sheet.Pt
	anchor sheet.Anchor
	room   float64 // from there to the far end of the line
}

// writeAlong writes beside a line that runs along u, which is read at a turn: all in one
// size, the largest that goes in between its ends; where none does, small and each for
// itself, off the floor if need be.
func (d *draw) writeAlong(u sheet.Pt, turn float64, all ...beside) {
	for _, size := range []float64{middling, small, tiny} {
		if d.writeAll(u, turn, size, all) {
			return
		}
	}
	for _, x := range all {
		t, ok := d.labels.first(x.inside(u, turn, tiny), d.offStays)
		if !ok {
			t, ok = d.labels.first(x.beyond(u, turn, tiny), func(t sheet.Text) bool { return d.offStays(t) && clearOf(d.bare, outline(t)) })
		}
		if !ok { // past the far end of a short line
			x.room = math.Inf(1)
			t, ok = d.labels.first(x.inside(u, turn, tiny), d.offStays)
		}
		if ok {
			d.onWhite(t)
		}
	}
}

// writeAll writes all of a line's texts in one size, or none of them.
func (d *draw) writeAll(u sheet.Pt, turn, size float64, all []beside) bool {
	before := len(d.labels.taken.all)
	var texts []sheet.Text
	for _, x := range all {
		t, ok := d.labels.first(x.inside(u, turn, size), d.offStays)
		if !ok {
			d.labels.taken.giveBack(before)
			return false
		}
		texts = append(texts, t)
	}
	for _, t := range texts {
		d.onWhite(t)
	}
	return true
}

// inward is the way from the place into the line, and the anchor of what stands beyond it.
func (x beside) inward(u sheet.Pt) (sheet.Pt, sheet.Anchor) {
	if x.anchor == sheet.End {
		return u.Times(-1), sheet.Start
	}
	return u, sheet.End
}

// inside are the places between the ends of the line: above it, else below, else farther
// along.
func (x beside) inside(u sheet.Pt, turn, size float64) []sheet.Text {
	var out []sheet.Text
	in, _ := x.inward(u)
	put := func(along, off float64) {
		t := sheet.Text{Text: x.text, At: x.at.Add(in.Times(along)).Add(up(turn).Times(off)), Size: size, Anchor: x.anchor, Turn: turn}
		past := max(along, -along) + t.Width()
		if x.anchor == sheet.Middle {
			past -= t.Width() / 2
		}
		if past <= x.room {
			out = append(out, t)
		}
	}
	for _, along := range []float64{2, 4, 6, 8, 12, 16, 20, 24, 30, 36, 44} {
		for _, off := range []float64{1.2, -1.2 - 0.8*size} {
			if x.anchor == sheet.Middle {
				put(along-2, off)
				put(2-along, off)
				continue
			}
			put(along, off)
		}
	}
	return out
}

// beyond are the places past the ends of the line.
func (x beside) beyond(u sheet.Pt, turn, size float64) []sheet.Text {
	var out []sheet.Text
	in, back := x.inward(u)
	put := func(along, off float64, a sheet.Anchor) {
		out = append(out, sheet.Text{Text: x.text, At: x.at.Add(in.Times(along)).Add(up(turn).Times(off)), Size: size, Anchor: a, Turn: turn})
	}
	for _, along := range []float64{-2.5, -4, -6, -9, -12, -16} {
		for _, off := range []float64{-0.36 * size, 1.6, -1.6 - 0.8*size, 4, -5} {
			if x.anchor == sheet.Middle {
				put(10-6*along, off, sheet.Start)
				put(6*along-10, off, sheet.End)
				continue
			}
			put(along, off, back)
		}
	}
	return out
}

// offStays tells whether a text covers nothing that stays.
func (d *draw) offStays(t sheet.Text) bool {
	for _, s := range d.p.Floor.Stays {
		if !clearOf([][]sheet.Pt{d.ring(toRow(d.p, s.Corners))}, outline(t)) {
			return false
		}
	}
	return true
}

// nameDoorLine writes beside a line through a doorway, or past it, what carries it.
func (d *draw) nameDoorLine(l setout.DoorLine) {
	at := l.Places()
	a, b := d.where(at[0]), d.where(at[1])
	s := fmt.Sprintf("row %d: %s from jamb at %s", l.Row, d.say.Rip(l.Near), l.From)
	if l.Along {
		s = fmt.Sprintf("row %d: %s", l.Row, deep(l.Depth, d.say))
	}
	mid := between(a, b, 0.5)
	var texts []sheet.Text
	for _, size := range []float64{small, tiny} {
		for _, off := range []float64{1.2, 3, 5, 8, 11, 15} {
			for _, side := range []float64{0, 6, -6, 12, -12, 18, -18} {
				texts = append(texts, sheet.Text{Text: s, At: mid.Add(sheet.Pt{X: side, Y: -off}), Size: size, Anchor: sheet.Middle},
					sheet.Text{Text: s, At: mid.Add(sheet.Pt{X: side, Y: off + 0.8*size}), Size: size, Anchor: sheet.Middle})
			}
		}
	}
	if t, ok := d.labels.first(texts, d.offStays); ok {
		d.onWhite(t)
	}
}

// deep is how far a line lies in an opening, at one jamb and at the other.
func deep(depth [2]tape.Length, say words.Lengths) string {
	one := func(d tape.Length) string {
		if d < 0 {
			return say.Rip(-d) + " before the face"
		}
		return say.Rip(d) + " in from the face"
	}
	if a, b := one(depth[0]), one(depth[1]); a != b {
		return a + ", " + b
	}
	return one(depth[0])
}

// dotSize is half the width of the dot at a place to tape from, mm.
const dotSize = 1.1

// tapedFrom puts a dot on each jamb and each corner of something that stays
// that a line is taped from; the corners of rooms have their letters.
func (d *draw) tapedFrom(lines []setout.Line) {
	done := map[plane.XY]bool{}
	for _, l := range lines {
		for _, m := range []setout.Mark{l.Left, l.Right} {
			if m.From.Corner || done[m.From.Place()] {
				continue
			}
			done[m.From.Place()] = true
			c := d.at(d.p.Aligned.Dir.ToRow(m.From.Place()))
			dot := []sheet.Pt{{X: c.X - dotSize, Y: c.Y}, {X: c.X, Y: c.Y - dotSize}, {X: c.X + dotSize, Y: c.Y}, {X: c.X, Y: c.Y + dotSize}}
			d.lines = append(d.lines, sheet.Polygon{Rings: [][]sheet.Pt{dot}, Fill: sheet.Black})
			d.labels.reserve(dot)
		}
	}
}

// linesColumn says how the sheet is used.
func (d *draw) linesColumn() {
	if d.page.panel == 0 {
		return
	}
	s := &side{d: d, x: d.area.b.X + 4, w: panel - 6, y: margin + 1, foot: d.page.h - margin - 6}
	s.para(d.p.Job.Name, title, 0)
	s.para("Lines to snap", middling, 0)
	s.heading("How to use it")
	s.para("Each line is the front edge of a row, without its tongue. Tape both marks from the corners named, along the wall; a dot is the jamb, or the corner of what stays, that a mark beside it is taped from. At a doorway stands how far from the jamb, or how deep from the face of the wall, the row goes through. lines.txt says which place is meant, and from where across the room each mark is checked.", small, 0)
	if l, ok := words.Line(d.p); ok {
		s.heading("First")
		s.para(words.LineText(l, d.say), small, 0)
	}
	x := d.area.b.X + 1
	d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{{X: x, Y: margin / 2}, {X: x, Y: d.page.h - margin/2}}, Pen: thin})
}
