package row

import (
	"strake/floor"
	"strake/room"
	"strake/tape"
)

// startRow is the row that is laid first: the one in the middle if that is
// wished, the one along the start wall, else of the rows along a wall that are
// long enough to hold a line (half as long as the longest run) the lowest,
// which leaves the least behind it.
func (l *Layout) startRow(w Wishes, b room.Built) int {
	if w.Line != nil { // where a field begins at another, its boards' grooves face it
		if r := l.rowOn(l.Dir.ToRow(*w.Line).Y); r > 0 {
			return r
		}
	}
	if w.Middle {
		return l.middleRow()
	}
	if _, ccw, ok := b.FindWall(w.StartWall); ok {
		for _, r := range l.Rips {
			if r.Above && r.Wall == ccw {
				return r.Row
			}
		}
	}
	long := map[int]tape.Length{}
	var longest tape.Length
	for _, r := range l.Runs {
		long[r.Row] = max(long[r.Row], r.Length())
		longest = max(longest, r.Length())
	}
	best := 0
	for _, r := range l.Rips {
		if r.Above && r.Row > 0 && r.Kind == floor.Wall && 2*long[r.Row] >= longest && (best == 0 || r.Row < best) {
			best = r.Row
		}
	}
	return max(1, best)
}

// rowOn is the row whose low line is at y; 0 for none.
func (l *Layout) rowOn(y tape.Length) int {
	for _, r := range l.Runs {
		if (r.Low - y).Abs() <= tape.Tick {
			return r.Row
		}
	}
	return 0
}

// middleRow is the row with half of the floor on either side.
func (l *Layout) middleRow() int {
	var all, sum tape.Length
	for _, r := range l.Runs {
		all += r.Length()
	}
	for _, r := range l.Runs {
		if sum += r.Length(); 2*sum >= all {
			return r.Row
		}
	}
	return 1
}
