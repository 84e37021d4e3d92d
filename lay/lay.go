// Package lay is a floor as planned or laid, board by board, knowing nothing
// of how it was found.
//
// Row 12 of a room may be two runs, 12a left of the hearth and 12b right of
// it. Run 12a is 96 in: a whole board of 58 in, then 38 in cut from board 71;
// the 30 in that is left of board 71, less the kerf, starts row 14, cut end to
// the wall. Every piece has its absolute place in the row frame of its zone
// and its place in the board it came from, so both floor and boards can be
// proved by area.
package lay

import (
	"strake/finding"
	"strake/plane"
	"strake/stock"
	"strake/tape"
)

// Lay is the whole of a floor.
type Lay struct {
	Example  bool // boards are not known: piece lengths are an example
	Known    stock.Known
	Seed     uint64
	Kerf     tape.Length // blade
	Zones    []Zone
	Runs     []Run   // in the order of laying
	Pieces   []Piece // Pieces[i].ID == i
	Boards   []Board // Boards[i].ID == i; boards that were left over are not here
	Spare    []stock.Class
	Relaxed  []Relaxation
	Exempt   []Exemption
	Pins     []Pin
	Findings []finding.Finding // what the search had to say
}

// ZoneKind says what a zone is.
type ZoneKind string

// The kinds of zone.
const (
	Field  ZoneKind = "field"
	Header ZoneKind = "header"
	Frame  ZoneKind = "frame"
)

// Zone is a part of the floor whose boards lie one way. Its frame has X along
// the rows and Y across; the side tongues face +Y when Ahead is 1, -Y when -1.
type Zone struct {
	ID      int
	Kind    ZoneKind
	Dir     plane.Dir
	Width   tape.Length   // of a board: the pitch in the field, the face in a header or frame; of several widths the widest
	Offset  tape.Length   // Y of a row line; the others are whole widths away
	Pattern []tape.Length // widths of the rows, over and over from Offset on toward +Y; empty: all are Width
	Ahead   int           // 1 or -1
	Hand    stock.Hand    // which end carries the end tongue, side tongue away from you
	Outline plane.Region  // of the zone in its frame; nil: the whole floor
	Butt    tape.Length   // stated gap at the zone's lines, on the field's side
}

// TongueRight tells whether boards of the zone have their end tongue towards
// +X. With the side tongue ahead (+Y) a right-hand board has it to the right;
// turned by half a turn, to the left.
func (z Zone) TongueRight() bool { return (z.Hand != stock.LeftHand) == (z.Ahead >= 0) }

// Profile is what an end or a long edge of a piece carries.
type Profile string

// The profiles.
const (
	Groove    Profile = "groove"
	Tongue    Profile = "tongue"
	TongueOff Profile = "tongue off" // a factory tongue sawn or planed flush
	Cut       Profile = "cut"        // a measured crosscut, square or mitred
	Ripped    Profile = "ripped"     // a long edge sawn
	Plain     Profile = "plain"      // square as bought
	Spline    Profile = "spline"     // a groove with a slip tongue glued in
)

// How says the way a piece comes into its place.
type How string

// The ways.
const (
	Slid    How = "slid"    // along and up against the row behind
	Dropped How = "dropped" // lower groove lip removed, glued, face-nailed
	Angled  How = "angled"  // angled in: a closing row
)

// Fasten is the fastening zone.
type Fasten string

// The fastening zones.
const (
	Nailer   Fasten = "nailer"
	HandNail Fasten = "hand"
	FaceNail Fasten = "face"
)

// Stretch is a part of a run that is fastened in one way.
type Stretch struct {
	Along plane.Span // X
	By    Fasten
}

// Piece is a whole board or a part of one in its place on the floor.
type Piece struct {
	ID      int
	Run     int        // Run.ID
	Board   int        // Board.ID
	Outline plane.Ring // on the floor, in the zone's frame, counter-clockwise
	InBoard plane.Ring // the same shape in the board's frame
	Turned  bool       // half a turn between the two
	// Left and Right are the ends towards -X and +X, Behind and Ahead the long
	// edges towards -Y and +Y: all as laid, in the zone's frame.
	Left, Right, Behind, Ahead Profile
	// Off lists where along X the side tongue is taken off though the edge is
	// otherwise whole: beside a hearth that the row only passes in part.
	Off []plane.Span
	// Slip lists where along X a spline (slip tongue) is glued into the side
	// groove: there it meets the groove of a row laid the other way.
	Slip []plane.Span
	// Routed lists sawn stretches of its outline that are grooved on the job,
	// to meet the boards of another zone.
	Routed []Routed
	How    How
}

// Routed is a sawn stretch that is grooved on the job: as a Groove, to take
// the tongue or spline beyond, or as a Spline, with a slip tongue glued in.
type Routed struct {
	From, To plane.Pt // along the piece's outline, in the zone's frame
	As       Profile
}

// Run is one unbroken stretch of a row.
type Run struct {
	ID                int
	Zone              int
	Row               int         // number across the zone from the start, 1 first
	Part              int         // 0 when the row is one run, else 1 for a, 2 for b ...
	Low, High         tape.Length // Y of the strip the row lies in
	Outline           plane.Ring  // what the pieces fill, in the zone's frame
	Pieces            []int       // from left to right
	Order             int         // place in the order of laying, 1 first
	Nailing           []Stretch   // from left to right, without a gap between
	LeftEnd, RightEnd EndRange
	Unfilled          bool // the boards ran out before this run
}

// EndRange is where the faces of a run may end at one side.
type EndRange struct {
	Edge    string      // name of the floor's edge there
	Reach   tape.Length // X of the farthest place a full-width face may reach
	Need    tape.Length // X it must at least reach
	Mitred  bool        // the end follows the edge instead of being square
	InPlace bool        // a crosscut measured in place
}

// Board is a board of stock that was used, whole or cut. Its frame has X along
// it and Y across, as seen from above with the side tongue away: the groove
// edge at Y 0, the tongue edge at Y Width. The end tongue is at X Length for a
// right-hand board, at X 0 for a left-hand one. Tongues stand outside the
// rectangle.
type Board struct {
	ID     int
	Length tape.Length
	Width  tape.Length
	stock.Marks
	Parts []Part // partition the rectangle Length by Width
}

// PartKind says what became of a part of a board.
type PartKind string

// What a part of a board may be.
const (
	IsPiece  PartKind = "piece"
	IsOffcut PartKind = "offcut" // cut from an end and long enough to use
	IsStrip  PartKind = "strip"  // ripped off along the board
	IsScrap  PartKind = "scrap"
	IsKerf   PartKind = "kerf"
)

// Part is one part of a board.
type Part struct {
	Kind    PartKind
	Piece   int        // IsPiece: Piece.ID, else -1
	Outline plane.Ring // in the board's frame, counter-clockwise
}

// Relaxation is a limit that the stock made impossible and the figure that
// was held to instead, for the joints between two runs.
type Relaxation struct {
	Rule string      // "joint distance"
	Run  int         // Run.ID: joints of this run against the runs beside it laid before
	From tape.Length // the limit
	To   tape.Length // held to instead
	Why  string
}

// Exemption names a run or edge that a rule does not bind, and why.
type Exemption struct {
	Rule string      // "shortest piece", "narrowest rip", "cover"
	Run  int         // Run.ID, -1 when it is about an edge
	Edge string      // name of the floor's edge, when it is about one
	To   tape.Length // what it is held to instead: the narrowest rip there, or how far boards may stay off the edge
	Pin  string      // the pin that makes it so, as Pin.String has it; empty: none
	Why  string
}
