// Package job is everything that is asked: the room as sketched and read, the
// boards, the limits and the wishes.
package job

import (
	"strake/caution"
	"strake/goods"
	"strake/limits"
	"strake/moisture"
	"strake/order"
	"strake/quote"
	"strake/receive"
	"strake/room"
	"strake/schedule"
	"strake/site"
	"strake/stock"
	"strake/survey"
	"strake/tape"
	"strake/trim"
)

// Job is one floor to plan.
type Job struct {
	Name     string
	Unit     tape.Unit // lengths are printed in, and bare numbers read in
	Paper    string    // what is printed on, of Papers; "" by the unit
	Sketch   room.Sketch
	Readings []survey.Reading
	Tape     survey.Model // how far readings are trusted; zero: survey.Tape()
	Boards   stock.Boards
	Limits   limits.Limits // defaults filled in
	Base     tape.Length   // thickness of the baseboard, 0 none
	Shoe     tape.Length   // thickness of the shoe in front of it, 0 none
	Joists   Joists
	Subfloor Subfloor
	Nails    Fasteners
	KeepFree []KeepFree
	Trim     trim.Job
	Wishes   Wishes
	Pins     Pins
	Laid     []Laid // runs as laid, in the order written
	Site     site.Site
	Moisture moisture.Job
	Received receive.Delivery
	Hazards  caution.House
	Order    order.Wants
	Goods    goods.Wants
	Schedule schedule.Job
	Quote    quote.Terms
	Handover Handover
	Seed     uint64
}

// Papers are the sizes of sheet that a packet is printed on: ISO 216 A4, and 8-1/2 by 11 in.
var Papers = []string{"a4", "letter"}

// Joists are what the subfloor lies on.
type Joists struct {
	Along   room.Wall   // they run along this wall; empty: not known
	Spacing tape.Length // on centre, 0 not known
	First   tape.Length // from the line of that wall to the centre of one
	Placed  bool        // First was told
}

// Pins are wishes that are kept even where they break a limit.
type Pins struct {
	RowEdge   string // a row edge on this corner or point
	FullBoard string // a full board along this edge: a wall A-B, a doorway, something that stays
	Rip       Rip
	Spline    string                   // the first two rows meet on the line through this corner or point
	Tongues   room.Wall                // side tongues face this wall
	Taper     room.Wall                // this wall takes the taper
	From      string                   // rows of this room, or through this doorway, go on without a break
	Stepped   room.Wall                // each piece along this wall is ripped to one width
	Boards    map[string][]tape.Length // of a row by its name, such as 12a: these boards, from left to right
}

// Rip is a width asked for at an edge.
type Rip struct {
	At    string
	Width tape.Length
}

// Wishes are what the person would like.
type Wishes struct {
	Direction  room.Wall    // rows run along this wall; empty: the longest
	Across     bool         // rows run square to it instead
	Angle      float64      // degrees that rows are turned from that, counter-clockwise
	Between    [2]room.Wall // rows run halfway between these two walls
	StartWall  room.Wall    // first row along this wall; empty: strake's choice
	RunThrough string       // rows run through this doorway without a break
	From       string       // rows of this room, or through this doorway, go on without a break
	EdgeOn     string       // a row edge on this corner
	FullBoard  string       // a full board along this edge: a wall A-B, a doorway, something that stays
	Taper      room.Wall    // this wall takes the taper
	Seen       []room.Wall  // walls where a taper would be seen
	Middle     bool         // the first rows lie in the middle of the floor and go both ways
	Backwards  string       // which pockets behind the start are laid backwards: "short", "all" or "none"
	Shades     stock.Shades // how boards of several shades are laid; empty: spread
	WoodFirst  bool         // saving wood comes before looks
}
