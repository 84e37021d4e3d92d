package rack

import (
	"math/rand/v2"
	"slices"
	"testing"

	"strake/tape"
)

// planted are boards that a perfect floor was sawn into, shuffled, with 3 in
// 100 more that have no place in it.
func planted(seed uint64, runs []run) []item {
	rng := rand.New(rand.NewPCG(seed, 7))
	s := shop{jointMin: 6 * inch, preferred: 10 * inch, hReach: 2 * inch, stairReach: inch, stairFarthest: 14 * inch}
	var one, two []tape.Length
	var lengths []tape.Length
	var sum tape.Length
	for _, r := range runs {
		at := plantedRun(rng, s, s.sides([2][]tape.Length{one}, [2][]tape.Length{two}), r.length())
		if at == nil {
			return planted(seed+1000, runs)
		}
		ends := append(slices.Clone(at), r.length())
		from := tape.Length(0)
		for _, x := range ends {
			lengths = append(lengths, x-from)
			from = x
		}
		one, two, sum = at, one, sum+r.length()
	}
	for spare := sum * 3 / 100; spare > 0; {
		l := tape.Length(12*16+rng.IntN(72*16)) * tape.Sixteenth
		lengths, spare = append(lengths, l), spare-l
	}
	rng.Shuffle(len(lengths), func(i, j int) { lengths[i], lengths[j] = lengths[j], lengths[i] })
	var out []item
	for i, l := range lengths {
		out = append(out, item{board: i, to: l, groove: true, tongue: true})
	}
	return out
}

// plantedRun are the joints of a run of 6 to 8 boards, none of which costs
// anything; nil when there seem to be none beside these.
func plantedRun(rng *rand.Rand, s shop, b behind, length tape.Length) []tape.Length {
	for range 200_000 {
		var at []tape.Length
		for range 5 + rng.IntN(3) {
			at = append(at, tape.Length(rng.IntN(int(length/tape.Sixteenth)))*tape.Sixteenth)
		}
		slices.Sort(at)
		good, from := true, tape.Length(0)
		for _, x := range append(slices.Clone(at), length) {
			good = good && x-from >= 12*inch && x-from <= 84*inch && (x == length || s.joint(x, s.jointMin, b) == 0)
			from = x
		}
		if good {
			return at
		}
	}
	return nil
}

// Where a perfect floor is known to lie in the boards, one is found: not a cut
// and not a joint that costs anything.
func TestPlantedFloorsAreFound(t *testing.T) {
	for seed := range uint64(6) {
		e := benchEngine(seed, 0, 1, 1, 12, 84)
		e.polishing = 2 * Polishing
		runs := benchRuns(0, 0)[:16]
		e.stock.boards = planted(seed, runs)
		fs := e.fillAll(runs)
		if n := unfilled(fs); n > 0 || e.total(fs) > 0 {
			t.Errorf("seed %d: %d runs not filled, cost %d", seed, n, e.total(fs))
		}
	}
}

// Three boards a run, no slack, no board to spare (Falkenauer's triplets,
// Journal of Heuristics 2:5-30, 1996; the rule from memory): no more than a
// cut in 20 runs is left, and none is without boards.
func TestTripletsNeedHardlyACut(t *testing.T) {
	cuts, of := 0, 0
	for seed := range uint64(4) {
		rng := rand.New(rand.NewPCG(seed, 1996))
		e := benchEngine(seed, 0, 1, 1, 12, 84)
		e.shop, e.polishing = shop{woodFirst: true}, 400_000_000
		e.stock.boards = nil
		runs := benchRuns(0, 0)[:20]
		for i := range runs {
			runs[i].farNeed, runs[i].farReach = 1000*tape.Sixteenth, 1000*tape.Sixteenth
			runs[i].exact()
			first := 380 + rng.IntN(111)
			second := 250 + rng.IntN((1000-first)/2-250+1)
			for _, l := range []int{first, second, 1000 - first - second} {
				e.stock.boards = append(e.stock.boards, item{board: len(e.stock.boards), to: tape.Length(l) * tape.Sixteenth, groove: true, tongue: true})
			}
		}
		fs := e.fillAll(runs)
		n, _ := e.wood(fs)
		if cuts, of = cuts+n, of+len(runs); unfilled(fs) > 0 {
			t.Errorf("seed %d: %d runs not filled", seed, unfilled(fs))
		}
	}
	if cuts > of/20 {
		t.Errorf("%d cuts in %d runs", cuts, of)
	}
}
