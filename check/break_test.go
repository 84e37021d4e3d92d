package check

import (
	"slices"
	"strings"
	"testing"

	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/room"
	"strake/stock"
	"strake/tape"
)

// slip is one way to break a good lay and the finding it must give, alone.
type slip struct {
	name  string
	room  func() *bench
	hurt  func(b *bench)
	rule  string
	where string // part of the place it must name
	says  string // part of what it must have measured
	times int    // how many findings of the rule; 0 means one
}

// marked1 marks board 2, in the lay and in the tally.
func marked1(m stock.Marks) func(*bench) {
	return func(b *bench) { b.lay.Boards[1].Marks, b.stock.Tally[1].Marks = m, m }
}

// part is the i-th part of a kind of a board.
func (b *bench) partOf(board int, kind lay.PartKind, i int) *lay.Part {
	for j := range b.lay.Boards[board].Parts {
		if p := &b.lay.Boards[board].Parts[j]; p.Kind == kind {
			if i--; i < 0 {
				return p
			}
		}
	}
	panic("no such part")
}

// slide moves a piece along its row by some ticks.
func (b *bench) slide(id int, d tape.Length) {
	p := &b.lay.Pieces[id]
	p.Outline = p.Outline.Move(plane.P(d, 0))
}

// sawn makes the last piece of a run, the groove half of a board of full
// width, d longer.
func (b *bench) sawn(id int, d tape.Length) {
	p := &b.lay.Pieces[id]
	stretch := func(r plane.Ring, from tape.Length) plane.Ring {
		out := slices.Clone(r)
		for i := range out {
			if out[i].X >= from {
				out[i].X += d
			}
		}
		return out
	}
	_, end := p.InBoard.Box()
	_, far := p.Outline.Box()
	p.InBoard, p.Outline = stretch(p.InBoard, end.X), stretch(p.Outline, far.X)
	bd := &b.lay.Boards[p.Board]
	for i, q := range bd.Parts {
		o := slices.Clone(q.Outline)
		for j := range o {
			if o[j].X >= end.X && o[j].X < bd.Length {
				o[j].X += d
			}
		}
		bd.Parts[i].Outline = o
	}
}

// swap exchanges two neighbours of a run.
func (b *bench) swap(run, i int) {
	ids := b.lay.Runs[run].Pieces
	x, y := boxOf(b.lay.Pieces[ids[i]].Outline).x(), boxOf(b.lay.Pieces[ids[i+1]].Outline).x()
	b.slide(ids[i], y.Len())
	b.slide(ids[i+1], -x.Len())
	ids[i], ids[i+1] = ids[i+1], ids[i]
}

// runOut leaves the last run unfilled and its boards on the pallet.
func (b *bench) runOut() {
	r := &b.lay.Runs[len(b.lay.Runs)-1]
	first := r.Pieces[0]
	lo, _ := b.lay.Pieces[first].Outline.Box()
	_, hi := b.lay.Pieces[r.Pieces[len(r.Pieces)-1]].Outline.Box()
	b.lay.Boards = b.lay.Boards[:b.lay.Pieces[first].Board]
	b.lay.Pieces = b.lay.Pieces[:first]
	r.Pieces, r.Unfilled, r.Outline = nil, true, plane.Rect(lo, hi)
}

// nook is narrower than the shortest piece: two rows of one piece each, both
// named.
func nook() *bench { return nookOf(7, 7) }

// nookOf has pieces of a length between least gaps of another.
func nookOf(length, between float64) *bench {
	b := newBench()
	z := b.zone(lay.Zone{Kind: lay.Field, Width: in(5), Ahead: 1}, around(plane.Dir{X: 1}, rc(0, 0, between, 10.25)))
	for i := range 2 {
		r := b.run(z, i+1, 0, float64(5*i))
		b.cut(r, 12, length, 0)
		b.lay.Exempt = append(b.lay.Exempt, lay.Exemption{Rule: shortRule, Run: b.lay.Runs[r].ID, Why: "closet"})
	}
	return b.count()
}

// splitNook is a nook of one row whose run of 7 in is named as two.
func splitNook() *bench {
	b := newBench()
	z := b.zone(lay.Zone{Kind: lay.Field, Width: in(5), Ahead: 1}, around(plane.Dir{X: 1}, rc(0, 0, 7, 5.25)))
	r, q := b.run(z, 1, 1, 0), b.run(z, 1, 2, 0)
	b.whole(r, 4, 0)
	b.cut(q, 12, 3, 4)
	for _, n := range b.lay.Runs {
		b.lay.Exempt = append(b.lay.Exempt, lay.Exemption{Rule: shortRule, Run: n.ID, Why: "closet"})
	}
	return b.count()
}

