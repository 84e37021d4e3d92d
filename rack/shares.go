package rack

import (
	"math"
	"slices"

	"strake/tape"
)

// shares keeps the lengths even through the floor: boards of a length class
// that has been drawn on more than others cost a little more.
type shares struct {
	bounds []tape.Length // upper bound of each class but the last
	first  []int         // boards of each class at the start
	left   []int
	mean   tape.Length
}

// classes is the number of length classes, by even count.
const classes = 5

func newShares(boards []item) shares {
	var ls []tape.Length
	var sum tape.Length
	for _, b := range boards {
		ls = append(ls, b.length())
		sum += b.length()
	}
	slices.Sort(ls)
	s := shares{first: make([]int, classes), left: make([]int, classes)}
	if len(ls) == 0 {
		return s
	}
	s.mean = sum / tape.Length(len(ls))
	for c := 1; c < classes; c++ {
		s.bounds = append(s.bounds, ls[len(ls)*c/classes])
	}
	for _, l := range ls {
		s.first[s.class(l)]++
	}
	copy(s.left, s.first)
	return s
}

func (s shares) class(l tape.Length) int {
	i, _ := slices.BinarySearch(s.bounds, l)
	return min(i, classes-1)
}

// drawn notes that the boards of a run are gone.
func (s *shares) drawn(ps []placed, before pile) {
	for _, p := range ps {
		for _, b := range before.boards {
			if b.board == p.board {
				s.left[s.class(b.length())]--
			}
		}
	}
}

// price is the evenness cost of an item. Starter rows want the longest boards
// instead.
func (s shares) price(t item, starter bool) int64 {
	if len(s.bounds) == 0 {
		return 0
	}
	if starter {
		return -costLength * int64((t.length()-s.mean)/tape.Inch)
	}
	c := s.class(t.length())
	total, left := 0, 0
	for i := range s.first {
		total, left = total+s.first[i], left+s.left[i]
	}
	if s.left[c] <= 0 || left == 0 || s.first[c] == 0 {
		return 0
	}
	// ln(initial share / remaining share), over the whole run near 0
	r := float64(s.first[c]) / float64(total) * float64(left) / float64(s.left[c])
	return int64(math.Round(float64(float64(costLength)*100) * math.Log(r)))
}
