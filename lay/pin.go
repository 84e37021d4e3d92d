package lay

import (
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// PinKind says what a pin fixes.
type PinKind string

// The kinds of pin.
const (
	PinEdge    PinKind = "row edge on"   // a row line runs through a place
	PinSpline  PinKind = "spline on"     // the sense of laying turns on the row line through a place
	PinRip     PinKind = "rip at"        // the row along an edge is ripped to a width
	PinFull    PinKind = "full board at" // the row along an edge is a full board
	PinTongues PinKind = "tongues toward"
	PinThrough PinKind = "continuous through" // rows go on through a doorway without a break
	PinStepped PinKind = "stepped at"         // each piece along an edge is ripped to one width
)

// BindsOffset tells whether the pin fixes where the row lines lie.
func (k PinKind) BindsOffset() bool {
	return k == PinRip || k == PinFull || k == PinEdge || k == PinSpline
}

// Pin is a wish that is kept even where it breaks a limit, by its content: it
// means the same whatever else changes.
type Pin struct {
	Kind  PinKind
	Where string      // name of the corner or of the floor's edge
	At    plane.XY    // PinEdge, PinSpline: the place on the floor plan, mm; PinThrough: the middle of the opening
	Wall  room.Wall   // PinTongues, PinStepped, PinThrough
	Width tape.Length // PinRip; PinThrough: the thickness of the wall there
}

// String names a pin: "rip at wall A-B".
func (p Pin) String() string { return string(p.Kind) + " " + p.Where }
