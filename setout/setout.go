// Package setout is the chalk lines: where each line that rows keep to is
// snapped, as distances that one person can tape from corners that stay
// visible, with a check by diagonal.
//
// The front of row 5 crosses wall F-A at 1' 9-3/8" from A and wall B-C at
// 1' 8-1/2" from B; from A across to that second mark the tape reads 18' 1-3/4".
// Two marks and the diagonal: a line that passes all three is right.
package setout

import (
	"math"
	"slices"

	"strake/floor"
	"strake/lay"
	"strake/plan"
	"strake/plane"
	"strake/row"
	"strake/tape"
)

// Mark is a place on a wall.
type Mark struct {
	Wall [2]string // its corners
	From string    // the nearer of them
	At   tape.Length
	x    tape.Length // along the rows
	xy   plane.XY
}

// On is the mark's place on the floor plan, mm.
func (m Mark) On() plane.XY { return m.xy }

// Line is one line to snap in one room: the front edge of a row, without its
// tongue.
type Line struct {
	Room        string
	Row         int
	Left, Right Mark
	// Check is the diagonal from the corner that Left was taped from to Right.
	Check tape.Length
}

// every is how many rows lie between lines that are snapped ahead.
const every = 5

// Lines are the lines of every room: the first row whose front crosses it, and
// every fifth after that.
func Lines(p plan.Plan) []Line {
	var out []Line
	for _, r := range p.Floor.Rooms {
		for _, f := range p.AllFields() {
			if f.Kind == lay.Field && holds(p, f, r) {
				out = append(out, roomLines(p, f, r)...)
			}
		}
	}
	return out
}

// holds tells whether a field lies in a room.
func holds(p plan.Plan, f row.Field, r floor.RoomOutline) bool {
	return len(p.Fields) < 2 || slices.Contains(f.Rooms, r.Name)
}

func roomLines(p plan.Plan, f row.Field, r floor.RoomOutline) []Line {
	fronts := fronts(f)
	var out []Line
	last := -every
	for _, n := range rowsOf(fronts) {
		if n-last < every {
			continue
		}
		l, ok := lineAt(f.Layout.Dir, r, fronts[n])
		if ok && laidAlong(f, n, l) && !hidden(p, l.Left) && !hidden(p, l.Right) {
			l.Row = n
			out = append(out, l)
			last = n
		}
	}
	return out
}

// fronts are the lines that rows keep to, by row: the edge that the tongues of
// its boards lead, of those laid ahead where it has both kinds.
func fronts(f row.Field) map[int]tape.Length {
	out := map[int]tape.Length{}
	for _, run := range f.Layout.Runs {
		if _, ok := out[run.Row]; !ok || run.Ahead > 0 {
			out[run.Row] = run.Front()
		}
	}
	return out
}

func rowsOf(fronts map[int]tape.Length) []int {
	var out []int
	for n := range fronts {
		out = append(out, n)
	}
	slices.Sort(out)
	return out
}

// laidAlong tells whether the row has boards along half of the line at least:
// a row of the doorway only is no line of the room.
func laidAlong(f row.Field, row int, l Line) bool {
	var sum tape.Length
	for _, r := range f.Layout.Runs {
		if r.Row == row {
			sum += max(0, min(r.Right.Reach, l.Right.x)-max(r.Left.Reach, l.Left.x))
		}
	}
	return 2*sum >= l.Right.x-l.Left.x
}

// hidden tells whether a mark lies on a wall behind something that stays.
func hidden(p plan.Plan, m Mark) bool {
	at := p.Aligned.Dir.ToRow(m.xy)
	for _, s := range p.Floor.Stays {
		ring := make(plane.Ring, len(s.Corners))
		for i, c := range s.Corners {
			ring[i] = p.Aligned.Dir.ToRow(c)
		}
		if ring.Where(at) >= 0 {
			return true
		}
	}
	return false
}

// lineAt is where a row line crosses the walls of a room that rows end at: its
// outermost two crossings. ok is false when it crosses fewer.
func lineAt(d plane.Dir, r floor.RoomOutline, y tape.Length) (Line, bool) {
	var marks []Mark
	n := len(r.Corners)
	for i := range r.Corners {
		a, b := d.ToRow(r.Corners[i]), d.ToRow(r.Corners[(i+1)%n])
		if (b.Y-a.Y).Abs() < (b.X-a.X).Abs() || (a.Y > y) == (b.Y > y) {
			continue
		}
		t := float64(y-a.Y) / float64(b.Y-a.Y)
		xy := r.Corners[i].Add(r.Corners[(i+1)%n].Sub(r.Corners[i]).Times(t))
		m := Mark{Wall: [2]string{r.Names[i], r.Names[(i+1)%n]}, From: r.Names[i], xy: xy}
		m.x = d.ToRow(xy).X
		m.At = mm(xy.Sub(r.Corners[i]).Len())
		if far := mm(xy.Sub(r.Corners[(i+1)%n]).Len()); far < m.At {
			m.From, m.At = r.Names[(i+1)%n], far
		}
		marks = append(marks, m)
	}
	if len(marks) < 2 {
		return Line{}, false
	}
	slices.SortFunc(marks, func(a, b Mark) int { return int(a.x - b.x) })
	l := Line{Room: r.Name, Left: marks[0], Right: marks[len(marks)-1]}
	k := slices.Index(r.Names, l.Left.From)
	l.Check = mm(l.Right.xy.Sub(r.Corners[k]).Len())
	return l, true
}

func mm(v float64) tape.Length {
	return tape.Length(math.Round(v * float64(tape.Millimetre)))
}

// Tick is a mark on the story stick: the front of a row.
type Tick struct {
	Row int
	At  tape.Length // from the front of the row that is laid first; below 0 behind it
}

// Stick is the distance of the front of each row of a field from the front of
// the one that is laid first, for a story stick and for checks of drift.
func Stick(f row.Field) []Tick {
	if len(f.Layout.Runs) == 0 || f.Kind == lay.Header || f.Kind == lay.Frame {
		return nil
	}
	fronts := fronts(f)
	first := fronts[f.Layout.StartRow]
	var out []Tick
	for _, n := range rowsOf(fronts) {
		out = append(out, Tick{n, fronts[n] - first})
	}
	return out
}
