package plan_test

import (
	"fmt"
	"testing"

	"strake/job"
	"strake/limits"
	"strake/plan"
	"strake/plane"
	"strake/room"
	"strake/stock"
	"strake/survey"
	"strake/tape"
)

// twelveRooms is a floor of twelve rooms, three by four, each a little out of
// square, with a doorway to the next.
func twelveRooms() job.Job {
	j := job.Job{Name: "twelve rooms", Unit: tape.UnitMillimetre, Base: in(0.5), Shoe: in(0.75), Limits: limits.Default(in(5), in(0.75)), Seed: 1}
	j.Boards = stock.Boards{Face: in(5), Thickness: in(0.75), SideTongue: in(0.25), EndTongue: in(0.25), Known: stock.MixOnly,
		Mix: stock.Mix{Least: in(12), Most: in(84), Mean: in(40)}}
	const w, h, wall = 3600.0, 3100.0, 115.0
	name := func(k, c int) string { return fmt.Sprintf("%c%d", 'A'+c, k) }
	for k := range 12 {
		x, y := float64(k%4)*(w+wall), float64(k/4)*(h+wall)
		at := []plane.XY{{X: x, Y: y}, {X: x + w, Y: y + float64(k%3)}, {X: x + w - float64(k%5), Y: y + h}, {X: x, Y: y + h - float64(k%2)}}
		r := room.Room{Name: fmt.Sprintf("room %d", k+1)}
		for c := range 4 {
			r.Corners = append(r.Corners, name(k, c))
		}
		j.Sketch.Rooms = append(j.Sketch.Rooms, r)
		for a := range 4 {
			for b := a + 1; b < 4; b++ {
				j.Readings = append(j.Readings, survey.Reading{From: name(k, a), To: name(k, b), Step: tape.Millimetre,
					Value: tape.Nearest(tape.Length(at[b].Sub(at[a]).Len()*float64(tape.Millimetre)), tape.Millimetre)})
			}
		}
		mm := func(v float64) tape.Length { return tape.Length(v * float64(tape.Millimetre)) }
		d := room.Doorway{Name: fmt.Sprintf("door %d", k+1), Width: mm(810), Thickness: mm(wall), Undercut: true, Beyond: room.BeyondRoom}
		if k%4 < 3 { // to the right
			d.Wall, d.From, d.At = room.Wall{name(k, 1), name(k, 2)}, name(k, 1), mm(900)
			d.OtherWall, d.OtherFrom, d.OtherAt = room.Wall{name(k+1, 3), name(k+1, 0)}, name(k+1, 0), mm(900)
			j.Sketch.Doorways = append(j.Sketch.Doorways, d)
		} else if k < 8 { // up
			d.Wall, d.From, d.At = room.Wall{name(k, 2), name(k, 3)}, name(k, 3), mm(1200)
			d.OtherWall, d.OtherFrom, d.OtherAt = room.Wall{name(k+4, 0), name(k+4, 1)}, name(k+4, 0), mm(1200)
			j.Sketch.Doorways = append(j.Sketch.Doorways, d)
		}
	}
	return j
}

// BenchmarkRows is all candidates of a twelve-room floor; the target is 3 s.
func BenchmarkRows(b *testing.B) {
	j := twelveRooms()
	for b.Loop() {
		if c := plan.Choose(j); len(c.Candidates) < 2 {
			b.Fatal(c.Findings)
		}
	}
}

func TestTwelveRooms(t *testing.T) {
	c := plan.Choose(twelveRooms())
	if n := len(c.Candidates); n < 2 || n > 5 {
		t.Fatalf("%d candidates: %v", n, c.Findings)
	}
}
