package jobfile_test

import (
	"strings"
	"testing"

	"strake/jobfile"
	"strake/room"
)

// Rows that go through a doorway are one value, written out or left out.
func TestRowsThroughIsOneValue(t *testing.T) {
	for _, line := range []string{"undercut: yes", "undercut: yes\n    rows: through", "undercut: yes\n    rows: turn"} {
		j, _, err := jobfile.ReadJob("job.yaml", []byte(strings.Replace(whole, "undercut: yes", line, 1)))
		if err != nil {
			t.Fatal(err)
		}
		want := room.RowsThrough
		if strings.HasSuffix(line, "turn") {
			want = room.RowsTurn
		}
		if got := j.Sketch.Doorways[0].Rows; got != want {
			t.Errorf("%q: %q", line, got)
		}
	}
}

// Rows cannot go on from a room with two doorways, nor through one where the
// job has them turn.
func TestContinuousFromOneDoorway(t *testing.T) {
	turned := strings.Replace(whole, "undercut: yes", "undercut: yes\n    rows: turn", 1)
	turned = strings.Replace(turned, "  edge_on: P", "  continuous_from: nook", 1)
	two := strings.Replace(whole, "  way out:", "  hatch: {wall: A-B, from: A, at: 60, width: 20, thickness: 4-1/2, beyond: {wall: K-L, from: L, at: 50}}\n  way out:", 1)
	two = strings.Replace(two, "  edge_on: P", "  continuous_from: nook", 1)
	for want, text := range map[string]string{"has rows: turn": turned, "more than one doorway": two} {
		if _, _, err := jobfile.ReadJob("job.yaml", []byte(text)); err == nil || !strings.Contains(err.Error(), want) || !strings.Contains(err.Error(), "arch") && want[0] == 'm' {
			t.Errorf("%s: %v", want, err)
		}
	}
}
