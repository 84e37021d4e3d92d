package plane

import (
	"math/rand/v2"
	"testing"

	"strake/tape"
)

// slowWhere is Where by its definition alone: on a side, or by the parity of the
// sides that lie to the right.
func slowWhere(r Ring, p Pt) int {
	in := -1
	for i, a := range r {
		b := r[(i+1)%len(r)]
		if Side(a, b, p) == 0 && min(a.X, b.X) <= p.X && p.X <= max(a.X, b.X) && min(a.Y, b.Y) <= p.Y && p.Y <= max(a.Y, b.Y) {
			return 0
		}
		if (a.Y > p.Y) != (b.Y > p.Y) && (Side(a, b, p) > 0) == (b.Y > a.Y) {
			in = -in
		}
	}
	return in
}

// What Where leaves out for lying to one side changes nothing, of rings that cross
// themselves and have level, upright and empty sides too.
func TestWhereByDefinition(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	at := func() Pt { return P(tape.Length(r.IntN(9)), tape.Length(r.IntN(9))) }
	count := map[int]int{}
	for range 20_000 {
		ring := make(Ring, 1+r.IntN(8))
		for i := range ring {
			ring[i] = at()
		}
		p := at()
		want := slowWhere(ring, p)
		count[want]++
		if got := ring.Where(p); got != want {
			t.Fatalf("%v in %v: %d, want %d", p, ring, got, want)
		}
	}
	if len(count) != 3 {
		t.Errorf("only %v were tried", count)
	}
}
