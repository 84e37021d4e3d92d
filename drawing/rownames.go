package drawing

import (
	"strake/lay"
	"strake/plane"
	"strake/saw"
	"strake/sheet"
	"strake/tape"
	"strake/words"
)

// leader is the line from a row's name to the row.
var leader = sheet.Pen{Width: 0.12, Ink: sheet.Dark}

// nameRows numbers every run at its left end, and writes the widths of a
// ripped one there and at its right end.
func (d *draw) nameRows() {
	for _, r := range d.p.Lay.Runs {
		if d.inZone(r); d.turnOf() == 0 {
			d.nameRow(r)
		} else {
			d.nameTurned(r)
		}
	}
	d.along = plane.Dir{}
}

// nameTurned writes the number of a run that lies across the sheet on its
// boards, near one end.
func (d *draw) nameTurned(r lay.Run) {
	a, b := d.endsOf(r)
	along, size, turn := unit(b.Sub(a)), tiny, d.turnOf()
	if d.on(d.p.Job.Boards.NarrowestPitch()) > 1.3*small {
		size = small
	}
	for _, size := range []float64{size, tiny, least} {
		for _, end := range []struct{ at, in sheet.Pt }{{b, along.Times(-1)}, {a, along}} {
			for k := 2.5; k < max(14, length(b.Sub(a))/2); k += 0.5 {
				t := sheet.Text{Text: words.Row(r), At: end.at.Add(end.in.Times(k)).Sub(up(turn).Times(0.36 * size)), Size: size, Anchor: sheet.Middle, Turn: turn, Bold: true}
				if _, ok := d.labels.first([]sheet.Text{t}, nil); ok {
					d.onWhite(t)
					return
				}
			}
		}
	}
}

func (d *draw) nameRow(r lay.Run) {
	left, right := d.endsOf(r)
	name := words.Row(r)
	a, b, ripped := d.ripWidths(r)
	for col := range 7 {
		if !d.rowAt(d.rowText(name, left.X-2.2-6*float64(col), left.Y, sheet.End), left) {
			continue
		}
		if ripped {
			d.ripLeft(a, left)
			d.ripRight("rip "+d.say.Rip(b), right)
		}
		return
	}
	for col := range 7 {
		if !d.rowAt(d.rowText(name, right.X+2.2+6*float64(col), right.Y, sheet.Start), right) {
			continue
		}
		if ripped {
			d.ripRight("rip "+d.say.Rips(a, b), right)
		}
		return
	}
	d.rowInside(name, left, right)
}

// endsOf are the middles of a run's two ends.
func (d *draw) endsOf(r lay.Run) (left, right sheet.Pt) {
	lo, hi := r.Outline.Box()
	y := (lo.Y + hi.Y) / 2
	return d.at(plane.P(lo.X, y)), d.at(plane.P(hi.X, y))
}

// rowText is a row's number, smaller where the rows are narrow.
func (d *draw) rowText(s string, x, y float64, a sheet.Anchor) sheet.Text {
	size := tiny
	switch row := d.on(d.p.Job.Boards.NarrowestPitch()); {
	case row > 1.5*middling:
		size = middling
	case row > 1.3*small:
		size = small
	}
	return sheet.Text{Text: s, At: sheet.Pt{X: x, Y: y + 0.36*size}, Size: size, Anchor: a, Bold: true}
}

// ripLeft and ripRight write a rip's width beside the row's end, past its
// number where that stands there.
func (d *draw) ripLeft(width tape.Length, end sheet.Pt) {
	for x := end.X - 6; x > end.X-22; x-- {
		if d.rowAt(ripText("rip "+d.say.Rip(width), x, end.Y, sheet.End), end) {
			return
		}
	}
}

func (d *draw) ripRight(s string, end sheet.Pt) {
	for x := end.X + 2.2; x < end.X+16; x++ {
		if d.rowAt(ripText(s, x, end.Y, sheet.Start), end) {
			return
		}
	}
}

func ripText(s string, x, y float64, a sheet.Anchor) sheet.Text {
	return sheet.Text{Text: s, At: sheet.Pt{X: x, Y: y + 0.36*small}, Size: small, Anchor: a}
}

// rowAt writes a row's name off the floor, with a line from there to the row
// when it does not stand beside it.
func (d *draw) rowAt(t sheet.Text, row sheet.Pt) bool {
	if _, ok := d.labels.first([]sheet.Text{t}, func(t sheet.Text) bool { return clearOf(d.bare, outline(t)) && d.nextTo(t, row) }); !ok {
		return false
	}
	d.onWhite(t)
	if far := t.At.X - row.X; t.Bold && (far > 4 || far < -4) {
		x := t.At.X + 0.6
		if far > 0 {
			x = t.At.X - 0.6
		}
		d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{{X: x, Y: row.Y}, row}, Pen: leader})
		d.labels.line(sheet.Pt{X: x, Y: row.Y}, row, 0)
	}
	return true
}

// gapAtEnd is how far from a row's end its name may have floor on the way, mm:
// the gap there is drawn as floor.
const gapAtEnd = 1.2

// nextTo tells whether a text beside a row's end has no boards on the way to the
// row, and where it has a line to it no other writing.
func (d *draw) nextTo(t sheet.Text, row sheet.Pt) bool {
	edge := t.At.X
	for x := min(edge, row.X); x <= max(edge, row.X); x += 0.4 {
		q := sheet.Pt{X: x, Y: row.Y}
		if length(row.Sub(q)) > gapAtEnd && inside(d.bare, q) {
			return false
		}
	}
	if far := edge - row.X; t.Bold && (far > 4 || far < -4) { // there it has a line
		return !d.labels.taken.over(strip(row, sheet.Pt{X: edge, Y: row.Y}, 0.05))
	}
	return true
}

// rowInside writes a row's name on its boards, in the first place from the
// left that is free.
func (d *draw) rowInside(name string, left, right sheet.Pt) {
	for _, size := range []float64{min(small, d.rowText(name, 0, 0, 0).Size), tiny, least} {
		for x := left.X + 0.5; x < right.X; x += 0.5 {
			t := d.rowText(name, x, left.Y, sheet.Start)
			t.Size, t.At.Y = size, left.Y+0.36*size
			if t, ok := d.labels.first([]sheet.Text{t}, nil); ok {
				d.text = append(d.text, sheet.Polygon{Rings: [][]sheet.Pt{grown(t, 0.35)}, Fill: sheet.White, Pen: thin}, t)
				return
			}
		}
	}
}

// ripWidths are the widths of a run at its left and right end, when it is
// ripped for its whole length.
func (d *draw) ripWidths(r lay.Run) (left, right tape.Length, ok bool) {
	for i, id := range r.Pieces {
		rip := saw.Of(d.p.Lay.Pieces[id]).Rip
		if !rip.Done {
			return 0, 0, false
		}
		if i == 0 {
			left = rip.Left
		}
		right = rip.Right
	}
	return left, right, len(r.Pieces) > 0
}
