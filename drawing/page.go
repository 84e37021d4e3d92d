package drawing

import (
	"math"

	"strake/plan"
	"strake/sheet"
	"strake/tape"
)

// sizing chooses paper and scale for a floor of w by h mm with rows so wide.
type sizing func(u tape.Unit, w, h, row float64) (paper, scale)

// usual is the smallest paper that holds the drawing well.
func usual(u tape.Unit, w, h, row float64) (paper, scale) { return fit(u, w, h, row) }

// Page is a page that a drawing is made for, across, mm.
type Page struct {
	Name string
	W, H float64
}

// on is that page, at the largest scale that fits, with a column beside the drawing.
func (g Page) on(u tape.Unit, w, h, _ float64) (paper, scale) {
	p := paper{name: g.Name, w: g.W, h: g.H, panel: panel}
	return p, largest(p, scalesOf(u), w, h)
}

// loose is no paper: a sheet as large as the drawing alone, at the scale that it usually
// has, to be cut into pages.
func loose(u tape.Unit, w, h, row float64) (paper, scale) {
	_, s := fit(u, w, h, row)
	return paper{
		w: math.Ceil(w/s.one + around.left + around.right + 2*margin),
		h: math.Ceil(h/s.one + around.top + around.foot + 2*margin),
	}, s
}

func scalesOf(u tape.Unit) []scale {
	if u.Imperial() {
		return inchScales
	}
	return metricScales
}

// FloorOn is the floor plan on a page; boards are numbered as far as there is room.
func FloorOn(p plan.Plan, g Page) sheet.Sheet { return floorOn(p, g.on) }

// LooseFloor is the floor plan without paper or column, at the scale that it usually has, to
// be cut into tiles, and what of it has no room in the drawing. Each tile needs a bar
// (LooseBar) and what is said once over a drawing (Seen).
func LooseFloor(p plan.Plan) (sheet.Sheet, []Apart) {
	d := floorWith(p, loose, true)
	return d.sheet(), d.noRoom
}

// LinesOn are the lines to snap on a page, without a column.
func LinesOn(p plan.Plan, g Page) sheet.Sheet { return linesOn(p, g.bare(dimensioned)) }

// LooseHeights is what makes the subfloor flat, without paper or column.
func LooseHeights(p plan.Plan) sheet.Sheet { return heightsOn(p, loose, true) }

// LooseBar is a bar in feet or metres at the scale of the loose drawings, from its upper
// left corner, and how long and high it is with its figures, mm.
func LooseBar(p plan.Plan) (items []sheet.Item, w, h float64) {
	d := newDraw(p, loose)
	step, n, _ := d.barStep()
	a := sheet.Pt{X: barFigure, Y: barFigure + 2.4}
	w = a.X + d.on(step)*float64(n) + 2*barFigure
	d.labels.bounds = box{sheet.Pt{}, sheet.Pt{X: w, Y: a.Y}}
	d.scaleBarAt(a)
	return append(d.lines, d.text...), w, a.Y
}

// barFigure is how high the figures over a bar are, and how far the first stands out from
// its end at the most, mm.
const barFigure = small

// Scale is the scale that drawings of the floor usually have, as written on them.
func Scale(p plan.Plan) string {
	lo, hi := extent(p)
	_, s := fit(p.Job.Unit, (hi.X - lo.X).Millimetres(), (hi.Y - lo.Y).Millimetres(), p.Job.Boards.NarrowestPitch().Millimetres())
	return s.String()
}

// lettered is what letters of corners, a few figures and what stands at the top and the
// foot take up round the floor; dimensioned is more, for lengths of walls.
var (
	lettered    = sides{left: 14, right: 14, top: 14, foot: 14}
	dimensioned = sides{left: 24, right: 24, top: 24, foot: 24}
)

// bare is that page without a column, with less kept free round the floor than rows'
// names take up.
func (g Page) bare(free sides) sizing {
	return func(u tape.Unit, w, h, _ float64) (paper, scale) {
		p := paper{name: g.Name, w: g.W, h: g.H, tight: &free}
		return p, largest(p, scalesOf(u), w, h)
	}
}
