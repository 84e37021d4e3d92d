package stock

// Spread is an order, over and over, of so many rows of each width: no width
// follows itself where that can be helped, and the rows of each lie as evenly
// as can be. It is found by trying every order, those given up early that can
// no longer be better; the first of equals in the order of the list is taken.
func Spread(counts []int) []int {
	s := spread{counts: counts, left: append([]int(nil), counts...)}
	for _, n := range counts {
		s.rows += n
	}
	s.first, s.last = make([]int, len(counts)), make([]int, len(counts))
	if s.rows > 0 {
		s.place(0, 0, 0)
	}
	return s.best
}

// spread is a search for an order.
type spread struct {
	counts      []int
	rows        int
	left        []int
	first, last []int // rows where each width was placed
	order, best []int
	twice       int // times that a width follows itself in the best
	uneven      int // squares of the gaps between rows of one width in the best
}

// place tries every width for row k; so often has a width followed itself, and
// so much do the squares of the gaps come to already.
func (s *spread) place(k, twice, uneven int) {
	if s.best != nil && !s.better(twice, uneven+s.least(k)) {
		return
	}
	if k == s.rows {
		s.close(twice, uneven)
		return
	}
	for w, n := range s.left {
		if n == 0 || k == 0 && w != s.start() {
			continue
		}
		t, u := twice, uneven
		was, first := s.last[w], s.first[w]
		if n < s.counts[w] {
			gap := k - was
			u += gap * gap
			if gap == 1 {
				t++
			}
		} else {
			s.first[w] = k
		}
		s.left[w]--
		s.last[w] = k
		s.order = append(s.order, w)
		s.place(k+1, t, u)
		s.order = s.order[:k]
		s.last[w], s.first[w] = was, first
		s.left[w]++
	}
}

// start is the width that the order begins with: it turns round, so any may.
func (s *spread) start() int {
	for w, n := range s.counts {
		if n > 0 {
			return w
		}
	}
	return 0
}

// least is what the gaps that are still open come to at the least.
func (s *spread) least(k int) int {
	sum := 0
	for w, n := range s.counts {
		switch {
		case n == 0:
		case s.left[w] == n: // not begun: its gaps come to all rows
			sum += evenGaps(s.rows, n)
		default: // from its last row round to its first
			sum += evenGaps(s.rows-s.last[w]+s.first[w], s.left[w]+1)
		}
	}
	return sum
}

// evenGaps is the least that the squares of so many gaps with this sum come to.
func evenGaps(sum, gaps int) int {
	q, r := sum/gaps, sum%gaps
	return (gaps-r)*q*q + r*(q+1)*(q+1)
}

// close counts the gaps from the end round to the beginning.
func (s *spread) close(twice, uneven int) {
	for w, n := range s.counts {
		if n == 0 {
			continue
		}
		gap := s.rows - s.last[w] + s.first[w]
		uneven += gap * gap
		if gap == 1 {
			twice++
		}
	}
	if s.best == nil || s.better(twice, uneven) {
		s.best, s.twice, s.uneven = append([]int(nil), s.order...), twice, uneven
	}
}

func (s *spread) better(twice, uneven int) bool {
	return twice < s.twice || twice == s.twice && uneven < s.uneven
}
