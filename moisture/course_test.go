package moisture

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"
)

// planted is a log of n days along a known course, with noise of so many points.
func planted(rng *rand.Rand, n int, start, ends, rate, noise float64) []Point {
	var out []Point
	for day := range n {
		t := float64(day)
		out = append(out, Point{Day: 100 + t, Content: ends + (start-ends)*math.Exp(-t/rate) + noise*rng.NormFloat64(), Count: 1})
	}
	return out
}

func TestPlantedRate(t *testing.T) {
	rng := rand.New(rand.NewPCG(7, 1))
	for _, c := range []struct{ start, ends, rate, through float64 }{
		{12, 8, 6, 9}, {5.5, 8.2, 3, 7.2}, {11, 7, 14, 8}, {9, 8, 1.5, 8.3},
	} {
		f, err := Fit(planted(rng, 9, c.start, c.ends, c.rate, 0))
		if err != nil || math.Abs(f.Rate-c.rate) > 1e-4*c.rate || math.Abs(f.Ends-c.ends) > 1e-4 || math.Abs(f.At(100)-c.start) > 1e-4 {
			t.Errorf("%+v: %+v, %v", c, f, err)
		}
		want := 100 + c.rate*math.Log((c.start-c.ends)/(c.through-c.ends))
		s, ok := f.Reaches(c.through)
		if !ok || math.Abs(s.Day-want) > 1e-3 || math.Abs(s.Late-s.Early) > 0.02 {
			t.Errorf("%+v: reached on %+v, want %.3f", c, s, want)
		}
	}
}

// The stated doubt holds nine times in ten: 200 logs with noise, the true day
// within from early to late.
func TestDoubtHolds(t *testing.T) {
	rng := rand.New(rand.NewPCG(11, 2))
	for _, c := range []struct {
		days                              int
		start, ends, rate, noise, through float64
	}{
		{8, 12, 8, 6, 0.1, 9}, {12, 12, 8, 6, 0.15, 9}, {6, 6, 8, 4, 0.05, 7.5},
	} {
		truth := 100 + c.rate*math.Log((c.start-c.ends)/(c.through-c.ends))
		held, told := 0, 0
		for range 200 {
			f, err := Fit(planted(rng, c.days, c.start, c.ends, c.rate, c.noise))
			if err != nil {
				t.Fatal(err)
			}
			s, ok := f.Reaches(c.through)
			if !ok { // the curve comes to rest short of it: nothing is stated
				continue
			}
			told++
			if s.Early <= truth && truth <= s.Late {
				held++
			}
		}
		share := float64(held) / float64(told)
		t.Logf("%+v: told %d of 200, held %.3f", c, told, share)
		if told < 150 || share < 0.84 || share > 0.96 {
			t.Errorf("%+v: told %d of 200, held in %.3f", c, told, share)
		}
	}
}

func TestTooFewDays(t *testing.T) {
	ps := planted(rand.New(rand.NewPCG(1, 1)), 3, 12, 8, 6, 0)
	if _, err := Fit(ps); !errors.Is(err, ErrFew) {
		t.Errorf("three days: %v", err)
	}
	if _, err := Fit(append(ps, ps[2])); !errors.Is(err, ErrFew) {
		t.Errorf("three days, one of them twice: %v", err)
	}
}

// A log over a small part of the course has no latest day.
func TestNoLatestDay(t *testing.T) {
	f, err := Fit([]Point{{0, 11.0, 1}, {1, 10.9, 1}, {2, 10.7, 1}, {3, 10.65, 1}, {4, 10.5, 1}})
	if err != nil {
		t.Fatal(err)
	}
	if s, ok := f.Reaches(8); ok && !math.IsInf(s.Late, 1) {
		t.Errorf("a latest day of %v from a fall of half a point", s)
	}
}
