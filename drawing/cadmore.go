package drawing

import (
	"math"

	"strake/plane"
	"strake/room"
	"strake/setout"
	"strake/sheet/dxf"
	"strake/tape"
	"strake/words"
)

// Of writing in a drawing in real units, mm on the floor: how high it is, and how far off
// its wall a length stands.
const (
	cadHigh = 60.0
	cadOff  = 90.0
)

func (c *cad) segment(layer string, a, b plane.XY) {
	c.d.Lines = append(c.d.Lines, dxf.Line{Layer: layer, Points: []dxf.Pt{c.pt(a), c.pt(b)}})
}

// note writes centred at a place, turned so that it reads along a to b from below or
// from the right.
func (c *cad) note(layer, text string, at, a, b plane.XY) {
	turn := math.Atan2(b.Y-a.Y, b.X-a.X) * 180 / math.Pi
	if turn > 90 {
		turn -= 180
	}
	if turn <= -90 {
		turn += 180
	}
	c.d.Texts = append(c.d.Texts, dxf.Text{Layer: layer, At: c.pt(at), Height: cadHigh / c.unit, Turn: math.Mod(turn+360, 360), Centred: true, Text: text})
}

// doorways are the openings along the face of their wall.
func (c *cad) doorways() {
	for _, d := range c.p.Built.Doorways {
		a, b := doorEnds(c.p.Built, d)
		c.segment(layerDoors, a, b)
		c.note(layerNames, d.Name, a.Add(b).Times(0.5), a, b)
	}
}

// doorEnds are the two jambs of a doorway on the face of its wall, mm.
func doorEnds(built room.Built, d room.Doorway) (near, far plane.XY) {
	from, to := d.Wall[0], d.Wall[1]
	if d.From == to {
		from, to = to, from
	}
	a := built.At[from]
	u := built.At[to].Sub(a)
	u = u.Times(1 / u.Len())
	return a.Add(u.Times(d.At.Millimetres())), a.Add(u.Times((d.At + d.Width).Millimetres()))
}

// lines are the lines to snap, each with its row and its two distances.
func (c *cad) lines() {
	if len(c.p.Lay.Runs) == 0 {
		return
	}
	say := words.In(c.p.Job.Unit)
	lines, _ := setout.Lines(c.p)
	for _, l := range lines {
		a, b := l.Left.Place(), l.Right.Place()
		c.segment(layerLines, a, b)
		text := "row " + words.RowPart(l.Row, l.Part) + ": " + say.Rip(l.Left.At) + " from " + l.Left.From.Short + ", " + say.Rip(l.Right.At) + " from " + l.Right.From.Short
		c.note(layerLines, text, a.Add(b).Times(0.5), a, b)
	}
}

// sizes are the lengths of the walls, outside of them.
func (c *cad) sizes() {
	say := words.In(c.p.Job.Unit)
	for _, r := range c.p.Floor.Rooms {
		for i, a := range r.Corners {
			b := r.Corners[(i+1)%len(r.Corners)]
			u := b.Sub(a)
			long := u.Len()
			if long == 0 {
				continue
			}
			out := plane.XY{X: u.Y / long, Y: -u.X / long} // the room lies to the left
			c.note(layerSizes, say.Of(tape.Length(math.Round(long*float64(tape.Millimetre)))), a.Add(b).Times(0.5).Add(out.Times(cadOff)), a, b)
		}
	}
}
