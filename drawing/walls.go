package drawing

import (
	"math"

	"strake/floor"
	"strake/plane"
	"strake/sheet"
	"strake/tape"
	"strake/words"
)

// span is the distance between two places, rounded to a tick.
func span(a, b plane.Pt) tape.Length {
	return tape.Length(math.Round(math.Hypot(float64(b.X-a.X), float64(b.Y-a.Y))))
}

func edgeLength(e floor.AlignedEdge) tape.Length { return span(e.From, e.To) }

// nameCorners sets each corner's letter outside the room, nearer to that corner
// than to any other, and tells whether each found room for it.
func (d *draw) nameCorners() (named bool) {
	named = true
	var all []sheet.Pt
	for _, r := range d.p.Floor.Rooms {
		all = append(all, d.ring(toRow(d.p, r.Corners))...)
	}
	for _, r := range d.p.Floor.Rooms {
		ring := d.ring(toRow(d.p, r.Corners))
		for i := range ring {
			t, ok := d.labels.first(cornerTexts(r.Names[i], ring, i), func(t sheet.Text) bool {
				return nearestTo(middle(t), all) == ring[i] && !d.overWall(t) && !d.inOther(r, t)
			})
			if ok {
				d.onWhite(t)
			}
			named = named && ok
		}
	}
	return named
}

// inOther tells whether a text lies in another room than r.
func (d *draw) inOther(r floor.RoomOutline, t sheet.Text) bool {
	for _, o := range d.p.Floor.Rooms {
		if o.Name != r.Name && inside([][]sheet.Pt{d.ring(toRow(d.p, o.Corners))}, middle(t)) {
			return true
		}
	}
	return false
}

// cornerTexts are the places for the letter of a ring's corner: off it between
// its two walls, or square to either, farther and farther out, then smaller,
// then inside.
func cornerTexts(name string, ring []sheet.Pt, i int) []sheet.Text {
	n, c := len(ring), ring[i]
	a, b := outward(ring[(i+n-1)%n], c), outward(c, ring[(i+1)%n])
	away := unit(a.Add(b))
	var out []sheet.Text
	put := func(size float64, offs []float64, dirs ...sheet.Pt) {
		for _, off := range offs {
			for _, dir := range dirs {
				at := c.Add(dir.Times(off))
				at.Y += 0.36 * size
				out = append(out, sheet.Text{Text: name, At: at, Size: size, Anchor: sheet.Middle, Bold: true})
			}
		}
	}
	put(large, []float64{4.5, 6.5, 9, 12}, away, a, b)
	put(middling, []float64{3, 4}, away, a, b)
	put(middling, []float64{-4, -5, -7, -9}, away)
	along, back := unit(ring[(i+1)%n].Sub(c)), unit(ring[(i+n-1)%n].Sub(c))
	side := []sheet.Pt{away, unit(away.Sub(along.Times(0.8))), unit(away.Sub(back.Times(0.8)))}
	put(small, []float64{2.4, 3, 4, 5, 6.5, -2.6, -3.2, -4, -5, -6, -7, -8, -9, -10, -12}, side...)
	put(least, []float64{1.9, 2.4, 3, -2.4, -3, -4, -5, -6, -7, -8, -9}, side...)
	return out
}

// overWall tells whether a text would cover part of a wall or an edge.
func (d *draw) overWall(t sheet.Text) bool {
	for _, e := range d.p.Aligned.Edges {
		if sheet.Overlap(strip(d.at(e.From), d.at(e.To), 0.3), grown(t, 0.3)) {
			return true
		}
	}
	return false
}

func middle(t sheet.Text) sheet.Pt {
	b := t.Box()
	return between(b[0], b[2], 0.5)
}

func nearestTo(p sheet.Pt, all []sheet.Pt) sheet.Pt {
	best := all[0]
	for _, q := range all[1:] {
		if length(q.Sub(p)) < length(best.Sub(p)) {
			best = q
		}
	}
	return best
}

// dimension gives every wall its length, with what the boards keep off it.
func (d *draw) dimension() {
	for _, w := range words.Walls(d.p) {
		d.dimensionWall(w)
	}
}

// strokeSize is half the length of the stroke at the end of a dimension line, mm.
const strokeSize = 1.3

// levels are how far from a wall its dimension line may lie, mm.
var levels = []float64{9, 12, 15, 18, 21, 24, 27, 30, 33}

