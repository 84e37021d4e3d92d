package jobfile_test

import (
	"strings"
	"testing"

	"strake/jobfile"
)

// A doorway, a mark or a thing that stays set out along a wall from a corner of
// another room is an error that names both rooms and says what to write.
func TestSetOutFromAnotherRoom(t *testing.T) {
	for name, c := range map[string][2]string{
		"doorway":    {"arch: {wall: A-B, from: A,", "arch: {wall: A-B, from: L,"},
		"far side":   {"{wall: K-L, from: L}", "{wall: K-L, from: A}"},
		"what stays": {"hearth: {kind: hearth, wall: C-D, from: C}", "hearth: {kind: hearth, wall: C-D, from: M}"},
		"mark":       {"stays:\n", "points: {P: {wall: A-B, from: N, at: 10}}\nstays:\n"},
	} {
		text := strings.Replace(before, c[0], c[1], 1)
		if text == before {
			t.Fatalf("%s: nothing replaced", name)
		}
		_, err := jobfile.ReadSketch("before.yaml", []byte(text))
		if err == nil || !strings.Contains(err.Error(), "is a corner of") || !strings.Contains(err.Error(), "goes under readings") ||
			!strings.Contains(err.Error(), "den") || !strings.Contains(err.Error(), "nook") {
			t.Errorf("%s: %v", name, err)
		}
	}
}
