package check

import (
	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// arc is the offsets, round the pattern of the rows once, at which the row
// against one edge is not under the limit: from, and on for so long.
type arc struct{ from, long tape.Length }

// arcs are those of one edge: of each row of the pattern one.
type arcs []arc

// startExists tells whether some start line keeps every closing row at the
// limit: whether the arcs of all closing edges have an offset in common. If
// they do, some arc begins at such an offset. An exemption for want of a
// start line stands only where there is none.
func (s *site) startExists(z *zone) bool {
	all := s.arcs(z)
	round := roundOf(widthsOf(z.Zone))
	for _, edge := range all {
		for _, a := range edge {
			in := true
			for _, other := range all {
				in = in && other.holds(a.from, round)
			}
			if in {
				return true
			}
		}
	}
	return false
}

// holds tells whether an offset lies in one of the arcs.
func (as arcs) holds(offset, round tape.Length) bool {
	for _, b := range as {
		if b.long >= 0 && onward(offset-b.from, round) <= b.long {
			return true
		}
	}
	return false
}

func onward(d, width tape.Length) tape.Length {
	if d %= width; d < 0 {
		d += width
	}
	return d
}

// arcs are those of the closing edges of a zone; edges of one bowed wall that
// follow each other close the rows as one.
func (s *site) arcs(z *zone) []arcs {
	type wall struct {
		name  string
		group int
		above bool
	}
	done := map[wall]bool{}
	var out []arcs
	for _, e := range z.at.Edges {
		w := wall{e.Name, e.Group, e.To.X > e.From.X}
		if !e.Beside || done[w] || !s.onGrid(z, e) {
			continue
		}
		done[w] = true
		one := func(i int) bool {
			g := z.at.Edges[i]
			return g.Beside && g.Name == w.name && g.Group == w.group && (g.To.X > g.From.X) == w.above
		}
		if a, ok := s.arcOf(z, e, w.above, one); ok {
			out = append(out, a)
		}
	}
	for _, o := range s.zones { // what is laid backwards shifts with what is laid ahead
		if o != z && !onGridOf(o, z) {
			continue
		}
		for _, e := range sidesOf(o.Outline) {
			if a, ok := s.lineArc(o, e); ok {
				out = append(out, a)
			}
		}
	}
	return out
}

// onGridOf tells whether a zone is a field with the row lines of z.
func onGridOf(o, z *zone) bool {
	return o.Kind == lay.Field && o.Dir == z.Dir && sameLines(o, z)
}

// lineArc is the arc that a zone line beside the rows leaves: along a frame the
// rows close as along an edge without play; where other rows end or begin a row
// line must lie. A line to rows of the same grid leaves them all.
func (s *site) lineArc(z *zone, e edge) (arcs, bool) {
	low, high := min(e.a.Y, e.b.Y), max(e.a.Y, e.b.Y)
	switch {
	case !e.long() || z.lineLength(e) == 0:
		return nil, false
	case !s.byFrame(z, e):
		return arcs{{e.a.Y, 0}}, e.flat() && s.otherGrid(z, e)
	case high-low >= z.Width-s.lim.RipFrom(z.Width) || (e.b.X-e.a.X).Abs() < s.lim.ShortestPiece.Value:
		return nil, false
	}
	return s.rowArcs(z, e.b.X > e.a.X, span{low, high}, span{low, high}), true
}

// span is how low and how high something lies.
type span struct{ low, high tape.Length }

// rowArcs are the arcs of an edge by the row that closes against it. A row of
// the floor above the edge reaches down to the top of reach, the highest that
// the least gap comes, and must cover down to the bottom of need, the lowest of
// the greatest gap; below it, the other way up. A row of a width whose upper
// line is at y is then at the limit from reach + limit on to need + width. The
// line that the pattern is counted from lies below that by the rows between.
func (s *site) rowArcs(z *zone, above bool, reach, need span) arcs {
	var out arcs
	var before tape.Length // the rows of the pattern under this one
	for _, w := range widthsOf(z.Zone) {
		limit := s.lim.RipFrom(w)
		a := arc{reach.high + limit - before - w, need.low + w - reach.high - limit}
		if !above {
			a = arc{need.high - w - before, reach.low - limit - need.high + w}
		}
		if a.long >= 0 {
			out = append(out, a)
		}
		before += w
	}
	return out
}

// byFrame tells whether a frame lies on the other side of a zone line.
func (s *site) byFrame(z *zone, e edge) bool {
	return s.across(z, e, func(o *zone) bool { return o.Kind == lay.Frame })
}

// otherGrid tells whether boards with row lines of their own, or none, lie on the
// other side of a zone line.
func (s *site) otherGrid(z *zone, e edge) bool {
	return s.across(z, e, func(o *zone) bool { return o != z && !onGridOf(o, z) })
}

// across tells whether a zone of some kind lies on the other side of a zone line.
func (s *site) across(z *zone, e edge, of func(*zone) bool) bool {
	for _, o := range s.zones {
		if !of(o) {
			continue
		}
		for _, f := range sidesOf(turn{o.Dir, z.Dir}.region(o.Outline)) {
			if max(e.beside(f, 4), f.beside(e, 4)) > 0 {
				return true
			}
		}
	}
	return false
}

// onGrid tells whether an edge of the floor closes rows of z or of a field that
// shares its row lines. On a floor of one grid every edge does.
func (s *site) onGrid(z *zone, e floor.AlignedEdge) bool {
	all, own := true, z.inZone(e)
	for _, o := range s.zones {
		same := onGridOf(o, z)
		all = all && same
		own = own || same && o.inZone(e)
	}
	return all || own
}

// inZone tells whether an edge of the floor lies along a zone's outline: a
// zone closes its rows at its own edges only.
func (z *zone) inZone(e floor.AlignedEdge) bool {
	if len(z.Outline) == 0 {
		return true
	}
	line := edge{e.From, e.To}
	for _, o := range sidesOf(z.Outline) {
		if max(line.beside(edge{o.b, o.a}, 4), o.beside(edge{e.To, e.From}, 4)) > 0 {
			return true
		}
	}
	return false
}

// arcOf are the arcs of the edges that one picks.
func (s *site) arcOf(z *zone, e floor.AlignedEdge, above bool, one func(int) bool) (arcs, bool) {
	low, high, whole := e.From.Y, e.From.Y, tape.Length(0)
	for i, g := range z.at.Edges {
		if one(i) {
			low, high = min(low, g.From.Y, g.To.Y), max(high, g.From.Y, g.To.Y)
			whole += (g.To.X - g.From.X).Abs()
		}
	}
	if whole < s.lim.ShortestPiece.Value || high-low-e.Range.Play() >= z.Width-s.lim.RipFrom(z.Width) {
		return nil, false
	}
	rLow, rHigh, okR := heights(z.at.Reach, z.at.ReachEdge, one)
	nLow, nHigh, okN := heights(z.at.Need, z.at.NeedEdge, one)
	if !okR {
		return nil, false
	}
	if !okN {
		nLow, nHigh = rLow+e.Range.Play(), rHigh-e.Range.Play()
	}
	return s.rowArcs(z, above, span{rLow, rHigh}, span{nLow, nHigh}), true
}

// heights are how low and how high the sides of a region that come from
// certain edges lie.
func heights(g plane.Region, ids [][]int, one func(int) bool) (low, high tape.Length, ok bool) {
	for r, ring := range g {
		for i, p := range ring {
			if r >= len(ids) || i >= len(ids[r]) || ids[r][i] < 0 || !one(ids[r][i]) {
				continue
			}
			q := ring[(i+1)%len(ring)]
			if !ok {
				low, high, ok = p.Y, p.Y, true
			}
			low, high = min(low, p.Y, q.Y), max(high, p.Y, q.Y)
		}
	}
	return
}
