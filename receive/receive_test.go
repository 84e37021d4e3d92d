package receive

import (
	"math"
	"strings"
	"testing"

	"strake/ready"
)

// opened is n cartons of 22 boards with the culls shared out over them.
func opened(n, culls int) Delivery {
	var d Delivery
	for range n {
		d.Cartons = append(d.Cartons, Carton{Lot: "0417", Boards: 22})
	}
	for i := range culls {
		d.Cartons[i%n].Culls++
	}
	return d
}

func one(t *testing.T, vs []ready.Verdict, rule string) ready.Verdict {
	t.Helper()
	for _, v := range vs {
		if v.Rule == rule {
			return v
		}
	}
	t.Fatalf("no verdict on %s: %+v", rule, vs)
	return ready.Verdict{}
}

// 10 % or 100 sq ft, whichever is less (a maker's instructions); 5 % of culls.
func TestStopOpening(t *testing.T) {
	for _, c := range []struct {
		name    string
		opened  int
		culls   int
		order   Order
		say     ready.Say
		do      string
		measure string
	}{
		{"few culls, little open", 2, 2, Order{Cartons: 50, SqFt: 20, Imperial: true}, ready.Go, "visibly bad", "40 sq ft opened, of 100"},
		{"a small order may open less", 2, 2, Order{Cartons: 20, SqFt: 20, Imperial: true}, ready.Look, "decide first", "40 sq ft opened, of 40"},
		{"a large order no more than 100", 5, 5, Order{Cartons: 80, SqFt: 20, Imperial: true}, ready.Look, "decide first", "100 sq ft opened, of 100"},
		{"many culls", 5, 12, Order{Cartons: 50, SqFt: 20, Imperial: true}, ready.Fix, "It is not chance", "12 of 110 boards, 10.9 %"},
		{"two culls in one carton", 1, 2, Order{Cartons: 50, SqFt: 20, Imperial: true}, ready.Fix, "may mislead", "2 of 22 boards, 9.1 %"},
		{"too much open", 6, 20, Order{Cartons: 50, SqFt: 20, Imperial: true}, ready.Fix, "say so", "120 sq ft opened, of 100"},
		{"area not known", 2, 2, Order{}, ready.Go, "before 10 % or 100 sq ft", "2 of 44 boards, 4.5 %"},
	} {
		v := one(t, Verdicts(opened(c.opened, c.culls), c.order), "culls")
		if v.Say != c.say || !strings.Contains(v.Do, c.do) || !strings.Contains(v.Measured, c.measure) || v.Holds != (c.say == ready.Fix) {
			t.Errorf("%s: %+v", c.name, v)
		}
	}
}

func TestMetricArea(t *testing.T) {
	v := one(t, Verdicts(opened(5, 5), Order{Cartons: 80, SqFt: 20}), "culls")
	if !strings.Contains(v.Measured, "9.3 m2 opened, of 9.3 that") {
		t.Error(v.Measured)
	}
}

// The lower bound against its definition: at that share, so many culls or more
// turn up once in ten.
func TestAtLeast(t *testing.T) {
	for _, c := range [][2]int{{1, 20}, {2, 22}, {12, 110}, {20, 132}} {
		culls, boards := c[0], c[1]
		p := atLeast(culls, boards)
		var tail float64
		for k := culls; k <= boards; k++ {
			a, _ := math.Lgamma(float64(boards + 1))
			b, _ := math.Lgamma(float64(k + 1))
			d, _ := math.Lgamma(float64(boards - k + 1))
			tail += math.Exp(a - b - d + float64(k)*math.Log(p) + float64(boards-k)*math.Log(1-p))
		}
		if math.Abs(tail-0.1) > 1e-9 {
			t.Errorf("%d of %d: %.6f, tail %.6f", culls, boards, p, tail)
		}
	}
	if atLeast(0, 20) != 0 {
		t.Error("no culls, no least share")
	}
}

func TestLotsAndWidths(t *testing.T) {
	d := opened(3, 0)
	if v := one(t, Verdicts(d, Order{}), "lots"); v.Say != ready.Go {
		t.Errorf("%+v", v)
	}
	d.Cartons[2].Lot = "0418"
	if v := one(t, Verdicts(d, Order{}), "lots"); v.Say != ready.Look || v.Measured != "0417 (2), 0418 (1)" {
		t.Errorf("%+v", v)
	}
	for _, c := range []struct {
		tens []float64
		say  ready.Say
	}{{[]float64{1277}, ready.Look}, {[]float64{1277, 1279}, ready.Go}, {[]float64{1277, 1279.1}, ready.Fix}} {
		d := Delivery{Tens: c.tens}
		if v := one(t, Verdicts(d, Order{}), "width over ten boards"); v.Say != c.say || !strings.Contains(v.Do, "ten_boards") {
			t.Errorf("%v: %+v", c.tens, v)
		}
	}
	for ten, say := range map[float64]ready.Say{0: ready.Go, 1278: ready.Go, 1279: ready.Go, 1279.1: ready.Fix, 1276.9: ready.Fix, 1290: ready.Fix} {
		if v := one(t, Verdicts(Delivery{Tens: []float64{1277, 1279}}, Order{Ten: ten}), "width over ten boards"); v.Say != say || (say == ready.Fix) != strings.Contains(v.Do, "plan again") {
			t.Errorf("planned with %g: %+v", ten, v)
		}
	}
	if vs := Verdicts(Delivery{}, Order{Cartons: 5, SqFt: 20, Imperial: true}); vs != nil {
		t.Errorf("nothing was opened: %+v", vs)
	}
}
