package check

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"

	"github.com/peterstace/simplefeatures/geom"
	"pgregory.net/rapid"

	"strake/plane"
	"strake/tape"
)

func TestCommonOnKnownFigures(t *testing.T) {
	sq := func(x0, y0, x1, y1 tape.Length) plane.Region {
		return one(plane.Rect(plane.P(x0, y0), plane.P(x1, y1)))
	}
	tri := one(plane.Ring{{X: 0, Y: 0}, {X: 12, Y: 0}, {X: 0, Y: 12}})
	framed := append(sq(0, 0, 10, 10), sq(3, 3, 7, 7)[0].Reverse())
	for _, c := range []struct {
		name string
		gs   []plane.Region
		want *big.Rat
	}{
		{"a square", []plane.Region{sq(2, 3, 7, 9)}, big.NewRat(30, 1)},
		{"apart", []plane.Region{sq(0, 0, 1, 1), sq(2, 0, 3, 1)}, new(big.Rat)},
		{"side by side", []plane.Region{sq(0, 0, 1, 1), sq(1, 0, 3, 1)}, new(big.Rat)},
		{"corner of two squares", []plane.Region{sq(0, 0, 4, 4), sq(3, 2, 9, 9)}, big.NewRat(2, 1)},
		{"with itself", []plane.Region{tri, tri}, big.NewRat(72, 1)},
		{"triangle and square", []plane.Region{tri, sq(0, 0, 8, 8)}, big.NewRat(56, 1)},
		{"frame and square", []plane.Region{framed, sq(2, 2, 8, 8)}, big.NewRat(20, 1)},
		{"inside the hole", []plane.Region{framed, sq(3, 3, 7, 7)}, new(big.Rat)},
		{"three strips", []plane.Region{sq(0, 0, 9, 3), sq(2, -5, 4, 8), tri}, big.NewRat(6, 1)},
		{"below the axis", []plane.Region{sq(-9, -9, -2, -2), sq(-4, -5, 3, 3)}, big.NewRat(6, 1)},
		// two triangles on one base of 6, one 1 high on the left, one on the right:
		// they cross at x 3, half a tick up; 6 * 1/2 / 2
		{"a fraction", []plane.Region{one(plane.Ring{{X: 0, Y: 0}, {X: 6, Y: 0}, {X: 0, Y: 1}}), one(plane.Ring{{X: 0, Y: 0}, {X: 6, Y: 0}, {X: 6, Y: 1}})}, big.NewRat(3, 2)},
	} {
		if got := common(c.gs...); got.Cmp(c.want) != 0 {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}

// On a floor of 200 m a square tick is still seen.
func TestCommonIsExactWhereFloatsAreNot(t *testing.T) {
	const l = tape.Longest
	big1 := one(plane.Rect(plane.P(-l, -l), plane.P(l, l)))
	less := one(plane.Ring{{X: -l, Y: -l}, {X: l, Y: -l}, {X: l, Y: l - 1}, {X: -l, Y: l}})
	gap := new(big.Rat).Sub(area(big1), common(big1, less))
	if want := rat(l); gap.Cmp(want) != 0 { // a triangle 2l by 1 tick
		t.Errorf("%v, want %v", gap, want)
	}
}

// star is a random simple ring round a middle, no larger than r.
func star(t *rapid.T, mid plane.Pt, r int64, name string) plane.Ring {
	n := rapid.IntRange(3, 9).Draw(t, name)
	var angles []float64 // one in each of n parts of the turn: nearly every draw is an outline
	for i := range n {
		angles = append(angles, (float64(i)+rapid.Float64Range(0.25, 0.75).Draw(t, "angle"))*2*math.Pi/float64(n))
	}
	var out plane.Ring
	for _, a := range angles {
		d := float64(rapid.Int64Range(r/3, r).Draw(t, "radius"))
		out = append(out, mid.Add(plane.P(tape.Length(d*math.Cos(a)), tape.Length(d*math.Sin(a)))))
	}
	if len(out) < 3 || ringFault(out, true) != "" {
		t.Skip("no outline")
	}
	return out
}

// holed is a random region: a ring, sometimes with a hole in it.
func holed(t *rapid.T, name string) plane.Region {
	mid := plane.P(tape.Length(rapid.Int64Range(-300, 300).Draw(t, "x")), tape.Length(rapid.Int64Range(-300, 300).Draw(t, "y")))
	g := one(star(t, mid, 600, name))
	if rapid.Bool().Draw(t, "hole") {
		h := star(t, mid, 40, name+" hole")
		for _, e := range sides(h) {
			if in, _ := e.within(g); in.Cmp(big.NewRat(1, 1)) != 0 {
				t.Skip("hole outside")
			}
		}
		g = append(g, h.Reverse())
	}
	return g
}

// Against an outside reference: github.com/peterstace/simplefeatures v0.59.0,
// whose overlay works in floats.
func TestCommonAgainstSimplefeatures(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g, h := holed(t, "g"), holed(t, "h")
		both, err := geom.Intersection(polygon(t, g), polygon(t, h))
		if err != nil {
			t.Skip(err.Error())
		}
		got, _ := common(g, h).Float64()
		if want := both.Area(); math.Abs(got-want) > 1e-6*(1+want) {
			t.Fatalf("%v and %v share %v, simplefeatures says %v", g, h, got, want)
		}
	})
}

