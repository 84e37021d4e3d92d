package trim

import (
	"strake/limits"
	"strake/room"
	"strake/tape"
)

// Floor is what there is to know of the floor besides the heights measured.
type Floor struct {
	Board    tape.Length // thickness of the boards
	Felt     bool        // felt or paper is laid under them
	Old      tape.Length // what lies over the subfloor now and comes out
	Unit     tape.Unit
	Doorways []room.Doorway
	Stays    []room.Stay
	Limits   limits.Limits
	Walls    []Gap
	Laid     bool        // Walls are as laid, else as the gap ranges allow at most
	Winter   tape.Length // how much narrower the widest board becomes by winter, 0 not known
}

// work is a job of heights on its floor.
type work struct {
	job Job
	f   Floor
}

// Step is what heights are rounded to on paper: felt is 1/32 in.
func (f Floor) style() tape.Style {
	if f.Unit.Imperial() {
		return tape.Style{Unit: tape.UnitInch, Step: tape.Inch / 32}
	}
	return tape.Style{Unit: tape.UnitMillimetre, Step: tape.Millimetre / 10}
}

// say prints a height; up prints what has to reach.
func (w work) say(l tape.Length) string { return w.f.style().Of(l) }
func (w work) up(l tape.Length) string  { return w.f.style().Up(l) }

// doorway is the doorway of a name.
func (w work) doorway(name string) (room.Doorway, bool) {
	for _, d := range w.f.Doorways {
		if d.Name == name {
			return d, true
		}
	}
	return room.Doorway{}, false
}

// stay is the thing of a name that stays.
func (w work) stay(name string) (room.Stay, bool) {
	for _, s := range w.f.Stays {
		if s.Name == name {
			return s, true
		}
	}
	return room.Stay{}, false
}

// over is a measured height, counted from the subfloor.
func (w work) over(l tape.Length) tape.Length {
	if w.job.From == Now {
		return l + w.f.Old
	}
	return l
}
