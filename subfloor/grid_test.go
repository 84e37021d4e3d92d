package subfloor

import (
	"math"
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"strake/tape"
)

// drawGrid makes a grid of up to 7 by 6 marks, heights in 0.1 mm, some not read.
func drawGrid(t *rapid.T) Grid {
	g := Grid{Step: 300 * mm, Cols: rapid.IntRange(1, 7).Draw(t, "cols"), Rows: rapid.IntRange(1, 6).Draw(t, "rows")}
	for range g.Cols * g.Rows {
		g.Height = append(g.Height, tape.Length(rapid.IntRange(-80, 80).Draw(t, "height"))*mm/10)
		g.Hole = append(g.Hole, rapid.IntRange(0, 9).Draw(t, "hole") == 0)
	}
	return g
}

// brute is the largest gap by laying the straightedge everywhere: for each two
// marks with marks evenly between them, all of them read, it is pushed up against
// every two marks of that stretch, and what it shows at each mark under it is the
// highest of those lines there. Fractions are exact; nothing is shared with the
// code it tests.
func brute(g Grid, s Side, longest tape.Length) tape.Length {
	best := new(big.Rat)
	for a := range g.Height {
		for b := range g.Height {
			ax, ay, bx, by := a%g.Cols, a/g.Cols, b%g.Cols, b/g.Cols
			n := int(new(big.Int).GCD(nil, nil, big.NewInt(int64(abs(bx-ax))), big.NewInt(int64(abs(by-ay)))).Int64())
			if n < 2 {
				continue
			}
			step := tape.Length(math.Round(float64(g.Step) * math.Hypot(float64((bx-ax)/n), float64((by-ay)/n))))
			if tape.Length(n)*step > longest {
				continue
			}
			var h []*big.Rat
			for k := 0; k <= n; k++ {
				i := (ay+(by-ay)/n*k)*g.Cols + ax + (bx-ax)/n*k
				if g.Hole[i] {
					break
				}
				h = append(h, big.NewRat(int64(g.Height[i])*int64(s), 1))
			}
			if len(h) <= n {
				continue
			}
			for k := range h {
				for i := 0; i < k; i++ {
					for j := k + 1; j <= n; j++ {
						at := new(big.Rat).Mul(new(big.Rat).Sub(h[j], h[i]), big.NewRat(int64(k-i), int64(j-i)))
						at.Add(at, h[i]).Sub(at, h[k])
						if at.Cmp(best) > 0 {
							best = at
						}
					}
				}
			}
		}
	}
	f, _ := best.Float64()
	return tape.Length(math.Floor(f + 0.5))
}

func abs(n int) int {
	if n < 0 {
		return -n
	}
	return n
}

func TestGapIsBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := drawGrid(t)
		longest := tape.Length(rapid.IntRange(500, 3000).Draw(t, "longest")) * mm
		for _, s := range []Side{Dip, Hump} {
			if got, want := g.Gap(s, longest).Gap, brute(g, s, longest); (got - want).Abs() > 1 {
				t.Fatalf("side %d, %v long: %v, by brute force %v", s, longest, got, want)
			}
		}
	})
}

// A floor that is tilted, raised, turned by quarter turns or seen in a mirror is
// as flat as before, to the tick; turned over, its dips are humps.
func TestFlatnessStays(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := drawGrid(t)
		tilted, quarter := g, Grid{Step: g.Step, Cols: g.Rows, Rows: g.Cols}
		up, x, y := rapid.Int64Range(-9, 9).Draw(t, "up"), rapid.Int64Range(-99999, 99999).Draw(t, "x"), rapid.Int64Range(-99999, 99999).Draw(t, "y")
		tilted.Height = nil
		over := g
		over.Height = nil
		for i, h := range g.Height {
			tilted.Height = append(tilted.Height, h+tape.Length(up*int64(mm)+x*int64(i%g.Cols)+y*int64(i/g.Cols)))
			over.Height = append(over.Height, -h)
		}
		for c := range g.Cols {
			for r := g.Rows - 1; r >= 0; r-- {
				quarter.Height, quarter.Hole = append(quarter.Height, g.Height[r*g.Cols+c]), append(quarter.Hole, g.Hole[r*g.Cols+c])
			}
		}
		for _, long := range []tape.Length{900 * mm, 1500 * mm, 3000 * mm} {
			for _, s := range []Side{Dip, Hump} {
				want := g.Gap(s, long).Gap
				if a, b, c := tilted.Gap(s, long).Gap, quarter.Gap(s, long).Gap, over.Gap(-s, long).Gap; a != want || b != want || c != want {
					t.Fatalf("%v; tilted %v, turned %v, upside down %v", want, a, b, c)
				}
			}
		}
	})
}

