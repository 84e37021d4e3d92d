package stock

import (
	"slices"

	"strake/tape"
)

// LongestPattern is the most rows that a proposed pattern has before it begins
// again: nobody keeps track of more.
const LongestPattern = 12

// nearEnough is the part of what was delivered that a shorter pattern may leave
// over beyond the best: a count is off by as much (from memory).
const nearEnough = 0.02

// Propose is a pattern of rows, as places in a list of lengths delivered, that
// uses them up evenly: 400 ft each of 2 and 3 in and 200 ft each of 4 and 5 in
// give each of the first two rows in six and the others one. Rows of a floor are
// about alike in length, so a width's share of the rows is to be its share of
// the length. Of all counts of rows up to LongestPattern, those that let the
// most be laid before a width runs out are best; the fewest rows that come near
// enough to that are taken. Their order has no width twice running where that
// can be helped, and the rows of each width as evenly spread as can be.
//
// Checked: that example, told by floor layers as 2-4-3-2-5-3 (common practice,
// no source), has six rows with two each of the narrow widths, three rows apart;
// any order with these shares and gaps is as good.
func Propose(lengths []tape.Length) []int {
	best := 0.0
	counts := map[int][]int{} // the best of each number of rows
	laid := map[int]float64{}
	for rows := 1; rows <= LongestPattern; rows++ {
		eachCount(len(lengths), rows, func(c []int) {
			if l := layable(lengths, c, rows); l > laid[rows] {
				laid[rows], counts[rows] = l, slices.Clone(c)
			}
		})
		best = max(best, laid[rows])
	}
	var all tape.Length
	for _, l := range lengths {
		all += l
	}
	for rows := 1; rows <= LongestPattern; rows++ {
		if counts[rows] != nil && laid[rows] >= best-float64(nearEnough*float64(all)) {
			return Spread(counts[rows])
		}
	}
	return nil
}

// layable is the length that can be laid with so many rows of each width in a
// pattern, before one that it has runs out.
func layable(lengths []tape.Length, counts []int, rows int) float64 {
	turns := -1.0
	for i, n := range counts {
		if n == 0 {
			continue
		}
		if t := float64(lengths[i]) / float64(n); turns < 0 || t < turns {
			turns = t
		}
	}
	return turns * float64(rows)
}

// eachCount calls with every way to share rows out among widths.
func eachCount(widths, rows int, with func([]int)) {
	c := make([]int, widths)
	var fill func(i, left int)
	fill = func(i, left int) {
		if i == widths-1 {
			c[i] = left
			with(c)
			return
		}
		for n := left; n >= 0; n-- {
			c[i] = n
			fill(i+1, left-n)
		}
	}
	if widths > 0 {
		fill(0, rows)
	}
}
