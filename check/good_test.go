package check

import (
	"math"
	"testing"

	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/limits"
	"strake/plane"
	"strake/stock"
	"strake/tape"
)

// in is a length in inches; every figure used is a whole number of ticks.
func in(v float64) tape.Length { return tape.Length(math.Round(v * float64(tape.Inch))) }

// pt is a place in inches.
func pt(x, y float64) plane.Pt { return plane.P(in(x), in(y)) }

// rc is a rectangle in inches.
func rc(x0, y0, x1, y1 float64) plane.Ring { return plane.Rect(pt(x0, y0), pt(x1, y1)) }

// bench is a lay in the making, with what it is held against.
type bench struct {
	lay   lay.Lay
	at    map[int]floor.Aligned
	lim   limits.Limits
	stock stock.Boards
	told  bool // what the runs say of themselves is the test's: leave it
}

// newBench is boards of 5 in, 3/4 in thick, tongues of 1/4 in, and a blade of
// 1/8 in.
func newBench() *bench {
	b := &bench{at: map[int]floor.Aligned{}, lim: limits.Default(in(5), in(0.75))}
	b.stock = stock.Boards{Face: in(5), Thickness: in(0.75), SideTongue: in(0.25), EndTongue: in(0.25), Hand: stock.RightHand, Known: stock.Tallied}
	b.lay.Kerf = in(0.125)
	return b
}

// gaps are 3/4 to 1 in at every edge.
var gaps = floor.Range{Least: in(0.75), Greatest: in(1)}

// around is the floor whose least gaps leave reach: walls named by letter.
func around(dir plane.Dir, reach plane.Ring) floor.Aligned {
	move := func(d tape.Length) plane.Ring {
		off := make([]tape.Length, len(reach))
		for i := range off {
			off[i] = d
		}
		r := shift(sides(reach), off)
		return append(r[len(r)-1:len(r):len(r)], r[:len(r)-1]...) // shift begins at the second corner
	}
	bare := move(-gaps.Least)
	a := floor.Aligned{Dir: dir, Reach: one(reach), Need: one(move(gaps.Play())), Bare: one(bare)}
	for i, e := range sides(bare) {
		name := "wall " + string(rune('A'+i)) + "-" + string(rune('A'+(i+1)%len(bare)))
		a.Edges = append(a.Edges, floor.AlignedEdge{Edge: i, Name: name, Kind: floor.Wall, From: e.a, To: e.b, Beside: e.long(), Range: gaps})
	}
	return a
}

func (b *bench) zone(z lay.Zone, at floor.Aligned) int {
	z.ID = len(b.lay.Zones)
	z.Hand, z.Dir = b.stock.Hand, at.Dir
	b.lay.Zones = append(b.lay.Zones, z)
	b.at[z.ID] = at
	return z.ID
}

// run adds a run whose strip begins at low; runs are laid as they are added.
func (b *bench) run(zone, row, part int, low float64) int {
	n := lay.Run{ID: 10 + len(b.lay.Runs), Zone: zone, Row: row, Part: part, Low: in(low), Order: len(b.lay.Runs) + 1}
	n.High = n.Low + b.lay.Zones[zone].Width
	b.lay.Runs = append(b.lay.Runs, n)
	return len(b.lay.Runs) - 1
}

// board adds a board of a length in inches, as wide as the zone's boards.
func (b *bench) board(zone int, length float64) int {
	id := len(b.lay.Boards)
	b.lay.Boards = append(b.lay.Boards, lay.Board{ID: id, Length: in(length), Width: b.lay.Zones[zone].Width})
	return id
}

// part gives the parts of a board that are no pieces.
func (b *bench) part(board int, kind lay.PartKind, r plane.Ring) {
	p := &b.lay.Boards[board]
	p.Parts = append(p.Parts, lay.Part{Kind: kind, Piece: -1, Outline: r})
}

