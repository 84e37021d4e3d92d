package sheet

import "math"

// Tile is a part of a sheet that goes on a smaller page: what of it lies in a window.
type Tile struct {
	Col, Row int // from the upper left, from 0
	From     Pt  // the window's upper left corner on the sheet
	W, H     float64
	Items    []Item // from the window's upper left corner
}

// Tiles cuts a sheet into windows w by h mm, each lapping over the next by lap, so
// that pages laid over one another make the sheet again. Windows with nothing on them
// are left out. A text stands on every tile that holds all of it; where none does it
// may run out of the window by half the lap, and else it is moved.
func Tiles(s Sheet, w, h, lap float64) []Tile {
	lo, hi, ok := reach(s.Items)
	if !ok {
		return nil
	}
	cols, rows := windows(hi.X-lo.X, w, lap), windows(hi.Y-lo.Y, h, lap)
	// What there is lies in the middle of the tiles.
	left := lo.X - (float64(cols)*(w-lap)+lap-(hi.X-lo.X))/2
	top := lo.Y - (float64(rows)*(h-lap)+lap-(hi.Y-lo.Y))/2
	var all []Tile
	for r := range rows {
		for c := range cols {
			all = append(all, Tile{Col: c, Row: r, From: Pt{left + float64(c)*(w-lap), top + float64(r)*(h-lap)}, W: w, H: h})
		}
	}
	var long []Text
	for _, it := range s.Items {
		if x, ok := it.(Text); ok {
			if !letter(all, x) {
				long = append(long, x)
			}
			continue
		}
		for i := range all {
			all[i].Items = append(all[i].Items, clipped(it, all[i])...)
		}
	}
	for _, x := range long { // when the others have their places
		squeeze(all, x, lap/2)
	}
	var out []Tile
	for _, t := range all {
		if len(t.Items) > 0 {
			out = append(out, t)
		}
	}
	return out
}

// windows is how many windows of w, lapping, cover a length.
func windows(l, w, lap float64) int { return max(1, int(math.Ceil((l-lap)/(w-lap)-1e-9))) }

// reach is the extent of all items.
func reach(items []Item) (lo, hi Pt, ok bool) {
	lo, hi = Pt{math.Inf(1), math.Inf(1)}, Pt{math.Inf(-1), math.Inf(-1)}
	take := func(ps ...Pt) {
		for _, p := range ps {
			lo.X, lo.Y, hi.X, hi.Y = math.Min(lo.X, p.X), math.Min(lo.Y, p.Y), math.Max(hi.X, p.X), math.Max(hi.Y, p.Y)
		}
	}
	for _, it := range items {
		switch it := it.(type) {
		case Polyline:
			take(it.Points...)
		case Polygon:
			for _, r := range it.Rings {
				take(r...)
			}
		case Text:
			b := it.Box()
			take(b[:]...)
		}
	}
	return lo, hi, lo.X <= hi.X
}

// clipped is what of a line or an area lies in a tile, from its corner.
func clipped(it Item, t Tile) []Item {
	at := Pt{-t.From.X, -t.From.Y}
	switch it := it.(type) {
	case Polyline:
		it.Points = movedAll(it.Points, at, 1)
		return lines(it, t.W, t.H)
	case Polygon:
		return polygons(moved(it, at, 1).(Polygon), t.W, t.H)
	}
	return nil
}

// letter writes a text on every tile that holds all of it, and tells whether any does.
func letter(all []Tile, x Text) (held bool) {
	for i := range all {
		if m, off := all[i].placed(x); off == (Pt{}) {
			all[i].Items, held = append(all[i].Items, m), true
		}
	}
	return held
}

// squeeze writes a text that no tile holds on the one that needs it moved the least,
// counted beyond what it may run out, and where it lies on no other; smaller where
// there is no such place.
func squeeze(all []Tile, x Text, out float64) {
	for _, size := range []float64{1, 0.85, 0.7} {
		y := x
		y.Size *= size
		if i, m := nearest(all, y, out, Tile.free); i >= 0 {
			all[i].Items = append(all[i].Items, m)
			return
		}
	}
	i, m := nearest(all, x, out, func(Tile, Text) bool { return true })
	all[i].Items = append(all[i].Items, m)
}

// nearest is the tile that a text has to move the least for, among those that take it
// there, and the text as it lies on it; -1: none does.
func nearest(all []Tile, x Text, out float64, takes func(Tile, Text) bool) (best int, at Text) {
	best = -1
	least := math.Inf(1)
	for i, t := range all {
		m, off := t.placed(x)
		m.At = m.At.Add(Pt{beyond(off.X, out), beyond(off.Y, out)})
		if d := math.Hypot(off.X, off.Y); d < least && takes(t, m) {
			best, least, at = i, d, m
		}
	}
	return
}

