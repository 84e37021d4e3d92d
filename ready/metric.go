package ready

import "math"

// metric is what a unit that guides are kept in is said as in metric jobs.
var metric = map[string]struct {
	unit string
	to   func(float64) float64
}{
	"in":    {"mm", func(x float64) float64 { return x * 25.4 }},
	"sq ft": {"m2", func(x float64) float64 { return x * 0.09290304 }},
	"°F":    {"°C", func(x float64) float64 { return (x - 32) / 1.8 }},
	"psf":   {"kg/m2", func(x float64) float64 { return x * 4.88243 }},
}

// In is the ruling and its unit in the system that a job is in: inches, square
// feet, °F and pounds per square foot as they are, or as mm, m2, °C and kg/m2 to
// three figures. Other units are the same in both.
func (r Ruling) In(imperial bool, unit string) (Ruling, string) {
	m, ok := metric[unit]
	if imperial || !ok {
		return r, unit
	}
	out := r
	out.Outranked = nil
	out.Is = three(m.to(r.Is))
	for _, l := range r.Outranked {
		l.Is = three(m.to(l.Is))
		out.Outranked = append(out.Outranked, l)
	}
	return out, m.unit
}

// three is x to three figures.
func three(x float64) float64 {
	if x == 0 {
		return 0
	}
	scale := math.Pow(10, 2-math.Floor(math.Log10(math.Abs(x))))
	return math.Round(x*scale) / scale
}
