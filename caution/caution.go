// Package caution is what can hurt somebody while a floor is laid: what has to be
// cleared before a task is begun, as verdicts, and what is minded while it is
// done, task by task.
//
// A house of 1962 has painted trim that comes off, and nobody tested the paint:
// the verdict is {Say: Fix, Rule: "old paint", Where: "base and jambs", Measured:
// "house of 1962, not tested", Do: "Have it tested ..."}. With the task "nail"
// goes, among others: the nailer on single shots, never over the hand that holds
// the board.
//
// Nothing here judges a structure, a fireplace or a service: it asks, names the
// official rule where one is known, and leaves the verdict to local code and a
// licensed professional.
package caution

import (
	"strake/ready"
	"strake/site"
	"strake/tape"
)

// Paint is what is known of the paint on what is taken off, cut or sanded.
type Paint string

// What may be known. Nothing written: not tested.
const (
	NoPaint   Paint = "none"  // none is touched
	CleanOne  Paint = "clean" // tested: no lead
	LeadPaint Paint = "lead"  // tested: lead
)

// Structure is what was seen of what carries the floor.
type Structure string

// What may have been seen.
const (
	Sound  Structure = "sound"
	Sags   Structure = "sags"           // it sags or bounces
	Joists Structure = "joists cut"     // a joist is cut, notched or planed, or is to be
	Wall   Structure = "wall comes out" // a wall is removed, or was
)

// Guard is what becomes of the guard rail at an open edge.
type Guard string

// What may become of it.
const (
	Stays     Guard = "stays"
	ComesOff  Guard = "comes off"
	Temporary Guard = "temporary" // it comes off, and a temporary one is ready
)

// Finish is where the boards get their finish.
type Finish string

// The places.
const (
	Factory Finish = "factory"
	OnSite  Finish = "on site"
)

// Fireplace is an opening for fire and what lies before it that does not burn.
type Fireplace struct {
	Name          string
	Width, Height tape.Length // of its opening
	Front         tape.Length // from the opening out to the first wood
	Side          tape.Length // from the side of the opening to the first wood, the lesser of the two
}

// Stack is how cartons are stacked.
type Stack struct {
	High       int         // cartons on top of each other, 0 not told
	Long, Wide tape.Length // of a carton as it lies, 0 not known
	Pounds     float64     // weight of one, 0: by its boards
}

// Noise is a tool with its level at the ear, in dBA.
type Noise struct {
	Tool  string
	Level float64
}

// Limits are limits that replace the guidance, by their keys.
type Limits = ready.Limits

// House is what the job says of what can hurt.
type House struct {
	Told       bool
	Paint      Paint
	Services   site.Answer // pipes, tubes and cables were looked for
	Structure  Structure
	Guard      Guard
	Fireplaces []Fireplace
	Finish     Finish
	Stack      Stack
	Noises     []Noise
	Limits     Limits
}

// Work is what hands are asked to do, read off the job and its plan.
type Work struct {
	House
	Built     int         // year of the building, 0 not known
	Base      bool        // a baseboard is handled
	Undercut  []string    // openings whose jambs are undercut
	Stairs    []string    // openings at a stair head
	TearOut   bool        // a layer comes out
	Tested    bool        // one of them may hold asbestos
	Mineral   bool        // a slab, tile, backer or leveller may be ground or broken
	Sanded    bool        // a wood subfloor is made flat
	Heated    bool        // there is heating in the floor
	KeepFree  int         // parts that fasteners keep out of
	Crawl     bool        // a crawl space is looked into
	Glued     bool        // boards are glued as well
	Slab      bool        // nothing is nailed down into joists
	Thickness tape.Length // of the boards
	Carton    float64     // square feet of boards in one, 0 not known
	Species   string      // of the boards
	Style     tape.Style  // how lengths are said
}

// Verdicts are what has to be cleared, in the order of the work.
func Verdicts(w Work) []ready.Verdict {
	var out []ready.Verdict
	for _, ask := range []func() []ready.Verdict{w.structure, w.paint, w.fireplaces, w.guard, w.services, w.stack, w.noise} {
		out = append(out, ask()...)
	}
	return out
}

// imperial tells which system figures are said in.
func (w Work) imperial() bool { return w.Style.Unit.Imperial() }
