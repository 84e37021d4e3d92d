package measure

import (
	"math"
	"slices"

	"strake/plane"
	"strake/room"
	"strake/sheet"
)

// sketch draws the rooms as far as they are known: letters at the corners,
// marks on the walls, openings where doorways are.
func (p *pages) sketch() {
	lo, hi := p.s.extent()
	scale := math.Min((p.w-2*edge-30)/math.Max(1, hi.X-lo.X), (sketchHigh-28)/math.Max(1, hi.Y-lo.Y))
	left, foot := p.w/2-(hi.X-lo.X)*scale/2, p.y+sketchHigh/2+(hi.Y-lo.Y)*scale/2-2
	d := &drawn{page: p.page()}
	d.place = func(q plane.XY) sheet.Pt {
		return sheet.Pt{X: left + (q.X-lo.X)*scale, Y: foot - (q.Y-lo.Y)*scale}
	}
	for _, r := range p.s.Built.Rooms {
		d.outline(r, p.s.Built)
	}
	for _, dw := range p.s.Built.Doorways {
		d.opening(p.s.Built, dw.Wall, dw.From, dw.At.Millimetres(), dw.Width.Millimetres())
		if dw.Beyond == room.BeyondRoom {
			d.opening(p.s.Built, dw.OtherWall, dw.OtherFrom, dw.OtherAt.Millimetres(), dw.Width.Millimetres())
		}
	}
	for _, o := range p.s.Stays {
		d.stays(o)
	}
	for _, m := range p.s.Built.Points {
		d.tick(p.s.Built, m)
	}
	for _, r := range p.s.Built.Rooms {
		ring := r.Ring()
		for i, c := range ring {
			d.letter(c, d.place(p.s.Built.At[c]), d.outward(p.s.Built, ring, i), 5.5, true)
		}
	}
	for _, m := range p.s.Built.Points {
		d.letter(m.Name, d.place(p.s.Built.At[m.Name]), d.into(p.s.Built, m.Wall), 3.2, false)
	}
	what := "Seen from above, not to scale. Large letters are the corners"
	if len(p.s.Built.Points) > 0 {
		what += ", small ones places on walls"
	}
	p.page().Put(sheet.Text{Text: what + ".", At: sheet.Pt{X: edge, Y: p.y + sketchHigh - 1}, Size: 2.8, Ink: sheet.Dark})
	p.y += sketchHigh
}

func (s Sheet) extent() (lo, hi plane.XY) {
	lo, hi = plane.XY{X: math.Inf(1), Y: math.Inf(1)}, plane.XY{X: math.Inf(-1), Y: math.Inf(-1)}
	for _, r := range s.Built.Rooms {
		for _, c := range r.Corners {
			q := s.Built.At[c]
			lo.X, lo.Y = math.Min(lo.X, q.X), math.Min(lo.Y, q.Y)
			hi.X, hi.Y = math.Max(hi.X, q.X), math.Max(hi.Y, q.Y)
		}
	}
	return lo, hi
}

// drawn is the sketch with what letters must keep clear of.
type drawn struct {
	page  *sheet.Sheet
	place func(plane.XY) sheet.Pt
	walls [][]sheet.Pt
	taken [][]sheet.Pt // outlines of walls, ticks and letters
}

func (d *drawn) outline(r room.Room, b room.Built) {
	var pts []sheet.Pt
	ring := r.Ring()
	for i, c := range ring {
		pts = append(pts, d.place(b.At[c]))
		d.walls = append(d.walls, bar(d.place(b.At[c]), d.place(b.At[ring[(i+1)%len(ring)]]), 0.8))
	}
	d.taken = append(d.taken, d.walls[len(d.walls)-len(ring):]...)
	d.page.Put(sheet.Polygon{Name: r.Name, Rings: [][]sheet.Pt{pts}, Pen: sheet.Pen{Width: 0.8, Ink: sheet.Black}})
}

// bar is a straight line as the area that it takes up.
func bar(a, b sheet.Pt, width float64) []sheet.Pt {
	v := b.Sub(a)
	l := math.Hypot(v.X, v.Y)
	if l == 0 {
		v, l = sheet.Pt{X: 1}, 1
	}
	n := sheet.Pt{X: -v.Y, Y: v.X}.Times(width / 2 / l)
	return []sheet.Pt{a.Add(n), a.Sub(n), b.Sub(n), b.Add(n)}
}

// onWall is the place this far (mm) from a corner along a wall, and the
// directions along the wall and into its room.
func onWall(b room.Built, w room.Wall, from string, at float64) (q, along, into plane.XY, ok bool) {
	_, ccw, found := b.FindWall(w)
	v := b.At[ccw[1]].Sub(b.At[ccw[0]])
	if !found || v.Len() == 0 {
		return q, along, into, false
	}
	along, into = v.Unit(), v.Unit().Left()
	if from == ccw[1] {
		along = along.Times(-1)
	}
	return b.At[from].Add(along.Times(at)), along, into, true
}

