package tape

// Length is a distance in ticks of 125 nm (an eighth of a micrometre).
//
// 1/64 in is 3,175 ticks and 0.1 mm is 800, so every mark of either tape is a
// whole number of ticks and sums are exact. The zero value is no length. An
// int64 holds some 1.1 million kilometres; rooms are held to Longest, so that
// the product of two lengths always fits an int64.
type Length int64

// The marks of the two tapes, as exact lengths.
const (
	Tick        Length = 1
	Micrometre         = 8 * Tick
	Millimetre         = 1000 * Micrometre
	Centimetre         = 10 * Millimetre
	Metre              = 100 * Centimetre
	Inch               = 203_200 * Tick
	SixtyFourth        = Inch / 64
	Sixteenth          = Inch / 16
	Eighth             = Inch / 8
	Foot               = 12 * Inch
	Yard               = 3 * Foot
)

// Longest is the largest length a reading may have: 200 m, at which the
// product of two lengths is 2.56e18 and still fits an int64.
const Longest = 200 * Metre

// Abs is the length without its sign.
func (l Length) Abs() Length {
	if l < 0 {
		return -l
	}
	return l
}

// Millimetres is l as a float64 in mm, for geometry that works in floats.
func (l Length) Millimetres() float64 { return float64(l) / float64(Millimetre) }

// Inches is l as a float64 in inches.
func (l Length) Inches() float64 { return float64(l) / float64(Inch) }

// Area is a surface in square ticks. A floor of 100 m by 100 m is 6.4e17.
type Area int64

// SquareFeet is a in square feet.
func (a Area) SquareFeet() float64 { return float64(a) / float64(Foot) / float64(Foot) }

// SquareMetres is a in square metres.
func (a Area) SquareMetres() float64 { return float64(a) / float64(Metre) / float64(Metre) }
