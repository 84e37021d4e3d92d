package schedule

import "strake/ready"

// Zone is how a part of a row is laid.
type Zone int

// The zones.
const (
	FirstRows Zone = iota // by hand, a wall behind
	FieldRows             // by the floor nailer
	LastRows              // by hand, a wall ahead
)

// Row is a row, or a part of one, in the order of laying.
type Row struct {
	Name   string
	Number int
	Rooms  []string   // it lies in
	SqFt   [3]float64 // by Zone
}

// zone is the zone that most of a row lies in.
func (r Row) zone() Zone {
	best := FirstRows
	for z, x := range r.SqFt {
		if x > r.SqFt[best] {
			best = Zone(z)
		}
	}
	return best
}

// Layer is a layer that comes out.
type Layer struct {
	Name string
	Rate string // key of its rate; "" goes with the layer over it
	Test bool   // a laboratory is asked first
}

// Work is what there is to do, with its quantities.
type Work struct {
	Name       string
	Imperial   bool
	SqFt       float64
	Rooms      []string // in the order of laying
	Walls      float64  // feet of wall with a base
	Base       bool     // there is one, and it comes off
	BaseOn     bool     // it, or another, goes on
	Shoe       bool
	Doors      []string // whose leaves come off
	Appliances []string
	Layers     []Layer // that come out, from the top
	LayersTold bool
	Paint      bool // paint is tested before trim comes off or a jamb is sawn
	AgeUnknown bool // neither the year of the house nor a test of its paint is told
	Screws     int  // where it squeaks
	Flatten    int  // places to sand down or build up
	FlatTold   bool
	Panel      bool
	Slab       bool
	ReadUnder  int // readings of the subfloor asked for
	ReadBoards int
	Cartons    int
	CartonsBy  string // how the number was found
	Here       bool   // the boards are there: some were looked at or read
	Jambs      []string
	Sheet      bool
	Fields     int
	Rows       []Row
	Openings   []string // with a transition or nosing
	Glued      bool
	OnSite     bool // boards are sanded and finished in place
	Hold       Hold
}

// HoldKind is what readings of moisture say of the day that laying may begin.
type HoldKind int

// The kinds, from the lightest.
const (
	Free   HoldKind = iota // readings say go
	Unread                 // readings that are a step of the job are missing
	Until                  // the log of the boards tells the day
	Open                   // nobody can tell the day
)

// Hold is what keeps the first row from being laid. It outranks the calendar.
type Hold struct {
	Kind  HoldKind
	Day   Day // Until: not before it
	Early Day // and nine times in ten from here
	Late  Day // to here; 0: readings allow no latest day
	Why   []ready.Verdict
	Other []ready.Verdict // of strake ready, on other things, while which nothing may be laid
}
