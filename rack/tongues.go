package rack

import (
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// sideTongues takes the side tongue off where nothing mates with it and it
// does not fit inside the least gap: counted from its tip.
func (b *builder) sideTongues(a Ask) {
	grooves := b.grooves()
	for i := range b.lay.Pieces {
		p := &b.lay.Pieces[i]
		front, at := leading(p, b.lay.Runs[p.Run])
		if *front != lay.Tongue {
			continue
		}
		all := true // the whole edge is free and off
		for _, s := range lineSpans(p.Outline, at) {
			free := without(s, grooves[line{at, p.Turned, b.fields[p.Run]}])
			all = all && len(free) == 1 && free[0] == s
			for _, f := range free {
				off := b.trim(a, p, f, at)
				all = all && off
			}
		}
		if all {
			*front, p.Off = lay.TongueOff, nil
		}
	}
}

// leading is the edge of a piece that tongues lead, and the row line it lies on.
func leading(p *lay.Piece, r lay.Run) (*lay.Profile, tape.Length) {
	if p.Turned {
		return &p.Behind, r.Low
	}
	return &p.Ahead, r.High
}

// following is the edge of a piece that its groove follows with.
func following(p *lay.Piece, r lay.Run) (*lay.Profile, tape.Length) {
	if p.Turned {
		return &p.Ahead, r.High
	}
	return &p.Behind, r.Low
}

// slipTongues glues a spline into the first of two grooves that meet.
func (b *builder) slipTongues() {
	grooves := b.grooves()
	for i := range b.lay.Pieces {
		p := &b.lay.Pieces[i]
		edge, at := following(p, b.lay.Runs[p.Run])
		if *edge != lay.Groove {
			continue
		}
		for _, s := range lineSpans(p.Outline, at) {
			for _, g := range grooves[line{at, !p.Turned, b.fields[p.Run]}] {
				if m := s.Meet(g.Span); !m.Empty() && b.lay.Runs[p.Run].Order < g.order {
					p.Slip = append(p.Slip, m)
				}
			}
		}
	}
}

// endTongues takes the end tongue off the last piece of a run where its tip
// does not fit beside a slanted edge.
func (b *builder) endTongues(a Ask) {
	for _, r := range b.lay.Runs {
		if len(r.Pieces) == 0 || b.tongue == 0 {
			continue
		}
		p := &b.lay.Pieces[r.Pieces[len(r.Pieces)-1]]
		_, hi := p.Outline.Box()
		at, step, end := hi.X, b.tongue, &p.Right
		if b.signOf(b.lay.Zones[r.Zone].Ahead) < 0 {
			p = &b.lay.Pieces[r.Pieces[0]]
			lo, _ := p.Outline.Box()
			at, step, end = lo.X, -b.tongue, &p.Left
		}
		if *end != lay.Tongue {
			continue
		}
		for _, s := range (plane.Region{p.Outline}).Section(at, step > 0) {
			if tip := plane.Rect(plane.P(min(at, at+step), s.From), plane.P(max(at, at+step), s.To)); !fits(a.Fields[b.fields[p.Run]].Part.Reach, tip) {
				*end = lay.TongueOff
			}
		}
	}
}

// trim takes the tongue off along a stretch unless it fits; it tells whether
// it did.
func (b *builder) trim(a Ask, p *lay.Piece, s plane.Span, at tape.Length) bool {
	tip := plane.Rect(plane.P(s.From, at), plane.P(s.To, at+a.Boards.SideTongue))
	if p.Turned {
		tip = plane.Rect(plane.P(s.From, at-a.Boards.SideTongue), plane.P(s.To, at))
	}
	if fits(a.Fields[b.fields[p.Run]].Part.Reach, tip) {
		return false
	}
	p.Off = append(p.Off, s)
	return true
}

// fits tells whether a rectangle lies in the region.
func fits(g plane.Region, r plane.Ring) bool {
	lo, hi := r.Box()
	in := g.Strip(lo.Y, hi.Y).RightOf(lo.X).LeftOf(hi.X)
	return in.Area2() >= r.Area2()
}

// line is a row line as boards of one sense offer their grooves to it.
type line struct {
	at     tape.Length
	turned bool
	field  int
}

// offered is a stretch of groove, with the place of its run in the order.
type offered struct {
	plane.Span
	order int
}

// grooves are the stretches of each row line that a laid row beyond offers its
// groove to.
func (b *builder) grooves() map[line][]offered {
	out := map[line][]offered{}
	for i := range b.lay.Pieces {
		p := &b.lay.Pieces[i]
		r := b.lay.Runs[p.Run]
		_, at := following(p, r)
		k := line{at, p.Turned, b.fields[p.Run]}
		for _, s := range lineSpans(p.Outline, at) {
			out[k] = append(out[k], offered{s, r.Order})
		}
	}
	return out
}

// lineSpans are the stretches of a ring that lie on the line Y = y.
func lineSpans(r plane.Ring, y tape.Length) []plane.Span {
	var out []plane.Span
	for i, p := range r {
		q := r[(i+1)%len(r)]
		if p.Y == y && q.Y == y && p.X != q.X {
			out = append(out, plane.Span{From: min(p.X, q.X), To: max(p.X, q.X)})
		}
	}
	return out
}

// without is what is left of s outside all of ts.
func without(s plane.Span, ts []offered) []plane.Span {
	left := []plane.Span{s}
	for _, t := range ts {
		var next []plane.Span
		for _, l := range left {
			next = append(next, l.Cut(t.Span)...)
		}
		left = next
	}
	return left
}
