package words

import "strake/tape"

// Lengths prints the lengths of one job.
type Lengths struct{ long, fine tape.Style }

// In is the way lengths of a job in unit u are printed.
func In(u tape.Unit) Lengths {
	if u.Imperial() {
		return Lengths{tape.Paper(u), tape.Style{Unit: tape.UnitInch, Step: tape.Inch / 32}}
	}
	return Lengths{tape.Paper(u), tape.Style{Unit: tape.UnitMillimetre, Step: tape.Millimetre / 2}}
}

// Of prints a length along the boards or a wall, to the nearest 1/16 in or 1 mm.
func (s Lengths) Of(l tape.Length) string { return s.long.Of(l) }

// Rip prints a width for the saw, to the nearest 1/32 in or 0.5 mm.
func (s Lengths) Rip(l tape.Length) string { return s.fine.Of(l) }

// Nil tells whether l is too small to measure: it prints as 0 as a width for
// the saw.
func (s Lengths) Nil(l tape.Length) bool { return s.Rip(l) == s.Rip(0) }

// Rips prints the widths at the two ends, once when they print alike.
func (s Lengths) Rips(left, right tape.Length) string {
	a, b := s.Rip(left), s.Rip(right)
	if a == b {
		return a
	}
	return a + " to " + b
}
