package plane

import (
	"math"
	"testing"

	"github.com/peterstace/simplefeatures/geom"
	"pgregory.net/rapid"

	"strake/tape"
)

// star is a random ring round a centre, counter-clockwise, without crossings.
func star(t *rapid.T, c Pt, low, high float64, n int, name string) Ring {
	var r Ring
	for i := range n {
		at := 2 * math.Pi * (float64(i) + rapid.Float64Range(0.05, 0.95).Draw(t, name+" turn")) / float64(n)
		d := rapid.Float64Range(low, high).Draw(t, name+" reach")
		r = append(r, Pt{c.X + tape.Length(d*math.Cos(at)), c.Y + tape.Length(d*math.Sin(at))})
	}
	return r.Tidy()
}

// holed is a random outline of at least 8 corners with a hole in half of the
// cases.
func holed(t *rapid.T) Region {
	g := Region{star(t, Pt{}, 3e5, 1e6, rapid.IntRange(8, 14).Draw(t, "corners"), "outer")}
	if rapid.Bool().Draw(t, "hole") {
		g = append(g, star(t, Pt{}, 3e4, 9e4, rapid.IntRange(4, 7).Draw(t, "hole corners"), "hole").Reverse())
	}
	return g
}

// A line splits an area into two that make it up, to half a tick along the
// line for each corner made there.
func TestLineSplitsArea(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := holed(t)
		at := tape.Length(rapid.Int64Range(-1_100_000, 1_100_000).Draw(t, "line"))
		slack := tape.Area(0)
		for _, r := range g {
			for i, p := range r {
				q := r[(i+1)%len(r)]
				slack += tape.Area((q.X - p.X).Abs() + (q.Y - p.Y).Abs())
			}
		}
		if d := g.Above(at).Area2() + g.Below(at).Area2() - g.Area2(); d > slack || -d > slack {
			t.Fatalf("above and below make up %d too much", d)
		}
		if d := g.LeftOf(at).Area2() + g.RightOf(at).Area2() - g.Area2(); d > slack || -d > slack {
			t.Fatalf("left and right make up %d too much", d)
		}
	})
}

// Strips and their parts are those of a general polygon library
// (simplefeatures, a port of JTS): same area, same number of parts.
func TestStripAgainstLibrary(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := holed(t)
		low := tape.Length(rapid.Int64Range(-1_000_000, 900_000).Draw(t, "low"))
		high := low + tape.Length(rapid.Int64Range(20_000, 300_000).Draw(t, "height"))
		s := g.Strip(low, high)
		want, err := geom.Intersection(asGeom(g), asGeom(Region{Rect(P(-2_000_000, low), P(2_000_000, high))}))
		if err != nil {
			t.Fatalf("the library refuses: %v", err)
		}
		got := float64(s.Area2()) / 2
		if d := math.Abs(got - want.Area()); d > 4e6 { // 4 m of lines to a tick
			t.Fatalf("area %.0f, library %.0f", got, want.Area())
		}
		big := 0
		for _, p := range s.Parts() {
			if p.Area2() > 1e7 {
				big++
			}
		}
		bigWant := 0
		for _, p := range want.Dump() {
			if p.Area() > 0.5e7 {
				bigWant++
			}
		}
		if d := big - bigWant; d < -1 || d > 1 {
			t.Fatalf("%d parts, library %d", big, bigWant)
		}
	})
}

func asGeom(g Region) geom.Geometry {
	var rings [][]float64
	for _, r := range g {
		var xy []float64
		for _, p := range append(append(Ring{}, r...), r[0]) {
			xy = append(xy, float64(p.X), float64(p.Y))
		}
		rings = append(rings, xy)
	}
	return geom.NewPolygonXY(rings...).AsGeometry()
}

// A U-shaped room cut across its legs falls into two runs.
//
//	+--+    +--+
//	|  |    |  |   <- strip
//	|  +----+  |
//	+----------+
func TestLegsAreTwoParts(t *testing.T) {
	u := Region{{P(0, 0), P(100, 0), P(100, 80), P(70, 80), P(70, 30), P(30, 30), P(30, 80), P(0, 80)}}
	parts := u.Strip(40, 60).Parts()
	if len(parts) != 2 || parts[0].Area2() != 2*30*20 || parts[1][0][0].X < 70 {
		t.Errorf("parts %v", parts)
	}
	if one := u.Strip(30, 60).Parts(); len(one) != 2 {
		t.Errorf("a strip that starts on the inner edge has %d parts", len(one))
	}
	if one := u.Strip(20, 60).Parts(); len(one) != 1 {
		t.Errorf("a strip over the inner edge has %d parts", len(one))
	}
	if s := u.Section(50, false); len(s) != 1 || s[0] != (Span{0, 30}) {
		t.Errorf("section %v", s)
	}
}

func TestHoleStaysWithItsPart(t *testing.T) {
	g := Region{Rect(P(0, 0), P(100, 40)), Rect(P(40, 10), P(50, 20)).Reverse()}
	parts := g.Strip(5, 35).Parts()
	if len(parts) != 1 || len(parts[0]) != 2 {
		t.Fatalf("parts %v", parts)
	}
	if s := g.Section(45, false); len(s) != 2 || s[0] != (Span{0, 10}) || s[1] != (Span{20, 40}) {
		t.Errorf("section %v", s)
	}
	if s := g.Section(40, true); len(s) != 1 {
		t.Errorf("left of the hole: %v", s)
	}
}

func TestWhere(t *testing.T) {
	r := Ring{P(0, 0), P(10, 0), P(10, 10), P(5, 3), P(0, 10)}
	for p, want := range map[Pt]int{{5, 1}: 1, {5, 3}: 0, {5, 5}: -1, {10, 4}: 0, {11, 0}: -1, {1, 8}: 1, {0, 0}: 0} {
		if got := r.Where(p); got != want {
			t.Errorf("%v: %d, want %d", p, got, want)
		}
	}
}
