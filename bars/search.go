package bars

import (
	"cmp"
	"slices"

	"strake/tape"
)

// search goes through the places of pieces, the longest first. Every length has a
// kerf added, that of a bar too: then pieces fit where their sum does.
type search struct {
	sold   []tape.Length // rising, with the kerf
	order  []int         // pieces by falling length, those that fit a bar
	sizes  []tape.Length // of order, with the kerf
	rest   []tape.Length // sum of sizes from here on
	kerf   tape.Length
	long   []int
	fewest int
	loads  []tape.Length // of the bars begun
	in     []int         // bar of each piece placed
	best   packing
	leasts map[int]tape.Length // least by number of bars, once worked out
	tries  int
}

// packing is the bar of each piece, in the order of the search.
type packing struct {
	in     []int
	bars   int
	bought tape.Length // with a kerf for each bar
}

func newSearch(a Ask) *search {
	s := &search{kerf: a.Kerf, tries: 1, leasts: map[int]tape.Length{}}
	for _, l := range a.Sold {
		s.sold = append(s.sold, l+a.Kerf)
	}
	slices.Sort(s.sold)
	for i, l := range a.Pieces {
		if len(s.sold) == 0 || l+a.Kerf > s.most() {
			s.long = append(s.long, i)
			continue
		}
		s.order = append(s.order, i)
	}
	slices.SortStableFunc(s.order, func(i, k int) int { return cmp.Compare(a.Pieces[k], a.Pieces[i]) })
	for _, i := range s.order {
		s.sizes = append(s.sizes, a.Pieces[i]+a.Kerf)
	}
	s.rest = make([]tape.Length, len(s.sizes)+1)
	for i := len(s.sizes) - 1; i >= 0; i-- {
		s.rest[i] = s.rest[i+1] + s.sizes[i]
	}
	s.in = make([]int, len(s.sizes))
	s.fewest = s.bound()
	return s
}

// most is the longest bar.
func (s *search) most() tape.Length { return s.sold[len(s.sold)-1] }

// holds is the shortest bar that holds a load.
func (s *search) holds(load tape.Length) tape.Length {
	i, _ := slices.BinarySearch(s.sold, load)
	return s.sold[min(i, len(s.sold)-1)]
}

// place gives piece i every place that can still lead to something better.
func (s *search) place(i int) {
	if s.tries--; s.tries <= 0 || s.done() {
		return
	}
	if i == len(s.sizes) {
		s.best = packing{slices.Clone(s.in), len(s.loads), s.bought()}
		return
	}
	from := 0
	if i > 0 && s.sizes[i] == s.sizes[i-1] { // pieces alike: no later one in an earlier bar
		from = s.in[i-1]
	}
	for b := from; b < len(s.loads); b++ {
		if s.loads[b]+s.sizes[i] > s.most() || slices.Contains(s.loads[from:b], s.loads[b]) {
			continue
		}
		s.loads[b] += s.sizes[i]
		s.in[i] = b
		if s.hopes(i + 1) {
			s.place(i + 1)
		}
		s.loads[b] -= s.sizes[i]
	}
	s.loads = append(s.loads, s.sizes[i])
	s.in[i] = len(s.loads) - 1
	if s.hopes(i + 1) {
		s.place(i + 1)
	}
	s.loads = s.loads[:len(s.loads)-1]
}

// done tells whether nothing better than the best can be.
func (s *search) done() bool {
	return s.best.bars == s.fewest && s.best.bought-s.kerf*tape.Length(s.best.bars) <= s.least(s.best.bars)
}

// hopes tells whether the pieces from i on could end better than the best.
func (s *search) hopes(i int) bool {
	var free tape.Length
	for _, l := range s.loads {
		free += s.most() - l
	}
	bars := len(s.loads)
	if over := s.rest[i] - free; over > 0 {
		bars += int((over + s.most() - 1) / s.most())
	}
	if bars != s.best.bars {
		return bars < s.best.bars
	}
	more := tape.Length(bars-len(s.loads)) * s.sold[0]
	return max(s.bought()+more, s.rest[0]) < s.best.bought
}

// bought is the length of the bars begun, each as short as its load allows.
func (s *search) bought() tape.Length {
	var sum tape.Length
	for _, l := range s.loads {
		sum += s.holds(l)
	}
	return sum
}

// firstFit is the packing to begin with: each piece in the first bar with room.
func (s *search) firstFit() packing {
	var loads []tape.Length
	in := make([]int, len(s.sizes))
	for i, l := range s.sizes {
		b := slices.IndexFunc(loads, func(x tape.Length) bool { return x+l <= s.most() })
		if b < 0 {
			b = len(loads)
			loads = append(loads, 0)
		}
		loads[b] += l
		in[i] = b
	}
	s.loads = loads
	p := packing{in, len(loads), s.bought()}
	s.loads = nil
	return p
}

// bars are those of the best packing.
func (s *search) bars(a Ask) []Bar {
	out := make([]Bar, s.best.bars)
	loads := make([]tape.Length, s.best.bars)
	for i, b := range s.best.in {
		out[b].Pieces = append(out[b].Pieces, s.order[i])
		loads[b] += s.sizes[i]
	}
	for b, l := range loads {
		out[b].Length = s.holds(l) - a.Kerf
	}
	return out
}
