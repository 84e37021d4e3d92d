package rack

import (
	"slices"

	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// besideFrames joins the rows to the boards of frames along every side but
// their ends: the frame lies there first, its groove to the rows. A factory
// groove meets it with a spline, a sawn side is grooved on the job for one; a
// factory tongue goes in, and its row is dropped in.
func (b *builder) besideFrames() {
	for i := range b.lay.Pieces {
		if b.lay.Zones[b.lay.Runs[b.lay.Pieces[i].Run].Zone].Kind == lay.Field {
			b.besideFrame(&b.lay.Pieces[i])
		}
	}
	for i := range b.lay.Pieces {
		b.lay.Pieces[i].Slip = joinedSpans(b.lay.Pieces[i].Slip)
	}
}

// joinedSpans are stretches from left to right, those that touch as one.
func joinedSpans(ss []plane.Span) []plane.Span {
	slices.SortFunc(ss, func(a, b plane.Span) int { return int(a.From - b.From) })
	var out []plane.Span
	for _, s := range ss {
		if n := len(out); n > 0 && s.From <= out[n-1].To+nearby {
			out[n-1].To = max(out[n-1].To, s.To)
			continue
		}
		out = append(out, s)
	}
	return out
}

func (b *builder) besideFrame(p *lay.Piece) {
	d := b.lay.Zones[b.lay.Runs[p.Run].Zone].Dir
	for k, u := range p.Outline {
		v := p.Outline[(k+1)%len(p.Outline)]
		for _, f := range b.framesAlong(d, u, v) {
			b.joinFrame(p, u, v, f)
		}
	}
}

// along is a stretch of a frame piece's outer edge, or of its end, that a side
// lies against.
type along struct {
	piece int
	atEnd bool
	on    plane.Span // X in the frame's own frame
	from  plane.Pt   // the same stretch in the frame of the side
	to    plane.Pt
}

// framesAlong are the frame pieces that the side from u to v lies against.
func (b *builder) framesAlong(d plane.Dir, u, v plane.Pt) []along {
	var out []along
	for _, r := range b.lay.Runs {
		z := b.lay.Zones[r.Zone]
		if z.Kind != lay.Frame {
			continue
		}
		x, y := z.Dir.ToRow(d.FromRow(u)), z.Dir.ToRow(d.FromRow(v))
		out = append(out, b.frameEnds(r, z.Dir, d, u, v, x, y)...)
		if (x.Y-r.Low).Abs() > nearby || (y.Y-r.Low).Abs() > nearby {
			continue
		}
		for _, id := range r.Pieces {
			for _, s := range lineSpans(b.lay.Pieces[id].Outline, r.Low) {
				on := s.Meet(plane.Span{From: min(x.X, y.X), To: max(x.X, y.X)})
				if on.Len() <= nearby {
					continue
				}
				back := func(at tape.Length) plane.Pt { return onSide(u, v, d.ToRow(z.Dir.FromRow(plane.P(at, r.Low)))) }
				out = append(out, along{id, false, on, back(on.From), back(on.To)})
			}
		}
	}
	return out
}

// frameEnds are the square ends of a frame board that a side, x to y in the
// frame's own frame, lies against.
func (b *builder) frameEnds(r lay.Run, own, d plane.Dir, u, v, x, y plane.Pt) []along {
	var out []along
	for _, left := range []bool{true, false} {
		if len(r.Pieces) == 0 {
			continue
		}
		id := r.Pieces[len(r.Pieces)-1]
		if left {
			id = r.Pieces[0]
		}
		p, q := endCorners(b.lay.Pieces[id].Outline, left)
		on := plane.Span{From: min(p.Y, q.Y), To: max(p.Y, q.Y)}.Meet(plane.Span{From: min(x.Y, y.Y), To: max(x.Y, y.Y)})
		if p.X != q.X || (x.X-p.X).Abs() > nearby || (y.X-p.X).Abs() > nearby || on.Len() <= nearby {
			continue
		}
		back := func(at tape.Length) plane.Pt { return onSide(u, v, d.ToRow(own.FromRow(plane.P(p.X, at)))) }
		out = append(out, along{id, true, on, back(on.From), back(on.To)})
	}
	return out
}

// onSide puts a place that was turned and back exactly on a side that runs
// along or across.
func onSide(u, v, p plane.Pt) plane.Pt {
	if u.X == v.X {
		p.X = u.X
	}
	if u.Y == v.Y {
		p.Y = u.Y
	}
	return p
}

// joinFrame joins the side from u to v of a piece to a stretch of a frame.
func (b *builder) joinFrame(p *lay.Piece, u, v plane.Pt, f along) {
	r := b.lay.Runs[p.Run]
	lead, front := leading(p, r)
	_, back := following(p, r)
	flat := plane.Span{From: min(f.from.X, f.to.X), To: max(f.from.X, f.to.X)}
	long := u.Y == v.Y
	switch {
	case long && u.Y == front && (*lead == lay.Tongue || *lead == lay.TongueOff):
		p.How = lay.Dropped
		keepAlong(p, lead, front, flat)
	case long && u.Y == back && f.atEnd:
		p.Slip = append(p.Slip, flat)
	case long && u.Y == back:
		b.lay.Pieces[f.piece].Slip = append(b.lay.Pieces[f.piece].Slip, f.on)
	case !long && b.isEnd(p, u, v) && *endAt(p, v.Y < u.Y) != lay.Cut:
		return // meetings has seen to it
	case f.atEnd: // the end of a frame board is grooved
		p.Routed = append(p.Routed, lay.Routed{From: f.from, To: f.to, As: lay.Spline})
	default:
		b.lay.Pieces[f.piece].Slip = append(b.lay.Pieces[f.piece].Slip, f.on)
		p.Routed = append(p.Routed, lay.Routed{From: f.from, To: f.to, As: lay.Groove})
	}
}

// endAt is the left or the right end of a piece.
func endAt(p *lay.Piece, left bool) *lay.Profile {
	if left {
		return &p.Left
	}
	return &p.Right
}

// isEnd tells whether a side is the outermost at one end of its piece.
func (b *builder) isEnd(p *lay.Piece, u, v plane.Pt) bool {
	if (v.Y-u.Y).Abs()+rounding < (v.X - u.X).Abs() {
		return false
	}
	lo, hi := p.Outline.Box()
	return min(u.X, v.X) == lo.X && v.Y < u.Y || max(u.X, v.X) == hi.X && v.Y > u.Y
}

// keepAlong keeps the leading tongue of a piece along a stretch of its edge.
func keepAlong(p *lay.Piece, lead *lay.Profile, at tape.Length, on plane.Span) {
	if *lead == lay.TongueOff {
		*lead = lay.Tongue
		p.Off = lineSpans(p.Outline, at)
	}
	var off []plane.Span
	for _, s := range p.Off {
		off = append(off, s.Cut(on)...)
	}
	p.Off = off
}
