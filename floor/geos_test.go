//go:build geos

package floor

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/peterstace/simplefeatures/geom"
	"github.com/peterstace/simplefeatures/geos"

	"strake/finding"
	"strake/limits"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// The oracle is GEOS (libgeos of the OSGeo project, here through cgo), which
// shares no code with the package that floor uses for its unions.

// site draws random places: rooms of four, six or eight corners whose walls
// lie a little, turned by any angle, with doorways, a second room and things
// that stay.
type site struct{ *rand.Rand }

func (s site) between(lo, hi float64) float64 { return lo + (hi-lo)*s.Float64() }

func ticks(mm float64) tape.Length { return tape.Length(math.Round(mm * float64(tape.Millimetre))) }

// corners is a rectangle, an L or a U of about w by h mm.
func (s site) corners(w, h float64) []plane.XY {
	a, b, c := w*s.between(0.3, 0.45), h*s.between(0.3, 0.7), w*s.between(0.55, 0.7)
	out := [][]plane.XY{
		{{X: 0, Y: 0}, {X: w, Y: 0}, {X: w, Y: h}, {X: 0, Y: h}},
		{{X: 0, Y: 0}, {X: w, Y: 0}, {X: w, Y: b}, {X: a, Y: b}, {X: a, Y: h}, {X: 0, Y: h}},
		{{X: 0, Y: 0}, {X: w, Y: 0}, {X: w, Y: h}, {X: c, Y: h}, {X: c, Y: b}, {X: a, Y: b}, {X: a, Y: h}, {X: 0, Y: h}},
	}[s.IntN(3)]
	for i := range out {
		out[i].X += s.NormFloat64() * 8
		out[i].Y += s.NormFloat64() * 8
	}
	return out
}

func name(i int) string { return string(rune('A' + i)) }

// place is a random place as built. The wall A-B has a doorway to other
// flooring, B-C sometimes one into a second room; a hearth stands against A-B
// and a post in the room.
func (s site) place() room.Built {
	w, h := s.between(3000, 7000), s.between(2500, 6000)
	b := room.Built{At: map[string]plane.XY{}}
	main := room.Room{Name: "main"}
	for i, p := range s.corners(w, h) {
		main.Corners = append(main.Corners, name(i))
		b.At[name(i)] = p
	}
	b.Rooms = []room.Room{main}
	b.Doorways = []room.Doorway{{Name: "hall", Wall: room.Wall{"A", "B"}, From: "A", At: ticks(s.between(100, 300)), Width: ticks(800),
		Thickness: ticks(120), Ends: ticks(s.between(20, 110)), Beyond: room.BeyondTransition}}
	if s.IntN(2) == 0 {
		b.Stays = append(b.Stays, room.Stay{Name: "hearth", Kind: room.Hearth, Meets: room.MeetsFlush, Wall: room.Wall{"A", "B"}, From: "B",
			At: ticks(s.between(50, 200)), Width: ticks(s.between(300, 1000)), Depth: ticks(s.between(200, 350))})
	}
	if s.IntN(2) == 0 {
		b.Stays = append(b.Stays, room.Stay{Name: "post", Kind: room.Column, Meets: room.MeetsGap, Wall: room.Wall{"A", "B"}, From: "A",
			At: ticks(s.between(200, 600)), Off: ticks(s.between(300, 500)), Width: ticks(100), Depth: ticks(120)})
	}
	if s.IntN(2) == 0 {
		s.second(&b)
	}
	turn := s.between(0, 2*math.Pi)
	for c, p := range b.At {
		b.At[c] = plane.XY{X: p.X*math.Cos(turn) - p.Y*math.Sin(turn), Y: p.X*math.Sin(turn) + p.Y*math.Cos(turn)}
	}
	return b
}

