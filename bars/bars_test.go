package bars

import (
	"math/rand/v2"
	"slices"
	"testing"

	"strake/tape"
)

const in = tape.Inch

func TestBarsByHand(t *testing.T) {
	for _, c := range []struct {
		pieces, sold []tape.Length
		kerf         tape.Length
		bars         int
		bought       tape.Length
		long         int
	}{
		{[]tape.Length{70 * in, 50 * in, 45 * in, 20 * in}, []tape.Length{96 * in}, in / 8, 2, 192 * in, 0},
		{[]tape.Length{96 * in}, []tape.Length{96 * in}, in / 8, 1, 96 * in, 0},           // as long as the bar: no kerf
		{[]tape.Length{48 * in, 48 * in}, []tape.Length{96 * in}, 0, 1, 96 * in, 0},       // no kerf, no loss
		{[]tape.Length{48 * in, 48 * in}, []tape.Length{96 * in}, in / 8, 2, 192 * in, 0}, // the kerf is missing
		{[]tape.Length{48 * in, 48 * in}, []tape.Length{96 * in, 144 * in}, in / 8, 1, 144 * in, 0},
		{[]tape.Length{100 * in, 30 * in}, []tape.Length{96 * in}, in / 8, 1, 96 * in, 1},
		{nil, []tape.Length{96 * in}, in / 8, 0, 0, 0},
		// First fit takes three bars: 50+30, 40+40, 20+20.
		{[]tape.Length{50 * in, 40 * in, 40 * in, 30 * in, 20 * in, 20 * in}, []tape.Length{100 * in}, 0, 2, 200 * in, 0},
	} {
		got := Of(Ask{c.pieces, c.sold, c.kerf})
		if len(got.Bars) != c.bars || got.Bought != c.bought || len(got.Long) != c.long || !got.Proved {
			t.Errorf("%v from %v: %+v", c.pieces, c.sold, got)
		}
		holds(t, Ask{c.pieces, c.sold, c.kerf}, got)
	}
}

// holds checks a cut by its pieces: each once, in a bar that has room for it.
func holds(t *testing.T, a Ask, c Cut) {
	t.Helper()
	var all []int
	var bought, used tape.Length
	for _, b := range c.Bars {
		sum := -a.Kerf
		for _, i := range b.Pieces {
			sum += a.Pieces[i] + a.Kerf
			used += a.Pieces[i]
		}
		if len(b.Pieces) == 0 || sum > b.Length || !slices.Contains(a.Sold, b.Length) {
			t.Errorf("bar of %v holds %v: %v", b.Length, b.Pieces, sum)
		}
		bought += b.Length
		all = append(all, b.Pieces...)
	}
	all = append(all, c.Long...)
	slices.Sort(all)
	for i := range a.Pieces {
		if i >= len(all) || all[i] != i {
			t.Fatalf("pieces %v of %d", all, len(a.Pieces))
		}
	}
	if c.Bought != bought || c.Scrap != bought-used || c.Fewest > len(c.Bars) || c.Least > c.Bought {
		t.Errorf("sums of %+v", c)
	}
}

// brute is the least number of bars and their least length by trying every way to
// part the pieces: independent of the search, slow.
func brute(a Ask) (bars int, bought tape.Length) {
	bars = len(a.Pieces) + 1
	var loads []tape.Length
	var part func(i int)
	part = func(i int) {
		if i == len(a.Pieces) {
			var sum tape.Length
			for _, l := range loads {
				shortest := tape.Length(-1)
				for _, s := range a.Sold {
					if s >= l && (shortest < 0 || s < shortest) {
						shortest = s
					}
				}
				if shortest < 0 {
					return
				}
				sum += shortest
			}
			if len(loads) < bars || len(loads) == bars && sum < bought {
				bars, bought = len(loads), sum
			}
			return
		}
		for b := range loads {
			loads[b] += a.Kerf + a.Pieces[i]
			part(i + 1)
			loads[b] -= a.Kerf + a.Pieces[i]
		}
		loads = append(loads, a.Pieces[i])
		part(i + 1)
		loads = loads[:len(loads)-1]
	}
	part(0)
	return bars, bought
}

func random(r *rand.Rand, most int) Ask {
	a := Ask{Kerf: tape.Length(r.IntN(3)) * in / 8}
	for range 1 + r.IntN(3) {
		a.Sold = append(a.Sold, tape.Length(60+r.IntN(60))*in)
	}
	longest := slices.Max(a.Sold)
	step, many := tape.Length(1), 100
	if r.IntN(2) == 0 { // many pieces alike
		step, many = 12, 8
	}
	for range 1 + r.IntN(most) {
		a.Pieces = append(a.Pieces, min(longest, (8+step*tape.Length(r.IntN(many)))*in))
	}
	return a
}

func TestBarsAgainstEveryWay(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 1))
	for i := range 400 {
		a := random(r, 8)
		got := Of(a)
		holds(t, a, got)
		bars, bought := brute(a)
		if len(got.Bars) != bars || got.Bought != bought || !got.Proved {
			t.Fatalf("case %d %+v: %d bars of %v (proved %v), by every way %d of %v", i, a, len(got.Bars), got.Bought, got.Proved, bars, bought)
		}
	}
}

// What is no proof is not called one, and its bounds hold.
func TestBarsCutShort(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 2))
	unproved := 0
	for range 300 {
		a := random(r, 8)
		got := within(a, 2)
		holds(t, a, got)
		bars, bought := brute(a)
		if got.Fewest > bars || len(got.Bars) == bars && got.Least > bought {
			t.Fatalf("%+v: bounds %d, %v over %d, %v", a, got.Fewest, got.Least, bars, bought)
		}
		if got.Proved && (len(got.Bars) != bars || got.Bought != bought) {
			t.Fatalf("%+v: a proof of %d, %v where %d, %v does", a, len(got.Bars), got.Bought, bars, bought)
		}
		if !got.Proved {
			unproved++
		}
	}
	if unproved == 0 {
		t.Error("two tries prove everything: the case tests nothing")
	}
}

// A house of rooms is proved too.
func TestBarsOfAHouse(t *testing.T) {
	r := rand.New(rand.NewPCG(8, 3))
	for range 5 {
		a := Ask{Sold: []tape.Length{96 * in, 144 * in, 192 * in}, Kerf: in / 8}
		for range 30 {
			a.Pieces = append(a.Pieces, tape.Length(200+r.IntN(2500))*in/16)
		}
		got := Of(a)
		holds(t, a, got)
		if len(got.Bars)-got.Fewest > 1 {
			t.Errorf("%d bars, bound %d", len(got.Bars), got.Fewest)
		}
	}
}
