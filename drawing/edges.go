package drawing

import (
	"strake/floor"
	"strake/sheet"
)

// edgePens are the lines of the floor's edges by what they meet: full and
// heavy for a wall, dashed where boards pass under something.
var edgePens = map[floor.Kind]sheet.Pen{
	floor.Wall:       {Width: 0.8, Ink: sheet.Black},
	floor.Jamb:       {Width: 0.5, Ink: sheet.Black, Dash: []float64{1.2, 0.8}},
	floor.Flush:      {Width: 0.4, Ink: sheet.Black},
	floor.Transition: {Width: 0.5, Ink: sheet.Black, Dash: []float64{4, 1, 0.8, 1}},
	floor.Nosing:     {Width: 0.5, Ink: sheet.Black, Dash: []float64{4, 1, 0.8, 1, 0.8, 1}},
	floor.Stays:      {Width: 0.4, Ink: sheet.Black},
}

// drawEdges draws the floor's edges over the boards, and thin under them the
// walls of the rooms where the floor has no edge.
func (d *draw) drawEdges() {
	for _, r := range d.p.Floor.Rooms {
		d.areas = append([]sheet.Item{sheet.Polygon{Rings: [][]sheet.Pt{d.ring(toRow(d.p, r.Corners))}, Pen: thin}}, d.areas...)
	}
	for _, e := range d.p.Aligned.Edges {
		pen, ok := edgePens[e.Kind]
		if !ok {
			pen = edgePens[floor.Wall]
		}
		d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{d.at(e.From), d.at(e.To)}, Pen: pen})
		d.labels.line(d.at(e.From), d.at(e.To), 0)
	}
}

// drawStays hatches what stays.
func (d *draw) drawStays() {
	for _, s := range d.p.Floor.Stays {
		shape := [][]sheet.Pt{d.ring(toRow(d.p, s.Corners))}
		d.areas = append(d.areas, sheet.Polygon{Rings: shape, Fill: sheet.White, Pen: edgePens[floor.Stays]})
		d.areas = append(d.areas, sheet.Hatch(shape, -45, 2, hair)...)
		for i, a := range shape[0] {
			d.labels.line(a, shape[0][(i+1)%len(shape[0])], 0)
		}
	}
}

// nameStays writes the name in the middle of what stays, or beside it.
func (d *draw) nameStays() {
	for _, s := range d.p.Floor.Stays {
		ring := d.ring(toRow(d.p, s.Corners))
		lo, hi := bounds(ring)
		mid := lo.Add(hi).Times(0.5)
		var texts []sheet.Text
		for _, size := range []float64{middling, small, tiny} {
			for _, turn := range []float64{0, -90} {
				texts = append(texts, sheet.Text{Text: s.Name, Size: size, Anchor: sheet.Middle, Turn: turn,
					At: mid.Sub(up(turn).Times(0.36 * size))})
			}
		}
		t, ok := d.labels.first(texts, func(t sheet.Text) bool { return within([][]sheet.Pt{ring}, outline(t)) })
		if !ok {
			t, ok = d.labels.first(besides(s.Name, lo, hi), nil)
		}
		if ok {
			d.onWhite(t)
		}
	}
}

// besides are places for a name next to a thing too small to hold it.
func besides(name string, lo, hi sheet.Pt) []sheet.Text {
	mid := lo.Add(hi).Times(0.5)
	t := sheet.Text{Text: name, Size: tiny, Anchor: sheet.Middle}
	at := func(x, y float64, a sheet.Anchor) sheet.Text { t.At, t.Anchor = sheet.Pt{X: x, Y: y}, a; return t }
	return []sheet.Text{
		at(mid.X, hi.Y+2.4, sheet.Middle), at(mid.X, lo.Y-1, sheet.Middle),
		at(hi.X+1, mid.Y+0.7, sheet.Start), at(lo.X-1, mid.Y+0.7, sheet.End),
	}
}

func bounds(ps []sheet.Pt) (lo, hi sheet.Pt) {
	lo, hi = ps[0], ps[0]
	for _, p := range ps[1:] {
		lo.X, lo.Y = min(lo.X, p.X), min(lo.Y, p.Y)
		hi.X, hi.Y = max(hi.X, p.X), max(hi.Y, p.Y)
	}
	return
}
