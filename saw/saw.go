// Package saw reads from the outline of a piece what has to be done to a board
// to make it: its length, rips and tapers, mitres and notches.
//
// A piece 40 in long whose far edge runs from 3 in at its left end to 2-1/2 in
// at its right one is a board crosscut at 40 in and ripped to a taper of 3 to
// 2-1/2 in. A corner of 10 by 2 in missing from a full board is a notch of
// those two sizes at that corner.
package saw

import (
	"strake/lay"
	"strake/tape"
)

// Cuts is what makes a piece of a board. Left, right, behind and ahead are
// those of the floor, in the row frame of the piece's zone.
type Cuts struct {
	Behind, Ahead tape.Length // length along the edge behind and the edge ahead
	Left, Right   tape.Length // slant of the end: how much further right it lies ahead than behind; 0 is square
	Rip           Rip
	Notches       []Notch
}

// Long and Short are the lengths of the piece's two sides; alike when both
// ends are square.
func (c Cuts) Long() tape.Length { return max(c.Behind, c.Ahead) }

// Short is the length of the shorter side.
func (c Cuts) Short() tape.Length { return min(c.Behind, c.Ahead) }

// Rip is a cut along the board.
type Rip struct {
	Done        bool
	Left, Right tape.Length // width of the piece at its two ends
	Keeps       lay.Profile // the edge that stays: groove or tongue; "" when neither does
	Bends       []Bend      // where a sawn edge bends, from the left
}

// Taper tells whether the widths at the two ends differ.
func (r Rip) Taper() bool { return r.Left != r.Right }

// Bend is the width of the piece at a place where its sawn edge bends.
type Bend struct{ FromLeft, Width tape.Length }

// Side names an end or an edge of a piece.
type Side string

// The sides of a piece as it lies on the floor.
const (
	LeftEnd    Side = "left end"
	RightEnd   Side = "right end"
	BehindEdge Side = "edge behind"
	AheadEdge  Side = "edge ahead"
)

// Notch is a part sawn out of an edge, an end or a corner.
type Notch struct {
	Along, Across tape.Length // its two sizes, along and across the board
	End           Side        // the nearer end
	FromEnd       tape.Length // from there to the notch, 0 at it
	Edge          Side        // the edge it opens to, else the nearer one
	FromEdge      tape.Length
	Slanted       bool // a side of it runs neither along nor across
	Corner        bool // one slanted cut takes a corner off: Along and Across are its two sides
}

// Least is what a figure of a cut in a job of unit u must come to, or it prints as 0:
// half of 1/32 in or of 0.5 mm, the steps that rips are printed to.
func Least(u tape.Unit) tape.Length {
	if u.Imperial() {
		return tape.Inch / 64
	}
	return tape.Millimetre / 4
}

// Sawn tells whether a notch can be measured.
func (n Notch) Sawn(u tape.Unit) bool { return n.Along >= Least(u) && n.Across >= Least(u) }

// Mitres tells whether a corner off is the mitre of an end that keeps a bit of it square,
// of a piece so wide: half of the end or more, to some 60 degrees off square.
func (n Notch) Mitres(width tape.Length) bool {
	return n.Corner && n.FromEnd == 0 && n.FromEdge == 0 && 2*n.Across >= width && n.Along <= 2*n.Across
}

// Of reads the cuts of p. Ring outlines run counter-clockwise.
func Of(p lay.Piece) Cuts {
	lo, hi := p.Outline.Box()
	s := &shape{lo: lo, hi: hi, leftBehind: lo.X, leftAhead: lo.X, rightBehind: hi.X, rightAhead: hi.X,
		low: [2]tape.Length{lo.Y, lo.Y}, high: [2]tape.Length{hi.Y, hi.Y}}
	for _, c := range pockets(p.Outline) {
		s.read(c)
	}
	out := Cuts{
		Behind: s.rightBehind - s.leftBehind, Ahead: s.rightAhead - s.leftAhead,
		Left: s.leftAhead - s.leftBehind, Right: s.rightAhead - s.rightBehind,
		Notches: s.notches,
	}
	if s.ripped || p.Behind == lay.Ripped || p.Ahead == lay.Ripped {
		out.Rip = Rip{true, s.high[0] - s.low[0], s.high[1] - s.low[1], keeps(p), s.bends(p.Outline)}
	}
	return out
}

// keeps is the long edge as the mill made it that a ripped piece still has.
func keeps(p lay.Piece) lay.Profile {
	for _, e := range []lay.Profile{p.Behind, p.Ahead} {
		switch e {
		case lay.Groove, lay.Spline:
			return lay.Groove
		case lay.Tongue, lay.TongueOff:
			return lay.Tongue
		}
	}
	return ""
}

// Figure is what the saw is set to for a rip of this width: the joint's air
// lies at the tongue edge, so a rip that keeps the tongue is sawn narrower by
// it, one that keeps the groove at its width.
func Figure(width tape.Length, keeps lay.Profile, air tape.Length) tape.Length {
	if keeps == lay.Tongue {
		return max(0, width-air)
	}
	return width
}
