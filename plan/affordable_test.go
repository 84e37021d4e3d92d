package plan

import "testing"

// As many lays as were asked for where they are cheap, fewer where one takes long, and
// never fewer than were made to see.
func TestAffordable(t *testing.T) {
	of := func(work int) []tried {
		out := make([]tried, sounding)
		for i := range out {
			out[i].work = work
		}
		return out
	}
	for work, want := range map[int]int{0: 300, mostWork / 400: 300, mostWork / 100: 100, mostWork: sounding, 1 << 40: sounding} {
		if got := affordable(of(work), 300); got < want-1 || got > want {
			t.Errorf("%d units a lay: %d lays, want %d", work, got, want)
		}
	}
}
