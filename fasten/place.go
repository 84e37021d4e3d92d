package fasten

import (
	"math"

	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// Place is one fastener of a lay.
type Place struct {
	Piece int        // lay.Piece.ID
	By    lay.Fasten // nailer or hand: through the tongue; face: through the face
	Pilot bool       // so near to the board's end that it wants a pilot hole; all through the face do
	At    plane.Pt   // where it enters, in the frame of the piece's zone
	Tip   plane.Pt   // where it ends, seen from above
}

// Places are all fasteners of a lay, piece by piece in the order of the rows.
//
// Through the tongue of a board one stands every spacing. Where a board has no
// tongue ahead, or no row lies there to hide it, it is nailed through the face
// beside that edge instead; and beside the edge behind where no row lies behind.
func Places(l lay.Lay, u Use) []Place {
	var out []Place
	p := placer{l, u, rowsBeside(l)}
	for _, r := range l.Runs {
		for _, id := range r.Pieces {
			out = append(out, p.piece(r, l.Pieces[id])...)
		}
	}
	return out
}

type placer struct {
	l      lay.Lay
	u      Use
	beside map[line][]plane.Span
}

// line is one side of a row: the line it lies on, seen from which side.
type line struct {
	zone  int
	y     tape.Length
	above bool // what lies above it
}

// rowsBeside are the stretches of rows along each row line.
func rowsBeside(l lay.Lay) map[line][]plane.Span {
	out := map[line][]plane.Span{}
	for _, r := range l.Runs {
		lo, hi := r.Outline.Box()
		x := plane.Span{From: lo.X, To: hi.X}
		out[line{r.Zone, r.Low, true}] = append(out[line{r.Zone, r.Low, true}], x)
		out[line{r.Zone, r.High, false}] = append(out[line{r.Zone, r.High, false}], x)
	}
	return out
}

// row tells whether a row lies beyond the upper or lower line of r at x.
func (p placer) row(r lay.Run, upper bool, x tape.Length) bool {
	k := line{r.Zone, r.Low, false}
	if upper {
		k = line{r.Zone, r.High, true}
	}
	for _, s := range p.beside[k] {
		if s.From <= x && x <= s.To {
			return true
		}
	}
	return false
}

// piece are the fasteners of one piece.
func (p placer) piece(r lay.Run, pc lay.Piece) []Place {
	z := zoneOf(p.l, r.Zone)
	up := z.Ahead >= 0
	var out []Place
	ahead := p.edgeOf(pc, up)
	var faced []tape.Length
	for _, at := range p.u.Along(ahead.Len()) {
		x := ahead.From + at
		by := byAt(r, x)
		if tongueAt(r, pc, up, x) && (by != lay.FaceNail || p.row(r, up, x)) {
			if by == lay.FaceNail {
				by = lay.HandNail
			}
			out = append(out, p.blind(r, pc, up, x, ahead, by))
			continue
		}
		faced = append(faced, x)
	}
	for _, x := range p.overJoists(faced, z, edgeY(r, up)) {
		out = append(out, p.face(pc, up, x, ahead))
	}
	behind := p.edgeOf(pc, !up)
	faced = nil
	for _, at := range p.u.Along(behind.Len()) {
		if x := behind.From + at; byAt(r, x) == lay.FaceNail && !p.row(r, !up, x) {
			faced = append(faced, x)
		}
	}
	for _, x := range p.overJoists(faced, z, edgeY(r, !up)) {
		out = append(out, p.face(pc, !up, x, behind))
	}
	return out
}

// edgeY is the row line that a row's upper or lower edge lies on.
func edgeY(r lay.Run, upper bool) tape.Length {
	if upper {
		return r.High
	}
	return r.Low
}

// blind is a fastener through the tongue, slanting back under its own board.
func (p placer) blind(r lay.Run, pc lay.Piece, up bool, x tape.Length, along plane.Span, by lay.Fasten) Place {
	back := tape.Length(math.Round(float64(p.u.Length) * math.Cos(p.u.Slant*math.Pi/180)))
	y, tip := r.High, r.High-back
	if !up {
		y, tip = r.Low, r.Low+back
	}
	return Place{pc.ID, by, nearEnd(x, along), plane.P(x, y), plane.P(x, tip)}
}

// face is a nail straight down beside an edge; on a narrow strip, in its middle.
func (p placer) face(pc lay.Piece, up bool, x tape.Length, along plane.Span) Place {
	spans := plane.Region{pc.Outline}.Section(x, false)
	if len(spans) == 0 {
		spans = plane.Region{pc.Outline}.Section(x, true)
	}
	at := plane.P(x, 0)
	if len(spans) > 0 {
		if s := spans[len(spans)-1]; up {
			at.Y = max(s.To-p.u.Edge, s.From+s.Len()/2)
		} else {
			at.Y = min(spans[0].From+p.u.Edge, spans[0].From+spans[0].Len()/2)
		}
	}
	return Place{pc.ID, lay.FaceNail, true, at, at}
}

func nearEnd(x tape.Length, along plane.Span) bool {
	return x-along.From < PilotWithin || along.To-x < PilotWithin
}

// tongueAt tells whether a piece has its side tongue at x: not where it was taken
// off, nor where a notch takes the edge away.
func tongueAt(r lay.Run, pc lay.Piece, up bool, x tape.Length) bool {
	side := pc.Behind
	if up {
		side = pc.Ahead
	}
	for _, off := range pc.Off {
		if off.From <= x && x <= off.To {
			return false
		}
	}
	if side != lay.Tongue {
		return false
	}
	spans := plane.Region{pc.Outline}.Section(x, false)
	if n := len(spans); up {
		return n > 0 && spans[n-1].To == r.High
	}
	return len(spans) > 0 && spans[0].From == r.Low
}

// edgeOf is how far a piece reaches along its upper or lower edge: between the
// outermost corners that lie there, so that a mitred end is left out; but as far
// as the piece goes where that is much farther, as along a taper or past a notch.
func (p placer) edgeOf(pc lay.Piece, upper bool) plane.Span {
	lo, hi := pc.Outline.Box()
	y := lo.Y
	if upper {
		y = hi.Y
	}
	s, all := plane.Span{From: hi.X, To: lo.X}, plane.Span{From: lo.X, To: hi.X}
	for _, c := range pc.Outline {
		if c.Y == y {
			s.From, s.To = min(s.From, c.X), max(s.To, c.X)
		}
	}
	if s.Len() < all.Len()/2 || all.To-s.To > p.u.Spacing || s.From-all.From > p.u.Spacing {
		return all
	}
	return s
}

// byAt is how a run is fastened at x; at the end of two stretches, by the first.
func byAt(r lay.Run, x tape.Length) lay.Fasten {
	for _, s := range r.Nailing {
		if x <= s.Along.To {
			return s.By
		}
	}
	if n := len(r.Nailing); n > 0 {
		return r.Nailing[n-1].By
	}
	return lay.Nailer
}

func zoneOf(l lay.Lay, id int) lay.Zone {
	for _, z := range l.Zones {
		if z.ID == id {
			return z
		}
	}
	return lay.Zone{ID: id, Ahead: 1, Dir: plane.Dir{X: 1}}
}

// Total is how many fasteners a lay, a zone or a run takes, by how they go in.
type Total struct {
	Pieces             int
	Nailer, Hand, Face int
	Pilots             int // through the tongue, with a pilot hole
}

// All is the number of them all.
func (t Total) All() int { return t.Nailer + t.Hand + t.Face }

// Sum counts places.
func Sum(ps []Place) Total {
	var t Total
	last := -1
	for _, p := range ps {
		if p.Piece != last {
			t.Pieces, last = t.Pieces+1, p.Piece
		}
		switch p.By {
		case lay.Nailer:
			t.Nailer++
		case lay.HandNail:
			t.Hand++
		default:
			t.Face++
		}
		if p.Pilot && p.By != lay.FaceNail {
			t.Pilots++
		}
	}
	return t
}
