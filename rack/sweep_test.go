package rack

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"strake/tape"
)

// Marking places from the joints behind says of each what asking about it does.
func TestSweepAgreesWithJoint(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string) []tape.Length {
			var out []tape.Length
			for _, l := range rapid.SliceOfN(rapid.IntRange(-100, 4000), 0, 12).Draw(t, name) {
				out = append(out, tape.Length(l)*tape.Sixteenth/2)
			}
			slices.Sort(out)
			return out
		}
		s := shop{preferred: 10 * inch, jointMin: 6 * inch, woodFirst: rapid.Bool().Draw(t, "wood")}
		s.hReach, s.stairReach, s.stairFarthest = 2*inch, inch, 14*inch
		b := s.sides([2][]tape.Length{draw("one"), draw("other one")}, [2][]tape.Length{draw("two"), draw("other two")})
		least := tape.Length(rapid.IntRange(0, 6).Draw(t, "least")) * inch
		w := sweep{make([]int64, 1500), tape.Length(rapid.IntRange(-9, 9).Draw(t, "base")) * tape.Sixteenth / 4, tape.Sixteenth}
		w.joints(s, least, b)
		for k, got := range w.at {
			if want := s.joint(w.base+tape.Length(k)*w.unit, least, b); got != want {
				t.Fatalf("place %d: %d, want %d", k, got, want)
			}
		}
	})
}
