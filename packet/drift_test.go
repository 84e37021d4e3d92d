package packet

import "testing"

// A row in parts is called by their names, as on its cards; a whole one by its number.
func TestRowsInParts(t *testing.T) {
	for _, c := range []struct {
		row   int
		parts []int
		want  string
	}{{26, []int{0}, "26"}, {27, []int{1, 2}, "27a, 27b"}, {27, []int{2, 2}, "27b"}} {
		if got := partsOf(c.row, c.parts); got != c.want {
			t.Errorf("row %d %v: %q, want %q", c.row, c.parts, got, c.want)
		}
	}
}
