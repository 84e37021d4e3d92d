package sheet

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// The tiles of areas that do not lie over each other add up to the areas, what lies in
// the laps taken off: each tile's part is counted in the window less half a lap.
func TestTilesMakeTheSheetAgain(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		num := rapid.Float64Range(0, 500)
		var tri []Pt
		for range 3 {
			tri = append(tri, Pt{num.Draw(t, "x"), num.Draw(t, "y")})
		}
		line := Polyline{Points: []Pt{{num.Draw(t, "x1"), num.Draw(t, "y1")}, {num.Draw(t, "x2"), num.Draw(t, "y2")}}, Pen: Pen{Width: 1, Ink: Black}}
		s := Sheet{W: 500, H: 500}
		s.Put(Polygon{Rings: [][]Pt{tri}, Fill: Light}, line)
		const lap = 0.0 // windows that do not lap share nothing
		var got, long float64
		for _, tile := range Tiles(s, 180, 130, lap) {
			for _, it := range tile.Items {
				switch it := it.(type) {
				case Polygon:
					got += area(it.Rings[0])
				case Polyline:
					long += length(it.Points)
				}
			}
		}
		if want := area(tri); math.Abs(got-want) > 1e-6*(1+want) {
			t.Fatalf("area %v of %v", got, want)
		}
		if want := length(line.Points); math.Abs(long-want) > 1e-6*(1+want) {
			t.Fatalf("line %v of %v", long, want)
		}
	})
}

// Every text stands on a tile, none farther out of its window than half the lap.
func TestTilesKeepEveryText(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := Sheet{W: 800, H: 600}
		n := rapid.IntRange(1, 8).Draw(t, "texts")
		for i := range n {
			s.Put(Text{Text: string(rune('a' + i)), Size: rapid.Float64Range(2, 60).Draw(t, "size"), Anchor: Middle,
				At: Pt{rapid.Float64Range(0, 800).Draw(t, "x"), rapid.Float64Range(0, 600).Draw(t, "y")}})
		}
		seen := map[string]bool{}
		for _, tile := range Tiles(s, 180, 130, 20) {
			for _, it := range tile.Items {
				x := it.(Text)
				seen[x.Text] = true
				for _, p := range x.Box() {
					if p.X < -10-1e-9 || p.Y < -10-1e-9 || p.X > 190+1e-9 || p.Y > 140+1e-9 {
						t.Fatalf("%q at %v leaves its page", x.Text, p)
					}
				}
			}
		}
		if len(seen) != n {
			t.Fatalf("%d of %d texts", len(seen), n)
		}
	})
}

// What runs into a window and out again comes as lines of its own, and an area's edge
// is not drawn along the window.
func TestTileEdges(t *testing.T) {
	s := Sheet{}
	s.Put(Polygon{Rings: [][]Pt{{{0, 0}, {300, 0}, {300, 50}, {0, 50}}}, Fill: Light, Pen: Pen{Width: 1, Ink: Black}})
	tiles := Tiles(s, 100, 100, 0)
	if len(tiles) != 3 {
		t.Fatalf("%d tiles", len(tiles))
	}
	var drawn float64
	for _, it := range tiles[1].Items {
		switch it := it.(type) {
		case Polyline:
			drawn += length(it.Points)
		case Polygon:
			if it.Pen.Width != 0 {
				t.Error("the part of an area has an edge along the window")
			}
		}
	}
	if math.Abs(drawn-200) > 1e-9 {
		t.Errorf("edge of %v mm in the middle, want 200: above and below", drawn)
	}
}

func TestMoved(t *testing.T) {
	got := Moved([]Item{Text{At: Pt{1, 2}, Size: 3}, Polyline{Points: []Pt{{1, 1}}}, Polygon{Rings: [][]Pt{{{2, 2}}}}}, Pt{10, 20}, 2)
	if x := got[0].(Text); x.At != (Pt{12, 24}) || x.Size != 6 {
		t.Error(x)
	}
	if got[1].(Polyline).Points[0] != (Pt{12, 22}) || got[2].(Polygon).Rings[0][0] != (Pt{14, 24}) {
		t.Error(got)
	}
}

func area(r []Pt) float64 {
	sum := 0.0
	for i, a := range r {
		b := r[(i+1)%len(r)]
		sum += a.X*b.Y - a.Y*b.X
	}
	return math.Abs(sum) / 2
}

func length(ps []Pt) float64 {
	sum := 0.0
	for i := 1; i < len(ps); i++ {
		d := ps[i].Sub(ps[i-1])
		sum += math.Hypot(d.X, d.Y)
	}
	return sum
}
