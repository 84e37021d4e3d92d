package stock

import "strake/tape"

// Fault is what is wrong with a board.
type Fault string

// The faults. What each means for laying is common practice, no source.
const (
	Sound         Fault = ""
	Crooked       Fault = "crooked"            // bent along its edge: never in first and last rows; pulled straight in mid-field
	Bowed         Fault = "bowed"              // bent on the flat: nails pull it down
	Twisted       Fault = "twisted"            // a cull
	SpoiledGroove Fault = "damaged groove end" // its groove end is cut off: it starts a row
	SpoiledTongue Fault = "damaged tongue end" // its tongue end is cut off: it ends a row
	OffWidth      Fault = "off width"          // mates badly along its edge: only where the row is ripped
	OffShade      Fault = "off shade"          // used last
	KeptOut       Fault = "kept out"           // not to be laid, whatever the reason
)

// Faults are all that may be written.
var Faults = []Fault{Crooked, Bowed, Twisted, SpoiledGroove, SpoiledTongue, OffWidth, OffShade, KeptOut}

// Cull tells whether boards with the fault are not laid at all.
func (f Fault) Cull() bool { return f == Twisted || f == KeptOut }

// StraightEnough is the piece of a crooked board from which on it counts as
// crooked: shorter ones pull straight by themselves (common practice, no
// source).
const StraightEnough = 2 * tape.Foot

// Marks are what is known of a board besides its length.
type Marks struct {
	Fault   Fault
	Spoiled tape.Length // how much of a damaged end is no use
	Carton  string      // which carton it came in; empty: not known
	Shade   string      // its shade among the others, such as dark; empty: like all
}

// Shades says how boards of several shades are to be laid.
type Shades string

// The ways with shades.
const (
	SpreadShades Shades = "spread" // neighbours of another shade where it can be
	ShadesApart  Shades = "apart"  // each shade has its own part of the floor, in the order of the tally
)
