package caution

import (
	"math"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"strake/ready"
	"strake/site"
	"strake/tape"
)

// inches is work in an inch job with nothing to clear.
func inches() Work {
	return Work{House: House{Told: true, Services: site.Yes}, Style: tape.Paper(tape.UnitInch), Thickness: 3 * tape.Inch / 4, Species: "red oak", Carton: 20}
}

func TestNothingToClear(t *testing.T) {
	for _, v := range Verdicts(inches()) {
		if v.Say != ready.Go {
			t.Errorf("%+v", v)
		}
	}
}

func TestWhatHasToBeCleared(t *testing.T) {
	fire := func(front, side tape.Length) func(*Work) {
		return func(w *Work) {
			w.Fireplaces = []Fireplace{{Name: "grate", Width: 30 * tape.Inch, Height: 28 * tape.Inch, Front: front, Side: side}}
		}
	}
	for name, c := range map[string]struct {
		change func(*Work)
		rule   string
		say    ready.Say
		holds  bool
		do     string
	}{
		"sagging":             {func(w *Work) { w.Structure = Sags }, "what carries the floor", ready.Fix, true, "engineer"},
		"joist cut":           {func(w *Work) { w.Structure = Joists }, "what carries the floor", ready.Fix, true, "Stop"},
		"wall out":            {func(w *Work) { w.Structure = Wall }, "what carries the floor", ready.Fix, true, "permit"},
		"paint of 1977":       {func(w *Work) { w.Base, w.Built = true, 1977 }, "old paint", ready.Fix, false, "before trim comes off"},
		"paint, no year":      {func(w *Work) { w.Undercut = []string{"door"} }, "old paint", ready.Look, false, "Write built"},
		"lead":                {func(w *Work) { w.Paint, w.Built = LeadPaint, 1995 }, "old paint", ready.Fix, false, "HEPA"},
		"guard off":           {func(w *Work) { w.Guard = ComesOff }, "guard rail", ready.Fix, true, "temporary one at once"},
		"guard not answered":  {func(w *Work) { w.Stairs = []string{"head"} }, "guard rail", ready.Look, false, "guard: stays"},
		"guard ready":         {func(w *Work) { w.Guard = Temporary }, "guard rail", ready.Look, false, "new floor"},
		"services not":        {func(w *Work) { w.Services = site.No }, "pipes and cables", ready.Wait, true, "keep_free"},
		"services open":       {func(w *Work) { w.Services = "" }, "pipes and cables", ready.Look, false, "services: yes"},
		"heated and not told": {func(w *Work) { w.Heated = true }, "pipes and cables", ready.Fix, false, "Map its tubes"},
		"stack of four":       {func(w *Work) { w.Stack.High = 4 }, "cartons on the floor", ready.Fix, false, "3 high at most"},
		"stack of lead":       {func(w *Work) { w.Stack = Stack{High: 1, Pounds: 400} }, "cartons on the floor", ready.Fix, false, "side by side"},
		"stack, no weight":    {func(w *Work) { w.Stack.High, w.Species = 3, "merbau" }, "cartons on the floor", ready.Look, false, "weight of a carton"},
		"loud":                {func(w *Work) { w.Noises = []Noise{{"saw", 97}} }, "noise", ready.Look, false, "30 minutes"},
	} {
		w := inches()
		c.change(&w)
		var found []ready.Verdict
		for _, v := range Verdicts(w) {
			if v.Rule == c.rule {
				found = append(found, v)
			}
		}
		if len(found) != 1 || found[0].Say != c.say || found[0].Holds != c.holds || !strings.Contains(found[0].Do, c.do) || found[0].Source == "" {
			t.Errorf("%s: %+v", name, found)
		}
	}
	for name, c := range map[string]struct {
		change func(*Work)
		rule   string
	}{
		"house of 1978":    {func(w *Work) { w.Base, w.Built = true, 1978 }, "old paint"},
		"tested and clean": {func(w *Work) { w.Base, w.Built, w.Paint = true, 1920, CleanOne }, "old paint"},
		"none touched":     {func(w *Work) { w.Base, w.Built, w.Paint = true, 1920, NoPaint }, "old paint"},
		"rail stays":       {func(w *Work) { w.Stairs, w.Guard = []string{"head"}, Stays }, "guard rail"},
		"stack of three":   {func(w *Work) { w.Stack.High = 3 }, "cartons on the floor"},
		"hearth":           {fire(16*tape.Inch, 8*tape.Inch), "wood near a fire"},
		"quiet":            {func(w *Work) { w.Noises = []Noise{{"plane", 85}} }, "noise"},
	} {
		w := inches()
		c.change(&w)
		for _, v := range Verdicts(w) {
			if v.Rule == c.rule && v.Say != ready.Go {
				t.Errorf("%s: %+v", name, v)
			}
		}
	}
}

