package moisture

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"gonum.org/v1/gonum/optimize"

	"strake/ready"
	"strake/tape"
)

func degF(x float64) Temperature { return Temperature{x, "F"} }
func degC(x float64) Temperature { return Temperature{x, "C"} }

// find is the verdict of a rule at a place; it fails the test where there is not
// exactly one.
func find(t *testing.T, vs []ready.Verdict, rule, where string) ready.Verdict {
	t.Helper()
	var found []ready.Verdict
	for _, v := range vs {
		if v.Rule == rule && (where == "" || v.Where == where) {
			found = append(found, v)
		}
	}
	if len(found) != 1 {
		t.Fatalf("%d verdicts “%s” at “%s” in %+v", len(found), rule, where, vs)
	}
	return found[0]
}

func none(t *testing.T, vs []ready.Verdict, rule string) {
	t.Helper()
	for _, v := range vs {
		if v.Rule == rule {
			t.Errorf("not wanted: %+v", v)
		}
	}
}

var plank = Floor{Species: "red oak", Faces: []tape.Length{5 * tape.Inch}, SqFt: 200, Across: 15 * tape.Foot, Imperial: true}

func strip() Floor {
	f := plank
	f.Faces = []tape.Length{9 * tape.Inch / 4}
	return f
}

// same is n readings alike.
func same(n int, x float64) []float64 {
	out := make([]float64, n)
	for i := range out {
		out[i] = x
	}
	return out
}

var year = Climate{Winter: Air{degF(68), 30}, Summer: Air{degF(78), 55}}

// The example of the package: the season of a heated house, and the gaps that
// boards laid at its middle open by winter. Our arithmetic on the Wood
// Handbook's formulas.
func TestSeason(t *testing.T) {
	s, ok := year.Season()
	if !ok || math.Abs(s.Low-6.2) > 0.05 || math.Abs(s.High-9.9) > 0.06 || math.Abs(s.Aim-(s.Low+s.High)/2) > 1e-12 {
		t.Fatalf("%+v", s)
	}
	vs := Verdicts(Job{Climate: year}, plank)
	v := find(t, vs, "movement of a board", "")
	if !strings.Contains(v.Measured, "0.035 in between boards in winter") {
		t.Error(v.Measured)
	}
	if !strings.Contains(v.Measured, "eq. 13-2") || !strings.Contains(v.Measured, "oven-dry shrinkage") {
		t.Error("the formulas are not named: " + v.Measured)
	}
	if v := find(t, vs, "movement of the whole floor", ""); v.Held() || !strings.Contains(v.Do, "Shown, not required") {
		t.Errorf("%+v", v)
	}
}

func TestSuspectAir(t *testing.T) {
	for _, c := range []struct {
		air  Air
		says string
	}{
		{Air{degF(70), 140}, "No air has that humidity"},
		{Air{degF(70), -3}, "No air has that humidity"},
		{Air{degF(70), 0.45}, "write 45"},
		{Air{degC(70), 45}, "“70 F”"},
		{Air{degF(21), 45}, "“21 C”"},
		{Air{degF(70), 99.5}, "Water would run"},
	} {
		vs := Verdicts(Job{Climate: Climate{Now: c.air, Winter: year.Winter, Summer: year.Summer}}, plank)
		v := find(t, vs, "suspect value", "air now")
		if v.Say != ready.Fix || !strings.Contains(v.Do, c.says) {
			t.Errorf("%v: %+v", c.air, v)
		}
		none(t, vs, "where the air leads")
	}
	none(t, Verdicts(Job{Climate: Climate{Now: Air{degC(21), 45}}}, plank), "suspect value")
}

// A metric job is told °C, mm and m2.
func TestMetric(t *testing.T) {
	f := plank
	f.Imperial = false
	vs := Verdicts(Job{Climate: Climate{Winter: Air{degC(20), 30}, Summer: Air{degC(25.5), 50}}, Subfloor: Sample{Reads: same(10, 9)}}, f)
	for rule, want := range map[string]string{"number of readings": "for 18.6 m2", "movement of the whole floor": "were it free"} {
		if v := find(t, vs, rule, ""); !strings.Contains(v.Limit+v.Measured, want) || strings.Contains(v.Measured, " in ") && !strings.Contains(v.Measured, " mm") {
			t.Errorf("%+v", v)
		}
	}
	if v := find(t, vs, "air in service", "winter air"); v.Limit != "15.6 °C to 26.7 °C and 30 to 50 %RH, trade guidance" || v.Say != ready.Go {
		t.Errorf("%+v", v)
	}
}