// piece cuts r out of a board and lays it at the right end of a run, its left
// end at x inches; profiles are those of r's box in the board.
func (b *bench) piece(run, board int, r plane.Ring, x float64) *lay.Piece {
	n := &b.lay.Runs[run]
	z := b.lay.Zones[n.Zone]
	bd := &b.lay.Boards[board]
	p := lay.Piece{ID: len(b.lay.Pieces), Run: n.ID, Board: board, InBoard: r, Turned: z.Ahead < 0, How: lay.Slid}
	lo, hi := r.Box()
	p.Outline = r.Move(plane.P(in(x)-lo.X, n.Low))
	if p.Turned {
		p.Outline = r.Turn(hi.X, n.High-n.Low).Move(plane.P(in(x), n.Low))
	}
	at := func(reached bool, factory, sawn lay.Profile) lay.Profile {
		if reached {
			return factory
		}
		return sawn
	}
	groove, tongue := at(lo.X == 0, lay.Groove, lay.Cut), at(hi.X == bd.Length, lay.Tongue, lay.Cut)
	near, far := at(lo.Y == 0, lay.Groove, lay.Ripped), at(hi.Y == bd.Width, lay.Tongue, lay.Ripped)
	p.Left, p.Right, p.Behind, p.Ahead = groove, tongue, near, far
	if p.Turned {
		p.Left, p.Right, p.Behind, p.Ahead = tongue, groove, far, near
	}
	b.lay.Pieces = append(b.lay.Pieces, p)
	n.Pieces = append(n.Pieces, p.ID)
	bd.Parts = append(bd.Parts, lay.Part{Kind: lay.IsPiece, Piece: p.ID, Outline: r})
	return &b.lay.Pieces[p.ID]
}

// whole lays a whole board.
func (b *bench) whole(run int, length, x float64) *lay.Piece {
	z := b.lay.Runs[run].Zone
	bd := b.board(z, length)
	return b.piece(run, bd, plane.Rect(plane.Pt{}, plane.P(in(length), b.lay.Zones[z].Width)), x)
}

// count makes the tally what the lay uses.
func (b *bench) count() *bench {
	for _, bd := range b.lay.Boards {
		b.stock.Tally = append(b.stock.Tally, stock.Class{Length: bd.Length, Count: 1})
	}
	b.describe()
	return b
}

// held is what the checker says. A slip that moves a piece moves the end of its
// run with it, unless what runs say of themselves is what the test is about.
func (b *bench) held() []finding.Finding {
	if !b.told {
		b.follow()
	}
	return Zones(b.lay, b.at, b.lim, b.stock)
}

// plainRoom is a rectangle of 100 x 11-1/2 in between the least
// gaps, in three rows:
//
//	11.5 +---------------------------+----------------------------+
//	     | row 3: 45 (kept groove)   | 55, cut                    |
//	 8   +----------+----------------+----------------+-----------+
//	     | 17-7/8   | 60                              | 22-1/8 cut|
//	 3   +----------+-------------------+-------------+-----------+
//	     | row 1: 60 (kept tongue)      | 40, cut                 |
//	 0   +------------------------------+-------------------------+
//
// What is left of row 1's last board starts row 2, cut end to the wall.
func plainRoom() *bench {
	b := newBench()
	z := b.zone(lay.Zone{Kind: lay.Field, Width: in(5), Offset: in(3), Ahead: 1}, around(plane.Dir{X: 1}, rc(0, 0, 100, 11.5)))
	r1, r2, r3 := b.run(z, 1, 0, -2), b.run(z, 2, 0, 3), b.run(z, 3, 0, 8)

	first := b.board(z, 60)
	b.piece(r1, first, rc(0, 2, 60, 5), 0)
	b.part(first, lay.IsKerf, rc(0, 1.875, 60, 2))
	b.part(first, lay.IsStrip, rc(0, 0, 60, 1.875))
	shared := b.board(z, 58)
	b.piece(r1, shared, rc(0, 2, 40, 5), 60)
	b.part(shared, lay.IsKerf, rc(0, 1.875, 40, 2))
	b.part(shared, lay.IsStrip, rc(0, 0, 40, 1.875))
	b.part(shared, lay.IsKerf, rc(40, 0, 40.125, 5))

	b.piece(r2, shared, rc(40.125, 0, 58, 5), 0)
	b.whole(r2, 60, 17.875)
	b.cut(r2, 30, 22.125, 77.875)

	third := b.board(z, 45)
	b.piece(r3, third, rc(0, 0, 45, 3.5), 0)
	b.part(third, lay.IsKerf, rc(0, 3.5, 45, 3.625))
	b.part(third, lay.IsStrip, rc(0, 3.625, 45, 5))
	last := b.board(z, 56)
	b.piece(r3, last, rc(0, 0, 55, 3.5), 45)
	b.part(last, lay.IsKerf, rc(0, 3.5, 55, 3.625))
	b.part(last, lay.IsStrip, rc(0, 3.625, 55, 5))
	b.part(last, lay.IsKerf, rc(55, 0, 55.125, 5))
	b.part(last, lay.IsScrap, rc(55.125, 0, 56, 5))
	return b.count()
}

