package packet

import (
	"fmt"

	"strake/sheet"
)

// lap is how much neighbouring tiles share, mm.
const lap = 16.0

// cross is half the size of a match mark, mm.
const cross = 3.0

// tiled puts a drawing that holds its scale on as many pages as it takes. With more
// than one, each has match marks where it is laid over its neighbours.
func (d *desk) tiled(title, how string, s sheet.Sheet) {
	f := &flow{d: d, title: title, across: true, size: note}
	f.turn()
	f.para(how)
	top := 2 * note * leading
	w, h := f.body.w-lap, f.body.h-top-lap // half a lap is kept free all round, for writing that runs out
	tiles := sheet.Tiles(s, w, h, lap)
	for i, t := range tiles {
		if i > 0 {
			f.turn()
			f.para(how)
		}
		at := sheet.Pt{X: f.body.x + lap/2, Y: f.body.y + top + lap/2}
		f.Put(sheet.Moved(t.Items, at, 1)...)
		if len(tiles) > 1 {
			f.match(t, tiles, at)
		}
	}
}

// name is a tile's place: a letter for the row, a figure for the column.
func name(t sheet.Tile) string { return fmt.Sprintf("%c%d", 'A'+t.Row, t.Col+1) }

// match draws the marks of a tile and says which tiles lie beside it.
func (f *flow) match(t sheet.Tile, all []sheet.Tile, at sheet.Pt) {
	f.write("Tile "+name(t), f.body.x+f.body.w-20, f.body.y+note, subtitle, true)
	for _, n := range all {
		dc, dr := n.Col-t.Col, n.Row-t.Row
		if dc*dc+dr*dr != 1 {
			continue
		}
		// The middle of the lap, at a quarter and three quarters of the side.
		for _, part := range []float64{0.25, 0.75} {
			c := sheet.Pt{X: t.W * part, Y: t.H * part}
			switch {
			case dc == 1:
				c.X = t.W - lap/2
			case dc == -1:
				c.X = lap / 2
			case dr == 1:
				c.Y = t.H - lap/2
			case dr == -1:
				c.Y = lap / 2
			}
			f.cross(c.Add(at))
		}
		f.beside(n, dc, dr)
	}
}

func (f *flow) cross(c sheet.Pt) {
	f.line(c.X-cross, c.Y, c.X+cross, c.Y, thin)
	f.line(c.X, c.Y-cross, c.X, c.Y+cross, thin)
}

// beside names a neighbour in the margin on its side.
func (f *flow) beside(n sheet.Tile, dc, dr int) {
	t := sheet.Text{Text: "lay tile " + name(n) + " over the crosses", Size: note, Anchor: sheet.Middle, Ink: sheet.Black}
	switch {
	case dc != 0:
		t.Turn = -90
		t.At = sheet.Pt{X: f.body.x - 2.2, Y: f.body.y + f.body.h/2}
		if dc > 0 {
			t.At.X = f.body.x + f.body.w + 4.4
		}
	case dr > 0:
		t.At = sheet.Pt{X: f.body.x + f.body.w/2, Y: f.body.y + f.body.h + 2.2}
	default:
		t.At = sheet.Pt{X: f.body.x + f.body.w/2, Y: f.body.y + 2.4*note}
	}
	f.Put(t)
}
