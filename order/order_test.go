package order

import (
	"context"
	"errors"
	"math"
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"strake/stock"
	"strake/tape"
)

func TestAnyWorkersSameAnswer(t *testing.T) {
	m := benchRoom(mixed, 0.05)
	for _, layer := range []Layer{Strict, Careful} {
		var first []Need
		for _, workers := range []int{1, 2, 3, 8} {
			ns, err := Simulate(context.Background(), m, layer, 500, 7, workers)
			if err != nil {
				t.Fatal(err)
			}
			if first == nil {
				first = ns
			} else if !reflect.DeepEqual(first, ns) {
				t.Errorf("%s: %d workers give another answer", layer, workers)
			}
		}
		other, _ := Simulate(context.Background(), m, layer, 500, 8, 2)
		if reflect.DeepEqual(first, other) {
			t.Errorf("%s: another seed gives the same lays", layer)
		}
	}
}

// What a lay took is what became of it, and no part is under nothing. A floor
// without culls and slips loses none to them.
func TestPartsOfTheNeed(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := Model{Lengths: FromMix(stock.Mix{Least: 12 * in, Most: 72 * in, Mean: tape.Length(rapid.IntRange(20, 60).Draw(t, "mean")) * in}), Kerf: in / 8,
			Shortest: tape.Length(rapid.IntRange(1, 12).Draw(t, "shortest")) * in, Joint: tape.Length(rapid.IntRange(0, 10).Draw(t, "joint")) * in,
			Lot: Lot{rapid.SampledFrom([]float64{0, 0.02, 0.1}).Draw(t, "culls"), LotVaries}, Salvaged: Salvaged, Spoiled: rapid.SampledFrom([]float64{0, 0.05}).Draw(t, "spoiled"), Hand: InHand}
		for i := range rapid.IntRange(1, 8).Draw(t, "runs") {
			from := tape.Length(rapid.IntRange(0, 40).Draw(t, "from")) * in
			r := Run{From: from, To: from + tape.Length(rapid.IntRange(1, 300).Draw(t, "long"))*in}
			if i > 0 {
				r.Beside = []int{i - 1}
			}
			m.Runs = append(m.Runs, r)
		}
		layer := rapid.SampledFrom([]Layer{Strict, Careful}).Draw(t, "layer")
		ns, err := Simulate(context.Background(), m, layer, 20, rapid.Uint64().Draw(t, "seed"), 2)
		if err != nil {
			t.Fatal(err)
		}
		for _, n := range ns {
			if n.Floor != m.Floor() || n.Taken != n.Floor+n.Cut+n.Culls+n.Mistakes || n.Cut < 0 || n.Culls < 0 || n.Mistakes < 0 {
				t.Fatalf("%+v of a floor of %d", n, m.Floor())
			}
			if m.Lot.Mean == 0 && n.Culls != 0 || m.Spoiled == 0 && n.Mistakes != 0 {
				t.Fatalf("nothing is culled or spoiled, but %+v", n)
			}
		}
	})
}

// One carton more is never worse, and what the risk allows is the least that it
// allows.
func TestChoices(t *testing.T) {
	ns := simulated(t, benchRoom(mixed, 0.05), Strict, 2000)
	carton := tape.Length(20 * 12 / 5.0 * float64(12*in)) // 20 sq ft of 5 in boards
	cs := Choices(ns, carton, 15, 40)
	for i := 1; i < len(cs); i++ {
		if cs[i].Short > cs[i-1].Short {
			t.Errorf("%d cartons run short more often than %d", cs[i].Cartons, cs[i-1].Cartons)
		}
	}
	if cs[0].Short != 1 || cs[len(cs)-1].Short > 0.002 {
		t.Errorf("from %g to %g", cs[0].Short, cs[len(cs)-1].Short)
	}
	got := Advise(cs, 0.01)
	for _, c := range cs {
		if (c.Short+c.Doubt <= 0.01) != (c.Cartons >= got) {
			t.Errorf("%d are advised, but %+v", got, c)
		}
	}
	if Advise(cs[:3], 0.01) != 0 {
		t.Error("none of too few does")
	}
	// 42 sq ft in cartons of 20 is three; 383 sq ft and ten per cent is 421: 22
	// cartons of 20. Common practice, no source.
	foot := tape.Length(144/5*in) + 4*in/5 // of 5 in boards, one square foot
	for _, c := range []struct {
		floor  tape.Length
		fewest int
		ten    int
	}{{42 * foot, 3, 3}, {383 * foot, 20, 22}, {40 * foot, 2, 3}} {
		if f, ten := Fewest(c.floor, 20*foot), TenPercent(c.floor, 20*foot); f != c.fewest || ten != c.ten {
			t.Errorf("%v: %d and %d", c, f, ten)
		}
	}
}

