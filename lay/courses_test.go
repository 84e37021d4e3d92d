package lay

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"strake/tape"
)

// Every height lies in the row that is told for it, and a walk from line to
// line finds the same lines.
func TestCourses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := Courses{Offset: tape.Length(rapid.IntRange(-500, 500).Draw(t, "offset"))}
		for range rapid.IntRange(1, 6).Draw(t, "rows") {
			c.Widths = append(c.Widths, tape.Length(rapid.IntRange(1, 40).Draw(t, "width")))
		}
		var walked []tape.Length
		for y, k := c.Offset-3*c.Period(), 0; y < c.Offset+3*c.Period(); k++ {
			walked = append(walked, y)
			y += c.Widths[k%len(c.Widths)]
		}
		for i, y := range walked {
			if n := i - 3*len(c.Widths); c.Line(n) != y || c.Row(y) != n {
				t.Fatalf("line %d lies at %d, told at %d; row there told as %d", n, y, c.Line(n), c.Row(y))
			}
		}
		y := tape.Length(rapid.IntRange(int(walked[0]), int(walked[len(walked)-1])-1).Draw(t, "y"))
		n := c.Row(y)
		if low := c.Line(n); y < low || y >= low+c.Width(n) || c.Line(n+1) != low+c.Width(n) {
			t.Fatalf("%d is told to lie in row %d, from %d on, %d wide", y, n, low, c.Width(n))
		}
		i, found := slices.BinarySearch(walked, y)
		if above := walked[i]; c.Above(y) != above {
			t.Fatalf("first line at or above %d: %d, told %d", y, above, c.Above(y))
		}
		if !found {
			i--
		}
		if c.Below(y) != walked[i] {
			t.Fatalf("last line at or below %d: %d, told %d", y, walked[i], c.Below(y))
		}
	})
}
