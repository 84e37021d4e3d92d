package stock

import "strake/tape"

// Shift is how far joints move from row to row where all boards have one
// length and lie in a fixed pattern: a length, or Num/Den of a board.
type Shift struct {
	Length   tape.Length
	Num, Den int
}

// Fixed tells whether there is such a pattern.
func (s Shift) Fixed() bool { return s.Length > 0 || s.Den > 0 }

// Of is the shift of boards of a length.
func (s Shift) Of(board tape.Length) tape.Length {
	if s.Den > 0 {
		return board * tape.Length(s.Num) / tape.Length(s.Den)
	}
	return s.Length
}
