package drawing

import (
	"math"

	"strake/plane"
	"strake/room"
	"strake/sheet"
)

// letters writes the names of a room's corners outside it, where neither a
// wall nor another name is in the way; where there is no such place, on a
// white ground inside it.
func (d *readings) letters(r room.Room) {
	ring := r.Ring()
	for i, c := range ring {
		n := len(ring)
		out := d.outOf(ring[(i+n-1)%n], c, ring[(i+1)%n])
		at := d.place(d.p.Built.At[c])
		var texts []sheet.Text
		for _, off := range []float64{3.6, 4.6, 6, 8} {
			for _, deg := range []float64{0, 30, -30, 60, -60, 180, 150, -150, 90, -90} {
				s, co := math.Sincos(deg * math.Pi / 180)
				v := sheet.Pt{X: out.X*co - out.Y*s, Y: out.X*s + out.Y*co}.Times(off)
				texts = append(texts, sheet.Text{Text: c, At: sheet.Pt{X: at.X + v.X, Y: at.Y + v.Y + 0.36*large}, Size: large, Anchor: sheet.Middle, Bold: true, Ink: sheet.Black})
			}
		}
		own := func(t sheet.Text) bool { return d.offWalls(t) && d.inNoOther(t, r.Name) }
		if t, ok := d.labels.first(texts, own); ok {
			d.s.Put(sheet.Polygon{Rings: [][]sheet.Pt{grown(t, 0.1)}, Fill: sheet.White}, t)
		}
	}
}

// inNoOther tells whether a text lies in no room but that of this name: a
// letter in the next room would be taken for one of its corners.
func (d *readings) inNoOther(t sheet.Text, room string) bool {
	for _, r := range d.p.Built.Rooms {
		if r.Name != room && !clearOf([][]sheet.Pt{d.ring(r)}, outline(t)) {
			return false
		}
	}
	return true
}

// outOf is the direction on the page out of the room at corner c between its
// neighbours a and b, walked counter-clockwise.
func (d *readings) outOf(a, c, b string) sheet.Pt {
	at := d.p.Built.At
	u, v := at[a].Sub(at[c]), at[b].Sub(at[c])
	if u.Len() == 0 || v.Len() == 0 {
		return sheet.Pt{X: 1}
	}
	out := u.Unit().Add(v.Unit()).Times(-1)
	switch {
	case out.Len() < 0.05: // a corner in a straight wall
		out = v.Unit().Left().Times(-1)
	case v.Cross(u) < 0: // a corner that stands into the room
		out = out.Times(-1)
	}
	o := d.turned(plane.XY(out)).Unit()
	return sheet.Pt{X: o.X, Y: -o.Y}
}

// offWalls tells whether a text lies on no wall.
func (d *readings) offWalls(t sheet.Text) bool {
	o := outline(t)
	for _, r := range d.p.Built.Rooms {
		ring := d.ring(r)
		for i, a := range ring {
			if sheet.Overlap(o, []sheet.Pt{a, ring[(i+1)%len(ring)]}) {
				return false
			}
		}
	}
	return true
}

// points marks the points on walls that readings go to, and names them where
// there is room.
func (d *readings) points() {
	for _, p := range d.p.Built.Points {
		at, ok := d.p.Built.At[p.Name]
		if !ok {
			continue
		}
		q := d.place(at)
		d.s.Put(sheet.Polygon{Rings: [][]sheet.Pt{disc(q, 0.7)}, Fill: sheet.Black})
		var texts []sheet.Text
		for _, off := range []float64{2.4, 3.4, 5} {
			for deg := 0.0; deg < 360; deg += 45 {
				s, c := math.Sincos(deg * math.Pi / 180)
				texts = append(texts, sheet.Text{Text: p.Name, Size: small, Anchor: sheet.Middle, Ink: sheet.Black,
					At: sheet.Pt{X: q.X + c*off, Y: q.Y + s*off + 0.36*small}})
			}
		}
		if t, ok := d.labels.first(texts, d.offWalls); ok {
			d.s.Put(sheet.Polygon{Rings: [][]sheet.Pt{grown(t, 0.1)}, Fill: sheet.White}, t)
		}
	}
}
