package quote_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"strake/goods"
	"strake/quote"
	"strake/schedule"
)

func exactly(x float64) goods.Money { return goods.Exactly(x) }

// step is a step of so many hours.
func step(what string, hours float64) schedule.Step {
	return schedule.Step{What: what, Parts: []schedule.Part{{Hours: hours}}}
}

func ask() quote.Ask {
	return quote.Ask{
		Terms: quote.Terms{Rate: exactly(50), Markup: 0.2, MarkupTold: true, Off: 0.1, OffTold: true, Also: []quote.Also{{What: "travel", Price: goods.Money{Told: true, Low: 20, Likely: 30, High: 40}}}},
		Steps: []schedule.Step{step("lay", 10), step("base", 2.5), {What: "flatten", Out: "not told", Untold: true}},
		Lines: []goods.Line{
			{Group: goods.Boards, Item: goods.Carton, What: "boards", Count: 8, Unit: "carton", Each: exactly(100)},
			{Group: goods.Under, Item: goods.SheetItem, What: "felt", Count: 2, Unit: "roll", Each: goods.Money{Told: true, Low: 25, Likely: 30, High: 35}},
			{Group: goods.Mould, What: "base as it is", Count: 7, Unit: "piece"},
			{Group: goods.Tools, What: "saw", Count: 1, Unit: "piece", Each: exactly(300)},
			{Group: goods.Tools, What: "floor nailer", Count: 2, Unit: "day", Each: exactly(45)},
			{Group: goods.Gear, What: "glasses", Count: 1, Item: "x", Each: exactly(10)},
			{Group: goods.Besides, What: "running short", Count: 1, Each: exactly(70)},
		},
		Tax: 0.08, Taxed: true,
	}
}

func near(t *testing.T, what string, got goods.Money, low, likely, high float64) {
	t.Helper()
	for i, d := range []float64{got.Low - low, got.Likely - likely, got.High - high} {
		if math.Abs(d) > 1e-9 {
			t.Errorf("%s, %s: off by %g of %g, %g, %g", what, []string{"low", "likely", "high"}[i], d, low, likely, high)
		}
	}
}

// By hand: 12.5 h at 50 are 625, a tenth less or more. Boards 800, felt 50 to 70, the
// nailer 90: 940, 950, 960, and a fifth on them. What is owned, worn, or only may come
// is not charged for.
func TestByHand(t *testing.T) {
	s := quote.Of(ask())
	if len(s.Open) > 0 {
		t.Fatalf("open: %v", s.Open)
	}
	near(t, "labour", s.Labour, 562.5, 625, 687.5)
	near(t, "materials", s.Cost, 940, 950, 960)
	near(t, "markup", s.Markup, 188, 190, 192)
	near(t, "besides", s.Also, 20, 30, 40)
	near(t, "tax", s.Tax, 1128*0.08, 1140*0.08, 1152*0.08)
	near(t, "all", s.All, 562.5+1128*1.08+20, 625+1140*1.08+30, 687.5+1152*1.08+40)
	if s.Hours != 12.5 || len(s.Steps) != 2 || len(s.Goods) != 3 {
		t.Errorf("%g h, steps %v, goods %v", s.Hours, s.Steps, s.Goods)
	}
}

func TestTaxOnAll(t *testing.T) {
	a := ask()
	a.Terms.TaxOn = quote.OnAll
	near(t, "all", quote.Of(a).All, (562.5+1128+20)*1.08, (625+1140+30)*1.08, (687.5+1152+40)*1.08)
}

// Two people: an hour of the schedule is one of both, the second at a rate of its own
// where it has one.
func TestTwoPeople(t *testing.T) {
	a := ask()
	a.Crew = schedule.Helped
	s := quote.Of(a)
	near(t, "labour", s.Labour, 1125, 1250, 1375)
	if s.Hours != 25 || s.Hands != 2 {
		t.Errorf("%g h of %d", s.Hours, s.Hands)
	}
	a.Terms.Helper = exactly(30)
	near(t, "labour", quote.Of(a).Labour, 900, 1000, 1100)
}

// What the owner buys is listed, and costs nothing here, priced or not.
func TestOwnerBuys(t *testing.T) {
	a := ask()
	a.Terms.Owner = []goods.Group{goods.Boards}
	a.Lines[0].Each = goods.Money{}
	s := quote.Of(a)
	near(t, "materials", s.Cost, 140, 150, 160)
	if len(s.Owner) != 1 || s.Owner[0].What != "boards" || len(s.Open) > 0 {
		t.Errorf("%+v, open %v", s.Owner, s.Open)
	}
}

