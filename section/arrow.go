package section

import "strake/sheet"

// Arrow is a fat arrow from a to b: push here, hammer here, this way.
func (c *Canvas) Arrow(a, b XY) {
	p, q := c.paper(a), c.paper(b)
	u := unit(q.Sub(p))
	v := sheet.Pt{X: -u.Y, Y: u.X}
	const half, wide, long = 0.9, 2.2, 3.6
	neck := q.Sub(u.Times(long))
	at := func(o sheet.Pt, off float64) sheet.Pt { return o.Add(v.Times(off)) }
	c.words = append(c.words, sheet.Polygon{Name: "", Fill: sheet.White, Pen: Visible, Rings: [][]sheet.Pt{{
		at(p, half), at(neck, half), at(neck, wide), q, at(neck, -wide), at(neck, -half), at(p, -half)}}})
}

// Pointer is a thin line with an arrow head at b: a direction, a movement.
func (c *Canvas) Pointer(a, b XY) {
	p, q := c.paper(a), c.paper(b)
	c.words = append(c.words, sheet.Polyline{Points: []sheet.Pt{p, q}, Pen: Light}, head(q, unit(q.Sub(p)), 2.4))
}
