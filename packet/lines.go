package packet

import (
	"fmt"

	"strake/drawing"
	"strake/paper"
	"strake/setout"
	"strake/words"
)

// lines are the lines to snap, drawn and as a list to tick off.
func (d *desk) lines() {
	p := d.in.Plan
	f := d.open("Lines to snap", true)
	f.size = note
	f.para("Each line is the front edge of a row, without its tongue; a dot is a jamb or the corner of what stays that is taped from. The list says how each mark is checked.")
	f.figure(f.body.w, f.left(), drawing.LinesOn(p, drawing.Page{W: f.body.w, H: f.left()}).Items)
	f = d.open("Lines to snap, list", false)
	f.para("Tape both marks of a line along the wall or side from the place named, check each from the place across, and stretch the line between them. Spray the chalk so that it stays. Tape each from its own place, never from the line before. Snap first what is marked start: a first row is set to it.")
	if l, ok := words.Line(p); ok {
		f.para(words.LineText(l, d.say))
	}
	lines, none := setout.Lines(p)
	for _, r := range p.Floor.Rooms {
		t := table{cols: []column{{name: "", w: 1}, {name: "row", w: 2.4, bold: true}, {name: "left mark", w: 9}, {name: "right mark", w: 9}}}
		for _, l := range lines {
			if l.Room == r.Name {
				t.rows = append(t.rows, []string{toTick, lineName(l), paper.MarkText(l.Left, d.say), paper.MarkText(l.Right, d.say) + d.sets(l)})
			}
		}
		for _, n := range none {
			if n.Room == r.Name {
				t.rows = append(t.rows, []string{"", fmt.Sprint(n.Row), "no line: " + n.Why, ""})
			}
		}
		if len(t.rows) > 0 {
			f.titled(r.Name, t)
		}
	}
	if ls := setout.DoorLines(p); len(ls) > 0 {
		f.heading("Through the doorways")
		for _, l := range ls {
			f.tick(capital(paper.DoorLineText(l, d.say)) + ".")
		}
	}
}

func lineName(l setout.Line) string {
	s := words.RowPart(l.Row, l.Part)
	if l.Start {
		s += ", start"
	}
	return s
}

// sets says which first rows a line sets from afar.
func (d *desk) sets(l setout.Line) string {
	out := ""
	for _, s := range l.Sets {
		out += "; " + paper.SetText(s, d.say)
	}
	return out
}
