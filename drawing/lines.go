package drawing

import (
	"fmt"

	"strake/plan"
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
	for _, l := range setout.Lines(p) {
		d.snapLine(l)
	}
	d.nameCorners()
	d.nameStays()
	d.linesColumn()
	d.frame()
	s := d.sheet()
	s.Title = p.Job.Name + ": lines to snap"
	return s
}

// snapLine draws one line and writes its row and its two marks along it.
func (d *draw) snapLine(l setout.Line) {
	a, b := d.at(d.p.Aligned.Dir.ToRow(l.Left.On())), d.at(d.p.Aligned.Dir.ToRow(l.Right.On()))
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
	lift := up(turn).Times(1.2)
	write := func(s string, at sheet.Pt, anchor sheet.Anchor) {
		t := sheet.Text{Text: s, At: at.Add(lift), Size: tiny, Anchor: anchor, Turn: turn}
		if t, ok := d.labels.first([]sheet.Text{t}, nil); ok {
			d.onWhite(t)
		}
	}
	write(fmt.Sprintf("%s from %s", d.say.Rip(l.Left.At), l.Left.From), a.Add(u.Times(2)), sheet.Start)
	write(fmt.Sprintf("%s from %s", d.say.Rip(l.Right.At), l.Right.From), b.Sub(u.Times(2)), sheet.End)
	write(fmt.Sprintf("row %d", l.Row), between(a, b, 0.5), sheet.Middle)
}

// linesColumn says how the sheet is used.
func (d *draw) linesColumn() {
	d.drawScaleBar()
	d.drawTop()
	s := &side{d: d, x: d.area.b.X + 4, w: panel - 6, y: margin + 1, foot: d.page.h - margin - 6}
	s.para(d.p.Job.Name, title, 0)
	s.para("Lines to snap", middling, 0)
	s.heading("How to use it")
	s.para("Each line is the front edge of a row, without its tongue. Tape both marks along the walls from the corners named, stretch the line, and check it by its diagonal in lines.txt.", small, 0)
	if l, ok := words.Line(d.p); ok {
		s.heading("First")
		s.para(words.LineText(l, d.say), small, 0)
	}
	x := d.area.b.X + 1
	d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{{X: x, Y: margin / 2}, {X: x, Y: d.page.h - margin/2}}, Pen: thin})
}