// free tells whether a text lies on no other of a tile.
func (t Tile) free(x Text) bool {
	a := x.Box()
	for _, it := range t.Items {
		if y, ok := it.(Text); ok {
			if b := y.Box(); Overlap(a[:], b[:]) {
				return false
			}
		}
	}
	return true
}

// placed is a text from a tile's corner, and how far it has to move to lie in the
// window.
func (t Tile) placed(x Text) (m Text, off Pt) {
	m = moved(x, Pt{-t.From.X, -t.From.Y}, 1).(Text)
	b := m.Box()
	lo, hi, _ := reach([]Item{Polyline{Points: b[:]}})
	return m, Pt{into(lo.X, hi.X, t.W), into(lo.Y, hi.Y, t.H)}
}

// into is how far a stretch has to move to lie between 0 and w; one that is longer
// than w begins at 0.
func into(lo, hi, w float64) float64 {
	switch {
	case lo < 0:
		return -lo
	case hi > w:
		return math.Max(w-hi, -lo)
	}
	return 0
}

// beyond is what is left of a move where so much of it need not be made.
func beyond(d, free float64) float64 {
	switch {
	case d > free:
		return d - free
	case d < -free:
		return d + free
	}
	return 0
}

// lines are the parts of a line in the window.
func lines(p Polyline, w, h float64) []Item {
	var out []Item
	var run []Pt
	end := func() {
		if len(run) > 1 {
			out = append(out, Polyline{Name: p.Name, Points: run, Pen: p.Pen})
		}
		run = nil
	}
	for i := 0; i+1 < len(p.Points); i++ {
		a, b, ok := segment(p.Points[i], p.Points[i+1], w, h)
		if !ok {
			end()
			continue
		}
		if len(run) == 0 || run[len(run)-1] != a {
			end()
			run = []Pt{a}
		}
		run = append(run, b)
	}
	end()
	return out
}

// segment is the part of a line from a to b in the window, after Liang and Barsky
// (from memory).
func segment(a, b Pt, w, h float64) (Pt, Pt, bool) {
	t0, t1 := 0.0, 1.0
	d := b.Sub(a)
	for _, e := range [4][2]float64{{-d.X, a.X}, {d.X, w - a.X}, {-d.Y, a.Y}, {d.Y, h - a.Y}} {
		p, q := e[0], e[1]
		switch {
		case p == 0 && q < 0:
			return a, b, false
		case p < 0:
			t0 = math.Max(t0, q/p)
		case p > 0:
			t1 = math.Min(t1, q/p)
		}
	}
	if t0 >= t1 {
		return a, b, false
	}
	from, to := a, b
	if t0 > 0 {
		from = a.Add(d.Times(t0))
	}
	if t1 < 1 {
		to = a.Add(d.Times(t1))
	}
	return from, to, true
}

// polygons are the part of an area in the window, and of its edge as lines of their
// own: along the window there is none.
func polygons(p Polygon, w, h float64) []Item {
	var out []Item
	whole := true
	var rings [][]Pt
	for _, r := range p.Rings {
		if c := ringIn(r, w, h); len(c) > 2 {
			rings = append(rings, c)
		}
		whole = whole && inWindow(r, w, h)
	}
	if whole {
		return []Item{p}
	}
	if len(rings) > 0 && p.Fill != None {
		out = append(out, Polygon{Name: p.Name, Rings: rings, Fill: p.Fill})
	}
	if p.Pen.Width > 0 && p.Pen.Ink != None {
		for _, r := range p.Rings {
			out = append(out, lines(Polyline{Points: append(append([]Pt{}, r...), r[0]), Pen: p.Pen}, w, h)...)
		}
	}
	return out
}

func inWindow(r []Pt, w, h float64) bool {
	for _, p := range r {
		if p.X < 0 || p.Y < 0 || p.X > w || p.Y > h {
			return false
		}
	}
	return true
}

// ringIn cuts a ring along the four sides of the window, one after the other
// (Sutherland and Hodgman, from memory); what runs along a side twice has no area.
func ringIn(r []Pt, w, h float64) []Pt {
	for _, side := range []func(Pt) float64{
		func(p Pt) float64 { return p.X }, func(p Pt) float64 { return w - p.X },
		func(p Pt) float64 { return p.Y }, func(p Pt) float64 { return h - p.Y },
	} {
		var out []Pt
		for i, a := range r {
			b := r[(i+1)%len(r)]
			da, db := side(a), side(b)
			if da >= 0 {
				out = append(out, a)
			}
			if (da >= 0) != (db >= 0) {
				out = append(out, a.Add(b.Sub(a).Times(da/(da-db))))
			}
		}
		r = out
	}
	return r
}
