// Package room is the place as built: rooms with named corners, the doorways
// between them, and what stays where it is.
//
// A room of corners A, B, C, D is a ring in that order; an L-shaped one has a
// corner that stands into the room. A doorway in wall A-B lies at a distance
// from one of its corners. A hearth 60 in wide and 20 in deep against wall C-D
// stays, and the floor goes round it.
package room

import (
	"slices"

	"strake/plane"
	"strake/tape"
)

// Wall names a wall by its two corners, neighbours in a room's ring.
type Wall [2]string

// String is the wall as written: A-B.
func (w Wall) String() string { return w[0] + "-" + w[1] }

// Room is one room or closet: its corners in order round it. Corner names are
// unique in a job.
type Room struct {
	Name      string
	Corners   []string
	Clockwise bool               // the order of Corners, seen from above; else counter-clockwise
	Into      []string           // corners that stand into the room
	Angles    map[string]float64 // inside angle in degrees, where not square
	Bows      []Bow              // where its walls are not straight
}

// Ring is the corners counter-clockwise seen from above, the first one first.
func (r Room) Ring() []string {
	out := slices.Clone(r.Corners)
	if r.Clockwise && len(out) > 1 {
		slices.Reverse(out[1:])
	}
	return out
}

// Turn is the inside angle of a corner in degrees: as given, else 270 where it
// stands into the room and 90 elsewhere. Given tells which.
func (r Room) Turn(corner string) (degrees float64, given bool) {
	if a, ok := r.Angles[corner]; ok {
		return a, true
	}
	if slices.Contains(r.Into, corner) {
		return 270, false
	}
	return 90, false
}

// FindWall tells which room has wall w, and the wall's corners in that room's
// counter-clockwise order; ok is false when no room has them as neighbours.
func (s Sketch) FindWall(w Wall) (roomIndex int, ccw Wall, ok bool) {
	for i, r := range s.Rooms {
		ring := r.Ring()
		for k, a := range ring {
			b := ring[(k+1)%len(ring)]
			if a == w[0] && b == w[1] || a == w[1] && b == w[0] {
				return i, Wall{a, b}, true
			}
		}
	}
	return 0, w, false
}

// Inner are the doorways to other rooms of the floor that a name means: the
// doorway of that name, else those of the room of that name.
func (s Sketch) Inner(name string) []Doorway {
	var out []Doorway
	for _, d := range s.Doorways {
		if d.Name == name && d.Beyond == BeyondRoom {
			return []Doorway{d}
		}
		near, _, ok := s.FindWall(d.Wall)
		far, _, ok2 := s.FindWall(d.OtherWall)
		if ok && ok2 && d.Beyond == BeyondRoom && (s.Rooms[near].Name == name || s.Rooms[far].Name == name) {
			out = append(out, d)
		}
	}
	return out
}

// Point is a named place on a wall, for readings.
type Point struct {
	Name string
	Wall Wall
	From string // a corner of Wall
	At   tape.Length
}

// Beyond says what lies on the other side of a doorway.
type Beyond string

// What may lie beyond a doorway.
const (
	BeyondRoom       Beyond = "room"        // another room of this job
	BeyondFlush      Beyond = "flush floor" // tile or another floor, met flush
	BeyondTransition Beyond = "transition"  // other flooring or carpet, under a transition strip
	BeyondStair      Beyond = "stair"       // a stair head; the nosing is fastened there
)

// Doorway is an opening in a wall.
type Doorway struct {
	Name      string
	Wall      Wall
	From      string      // corner the distance is taken from
	At        tape.Length // from that corner to the near jamb
	Width     tape.Length // between the jambs
	Thickness tape.Length // of the wall there
	Undercut  bool        // boards pass under both jambs
	Casing    tape.Length // from a jamb's face to the outer edge of its casing on the wall
	Cased     bool        // Casing was told
	Beyond    Beyond
	OtherWall Wall        // BeyondRoom: the wall on the far side
	OtherFrom string      // BeyondRoom
	OtherAt   tape.Length // BeyondRoom: from that corner to the near jamb there
	Ends      tape.Length // otherwise: how deep in the wall this floor ends
	Rows      RowsAt      // BeyondRoom: what the rows do here
	Old       Old         // otherwise: boards that lie beyond already
}

