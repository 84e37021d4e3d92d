package drawing

import (
	"strconv"

	"strake/lay"
	"strake/plan"
	"strake/plane"
	"strake/setout"
	"strake/sheet"
	"strake/words"
)

// Of the tongue map: edges with a tongue, edges sawn off, and how far apart arrows are,
// in rows.
var (
	tonguePen = sheet.Pen{Width: 0.45, Ink: sheet.Black}
	rippedPen = sheet.Pen{Width: 0.25, Ink: sheet.Black, Dash: []float64{0.8, 0.8}}
)

const arrowRows = 4

// Tongues draws which way tongues lead on a page: rows with a heavy line along each
// edge that keeps its tongue, a dashed one where the edge is sawn off, arrows the way
// rows follow one another, splines, and the number of each room in the order of laying.
func Tongues(p plan.Plan, g Page) sheet.Sheet {
	d := newDraw(p, g.bare(lettered))
	if d.empty() {
		d.nothing()
		return d.sheet()
	}
	d.drawStays()
	for _, r := range p.Lay.Runs {
		d.inZone(r)
		d.drawEdged(r)
	}
	for i, r := range p.Lay.Runs {
		d.inZone(r)
		if d.leads(i) {
			d.drawLead(r)
		}
	}
	d.along = plane.Dir{}
	d.drawEdges()
	d.drawScaleBar()
	d.drawTop()
	d.drawSeams()
	for _, f := range p.AllFields() {
		d.along = f.Layout.Dir
		d.drawSplinesOf(f.Layout.Splines)
	}
	d.along = plane.Dir{}
	d.numberRooms()
	d.nameCorners()
	d.nameStays()
	s := d.sheet()
	s.Title = p.Job.Name + ": tongues and the order of rooms"
	return s
}

// drawEdged draws a run with its long edges by what they are.
func (d *draw) drawEdged(r lay.Run) {
	d.areas = append(d.areas, sheet.Polygon{Rings: [][]sheet.Pt{d.ring(r.Outline)}, Fill: sheet.White, Pen: hair})
	for _, id := range r.Pieces {
		q := d.p.Lay.Pieces[id]
		lo, hi := q.Outline.Box()
		d.drawEdgeOf(q.Ahead, plane.P(lo.X, hi.Y), plane.P(hi.X, hi.Y))
		d.drawEdgeOf(q.Behind, plane.P(lo.X, lo.Y), plane.P(hi.X, lo.Y))
	}
}

func (d *draw) drawEdgeOf(e lay.Profile, a, b plane.Pt) {
	var pen sheet.Pen
	switch e {
	case lay.Tongue:
		pen = tonguePen
	case lay.Ripped, lay.TongueOff:
		pen = rippedPen
	default:
		return
	}
	d.areas = append(d.areas, sheet.Polyline{Points: []sheet.Pt{d.at(a), d.at(b)}, Pen: pen})
}

// leads tells whether run i gets an arrow: the first that is laid, every few rows from
// there, and every run whose zone has no other.
func (d *draw) leads(i int) bool {
	r := d.p.Lay.Runs[i]
	return r.Row%arrowRows == 0 || r.Order == 1 || words.Turned(d.p, r)
}

// drawLead draws an arrow over a run, from the edge behind to the one ahead.
func (d *draw) drawLead(r lay.Run) {
	if len(r.Pieces) == 0 {
		return
	}
	lo, hi := r.Outline.Box()
	mid := lo.X + (hi.X-lo.X)/4
	tail, tip := d.at(plane.P(mid, lo.Y)), d.at(plane.P(mid, hi.Y))
	if words.Turned(d.p, r) {
		tail, tip = tip, tail
	}
	u := unit(tip.Sub(tail))
	tail, tip = tail.Sub(u.Times(1.5)), tip.Add(u.Times(1.5))
	side := sheet.Pt{X: u.Y, Y: -u.X}
	neck := tip.Sub(u.Times(2.2))
	d.lines = append(d.lines,
		sheet.Polyline{Points: []sheet.Pt{tail, neck}, Pen: sheet.Pen{Width: 0.5, Ink: sheet.Black}},
		sheet.Polygon{Rings: [][]sheet.Pt{{tip, neck.Add(side), neck.Sub(side)}}, Fill: sheet.Black})
	d.labels.reserve(strip(tail, tip, 1.2))
}

// numberRooms writes the place of each room in the order of laying into it.
func (d *draw) numberRooms() {
	stages := setout.Stages(d.p)
	for i, s := range stages {
		for _, r := range d.p.Floor.Rooms {
			if r.Name == s.Room {
				d.numberRoom(strconv.Itoa(i+1), d.ring(toRow(d.p, r.Corners)))
			}
		}
	}
}

// numberRoom writes into a room, where there is place, on white.
func (d *draw) numberRoom(text string, ring []sheet.Pt) {
	lo, hi := bounds(ring)
	var tries []sheet.Text
	for _, size := range []float64{9, 6, large} {
		for _, k := range []float64{0.5, 0.6, 0.4, 0.7, 0.75, 0.3} {
			for _, l := range []float64{0.5, 0.6, 0.4, 0.75} {
				tries = append(tries, sheet.Text{Text: text, Size: size, Bold: true, Anchor: sheet.Middle,
					At: sheet.Pt{X: lo.X + (hi.X-lo.X)*l, Y: lo.Y + (hi.Y-lo.Y)*k + 0.36*size}})
			}
		}
	}
	if t, ok := d.labels.first(tries, func(t sheet.Text) bool {
		o := ringed(t)
		return within([][]sheet.Pt{ring}, o) && d.labels.free(o) && d.offStays(t)
	}); ok {
		c, r := middle(t), ringSize*t.Size
		d.labels.reserve(ringed(t))
		d.lines = append(d.lines, sheet.Polygon{Rings: [][]sheet.Pt{disc(c, r)}, Fill: sheet.White, Pen: sheet.Pen{Width: 0.5, Ink: sheet.Black}})
		d.text = append(d.text, t)
	}
}

// ringSize is the ring round a number, in sizes of its writing.
const ringSize = 0.85

// ringed is the room that a number with its ring takes up.
func ringed(t sheet.Text) []sheet.Pt {
	c, r := middle(t), ringSize*t.Size+clear
	return box{c.Sub(sheet.Pt{X: r, Y: r}), c.Add(sheet.Pt{X: r, Y: r})}.corners()
}
