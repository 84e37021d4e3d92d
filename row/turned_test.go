package row

import (
	"testing"

	"strake/room"
)

// Rows that are turned are told against a wall of the room, by the lesser angle.
func TestTurnedAgainstAWall(t *testing.T) {
	ab := room.Wall{"A", "B"}
	for _, c := range []struct {
		from    basis
		degrees float64
		want    string
	}{
		{basis{wall: ab, why: "rows along wall A-B, the longest"}, 45, "rows at 45 degrees to wall A-B, the longest"},
		{basis{wall: ab, why: "rows along wall A-B, as wished"}, -150, "rows at 30 degrees to wall A-B, as wished"},
		{basis{wall: ab, across: true, why: "square to that: rows along wall A-B"}, 30, "rows at 60 degrees to wall A-B"},
		{basis{wall: ab, across: true, why: "rows run through hall door, as wished"}, 22.5, "rows at 67.5 degrees to wall A-B"},
		{halfway(ab, room.Wall{"C", "D"}), 45, "rows at 45 degrees to a line halfway between walls A-B and C-D"},
	} {
		if got := c.from.turned(c.degrees); got != c.want {
			t.Errorf("%v by %g: %q, want %q", c.from, c.degrees, got, c.want)
		}
	}
}
