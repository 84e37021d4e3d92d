package survey

import (
	"math"
	"testing"

	"strake/plane"
	"strake/room"
)

// The stated doubts of a width at both ends, an area and a diagonal are those
// that simulated rooms show: 1,500 rooms, so the spread is known to 4 % (2
// deviations). The room is drawn once for each seed; errors are set against
// stated doubts, so their ratio has deviation 1.
func TestStatedDoubts(t *testing.T) {
	const rooms = 1500
	sum := map[string]float64{}
	for seed := range uint64(rooms) {
		f := newSimulated(seed+300_000, fourWalls)
		r := Adjust(fourWalls, f.between("AB", "BC", "CD", "AC"), f.m)
		at := func(name string) plane.XY { return f.at[name] }
		add := func(name string, d Doubt, truth float64) { sum[name] += math.Pow((d.Value-truth)/d.SD, 2) / rooms }
		rows := AlongWall(room.Wall{"A", "B"})
		got, ok := r.Across(rows, room.Wall{"A", "B"}, room.Wall{"C", "D"})
		if !ok {
			t.Fatal("A-B and C-D have no stretch in common")
		}
		// In the true room A is the origin and A-B runs along X too.
		lo, _ := common(plane.XY{X: 1}, func(n string) plane.XY { return r.Built.At[n] }, room.Wall{"A", "B"}, room.Wall{"C", "D"})
		add("width", got[0], widthAt(rows, room.Wall{"A", "B"}, room.Wall{"C", "D"}, lo)(at))
		area := func(at func(string) plane.XY) float64 {
			return (at("C").Sub(at("A")).Cross(at("D").Sub(at("B")))) / 2
		}
		add("area", r.Area(fourWalls.Rooms[0]), area(at))
		d := func(at func(string) plane.XY) float64 { return at("B").Sub(at("D")).Len() }
		add("B-D", r.Doubt(d), d(at))
		if sd := r.SD(d); math.Abs(sd-r.DistanceSD("B", "D")) > 1e-5*sd {
			t.Fatalf("two ways to the doubt of B-D: %.6f and %.6f mm", sd, r.DistanceSD("B", "D"))
		}
	}
	for name, v := range sum {
		t.Logf("%s: errors over stated doubts have deviation %.3f", name, math.Sqrt(v))
		if math.Abs(math.Sqrt(v)-1) > 0.06 {
			t.Errorf("%s: errors over stated doubts have deviation %.3f", name, math.Sqrt(v))
		}
	}
}
