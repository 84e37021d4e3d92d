package stock

import (
	"math"
	"math/rand/v2"
	"testing"

	"strake/tape"
)

// Read to 1/8 in with a slip of 1/16 in, seven boards miss by about 3/16 in:
// the variance of an even spread is its width squared over 12 (any handbook of
// statistics), and variances of independent readings add up.
func TestLengthError(t *testing.T) {
	b := Boards{Known: Tallied, ReadTo: tape.Inch / 8, Slip: tape.Inch / 16}
	got := b.LengthError() * math.Sqrt(7) / float64(tape.Inch)
	if math.Abs(got-3.0/16) > 0.01 {
		t.Errorf("seven boards miss by %.4f in, want about 3/16", got)
	}
	b.Known = OneSize
	if e := b.LengthError(); e != 0 {
		t.Errorf("boards that are not tallied are off by %v, want exact", e)
	}
}

// The chance that boards close a run is what drawing them anew gives.
func TestCloseChance(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	b := Boards{Known: Tallied, ReadTo: tape.Inch / 16, Slip: tape.Inch / 32}
	sum, n := 250*tape.Inch, 6
	for _, c := range []struct{ short, long tape.Length }{
		{sum - tape.Inch/8, sum + tape.Inch/8}, {sum, sum + tape.Inch/4}, {sum + tape.Inch/16, sum + tape.Inch}, {sum - tape.Inch, sum},
	} {
		const tries = 40_000
		in := 0
		for range tries {
			s := float64(sum)
			for range n {
				s += (rng.Float64()-0.5)*float64(b.ReadTo) + rng.NormFloat64()*float64(b.Slip)
			}
			if float64(c.short) <= s && s <= float64(c.long) {
				in++
			}
		}
		want, got := float64(in)/tries, b.CloseChance(sum, c.short, c.long, n)
		if math.Abs(got-want) > 0.01 {
			t.Errorf("%s to %s: chance %.3f, drawn %.3f", c.short, c.long, got, want)
		}
	}
	exact := Boards{Known: Tallied}
	if exact.CloseChance(sum, sum, sum, n) != 1 || exact.CloseChance(sum, sum+1, sum+2, n) != 0 {
		t.Error("exact boards close or do not")
	}
}