// The range stated with a chance holds that of a much longer run, about nine times
// in ten.
func TestDoubtHolds(t *testing.T) {
	m := benchRoom(mixed, 0.05)
	m.Runs = room(10, 200*in)
	has := tape.Length(float64(m.Floor()) * 1.12)
	if testing.Short() {
		m.Runs = m.Runs[:4]
		has = tape.Length(float64(m.Floor()) * 1.12)
	}
	truth := choice(simulated(t, m, Strict, 60_000), 1, has).Short
	held, tries := 0, 100
	for i := range tries {
		ns, err := Simulate(context.Background(), m, Strict, 400, uint64(1000+i), 2)
		if err != nil {
			t.Fatal(err)
		}
		if c := choice(ns, 1, has); math.Abs(c.Short-truth) <= c.Doubt {
			held++
		}
	}
	// 90 of 100, give or take three standard deviations of 3
	if held < 81 || held > 99 {
		t.Errorf("%d of %d ranges hold %.3f", held, tries, truth)
	}
}

// With all lots alike the curve is nearly a step; lots that differ spread it.
func TestLotsThatDiffer(t *testing.T) {
	spread := func(varies float64) float64 {
		m := benchRoom(mixed, 0.05)
		m.Lot.Varies = varies
		xs := over(simulated(t, m, Careful, 3000))
		return xs[len(xs)*95/100] - xs[len(xs)*5/100]
	}
	alike, differ := spread(0), spread(LotVaries)
	if alike > 6 || differ < 2*alike {
		t.Errorf("from 5 to 95 %%: %.2f points with lots alike, %.2f with lots that differ", alike, differ)
	}
}

// The share of culls has the mean and the spread that was asked for.
func TestShareOfCulls(t *testing.T) {
	for _, l := range []Lot{{0.02, 0.6}, {0.05, 0.6}, {0.15, 0.3}} {
		var sum, square float64
		const n = 4000
		for i := range n {
			x := l.Quantile((float64(i) + 0.5) / n)
			sum += x / n
			square += x * x / n
		}
		if cv := math.Sqrt(square-sum*sum) / sum; math.Abs(sum-l.Mean) > 1e-3*l.Mean+1e-5 || math.Abs(cv-l.Varies) > 0.01 {
			t.Errorf("%+v: mean %.4f, varies %.3f", l, sum, cv)
		}
	}
}

func TestCancelled(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	stop()
	ns, err := Simulate(ctx, benchRoom(mixed, 0), Strict, 100_000, 1, 2)
	if !errors.Is(err, context.Canceled) || len(ns) >= 100_000 {
		t.Errorf("%d lays, %v", len(ns), err)
	}
	for _, n := range ns {
		if n.Floor == 0 {
			t.Fatal("a lay that was not done is among them")
		}
	}
}

func TestSpreadsOfLengths(t *testing.T) {
	l := Tallied([]stock.Class{{Length: 60 * in, Count: 1}, {Length: 20 * in, Count: 3}})
	if l.Mean() != 30*in || l.Longest() != 60*in {
		t.Errorf("mean %s, longest %s", l.Mean(), l.Longest())
	}
	if Tallied(nil) != nil {
		t.Error("no boards have a spread")
	}
	if m := FromMix(stock.Mix{Least: 12 * in, Most: 84 * in, Mean: 43 * in}).Mean(); (m - 43*in).Abs() > in/32 {
		t.Errorf("the mean of a mix of 43 in is %s", m)
	}
	if f := FromMix(stock.Mix{Least: 40 * in, Most: 40 * in, Mean: 40 * in}); f.Mean() != 40*in {
		t.Error("boards of one length")
	}
	// mean 42.3 in and standard deviation 16.2 in: figures of the earlier program
	if m := mixed.Mean().Inches(); math.Abs(m-42.3) > 0.1 {
		t.Errorf("mean %.2f in", m)
	}
	if sd := math.Sqrt(mixed.square(mixed.Longest())/float64(in)/float64(in) - 42.3*42.3); math.Abs(sd-16.2) > 0.4 {
		t.Errorf("standard deviation %.2f in", sd)
	}
}