// jambRoom is the plain room with the right-hand wall's row ends behind an
// undercut jamb: boards pass its face by 1/4 to 1/2 in.
func jambRoom() *bench {
	b := plainRoom()
	a := b.at[0]
	behind := floor.Range{Least: in(-0.5), Greatest: in(-0.25)}
	a.Edges[1].Range, a.Edges[1].Kind = behind, floor.Jamb
	a.Edges[1].From.X, a.Edges[1].To.X = in(99.5), in(99.5)
	a.Bare = one(rc(-0.75, -0.75, 99.5, 12.25))
	b.at[0] = a
	return b
}

var slips = []slip{
	{"no spline at an old floor", oldRoom, func(b *bench) { b.lay.Pieces[1].Right = lay.Cut }, "old floor", "row 1, piece 2 at wall B-C", "cut against the groove of the old floor", 0},
	{"a groove at an old floor's", oldRoom, func(b *bench) { b.lay.Pieces[1].Right = lay.Groove }, "old floor", "row 1, piece 2 at wall B-C", "groove against the groove", 0},
	{"a spline at an old floor's tongue", oldRoom, func(b *bench) {
		b.at[0].Edges[1].Old = room.OffersTongue
		b.lay.Pieces[4].Right, b.lay.Pieces[6].Right = lay.Groove, lay.Groove
	}, "old floor", "row 1, piece 2 at wall B-C", "spline against the tongue", 0},
	{"corners crossed", plainRoom, func(b *bench) {
		o := b.lay.Pieces[0].Outline
		o[1], o[2] = o[2], o[1]
	}, "shape", "piece id 0", "crosses", 0},
	{"clockwise", plainRoom, func(b *bench) { b.lay.Boards[0].Parts[0].Outline = b.lay.Boards[0].Parts[0].Outline.Reverse() }, "shape", "board 0", "clockwise", 0},
	{"piece of no run", plainRoom, func(b *bench) { b.lay.Runs[2].Pieces = b.lay.Runs[2].Pieces[:1] }, "shape", "piece id 6", "0 times", 0},
	{"run off its row line", plainRoom, func(b *bench) { b.lay.Zones[0].Offset++ }, "shape", "row", "row line", 3},
	{"out of its strip", plainRoom, func(b *bench) { b.lay.Pieces[3].Outline = b.lay.Pieces[3].Outline.Move(plane.P(0, 1)) }, "shape", "piece id 3", "strip of row 2", 0},
	{"number twice", plainRoom, func(b *bench) { b.lay.Runs[1].Row = 1 }, "shape", "row 1", "", 2},
	{"far out", plainRoom, func(b *bench) { b.lay.Pieces[0].InBoard = plane.Ring{pt(0, 2), {X: 1 << 62}, pt(60, 5)} }, "shape", "piece id 0", "farther", 0},

	{"a tick over its neighbour", plainRoom, func(b *bench) { b.slide(4, -1) }, "overlap", "row 2, piece 2 and row 2, piece 3", "under 0.01", 0},
	{"over the header", headerRoom, func(b *bench) { b.slide(2, 20) }, "overlap", "row 1 of the field, piece 2 and row 1 of the header", "", 0},

	{"short of the wall", plainRoom, func(b *bench) { b.sawn(4, in(-0.5)) }, "cover", "row 2", "1.25 sq in", 0},
	{"a whole row forgotten", ellRoom, func(b *bench) {
		b.runOut()
		b.lay.Runs = b.lay.Runs[:3]
	}, "cover", "where no row lies", "bare", 0},

	{"too near the wall", plainRoom, func(b *bench) { b.sawn(4, in(0.25)) }, "gap", "wall B-C", `1/2"`, 0},
	{"end tongue left at the wall", splineRoom, func(b *bench) { b.lay.Pieces[1].Right = lay.Tongue }, "gap", "wall B-C", `1/2"`, 0},
	{"side tongue left at the wall", headerRoom, func(b *bench) { b.lay.Pieces[0].Behind = lay.Tongue }, "gap", "row 1 of the header", `1/2"`, 0},
	{"past the face of a jamb", jambRoom, func(b *bench) { b.sawn(4, in(0.25)) }, "gap", "wall B-C", `-3/4"`, 0},

	{"zones share a strip", headerRoom, func(b *bench) {
		o := b.lay.Zones[0].Outline[0]
		o[1].X += 10
		o[2].X += 10
	}, "zones", "floor", "in two zones", 0},
	{"floor in no zone", headerRoom, func(b *bench) {
		o := b.lay.Zones[0].Outline[0]
		o[1].X -= 10
		o[2].X -= 10
	}, "zones", "floor", "in no zone", 0},

	{"parts do not add up", plainRoom, func(b *bench) { b.partOf(5, lay.IsScrap, 0).Outline[0].X++ }, "board", "board 5", "add up", 0},
	{"one wood twice", plainRoom, func(b *bench) {
		o := b.partOf(5, lay.IsScrap, 0).Outline
		o[0].X--
		o[3].X--
	}, "board", "board 5", "same wood", 0},
	{"out of the board", plainRoom, func(b *bench) { b.partOf(5, lay.IsScrap, 0).Outline[1].X++ }, "board", "board 5", "out of the board", 0},
	{"piece from nowhere", plainRoom, func(b *bench) { b.partOf(2, lay.IsPiece, 0).Kind = lay.IsScrap }, "board", "board 2", "none of its parts", 0},
	{"another shape in the piece", plainRoom, func(b *bench) {
		// the piece stays as long; in the board it is taken for 1/8 in more
		b.partOf(5, lay.IsPiece, 0).Outline = rc(0, 0, 55.125, 3.5)
		b.partOf(5, lay.IsKerf, 1).Outline = rc(55, 3.5, 55.125, 5)
	}, "board", "board 5", "another shape", 0},
	{"not the pitch", headerRoom, func(b *bench) { b.stock.TenBoards += 10 }, "board", "boards of the field", "wide", 0},

	{"no kerf beside the strip", plainRoom, func(b *bench) {
		b.partOf(0, lay.IsKerf, 0).Outline = rc(0, 1.9, 60, 2)
		b.partOf(0, lay.IsStrip, 0).Outline = rc(0, 0, 60, 1.9)
	}, "kerf", "board 0", "between", 0},
	{"useful parts touch", plainRoom, func(b *bench) {
		b.partOf(0, lay.IsKerf, 0).Kind = lay.IsStrip
	}, "kerf", "board 0", `0" between`, 2},
	{"kerf wider than the blade", plainRoom, func(b *bench) {
		b.partOf(0, lay.IsKerf, 0).Outline = rc(0, 1.5, 60, 2)
		b.partOf(0, lay.IsStrip, 0).Outline = rc(0, 0, 60, 1.5)
	}, "kerf", "board 0", "wider", 0},
	{"a mitre's kerf taken square", slantRoom, func(b *bench) {
		k, o := b.partOf(1, lay.IsKerf, 1), b.partOf(1, lay.IsOffcut, 0)
		for _, p := range []*plane.Pt{&k.Outline[1], &k.Outline[2], &o.Outline[0], &o.Outline[3]} {
			p.X -= 25_904 - 25_400
		}
	}, "kerf", "board 1", "between", 2}, // piece and strip both face the offcut
	{"another blade", plainRoom, func(b *bench) { b.lay.Kerf = in(0.0625) }, "kerf", "lay", `1/16"`, 0},

	{"turned about", ellRoom, func(b *bench) { b.lay.Pieces[3].Turned = true }, "cut from the board", "row 2, piece 2", "tongue direction", 0},
	{"mirrored", slantRoom, func(b *bench) {
		p := &b.lay.Pieces[0] // taper the other way in the board
		p.InBoard = plane.Ring{pt(0, 1.6), pt(60, 1), pt(60, 5), pt(0, 5)}
		const k = 25_402
		b.lay.Boards[0].Parts = []lay.Part{{Kind: lay.IsPiece, Piece: 0, Outline: p.InBoard},
			{Kind: lay.IsKerf, Piece: -1, Outline: plane.Ring{plane.P(0, in(1.6)-k), plane.P(in(60), in(1)-k), pt(60, 1), pt(0, 1.6)}},
			{Kind: lay.IsStrip, Piece: -1, Outline: plane.Ring{pt(0, 0), pt(60, 0), plane.P(in(60), in(1)-k), plane.P(0, in(1.6)-k)}}}
	}, "cut from the board", "row 1, piece 1", "shape", 0},
	{"tongue edge off its line", plainRoom, func(b *bench) {
		// common practice, no source: a ripped starter row keeps its tongue;
		// 3 in out of the tongue half, laid from the strip's low side
		b.lay.Pieces[5].InBoard = rc(0, 1.5, 45, 5)
		b.lay.Boards[4].Parts = []lay.Part{{Kind: lay.IsPiece, Piece: 5, Outline: rc(0, 1.5, 45, 5)},
			{Kind: lay.IsKerf, Piece: -1, Outline: rc(0, 1.375, 45, 1.5)}, {Kind: lay.IsStrip, Piece: -1, Outline: rc(0, 0, 45, 1.375)}}
	}, "cut from the board", "row 3, piece 1", "row line", 0},

	{"a tongue where it was ripped", plainRoom, func(b *bench) { b.lay.Pieces[5].Ahead = lay.Tongue }, "profile", "row 3, piece 1, edge ahead", "tongue", 0},
	{"a tongue where it was cut", plainRoom, func(b *bench) { b.lay.Pieces[4].Right = lay.Tongue }, "profile", "row 2, piece 3, right end", "tongue", 0},
	{"a cut where the mill's end is", plainRoom, func(b *bench) { b.lay.Pieces[0].Left = lay.Cut }, "profile", "row 1, piece 1, left end", "cut", 0},
	{"a mitre sold as a groove", slantRoom, func(b *bench) { b.lay.Pieces[1].Right = lay.Groove }, "profile", "row 1, piece 2, right end", "groove", 0},
	{"another hand", plainRoom, func(b *bench) { b.stock.Hand = stock.LeftHand }, "profile", "boards of the field", "right-hand", 0},

	{"end tongue off in a joint", plainRoom, func(b *bench) { b.lay.Pieces[0].Right = lay.TongueOff }, "tongue and groove", "row 1, piece 1 and row 1, piece 2", "tongue off against groove", 0},
	{"side tongue off under a groove", plainRoom, func(b *bench) { b.lay.Pieces[2].Ahead = lay.TongueOff }, "tongue and groove", "row 2, piece 1 and row 3, piece 1", "tongue off against groove", 0},
	{"a stretch of it off", plainRoom, func(b *bench) {
		b.lay.Pieces[4].Off = []plane.Span{{From: in(80), To: in(81)}}
	}, "tongue and groove", "row 2, piece 3 and row 3, piece 2", "tongue off", 0},
	{"half a spline room's floor", splineRoom, func(b *bench) { b.lay.Zones[1].Outline[0] = b.lay.Zones[1].Outline[0].Reverse() }, "shape", "zone 1", "no area", 0},
	{"no spline", splineRoom, func(b *bench) { b.lay.Pieces[0].Behind = lay.Groove }, "tongue and groove", "row 1 of the field 1, piece 1", "groove against groove", 0},
	{"header without its groove", headerRoom, func(b *bench) {
		b.lay.Pieces[2].Right = lay.TongueOff
	}, "tongue and groove", "row 1 of the field, piece 2 and row 1 of the header", "tongue off against groove", 0},

	{"joints too close", ellRoom, func(b *bench) { b.swap(1, 0) }, "joint distance", "row 1 and row 2", `5" apart`, 0},
	{"joint over joint", ellRoom, func(b *bench) {
		b.swap(1, 0)
		b.slide(2, in(5)) // 20 in at 60, over row 1's joint
		b.lay.Runs[1].Pieces = []int{3, 2, 4}
		b.lay.Pieces[3].Outline, b.lay.Pieces[3].InBoard = rc(0, 5, 60, 10), rc(0, 0, 60, 5)
		b.lay.Boards[3] = lay.Board{ID: 3, Length: in(60), Width: in(5), Parts: []lay.Part{{Kind: lay.IsPiece, Piece: 3, Outline: rc(0, 0, 60, 5)}}}
		b.slide(4, in(5))
		b.sawn(4, in(-5))
		b.stock.Tally = append(b.stock.Tally, stock.Class{Length: in(60), Count: 1})
	}, "joint distance", "row 1 and row 2", `0" apart`, 0},
	{"relaxed, and closer still", ellRoom, func(b *bench) {
		b.swap(1, 0)
		b.lay.Relaxed = []lay.Relaxation{{Rule: jointRule, Run: 11, From: in(6), To: in(5.5)}}
	}, "joint distance", "row 1 and row 2", `5" apart`, 0},
	{"relaxed for the run laid first", ellRoom, func(b *bench) {
		b.swap(1, 0)
		b.lay.Relaxed = []lay.Relaxation{{Rule: jointRule, Run: 10, From: in(6), To: in(5)}}
	}, "joint distance", "row 1 and row 2", `5" apart`, 0},

	{"example without its mark", plainRoom, func(b *bench) { b.stock.Known, b.stock.Mix = stock.MixOnly, stock.Mix{Least: in(1), Most: in(500)} }, "example layout", "lay", "does not say", 0},
	{"short first piece", plainRoom, func(b *bench) { b.lim.ShortestPiece.Value = in(18) }, "shortest piece", "row 2, piece 1", `17-7/8"`, 0},
	{"short, and not named", nook, func(b *bench) { b.lay.Exempt = b.lay.Exempt[1:] }, "shortest piece", "row 1", `7" long`, 0},
	{"named, and not short", plainRoom, func(b *bench) { b.lay.Exempt = []lay.Exemption{{Rule: shortRule, Run: 11}} }, "shortest piece", "row 2", `100" long`, 0},
	{"named, and there is room", func() *bench { return nookOf(7.75, 8) }, func(*bench) {}, "shortest piece", "row", `8" long`, 2},

	{"one run named as two", splitNook, func(*bench) {}, "shortest piece", "row 1", `7" long`, 2},
	{"two pieces in a short run", splitNook, func(b *bench) {
		b.lay.Runs[0].Pieces, b.lay.Pieces[1].Run, b.lay.Runs[0].Part = []int{0, 1}, 10, 0
		b.lay.Runs, b.lay.Exempt = b.lay.Runs[:1], b.lay.Exempt[:1]
	}, "shortest piece", "row 1", `7" long`, 0},
	{"sliver at the start", plainRoom, func(b *bench) { b.lim.NarrowestRip.Value = in(3.25) }, "narrowest rip", "row 1 at wall A-B", `3" wide`, 0},
	{"taper to a sliver", slantRoom, func(b *bench) { b.lim.NarrowestRip.Value = in(3.5) }, "narrowest rip", "row 1 at wall A-B", `3" wide`, 0},
	{"no closing edge, not named", slantRoom, func(b *bench) { b.lim.NarrowestRip.Value = in(4.5) }, "narrowest rip", "row 1 at wall A-B", `3" wide`, 0},
	{"narrow beside a return", ellRoom, func(b *bench) { b.lim.NarrowestRip.Value = in(2) + 1 }, "narrowest rip", "row 3 at wall C-D", `2" wide`, 0},

	{"laid in one place", plainRoom, func(b *bench) { b.lay.Runs[1].Order = 1 }, "order of laying", "row 2", "place 1", 0},
	{"behind after ahead", plainRoom, func(b *bench) { b.lay.Runs[0].Order, b.lay.Runs[1].Order = 2, 1 }, "order of laying", "row 1, piece 1 and row 2", "slid in at place 2", 0},
	{"angled in under the row ahead", plainRoom, func(b *bench) {
		b.lay.Runs[0].Order, b.lay.Runs[1].Order = 2, 1
		b.lay.Pieces[0].How, b.lay.Pieces[1].How = lay.Angled, lay.Angled
	}, "order of laying", "row 1, piece 1 and row 2", "angled in at place 2", 0},
	{"angled in, and no closing row", plainRoom, func(b *bench) {
		b.lay.Pieces[0].How, b.lay.Pieces[1].How = lay.Angled, lay.Angled
	}, "order of laying", "row 1, piece 1 and row 2", "angled in at place 1", 0},
	{"splined before the start line", splineRoom, func(b *bench) { b.lay.Runs[0].Order, b.lay.Runs[1].Order, b.lay.Runs[2].Order = 2, 3, 1 }, "order of laying", "row 1 of the field 1", "slid in at place 2", 0},
	{"dropped in under a jamb", jambRoom, func(b *bench) { b.lay.Pieces[4].How = lay.Dropped }, "order of laying", "row 2, piece 3", "under an undercut jamb", 0},

	{"boards ran out", plainRoom, (*bench).runOut, "unfilled run", "row 3", `100"`, 0},

	{"one board too many", plainRoom, func(b *bench) { b.stock.Tally = b.stock.Tally[1:] }, "stock", `60"`, "2 used", 0},
	{"left over that is not there", plainRoom, func(b *bench) { b.lay.Spare = []stock.Class{{Length: in(60), Count: 1}} }, "stock", `60"`, "2 used and 1 left over", 0},
	{"another tally", plainRoom, func(b *bench) { b.stock.Tally = b.stock.Tally[:0] }, "stock", "boards", `5 lengths used oftener than they are there: 1 of 30" for 0, 1 of 45" for 0`, 0},
	{"a cull", plainRoom, marked1(stock.Marks{Fault: stock.Twisted}), "faults of boards", "piece", "its board is twisted", 2},
	{"into a damaged end", plainRoom, marked1(stock.Marks{Fault: stock.SpoiledGroove, Spoiled: in(4)}), "faults of boards", "row 1, piece 2", "reaches into the damaged end", 0},
	{"into the other damaged end", plainRoom, marked1(stock.Marks{Fault: stock.SpoiledTongue, Spoiled: in(4)}), "faults of boards", "row 2, piece 1", "reaches into the damaged end", 0},
	{"a mark the tally has not", plainRoom, func(b *bench) { b.lay.Boards[1].Carton = "7" }, "faults of boards", "board 2", "tallied as sound, carton 7", 0},
	{"a mark left out", plainRoom, func(b *bench) { b.stock.Tally[1].Fault = stock.Bowed }, "faults of boards", "board 2", "tallied as sound", 0},
	{"a wider blade in the job", plainRoom, func(b *bench) { b.lim.Kerf.Value = in(0.25) }, "kerf", "lay", `1/8"`, 0},
	{"another length", plainRoom, func(b *bench) {
		b.stock.Known, b.stock.Mix = stock.MixOnly, stock.Mix{Least: in(30), Most: in(58)}
		b.lay.Example = true
	}, "stock", `60"`, "2 used", 0},

	{"outline crossed", plainRoom, told(func(b *bench) {
		o := b.lay.Runs[1].Outline
		o[0], o[1] = o[1], o[0]
	}), "outline of a run", "row 2", "its outline", 0},
	{"outline in the next row", plainRoom, told(func(b *bench) { b.lay.Runs[1].Outline = rc(0, 3, 100, 8.25) }), "outline of a run", "row 2", "outside the strip", 0},
	{"outline short of its pieces", plainRoom, told(func(b *bench) {
		b.lay.Runs[1].Outline = rc(0, 3, 99.875, 8)
		b.lay.Runs[1].RightEnd = lay.EndRange{Reach: in(99.875), Need: in(99.875)}
	}), "outline of a run", "row 2", `from 0" to 99-7/8"`, 0},
	{"outline narrower than its pieces", plainRoom, told(func(b *bench) { b.lay.Runs[2].Outline = rc(0, 8, 100, 11) }), "outline of a run", "row 3", "50.00 sq in of its pieces", 0},
	{"outline of another run", splitNook, told(func(b *bench) {
		b.lay.Runs[1].Pieces, b.lay.Pieces[1].Run = []int{0, 1}, 11
		b.lay.Pieces[0].Run = 11
		b.lay.Runs, b.lay.Exempt = b.lay.Runs[1:], b.lay.Exempt[1:]
		b.lay.Runs[0].Part, b.lay.Runs[0].Order = 0, 1
		b.lay.Exempt = nil
		b.lim.ShortestPiece.Value = 0
	}), "outline of a run", "row 1", "its outline runs", 0},
	{"outline under another run's pieces", sandwich, told(func(*bench) {}), "outline of a run", "row 1a", "150.00 sq in of its outline under pieces of another run", 0},
	{"outline in the gap", plainRoom, told(func(b *bench) { b.lay.Runs[2].Outline = rc(0, 8, 100, 11.75) }), "outline of a run", "row 3", "25.00 sq in of its outline nearer", 0},

	{"rows numbered from 2", plainRoom, func(b *bench) {
		for i := range b.lay.Runs {
			b.lay.Runs[i].Row++
		}
	}, "row numbers", "row", "named", 3},
	{"rows numbered against the tongues", splineRoom, func(b *bench) { b.lay.Runs[2].Row, b.lay.Runs[3].Row = 2, 1 }, "row numbers", "of the field 2", "named", 2},
	{"a number left out", plainRoom, func(b *bench) { b.lay.Runs[2].Row = 4 }, "row numbers", "row 4", "named 4", 0},
	{"a letter too many", plainRoom, func(b *bench) { b.lay.Runs[1].Part = 1 }, "row numbers", "row 2a", "named 2a", 0},
	{"letters from right to left", splitNook, func(b *bench) {
		b.lay.Runs[0].Part, b.lay.Runs[1].Part = 2, 1
		b.lim.ShortestPiece.Value, b.lay.Exempt = 0, nil
	}, "row numbers", "row 1", "named", 2},
	{"one strip under two numbers", splitNook, func(b *bench) {
		b.lay.Runs[0].Part, b.lay.Runs[1].Part, b.lay.Runs[1].Row = 0, 0, 2
		b.lim.ShortestPiece.Value, b.lay.Exempt = 0, nil
	}, "row numbers", "row", "named", 2},

	{"no such edge", plainRoom, told(func(b *bench) { b.lay.Runs[1].LeftEnd.Edge = "wall X-Y" }), "made for this job", "lay", "1 end of a run at edges that this floor has not: wall X-Y", 0},
	{"corners renamed", plainRoom, told(func(b *bench) {
		for i := range b.lay.Runs {
			b.lay.Runs[i].LeftEnd.Edge, b.lay.Runs[i].RightEnd.Edge = "wall S-P", "wall Q-R"
		}
	}), "made for this job", "lay", "6 ends of runs at edges that this floor has not: wall Q-R, wall S-P", 0},
	{"half the floor", plainRoom, func(b *bench) { b.at[0] = around(plane.Dir{X: 1}, rc(0, 0, 100, 23)) }, "made for this job", "lay", "100 % of its boards lie on the floor of this job and cover 50 % of it", 0},
	{"a smaller floor", plainRoom, func(b *bench) { b.at[0] = around(plane.Dir{X: 1}, rc(0, 0, 50, 11.5)) }, "made for this job", "lay", "50 % of its boards", 0},
	{"nearly the floor, other boards", plainRoom, func(b *bench) {
		b.at[0] = around(plane.Dir{X: 1}, rc(0, 0, 120, 11.5))
		b.stock.TenBoards = in(52)
	}, "made for this job", "lay", "cover 83 % of it; its boards have another width", 0},
	{"nearly the floor, other corners", plainRoom, told(func(b *bench) {
		b.at[0] = around(plane.Dir{X: 1}, rc(0, 0, 120, 11.5))
		b.lay.Runs[0].RightEnd.Edge = "wall Q-R"
	}), "made for this job", "lay", "cover 83 % of it; its rows end at wall Q-R", 0},
	{"elsewhere", plainRoom, func(b *bench) { b.at[0] = around(plane.Dir{X: 1}, rc(500, 0, 600, 11.5)) }, "made for this job", "lay", "0 % of its boards", 0},
	{"the edge of the other end", plainRoom, told(func(b *bench) { b.lay.Runs[1].LeftEnd.Edge = "wall B-C" }), "ends of a run", "row 2, left end", "wall B-C does not lie there", 0},
	{"an edge of another row", ellRoom, told(func(b *bench) { b.lay.Runs[3].RightEnd.Edge = "wall B-C" }), "ends of a run", "row 4, right end", "wall B-C does not lie there", 0},
	{"reach in the gap", plainRoom, told(func(b *bench) { b.lay.Runs[1].RightEnd.Reach += in(0.25); b.lay.Runs[1].RightEnd.Edge = "" }), "ends of a run", "row 2, right end", `it may reach 100-1/4"`, 0},
	{"reach in the gap at an edge", plainRoom, told(func(b *bench) { b.lay.Runs[1].LeftEnd.Reach = -10 }), "ends of a run", "row 2, left end", "it may reach", 0},
	{"need behind the cover", plainRoom, told(func(b *bench) { b.lay.Runs[1].LeftEnd.Need = in(0.5) }), "ends of a run", "row 2, left end", `it need only reach 1/2"`, 0},
	{"need before reach", plainRoom, told(func(b *bench) { b.lay.Runs[1].LeftEnd.Need = -1 }), "ends of a run", "row 2, left end", "must reach", 0},
	{"out of its range", plainRoom, told(func(b *bench) { b.lay.Runs[1].LeftEnd.Reach, b.lay.Runs[1].LeftEnd.Need = 1, 1 }), "ends of a run", "row 2, left end", `the run ends at 0"`, 0},
	{"range beyond measure", plainRoom, told(func(b *bench) { b.lay.Runs[1].LeftEnd.Reach = -1 << 62 }), "ends of a run", "row 2, left end", "farther out", 0},
	{"a mitre not told", slantRoom, told(func(b *bench) { b.lay.Runs[1].RightEnd.Mitred = false }), "ends of a run", "row 2, right end", "not end square", 0},
	{"cut in place at a wall", plainRoom, told(func(b *bench) { b.lay.Runs[1].LeftEnd.InPlace = true }), "ends of a run", "row 2, left end", "cut in place at wall D-A", 0},
	{"cut in place at nothing", headerRoom, told(func(b *bench) { b.lay.Runs[1].RightEnd.InPlace = true }), "ends of a run", "row 1 of the field, right end", "no edge is named", 0},
	{"not cut in place at tile", tileRoom, told(func(b *bench) { b.lay.Runs[1].RightEnd.InPlace = false }), "ends of a run", "row 2, right end", "not cut in place at wall B-C", 0},

	{"no fastening", plainRoom, told(func(b *bench) { b.lay.Runs[1].Nailing = nil }), "fastening", "row 2", "nothing is said", 0},
	{"fastening unheard of", plainRoom, told(func(b *bench) { b.lay.Runs[1].Nailing[0].By = "glue" }), "fastening", "row 2", "glue", 0},
	{"fastened in part", plainRoom, told(func(b *bench) { b.lay.Runs[1].Nailing[0].Along.To-- }), "fastening", "row 2", "told from", 0},
	{"stretches apart", plainRoom, told(func(b *bench) { b.nailed(1, lay.HandNail, 40, 41, 100) }), "fastening", "row 2", "the next begins at", 0},
	{"a stretch backwards", plainRoom, told(func(b *bench) { b.nailed(1, lay.HandNail, 40, 40, 30) }), "fastening", "row 2", "a stretch from", 0},
	{"nailer behind the first row", plainRoom, told(func(b *bench) { b.nailed(0, lay.Nailer, 0, 0, 100) }), "fastening", "row 1, from 0", `3-3/4" behind the tongue edge`, 0},
	{"nailer before the wall ahead", plainRoom, told(func(b *bench) { b.nailed(1, lay.Nailer, 50, 50, 100) }), "fastening", `row 2, from 50" to 100"`, `4-1/4" ahead`, 0},
	{"nailer under a return", ellRoom, told(func(b *bench) {
		b.lim.NailerAhead.Value = in(10)
		b.nailed(1, lay.Nailer, 0, 0, 100)
	}), "fastening", `row 2, from 60-3/4" to 100"`, `2-3/4" ahead`, 0},
	{"nailer the wrong way about", splineRoom, told(func(b *bench) {
		b.lim.NailerBehind.Value, b.lim.NailerAhead.Value = in(14), in(5)
		b.nailed(0, lay.Nailer, 0, 0, 96)
		b.nailed(2, lay.Nailer, 0, 0, 96)
		b.nailed(3, lay.Nailer, 0, 0, 96)
	}), "fastening", "row 2 of the field 2", `1" ahead`, 0},
	{"first row nailed by hand", plainRoom, told(func(b *bench) { b.nailed(0, lay.HandNail, 0, 0, 100) }), "fastening", "row 1, from 0", "no row lies behind", 0},
	{"last row nailed by hand", plainRoom, told(func(b *bench) { b.nailed(2, lay.HandNail, 60, 60, 100) }), "fastening", "row 3, from 60", "no row lies ahead", 0},
	{"by hand beside a shorter row", ellRoom, told(func(b *bench) { b.nailed(2, lay.HandNail, 0, 0, 100) }), "fastening", `row 3, from 60" to 100"`, "no row lies ahead", 0},

	{"relaxes what cannot be", plainRoom, func(b *bench) { b.lay.Relaxed = []lay.Relaxation{{Rule: "gap", Run: 10}} }, "named exception", "gap", "not one", 0},
	{"relaxes no run", plainRoom, func(b *bench) { b.lay.Relaxed = []lay.Relaxation{{Rule: jointRule, Run: 99, To: in(1)}} }, "named exception", "", "run 99", 0},
	{"exempts no edge", plainRoom, func(b *bench) {
		b.lay.Exempt = []lay.Exemption{{Rule: ripRule, Run: -1, Edge: "wall X-Y"}}
	}, "named exception", "", "wall X-Y", 0},
	{"a pin of no job", plainRoom, func(b *bench) { b.lay.Pins = []lay.Pin{{Kind: lay.PinEdge, Where: "corner C"}} }, "pin", "row edge on corner C", "no such pin", 0},
}

func TestEachSlipGivesItsFindingAlone(t *testing.T) {
	for _, s := range slips {
		t.Run(strings.ReplaceAll(s.name, " ", "-"), func(t *testing.T) {
			b := s.room()
			s.hurt(b)
			fs := stops(b.held())
			want := max(1, s.times)
			if len(fs) != want {
				t.Errorf("%d findings, want %d of %q", len(fs), want, s.rule)
			}
			for _, f := range fs {
				if f.Rule != s.rule || !strings.Contains(f.Where, s.where) || !strings.Contains(f.Measured, s.says) {
					t.Errorf("got %v\nwant rule %q at %q measuring %q", f, s.rule, s.where, s.says)
				}
				if f.Do == "" {
					t.Errorf("%v does not say what to do", f)
				}
			}
		})
	}
}

func stops(fs []finding.Finding) []finding.Finding {
	return slices.DeleteFunc(fs, func(f finding.Finding) bool { return f.Level != finding.Stop })
}