func TestSwappedSeasons(t *testing.T) {
	vs := Verdicts(Job{Climate: Climate{Winter: year.Summer, Summer: year.Winter}}, plank)
	if v := find(t, vs, "seasons", ""); v.Say != ready.Look {
		t.Errorf("%+v", v)
	}
	s, ok := (Climate{Winter: year.Summer, Summer: year.Winter}).Season()
	if want, _ := year.Season(); !ok || s != want {
		t.Errorf("%+v", s)
	}
}

// A subfloor of 10 % lets strip be from 6 to 14 % (Hardwood Floors magazine,
// February 2017), plank from 8 to 12.
func TestFourAndTwoPoints(t *testing.T) {
	for _, c := range []struct {
		floor  Floor
		boards float64
		want   ready.Say
	}{
		{strip(), 6, ready.Go}, {strip(), 14, ready.Go}, {strip(), 14.1, ready.Wait}, {strip(), 5.9, ready.Wait},
		{plank, 8, ready.Go}, {plank, 12, ready.Go}, {plank, 12.1, ready.Wait}, {plank, 7.9, ready.Wait},
	} {
		j := Job{Subfloor: Sample{Reads: same(10, 10)}, Boards: Sample{Reads: same(20, c.boards)}}
		if v := find(t, Verdicts(j, c.floor), "boards against subfloor", ""); v.Say != c.want || v.Holds != (c.want == ready.Wait) {
			t.Errorf("%g %%: %+v", c.boards, v)
		}
	}
	edge := plank
	edge.Faces = []tape.Length{3 * tape.Inch}
	j := Job{Subfloor: Sample{Reads: same(10, 10)}, Boards: Sample{Reads: same(20, 13)}}
	if v := find(t, Verdicts(j, edge), "boards against subfloor", ""); v.Say != ready.Wait {
		t.Errorf("3 in is plank: %+v", v)
	}
}

func TestSubfloorLimitAndRanks(t *testing.T) {
	j := Job{Subfloor: Sample{Reads: same(10, 12.5)}}
	if v := find(t, Verdicts(j, plank), "moisture of the wood subfloor", ""); v.Say != ready.Wait || !v.Holds || !strings.Contains(v.Limit, "12 %, trade guidance") || !strings.Contains(v.Do, "18 %") {
		t.Errorf("%+v", v)
	}
	j.Limits = Limits{SubfloorMost: {{Is: 13, By: ready.Maker, Source: "leaflet"}}}
	if v := find(t, Verdicts(j, plank), "moisture of the wood subfloor", ""); v.Say != ready.Go || v.Limit != "at most 13 %, the maker's, before 12 % of trade guidance" || v.Source != "leaflet" {
		t.Errorf("%+v", v)
	}
	j.Limits[SubfloorMost] = append(j.Limits[SubfloorMost], ready.Limit{Is: 11, By: ready.Code, Source: "by-law"})
	if v := find(t, Verdicts(j, plank), "moisture of the wood subfloor", ""); v.Say != ready.Wait || v.Source != "by-law" {
		t.Errorf("%+v", v)
	}
}

// 20 and 40 readings for 1,000 sq ft, never fewer than half of that.
func TestCounts(t *testing.T) {
	for _, c := range []struct {
		sqft      float64
		sub, brds int
	}{{0, 10, 20}, {200, 10, 20}, {500, 10, 20}, {501, 11, 21}, {1000, 20, 40}, {1850, 37, 74}} {
		if a, b := wanted(c.sqft, subfloorReadings), wanted(c.sqft, boardReadings); a != c.sub || b != c.brds {
			t.Errorf("%g sq ft: %d and %d", c.sqft, a, b)
		}
	}
	v := find(t, Verdicts(Job{Subfloor: Sample{Reads: same(7, 9)}}, plank), "number of readings", subfloor)
	if v.Say != ready.Wait || !strings.Contains(v.Do, "Take 3 more") {
		t.Errorf("%+v", v)
	}
}

// 300 sq ft ask for 3 tests of a slab, 1,850 for 4 (ASTM F2170-09 as quoted).
func TestSlab(t *testing.T) {
	for sqft, want := range map[float64]int{0: 3, 300: 3, 1000: 3, 1850: 4, 2000: 4, 2001: 5} {
		if got := slabTests(sqft); got != want {
			t.Errorf("%g sq ft: %d tests, want %d", sqft, got, want)
		}
	}
	vs := Verdicts(Job{Slab: Slab{Humidity: []float64{70, 71, 76}, Emission: []float64{2.5, 3}}}, plank)
	if v := find(t, vs, "humidity in the slab (ASTM F2170)", ""); v.Say != ready.Fix || !strings.Contains(v.Do, "0.15 perm") {
		t.Errorf("%+v", v)
	}
	if v := find(t, vs, "emission of the slab (ASTM F1869)", ""); v.Say != ready.Go {
		t.Errorf("%+v", v)
	}
	if v := find(t, vs, "number of slab tests", ""); v.Measured != "2" || !strings.Contains(v.Where, "F1869") || strings.Contains(v.Do, "probes") {
		t.Errorf("%+v", v)
	}
}

