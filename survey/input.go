package survey

import (
	"strake/room"
	"strake/tape"
)

// Kind says what a reading is the distance of.
type Kind string

// The ways a tape is held. Off, Along and Width name a wall.
const (
	Between Kind = ""      // straight from From to To
	Off     Kind = "off"   // from From square to the line of Wall
	Along   Kind = "along" // along Wall, from its corner From to the place square below To
	Width   Kind = "width" // from From, a point on a wall, square to that wall across to Wall
)

// Reading is a distance as the tape said it. 151-3/8 in from A to C is
// {From: "A", To: "C", Value: 151-3/8 in, Step: 1/8 in}.
type Reading struct {
	From, To string
	Kind     Kind
	Wall     room.Wall // Off, Along, Width
	Value    tape.Length
	Step     tape.Length // it was read to this step: 1/16 in, 1 mm; 0 unknown
	SD       float64     // standard deviation in mm, 0: from the tape model
	Line     int         // line of the job file, 0 none
	Text     string      // as written, "" not known: slips of the pen are looked for in it
	Unit     tape.Unit   // of a number in Text without a unit
}

// Name is the reading as findings name it: A-C, "A square to wall C-D".
func (r Reading) Name() string {
	switch r.Kind {
	case Off:
		return r.From + " square to wall " + r.Wall.String()
	case Along:
		return "along wall " + r.Wall.String() + " from " + r.From + " to " + r.To
	case Width:
		return r.From + " square across to wall " + r.Wall.String()
	}
	return r.From + "-" + r.To
}