// A planned floor without culls and slips needs what its lays lost; with culls its
// need lies under the careful layer's.
func TestPlannedNeeds(t *testing.T) {
	m := benchRoom(mixed, 0)
	m.Spoiled = 0
	ns, err := PlannedNeeds(context.Background(), m, []float64{0, 0.01}, 4, 1, 2)
	if err != nil {
		t.Fatal(err)
	}
	for i, n := range ns {
		if want := tape.Length(float64(i%2) * 0.01 * float64(m.Floor())); n.Cut != want || n.Taken != n.Floor+want {
			t.Errorf("%d: %+v", i, n)
		}
	}
	m = benchRoom(mixed, 0.05)
	ns, _ = PlannedNeeds(context.Background(), m, []float64{0.001}, 4000, 1, 2)
	planned, careful := over(ns), over(simulated(t, m, Careful, 4000))
	for _, p := range []int{50, 95, 99} {
		if planned[p*40] >= careful[p*40] {
			t.Errorf("%d of 100: planned %.2f, careful %.2f", p, planned[p*40], careful[p*40])
		}
	}
	// the earlier program, for this: P95 8.0, P99 10.8 %
	if p := planned[95*40]; math.Abs(p-8.0) > 1 {
		t.Errorf("P95 %.2f", p)
	}
}

// Measured boards pull the spread towards themselves: none leaves it, as many as are
// believed pull it half way, very many all the way.
func TestRefinedSpread(t *testing.T) {
	l := Fixed(30 * in)
	if l.Refined(nil) != l {
		t.Error("nothing was measured")
	}
	for n, want := range map[int]tape.Length{Believed: 40 * in, 3 * Believed: 45 * in, 1000 * Believed: 50 * in} {
		got := l.Refined([]stock.Class{{Length: 50 * in, Count: n}})
		if (got.Mean()-want).Abs() > in/10 || got.Longest() != 50*in {
			t.Errorf("%d boards: mean %s, want %s", n, got.Mean(), want)
		}
	}
	r := mixed.Refined([]stock.Class{{Length: 20 * in, Count: 10}, {Length: 70 * in, Count: 15}})
	if want := (mixed.Mean() + (20*10+70*15)*in/25) / 2; (r.Mean() - want).Abs() > in/10 {
		t.Errorf("mean %s, want %s", r.Mean(), want)
	}
	for i := 1; i < parts; i++ {
		if r.at[i] < r.at[i-1] {
			t.Fatal("the spread does not rise")
		}
	}
}

// Counting culls moves a lot to what was counted, and makes it surer; by numbers: a
// mean of 5 % that varies by 60 % is a Beta curve of 2.589 and 49.188, which 12 culls
// among 100 boards make one of 14.589 and 137.188, with a mean of 9.61 %.
func TestLotSeen(t *testing.T) {
	l := Lot{0.05, 0.6}
	if l.Seen(0, 0) != l || (Lot{0.05, 0}).Seen(100, 12) != (Lot{0.05, 0}) {
		t.Error("nothing was seen, or nothing can be learnt")
	}
	if got := l.Seen(100, 12); math.Abs(got.Mean-0.09612) > 1e-4 || got.Varies >= l.Varies {
		t.Errorf("%+v", got)
	}
	if got := l.Seen(1_000_000, 20_000); math.Abs(got.Mean-0.02) > 1e-4 || got.Varies > 0.01 {
		t.Errorf("%+v", got)
	}
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 500).Draw(t, "boards")
		c := rapid.IntRange(0, n-1).Draw(t, "culls")
		if l.Seen(n, c+1).Mean <= l.Seen(n, c).Mean {
			t.Fatal("one cull more makes the lot look better")
		}
	})
}

// The spread of a grade is the one its rule is taken for.
func TestSpreadOfAGrade(t *testing.T) {
	g, _ := stock.FindGrade("maple first")
	if m := FromMix(stock.Mix{Grade: g.Name}).Mean(); (m - g.Mean).Abs() > in/16 {
		t.Errorf("mean %s, the grade has %s", m, g.Mean)
	}
}

// Whoever is told of blocks given out is told more each time, and all at the end.
func TestEachTold(t *testing.T) {
	for _, n := range []int{1, 63, 64, 65, 1000} {
		last := 0
		out, err := EachTold(context.Background(), n, 3, func(given int) {
			if given <= last || given > n {
				t.Errorf("%d after %d of %d", given, last, n)
			}
			last = given
		}, func(_, i int) int { return i })
		if err != nil || len(out) != n || last != n {
			t.Errorf("%d: %d made, %d told, %v", n, len(out), last, err)
		}
	}
}