// cut lays the groove half of a board, as long as given; the rest is scrap.
func (b *bench) cut(run int, board, length, x float64) *lay.Piece {
	z := b.lay.Runs[run].Zone
	w := b.lay.Zones[z].Width
	bd := b.board(z, board)
	id := b.piece(run, bd, plane.Rect(plane.Pt{}, plane.P(in(length), w)), x).ID
	b.part(bd, lay.IsKerf, plane.Rect(plane.P(in(length), 0), plane.P(in(length+0.125), w)))
	b.part(bd, lay.IsScrap, plane.Rect(plane.P(in(length+0.125), 0), plane.P(in(board), w)))
	return &b.lay.Pieces[id]
}

// ellRoom has a corner that stands into it, so row 3 is notched:
//
//	20.25 +----------------+
//	      | row 4          |
//	 15   +----------------+ 60
//	      | row 3          +-----------------+ 12
//	 10   +----------------------------------+
//	      | row 2                            |
//	  5   +----------------------------------+
//	      | row 1                            |
//	  0   +----------------------------------+ 100
func ellRoom() *bench {
	b := newBench()
	reach := plane.Ring{pt(0, 0), pt(100, 0), pt(100, 12), pt(60, 12), pt(60, 20.25), pt(0, 20.25)}
	z := b.zone(lay.Zone{Kind: lay.Field, Width: in(5), Ahead: 1}, around(plane.Dir{X: 1}, reach))
	var rows []int
	for i := range 4 {
		rows = append(rows, b.run(z, i+1, 0, float64(5*i)))
	}
	b.whole(rows[0], 60, 0)
	b.cut(rows[0], 58, 40, 60)
	b.whole(rows[1], 20, 0)
	b.whole(rows[1], 55, 20)
	b.cut(rows[1], 30, 25, 75)
	b.whole(rows[2], 45, 0)
	notched := b.board(z, 56)
	b.piece(rows[2], notched, plane.Ring{pt(0, 0), pt(55, 0), pt(55, 2), pt(15, 2), pt(15, 5), pt(0, 5)}, 45)
	b.part(notched, lay.IsScrap, rc(15, 2, 55, 5))
	b.part(notched, lay.IsKerf, rc(55, 0, 55.125, 5))
	b.part(notched, lay.IsScrap, rc(55.125, 0, 56, 5))
	b.whole(rows[3], 36, 0)
	b.cut(rows[3], 30, 24, 36)
	return b.count()
}