func (d *draw) dimensionWall(w words.RoomWall) {
	a, b := d.at(w.From), d.at(w.To)
	long := w.Name + "  " + d.say.Of(span(w.From, w.To))
	gap := d.under(w)
	for _, off := range levels {
		if d.dimensionAt(a, b, off, long, gap) {
			return
		}
	}
	for _, off := range levels {
		if gap != "" && d.dimensionAt(a, b, off, long, "") {
			return
		}
	}
	if d.tiles {
		d.apart(between(a, b, 0.5), "", "wall "+long)
		return
	}
	d.dimensionInside(a, b, long)
}

// under is what stands under a wall's length: how boards meet it, or in a drawing of
// what was measured the doubt of the length.
func (d *draw) under(w words.RoomWall) string {
	if d.doubt != nil {
		return d.doubt(w)
	}
	return d.gapAt(w.Name)
}

// gapAt is how boards meet a wall, the first way where there are more.
func (d *draw) gapAt(wall string) string {
	for _, k := range d.keys {
		if k.no == 0 && words.Wall(k.name) == wall {
			return k.meets
		}
	}
	return ""
}

// dimensionAt draws a dimension line off the floor, its figure above it and
// the gap below, when all three are free.
func (d *draw) dimensionAt(a, b sheet.Pt, off float64, long, gap string) bool {
	out, turn := outward(a, b), reading(a, b)
	p, q := a.Add(out.Times(off)), b.Add(out.Times(off))
	mid, head := between(p, q, 0.5), up(turn)
	t := sheet.Text{Text: long, At: mid.Add(head.Times(1)), Size: middling, Anchor: sheet.Middle, Turn: turn}
	if t.Width() > length(q.Sub(p))-4 { // over the strokes at its ends
		t.At = mid.Add(head.Times(1.9))
	}
	g := sheet.Text{Text: gap, At: mid.Sub(head.Times(0.9 + 0.8*small)), Size: small, Anchor: sheet.Middle, Turn: turn}
	line, words := strip(p, q, 0.8), []sheet.Text{t}
	if gap != "" {
		words = append(words, g)
	}
	if !d.labels.freeLine(line) || !clearOf(d.bare, line) {
		return false
	}
	for _, e := range []sheet.Pt{p, q} {
		if d.labels.taken.over(disc(e, strokeSize+0.2)) { // a stroke may stand on a wall in line with it
			return false
		}
	}
	for _, t := range words {
		if o := outline(t); !d.labels.free(o) || !clearOf(d.bare, o) {
			return false
		}
	}
	for _, t := range words {
		d.put(t)
	}
	d.labels.ruled.add(line)
	d.dimensionLine(a, b, p, q, out)
	return true
}

// strip is the narrow rectangle along a line, less a little at its ends, which
// may lie in line with a wall.
func strip(p, q sheet.Pt, half float64) []sheet.Pt {
	u := unit(q.Sub(p)).Times(min(half, length(q.Sub(p))/4))
	p, q = p.Add(u), q.Sub(u)
	n := outward(p, q).Times(half)
	return []sheet.Pt{p.Sub(n), q.Sub(n), q.Add(n), p.Add(n)}
}

// dimensionLine draws the line, its extension lines and an oblique stroke at
// each end.
func (d *draw) dimensionLine(a, b, p, q, out sheet.Pt) {
	line := func(from, to sheet.Pt, pen sheet.Pen) {
		d.lines = append(d.lines, sheet.Polyline{Points: []sheet.Pt{from, to}, Pen: pen})
	}
	line(p, q, thin)
	stroke := unit(unit(q.Sub(p)).Add(out)).Times(strokeSize)
	for _, e := range [][2]sheet.Pt{{a, p}, {b, q}} {
		line(e[0].Add(out.Times(1.5)), e[1].Add(out.Times(1.5)), hair)
		line(e[1].Sub(stroke), e[1].Add(stroke), sheet.Pen{Width: 0.4, Ink: sheet.Black})
		d.labels.line(e[1].Sub(stroke), e[1].Add(stroke), 0.4)
	}
}

// dimensionInside writes the figure along the wall inside the room, where
// another room leaves no place outside.
func (d *draw) dimensionInside(a, b sheet.Pt, long string) {
	out, turn := outward(a, b), reading(a, b)
	var texts []sheet.Text
	for _, size := range []float64{small, tiny, least} {
		for _, off := range []float64{-4, -6, -8, -10, -12, -15, -18, -22} {
			for _, part := range []float64{0.25, 0.75, 0.5, 0.15, 0.35, 0.65, 0.85, 0.1, 0.9} {
				at := between(a, b, part).Add(out.Times(off)).Sub(up(turn).Times(0.36 * size))
				texts = append(texts, sheet.Text{Text: long, At: at, Size: size, Anchor: sheet.Middle, Turn: turn})
			}
		}
	}
	if t, ok := d.labels.first(texts, nil); ok {
		d.onWhite(t)
	}
}
