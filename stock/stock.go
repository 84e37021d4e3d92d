// Package stock is what lies on the pallet: boards of one face width and
// profile, and what is known about their lengths.
//
// Ten boards of 5 in face pushed tight may measure 50-5/16 in: the row width
// to plan with is then 5.03125 in, and the 1/32 in of air lies at each tongue.
package stock

import "strake/tape"

// Hand tells which end of a board carries the end tongue, seen from above
// with the side tongue away from you.
type Hand string

// The two hands.
const (
	RightHand Hand = "right"
	LeftHand  Hand = "left"
)

// Known says how much is known about the board lengths.
type Known string

// What can be known.
const (
	Tallied Known = "tallied"    // every board's length is known
	OneSize Known = "one length" // all boards are one length
	Unknown Known = "unknown"    // nothing: rows and rules, no boards
	MixOnly Known = "carton mix" // only the spread of lengths: an example layout
)

// Class is a number of boards of one length, marked alike.
type Class struct {
	Length tape.Length
	Count  int
	Width  tape.Length // of their rows, among boards of several widths; 0 where all are alike
	Marks              // of each of them
}

// Mix is the spread of lengths in a carton: from Least to Most with this mean
// (a Beta shape; the mean alone fixes it). Step is the grid the lengths lie
// on; 0 means 1/16 in.
type Mix struct {
	Least, Most, Mean, Step tape.Length
	Grade                   string // of Grades, "" none
}

// Carton is one pack as sold.
type Carton struct {
	Area  tape.Area // face area of its boards, 0 unknown
	Count int       // boards in it, 0 unknown
	Price float64   // in the job's currency, 0 unknown

	Nominal bool // Area counts the width before the tongue was milled
}

// milled is what the tongue takes off a board's width, of which nominal measure
// still tells: 3/4 in, so that strip of 2-1/4 in counts as 3 (the board-measure
// factors of older flooring tables, from memory).
const milled = 3 * tape.Inch / 4

// FaceArea is the area of floor that a carton covers with boards of a face: what is
// printed on it, less what nominal measure counts besides.
func (c Carton) FaceArea(face tape.Length) tape.Area {
	if !c.Nominal || face <= 0 {
		return c.Area
	}
	return tape.Area(float64(c.Area) * float64(face) / float64(face+milled))
}

// Boards is the stock of a job.
type Boards struct {
	Name       string
	Species    string
	Face       tape.Length // visible width, without the tongue
	TenBoards  tape.Length // ten boards pushed tight, measured over all; 0 not measured
	Thickness  tape.Length
	SideTongue tape.Length // how far the side tongue stands out
	EndTongue  tape.Length // how far the end tongue stands out; 0: ends are plain (not end-matched)
	Hand       Hand
	Known      Known
	Tally      []Class     // Tallied
	One        tape.Length // OneSize
	OneCount   int         // OneSize: boards bought, 0 as many as it takes
	Shift      Shift       // OneSize: joints move by this from row to row; zero: they fall as they may
	Mix        Mix         // MixOnly
	ReadTo     tape.Length // Tallied: the step that lengths were read to; 0: exact
	Slip       tape.Length // Tallied: how far a hand reading may well be off besides, as a standard deviation; 0: not at all
	Doubted    bool        // Tallied: lengths serve to choose by, and every run ends in a cut
	Carton     Carton
	Cartons    int // bought, 0 not yet
	Lot        string
	Currency   string
	Widths     []Boards      // boards of several face widths: face, ten boards and lengths of each; none: all are alike
	Pattern    []tape.Length // faces of the rows in turn, over and over; none: one is proposed from what was delivered
}

// Longest is the longest board there is or may be.
func (b Boards) Longest() tape.Length {
	most := max(b.One, b.Mix.Most)
	for _, c := range b.Tally {
		most = max(most, c.Length)
	}
	for _, w := range b.Widths {
		most = max(most, w.Longest())
	}
	return most
}

// Pitch is what a row takes up: the ten-board width over ten where measured,
// else the face; rounded to a tick once.
func (b Boards) Pitch() tape.Length {
	if b.TenBoards > 0 {
		return (b.TenBoards + 5) / 10
	}
	return b.Face
}

// Air is the joint's air in a row: pitch less face, not below 0. It lies at
// the tongue edge.
func (b Boards) Air() tape.Length { return max(0, b.Pitch()-b.Face) }