// slantRoom has a wall beside the rows that runs in by 1 in over 100 in, and
// row ends at a wall that leans out by 1 in over a row of 5: a taper and
// mitres.
//
//	15.25 +--------------------------------------+ 102.65
//	      | row 3                               /
//	 10   +------------------------------------+ 101.6
//	      | row 2                             /
//	  5   +----------------------------------+ 100.6
//	      | row 1, 4 in wide    3 in wide   /
//	  1   +--------------------------------+ 100, 2
func slantRoom() *bench {
	b := newBench()
	reach := plane.Ring{pt(0, 1), pt(100, 2), pt(102.65, 15.25), pt(0, 15.25)}
	z := b.zone(lay.Zone{Kind: lay.Field, Width: in(5), Ahead: 1}, around(plane.Dir{X: 1}, reach))
	rows := []int{b.run(z, 1, 0, 0), b.run(z, 2, 0, 5), b.run(z, 3, 0, 10)}

	// 1/8 in / cos of a taper of 1 in 100: 25,401.27 ticks, rounded up; of a
	// mitre of 1 in 5: 25,903.02.
	const taper, mitre = 25_402, 25_904
	first := b.board(z, 60)
	b.piece(rows[0], first, plane.Ring{pt(0, 1), pt(60, 1.6), pt(60, 5), pt(0, 5)}, 0)
	lower := func(p plane.Pt) plane.Pt { return plane.P(p.X, p.Y-taper) }
	b.part(first, lay.IsKerf, plane.Ring{lower(pt(0, 1)), lower(pt(60, 1.6)), pt(60, 1.6), pt(0, 1)})
	b.part(first, lay.IsStrip, plane.Ring{pt(0, 0), pt(60, 0), lower(pt(60, 1.6)), lower(pt(0, 1))})

	// The mitre is sawn first; then the taper's kerf meets it at a corner that
	// is no whole tick: y = (1.6 in - kerf + 0.396 in) / 0.998.
	last := b.board(z, 58)
	b.piece(rows[0], last, plane.Ring{pt(0, 1.6), pt(40, 2), pt(40.6, 5), pt(0, 5)}, 60)
	y := (float64(in(1.6)-taper) + float64(in(0.396))) / 0.998
	meet := plane.P(tape.Length(math.Round(float64(in(39.6))+0.2*y)), tape.Length(math.Round(y)))
	right := func(p plane.Pt) plane.Pt { return plane.P(p.X+mitre, p.Y) }
	b.part(last, lay.IsKerf, plane.Ring{lower(pt(0, 1.6)), meet, pt(40, 2), pt(0, 1.6)})
	b.part(last, lay.IsStrip, plane.Ring{pt(0, 0), pt(39.6, 0), meet, lower(pt(0, 1.6))})
	b.part(last, lay.IsKerf, plane.Ring{pt(39.6, 0), right(pt(39.6, 0)), right(pt(40.6, 5)), pt(40.6, 5), pt(40, 2), meet})
	b.part(last, lay.IsOffcut, plane.Ring{right(pt(39.6, 0)), pt(58, 0), pt(58, 5), right(pt(40.6, 5))})

	b.whole(rows[1], 30, 0)
	b.mitred(rows[1], 80, 71.6, 30, mitre)
	b.whole(rows[2], 50, 0)
	b.mitred(rows[2], 60, 52.6, 50, mitre)
	return b.count()
}

// mitred lays the groove half of a board with a mitre of 1 in 5 at its right
// end, its long side as long as given.
func (b *bench) mitred(run int, board, length, x float64, mitre tape.Length) {
	bd := b.board(b.lay.Runs[run].Zone, board)
	near, far := pt(length-1, 0), pt(length, 5)
	b.piece(run, bd, plane.Ring{pt(0, 0), near, far, pt(0, 5)}, x)
	b.part(bd, lay.IsKerf, plane.Ring{near, plane.P(near.X+mitre, 0), plane.P(far.X+mitre, far.Y), far})
	b.part(bd, lay.IsScrap, plane.Ring{plane.P(near.X+mitre, 0), pt(board, 0), pt(board, 5), plane.P(far.X+mitre, far.Y)})
}

