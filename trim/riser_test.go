package trim

import (
	"strings"
	"testing"

	"pgregory.net/rapid"

	"strake/ready"
	"strake/tape"
)

func seven(n int) []tape.Length {
	out := make([]tape.Length, n)
	for i := range out {
		out[i] = 7*inch + half
	}
	return out
}

// The US model code (IRC, as summaries of stair codes have it): within a flight
// the largest and the smallest riser differ by 3/8 in at most. A 3/4 in floor at
// the foot or the head of an even flight breaks it, unless the treads come up too.
func TestRiserDifference(t *testing.T) {
	for _, c := range []struct {
		name  string
		stair Stair
		board tape.Length
		even  bool
	}{
		{"foot", Stair{}, 3 * qtr, false},
		{"head", Stair{Head: true}, 3 * qtr, false},
		{"3/8 in is let stand", Stair{Head: true}, 3 * inch / 8, true},
		{"a hair more is not", Stair{Head: true}, 3*inch/8 + inch/64, false},
		{"treads and the floor above come up alike", Stair{Treads: 3 * qtr, Other: 3 * qtr}, 3 * qtr, true},
		{"treads alone move it to the other end", Stair{Treads: 3 * qtr}, 3 * qtr, false},
	} {
		w := at(Job{SheetTold: true})
		w.f.Board = c.board
		c.stair.Name, c.stair.Risers = "stair", seven(5)
		w.job.Stairs = []Stair{c.stair}
		f := w.flights()[0]
		if f.Even != c.even {
			t.Errorf("%s: %+v", c.name, f)
		}
		v := find(t, Verdicts(w.job, w.f), "risers of a stair", "stair")
		if (v.Say == ready.Go) != c.even || v.Holds == c.even || !strings.Contains(v.Source, "comes first") || !strings.Contains(v.Limit, "the US model code") {
			t.Errorf("%s: %+v", c.name, v)
		}
	}
}

// The highest riser is 7-3/4 in: one that was higher before is no new fault.
func TestHighestRiser(t *testing.T) {
	w := at(Job{SheetTold: true, Stairs: []Stair{{Name: "a", Head: true, Risers: seven(3)}, {Name: "b", Risers: []tape.Length{8 * inch, 8 * inch}}}})
	vs := Verdicts(w.job, w.f)
	if v := find(t, vs, "height of a riser", "a"); v.Measured != `8-1/4"` || v.Say != ready.Fix {
		t.Errorf("%+v", v)
	}
	for _, v := range vs {
		if v.Rule == "height of a riser" && v.Where == "b" {
			t.Errorf("%+v", v)
		}
	}
}

// The range that a floor may come up by is that of all heights that keep the
// limit, tried one by one; the risers still add up to the height of the stair.
func TestRangeOfRise(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		step := inch / 16
		s := Stair{Name: "stair", Head: rapid.Bool().Draw(t, "head"), Treads: step * tape.Length(rapid.IntRange(0, 12).Draw(t, "treads")), Other: step * tape.Length(rapid.IntRange(0, 12).Draw(t, "other"))}
		for range rapid.IntRange(2, 5).Draw(t, "n") {
			s.Risers = append(s.Risers, 7*inch+step*tape.Length(rapid.IntRange(0, 7).Draw(t, "riser")))
		}
		w := at(Job{})
		for k := -20; k <= 40; k++ {
			rise := step * tape.Length(k)
			f := w.flight(s, rise)
			if in := rise >= f.Least && rise <= f.Most; in != f.Even {
				t.Fatalf("rise %v: even %v, range %v to %v of %v", rise, f.Even, f.Least, f.Most, s)
			}
			var now, then tape.Length
			for i := range s.Risers {
				now, then = now+s.Risers[i], then+f.Then[i]
			}
			up := s.Other - rise
			if s.Head {
				up = rise - s.Other
			}
			if then != now+up {
				t.Fatalf("%v becomes %v at %v", s.Risers, f.Then, rise)
			}
		}
	})
}

// Build-ups that keep a flight are named, and only those.
func TestBuildsThatKeepAFlight(t *testing.T) {
	w := at(Job{SheetTold: true, Stocked: Stocked{Boards: []tape.Length{3 * inch / 8, 5 * inch / 8}, Panels: []tape.Length{qtr}}, Stairs: []Stair{{Name: "stair", Head: true, Risers: []tape.Length{7 * inch, 7 * inch, 7 * inch, 7 * inch}}}})
	v := find(t, Verdicts(w.job, w.f), "risers of a stair", "stair")
	if !strings.Contains(v.Do, `may come up by at most 3/8" there. Build-ups that do: 3/8" boards, no panel. Or`) {
		t.Error(v.Do)
	}
	w.job.Stairs[0].Risers = []tape.Length{7*inch + 5*qtr/2, 7*inch + 5*qtr/2, 7*inch + 5*qtr/2}
	v = find(t, Verdicts(w.job, w.f), "risers of a stair", "stair")
	if !strings.Contains(v.Do, `may come up by at most 1/8" there, for no riser to be over 7-3/4", the US model code. None that is stocked does. Or`) {
		t.Error(v.Do)
	}
	w.job.Stairs[0].Risers, w.job.Stairs[0].Head = []tape.Length{7*inch + 5*qtr/2, 7*inch + 5*qtr/2, 7*inch + 5*qtr/2}, false
	v = find(t, Verdicts(w.job, w.f), "risers of a stair", "stair")
	if !strings.Contains(v.Do, `may come up by at most 3/8" there. Build-ups that do`) {
		t.Error(v.Do)
	}
	w.job.Stairs[0] = Stair{Name: "stair", Head: true, Risers: seven(4)}
	w.job.Limits = Limits{RiserApart: {{Is: length(inch), By: ready.Code, Source: "by-law 3"}}}
	if v := find(t, Verdicts(w.job, w.f), "risers of a stair", "stair"); v.Say != ready.Go || !strings.Contains(v.Limit, `1", local code, before 3/8" of`) || v.Source != "by-law 3" || !strings.Contains(v.Do, "is stricter") {
		t.Errorf("%+v", v)
	}
}
