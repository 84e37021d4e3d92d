package tape

import (
	"fmt"
	"strconv"
	"strings"
)

// String is l exactly, in a form that ParseSigned reads back to the same
// tick: inches where l is on a mark of the inch tape (151-3/8"), else
// millimetres with as many decimals as it takes (3844.9 mm).
func (l Length) String() string {
	if l%SixtyFourth == 0 {
		return sign(l) + inches(l.Abs())
	}
	return sign(l) + decimal(int64(l.Abs()), int64(Millimetre)) + " mm"
}

func sign(l Length) string {
	if l < 0 {
		return "-"
	}
	return ""
}

// inches prints l, a multiple of 1/64 in and not negative, as 7-3/8", 3/8" or
// 7".
func inches(l Length) string {
	whole, rest := l/Inch, l%Inch
	if rest == 0 {
		return fmt.Sprintf(`%d"`, whole)
	}
	num, den := int64(rest/SixtyFourth), int64(64)
	for num%2 == 0 {
		num, den = num/2, den/2
	}
	if whole == 0 {
		return fmt.Sprintf(`%d/%d"`, num, den)
	}
	return fmt.Sprintf(`%d-%d/%d"`, whole, num, den)
}

// decimal prints n/one exactly, without zeros at the end; one divides a power
// of ten, and n is not negative.
func decimal(n, one int64) string {
	whole, rest := n/one, n%one
	if rest == 0 {
		return strconv.FormatInt(whole, 10)
	}
	var b strings.Builder
	fmt.Fprintf(&b, "%d.", whole)
	for rest > 0 {
		rest *= 10
		b.WriteByte(byte('0' + rest/one))
		rest %= one
	}
	return b.String()
}
