package survey

import (
	"math"
	"testing"

	"strake/plane"
	"strake/room"
	"strake/tape"
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
		from, to := r.wallLine(room.Wall{"A", "B"}), r.wallLine(room.Wall{"C", "D"})
		along := plane.XY{X: 1}
		places, _ := abreast(spanOf(along, from, r.x, nil), spanOf(along, to, r.x, nil))
		truth := f.unknowns(r)
		add("width", got[0], level(along, to, truth, nil, places[0][1])-level(along, from, truth, nil, places[0][0]))
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

// unknowns are the true places as the unknowns of a fit; the tape is true.
func (f simulated) unknowns(r Result) []float64 {
	x := append([]float64(nil), r.x...)
	for name, i := range r.net.index {
		x[i], x[i+1] = f.at[name].X, f.at[name].Y
	}
	x[r.net.scale()] = 0
	return x
}

// The stated doubts of the width to something that stays are those of simulated
// rooms too: a hearth set out from a wall, each distance read with the tape off
// a wall that is not quite straight, and an island by its corners.
func TestStatedDoubtsOfStays(t *testing.T) {
	const rooms = 1500
	island := room.Stay{Name: "island", Corners: []string{"H", "I", "J", "K"}}
	s := fourWalls
	s.Stays = []room.Stay{island}
	sum := map[string]float64{}
	start := room.Wall{"A", "B"}
	for seed := range uint64(rooms) {
		f := newSimulated(seed+600_000, fourWalls)
		f.put(island)
		rs := append(f.between("AB", "BC", "CD", "DA", "AC", "BD"),
			f.between("AH", "BH", "BI", "CI", "CJ", "DJ", "DK", "AK", "HI", "IJ")...)
		r := Adjust(s, rs, f.m)
		for _, h := range f.hearths() {
			got, ok := r.AcrossStay(AlongWall(start), start, h.read, h.side)
			if !ok {
				t.Fatal(h.read.Name)
			}
			is, _ := r.stayLine(h.read, h.side)
			places, _ := abreast(spanOf(plane.XY{X: 1}, r.wallLine(start), r.x, nil), spanOf(plane.XY{X: 1}, is.line, r.x, is.values()))
			truth := math.Abs(level(plane.XY{X: 1}, is.line, f.unknowns(r), h.true, places[0][1]))
			sum[h.read.Name] += math.Pow((got[0].Value-truth)/got[0].SD, 2) / rooms
		}
	}
	for name, v := range sum {
		t.Logf("%s: errors over stated doubts have deviation %.3f", name, math.Sqrt(v))
		if math.Abs(math.Sqrt(v)-1) > 0.06 {
			t.Errorf("%s: errors over stated doubts have deviation %.3f", name, math.Sqrt(v))
		}
	}
}

// put places something that stays by corners in the middle of the room, its
// sides as far off square as the stated deviation.
func (f simulated) put(s room.Stay) {
	mid := f.at["A"].Add(f.at["C"]).Times(0.5)
	side, turn := 700.0, 0.0
	p := mid.Add(plane.XY{X: -side / 2, Y: -side / 2})
	e := f.NormFloat64() * f.m.SquareDeg
	for i, c := range s.Corners {
		f.at[c] = p
		a := (float64(90*i) + turn) * math.Pi / 180
		p = p.Add(plane.XY{X: math.Cos(a), Y: math.Sin(a)}.Times(side))
		if e = -e; i%2 == 0 {
			turn += e
		}
	}
}

// hearth is something that stays as read, with what is true.
type hearth struct {
	read room.Stay
	side int
	true []float64 // own figures of a rectangle
}

// hearths are a side of each kind: away from the wall, beside it from either
// corner, and between two corners.
func (f simulated) hearths() []hearth {
	read := func(mm float64) tape.Length { return f.read(Reading{}, mm).Value }
	face := f.NormFloat64() * f.m.WallMM
	at, wide, off, deep := 300+200*f.Float64(), 400+100*f.Float64(), 250+100*f.Float64(), 350+100*f.Float64()
	from := func(name string, w room.Wall, corner string, side int, off float64) hearth {
		h := hearth{side: side, true: []float64{at, wide, off, deep, face}}
		h.read = room.Stay{Name: name, Wall: w, From: corner, At: read(at), Width: read(wide), Depth: read(deep)}
		if off > 0 {
			h.read.Off = read(off)
		}
		return h
	}
	return []hearth{
		from("against wall C-D", room.Wall{"C", "D"}, "C", 2, 0),
		from("off wall C-D", room.Wall{"D", "C"}, "D", 2, off),
		from("at wall D-A, from D", room.Wall{"D", "A"}, "D", 1, off),
		from("at wall D-A, from A", room.Wall{"A", "D"}, "A", 3, 0),
		{side: 2, read: room.Stay{Name: "island", Corners: []string{"H", "I", "J", "K"}}},
	}
}
