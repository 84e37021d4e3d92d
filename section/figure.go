package section

import "strake/sheet"

// Figure is a finished drawing in paper mm, x to the right and y down from its
// upper left corner.
type Figure struct {
	W, H  float64
	Items []sheet.Item
}

// Move are items moved on the page.
func Move(items []sheet.Item, by sheet.Pt) []sheet.Item {
	out := make([]sheet.Item, len(items))
	for i, it := range items {
		switch it := it.(type) {
		case sheet.Polyline:
			it.Points = moved(it.Points, by)
			out[i] = it
		case sheet.Polygon:
			rings := make([][]sheet.Pt, len(it.Rings))
			for k, r := range it.Rings {
				rings[k] = moved(r, by)
			}
			it.Rings = rings
			out[i] = it
		case sheet.Text:
			it.At = it.At.Add(by)
			out[i] = it
		}
	}
	return out
}

func moved(ps []sheet.Pt, by sheet.Pt) []sheet.Pt {
	out := make([]sheet.Pt, len(ps))
	for i, p := range ps {
		out[i] = p.Add(by)
	}
	return out
}

// edge is what is left free round a figure, for the width of its pens.
const edge = 0.5

// figureOf is items as a figure of their own size.
func figureOf(items []sheet.Item) Figure {
	b := boxOf(items)
	return Figure{b.x1 - b.x0 + 2*edge, b.y1 - b.y0 + 2*edge, Move(items, sheet.Pt{X: edge - b.x0, Y: edge - b.y0})}
}

// Figure closes the canvas: the drawing, its dimensions outside it, and its notes
// in a column of this width to the right (0: notes are as wide as usual).
func (c *Canvas) Figure(notes float64) Figure {
	if notes == 0 {
		notes = usualNotes
	}
	out := append([]sheet.Item(nil), c.items...)
	out = append(out, c.words...)
	b := boxOf(out)
	dims := c.placeDims(&b)
	out = append(out, dims...)
	out = append(out, c.placeNotes(b, append(append([]sheet.Item(nil), c.words...), dims...), notes)...)
	return figureOf(out)
}

// usualNotes is how wide a column of notes is, mm.
const usualNotes = 50

// Below puts figures under each other, flush left, so many mm apart.
func Below(gap float64, fs ...Figure) Figure {
	var out Figure
	for _, f := range fs {
		if out.H > 0 {
			out.H += gap
		}
		out.Items = append(out.Items, Move(f.Items, sheet.Pt{Y: out.H})...)
		out.H, out.W = out.H+f.H, max(out.W, f.W)
	}
	return out
}

// Beside puts figures side by side, flush below, so many mm apart.
func Beside(gap float64, fs ...Figure) Figure {
	var out Figure
	for _, f := range fs {
		out.H = max(out.H, f.H)
	}
	for _, f := range fs {
		if out.W > 0 {
			out.W += gap
		}
		out.Items = append(out.Items, Move(f.Items, sheet.Pt{X: out.W, Y: out.H - f.H})...)
		out.W += f.W
	}
	return out
}

// Caption is a line of writing as a figure, broken where it is wider than width.
func Caption(s string, size, width float64, bold bool) Figure {
	f := Figure{}
	for _, l := range sheet.Wrap(s, size, width) {
		t := sheet.Text{Text: l, Size: size, Bold: bold, Ink: sheet.Black, At: sheet.Pt{X: edge, Y: f.H + size}}
		f.Items = append(f.Items, t)
		f.W, f.H = max(f.W, t.Width()+2*edge), f.H+float64(size*leading)
	}
	return f
}

// leading is the distance of lines of writing in font sizes.
const leading = 1.24
