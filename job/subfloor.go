package job

import (
	"strake/fasten"
	"strake/ready"
	"strake/room"
	"strake/subfloor"
	"strake/tape"
)

// Subfloor is what was found under the boards; zero where nothing was told.
type Subfloor struct {
	On       subfloor.Base
	Built    int
	Flat     string           // name of a published rule, "" the usual one
	Own      []subfloor.Limit // figures of the job's own, by rising length; they go before Flat
	OwnBy    string           // whose: maker (or "") or code
	OwnFrom  string           // where they come from
	Layers   []subfloor.Layer
	Readings []subfloor.Reading
	Heights  Heights
	Squeaks  []subfloor.Squeak
}

// Told tells whether anything was.
func (s Subfloor) Told() bool { return s.On != "" }

// Heights is a grid of heights and where it lies: its lines along a wall, the
// first mark so far from a corner along it and the first line so far off it.
type Heights struct {
	subfloor.Grid
	Wall    room.Wall
	From    string
	At, Off tape.Length
}

// Fasteners are choices that go before those of the schedule; zero: none.
type Fasteners struct {
	Told                 bool
	Kind                 fasten.Kind
	Length, Spacing, End tape.Length
	Box                  int
	By                   string // whose choice: maker (or "") or code
	From                 string // where it comes from
}

// KeepFree is a part of the floor that fasteners keep out of: a rectangle set out
// from a wall, long along it.
type KeepFree struct {
	Name          string
	What          string // pipe, heating, cable, duct
	Wall          room.Wall
	From          string
	At, Off       tape.Length
	Width, Depth  tape.Length
	Below, Margin tape.Length
	Known         bool // Below was told
}

// Rule is the rule of flatness of a job and whose it is, for fasteners of a length.
func (s Subfloor) Rule(fastener tape.Length) (subfloor.Rule, ready.Rank) {
	if len(s.Own) > 0 {
		rank := ready.Maker
		if s.OwnBy == "code" {
			rank = ready.Code
		}
		return subfloor.Own(s.Own, s.OwnFrom), rank
	}
	if r, ok := subfloor.Find(s.Flat); ok {
		return r, ready.Guidance
	}
	if _, wood, _ := subfloor.Nailing(subfloor.Fates(s.Layers, s.Built)); s.On == subfloor.OnSlab && wood == "" {
		return subfloor.USStrict, ready.Guidance // the figure that is quoted for concrete
	}
	return subfloor.Default(fastener), ready.Guidance
}
