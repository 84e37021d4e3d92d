package job

import (
	"strake/room"
	"strake/tape"
)

// Laid is a run as it lies on the floor, nailed or laid dry: row 12a with
// boards of 58, 71 and 44 in, the first of them 3/4 in off the wall.
type Laid struct {
	Row    string        // its name in the row list: 12, or 12a
	Pieces []tape.Length // their faces, from left to right
	Cut    Cut
	Start  Read // from what its left end comes to, to its first piece; or from a wall named
	Tongue Read // its tongue edge, from the front of the first row; or from a wall named
}

// Cut says which ends of a run as laid are cut.
type Cut string

// The ways. An end that is not cut keeps what the mill made there.
const (
	CutUnknown Cut = ""
	CutNone    Cut = "none"
	CutLeft    Cut = "left"
	CutRight   Cut = "right"
	CutBoth    Cut = "both"
)

// Read is a distance read on the floor.
type Read struct {
	Told bool
	At   tape.Length
	From room.Wall // from the line of this wall; empty: see where it is used
}
