package jobfile_test

import (
	"fmt"
	"testing"

	"strake/jobfile"
)

// The direction that a wall with the taper gives may be wished for too; another
// one is refused, by the corners of the room alone.
func TestTaperAndDirection(t *testing.T) {
	const text = `strake: 1
rooms: {den: {corners: [A, B, C, D, E, F], into: [%s]}}
readings: {A-B: 144, B-C: 120}
boards: {face: 5 in, thickness: 3/4 in, lengths: {one: 48 in}}
wishes: {%s, taper_at: %s}
`
	// With E into the room: A-B faces C-D and E-F, B-C faces D-E and F-A.
	for _, c := range []struct {
		into, wish, at string
		ok             bool
	}{
		{"E", "rows_along: A-B", "C-D", true},
		{"E", "rows_along: B-A", "E-F", true},
		{"E", "rows_across: B-C", "C-D", true},
		{"E", "rows_along: A-B", "A-B", false},
		{"E", "rows_along: A-B", "B-C", false},
		{"E", "rows_across: A-B", "C-D", false},
		{"E", "rows_between: [A-B, C-D]", "C-D", false},
	} {
		_, _, err := jobfile.ReadJob("job.yaml", fmt.Appendf(nil, text, c.into, c.wish, c.at))
		if (err == nil) != c.ok {
			t.Errorf("%s with taper_at %s: %v", c.wish, c.at, err)
		}
	}
}
