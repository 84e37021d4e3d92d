package row

import (
	"testing"

	"pgregory.net/rapid"

	"strake/floor"
	"strake/limits"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// notched is a room with closets behind its start wall and niches ahead, of
// random widths and depths, and something that stays in it.
func notched(t *rapid.T) room.Built {
	n := func(name string, lo, hi int) float64 { return float64(rapid.IntRange(lo, hi).Draw(t, name)) * 25.4 }
	w, h := n("w", 150, 260), n("h", 90, 180)
	b := rectangle(1, 1)
	ring := []plane.XY{{X: 0, Y: 0}}
	for x := n("first", 10, 50); x < w-60*25.4; {
		wide, deep := n("wide", 20, 60), n("deep", 15, 50)
		ring = append(ring, plane.XY{X: x}, plane.XY{X: x, Y: -deep}, plane.XY{X: x + wide, Y: -deep}, plane.XY{X: x + wide})
		x += wide + n("apart", 12, 80)
	}
	ring = append(ring, plane.XY{X: w, Y: 0}, plane.XY{X: w, Y: h})
	if rapid.Bool().Draw(t, "niche") {
		wide, deep := n("niche wide", 20, 60), n("niche deep", 15, 40)
		ring = append(ring, plane.XY{X: w / 2, Y: h}, plane.XY{X: w / 2, Y: h + deep}, plane.XY{X: w/2 - wide, Y: h + deep}, plane.XY{X: w/2 - wide, Y: h})
	}
	ring = append(ring, plane.XY{X: 0, Y: h})
	b.Rooms[0].Corners = nil
	for i, p := range ring {
		name := string(rune('A'+i%26)) + string(rune('0'+i/26))
		b.Rooms[0].Corners = append(b.Rooms[0].Corners, name)
		b.At[name] = p
	}
	if rapid.Bool().Draw(t, "island") {
		b.Stays = []room.Stay{{Name: "post", Kind: room.Column, Meets: room.MeetsGap, Wall: room.Wall{b.Rooms[0].Corners[len(ring)-1], b.Rooms[0].Corners[0]}, From: b.Rooms[0].Corners[0],
			At: in(40), Off: in(40), Width: in(30), Depth: in(40)}}
	}
	return b
}

// Whatever hangs behind and ahead: two runs that share a stretch of a row line
// either both lead ahead, the lower one laid first, or both backwards, the upper
// one first, or they part there, groove to groove, on a spline that is listed.
// A tongue never meets a tongue, and every place in the order is taken once.
func TestSensesInterlock(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := notched(t)
		pitch := in(rapid.Float64Range(2.25, 7).Draw(t, "pitch"))
		lim := limits.Default(pitch, in(0.75))
		f, fs := floor.New(b, floor.Trim{Base: in(0.5), Shoe: in(0.75)}, lim, style)
		if len(f.Rings) == 0 {
			t.Fatal(fs)
		}
		w := Wishes{Direction: room.Wall{b.Rooms[0].Corners[0], b.Rooms[0].Corners[1]}, Middle: rapid.Bool().Draw(t, "middle"),
			Turning: rapid.SampledFrom([]Turning{TurnShort, TurnAll, TurnNone}).Draw(t, "turning")}
		l, _ := Make(f, b, pitch, lim, w, style)
		var told, found tape.Length
		for _, s := range l.Splines {
			told += s.Along.Len()
		}
		seen := map[int]bool{}
		for _, r := range l.Runs {
			if seen[r.Order] || r.Order < 1 || r.Order > len(l.Runs) || r.Ahead*r.Ahead != 1 {
				t.Fatalf("row %d at place %d, sense %d", r.Row, r.Order, r.Ahead)
			}
			seen[r.Order] = true
			for _, q := range l.Runs {
				if q.Low != r.High {
					continue
				}
				touch := overlap(r, q)
				switch {
				case touch == 0:
				case r.Ahead > 0 && q.Ahead < 0:
					t.Fatalf("tongues meet between rows %d and %d", r.Row, q.Row)
				case r.Ahead < 0 && q.Ahead > 0:
					found += touch
				case r.Ahead > 0 && r.Order > q.Order, r.Ahead < 0 && r.Order < q.Order:
					t.Fatalf("row %d (place %d) and row %d (place %d), sense %d", r.Row, r.Order, q.Row, q.Order, r.Ahead)
				}
			}
		}
		if (told - found).Abs() > tape.Length(2*len(l.Splines))*tape.Inch {
			t.Fatalf("splines of %v are listed, grooves meet along %v", told, found)
		}
		if w.Turning == TurnNone && !w.Middle && found > 0 {
			t.Fatal("a spline though none were wanted")
		}
	})
}

// overlap is how long two runs on both sides of a row line lie beside each
// other, measured at places an inch apart.
func overlap(low, high Run) tape.Length {
	var sum tape.Length
	step := tape.Inch
	for x := max(low.Left.Reach, high.Left.Reach); x < min(low.Right.Reach, high.Right.Reach); x += step {
		up, down := false, false
		for _, s := range low.Shape.Section(x, false) {
			up = up || s.To == low.High
		}
		for _, s := range high.Shape.Section(x, false) {
			down = down || s.From == high.Low
		}
		if up && down {
			sum += step
		}
	}
	return sum
}
