package tape

import (
	"fmt"
	"strings"
)

// Style is a way to print lengths: in a unit, to a step. Feet print as feet
// and inches. Print what must fit with Down, what must reach with Up.
//
//	Style{UnitFoot, Sixteenth}.Of(151*Inch + 3*Eighth)   12' 7-3/8"
//	Style{UnitMillimetre, Millimetre}.Up(38449 * Millimetre / 10)   3845 mm
type Style struct {
	Unit Unit
	Step Length // 0: 1/16 in on the inch tape, 1 mm on the other
}

// Paper is the style of lists and drawings for a job in unit u: feet stay
// feet and inches, to 1/16 in; metric units become mm, to 1 mm.
func Paper(u Unit) Style {
	if u.Imperial() {
		return Style{u, Sixteenth}
	}
	return Style{UnitMillimetre, Millimetre}
}

// Of prints the multiple of the step nearest to l, halves away from zero.
func (s Style) Of(l Length) string { return s.print(Nearest(l, s.step())) }

// Up prints the least multiple of the step that is not below l.
func (s Style) Up(l Length) string { return s.print(Up(l, s.step())) }

// Down prints the greatest multiple of the step that is not above l.
func (s Style) Down(l Length) string { return s.print(Down(l, s.step())) }

func (s Style) step() Length {
	switch {
	case s.Step > 0:
		return s.Step
	case s.Unit.Imperial():
		return Sixteenth
	}
	return Millimetre
}

// print writes l, already rounded, in the unit of s.
func (s Style) print(l Length) string {
	a := l.Abs()
	switch {
	case s.Unit.Imperial() && l%SixtyFourth != 0:
		return sign(l) + short(fmt.Sprintf("%.3f", a.Inches())) + " in"
	case s.Unit == UnitFoot && a >= Foot:
		return fmt.Sprintf("%s%d' %s", sign(l), a/Foot, inches(a%Foot))
	case s.Unit.Imperial():
		return sign(l) + inches(a)
	case s.Unit.One() == 0:
		return l.String()
	}
	return sign(l) + decimal(int64(a), int64(s.Unit.One())) + " " + string(s.Unit)
}

// short drops zeros at the end of a decimal number.
func short(s string) string {
	if !strings.Contains(s, ".") {
		return s
	}
	return strings.TrimRight(strings.TrimRight(s, "0"), ".")
}