// second adds a room beyond the wall B-C, square to it.
func (s site) second(b *room.Built) {
	p, q := b.At["B"], b.At["C"]
	along := q.Sub(p).Unit()
	out := along.Left().Times(-1)
	thick, at, off := s.between(90, 160), s.between(100, 200), s.between(60, 200)
	start := p.Add(along.Times(at - off)).Add(out.Times(thick))
	depth, width := s.between(1200, 3000), 700+off+s.between(60, 300)
	for i, c := range []plane.XY{start, start.Add(out.Times(depth)), start.Add(out.Times(depth)).Add(along.Times(width)), start.Add(along.Times(width))} {
		b.At["s"+name(i)] = c
	}
	b.Rooms = append(b.Rooms, room.Room{Name: "second", Corners: []string{"sA", "sB", "sC", "sD"}})
	b.Doorways = append(b.Doorways, room.Doorway{Name: "between", Wall: room.Wall{"B", "C"}, From: "B", At: ticks(at), Width: ticks(700), Thickness: ticks(thick),
		Beyond: room.BeyondRoom, OtherWall: room.Wall{"sD", "sA"}, OtherFrom: "sA", OtherAt: ticks(off)})
}

func polygon(t *testing.T, corners ...plane.XY) geom.Geometry {
	t.Helper()
	var flat []float64
	for _, p := range append(corners, corners[0]) {
		flat = append(flat, p.X, p.Y)
	}
	g := geom.NewSingleRingPolygonXY(flat...).AsGeometry()
	if err := g.Validate(); err != nil {
		t.Fatal(err)
	}
	return g
}

// onWall is a rectangle set out from a wall of a counter-clockwise room, from
// the distance at along it from corner c and from near to far into the room.
// It is worked out here afresh, not by floor's own code.
func onWall(t *testing.T, b room.Built, w room.Wall, c string, at, width tape.Length, near, far float64) geom.Geometry {
	t.Helper()
	o, e := b.At[c], b.At[w[0]]
	if c == w[0] {
		e = b.At[w[1]]
	}
	along := e.Sub(o).Unit()
	in := along.Left()
	if c == w[1] {
		in = in.Times(-1)
	}
	p := func(x, y float64) plane.XY { return o.Add(along.Times(x)).Add(in.Times(y)) }
	x0, x1 := at.Millimetres(), (at + width).Millimetres()
	return polygon(t, p(x0, near), p(x1, near), p(x1, far), p(x0, far))
}

// union is the place by GEOS: rooms and doorways, less what stays. A doorway
// is let 1 mm into its rooms, which adds no area, so that they hang together.
func union(t *testing.T, b room.Built) geom.Geometry {
	t.Helper()
	var g geom.Geometry
	put := func(op func(a, b geom.Geometry) (geom.Geometry, error), h geom.Geometry) {
		t.Helper()
		var err error
		if g, err = op(g, h); err != nil {
			t.Fatal(err)
		}
	}
	for _, r := range b.Rooms {
		var at []plane.XY
		for _, c := range r.Corners {
			at = append(at, b.At[c])
		}
		put(geos.Union, polygon(t, at...))
	}
	for _, d := range b.Doorways {
		deep := d.Ends.Millimetres()
		if d.Beyond == room.BeyondRoom {
			deep = d.Thickness.Millimetres() + 1
		}
		put(geos.Union, onWall(t, b, d.Wall, d.From, d.At, d.Width, -deep, 1))
	}
	for _, s := range b.Stays {
		near := s.Off.Millimetres()
		if near == 0 {
			near = -1
		}
		put(geos.Difference, onWall(t, b, s.Wall, s.From, s.At, s.Width, near, (s.Off+s.Depth).Millimetres()))
	}
	return g
}

// polygons is a floor as one geometry of the oracle, for areas where two
// outlines differ.
func (s shape) polygons(t *testing.T) geom.Geometry {
	t.Helper()
	var g geom.Geometry
	for _, sign := range []float64{1, -1} { // outer outlines first
		for _, o := range s {
			if o.area()*sign < 0 {
				continue
			}
			op := geos.Union
			if sign < 0 {
				op = geos.Difference
			}
			var err error
			if g, err = op(g, polygon(t, o...)); err != nil {
				t.Fatal(err)
			}
		}
	}
	return g
}

// apart is the area (mm²) that lies in one of the two and not in the other.
func gapApart(t *testing.T, a, b geom.Geometry) float64 {
	t.Helper()
	d, err := geos.SymmetricDifference(a, b)
	if err != nil {
		t.Fatal(err)
	}
	return d.Area()
}

const places = 400