func polygon(t *rapid.T, g plane.Region) geom.Geometry {
	var rings []geom.LineString
	for _, r := range g {
		var c []float64
		for i := range len(r) + 1 {
			p := r[i%len(r)]
			c = append(c, float64(p.X), float64(p.Y))
		}
		rings = append(rings, geom.NewLineString(geom.NewSequence(c, geom.DimXY)))
	}
	p := geom.NewPolygon(rings)
	if err := p.Validate(); err != nil {
		t.Skip(err.Error())
	}
	return p.AsGeometry()
}

// Three regions at once: shared by all is what the third shares of what two
// share, so it is never more, and adds up with what lies outside a cut.
func TestCommonOfThreeAddsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g, h := holed(t, "g"), holed(t, "h")
		x := tape.Length(rapid.Int64Range(-900, 900).Draw(t, "cut"))
		left := one(plane.Rect(plane.P(-2000, -2000), plane.P(x, 2000)))
		right := one(plane.Rect(plane.P(x, -2000), plane.P(2000, 2000)))
		sum := new(big.Rat).Add(common(g, h, left), common(right, h, g))
		if want := common(g, h); sum.Cmp(want) != 0 {
			t.Fatalf("halves add up to %v, whole is %v", sum, want)
		}
		if a := new(big.Rat).Quo(new(big.Rat).SetInt(regionArea2(g)), big.NewRat(2, 1)); a.Cmp(area(g)) != 0 {
			t.Fatalf("area %v, by the shoelace %v", area(g), a)
		}
	})
}

func regionArea2(g plane.Region) *big.Int {
	sum := new(big.Int)
	for _, r := range g {
		sum.Add(sum, area2(r))
	}
	return sum
}

// By counting: a sample point lies in both as often as the area says.
func TestCommonAgainstSampling(t *testing.T) {
	rnd := rand.New(rand.NewPCG(3, 4))
	g := plane.Region{{{X: 0, Y: 0}, {X: 900, Y: 100}, {X: 700, Y: 800}, {X: 400, Y: 300}, {X: 100, Y: 900}}}
	h := plane.Region{{{X: -100, Y: 250}, {X: 1000, Y: 150}, {X: 1000, Y: 600}, {X: 0, Y: 500}}}
	const n = 40_000
	hits := 0
	for range n {
		p := edge{plane.P(tape.Length(rnd.IntN(1000)), tape.Length(rnd.IntN(1000))), plane.P(2000, 2001)}
		if p.stands(new(big.Rat), sidesOf(g)) > 0 && p.stands(new(big.Rat), sidesOf(h)) > 0 {
			hits++
		}
	}
	got, _ := common(g, h).Float64()
	if want := float64(hits) / n * 1e6; math.Abs(got-want) > 0.03*want {
		t.Errorf("%v, by counting about %v", got, want)
	}
}

