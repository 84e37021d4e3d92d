package fasten

import "strake/tape"

// Count is how many fasteners a length takes: the first and last at most end from
// its ends, none farther from the next than spacing, two at least.
func Count(length, end, spacing tape.Length) int {
	over := length - 2*end
	if over <= 0 {
		return 2
	}
	return max(2, int((over+spacing-1)/spacing)+1)
}

// Rate is about how many a square foot takes of rows of one width without end:
// fewer than in truth, as each board has two ends.
func Rate(width, spacing tape.Length) float64 {
	return float64(tape.Foot) / float64(width) * (float64(tape.Foot) / float64(spacing))
}

// PilotWithin is how near to a board's end a nail splits it that has no pilot hole.
const PilotWithin = tape.Inch

// Along are the places of fasteners along a stretch of a board, from its start.
// On a short one they stand a quarter of it from its ends.
func (u Use) Along(length tape.Length) []tape.Length {
	if length <= 0 {
		return nil
	}
	end := min(u.End, length/4)
	n := max(u.PerBoard, Count(length, end, u.Spacing))
	out := make([]tape.Length, n)
	for i := range out {
		out[i] = end + (length-2*end)*tape.Length(i)/tape.Length(n-1)
	}
	return out
}
