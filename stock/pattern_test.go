package stock_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"strake/stock"
	"strake/tape"
)

// measured is how often a width follows itself in a pattern that turns round,
// and the sum of the squares of the gaps between rows of one width.
func measured(pattern []int) (twice, uneven int) {
	n := len(pattern)
	for i, w := range pattern {
		gap := 1
		for pattern[(i+gap)%n] != w {
			gap++
		}
		uneven += gap * gap
		if gap == 1 {
			twice++
		}
	}
	return
}

func countOf(pattern []int, widths int) []int {
	out := make([]int, widths)
	for _, w := range pattern {
		out[w]++
	}
	return out
}

// 2, 3, 4 and 5 in delivered with twice the length of 2 and 3 as of 4 and 5:
// layers tell of 2-4-3-2-5-3 (common practice, no source). The proposal has
// its shares and is spread no worse.
func TestProposeMixedWidths(t *testing.T) {
	const ft = tape.Foot
	for _, lengths := range [][]tape.Length{{400 * ft, 400 * ft, 200 * ft, 200 * ft}, {412 * ft, 405 * ft, 204 * ft, 207 * ft}} {
		got := stock.Propose(lengths)
		if !slices.Equal(countOf(got, 4), []int{2, 2, 1, 1}) {
			t.Fatalf("%v: pattern %v", lengths, got)
		}
		twice, uneven := measured(got)
		wantTwice, wantUneven := measured([]int{0, 2, 1, 0, 3, 1})
		if twice > wantTwice || uneven > wantUneven {
			t.Errorf("pattern %v: %d twice running, gaps squared %d; 2-4-3-2-5-3 has %d and %d", got, twice, uneven, wantTwice, wantUneven)
		}
	}
}

// More than half of one width has to follow itself, and does so once a turn;
// a scrap of a width that would stop the floor early is left out.
func TestProposeLopsided(t *testing.T) {
	if got := stock.Propose([]tape.Length{2000, 1000}); !slices.Equal(countOf(got, 2), []int{2, 1}) {
		t.Errorf("two to one: %v", got)
	}
	if got := stock.Propose([]tape.Length{100_000, 100_000, 500}); !slices.Equal(countOf(got, 3), []int{1, 1, 0}) {
		t.Errorf("a scrap of the third: %v", got)
	}
	if got := stock.Propose([]tape.Length{0, 0}); got != nil && len(got) > stock.LongestPattern {
		t.Errorf("nothing delivered: %v", got)
	}
}

// No order of the same rows is spread better: every order is tried.
func TestSpreadAgainstEveryOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var counts []int
		rows := 0
		for range rapid.IntRange(1, 4).Draw(t, "widths") {
			n := rapid.IntRange(0, 3).Draw(t, "rows")
			if rows+n > 8 {
				n = 0
			}
			counts, rows = append(counts, n), rows+n
		}
		if rows == 0 {
			return
		}
		got := stock.Spread(counts)
		if !slices.Equal(countOf(got, len(counts)), counts) {
			t.Fatalf("%v spread as %v", counts, got)
		}
		twice, uneven := measured(got)
		everyOrder(slices.Clone(counts), nil, func(p []int) {
			if a, b := measured(p); a < twice || a == twice && b < uneven {
				t.Fatalf("%v is better than %v: %d, %d against %d, %d", p, got, a, b, twice, uneven)
			}
		})
	})
}

func everyOrder(left, order []int, with func([]int)) {
	done := true
	for w := range left {
		if left[w] == 0 {
			continue
		}
		done = false
		left[w]--
		everyOrder(left, append(slices.Clone(order), w), with)
		left[w]++
	}
	if done {
		with(order)
	}
}

// No count of rows up to the longest lets more be laid than the proposal and
// what is near enough to nothing.
func TestProposeUsesTheDelivery(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		lengths := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) tape.Length { return tape.Length(rapid.IntRange(100, 5000).Draw(t, "l")) }), 1, 3).Draw(t, "lengths")
		laid := func(p []int) float64 {
			turns := -1.0
			for w, n := range countOf(p, len(lengths)) {
				if v := float64(lengths[w]) / float64(n); n > 0 && (turns < 0 || v < turns) {
					turns = v
				}
			}
			return turns * float64(len(p))
		}
		var all tape.Length
		for _, l := range lengths {
			all += l
		}
		got := stock.Propose(lengths)
		have := laid(got) + 0.021*float64(all)
		for k := 0; k < 200; k++ {
			p := rapid.SliceOfN(rapid.IntRange(0, len(lengths)-1), 1, stock.LongestPattern).Draw(t, "pattern")
			if laid(p) > have {
				t.Fatalf("%v: %v lays %.0f, %v lays %.0f", lengths, got, laid(got), p, laid(p))
			}
		}
	})
}
