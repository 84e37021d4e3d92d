package section

import "strake/sheet"

// XY is a place in real mm, y up.
type XY struct{ X, Y float64 }

// At is the place X, Y.
func At(x, y float64) XY { return XY{x, y} }

// Add is p moved by q.
func (p XY) Add(q XY) XY { return XY{p.X + q.X, p.Y + q.Y} }

// Canvas collects a drawing. What is put later lies on top; words lie on top of
// all.
type Canvas struct {
	scale float64      // paper mm for a real mm
	items []sheet.Item // in paper mm from the real origin
	words []sheet.Item
	dims  []dim
	notes []note
}

// New is an empty canvas at a scale in paper mm for one real mm: 1, 0.5 (1:2),
// 0.2 (1:5).
func New(scale float64) *Canvas { return &Canvas{scale: scale} }

// paper is a place on paper, from the real origin.
func (c *Canvas) paper(p XY) sheet.Pt {
	return sheet.Pt{X: float64(p.X * c.scale), Y: float64(-p.Y * c.scale)}
}

func (c *Canvas) papers(ps []XY) []sheet.Pt {
	out := make([]sheet.Pt, len(ps))
	for i, p := range ps {
		out[i] = c.paper(p)
	}
	return out
}

// Real is how many real mm a length on paper is.
func (c *Canvas) Real(paper float64) float64 { return paper / c.scale }

// Line is an open line.
func (c *Canvas) Line(pen sheet.Pen, at ...XY) { c.Named("", pen, at...) }

// Named is an open line with a name for who reads the drawing.
func (c *Canvas) Named(name string, pen sheet.Pen, at ...XY) {
	c.items = append(c.items, sheet.Polyline{Name: name, Points: c.papers(at), Pen: pen})
}

// Seen is what is seen and not cut: white with a visible outline.
func (c *Canvas) Seen(name string, ring ...XY) { c.Area(name, sheet.White, Visible, ring...) }

// Area is an area with a fill and an outline; its name is unique on the canvas or
// empty.
func (c *Canvas) Area(name string, fill sheet.Ink, pen sheet.Pen, ring ...XY) {
	c.items = append(c.items, sheet.Polygon{Name: name, Rings: [][]sheet.Pt{c.papers(ring)}, Fill: fill, Pen: pen})
}

// Rect is the ring of a rectangle, counter-clockwise from its lower left: sides 0
// below, 1 right, 2 above, 3 left.
func Rect(x0, y0, x1, y1 float64) []XY { return []XY{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}} }

// Shift is a ring moved.
func Shift(ring []XY, by XY) []XY {
	out := make([]XY, len(ring))
	for i, p := range ring {
		out[i] = p.Add(by)
	}
	return out
}

// Mirror is a ring seen from the other side: turned over the line at x.
func Mirror(ring []XY, x float64) []XY {
	out := make([]XY, len(ring))
	for i, p := range ring {
		out[len(ring)-1-i] = XY{2*x - p.X, p.Y}
	}
	return out
}

// Word is a name in the drawing, its baseline's middle at a place, on a piece of
// white that keeps hatches off it.
func (c *Canvas) Word(at XY, size float64, s string) { c.word(at, size, s, sheet.Middle, 0, false) }

// Bold is a Word in heavier letters.
func (c *Canvas) Bold(at XY, size float64, s string) { c.word(at, size, s, sheet.Middle, 0, true) }

// Upright is a Word that reads from below upwards.
func (c *Canvas) Upright(at XY, size float64, s string) {
	c.word(at, size, s, sheet.Middle, -90, false)
}

// Left is a Word that starts at its place.
func (c *Canvas) Left(at XY, size float64, s string) { c.word(at, size, s, sheet.Start, 0, false) }

func (c *Canvas) word(at XY, size float64, s string, a sheet.Anchor, turn float64, bold bool) {
	t := sheet.Text{Text: s, At: c.paper(at), Size: size, Anchor: a, Turn: turn, Bold: bold, Ink: sheet.Black}
	box := t.Box()
	c.words = append(c.words, sheet.Polygon{Rings: [][]sheet.Pt{box[:]}, Fill: sheet.White}, t)
}

// Right is a Word that ends at its place.
func (c *Canvas) Right(at XY, size float64, s string) { c.word(at, size, s, sheet.End, 0, false) }