// headerRoom is a field of two rows, wider in the row than in the face, whose
// tongues at the right go into the groove of a header laid across.
//
//	       +----------+------------------+----+
//	row 2  | 60                | 36      | h  |
//	       +-------------------+---------+ e  |  header 96 to 101,
//	row 1  | 36       | 60               | a  |  its tongue edge to the wall
//	       +----------+------------------+ d -+
func headerRoom() *bench {
	b := newBench()
	b.stock.TenBoards = in(50.3125)
	const pitch = 5.03125
	f := around(plane.Dir{X: 1}, rc(0, 0, 101, 2*pitch+0.25))
	z := b.zone(lay.Zone{Kind: lay.Field, Width: in(pitch), Ahead: 1, Outline: one(rc(-0.75, -0.75, 96, 11.0625))}, f)
	// in the header's frame X is up the plan and Y towards its left
	across := turn{plane.Dir{X: 1}, plane.Dir{Y: 1}}
	g := around(plane.Dir{Y: 1}, across.of(rc(0, 0, 101, 2*pitch+0.25)))
	h := b.zone(lay.Zone{Kind: lay.Header, Width: in(5), Offset: in(-96), Ahead: -1, Outline: across.region(one(rc(96, -0.75, 101.75, 11.0625)))}, g)

	head := b.run(h, 1, 0, -101)
	b.cut(head, 12, 2*pitch+0.25, 0)
	b.tongueOff(b.lay.Pieces[0].ID, lowEdge)
	r1, r2 := b.run(z, 1, 0, 0), b.run(z, 2, 0, pitch)
	b.whole(r1, 36, 0)
	b.whole(r1, 60, 36)
	b.whole(r2, 60, 0)
	b.whole(r2, 36, 60)
	return b.count()
}

// tongueOff takes the tongue off one side of a piece.
func (b *bench) tongueOff(id int, s side) {
	p := &b.lay.Pieces[id]
	switch s {
	case leftEnd:
		p.Left = lay.TongueOff
	case rightEnd:
		p.Right = lay.TongueOff
	case lowEdge:
		p.Behind = lay.TongueOff
	default:
		p.Ahead = lay.TongueOff
	}
}

// splineRoom is laid from a start line both ways: above it the tongues face
// up, below it down, and a spline joins the two grooves at the line.
//
//	 10.25  row 2       | 60             | 36 |
//	  5     row 1       | 36  | 60            |
//	  0     =========== spline ===============
//	 -5     row 1 below | 48       | 48       |
//	-10.25  row 2 below | 24 | 72             |
func splineRoom() *bench {
	b := newBench()
	f := around(plane.Dir{X: 1}, rc(0, -10.25, 96, 10.25))
	up := b.zone(lay.Zone{Kind: lay.Field, Width: in(5), Ahead: 1, Outline: one(rc(-0.75, 0, 96.75, 11))}, f)
	down := b.zone(lay.Zone{Kind: lay.Field, Width: in(5), Ahead: -1, Outline: one(rc(-0.75, -11, 96.75, 0))}, f)
	for i, row := range []struct {
		zone, row int
		low       float64
		lengths   [2]float64
	}{{up, 1, 0, [2]float64{36, 60}}, {up, 2, 5, [2]float64{60, 36}}, {down, 1, -5, [2]float64{48, 48}}, {down, 2, -10, [2]float64{24, 72}}} {
		r := b.run(row.zone, row.row, 0, row.low)
		p := b.whole(r, row.lengths[0], 0).ID
		q := b.whole(r, row.lengths[1], row.lengths[0]).ID
		if row.zone == down {
			b.tongueOff(p, leftEnd)
		} else {
			b.tongueOff(q, rightEnd)
		}
		if i == 0 {
			b.lay.Pieces[p].Behind, b.lay.Pieces[q].Behind = lay.Spline, lay.Spline
		}
	}
	return b.count()
}

var goodLays = map[string]func() *bench{
	"plain": plainRoom, "ell": ellRoom, "slant": slantRoom, "header": headerRoom, "old floor": oldRoom, "spline": splineRoom,
}

func TestGoodLaysAreSilent(t *testing.T) {
	for name, make := range goodLays {
		for _, f := range make().held() {
			t.Errorf("%s room: %v", name, f)
		}
	}
}
