package wood

import (
	"errors"
	"math"
)

// Air is what a thermo-hygrometer shows.
type Air struct {
	Celsius  float64
	Humidity float64 // relative, percent
}

// Fahrenheit is air read in degrees Fahrenheit, with its relative humidity in
// percent.
func Fahrenheit(f, humidity float64) Air { return Air{(f - 32) / 1.8, humidity} }

// F is the air's temperature in degrees Fahrenheit.
func (a Air) F() float64 { return a.Celsius*1.8 + 32 }

// Where the formula from air to moisture content comes from, and how well it
// holds.
const SourceEMC = "Wood Handbook (FPL-GTR-190) eq. 4-5, two-hydrate Hailwood-Horrobin; coefficients Simpson 1998 (FPL-RN-0268)"

// ErrAir is air that the formula is not for.
var ErrAir = errors.New("the formula holds from -1 to 100 °C (30 to 212 °F) and between 0 and 100 % relative humidity")

// The range that the formula is used in, in °C.
const coldest, hottest = -1.2, 100.0

// hydrates are the coefficients of the two-hydrate formula, each a quadratic in
// the temperature.
type hydrates struct{ w, k, k1, k2 [3]float64 }

// The two published sets: rounded apart from each other, they differ by up to
// 0.013 points between 30 and 100 °F.
var (
	inCelsius = hydrates{
		w:  [3]float64{349, 1.29, 0.0135},
		k:  [3]float64{0.805, 0.000736, -0.00000273},
		k1: [3]float64{6.27, -0.00938, -0.000303},
		k2: [3]float64{1.91, 0.0407, -0.000293},
	}
	inFahrenheit = hydrates{
		w:  [3]float64{330, 0.452, 0.00415},
		k:  [3]float64{0.791, 0.000463, -0.000000844},
		k1: [3]float64{6.34, 0.000775, -0.0000935},
		k2: [3]float64{1.09, 0.0284, -0.0000904},
	}
)

func quadratic(c [3]float64, t float64) float64 { return c[0] + t*(c[1]+t*c[2]) }

// content is the moisture content in percent at temperature t, in the unit of
// the coefficients, and relative humidity h from 0 to 1.
func (c hydrates) content(t, h float64) float64 {
	k, k1, k2 := quadratic(c.k, t), quadratic(c.k1, t), quadratic(c.k2, t)
	kh := k * h
	one, two := k1*kh, k1*k2*kh*kh
	return 1800 / quadratic(c.w, t) * (kh/(1-kh) + (one+2*two)/(1+one+two))
}

func (a Air) allowed() bool {
	return a.Celsius >= coldest && a.Celsius <= hottest && a.Humidity > 0 && a.Humidity < 100
}

// Equilibrium is the moisture content, in percent of the oven-dry mass, that
// wood comes to in this air (the form in °C). The error is ErrAir.
func (a Air) Equilibrium() (float64, error) {
	if !a.allowed() { // also where one is not a number
		return 0, ErrAir
	}
	return inCelsius.content(a.Celsius, a.Humidity/100), nil
}

// EquilibriumF is Equilibrium by the form in °F.
func (a Air) EquilibriumF() (float64, error) {
	if !a.allowed() {
		return 0, ErrAir
	}
	return inFahrenheit.content(a.F(), a.Humidity/100), nil
}

// AirFor is the air of this temperature in which wood comes to the moisture
// content given: the inverse of Equilibrium, to a millionth of a point. The
// error is ErrAir where no humidity between 0 and 100 % does it.
func AirFor(celsius, content float64) (Air, error) {
	lo, hi := Air{celsius, 0}, Air{celsius, 100}
	top := Air{celsius, math.Nextafter(100, 0)}
	most, err := top.Equilibrium()
	if err != nil || !(content > 0) || content > most {
		return Air{}, ErrAir
	}
	for range 80 {
		mid := Air{celsius, (lo.Humidity + hi.Humidity) / 2}
		if m, err := mid.Equilibrium(); err != nil || m > content {
			hi = mid
		} else {
			lo = mid
		}
	}
	return Air{celsius, (lo.Humidity + hi.Humidity) / 2}, nil
}
