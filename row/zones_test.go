package row

import (
	"testing"

	"pgregory.net/rapid"

	"strake/floor"
	"strake/lay"
	"strake/limits"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// only is how a run is fastened that is fastened in one way.
func only(t *testing.T, r Run) lay.Fasten {
	t.Helper()
	if len(r.Nailing) != 1 {
		t.Fatalf("row %d is fastened in %d ways: %v", r.Row, len(r.Nailing), r.Nailing)
	}
	return r.Nailing[0].By
}

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
		for first < len(l.Runs) && only(t, l.Runs[first]) != lay.Nailer {
			first++
		}
		for last < len(l.Runs) && only(t, l.Runs[len(l.Runs)-1-last]) != lay.Nailer {
			last++
		}
		if first != c.first || last != c.last {
			t.Errorf("boards of %g in: %d rows by hand at the start, %d at the end, want %d and %d", c.board, first, last, c.first, c.last)
		}
		if only(t, l.Runs[0]) != lay.FaceNail || only(t, l.Runs[len(l.Runs)-1]) != lay.FaceNail || last > 1 && only(t, l.Runs[len(l.Runs)-2]) != lay.HandNail {
			t.Errorf("boards of %g in: first and last rows are not face-nailed, or the row before not by hand", c.board)
		}
	}
}

// An L: to the right of 10 ft a wall stands 10 ft from the start wall, to the
// left the room goes on to 20 ft. Near that wall the right part of a row cannot
// be fastened as its left part is. From memory: 12 in of room ahead.
func TestNailingChangesAlongARow(t *testing.T) {
	mm := func(x, y float64) plane.XY { return plane.XY{X: x * 25.4, Y: y * 25.4} }
	b := room.Built{
		Sketch: room.Sketch{Rooms: []room.Room{{Name: "room", Corners: []string{"A", "B", "C", "D", "E", "F"}}}},
		At:     map[string]plane.XY{"A": mm(0, 0), "B": mm(240, 0), "C": mm(240, 120), "D": mm(120, 120), "E": mm(120, 240), "F": mm(0, 240)},
	}
	lim := limits.Default(in(5), in(0.75))
	f, _ := floor.New(b, floor.Trim{Base: in(0.5), Shoe: in(0.75)}, lim, style)
	l, _ := Make(f, b, in(5), lim, Wishes{StartWall: room.Wall{"A", "B"}}, style)
	seen := map[lay.Fasten]int{}
	for _, r := range l.Runs {
		if r.Row == 1 || r.Right.Reach < in(200) || r.High < in(20) {
			continue
		}
		want := lay.Nailer
		switch {
		case r.High > in(115): // the next row would end in the wall
			want = lay.FaceNail
		case r.High > in(108):
			want = lay.HandNail
		}
		seen[want]++
		first, last := r.Nailing[0], r.Nailing[len(r.Nailing)-1]
		if first.By != lay.Nailer || last.By != want {
			t.Errorf("row %d, tongue edge at %v: %v, want the nailer at the left and %s at the right", r.Row, r.High, r.Nailing, want)
		}
		if want != lay.Nailer && (len(r.Nailing) != 2 || (first.Along.To-in(120)).Abs() > in(1)) {
			t.Errorf("row %d changes at %v, want about 120 in", r.Row, r.Nailing)
		}
	}
	if seen[lay.Nailer] < 10 || seen[lay.HandNail] < 1 || seen[lay.FaceNail] != 1 {
		t.Errorf("rows of each kind at the right: %v", seen)
	}
}

// Whatever turns there are, the stretches lie end to end over the whole run, no
// two neighbours are alike, and each is worth the change.
func TestStretchesCoverTheRun(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Int64Range(0, int64(in(200)))
		r := Run{Left: lay.EndRange{Reach: 0}, Right: lay.EndRange{Reach: in(1) + tape.Length(x.Draw(t, "length"))}}
		var turns []tape.Length
		for range rapid.IntRange(0, 12).Draw(t, "turns") {
			turns = append(turns, tape.Length(x.Draw(t, "turn"))-in(10))
		}
		ways := rapid.SliceOfN(rapid.SampledFrom([]lay.Fasten{lay.Nailer, lay.HandNail, lay.FaceNail}), 16, 16).Draw(t, "ways")
		n := 0
		got := stretches(r, turns, func(tape.Length) lay.Fasten { n++; return ways[n-1] })
		at := r.Left.Reach
		for i, s := range got {
			if s.Along.From != at || i > 0 && got[i-1].By == s.By || len(got) > 1 && s.Along.Len() < worthwhile {
				t.Fatalf("%v", got)
			}
			at = s.Along.To
		}
		if at != r.Right.Reach {
			t.Fatalf("%v ends at %v, the run at %v", got, at, r.Right.Reach)
		}
	})
}
