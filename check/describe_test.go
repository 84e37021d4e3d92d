package check

import (
	"slices"

	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// describe writes what the runs of a good lay say besides their pieces: the
// outline round these, ends that may lie where they lie, and face nails.
func (b *bench) describe() {
	for i := range b.lay.Runs {
		n := &b.lay.Runs[i]
		if len(n.Pieces) == 0 {
			continue
		}
		n.Outline = b.aroundPieces(n.Pieces)
		x := boxOf(n.Outline).x()
		n.LeftEnd, n.RightEnd = b.endAt(n, x.From, leftEnd), b.endAt(n, x.To, rightEnd)
		n.Nailing = []lay.Stretch{{Along: x, By: lay.FaceNail}}
	}
}

// aroundPieces goes below the pieces of a run from left to right, and back
// above them.
func (b *bench) aroundPieces(ids []int) plane.Ring {
	var low, high plane.Ring
	for _, id := range ids {
		r := b.lay.Pieces[id].Outline
		x := boxOf(r).x()
		from := cornerAt(r, x.From)
		to := cornerAt(r, x.To)
		for k := from; k != to; k = (k + 1) % len(r) {
			low = append(low, r[k])
		}
		low = append(low, r[to])
		var top plane.Ring
		for k := (to + 1) % len(r); k != from; k = (k + 1) % len(r) {
			top = append(top, r[k])
		}
		high = append(top, high...)
	}
	return slices.Compact(append(low, high...))
}

// cornerAt is the lowest corner of r at x.
func cornerAt(r plane.Ring, x tape.Length) int {
	at := -1
	for i, p := range r {
		if p.X == x && (at < 0 || p.Y < r[at].Y) {
			at = i
		}
	}
	return at
}

// endAt says that a run ends at x and nowhere else, and at which edge.
func (b *bench) endAt(n *lay.Run, x tape.Length, on side) lay.EndRange {
	_, slanted := endSpans(n.Outline, on)
	out := lay.EndRange{Reach: x, Need: x, Mitred: slanted}
	in := tape.Length(1)
	if on == rightEnd {
		in = -1
	}
	z := &zone{at: b.at[n.Zone]}
	e := runEnd{out, &run{Run: *n, zone: z}, on, in, x}
	for _, f := range z.at.Edges {
		if e.meets(f) {
			out.Edge, out.InPlace = f.Name, f.InPlace
		}
	}
	return out
}

// follow moves the ends of runs to where their pieces now end.
func (b *bench) follow() {
	for i := range b.lay.Runs {
		n := &b.lay.Runs[i]
		own := slices.DeleteFunc(slices.Clone(n.Pieces), func(id int) bool {
			return id < 0 || id >= len(b.lay.Pieces) || len(b.lay.Pieces[id].Outline) == 0
		})
		if len(n.Outline) == 0 || len(own) == 0 {
			continue
		}
		now := boxOf(b.lay.Pieces[own[0]].Outline).x()
		now.To = boxOf(b.lay.Pieces[own[len(own)-1]].Outline).hi.X
		b.stretchRun(n, now)
	}
}

// stretchRun moves both ends of a run; one that moved meets no edge in
// particular.
func (b *bench) stretchRun(n *lay.Run, now plane.Span) {
	was := boxOf(n.Outline).x()
	if now == was || now.Empty() {
		return
	}
	n.Outline = slices.Clone(n.Outline)
	for i, p := range n.Outline {
		switch p.X {
		case was.From:
			n.Outline[i].X = now.From
		case was.To:
			n.Outline[i].X = now.To
		}
	}
	if now.From != was.From {
		n.LeftEnd = lay.EndRange{Reach: now.From, Need: now.From, Mitred: n.LeftEnd.Mitred}
	}
	if now.To != was.To {
		n.RightEnd = lay.EndRange{Reach: now.To, Need: now.To, Mitred: n.RightEnd.Mitred}
	}
	n.Nailing = []lay.Stretch{{Along: now, By: lay.FaceNail}}
}

// told makes a slip one in what runs say of themselves.
func told(hurt func(*bench)) func(*bench) {
	return func(b *bench) {
		b.told = true
		hurt(b)
	}
}

// nailed says that a run is face-nailed up to a place in inches, and from
// another on to a third in some way.
func (b *bench) nailed(run int, by lay.Fasten, until, from, to float64) {
	n := &b.lay.Runs[run]
	n.Nailing = []lay.Stretch{{Along: plane.Span{To: in(until)}, By: lay.FaceNail}, {Along: plane.Span{From: in(from), To: in(to)}, By: by}}
	if until == 0 {
		n.Nailing = n.Nailing[1:]
	}
}

// tileRoom is the plain room with tile where rows end at the right: its
// joint is 1/16 in at the most.
func tileRoom() *bench {
	b := plainRoom()
	a := b.at[0]
	a.Edges[1].Range, a.Edges[1].Kind, a.Edges[1].InPlace = floor.Range{Greatest: in(0.0625)}, floor.Flush, true
	a.Edges[1].From.X, a.Edges[1].To.X = in(100), in(100)
	a.Bare = one(rc(-0.75, -0.75, 100, 12.25))
	b.at[0] = a
	b.describe()
	return b
}

// oldRoom is the tile room with an old floor instead, whose row ends carry
// grooves: splines go into them.
func oldRoom() *bench {
	b := tileRoom()
	a := b.at[0]
	a.Edges[1].Range, a.Edges[1].Old = floor.Range{}, room.OffersGroove
	b.at[0] = a
	for _, n := range b.lay.Runs {
		b.lay.Pieces[n.Pieces[len(n.Pieces)-1]].Right = lay.Spline
	}
	b.describe()
	return b
}

// sandwich is one row of three boards whose outer two are named as one run.
func sandwich() *bench {
	b := newBench()
	z := b.zone(lay.Zone{Kind: lay.Field, Width: in(5), Ahead: 1}, around(plane.Dir{X: 1}, rc(0, 0, 90, 5.25)))
	r, q := b.run(z, 1, 1, 0), b.run(z, 1, 2, 0)
	b.whole(r, 30, 0)
	b.whole(q, 30, 30)
	b.cut(r, 40, 30, 60)
	return b.count()
}