// What is said to be over a rule is what brute force finds there, and a floor
// made flat is flat by brute force, with nothing taken off below what may be.
func TestFlatten(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := drawGrid(t)
		rule := rapid.SampledFrom([]Rule{USWood, USStrict, BS(1), BS(3), DIN(3), DIN(4)}).Draw(t, "rule")
		most := tape.Length(rapid.IntRange(0, 6).Draw(t, "most")) * mm
		if !rule.Apart {
			bad := false
			for _, a := range rule.At {
				bad = bad || max(brute(g, Dip, a.Length), brute(g, Hump, a.Length)) > a.Gap+1
			}
			if over := g.Over(rule); bad && len(over) == 0 {
				t.Fatal("a place that brute force finds is not told")
			}
		}
		w := g.Flatten(rule, most)
		if !w.Flat {
			t.Fatal("not made flat")
		}
		after := g
		after.Height = w.To
		for _, o := range after.Over(rule) {
			if o.By() > finest {
				t.Fatalf("over by %v after all", o.By())
			}
		}
		if !rule.Apart {
			for _, a := range rule.At {
				if b := max(brute(after, Dip, a.Length), brute(after, Hump, a.Length)); b > a.Gap+finest+1 {
					t.Fatalf("by brute force %v under %v after all", b, a.Length)
				}
			}
		}
		var up, off float64
		for i, to := range w.To {
			if to < g.Height[i]-most {
				t.Fatalf("%v taken off, %v may be", g.Height[i]-to, most)
			}
			d := (to - g.Height[i]).Millimetres() * 0.3 * 0.3 / 1000
			up, off = up+max(0, d), off+max(0, -d)
		}
		if math.Abs(up-w.Up) > 1e-9 || math.Abs(off-w.Off) > 1e-9 {
			t.Fatalf("volumes %g up, %g off; told %g and %g", up, off, w.Up, w.Off)
		}
		if len(g.Over(rule)) == 0 && w.Up+w.Off != 0 {
			t.Fatal("work on a floor that is flat")
		}
	})
}

// A single hump is sanded and a single dip filled, and nothing else is touched.
func TestOneHumpOneDip(t *testing.T) {
	for s, want := range map[tape.Length]string{1: "hump", -1: "dip"} {
		g := Grid{Step: tape.Foot, Cols: 7, Rows: 1, Height: make([]tape.Length, 7)}
		g.Height[3] = s * tape.Inch
		w := g.Flatten(USWood, tape.Inch)
		for i := range g.Height {
			d := w.Change(g, Mark{i, 0})
			left := (w.To[3]).Abs()
			if i != 3 && d != 0 || i == 3 && (left > 3*tape.Inch/16+finest || left < 3*tape.Inch/16-finest) {
				t.Errorf("%s: mark %d is changed by %v", want, i, d)
			}
		}
		if s == 1 && (w.OffAt != 1 || w.UpAt != 0) || s == -1 && (w.OffAt != 0 || w.UpAt != 1) {
			t.Errorf("%s: %d off, %d up", want, w.OffAt, w.UpAt)
		}
	}
}

