package survey

import (
	"math"

	"strake/plane"
	"strake/tape"
)

// Model says how far readings and assumptions are trusted.
type Model struct {
	ReadingMM     float64 // constant part of the tape's limit, as a standard deviation
	ScalePerM     float64 // mm per m, one shared error of the whole tape
	HookMM        float64 // hook and corner, each reading
	SquareDeg     float64 // a corner taken for square
	AngleDeg      float64 // an angle that was given
	DoorMM        float64 // jamb against jamb through a wall
	NoSquares     bool    // leave assumed square corners out
	NoScale       bool    // the tape has no scale error
	UnitWeights   bool    // every reading has a standard deviation of 1 mm
	DefaultStepMM float64 // rounding step where none is known
	WallMM        float64 // a wall between its corners, where no bow was read
	ShowMM        float64 // a reading is unchecked when a smaller blunder would not show
	Alike         float64 // readings whose tests correlate above this cannot be told apart
	LooseDeg      float64 // what a square corner is worth in the search for blunders
	// Fixed holds corners at known coordinates, mm; none: the first corner is
	// the origin and the first wall runs along X.
	Fixed map[string]plane.XY
}

// Tape is the default model: a class II tape, limit 0.3 mm + 0.2 mm/m
// (MID 2014/32/EU annex X, from memory), each part taken as even over its
// limit, hence over root 3; hook and corner 0.8 mm (from memory); corners of
// houses square to half a degree, walls straight to 1.5 mm (from memory).
func Tape() Model {
	return Model{
		ReadingMM: 0.3 / math.Sqrt(3), ScalePerM: 0.2 / math.Sqrt(3), HookMM: 0.8,
		SquareDeg: 0.5, AngleDeg: 0.25, DoorMM: 1.5, DefaultStepMM: tape.Sixteenth.Millimetres(),
		WallMM: 1.5, ShowMM: 12.7, Alike: 0.8, LooseDeg: 10,
	}
}

// deviation is the standard deviation of a reading in mm.
func (m Model) deviation(r Reading) float64 {
	switch {
	case m.UnitWeights:
		return 1
	case r.SD > 0:
		return r.SD
	}
	step := m.DefaultStepMM
	if r.Step > 0 {
		step = r.Step.Millimetres()
	}
	return math.Sqrt(m.ReadingMM*m.ReadingMM + m.HookMM*m.HookMM + step*step/12)
}
