package section

import (
	"slices"

	"strake/sheet"
)

// Cut is what the cut passes through: white under the hatch of its material, with
// a heavy outline. Open sides (counted from 0: side i runs from corner i to the
// next) have none, as it goes on there; a break line belongs to them.
func (c *Canvas) Cut(name string, m Material, ring []XY, open ...int) {
	c.face(name, m, ring, Heavy, open)
}

// Faced is what is seen and not cut, drawn with its material: a board from above.
func (c *Canvas) Faced(name string, m Material, ring []XY, open ...int) {
	c.face(name, m, ring, Visible, open)
}

func (c *Canvas) face(name string, m Material, ring []XY, pen sheet.Pen, open []int) {
	at := c.papers(ring)
	fill := sheet.White
	if m == Solid {
		fill = sheet.Black
	}
	c.items = append(c.items, sheet.Polygon{Name: name, Rings: [][]sheet.Pt{at}, Fill: fill})
	c.items = append(c.items, hatch(m, at, c.scale)...)
	if len(open) == 0 {
		c.items = append(c.items, sheet.Polygon{Rings: [][]sheet.Pt{at}, Pen: pen})
		return
	}
	for _, line := range sides(at, open) {
		c.items = append(c.items, sheet.Polyline{Points: line, Pen: pen})
	}
}

// sides are the lines round a ring without its open sides.
func sides(ring []sheet.Pt, open []int) [][]sheet.Pt {
	n := len(ring)
	var out [][]sheet.Pt
	var line []sheet.Pt
	first := (slices.Min(open) + 1) % n // begin after an open side
	for k := range n {
		i := (first + k) % n
		if slices.Contains(open, i) {
			if len(line) > 0 {
				out = append(out, line)
			}
			line = nil
			continue
		}
		if len(line) == 0 {
			line = []sheet.Pt{ring[i]}
		}
		line = append(line, ring[(i+1)%n])
	}
	if len(line) > 0 {
		out = append(out, line)
	}
	return out
}

// Break is a thin line with a jag from a to b, a little longer than that at both
// ends: what is drawn goes on beyond it.
func (c *Canvas) Break(a, b XY) {
	p, q := c.paper(a), c.paper(b)
	u := unit(q.Sub(p))
	v := sheet.Pt{X: -u.Y, Y: u.X}
	p, q = p.Sub(u.Times(over)), q.Add(u.Times(over))
	m := p.Add(q).Times(0.5)
	at := func(along, off float64) sheet.Pt { return m.Add(u.Times(along)).Add(v.Times(off)) }
	c.items = append(c.items, sheet.Polyline{Points: []sheet.Pt{p, at(-1.6, 0), at(-0.8, 1.6), at(0.8, -1.6), at(1.6, 0), q}, Pen: Thin})
}

// over is how far break and extension lines go beyond what they belong to, mm.
const over = 1.8