// Heights in inches at 0 to 20 ft; made for this test (computed, no published
// values): FF 56.985 from 19 changes of slope, FL 104.377 from 11 differences
// over 10 ft, constants of ASTM E1155 from memory; 0.065 in under 6 ft (stations
// 8 to 14) and 0.086 in under 10 ft (5 to 15).
func TestFNumbers(t *testing.T) {
	heights := []float64{0, .02, .05, .04, .06, .10, .09, .07, .08, .05, .04, .02, .03, .06, .09, .11, .10, .08, .09, .12, .13}
	g := Grid{Step: tape.Foot, Cols: len(heights), Rows: 1}
	for _, h := range heights {
		g.Height = append(g.Height, tape.Length(math.Round(h*100))*(tape.Inch/100))
	}
	ff, fl, ok := g.FNumbers()
	if !ok || math.Abs(ff-56.985) > 0.0005 || math.Abs(fl-104.377) > 0.0005 {
		t.Errorf("FF %.4f, FL %.4f", ff, fl)
	}
	six, ten := g.Gap(Dip, 6*tape.Foot), g.Gap(Dip, 10*tape.Foot)
	if math.Abs(six.Gap.Inches()-0.065) > 0.0005 || six.From.Col != 8 || six.To.Col != 14 {
		t.Errorf("6 ft: %.4f in from %d to %d", six.Gap.Inches(), six.From.Col, six.To.Col)
	}
	if math.Abs(ten.Gap.Inches()-0.086) > 0.0005 || ten.From.Col != 5 || ten.To.Col != 15 {
		t.Errorf("10 ft: %.4f in from %d to %d", ten.Gap.Inches(), ten.From.Col, ten.To.Col)
	}
	for _, o := range g.Over(USStrict) {
		if o.Side == Dip {
			t.Errorf("a dip of %v does not pass", o.Gap)
		}
	}
	g.Step = 400 * mm
	if _, _, ok := g.FNumbers(); ok {
		t.Error("F-numbers from stations that are not 12 in apart")
	}
	if ff, fl := FNumbers([][]tape.Length{g.Height[:3]}); ff != 0 || fl != 0 {
		t.Error("F-numbers from one change of slope")
	}
}

// A hole hides what lies on it, and no straightedge is laid over it.
func TestHole(t *testing.T) {
	g := Grid{Step: tape.Foot, Cols: 7, Rows: 1, Height: make([]tape.Length, 7), Hole: make([]bool, 7)}
	g.Height[2] = -tape.Inch
	if len(g.Over(USWood)) == 0 {
		t.Fatal("a dip of an inch passes")
	}
	g.Hole[3] = true
	if g.Gap(Dip, 10*tape.Foot).Gap != 0 || len(g.Holes()) != 1 || g.Holes()[0] != (Mark{3, 0}) {
		t.Error("a straightedge was laid over a hole")
	}
}

// By a rule that goes by the distance of two points, only two that carry a
// straightedge count: those with no mark between them on its other side. Each pair
// of marks in a row is looked at mark by mark.
func TestApartIsBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := drawGrid(t)
		g.Rows, g.Cols = 1, g.Rows*g.Cols
		rule := DIN(rapid.IntRange(1, 4).Draw(t, "row"))
		var want tape.Length
		for _, s := range []Side{Dip, Hump} {
			for i := range g.Cols {
				for j := i + 2; j < g.Cols; j++ {
					limit, _ := rule.Between(tape.Length(j-i) * g.Step)
					carried := true
					var most float64
					for k := i; k <= j; k++ {
						below := float64(s) * (float64(g.Height[i]) + float64(g.Height[j]-g.Height[i])*float64(k-i)/float64(j-i) - float64(g.Height[k]))
						carried = carried && !g.Hole[k] && below > -0.001
						most = math.Max(most, below)
					}
					if carried {
						want = max(want, tape.Length(math.Round(most))-limit)
					}
				}
			}
		}
		var got tape.Length
		for _, o := range g.Over(rule) {
			got = max(got, o.By())
		}
		if (got - want).Abs() > 1 {
			t.Fatalf("over by %v, by brute force %v", got, want)
		}
	})
}