func TestWithin(t *testing.T) {
	room := one(plane.Ring{{X: 0, Y: 0}, {X: 10, Y: 0}, {X: 10, Y: 4}, {X: 6, Y: 4}, {X: 6, Y: 8}, {X: 0, Y: 8}})
	for _, c := range []struct {
		e      edge
		in, on *big.Rat
	}{
		{edge{plane.P(-5, 2), plane.P(15, 2)}, big.NewRat(1, 2), new(big.Rat)},
		{edge{plane.P(0, 4), plane.P(10, 4)}, big.NewRat(3, 5), big.NewRat(2, 5)},
		{edge{plane.P(-4, -4), plane.P(12, 12)}, big.NewRat(6, 16), new(big.Rat)}, // leaves at the corner (6, 6)
		{edge{plane.P(0, 9), plane.P(9, 9)}, new(big.Rat), new(big.Rat)},
	} {
		in, on := c.e.within(room)
		if in.Cmp(c.in) != 0 || on.Cmp(c.on) != 0 {
			t.Errorf("%v: %v in and %v on, want %v and %v", c.e, in, on, c.in, c.on)
		}
	}
}

func TestLengthsRoundUp(t *testing.T) {
	for _, c := range []struct {
		to   plane.Pt
		want tape.Length
	}{{plane.P(3, 4), 5}, {plane.P(1, 1), 2}, {plane.P(-7, 0), 7}, {plane.P(0, 0), 0}, {plane.P(tape.Longest, tape.Longest), 2_262_741_700}} {
		if got := (edge{b: c.to}).length(); got != c.want {
			t.Errorf("to %v: %v, want %v", c.to, int64(got), int64(c.want))
		}
	}
}

// blade / cos: for a mitre of 3 in 4 the saw takes 5/4 of its width along the
// board, for a taper of 3 in 4 (never cut, but exact) 5/4 across it.
func TestKerfSquareToTheCut(t *testing.T) {
	s := &site{}
	s.lim.Kerf.Value = 100
	for _, c := range []struct {
		d    plane.Pt
		want tape.Length
	}{{plane.P(0, 9), 100}, {plane.P(9, 0), 100}, {plane.P(3, 4), 125}, {plane.P(-4, 3), 125}, {plane.P(1, 100), 101}} {
		if got := s.taken(edge{b: c.d}); got != c.want {
			t.Errorf("cut along %v: %v, want %v", c.d, int64(got), int64(c.want))
		}
	}
}

func TestRingFaults(t *testing.T) {
	for want, r := range map[string]plane.Ring{
		"":                                      {{X: 0, Y: 0}, {X: 4, Y: 0}, {X: 8, Y: 0}, {X: 4, Y: 4}}, // a corner on a straight side
		"has fewer than three corners":          {{X: 0, Y: 0}, {X: 4, Y: 0}},
		"crosses or touches itself":             {{X: 0, Y: 0}, {X: 4, Y: 0}, {X: 0, Y: 4}, {X: 4, Y: 4}},
		"runs clockwise":                        {{X: 0, Y: 0}, {X: 0, Y: 4}, {X: 4, Y: 0}},
		"lies farther out than can be measured": {{X: 0, Y: 0}, {X: math.MinInt64, Y: 4}, {X: 4, Y: 0}},
	} {
		if got := ringFault(r, true); got != want {
			t.Errorf("%v: %q, want %q", r, got, want)
		}
	}
	spike := plane.Ring{{X: 0, Y: 0}, {X: 4, Y: 0}, {X: 9, Y: 0}, {X: 4, Y: 0}, {X: 2, Y: 4}}
	if ringFault(spike, true) == "" {
		t.Error("a spike passes for an outline")
	}
}

// A taper sawn through, then a steeper cut on the piece alone: at the corner
// the piece comes nearer to the strip than the steeper cut's kerf, rightly.
func TestKerfIsThatOfThePartingCut(t *testing.T) {
	s := &site{}
	s.lim.Kerf.Value = in(0.125)
	piece := plane.Ring{{X: 0, Y: 0}, {X: 13099966, Y: 0}, {X: 13099966, Y: 61718}, {X: 12645496, Y: 375288}, {X: 0, Y: 396406}}
	strip := plane.Ring{{X: 0, Y: 459740}, {X: 0, Y: 421807}, {X: 12645496, Y: 400689}, {X: 13099966, Y: 399930}, {X: 13099966, Y: 459740}}
	if d, bad := s.tooClose(piece, strip); bad {
		t.Errorf("%v between is said to be too close", d)
	}
	if _, bad := s.tooClose(piece, strip.Move(plane.P(0, -10))); !bad {
		t.Error("ten ticks less go unseen")
	}
}
