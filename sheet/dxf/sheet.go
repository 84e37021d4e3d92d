package dxf

import (
	"io"
	"math"

	"strake/sheet"
)

// The layers of a sheet, by how heavy its lines are and what else is on it.
const (
	Outlines = "OUTLINES" // 0.5 mm and more
	Edges    = "EDGES"    // 0.25 mm and more
	Fine     = "FINE"     // hatches, dimensions, leaders
	Areas    = "AREAS"    // outlines of what is filled
	Writing  = "WRITING"
)

var sheetLayers = []Layer{{Outlines, 7}, {Edges, 3}, {Fine, 8}, {Areas, 5}, {Writing, 2}}

// Renderer writes a sheet as a drawing in real units, each length times what the sheet
// says 1 on it stands for; a sheet that is not to one scale keeps its size on paper.
type Renderer struct{ Units Units }

// Render writes the one sheet.
func (r Renderer) Render(w io.Writer, _ string, sheets ...sheet.Sheet) error {
	s, err := sheet.One("dxf", sheets)
	if err != nil {
		return err
	}
	return Write(w, Of(s, r.Units))
}

// Of is a sheet as a drawing: y up, its lower left corner at 0, 0.
func Of(s sheet.Sheet, units Units) Drawing {
	c := converter{s: s, k: 1, d: Drawing{Units: units, Layers: sheetLayers}}
	if s.One > 0 {
		c.k = s.One
	}
	if units == Inches {
		c.k /= 25.4
	}
	for _, it := range s.Items {
		switch x := it.(type) {
		case sheet.Polyline:
			c.line(x.Points, x.Pen, false)
		case sheet.Polygon:
			c.polygon(x)
		case sheet.Text:
			c.text(x)
		}
	}
	return c.d
}

type converter struct {
	s sheet.Sheet
	k float64 // units of the drawing in 1 mm on the sheet
	d Drawing
}

func (c *converter) at(p sheet.Pt) Pt { return Pt{p.X * c.k, (c.s.H - p.Y) * c.k} }

// layer is that of lines of a pen.
func layer(p sheet.Pen) string {
	switch {
	case p.Width >= 0.5:
		return Outlines
	case p.Width >= 0.25:
		return Edges
	}
	return Fine
}

// line draws a line; dashes are drawn one by one, since layers here have full lines.
func (c *converter) line(ps []sheet.Pt, pen sheet.Pen, closed bool) {
	if pen.Ink == sheet.None || pen.Ink == sheet.White || pen.Width <= 0 || len(ps) < 2 {
		return
	}
	if len(pen.Dash) > 0 {
		if closed {
			ps = append(append([]sheet.Pt{}, ps...), ps[0])
		}
		for _, d := range dashes(ps, pen.Dash) {
			c.put(layer(pen), d, false)
		}
		return
	}
	c.put(layer(pen), ps, closed)
}

func (c *converter) put(layer string, ps []sheet.Pt, closed bool) {
	l := Line{Layer: layer, Closed: closed}
	for _, p := range ps {
		l.Points = append(l.Points, c.at(p))
	}
	c.d.Lines = append(c.d.Lines, l)
}

// polygon draws its edge with its pen, or the outline of what is filled without one; what
// only clears the paper under writing leaves nothing.
func (c *converter) polygon(p sheet.Polygon) {
	for _, r := range p.Rings {
		switch {
		case p.Pen.Ink != sheet.None && p.Pen.Width > 0:
			c.line(r, p.Pen, true)
		case p.Fill != sheet.None && p.Fill != sheet.White && len(r) > 2:
			c.put(Areas, r, true)
		}
	}
}

// capital is how high capitals are, in sizes of writing.
const capital = 0.72

func (c *converter) text(t sheet.Text) {
	if t.Text == "" || t.Ink == sheet.White { // without an ink writing is black
		return
	}
	turn := math.Mod(360-t.Turn, 360)
	c.d.Texts = append(c.d.Texts, Text{Layer: Writing, At: c.at(t.At), Height: t.Size * capital * c.k, Turn: turn, Anchor: int(t.Anchor), Text: t.Text})
}

// dashes are the drawn parts of a line dashed by lengths on, off, on ...
func dashes(ps []sheet.Pt, lengths []float64) [][]sheet.Pt {
	sum := 0.0
	for _, l := range lengths {
		sum += l
	}
	if sum <= 0 {
		return [][]sheet.Pt{ps}
	}
	var out [][]sheet.Pt
	k, left := 0, lengths[0]
	open := []sheet.Pt{ps[0]}
	for i := 0; i+1 < len(ps); i++ {
		a, b := ps[i], ps[i+1]
		long := math.Hypot(b.X-a.X, b.Y-a.Y)
		for gone := 0.0; gone < long; {
			step := min(left, long-gone)
			gone, left = gone+step, left-step
			at := a.Add(b.Sub(a).Times(gone / long))
			if k%2 == 0 {
				open = append(open, at)
			}
			if left > 0 {
				continue
			}
			if k%2 == 0 {
				out = append(out, open)
			}
			k = (k + 1) % (2 * len(lengths)) // an odd number of lengths changes over each time round
			left, open = lengths[k%len(lengths)], []sheet.Pt{at}
			for n := 0; left <= 0 && n < 2*len(lengths); n++ {
				k = (k + 1) % (2 * len(lengths))
				left = lengths[k%len(lengths)]
			}
		}
	}
	if k%2 == 0 && len(open) > 1 {
		out = append(out, open)
	}
	return out
}
