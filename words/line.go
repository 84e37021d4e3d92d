package words

import "fmt"

// LineText is the working line in a sentence.
func LineText(w WorkingLine, s Lengths) string {
	if w.Wall == "" {
		return fmt.Sprintf("No wall lies along the rows: snap the working line, the front edge of row %s without its tongue, between its two marks in the list of lines (there it is marked \"start\").", w.Row)
	}
	end := func(corner, side string) string {
		if corner == "" {
			return "at the " + side + " end"
		}
		return "at corner " + corner
	}
	return fmt.Sprintf("Snap the working line %s from wall %s %s and %s %s: the front edge of row %s, without its tongue, keeps to it.",
		s.Rip(w.Left), Wall(w.Wall), end(w.LeftCorner, "left"), s.Rip(w.Right), end(w.RightCorner, "right"), w.Row)
}
