package row

import (
	"testing"

	"strake/floor"
	"strake/lay"
	"strake/limits"
)

// Common practice, no source: the nailer works from the second row when boards
// are about 5 in wide, and not on the last ones. With strip of 2-1/4 in more
// rows are nailed by hand at both walls.
func TestNailingZones(t *testing.T) {
	for _, c := range []struct {
		board       float64
		first, last int // rows from the wall that the nailer does not take, at the start and at the end
	}{{5, 1, 3}, {2.25, 3, 6}} {
		lim := limits.Default(in(c.board), in(0.75))
		f, _ := floor.New(rectangle(240, 144), floor.Trim{Base: in(0.5), Shoe: in(0.75)}, lim, style)
		l, _ := Make(f, rectangle(240, 144), in(c.board), lim, Wishes{}, style)
		first, last := 0, 0
		for first < len(l.Runs) && l.Runs[first].Fasten != lay.Nailer {
			first++
		}
		for last < len(l.Runs) && l.Runs[len(l.Runs)-1-last].Fasten != lay.Nailer {
			last++
		}
		if first != c.first || last != c.last {
			t.Errorf("boards of %g in: %d rows by hand at the start, %d at the end, want %d and %d", c.board, first, last, c.first, c.last)
		}
		if l.Runs[0].Fasten != lay.FaceNail || l.Runs[len(l.Runs)-1].Fasten != lay.FaceNail || last > 1 && l.Runs[len(l.Runs)-2].Fasten != lay.HandNail {
			t.Errorf("boards of %g in: first and last rows are not face-nailed, or the row before not by hand", c.board)
		}
	}
}