// The hearth extension of IRC R1001.10, from memory: 16 in before and 8 in beside
// an opening under 6 sq ft, 20 and 12 in from 6 sq ft on.
func TestHearths(t *testing.T) {
	in := tape.Inch
	for _, c := range []struct {
		width, height, front, side tape.Length
		fix                        string
	}{
		{30 * in, 28 * in, 16 * in, 8 * in, ""},
		{30 * in, 28 * in, 16*in - 1, 8 * in, "before"},
		{30 * in, 28 * in, 16 * in, 8*in - 1, "beside"},
		{36 * in, 24 * in, 20 * in, 12 * in, ""},             // 6 sq ft
		{36 * in, 24 * in, 16 * in, 8 * in, "before beside"}, // and large
		{36 * in, 24*in - 1, 16 * in, 8 * in, ""},            // a hair under it
		{36 * in, 24 * in, 19 * in, 12 * in, "before"},
	} {
		w := inches()
		w.Fireplaces = []Fireplace{{"grate", c.width, c.height, c.front, c.side}}
		for _, v := range w.fireplaces() {
			where := strings.Fields(strings.TrimPrefix(v.Where, "grate, "))[0]
			if want := strings.Contains(c.fix, where); want != v.Held() || v.Held() != v.Holds {
				t.Errorf("%+v: %+v", c, v)
			}
		}
	}
	w := inches()
	w.Style = tape.Paper(tape.UnitMillimetre)
	w.Fireplaces = []Fireplace{{"grate", 700 * tape.Millimetre, 700 * tape.Millimetre, 400 * tape.Millimetre, 300 * tape.Millimetre}}
	w.Limits = Limits{HearthFront: {{Is: 20, By: ready.Code, Source: "by-law"}}}
	if v := w.fireplaces()[0]; v.Limit != "at least 508 mm, local code, before 406 mm of trade guidance, for an opening of 0.49 m2" || v.Source != "by-law" || !v.Holds {
		t.Errorf("metric: %+v", v)
	}
}

// A carton of 20 sq ft and 55 lb covers 4.67 sq ft, 11.8 psf: three high, 35 psf,
// pass on a floor of 40 psf (residential live load) and four high, 47, do not. Our
// arithmetic on published weights.
func TestCartonLoad(t *testing.T) {
	for high, want := range map[int]float64{1: 11.8, 3: 35, 4: 47} {
		if got := (Stack{High: high}).Load(55, 20); math.Abs(got-want) > 0.5 {
			t.Errorf("%d high: %.1f psf, want %.1f", high, got, want)
		}
	}
	if got := (Stack{High: 2, Long: 48 * tape.Inch, Wide: 12 * tape.Inch}).Load(60, 20); math.Abs(got-30) > 1e-9 {
		t.Errorf("by its size: %g", got)
	}
}

// NIOSH, 85 dBA over 8 hours with an exchange of 3 dB: 88 dBA 4 h, 91 2 h, 94 1 h,
// 97 30 min, 100 15 min.
func TestNoiseTimes(t *testing.T) {
	for level, want := range map[float64]time.Duration{
		85: 8 * time.Hour, 88: 4 * time.Hour, 91: 2 * time.Hour, 94: time.Hour, 97: 30 * time.Minute, 100: 15 * time.Minute,
	} {
		if got := Ears(level, 85); (got - want).Abs() > time.Millisecond {
			t.Errorf("%g dBA: %s, want %s", level, got, want)
		}
	}
}

// A taller stack never loads the floor less, and more noise is never borne longer.
func TestMoreIsNoLighter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pounds, boards := rapid.Float64Range(1, 200).Draw(t, "pounds"), float64(rapid.IntRange(0, 60).Draw(t, "boards"))
		high := rapid.IntRange(1, 20).Draw(t, "high")
		if (Stack{High: high + 1}).Load(pounds, boards) <= (Stack{High: high}).Load(pounds, boards) {
			t.Fatal("a taller stack is lighter")
		}
		level := rapid.Float64Range(60, 130).Draw(t, "level")
		if Ears(level+1, 85) >= Ears(level, 85) {
			t.Fatal("more noise is borne longer")
		}
	})
}

// What is minded goes with the work: a floor over a sound new subfloor speaks of
// no tear-out, no stairs and no heating.
func TestCautionsGoWithTheWork(t *testing.T) {
	w := inches()
	w.Finish = Factory
	for _, c := range Cautions(w) {
		if c.Source == "" || c.Do == "" || strings.Contains("crawl space stairs fireplace heating make the subfloor flat undercut glue and finish", c.Task) {
			t.Errorf("without cause: %+v", c)
		}
	}
	for task, change := range map[string]func(*Work){
		"crawl space": func(w *Work) { w.Crawl = true }, "stairs": func(w *Work) { w.Stairs = []string{"head"} },
		"undercut": func(w *Work) { w.Undercut = []string{"door"} }, "heating": func(w *Work) { w.Heated = true },
		"glue and finish": func(w *Work) { w.Glued = true }, "fireplace": func(w *Work) { w.Fireplaces = make([]Fireplace, 1) },
		"make the subfloor flat": func(w *Work) { w.Mineral = true },
	} {
		w := w
		change(&w)
		found := false
		for _, c := range Cautions(w) {
			found = found || c.Task == task
		}
		if !found {
			t.Errorf("%s is not told", task)
		}
	}
	old := w
	old.TearOut, old.Built = true, 1975
	if c := Cautions(old)[0]; c.Task != "tear out" || !strings.Contains(c.Do, "laboratory") {
		t.Errorf("the test comes first: %+v", c)
	}
	old.Built = 1990
	if c := Cautions(old)[0]; strings.Contains(c.Do, "laboratory") {
		t.Errorf("nothing of 1990 is presumed: %+v", c)
	}
}
