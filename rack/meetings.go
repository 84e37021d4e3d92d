package rack

import (
	"slices"

	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/row"
	"strake/tape"
)

// meetings gives the row ends that come to the boards of another field what
// mates there. Where those offer a groove a factory tongue goes in, and any
// other end is grooved on the job for a spline; where they offer a tongue a
// factory groove takes it, and a cut end is grooved on the job. Side tongues
// that no end takes are off. Such an end names no edge of the floor.
func (b *builder) meetings() {
	taken := map[int][]plane.Span{} // of each piece's leading edge, by row ends of other fields
	for i := range b.lay.Runs {
		r := &b.lay.Runs[i]
		f := b.ask.Fields[b.fields[i]]
		for _, e := range []struct {
			at   *lay.EndRange
			left bool
		}{{&r.LeftEnd, true}, {&r.RightEnd, false}} {
			if !isSeam(f, e.at.Edge) {
				continue
			}
			e.at.Edge, e.at.InPlace = "", false
			if len(r.Pieces) == 0 {
				continue
			}
			p := &b.lay.Pieces[r.Pieces[len(r.Pieces)-1]]
			end := &p.Right
			if e.left {
				p = &b.lay.Pieces[r.Pieces[0]]
				end = &p.Left
			}
			if tongue, met := b.tongueBeyond(i, f, *e.at, p, e.left, taken); met {
				*end = mating(*end, tongue)
			}
		}
	}
	b.keptTongues(taken)
}

// tongueBeyond tells whether what an end comes to has a tongue, or is to be
// taken so. Where two boards of a frame meet in a mitre one gets the spline and
// the other is grooved; the square end of a frame board is grooved. An end that
// stops short of the seam, where nothing need be covered, meets none.
func (b *builder) tongueBeyond(run int, f row.Field, at lay.EndRange, p *lay.Piece, left bool, taken map[int][]plane.Span) (tongue, met bool) {
	if f.Kind == lay.Frame && at.Mitred {
		return !left, true
	}
	tongue, met = b.beyond(run, p, left, taken)
	lo, hi := p.Outline.Box()
	end := hi.X
	if left {
		end = lo.X
	}
	return tongue || !met && f.Kind == lay.Frame, met || f.Kind == lay.Frame || (end-at.Reach).Abs() <= tape.Tick
}

// isSeam tells whether an edge of a field is one where other boards lie.
func isSeam(f row.Field, edge string) bool {
	return slices.ContainsFunc(f.Part.Edges, func(e floor.AlignedEdge) bool { return e.Name == edge && e.Kind == floor.Meeting })
}

// mating is what an end becomes that meets a groove, or a tongue.
func mating(end lay.Profile, tongue bool) lay.Profile {
	switch {
	case tongue && end == lay.Cut:
		return lay.Groove
	case tongue:
		return end
	case end == lay.Tongue || end == lay.TongueOff:
		return lay.Tongue
	}
	return lay.Spline
}

// rounding is how far the corners of a mitre of 45 degrees may put it off.
const rounding = 4 * tape.Tick

// nearby is how far an end may lie off a line of other boards by rounding.
const nearby = 16 * tape.Tick

// atSeam is how far the end of a row may lie off the boards beyond a seam, 8
// micrometres: it is square where a slanted seam crosses so little of its row that
// no mitre is asked for.
const atSeam = 64 * tape.Tick

// beyond tells whether the boards that the end of a piece comes to offer a
// tongue, and notes along which stretch of theirs it lies.
func (b *builder) beyond(run int, p *lay.Piece, left bool, taken map[int][]plane.Span) (tongue, met bool) {
	from, to := endCorners(p.Outline, left)
	own := b.lay.Zones[b.lay.Runs[run].Zone]
	d, near := own.Dir, atSeam
	if own.Kind == lay.Frame {
		near = nearby
	}
	u, v := d.FromRow(from), d.FromRow(to)
	for k, o := range b.lay.Runs {
		if b.fields[k] == b.fields[run] {
			continue
		}
		z := b.lay.Zones[o.Zone]
		x, y := z.Dir.ToRow(u), z.Dir.ToRow(v)
		lead, follow := o.High, o.Low
		if z.Ahead < 0 {
			lead, follow = follow, lead
		}
		on := plane.Span{From: min(x.X, y.X), To: max(x.X, y.X)}
		for _, id := range o.Pieces {
			lo, hi := b.lay.Pieces[id].Outline.Box()
			m := on.Meet(plane.Span{From: lo.X, To: hi.X})
			switch {
			case m.Empty():
			case (x.Y-lead).Abs() <= near && (y.Y-lead).Abs() <= near:
				tongue, met = true, true
				taken[id] = append(taken[id], m)
			case (x.Y-follow).Abs() <= near && (y.Y-follow).Abs() <= near:
				return false, true
			}
		}
	}
	return tongue, met
}

// endCorners are the two corners of a piece's outermost end side.
func endCorners(r plane.Ring, left bool) (from, to plane.Pt) {
	sign := tape.Length(1)
	if left {
		sign = -1
	}
	best := -tape.Longest
	for i, p := range r {
		q := r[(i+1)%len(r)]
		if across := (q.Y - p.Y) * sign; across <= 0 || across+rounding < (q.X-p.X).Abs() { // the piece lies on its left
			continue
		}
		if far := max(p.X*sign, q.X*sign); far > best {
			best, from, to = far, p, q
		}
	}
	return from, to
}

// keptTongues keeps side tongues where row ends of another field take them,
// and takes them off elsewhere along the same edge.
func (b *builder) keptTongues(taken map[int][]plane.Span) {
	for i := range b.lay.Pieces {
		p := &b.lay.Pieces[i]
		if len(taken[i]) == 0 {
			continue
		}
		front, at := leading(p, b.lay.Runs[p.Run])
		if *front != lay.Tongue && *front != lay.TongueOff {
			continue
		}
		var spans []offered
		for _, s := range taken[i] {
			spans = append(spans, offered{Span: s})
		}
		if *front == lay.Tongue { // off in part: what is not off mates with rows of its own
			for _, s := range lineSpans(p.Outline, at) {
				for _, on := range cutSpans(s, p.Off) {
					spans = append(spans, offered{Span: on})
				}
			}
		}
		*front, p.Off = lay.Tongue, nil
		for _, s := range lineSpans(p.Outline, at) {
			p.Off = append(p.Off, without(s, spans)...)
		}
	}
}

// cutSpans is s less some stretches.
func cutSpans(s plane.Span, less []plane.Span) []plane.Span {
	var out []offered
	for _, t := range less {
		out = append(out, offered{Span: t})
	}
	return without(s, out)
}