func each(t *testing.T, try func(t *testing.T, b room.Built, f Floor)) {
	for seed := range uint64(places) {
		b := site{rand.New(rand.NewPCG(seed, 11))}.place()
		f, fs := New(b, trim, limits.Default(5*tape.Inch, 3*tape.Inch/4), style)
		if finding.Worst(fs) == finding.Stop {
			t.Fatalf("place %d: %v", seed, fs)
		}
		try(t, b, f)
	}
}

// TestUnionAgainstGEOS: rooms and doorways less what stays cover the same
// place to 0.1 mm². They are not the same to the last figure because floor
// drops corners less than 2 micrometres (straight) off the line through their
// neighbours; 0.1 mm² is six times the worst of these places, and what 20
// nanometres make along one wall of 5 m.
func TestUnionAgainstGEOS(t *testing.T) {
	worst := 0.0
	each(t, func(t *testing.T, b room.Built, f Floor) {
		var s shape
		for _, r := range f.Rings {
			s = append(s, r.Corners)
		}
		want := union(t, b)
		off := gapApart(t, s.polygons(t), want)
		if off > 0.1 || math.Abs(s.area()-want.Area()) > 0.1 {
			t.Errorf("area %.4f mm², GEOS %.4f; %.5f apart", s.area(), want.Area(), off)
		}
		worst = math.Max(worst, off)
	})
	t.Logf("%d places, at worst %.5f mm² apart", places, worst)
}

// TestInsetAgainstGEOS: where all gaps are alike and positive, the floor less
// its gaps is the oracle's negative buffer with mitred joins. No corner here is
// sharp enough to reach a mitre limit of 10. Both work in doubles and get the
// same corners but for the last figures, so they may differ by no more than
// floor throws away on purpose: parts under 0.01 mm² (speck). A gap wrong by a
// ten-thousandth of a millimetre makes 4 mm² on these places.
func TestInsetAgainstGEOS(t *testing.T) {
	for _, gap := range []float64{1.5875, 9.525, 19.05, 25.4, 60} {
		worst := 0.0
		each(t, func(t *testing.T, _ room.Built, f Floor) {
			gaps := make([]float64, len(f.Edges))
			for i := range gaps {
				gaps[i] = gap
			}
			var whole shape
			for _, r := range f.Rings {
				whole = append(whole, r.Corners)
			}
			got, err := f.inset(gaps)
			if err != nil {
				t.Fatal(err)
			}
			want, err := geos.Buffer(whole.polygons(t), -gap, geos.BufferJoinStyleMitre(10))
			if err != nil {
				t.Fatal(err)
			}
			off := gapApart(t, got.polygons(t), want)
			if off > speck || want.Area() < 1e6 {
				t.Errorf("gap %.4f mm: area %.4f mm², GEOS %.4f; %.5f apart", gap, got.area(), want.Area(), off)
			}
			worst = math.Max(worst, off)
		})
		t.Logf("gap %.4f mm: %d places, at worst %.2g mm² apart", gap, places, worst)
	}
}

// TestTicksAgainstGEOS: after the turn into the frame of the rows and the
// rounding to ticks, the doubled area of Reach in whole ticks is that of the
// inset to half the diagonal of a tick along its outline: no corner moves
// farther than that. Here each edge has its own gap, jambs and hearths too.
func TestTicksAgainstGEOS(t *testing.T) {
	worst := 0.0
	each(t, func(t *testing.T, b room.Built, f Floor) {
		a := f.In(plane.DirOf(b.At["A"], b.At["B"]))
		gaps := make([]float64, len(f.Edges))
		for i, e := range a.Edges {
			gaps[i] = e.Range.Least.Millimetres()
		}
		s, err := f.inset(gaps)
		if err != nil {
			t.Fatal(err)
		}
		const tick = 1.0 / 8000 // mm
		g := s.polygons(t)
		got := float64(a.Reach.Area2()) / 2 * tick * tick
		off := math.Abs(got - g.Area())
		if may := tick * math.Sqrt2 / 2 * g.Boundary().Length(); off > may {
			t.Errorf("area %.4f mm² in ticks, GEOS %.4f, at most %.4f apart", got, g.Area(), may)
		}
		worst = math.Max(worst, off)
	})
	t.Logf("%d places, at worst %.5f mm² apart", places, worst)
}
