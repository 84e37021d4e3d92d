package packet

// between the two halves of a folded table, mm.
const foldGap = 5.0

// folded writes a long table of short rows twice beside itself: down the left half, then
// down the right. False where that does not make it a good deal lower than high.
func (f *flow) folded(t table, high float64) bool {
	if !t.folds || !t.byContent() || len(t.rows) < fewRows {
		return false
	}
	half := (f.body.w - foldGap) / 2
	s := f.setOf(t, half)
	if least, _ := s.balance().limits(); sum(least) > half || s.high()/2 > high*worthFolding {
		return false
	}
	f.need(s.head.h + s.rows[0].h)
	for from := 0; from < len(s.rows); {
		if from > 0 {
			f.turn()
		}
		mid, to := s.halves(from, f.left()-s.head.h)
		top, low := f.y, f.y
		for k, rows := range [][]line{s.rows[from:mid], s.rows[mid:to]} {
			f.y = top
			x := f.body.x + float64(k)*(half+foldGap)
			if len(rows) > 0 {
				f.row(s, s.head, x, true)
			}
			for _, l := range rows {
				f.row(s, l, x, false)
			}
			low = max(low, f.y)
		}
		f.y, from = low, to
	}
	f.gap(2)
	return true
}

// worthFolding is how high a folded table is at most, as a part of what it was.
const worthFolding = 0.7

// fewRows is how many rows are not worth folding.
const fewRows = 7

// halves parts the rows from one on that go on a page in two columns as high as each
// other, or as high as the page where not all go there.
func (s set) halves(from int, room float64) (mid, to int) {
	all := 0.0
	for _, l := range s.rows[from:] {
		all += l.h
	}
	fill := func(i int, most float64) int {
		for h := 0.0; i < len(s.rows) && h+s.rows[i].h <= most+1e-9; i++ {
			h += s.rows[i].h
		}
		return i
	}
	for high := all / 2; high < room; high += grid {
		mid = fill(from, high)
		if fill(mid, high) == len(s.rows) && mid > from {
			return mid, len(s.rows)
		}
	}
	mid = max(fill(from, room), from+1)
	return mid, fill(mid, room)
}