// Whatever is not told is open, by its name, and makes no figure of its own.
func TestOpen(t *testing.T) {
	for what, c := range map[string]struct {
		without func(*quote.Ask)
		open    string
		money   func(quote.Sum) goods.Money
	}{
		"rate":     {func(a *quote.Ask) { a.Terms.Rate = goods.Money{} }, "the rate of an hour", func(s quote.Sum) goods.Money { return s.Labour }},
		"markup":   {func(a *quote.Ask) { a.Terms.MarkupTold = false }, "the markup on materials", func(s quote.Sum) goods.Money { return s.Markup }},
		"tax":      {func(a *quote.Ask) { a.Taxed = false }, "tax", func(s quote.Sum) goods.Money { return s.Tax }},
		"a price":  {func(a *quote.Ask) { a.Lines[1].Each = goods.Money{} }, "the price of felt", nil},
		"boards":   {func(a *quote.Ask) { a.Lines = a.Lines[1:] }, "how many cartons of boards, and their price", nil},
		"a rental": {func(a *quote.Ask) { a.Lines[4].Each = goods.Money{} }, "the price of floor nailer", nil},
		"a count":  {func(a *quote.Ask) { a.Lines[2].Count, a.Lines[2].Uncounted = 0, true }, "how many base as it is", nil},
		"made":     {func(a *quote.Ask) { a.Lines[2].Made = true }, "the price of base as it is", nil},
	} {
		a := ask()
		c.without(&a)
		s := quote.Of(a)
		if !slices.Contains(s.Open, c.open) || len(s.Open) != 1 {
			t.Errorf("without %s: open %v", what, s.Open)
		}
		if c.money != nil && c.money(s).Told {
			t.Errorf("without %s: %+v", what, c.money(s))
		}
	}
}

// Low is never over likely, nor likely over high; a total is the sum of its parts.
func TestSumsHold(t *testing.T) {
	money := func(t *rapid.T) goods.Money {
		a, b := rapid.Float64Range(0, 500).Draw(t, "low"), rapid.Float64Range(0, 500).Draw(t, "more")
		return goods.Money{Told: rapid.Bool().Draw(t, "told"), Low: a, Likely: a + b/2, High: a + b}
	}
	rapid.Check(t, func(t *rapid.T) {
		a := quote.Ask{Taxed: rapid.Bool().Draw(t, "taxed"), Tax: rapid.Float64Range(0, 0.3).Draw(t, "tax"), Crew: rapid.SampledFrom([]schedule.Crew{"", schedule.Helped, schedule.Experienced}).Draw(t, "crew")}
		a.Terms = quote.Terms{Rate: money(t), Helper: money(t), Markup: rapid.Float64Range(0, 1).Draw(t, "markup"), MarkupTold: rapid.Bool().Draw(t, "markup told"), TaxOn: rapid.SampledFrom([]quote.TaxOn{"", quote.OnAll}).Draw(t, "on")}
		for range rapid.IntRange(0, 4).Draw(t, "steps") {
			a.Steps = append(a.Steps, step("s", rapid.Float64Range(0, 20).Draw(t, "hours")))
		}
		for range rapid.IntRange(0, 4).Draw(t, "lines") {
			a.Lines = append(a.Lines, goods.Line{Group: rapid.SampledFrom(goods.Groups).Draw(t, "group"), Item: "x", What: "w", Count: rapid.IntRange(0, 5).Draw(t, "count"), Each: zero(money(t))})
		}
		a.Terms.Rate, a.Terms.Helper = zero(a.Terms.Rate), zero(a.Terms.Helper)
		s := quote.Of(a)
		for _, m := range []goods.Money{s.Labour, s.Cost, s.Markup, s.Tax, s.All} {
			if m.Low > m.Likely+1e-9 || m.Likely > m.High+1e-9 || m.Low < 0 || !m.Told && m.High != 0 {
				t.Fatalf("%+v", m)
			}
		}
		if want := s.Labour.Likely + s.Cost.Likely + s.Markup.Likely + s.Also.Likely + s.Tax.Likely; math.Abs(s.All.Likely-want) > 1e-6 {
			t.Fatalf("%g in all, its parts come to %g", s.All.Likely, want)
		}
		if !a.Taxed && !slices.Contains(s.Open, "tax") || !a.Terms.Rate.Told && !strings.Contains(strings.Join(s.Open, ";"), "rate") {
			t.Fatalf("open: %v", s.Open)
		}
	})
}

// zero is money that is nothing where it is not told.
func zero(m goods.Money) goods.Money {
	if !m.Told {
		return goods.Money{}
	}
	return m
}
