package drawing

import (
	"strake/lay"
	"strake/plan"
	"strake/sheet"
	"strake/words"
)

// Floor draws the floor plan of p: the room to scale with its dimensions,
// every row and board, what the edges meet, and how to read it. Stages that
// could not be made are left out of it; the sheet says so.
func Floor(p plan.Plan) sheet.Sheet { return floorOn(p, usual) }

// floorOn draws the floor plan on paper chosen by choose.
func floorOn(p plan.Plan, choose sizing) sheet.Sheet {
	return floorWith(p, choose, false).sheet()
}

// floorWith is the floor plan being done, on paper chosen by choose, for tiles or not.
func floorWith(p plan.Plan, choose sizing, tiles bool) *draw {
	d, all := floorPlan(p, choose, false, tiles)
	if !all {
		d, _ = floorPlan(p, choose, true, tiles)
	}
	return d
}

// floorPlan is the floor plan, and whether each corner found room for its letter:
// where the numbers of rows leave none, corners are named first.
func floorPlan(p plan.Plan, choose sizing, cornersFirst, tiles bool) (d *draw, named bool) {
	d = newDraw(p, choose)
	d.tiles = tiles
	if d.empty() {
		d.nothing()
		return d, true
	}
	d.drawStays()
	d.drawBoards()
	d.drawFree()
	d.drawEdges()
	d.drawLine()
	d.drawPanel()
	d.drawSplines()
	if cornersFirst {
		named = d.nameCorners()
		d.nameRows()
	} else {
		d.nameRows()
		named = d.nameCorners()
	}
	d.nameStays()
	if tiles { // boards come before what may stand elsewhere
		d.nameEveryBoard()
	}
	d.nameEdges()
	d.dimension()
	d.nameFree()
	if !tiles {
		d.nameBoards()
	}
	d.frame()
	return d, named
}

// draw is a drawing being made, in layers from the lowest to the highest.
type draw struct {
	view
	p        plan.Plan
	say      words.Lengths
	areas    []sheet.Item // boards, stays
	lines    []sheet.Item // edges, dimensions
	text     []sheet.Item // writing and the white under it
	labels   labels
	bare     [][]sheet.Pt // the floor to its edges
	keys     []key        // the floor's edges as listed at the side
	runs     map[int]lay.Run
	bannered bool                        // the banner over the drawing stands
	tiles    bool                        // it is cut into tiles, which have a head each: what stands in one place of a sheet is left out
	noRoom   []Apart                     // what belongs in the drawing and has no room there
	doubt    func(words.RoomWall) string // under a wall's length, instead of how boards meet it; nil: the latter
}

func newDraw(p plan.Plan, choose sizing) *draw {
	d := &draw{view: newView(p, choose), p: p, say: words.In(p.Job.Unit)}
	for _, r := range p.Aligned.Bare {
		d.bare = append(d.bare, d.ring(r))
	}
	d.labels.bounds = d.area
	d.runs = map[int]lay.Run{}
	for _, r := range p.Lay.Runs {
		d.runs[r.ID] = r
	}
	d.keys = keysOf(p, d.say)
	return d
}

func (d *draw) empty() bool { return len(d.p.Aligned.Bare) == 0 }

// nothing says why the sheet is empty.
func (d *draw) nothing() {
	d.labels.bounds = box{sheet.Pt{}, sheet.Pt{X: d.page.w, Y: d.page.h}}
	d.put(sheet.Text{Text: d.p.Job.Name, At: sheet.Pt{X: 20, Y: 24}, Size: title, Bold: true})
	d.put(sheet.Text{Text: "No floor could be made of this job: see the findings.", At: sheet.Pt{X: 20, Y: 34}, Size: middling})
}

// put writes t and keeps its place.
func (d *draw) put(t sheet.Text) {
	d.labels.take(t)
	d.text = append(d.text, t)
}

func (d *draw) sheet() sheet.Sheet {
	s := sheet.Sheet{Title: d.p.Job.Name + ": floor plan", W: d.page.w, H: d.page.h, One: d.scale.one}
	s.Put(d.areas...)
	s.Put(d.lines...)
	s.Put(d.text...)
	return s
}

// frame draws the line round the sheet.
func (d *draw) frame() {
	if d.page.panel == 0 {
		return
	}
	m := margin / 2
	d.lines = append(d.lines, sheet.Polygon{Pen: sheet.Pen{Width: 0.5, Ink: sheet.Black}, Rings: [][]sheet.Pt{{
		{X: m, Y: m}, {X: d.page.w - m, Y: m}, {X: d.page.w - m, Y: d.page.h - m}, {X: m, Y: d.page.h - m}}}})
}