// opening is a doorway: the wall left white between two jambs.
func (d *drawn) opening(b room.Built, w room.Wall, from string, at, width float64) {
	near, along, into, ok := onWall(b, w, from, at)
	if !ok || width <= 0 {
		return
	}
	far := near.Add(along.Times(width))
	d.page.Put(sheet.Polyline{Points: []sheet.Pt{d.place(near), d.place(far)}, Pen: sheet.Pen{Width: 1.2, Ink: sheet.White}})
	for _, q := range []plane.XY{near, far} {
		c, n := d.place(q), d.step(into)
		d.page.Put(sheet.Polyline{Points: []sheet.Pt{c.Add(n.Times(-1)), c.Add(n)}, Pen: sheet.Pen{Width: 0.4, Ink: sheet.Black}})
	}
}

// tick is a mark on a wall.
func (d *drawn) tick(b room.Built, m room.Point) {
	q, _, into, ok := onWall(b, m.Wall, m.From, m.At.Millimetres())
	if !ok {
		return
	}
	c, n := d.place(q), d.step(into)
	line := []sheet.Pt{c.Add(n.Times(-1.5)), c.Add(n.Times(1.5))}
	d.page.Put(sheet.Polyline{Points: line, Pen: sheet.Pen{Width: 0.4, Ink: sheet.Black}})
	d.taken = append(d.taken, bar(line[0], line[1], 0.4))
}

// step is a direction on the floor as 1 mm on the page.
func (d *drawn) step(v plane.XY) sheet.Pt { return sheet.Pt{X: v.X, Y: -v.Y} }

// outward points away from the room at a corner, as seen on the page.
func (d *drawn) outward(b room.Built, ring []string, i int) sheet.Pt {
	n := len(ring)
	at := b.At[ring[i]]
	u, v := b.At[ring[(i+n-1)%n]].Sub(at), b.At[ring[(i+1)%n]].Sub(at)
	if u.Len() == 0 || v.Len() == 0 {
		return sheet.Pt{X: 1}
	}
	out := u.Unit().Add(v.Unit()).Times(-1)
	if out.Len() < 0.05 {
		out = v.Unit().Left().Times(-1)
	} else if v.Cross(u) < 0 { // a corner that stands into the room: the outside is the narrow side
		out = out.Times(-1)
	}
	return d.step(out.Unit())
}

// into points from a wall into its room, as seen on the page.
func (d *drawn) into(b room.Built, w room.Wall) sheet.Pt {
	_, _, in, ok := onWall(b, w, w[0], 0)
	if !ok {
		return sheet.Pt{X: 1}
	}
	return d.step(in)
}

// letter writes a name near its place, where it is clear of walls, ticks and
// other letters: as near as can be to the side it belongs on, smaller where
// there is no room for it.
func (d *drawn) letter(name string, at, side sheet.Pt, size float64, bold bool) {
	var best sheet.Text
	for low := math.Inf(1); size > 1.5 && math.IsInf(low, 1); size *= 0.85 {
		for turn := -180.0; turn < 180; turn += 15 {
			for far := 0.6 * size; far < 2.2*size+4; far += 0.5 {
				t := sheet.Text{Text: name, Size: size, Anchor: sheet.Middle, Bold: bold, Ink: sheet.Black}
				s, c := math.Sincos(turn * math.Pi / 180)
				t.At = sheet.Pt{X: at.X + far*(c*side.X-s*side.Y), Y: at.Y + far*(s*side.X+c*side.Y) + 0.36*size}
				if cost := far + math.Abs(turn)/25 + d.behind(at, t); cost < low && d.clear(t) {
					best, low = t, cost
				}
			}
		}
	}
	if best.Text == "" {
		return
	}
	box := best.Box()
	d.taken = append(d.taken, box[:])
	d.page.Put(best)
}

// behind is the cost of a text that stands behind a wall, seen from its place:
// it would be taken for something else's.
func (d *drawn) behind(at sheet.Pt, t sheet.Text) float64 {
	box := t.Box()
	mid := box[0].Add(box[2]).Times(0.5)
	v := mid.Sub(at)
	if l := math.Hypot(v.X, v.Y); l > 0 {
		at = at.Add(v.Times(math.Min(1, 0.8/l)))
	}
	if line := bar(at, mid, 0.1); slices.ContainsFunc(d.walls, func(o []sheet.Pt) bool { return sheet.Overlap(line, o) }) {
		return 12
	}
	return 0
}

// clear tells whether a text keeps off all that is drawn.
func (d *drawn) clear(t sheet.Text) bool {
	wide := t
	wide.Size *= 1.1
	box := wide.Box()
	return !slices.ContainsFunc(d.taken, func(o []sheet.Pt) bool { return sheet.Overlap(box[:], o) })
}
