package packet

import (
	"testing"

	"strake/row"
)

// A row in parts is called by their names, as on its cards; a whole one by its number.
func TestRowsInParts(t *testing.T) {
	fl := row.Field{}
	fl.Layout.Runs = []row.Run{{Row: 26}, {Row: 27, Part: 2}, {Row: 27, Part: 1}, {Row: 27, Part: 2}}
	for no, want := range map[int]string{26: "26", 27: "27a, 27b", 28: "28"} {
		if got := namesOf(fl, no); got != want {
			t.Errorf("row %d: %q, want %q", no, got, want)
		}
	}
}
