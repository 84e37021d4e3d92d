package jobfile_test

import (
	"errors"
	"slices"
	"strings"
	"testing"

	"strake/jobfile"
)

// before is a job as it stands before a tape came out: no reading, no board, and
// no figure of one doorway and of what stays.
const before = `strake: 1
rooms:
  den: {corners: [A, B, C, D]}
  nook: {corners: [K, L, M, N]}
rough: {A-B: 144, B-C: 120}
doorways:
  arch: {wall: A-B, from: A, beyond: {wall: K-L, from: L}}
  way out: {wall: B-C, from: C, at: 0, width: 32, thickness: 4, beyond: stair}
stays:
  hearth: {kind: hearth, wall: C-D, from: C}
  slate: {kind: tile, corners: [H1, H2, H3]}
`

// ReadSketch takes a job that was not measured yet, and says which doorways lack
// figures; a near jamb in the corner is no missing figure.
func TestReadSketch(t *testing.T) {
	k, err := jobfile.ReadSketch("before.yaml", []byte(before))
	if err != nil {
		t.Fatal(err)
	}
	if !slices.Equal(k.Floating, []string{"hearth"}) {
		t.Errorf("floating %v", k.Floating)
	}
	if len(k.Rough) != 2 || len(k.Job.Readings) != 0 || !slices.Equal(k.Unplaced, []string{"arch"}) {
		t.Errorf("%d guesses, %d readings, unplaced %v", len(k.Rough), len(k.Job.Readings), k.Unplaced)
	}
}

// A guess between corners that are none is an error, not left out in silence.
func TestRoughNames(t *testing.T) {
	_, err := jobfile.ReadSketch("before.yaml", []byte(strings.Replace(before, "B-C: 120", "B-Z: 120", 1)))
	var errs jobfile.Errors
	if !errors.As(err, &errs) || len(errs) != 1 || !strings.Contains(errs[0].What, "“Z” is not a corner") {
		t.Errorf("%v; want one error about Z", err)
	}
}

// What a sketch may leave out, a job to plan may not: each missing figure is an
// error of its own. The sketch still has to say where things are.
func TestSketchIsNoJob(t *testing.T) {
	_, _, err := jobfile.ReadJob("before.yaml", []byte(before))
	for _, want := range []string{"“boards” is missing", "“at” is missing", "“width” is missing", "“thickness” is missing", "“depth” is missing", "too few readings reach corner “H3”"} {
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%v; want %s", err, want)
		}
	}
	if strings.Contains(err.Error(), "“readings”") {
		t.Errorf("readings are not missed: %v", err)
	}
	for _, gone := range []string{"from: A, ", "wall: A-B, ", ", from: C}"} {
		_, err := jobfile.ReadSketch("before.yaml", []byte(strings.Replace(before, gone, map[bool]string{true: "}"}[gone[0] == ','], 1)))
		var errs jobfile.Errors
		if !errors.As(err, &errs) || len(errs) != 1 || !strings.Contains(errs[0].What, "is missing") {
			t.Errorf("without %q: %v; want one error", gone, err)
		}
	}
}
