package bars

import "strake/tape"

// bound is a number of bars that no way of cutting gets below. For each length t
// up to half a bar: pieces longer than a bar less t lie alone with nothing from t
// up, those over half a bar lie apart, and what they leave takes only so much of
// the pieces from t to half a bar.
func (s *search) bound() int {
	if len(s.sizes) == 0 {
		return 0
	}
	most := s.most()
	best := ceil(s.rest[0], most)
	for _, t := range s.sizes {
		if 2*t > most {
			continue
		}
		alone, apart := 0, 0
		var room, small tape.Length
		for _, l := range s.sizes {
			switch {
			case l > most-t:
				alone++
			case 2*l > most:
				apart++
				room += most - l
			case l >= t:
				small += l
			}
		}
		best = max(best, alone+apart+max(0, ceil(small-room, most)))
	}
	apart := 0
	for _, l := range s.sizes {
		if 2*l > most {
			apart++
		}
	}
	return max(best, apart)
}

func ceil(l, by tape.Length) int {
	if l <= 0 {
		return 0
	}
	return int((l + by - 1) / by)
}

// least is a length of so many bars, kerfs not counted, that no way of cutting
// into as many gets below: the lengths sold that add up to the pieces at least.
func (s *search) least(bars int) tape.Length {
	if len(s.sizes) == 0 || bars == 0 {
		return 0
	}
	if l, ok := s.leasts[bars]; ok {
		return l
	}
	best := tape.Length(bars) * s.most()
	var try func(k, left int, sum tape.Length)
	try = func(k, left int, sum tape.Length) {
		if sum+tape.Length(left)*s.sold[0] >= best || sum+tape.Length(left)*s.sold[k] < s.rest[0] {
			return
		}
		if left == 0 || k == 0 {
			best = sum + tape.Length(left)*s.sold[0]
			return
		}
		for n := left; n >= 0; n-- {
			try(k-1, left-n, sum+tape.Length(n)*s.sold[k])
		}
	}
	try(len(s.sold)-1, bars, 0)
	s.leasts[bars] = best - s.kerf*tape.Length(bars)
	return s.leasts[bars]
}