// Offer is what an old floor offers at its edge.
type Offer string

// The offers.
const (
	OffersSquare Offer = "square"
	OffersTongue Offer = "tongue"
	OffersGroove Offer = "groove"
)

// Old is an old floor of boards beyond a doorway.
type Old struct {
	Offers   Offer
	RowWidth tape.Length // 0: there is none
	Along    bool        // its rows lie along the opening; else they end at it
	EdgeAt   tape.Length // Along not: one of its row edges, from Doorway.From along the wall
}

// RowsAt says what rows do at a doorway between two rooms of the floor.
type RowsAt string

// The ways.
const (
	RowsThrough RowsAt = ""       // they go on
	RowsTurn    RowsAt = "turn"   // beyond, rows lie along the doorway
	RowsHeader  RowsAt = "header" // a board across it parts two fields
)

// StayKind says what it is that stays.
type StayKind string

// What may stay.
const (
	Hearth   StayKind = "hearth"
	Tile     StayKind = "tile"
	Column   StayKind = "column"
	Register StayKind = "register"
	Cabinet  StayKind = "cabinet"
	Pipe     StayKind = "pipe"
)

// Meets says how the floor meets something that stays.
type Meets string

// The three ways.
const (
	MeetsFlush      Meets = "flush"      // fine joint at row ends, soft joint beside
	MeetsGap        Meets = "gap"        // a gap like at a wall, under a cover
	MeetsTransition Meets = "transition" // a strip overlaps the edge
)

// Past says how a tape gets past something that stays.
type Past string

// The two ways.
const (
	PastOver  Past = "over"  // it is low: the tape is pulled over it
	PastRound Past = "round" // it stands up: no tape passes
)

// FrameKind is how boards lie round something that stays.
type FrameKind string

// The ways.
const (
	NoFrame FrameKind = ""
	Mitred  FrameKind = "mitred"
	Butted  FrameKind = "butted"
)

// Stay is something that stays: by named corners that readings reach, or as a
// rectangle set out from a wall.
//
// Its sides are counted from 0: side i of corners runs from corner i to the
// next; of a rectangle 0 is the side at the wall, 2 the one away from it, 1 and
// 3 stand off the wall, 1 at its second corner's end counter-clockwise.
type Stay struct {
	Name    string
	Kind    StayKind
	Meets   Meets
	Past    Past        // "": round for a column, cabinet or pipe, over for the rest
	Cover   tape.Length // MeetsGap: what covers the gap (flange, collar, toe-kick); 0: the base and shoe
	Corners []string    // by corners; else:
	Wall    Wall
	From    string
	At      tape.Length // from that corner along the wall to its near side
	Off     tape.Length // from the wall to its near edge, 0 when it stands against it
	Width   tape.Length // along the wall
	Depth   tape.Length // square to the wall
	Frame   FrameKind   // boards round it
}

// StandsUp tells whether no tape passes over it. A hearth, tile or register
// lies low unless the job says otherwise.
func (s Stay) StandsUp() bool {
	if s.Past != "" {
		return s.Past == PastRound
	}
	return s.Kind == Column || s.Kind == Cabinet || s.Kind == Pipe
}

// Sketch is what exists, by name, before the readings give it a shape.
type Sketch struct {
	Rooms    []Room
	Points   []Point
	Doorways []Doorway
	Stays    []Stay
}

// Built is the sketch with its corners in place: every corner and point on
// the floor plan in mm.
type Built struct {
	Sketch
	At map[string]plane.XY
}
