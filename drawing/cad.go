package drawing

import (
	"math"

	"strake/lay"
	"strake/plan"
	"strake/plane"
	"strake/sheet/dxf"
	"strake/tape"
	"strake/words"
)

// The layers of a drawing in real units.
const (
	layerWalls   = "WALLS"
	layerFloor   = "FLOOR"
	layerStays   = "STAYS"
	layerBoards  = "BOARDS"
	layerSplines = "SPLINES"
	layerRows    = "ROW_NAMES"
	layerNames   = "NAMES"
	layerDoors   = "OPENINGS"
	layerLines   = "LINES"
	layerSizes   = "DIMENSIONS"
)

// CAD is the floor and its boards in real units for other drawing programs: inches
// in inch jobs, else millimetres, as on the floor plan that the readings give.
func CAD(p plan.Plan) dxf.Drawing {
	c := cad{p: p, unit: 1, d: dxf.Drawing{Units: dxf.Millimetres, Layers: []dxf.Layer{
		{Name: layerWalls, Colour: 7}, {Name: layerFloor, Colour: 8}, {Name: layerStays, Colour: 1}, {Name: layerBoards, Colour: 3},
		{Name: layerSplines, Colour: 6}, {Name: layerRows, Colour: 2}, {Name: layerNames, Colour: 4},
		{Name: layerDoors, Colour: 9}, {Name: layerLines, Colour: 5}, {Name: layerSizes, Colour: 30},
	}}}
	if p.Job.Unit.Imperial() {
		c.d.Units, c.unit = dxf.Inches, 25.4
	}
	c.rooms()
	c.boards()
	c.doorways()
	c.lines()
	c.sizes()
	return c.d
}

type cad struct {
	p    plan.Plan
	unit float64 // mm in a unit of the drawing
	d    dxf.Drawing
}

func (c *cad) pt(p plane.XY) dxf.Pt { return dxf.Pt{X: p.X / c.unit, Y: p.Y / c.unit} }

func (c *cad) ring(layer string, ps []plane.XY) {
	var out []dxf.Pt
	for _, p := range ps {
		out = append(out, c.pt(p))
	}
	if len(out) > 2 {
		c.d.Lines = append(c.d.Lines, dxf.Line{Layer: layer, Points: out, Closed: true})
	}
}

// placed is an outline of a frame on the floor plan.
func placed(d plane.Dir, r plane.Ring) []plane.XY {
	var out []plane.XY
	for _, p := range r {
		out = append(out, d.FromRow(p))
	}
	return out
}

// rooms are the walls, the area to board and what stays, with their names.
func (c *cad) rooms() {
	high := 60.0 / c.unit
	for _, r := range c.p.Floor.Rooms {
		c.ring(layerWalls, r.Corners)
		for i, at := range r.Corners {
			c.d.Texts = append(c.d.Texts, dxf.Text{Layer: layerNames, At: c.pt(at), Height: high, Text: r.Names[i]})
		}
	}
	for _, s := range c.p.Floor.Stays {
		c.ring(layerStays, s.Corners)
		if len(s.Corners) > 0 {
			c.d.Texts = append(c.d.Texts, dxf.Text{Layer: layerNames, At: c.pt(s.Corners[0]), Height: high, Text: s.Name})
		}
	}
	for _, r := range c.p.Aligned.Bare {
		c.ring(layerFloor, placed(c.p.Aligned.Dir, r))
	}
}

// boards are the pieces as they lie, the splines and the names of rows.
func (c *cad) boards() {
	l := c.p.Lay
	zone := map[int]lay.Zone{}
	for _, z := range l.Zones {
		zone[z.ID] = z
	}
	for _, r := range l.Runs {
		d := zone[r.Zone].Dir
		for _, id := range r.Pieces {
			q := l.Pieces[id]
			c.ring(layerBoards, placed(d, q.Outline))
			for _, s := range q.Slip {
				y := behind(q, zone[r.Zone])
				c.d.Lines = append(c.d.Lines, dxf.Line{Layer: layerSplines, Points: []dxf.Pt{c.pt(d.FromRow(plane.P(s.From, y))), c.pt(d.FromRow(plane.P(s.To, y)))}})
			}
		}
		if lo, hi := r.Outline.Box(); len(r.Outline) > 0 {
			at := d.FromRow(plane.P((lo.X+hi.X)/2, (r.Low+r.High)/2))
			c.d.Texts = append(c.d.Texts, dxf.Text{Layer: layerRows, At: c.pt(at), Height: (r.High - r.Low).Millimetres() / 2 / c.unit, Turn: turnOf(d), Centred: true, Text: words.Row(r)})
		}
	}
}

// behind is where the groove edge of a piece lies: a spline is glued in there.
func behind(q lay.Piece, z lay.Zone) tape.Length {
	lo, hi := q.Outline.Box()
	if z.Ahead < 0 {
		return hi.Y
	}
	return lo.Y
}

// turnOf is the direction of rows in degrees, so that names are read from below or
// from the right.
func turnOf(d plane.Dir) float64 {
	a := math.Atan2(d.Y, d.X) * 180 / math.Pi
	switch {
	case a > 90:
		return a - 180
	case a <= -90:
		return a + 180
	}
	return a
}
