package moisture

import (
	"errors"
	"math"
	"sort"

	"gonum.org/v1/gonum/stat/distuv"
)

// Point is the mean of the readings of one day.
type Point struct {
	Day     float64 // counted from any day
	Content float64 // percent
	Count   int     // readings behind it
}

// Course is how boards approach the moisture content that the air has for
// them: Ends + Off exp(-(t - First)/Rate), t in days.
type Course struct {
	Ends  float64 // percent, where it comes to rest
	Off   float64 // percent above (or, negative, below) that at First
	Rate  float64 // days in which 63 % of what is left goes
	First float64 // the first day
	Noise float64 // standard deviation of one day's mean about the curve

	points []Point
	sum    float64 // squares left, weighted
}

// LeastDays is how many days with readings a course needs: one more than it has
// unknowns.
const LeastDays = 4

// ErrFew is a log with fewer days than LeastDays.
var ErrFew = errors.New("too few days with readings")

// Fit is the course through points by least squares. Each day counts by the
// readings behind it. The error is ErrFew.
func Fit(points []Point) (Course, error) {
	ps := append([]Point(nil), points...)
	sort.SliceStable(ps, func(i, j int) bool { return ps[i].Day < ps[j].Day })
	days := 0
	for i, p := range ps {
		if i == 0 || p.Day > ps[i-1].Day {
			days++
		}
	}
	if days < LeastDays {
		return Course{}, ErrFew
	}
	c := Course{First: ps[0].Day, points: weighed(ps)}
	c.Rate, c.sum = least(c.shortest(), c.longest(), func(rate float64) float64 {
		_, _, sum := c.line(rate)
		return sum
	})
	c.Ends, c.Off, c.sum = c.line(c.Rate)
	c.Noise = math.Sqrt(c.sum / float64(len(ps)-3))
	return c, nil
}

// weighed gives points without a count the count of one.
func weighed(ps []Point) []Point {
	for i := range ps {
		ps[i].Count = max(ps[i].Count, 1)
	}
	return ps
}

// span is the days from first to last reading.
func (c Course) span() float64 { return c.points[len(c.points)-1].Day - c.First }

// The rates looked at: faster than a tenth of the log no reading would see, and
// slower than twenty times the log is a straight line.
func (c Course) shortest() float64 { return c.span() / 10 }
func (c Course) longest() float64  { return c.span() * 20 }

// line is the best course of this rate, which is a straight line over
// exp(-t/rate), and its sum of weighted squares.
func (c Course) line(rate float64) (ends, off, sum float64) {
	var n, x, y, xx, xy float64
	for _, p := range c.points {
		w, e := float64(p.Count), math.Exp((c.First-p.Day)/rate)
		n, x, y, xx, xy = n+w, x+w*e, y+w*p.Content, xx+w*e*e, xy+w*e*p.Content
	}
	if det := n*xx - x*x; det > 1e-12*n*n {
		off = (n*xy - x*y) / det
	}
	ends = (y - off*x) / n
	for _, p := range c.points {
		d := p.Content - ends - off*math.Exp((c.First-p.Day)/rate)
		sum += float64(p.Count) * d * d
	}
	return ends, off, sum
}

// At is the moisture content on a day by the curve.
func (c Course) At(day float64) float64 { return c.Ends + c.Off*math.Exp((c.First-day)/c.Rate) }

// Last is the last day with readings.
func (c Course) Last() float64 { return c.points[len(c.points)-1].Day }

// Span is a day with its doubt: nine times in ten it lies from Early to Late,
// which is infinite where the readings so far allow no latest day.
type Span struct{ Day, Early, Late float64 }

// Reaches is the day on which the course comes to a moisture content; not ok
// where the curve never does.
func (c Course) Reaches(content float64) (s Span, ok bool) {
	part := (content - c.Ends) / c.Off
	if !(part > 0) || part > 1 {
		return Span{}, false
	}
	s.Day = c.First - c.Rate*math.Log(part)
	worst := c.sum * (1 + c.allowance())
	within := func(day float64) bool { return c.through(day, content) <= worst }
	s.Early = edge(s.Day, -1, c.span(), within)
	s.Late = edge(s.Day, +1, c.span(), within)
	return s, true
}

// allowance is by what part the squares may grow for a day still to be
// believed: of the F distribution, nine times in ten.
func (c Course) allowance() float64 {
	free := float64(len(c.points) - 3)
	return distuv.F{D1: 1, D2: free}.Quantile(0.9) / free
}

// through is the least sum of squares of a course that comes to content on a
// day: with w = exp((day - t)/rate) its points are Ends + (content - Ends) w.
func (c Course) through(day, content float64) float64 {
	_, sum := least(c.shortest(), c.longest(), func(rate float64) float64 {
		var up, down float64
		for _, p := range c.points {
			w := math.Exp((day - p.Day) / rate)
			n := float64(p.Count)
			up += n * (1 - w) * (p.Content - content*w)
			down += n * (1 - w) * (1 - w)
		}
		if math.IsInf(down, 1) {
			return math.Inf(1)
		}
		ends := content
		if down > 0 {
			ends = up / down
		}
		var sum float64
		for _, p := range c.points {
			d := p.Content - ends - (content-ends)*math.Exp((day-p.Day)/rate)
			sum += float64(p.Count) * d * d
		}
		if math.IsNaN(sum) {
			return math.Inf(1)
		}
		return sum
	})
	return sum
}

// farthest is how many times the length of the log a day may lie ahead to be
// worth telling.
const farthest = 10

// edge is the last day from one on, in a direction, that is still within; it is
// infinite beyond farthest times the log.
func edge(from, dir, span float64, within func(float64) bool) float64 {
	in, step := from, span/64
	for {
		out := from + dir*step
		if math.Abs(out-from) > farthest*span {
			return math.Inf(int(dir))
		}
		if !within(out) {
			return border(in, out, within)
		}
		in, step = out, step*1.5
	}
}

// border is the place between one within and one without.
func border(in, out float64, within func(float64) bool) float64 {
	for range 20 {
		mid := (in + out) / 2
		if within(mid) {
			in = mid
		} else {
			out = mid
		}
	}
	return in
}

// least is where f is least between two positive numbers, and what it is there:
// the best of a grid of even steps in the logarithm, then the golden section
// beside it.
func least(lo, hi float64, f func(float64) float64) (x, y float64) {
	const steps = 30
	at := func(i float64) float64 { return lo * math.Pow(hi/lo, i/steps) }
	best, y := 0, math.Inf(1)
	for i := 0; i <= steps; i++ {
		if v := f(at(float64(i))); v < y {
			best, y = i, v
		}
	}
	a, b := math.Max(float64(best)-1, 0), math.Min(float64(best)+1, steps)
	golden := (math.Sqrt(5) - 1) / 2
	p, q := b-golden*(b-a), a+golden*(b-a)
	left, right := f(at(p)), f(at(q))
	for range 30 {
		if left <= right {
			b, q, right = q, p, left
			p = b - golden*(b-a)
			left = f(at(p))
		} else {
			a, p, left = p, q, right
			q = a + golden*(b-a)
			right = f(at(q))
		}
	}
	x = at((a + b) / 2)
	return x, math.Min(y, f(x))
}
