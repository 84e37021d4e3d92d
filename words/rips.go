package words

import (
	"strake/row"
	"strake/tape"
)

// RipWidths says how wide the row along a closing edge is at its two ends.
func RipWidths(r row.Rip, pitch tape.Length, s Lengths) string {
	switch {
	case r.Left == pitch && r.Right == pitch:
		return "a full board"
	case s.Rip(r.Left) == s.Rip(r.Right):
		return s.Rip(r.Left)
	}
	return s.Rip(r.Left) + " at its left end, " + s.Rip(r.Right) + " at its right end"
}
