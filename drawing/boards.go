package drawing

import (
	"fmt"
	"math"

	"strake/lay"
	"strake/plane"
	"strake/saw"
	"strake/sheet"
	"strake/stock"
	"strake/tape"
)

var (
	thin  = sheet.Pen{Width: 0.15, Ink: sheet.Dark}
	joint = sheet.Pen{Width: 0.5, Ink: sheet.Black}
	hair  = sheet.Pen{Width: 0.1, Ink: sheet.Dark}
)

// drawBoards draws every piece and the runs that are not filled.
func (d *draw) drawBoards() {
	for _, r := range d.p.Lay.Runs {
		d.inZone(r)
		if r.Unfilled || len(r.Pieces) == 0 {
			d.drawUnfilled(d.ring(r.Outline))
			continue
		}
		for _, id := range r.Pieces {
			d.drawPiece(d.p.Lay.Pieces[id])
		}
		d.drawJoints(r)
	}
	d.along = plane.Dir{}
	if len(d.p.Lay.Runs) == 0 {
		for _, r := range d.p.Layout.Runs {
			for _, ring := range r.Shape {
				d.drawUnfilled(d.ring(ring))
			}
		}
	}
}

// inZone sets the frame to that of a run.
func (d *draw) inZone(r lay.Run) {
	d.along = plane.Dir{}
	for _, z := range d.p.Lay.Zones {
		if z.ID == r.Zone {
			d.along = z.Dir
		}
	}
}

func (d *draw) drawUnfilled(ring []sheet.Pt) {
	shape := [][]sheet.Pt{ring}
	d.areas = append(d.areas, sheet.Polygon{Rings: shape, Fill: sheet.White, Pen: thin})
	if d.p.Job.Boards.Known == stock.Unknown {
		return // none are wanting: they are picked on site
	}
	d.areas = append(d.areas, sheet.Hatch(shape, 45, 1.6, hair)...)
	d.areas = append(d.areas, sheet.Hatch(shape, -45, 1.6, hair)...)
}

// drawPiece draws a piece: plain, or grey where a long edge is sawn, with a
// hatch at each sawn end.
func (d *draw) drawPiece(p lay.Piece) {
	ring := d.ring(p.Outline)
	fill := sheet.White
	if p.Behind == lay.Ripped || p.Ahead == lay.Ripped {
		fill = sheet.Light
	}
	d.areas = append(d.areas, sheet.Polygon{Name: fmt.Sprintf("piece-%d", p.ID), Rings: [][]sheet.Pt{ring}, Fill: fill, Pen: thin})
	for _, b := range d.bands(p) {
		d.areas = append(d.areas, sheet.Hatch([][]sheet.Pt{b}, 45, 0.7, hair)...)
	}
}

// bandWidth is how far from a sawn end the hatch reaches, mm on paper.
const bandWidth = 2.4

// bands are the parts of a piece next to its sawn ends.
func (d *draw) bands(p lay.Piece) [][]sheet.Pt {
	lo, hi := p.Outline.Box()
	w := min(tape.Length(math.Round(bandWidth*d.scale.one*float64(tape.Millimetre))), (hi.X-lo.X)/3)
	left, right := endReach(p.Outline)
	var out [][]sheet.Pt
	if d.sawn(p, true) {
		out = append(out, d.rings(plane.Region{p.Outline}.LeftOf(left+w))...)
	}
	if d.sawn(p, false) {
		out = append(out, d.rings(plane.Region{p.Outline}.RightOf(right-w))...)
	}
	return out
}

func (d *draw) sawn(p lay.Piece, left bool) bool {
	return saw.SawnEnd(p, left, d.p.Lay.Boards[p.Board].Length, d.p.Job.Boards.Hand)
}

// endReach is where the slant of a mitred end has run out, at the left and at
// the right: the inner corner of each end.
func endReach(r plane.Ring) (left, right tape.Length) {
	lo, hi := r.Box()
	left, right = lo.X, hi.X
	for i, a := range r {
		b := r[(i+1)%len(r)]
		if (b.Y - a.Y).Abs() <= (b.X - a.X).Abs() {
			continue // along the board
		}
		if min(a.X, b.X) == lo.X {
			left = max(left, max(a.X, b.X))
		}
		if max(a.X, b.X) == hi.X {
			right = min(right, min(a.X, b.X))
		}
	}
	return
}

func (d *draw) rings(g plane.Region) [][]sheet.Pt {
	out := make([][]sheet.Pt, len(g))
	for i, r := range g {
		out[i] = d.ring(r)
	}
	return out
}

// drawJoints draws the end joints of a run, heavy.
func (d *draw) drawJoints(r lay.Run) {
	for i := 0; i+1 < len(r.Pieces); i++ {
		a, b := d.p.Lay.Pieces[r.Pieces[i]].Outline, d.p.Lay.Pieces[r.Pieces[i+1]].Outline
		for _, s := range shared(a, b) {
			d.areas = append(d.areas, sheet.Polyline{Points: []sheet.Pt{d.at(s[0]), d.at(s[1])}, Pen: joint})
			d.labels.line(d.at(s[0]), d.at(s[1]), 0)
		}
	}
}

// shared are the upright stretches that two neighbouring pieces have in common.
func shared(a, b plane.Ring) [][2]plane.Pt {
	var out [][2]plane.Pt
	for _, s := range uprights(a) {
		for _, t := range uprights(b) {
			m := plane.Span{From: s[0].Y, To: s[1].Y}.Meet(plane.Span{From: t[0].Y, To: t[1].Y})
			if s[0].X == t[0].X && !m.Empty() {
				out = append(out, [2]plane.Pt{{X: s[0].X, Y: m.From}, {X: s[0].X, Y: m.To}})
			}
		}
	}
	return out
}

// uprights are the upright sides of a ring, low end first.
func uprights(r plane.Ring) [][2]plane.Pt {
	var out [][2]plane.Pt
	for i, p := range r {
		q := r[(i+1)%len(r)]
		if p.X != q.X {
			continue
		}
		if p.Y > q.Y {
			p, q = q, p
		}
		out = append(out, [2]plane.Pt{p, q})
	}
	return out
}
