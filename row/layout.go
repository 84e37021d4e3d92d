// Package row decides how the rows lie: which way, where the first one starts,
// what is ripped, and which runs there are to fill.
//
// 142-1/2 in between the gaps and boards of 5 in: 28 rows leave 2-1/2 in over,
// so 27 full rows and two rips of 3-3/4 in look better and cost no board more.
package row

import (
	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// Layout is the rows of a floor before any board is chosen.
type Layout struct {
	Dir      plane.Dir
	Why      string        // in words: why this direction and this start
	Along    room.Wall     // the wall that gave the direction
	Across   bool          // the rows run square to it
	Pitch    tape.Length   // what a row takes up; of several widths the widest
	Offset   tape.Length   // Y of a row line; the others are whole pitches away
	Pattern  []tape.Length // widths of the rows, over and over from Offset on; empty: all are Pitch
	Rows     int
	Pin      string       // the pin that fixed the offset; empty: it is the best there is
	Pins     []lay.Pin    // all of the job's
	StartRow int          // the row that is laid first
	Starts   int          // places where a first row has none to go on from: the start line and those carried from it
	Splines  []SplineLine // where the sense of laying is turned round
	Closures []Closure    // where fronts meet
	Areas    []Area       // what is laid ahead, and what is laid backwards
	Face     plane.Region // what the boards fill: Reach with straight rips where the play allows
	Runs     []Run        // in the order of laying
	Rips     []Rip        // one for each closing edge
	AtFrames []Rip        // rips along the boards of frames and along other fields; their Index points nowhere
	Odd      []Odd        // edges beside the rows that are no closing edges
	Findings []finding.Finding
}

// Rip is what is left of a board along a closing edge.
type Rip struct {
	Edge        string
	Index       int // into Aligned.Edges
	Kind        floor.Kind
	Wall        room.Wall // it lies along, counter-clockwise; empty: none
	Row         int
	Above       bool        // the floor lies above the edge: a starter rip, else a closing one
	Width       tape.Length // of a full board of its row
	Limit       tape.Length // the narrowest that such a board may be ripped to
	Left, Right tape.Length // width at its two ends; both Width: a full board
	Narrowest   tape.Length
	Neck        tape.Length // the narrowest that its row is anywhere beside it, other edges counted
	Bow         tape.Length // how far the edge strays from a straight line: to be scribed, or taken up by the play
	SD          tape.Length // one standard deviation of the width, from readings and row width; 0 none
}

// Odd is an edge too slanted for one rip: it leaves points at every offset.
type Odd struct {
	Edge  string
	Index int         // into Aligned.Edges
	Under tape.Length // length of it along which the row is under the narrowest rip
}

// Run is one unbroken stretch of a row, to be filled with boards.
type Run struct {
	Row, Part   int
	Low, High   tape.Length  // Y of its strip
	Shape       plane.Region // what the pieces fill, before its ends are cut: one outer ring, perhaps holes
	Left, Right lay.EndRange
	Must        []plane.Span // in each of them a joint must fall: something stays inside the row
	Never       []plane.Span // in none of them may a joint fall: the row is split in two there
	WidthLeft, WidthRight,
	Narrowest, Widest tape.Length
	Nailing []lay.Stretch // from left to right
	Order   int
	Ahead   int  // 1: its tongues face +Y, -1: -Y
	First   bool // it has none to go on from: it is set to a line
}

// Courses are the lines between the rows.
func (l Layout) Courses() lay.Courses { return lay.CoursesOf(l.Offset, l.Pitch, l.Pattern) }

// Full tells whether the row along the edge is a full board.
func (r Rip) Full() bool { return r.Left == r.Width && r.Right == r.Width }

// Length is the longest that the faces of a run may be.
func (r Run) Length() tape.Length { return r.Right.Reach - r.Left.Reach }
