package drawing

import (
	"fmt"

	"strake/plan"
	"strake/plane"
	"strake/setout"
	"strake/sheet"
	"strake/words"
)

// Lines draws the lines to snap in the rooms: each from mark to mark, with what
// is taped at both ends and the diagonal that checks it.
func Lines(p plan.Plan) sheet.Sheet {
	d := newDraw(p)
	if d.empty() {
		d.nothing()
		return d.sheet()
	}
	d.drawStays()
	d.drawEdges()
	lines, _ := setout.Lines(p)
	d.tapedFrom(lines)
	d.nameCorners() // before the marks, which are taped from them
	for _, l := range lines {
		d.snapLine(l)
	}
	d.nameStays()
	d.linesColumn()
	d.frame()
	s := d.sheet()
	s.Title = p.Job.Name + ": lines to snap"
	return s
}

// snapLine draws one line and writes its row and its two marks along it.
func (d *draw) snapLine(l setout.Line) {
	a, b := d.at(d.p.Aligned.Dir.ToRow(l.Left.Place())), d.at(d.p.Aligned.Dir.ToRow(l.Right.Place()))
	d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{a, b}, Pen: chain})
	u := unit(b.Sub(a))
	turn := 0.0
	if u.Y*u.Y > u.X*u.X {
		turn = -90
		if u.Y > 0 {
			a, b, u = b, a, u.Times(-1)
			l.Left, l.Right = l.Right, l.Left
		}
	}
	write := func(s string, at sheet.Pt, anchor sheet.Anchor) { // above the line, else below it, else farther in
		in := u
		if anchor == sheet.End {
			in = u.Times(-1)
		}
		var places []sheet.Text
		for _, along := range []float64{0, 8, 16, 24} {
			for _, off := range []float64{1.2, -1.2 - 0.8*tiny} {
				places = append(places, sheet.Text{Text: s, At: at.Add(in.Times(along)).Add(up(turn).Times(off)), Size: tiny, Anchor: anchor, Turn: turn})
			}
		}
		if t, ok := d.labels.first(places, nil); ok {
			d.onWhite(t)
		}
	}
	write(fmt.Sprintf("%s from %s", d.say.Rip(l.Left.At), l.Left.From.Short), a.Add(u.Times(2)), sheet.Start)
	write(fmt.Sprintf("%s from %s", d.say.Rip(l.Right.At), l.Right.From.Short), b.Sub(u.Times(2)), sheet.End)
	name := "row " + words.RowPart(l.Row, l.Part)
	if l.Start {
		name += ", start"
	}
	write(name, between(a, b, 0.5), sheet.Middle)
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
		}
	}
}

// linesColumn says how the sheet is used.
func (d *draw) linesColumn() {
	d.drawScaleBar()
	d.drawTop()
	s := &side{d: d, x: d.area.b.X + 4, w: panel - 6, y: margin + 1, foot: d.page.h - margin - 6}
	s.para(d.p.Job.Name, title, 0)
	s.para("Lines to snap", middling, 0)
	s.heading("How to use it")
	s.para("Each line is the front edge of a row, without its tongue. Tape both marks from the corners named, along the wall; a dot is the jamb, or the corner of what stays, that a mark beside it is taped from. lines.txt says which, and from where across the room each mark is checked.", small, 0)
	if l, ok := words.Line(d.p); ok {
		s.heading("First")
		s.para(words.LineText(l, d.say), small, 0)
	}
	x := d.area.b.X + 1
	d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{{X: x, Y: margin / 2}, {X: x, Y: d.page.h - margin/2}}, Pen: thin})
}