func TestReadingsPutRight(t *testing.T) {
	m := Meter{Kind: Pin}
	s := Sample{Reads: []float64{9, 10, 5.5, 31}, Table: []Mark{{12, 10.8}, {8, 7.1}}, Wood: degF(70)}
	l := m.Look(s)
	if len(l.Contents) != 2 || math.Abs(l.Contents[0]-8.025) > 1e-9 || math.Abs(l.Contents[1]-8.95) > 1e-9 {
		t.Errorf("%+v", l)
	}
	if len(l.Beyond) != 2 || l.Beyond[0] != 5.5 || l.Beyond[1] != 31 {
		t.Errorf("beyond: %v", l.Beyond)
	}
	// Wood 20 °F colder than the meter was calibrated for: a point is added.
	if l := m.Look(Sample{Reads: []float64{9}, Wood: degF(50)}); math.Abs(l.Mean-10) > 1e-9 {
		t.Errorf("cold wood: %+v", l)
	}
	if l := m.Look(Sample{Reads: []float64{9}, Wood: degC(26.6667)}); math.Abs(l.Mean-8.5) > 1e-4 {
		t.Errorf("warm wood: %+v", l)
	}
	// A pinless meter reads density, not resistance: no such correction.
	if l := (Meter{Kind: Pinless}).Look(Sample{Reads: []float64{9}, Wood: degF(50)}); l.Mean != 9 {
		t.Errorf("pinless: %+v", l)
	}
}

func TestFiguresAndFarReadings(t *testing.T) {
	l := Meter{}.Look(Sample{Reads: []float64{8, 8.2, 7.9, 8.1, 8, 13}})
	if len(l.Far) != 1 || l.Far[0] != 13 {
		t.Errorf("far: %v", l.Far)
	}
	if math.Abs(l.Mean-53.2/6) > 1e-12 || l.Least != 7.9 || l.Most != 13 || math.Abs(l.Spread-2.02748) > 1e-3 {
		t.Errorf("%+v", l)
	}
	if l := (Meter{}).Look(Sample{Reads: []float64{7, 8, 9, 10, 11, 12}}); len(l.Far) != 0 {
		t.Errorf("an even spread has far readings: %v", l.Far)
	}
}

func TestSuspectReadings(t *testing.T) {
	j := Job{Meter: Meter{Kind: Pin}, Subfloor: Sample{Reads: append(same(10, 9), 34)}, Boards: Sample{Reads: same(20, 8), Setting: "white oak"}}
	vs := Verdicts(j, plank)
	if v := find(t, vs, "suspect value", subfloor); v.Say != ready.Fix || v.Measured != "34 %" {
		t.Errorf("%+v", v)
	}
	if v := find(t, vs, "suspect value", theBoards); !strings.Contains(v.Measured, "white oak") {
		t.Errorf("%+v", v)
	}
	j.Boards.Setting = "plywood"
	if v := find(t, Verdicts(j, plank), "suspect value", theBoards); !strings.Contains(v.Measured, "plywood") {
		t.Errorf("%+v", v)
	}
	j.Boards.Setting = "red oak"
	j.Subfloor.Reads = same(10, 9)
	none(t, Verdicts(j, plank), "suspect value")
}

// A meter set to the boards, or to another panel, is suspect for the subfloor; one
// set to its kind of wood is not.
func TestSettingForTheSubfloor(t *testing.T) {
	f := plank
	f.Under = "plywood"
	for setting, say := range map[string]ready.Say{"": ready.Look, "Red oak": ready.Fix, "OSB": ready.Fix, "plywood, softwood": "", "douglas fir": ""} {
		j := Job{Subfloor: Sample{Reads: same(10, 9), Setting: setting}}
		if say == "" {
			none(t, Verdicts(j, f), "setting of the meter")
		} else if v := find(t, Verdicts(j, f), "setting of the meter", subfloor); v.Say != say {
			t.Errorf("%q: %+v", setting, v)
		}
		j.Subfloor.Table = []Mark{{Shows: 8, Is: 7}, {Shows: 12, Is: 11}}
		none(t, Verdicts(j, f), "setting of the meter")
	}
}

