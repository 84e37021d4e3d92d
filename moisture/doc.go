// Package moisture is whether boards, subfloor and air are dry enough, and of
// one mind, for a floor to be laid: readings of a moisture meter and of a
// thermo-hygrometer against the rules of the trade, and a log of readings that
// tells when boards will be there.
//
// A room of 68 °F and 30 % in winter and 78 °F and 55 % in summer brings wood to
// 6.2 and 9.9 %: boards of 5 in red oak laid halfway, at 8.1 %, open gaps of 0.035 in by
// winter. Twenty readings of a subfloor with a mean of 12.6 % are held to 12 %:
// wait. Everything is a pure function of what was read.
package moisture

import (
	"strake/ready"
	"strake/tape"
)

// Job is what was read of boards, subfloor, slab and air.
type Job struct {
	Climate  Climate
	Meter    Meter
	Boards   Sample
	Subfloor Sample
	Slab     Slab
	Log      []Entry
	Limits   Limits
}

// Entry is one day of the acclimation log.
type Entry struct {
	Day   int // days since 1 January 1970
	Reads []float64
}

// Slab is what tests of a concrete slab gave.
type Slab struct {
	Humidity []float64 // in-slab relative humidity, percent (ASTM F2170)
	Emission []float64 // lb of water per 1,000 sq ft in 24 h (ASTM F1869)
}

// Floor is what there is to know of the floor that readings are judged for.
type Floor struct {
	Species  string        // as the job names it
	Faces    []tape.Length // face widths of the boards
	SqFt     float64       // area in square feet, 0 not known
	Across   tape.Length   // measured across the boards, 0 not known
	Gap      tape.Length   // the expansion gap at walls, 0 not known
	Under    string        // what the subfloor's top layer is made of, "" not known
	Slab     bool          // there is no wood subfloor: the boards go on concrete
	Imperial bool
}

// widest is the face width of the widest boards.
func (f Floor) widest() tape.Length {
	var w tape.Length
	for _, x := range f.Faces {
		w = max(w, x)
	}
	return w
}

// Verdicts is everything there is to say, in the order of the work: air, season
// and movement, subfloor, boards, the two against each other, slab, log.
func Verdicts(j Job, f Floor) []ready.Verdict {
	var out []ready.Verdict
	out = append(out, j.air()...)
	out = append(out, j.season(f)...)
	out = append(out, j.missing(f)...)
	sub, boards := j.Meter.Look(j.Subfloor), j.Meter.Look(j.Boards)
	out = append(out, j.meter(j.Subfloor, sub, subfloor)...)
	out = append(out, j.underSetting(f)...)
	out = append(out, j.subfloor(sub, f)...)
	out = append(out, j.meter(j.Boards, boards, theBoards)...)
	out = append(out, j.setting(f)...)
	out = append(out, j.boards(boards, f)...)
	out = append(out, j.apart(boards, sub, f)...)
	out = append(out, j.slab(f)...)
	return append(out, j.log(sub, f)...)
}

// The places that verdicts name.
const (
	subfloor  = "subfloor"
	theBoards = "boards"
)
