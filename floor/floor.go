// Package floor is the area to board: rooms joined through their doorways,
// less what stays, with each edge knowing what it meets.
//
// A wall wants a gap of 3/4 in at least; 1/2 in base and 3/4 in shoe, less a
// lap of 1/4 in, cover 1 in at most. So the edge of the boards may lie anywhere
// in the gap range [3/4, 1] in from that wall. Floor.In turns the floor into
// the frame of the rows and holds both insets: Reach, as far as boards may go
// (the least gaps), and Need, what boards must cover (the greatest gaps).
package floor

import (
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// Kind says what an edge of the floor meets.
type Kind string

// What an edge may meet.
const (
	Wall       Kind = "wall"
	Jamb       Kind = "jamb"       // undercut: boards pass under its face
	Flush      Kind = "flush"      // tile, stone, another floor: met flush
	Transition Kind = "transition" // under a transition strip
	Nosing     Kind = "nosing"     // a stair head
	Stays      Kind = "stays"      // a column, register, cabinet: a gap under a cover
)

// Range is how far the boards' edge may stay from an edge of the floor:
// Least to Greatest, both counted into the floor; negative lies behind the
// edge. Greatest is never below Least.
type Range struct{ Least, Greatest tape.Length }

// Play is what the range leaves to choose.
func (r Range) Play() tape.Length { return r.Greatest - r.Least }

// Edge is one straight edge of the floor, with the floor on its left.
type Edge struct {
	Name    string // "wall A-B", "hearth", "jamb of the hall doorway"
	Kind    Kind
	Wall    room.Wall // the wall it lies on, counter-clockwise; empty: none
	Stay    string    // what stays whose side it is, by its name; empty: none
	Side    int       // Stay: which side, as room.Stay counts them
	Ends    Range     // where row ends meet it
	Sides   Range     // where it lies beside the rows
	InPlace bool      // row ends here are crosscuts measured in place
	// Old is what an old floor offers to row ends here; empty: there is none, or a
	// strip covers the joint.
	Old      room.Offer
	From, To plane.XY
}

// Floor is the area to board on the floor plan, in mm.
type Floor struct {
	Rings []Ring // outer rings counter-clockwise, holes clockwise
	Edges []Edge
	Rooms []RoomOutline // for drawings: each room's walls as built
	Stays []StayOutline // for drawings: what stays
}

// Ring is one closed line of the floor: Edges[i] runs from Corners[i] to the next.
type Ring struct {
	Corners []plane.XY
	Edges   []int // index into Floor.Edges
}

// RoomOutline is a room's corners as built, counter-clockwise.
type RoomOutline struct {
	Name    string
	Names   []string // corner names
	Corners []plane.XY
}

// StayOutline is the outline of something that stays.
type StayOutline struct {
	Name    string
	Kind    string
	Corners []plane.XY
}

// Aligned is the floor in the frame of the rows: X along them, Y across, in
// ticks. Every corner was rounded once, here; rows, racking and the checker
// all start from it.
type Aligned struct {
	Dir   plane.Dir
	Reach plane.Region // floor less its least gaps: boards may lie here
	Need  plane.Region // floor less its greatest gaps: boards must cover this
	Bare  plane.Region // the floor to its edges, for drawing
	Edges []AlignedEdge
	// ReachEdge[r][i] is the index into Edges of the side of Reach[r] that
	// starts at its corner i (-1: none known); NeedEdge likewise.
	ReachEdge, NeedEdge [][]int
}

// AlignedEdge is an edge of the floor in the row frame.
type AlignedEdge struct {
	Edge     int // index into Floor.Edges
	Name     string
	Kind     Kind
	From, To plane.Pt
	Beside   bool  // lies beside the rows (else rows end at it)
	Range    Range // the one that holds in this direction
	Group    int   // edges of one bowed wall that follow each other share it
	InPlace  bool
	Old      room.Offer // rows end at it, and an old floor offers them this; empty: none
}
