package words

import (
	"strake/row"
	"strake/tape"
)

// RipWidths says how wide the row along a closing edge is at its two ends,
// with two standard deviations where readings or the row width leave it in
// doubt.
func RipWidths(r row.Rip, pitch tape.Length, s Lengths) string {
	doubt := ""
	if r.SD > 0 {
		doubt = " ± " + s.fine.Up(2*r.SD)
	}
	return ripWidths(r, pitch, s) + doubt
}

func ripWidths(r row.Rip, pitch tape.Length, s Lengths) string {
	switch {
	case r.Left == pitch && r.Right == pitch:
		return "a full board"
	case s.Rip(r.Left) == s.Rip(r.Right):
		return s.Rip(r.Left)
	}
	return s.Rip(r.Left) + " at its left end, " + s.Rip(r.Right) + " at its right end"
}
