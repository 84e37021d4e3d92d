package packet

import (
	"fmt"
	"strings"

	"strake/drawing"
	"strake/sheet"
)

// lap is how much neighbouring tiles share, mm.
const lap = 16.0

// tiled puts a drawing that holds its scale on as many pages as it takes, each with its
// own bar. With more than one, each has match marks where it is laid over its neighbours.
// What has no room in the drawing stands in the head of the tile that it belongs to.
func (d *desk) tiled(title, how string, s sheet.Sheet, apart []drawing.Apart) {
	f := &flow{d: d, title: title, across: true, size: note}
	f.turn()
	h := f.tileHead(how)
	tiles, lists, behind := f.spread(s, h, apart)
	for i, t := range tiles {
		if i > 0 {
			f.turn()
		}
		f.putTile(h, t, tiles, lists)
	}
	if behind {
		f.turn()
		f.y += h.high
		for _, l := range apartLines(apart) {
			f.para(l)
		}
	}
}

// tileHead is what stands over every tile.
type tileHead struct {
	bold  string // before all else
	lines []string
	bar   []sheet.Item
	barW  float64
	high  float64 // without a list
}

// tileName is the room for a tile's name at the right of its head, mm.
const tileName = 22.0

func (f *flow) tileHead(how string) tileHead {
	var h tileHead
	var high float64
	h.bar, h.barW, high = drawing.LooseBar(f.d.in.Plan)
	if f.d.in.Plan.Lay.Example {
		h.bold = "EXAMPLE LAYOUT, BOARDS NOT YET KNOWN"
	}
	h.lines = sheet.WrapPrinted("Scale "+drawing.Scale(f.d.in.Plan)+". "+drawing.Seen(f.d.in.Plan)+" "+how, f.size, f.body.w-tileName-h.barW-6, false)
	n := len(h.lines)
	if h.bold != "" {
		n++
	}
	h.high = max(high+1, float64(n)*f.size*leading)
	return h
}

// mostListed is how many lines of a list stand over a tile at the most: a longer one would
// leave the tile no room.
const mostListed = 6

// spread cuts a drawing into tiles under heads that have room for the longest list of what
// stands apart, and gives each tile's list in lines; or says that the whole list stands
// behind the tiles.
func (f *flow) spread(s sheet.Sheet, h tileHead, apart []drawing.Apart) (tiles []sheet.Tile, lists [][]string, behind bool) {
	for room := 0; ; {
		// Half a lap is kept free all round, for writing that runs out.
		tiles = sheet.Tiles(s, f.body.w-lap, f.body.h-h.high-float64(room)*f.size*leading-lap, lap)
		longest := 0
		lists = nil
		for _, t := range tiles {
			l := f.listed(t, apart)
			lists, longest = append(lists, l), max(longest, len(l))
		}
		if longest <= room {
			return tiles, padded(lists, room), behind
		}
		if room = longest; room > mostListed {
			room, apart, behind = 0, nil, true
		}
	}
}

// padded are lists of as many lines each.
func padded(lists [][]string, n int) [][]string {
	for i, l := range lists {
		lists[i] = append(l, make([]string, n-len(l))...)
	}
	return lists
}

// listed are the lines of what a tile has no room for: a thing is told on each tile that its
// place lies on.
func (f *flow) listed(t sheet.Tile, apart []drawing.Apart) []string {
	var here []drawing.Apart
	for _, a := range apart {
		if p := a.At.Sub(t.From); p.X >= 0 && p.Y >= 0 && p.X <= t.W && p.Y <= t.H {
			here = append(here, a)
		}
	}
	if len(here) == 0 {
		return nil
	}
	return sheet.WrapPrinted("No room in the drawing: "+strings.Join(apartLines(here), " "), f.size, f.body.w, false)
}

// apartLines say what has no room in a drawing: what belongs to one row together.
func apartLines(apart []drawing.Apart) []string {
	var out []string
	of := ""
	for _, a := range apart {
		if a.Of != "" && a.Of == of {
			out[len(out)-1] = strings.TrimSuffix(out[len(out)-1], ".") + "; " + a.Text + "."
			continue
		}
		of = a.Of
		out = append(out, capital(strings.TrimSpace(a.Of+" "+a.Text))+".")
	}
	return out
}

// putTile draws a tile with its head.
func (f *flow) putTile(h tileHead, t sheet.Tile, all []sheet.Tile, lists [][]string) {
	top := f.y
	if h.bold != "" {
		f.write(h.bold, f.body.x, f.y+f.size, f.size, true)
		f.y += f.size * leading
	}
	for _, l := range h.lines {
		f.write(l, f.body.x, f.y+f.size, f.size, false)
		f.y += f.size * leading
	}
	f.Put(sheet.Moved(h.bar, sheet.Pt{X: f.body.x + f.body.w - tileName - h.barW, Y: top}, 1)...)
	f.y = top + h.high
	for i := range all {
		if all[i].Col != t.Col || all[i].Row != t.Row {
			continue
		}
		for _, l := range lists[i] {
			if l != "" {
				f.write(l, f.body.x, f.y+f.size, f.size, false)
			}
			f.y += f.size * leading
		}
	}
	at := sheet.Pt{X: f.body.x + lap/2, Y: f.y + lap/2}
	f.Put(sheet.Moved(t.Items, at, 1)...)
	if len(all) > 1 {
		f.match(t, all, at, top)
	}
}

// name is a tile's place: a letter for the row, a figure for the column.
func name(t sheet.Tile) string { return fmt.Sprintf("%c%d", 'A'+t.Row, t.Col+1) }

// match draws the marks of a tile and says which tiles lie beside it.
func (f *flow) match(t sheet.Tile, all []sheet.Tile, at sheet.Pt, top float64) {
	f.write("Tile "+name(t), f.body.x+f.body.w-tileName+2, top+note, subtitle, true)
	for _, n := range all {
		dc, dr := n.Col-t.Col, n.Row-t.Row
		if dc*dc+dr*dr != 1 {
			continue
		}
		for _, c := range crossed(t, n) {
			f.cross(c.Sub(t.From).Add(at))
		}
		f.beside(t, n, at)
	}
}

func (f *flow) cross(c sheet.Pt) {
	f.line(c.X-cross, c.Y, c.X+cross, c.Y, thin)
	f.line(c.X, c.Y-cross, c.X, c.Y+cross, thin)
}

// beside names a neighbour in the margin on its side.
func (f *flow) beside(t, n sheet.Tile, at sheet.Pt) {
	dc, dr := n.Col-t.Col, n.Row-t.Row
	x := sheet.Text{Text: "lay tile " + name(n) + " over the crosses", Size: note, Anchor: sheet.Middle, Ink: sheet.Black}
	switch {
	case dc != 0:
		x.Turn = -90
		x.At = sheet.Pt{X: f.body.x - 2.2, Y: f.body.y + f.body.h/2}
		if dc > 0 {
			x.At.X = f.body.x + f.body.w + 4.4
		}
	case dr > 0:
		x.At = sheet.Pt{X: f.body.x + f.body.w/2, Y: f.body.y + f.body.h + 2.2}
	default:
		x.At = sheet.Pt{X: f.body.x + f.body.w/2, Y: at.Y - 1.5}
		for _, k := range []float64{0, 0.15, -0.15, 0.3, -0.3} { // where no writing runs out over it
			y := x
			y.At.X += k * f.body.w
			if m := sheet.Moved([]sheet.Item{y}, at.Times(-1), 1)[0].(sheet.Text); offWriting(m.Box(), t.Items) {
				x = y
				break
			}
		}
	}
	f.Put(x)
}