// Wood is never read on the setting for concrete, whatever lies on top of it.
func TestSetToConcrete(t *testing.T) {
	j := Job{Subfloor: Sample{Reads: same(10, 9), Setting: "Concrete"}}
	if v := find(t, Verdicts(j, plank), "setting of the meter", subfloor); v.Say != ready.Fix || v.Source == "" {
		t.Errorf("%+v", v)
	}
	f := plank
	f.Slab = true
	none(t, Verdicts(j, f), "setting of the meter")
}

// What is drawn of a log is what is said of it.
func TestChartOfTheLog(t *testing.T) {
	var log []Entry
	for i, x := range []float64{14, 13.04, 12.2, 11.47, 10.83, 10.28} {
		log = append([]Entry{{20000 + i, []float64{x - 0.1, x + 0.1}}}, log...) // written backwards
	}
	j := Job{Climate: year, Log: log}
	c, ok := j.Chart(plank)
	if !ok || !c.Fitted || !c.Known || !c.Reaches || len(c.Days) != 6 || c.Days[0].Day != 20000 || math.Abs(c.Days[5].Content-10.28) > 1e-12 || c.Days[0].Count != 2 {
		t.Fatalf("%v %+v", ok, c)
	}
	v := find(t, Verdicts(j, plank), "boards coming to rest", "")
	if !strings.Contains(v.Do, Date(c.Within.Day)) || v.Limit != c.Band {
		t.Errorf("%+v, but %+v", c.Within, v)
	}
	if at := c.Course.At(c.Within.Day); math.Abs(at-c.Most) > 1e-6 {
		t.Errorf("on that day %.3f %%, the limit is %.3f", at, c.Most)
	}
	if _, ok := (Job{}).Chart(plank); ok {
		t.Error("nothing was logged")
	}
}

func TestLog(t *testing.T) {
	entries := func(day int, xs ...float64) []Entry {
		var out []Entry
		for i, x := range xs {
			out = append(out, Entry{day + i, []float64{x}})
		}
		return out
	}
	day := 20000 // 2024-10-04
	for _, c := range []struct {
		log   []Entry
		say   ready.Say
		holds []string
	}{
		{entries(day, 12, 11.8), ready.Wait, []string{"at least 4"}},
		{entries(day, 12.5, 12.45, 12.5, 12.4), ready.Fix, []string{"come to rest outside"}},
		{entries(day, 8, 8.1), ready.Go, nil},
		{entries(day, 14, 13, 12.34, 11.9, 11.6, 11.4, 11.27, 11.18), ready.Fix, []string{"head for 11.0 %"}},
		{entries(day, 14, 13.04, 12.2, 11.47, 10.83, 10.28), ready.Wait, []string{"Wait until about 2024-10-1", "nine times in ten"}},
	} {
		v := find(t, Verdicts(Job{Climate: year, Log: c.log}, plank), "boards coming to rest", "")
		if v.Say != c.say {
			t.Errorf("%v: %+v", c.log, v)
		}
		for _, s := range c.holds {
			if !strings.Contains(v.Do, s) {
				t.Errorf("%v: %q has no %q", c.log, v.Do, s)
			}
		}
	}
	if Date(20000) != "2024-10-04" || Date(20000.1) != "2024-10-05" {
		t.Error(Date(20000), Date(20000.1))
	}
}

// Second source: the same courses by gonum's simplex search over all three
// unknowns at once, which shares nothing with the fit here.
func TestFitAgainstSimplex(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 3))
	for range 20 {
		ps := planted(rng, 10, 12, 8, 4+2*rng.Float64(), 0.1)
		c, err := Fit(ps)
		if err != nil {
			t.Fatal(err)
		}
		sum := func(x []float64) float64 {
			var s float64
			for _, p := range ps {
				d := p.Content - x[0] - x[1]*math.Exp(-(p.Day-100)/math.Exp(x[2]))
				s += d * d
			}
			return s
		}
		r, err := optimize.Minimize(optimize.Problem{Func: sum}, []float64{8, 4, math.Log(5)}, nil, &optimize.NelderMead{})
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(r.X[0]-c.Ends) > 2e-3 || math.Abs(math.Exp(r.X[2])-c.Rate) > 1e-2 || sum([]float64{c.Ends, c.Off, math.Log(c.Rate)}) > r.F*(1+1e-6) {
			t.Errorf("fit %+v, simplex %v with %v", c, r.X, r.F)
		}
	}
}
