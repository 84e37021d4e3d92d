package trim

import (
	"strake/ready"
	"strake/room"
	"strake/tape"
)

// From is what heights of a job are measured from.
type From string

// The two: the subfloor that boards are laid over, or what lies there now.
const (
	Subfloor From = "subfloor"
	Now      From = "now"
)

// Job is what was measured of heights; zero where nothing was told.
type Job struct {
	Told       bool
	From       From        // "": Subfloor
	Panel      tape.Length // laid over the subfloor, under the boards; 0 none
	Sheet      tape.Length // between; see SheetTold
	SheetTold  bool
	Stocked    Stocked
	Openings   []Opening
	Stairs     []Stair
	Appliances []Appliance
	Covers     []Cover
	Limits     Limits
}

// Stocked is what could be had: build-ups are compared over all of it.
type Stocked struct{ Boards, Panels []tape.Length }

// Layer is one layer of a floor.
type Layer struct {
	What      string
	Thickness tape.Length
}

// Opening is a doorway, or something that stays, where this floor meets another.
type Opening struct {
	Name     string // of a doorway or of what stays
	Covering string // what lies beyond: tile, carpet ...; "" not told
	Known    bool   // Height or Layers are told
	Height   tape.Length
	Layers   []Layer // the floor beyond from the top down to the same subfloor, instead of Height
	Shim     tape.Length
	Leaf     Leaf
	Jambs    Jambs
	Track    Track
}

// Leaf is the leaf of a hinged door.
type Leaf struct {
	Told     bool
	Of       string      // solid wood, hollow-core, steel, glass
	Clear    tape.Length // its bottom over what heights are measured from
	Beyond   bool        // it opens over the floor beyond
	Strip    tape.Length // how high a strip or saddle under it stands over the higher floor
	CutMost  tape.Length // the maker's figure, 0 not known
	Rated    bool        // fire-rated
	Exterior bool
}

// Jambs are the jambs and casings of an opening.
type Jambs struct {
	Told     bool
	Of       string // wood, steel, masonry
	Rated    bool
	Exterior bool
}

// Track is a bifold or sliding door, with the guide on the floor below it.
type Track struct {
	Told  bool
	Of    string      // bifold, sliding
	Clear tape.Length // bottom of the leaves over what heights are measured from
	Guide tape.Length // height of the floor guide or pivot bracket, screwed to the new floor
	Lifts tape.Length // how far the hangers or pivots still lift the leaves
}

// Stair is a flight that this floor is the foot or the head of.
type Stair struct {
	Name   string
	Head   bool          // this floor is at its head; else at its foot
	Risers []tape.Length // as they are now, from the foot up
	Treads tape.Length   // how much higher its treads will be
	Other  tape.Length   // how much higher the floor at its other end will be
	Shim   tape.Length
}

// Appliance is what stands under a counter or in a recess.
type Appliance struct {
	Name     string
	Opening  tape.Length // from what heights are measured from to the underside above
	Height   tape.Length // of it, feet turned in
	Feet     tape.Length // how far they turn out, 0 not known
	Boards   Where
	StandsOn tape.Length // Front: what it stands on, over the subfloor
}

// Where says where boards are to an appliance.
type Where string

// The two: under it, or ending in front of it.
const (
	Under Where = "under"
	Front Where = "front"
)

// Cover is what covers the gap at one wall, where it is not the base and shoe
// of the job.
type Cover struct {
	Wall      room.Wall
	Thickness tape.Length
}

// Limits are limits that replace the guidance, by their keys, in ticks.
type Limits = ready.Limits
