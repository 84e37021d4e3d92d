package stock

import "strake/tape"

// How well the row width is known, one standard deviation.
const (
	// Ten boards read over to some 1 mm: a tenth of that a row (hook and
	// reading, from memory).
	measuredPitch = tape.Millimetre / 10
	// Boards as printed: laid rows were seen to gain 0.1 to 1.3 mm each
	// (retold cases, no source), so 0.4 mm stands in.
	printedPitch = 4 * tape.Millimetre / 10
)

// PitchSD is the standard deviation of the row width.
func (b Boards) PitchSD() tape.Length {
	if b.TenBoards > 0 {
		return measuredPitch
	}
	return printedPitch
}
