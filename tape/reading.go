package tape

import (
	"fmt"
	"math/big"
	"strings"
)

// Reading is a length and the step it was read to: what the last mark was
// that the reader looked at.
type Reading struct {
	Value Length
	// Step is 1/16 in for 7-3/16", 1 in for 7", 1 mm for 3840 mm, 10 mm for
	// 3.84 m. Decimals of an inch that fall on a mark of the tape count as
	// that mark (151.375 in is read to 1/8 in). Nobody reads a tape to the
	// foot or the metre: the step is never above 1 in or 100 mm.
	Step Length
}

// Parse reads a length as people write it; bare is the unit of a number
// without one, "" when it must have one. The length is not negative and not
// above Longest. A fraction is exact; a decimal number is rounded to the
// nearest tick (125 nm, far below any tape), halves away from zero.
//
// The error is always a *Question: what is not clear is asked, not guessed.
func Parse(s string, bare Unit) (Length, error) {
	r, err := ParseReading(s, bare)
	return r.Value, err
}

// ParseReading is Parse with the step that the length was read to.
func ParseReading(s string, bare Unit) (Reading, error) {
	r, q := parse(s, bare, false)
	if q != nil {
		return Reading{}, q
	}
	return r, nil
}

// ParseSigned is Parse for lengths that may be negative, such as how far a
// board's end may come to the face of an undercut jamb.
func ParseSigned(s string, bare Unit) (Length, error) {
	r, q := parse(s, bare, true)
	if q != nil {
		return 0, q
	}
	return r.Value, nil
}

func parse(s string, bare Unit, signed bool) (Reading, *Question) {
	if len(s) > maxText {
		return Reading{}, ask(s, "", fmt.Sprintf("that is longer than any length (%d bytes; at most %d)", len(s), maxText), forms)
	}
	c := &cursor{text: s, toks: scan(s)}
	if len(c.toks) == 0 {
		return Reading{}, ask(s, "", "nothing is written", forms)
	}
	if q := commas(c); q != nil {
		return Reading{}, q
	}
	minus := c.is(0, dash)
	if minus {
		if !signed {
			return Reading{}, ask(s, "", "a minus has no meaning here", "the length without it")
		}
		c.at++
	}
	qs, bad := quantities(c)
	if bad != nil {
		return Reading{}, bad
	}
	r, bad := compose(s, qs, bare)
	if minus {
		r.Value = -r.Value
	}
	return r, bad
}

// quantities reads all numbers of the text with their units.
func quantities(c *cursor) ([]quantity, *Question) {
	var out []quantity
	for c.at < len(c.toks) {
		if len(out) > 0 && c.is(0, dash) && out[len(out)-1].unit == UnitFoot {
			c.at++ // 12'-7"
		}
		q, bad := c.quantity()
		if bad != nil {
			return nil, bad
		}
		out = append(out, q)
	}
	if len(out) == 0 {
		return nil, ask(c.text, "", "there is no number", forms)
	}
	return out, nil
}

// compose makes one reading of the numbers of a text.
func compose(s string, qs []quantity, bare Unit) (Reading, *Question) {
	if len(qs) == 1 {
		return single(s, qs[0], bare)
	}
	ft, in := qs[0], qs[1]
	switch {
	case len(qs) > 2 || ft.unit != UnitFoot:
		return Reading{}, ask(s, list(qs), "these are several numbers where one length was looked for", forms)
	case in.unit == "":
		return Reading{}, ask(s, ft.text+" and "+in.text+" of something", "the unit of "+in.text+" is missing", ft.text+" "+in.text+`"`)
	case in.unit != UnitInch:
		return Reading{}, ask(s, list(qs), "feet go with inches", forms)
	case !ft.value.IsInt() || ft.places > 0:
		return Reading{}, ask(s, list(qs), "feet before inches are whole", forms)
	case in.value.Cmp(big.NewRat(12, 1)) >= 0:
		return Reading{}, over(s, ft, in)
	}
	total := new(big.Rat).Mul(ft.value, big.NewRat(12, 1))
	total.Add(total, in.value)
	in.value = total
	return single(s, in, UnitInch)
}

// over asks about 12' 13": a slip of the pen, or 13' 1"?
func over(s string, ft, in quantity) *Question {
	sum := new(big.Rat).Mul(ft.value, big.NewRat(12, 1))
	sum.Add(sum, in.value)
	accept := "the feet and less than 12 in"
	if l, ok := toTicks(sum, Inch); ok {
		accept = (Style{Unit: UnitFoot, Step: SixtyFourth}).Of(l) + " if that is meant, or else the figure on the tape"
	}
	return ask(s, list([]quantity{ft, in}), in.text+" is a foot or more", accept)
}

// single makes a reading of one number.
func single(s string, q quantity, bare Unit) (Reading, *Question) {
	u := q.unit
	if u == "" {
		u = bare
	}
	one := u.One()
	switch {
	case one == 0:
		return Reading{}, ask(s, "", "the unit is missing", q.text+" in, "+q.text+" ft, "+q.text+" mm, "+q.text+" cm or "+q.text+" m")
	case q.den > 1 && !u.Imperial():
		return Reading{}, ask(s, q.text+" "+string(u), "fractions belong to the inch tape", q.amountText()+`" if inches are meant, or a decimal number of `+string(u))
	}
	l, ok := toTicks(q.value, one)
	if !ok {
		return Reading{}, ask(s, "", "that is farther than any floor: the most is 200 m (656 ft)", "a shorter length")
	}
	return Reading{l, q.step(u)}, nil
}

// amountText is the number as written, without its unit.
func (q quantity) amountText() string {
	return strings.TrimRight(q.text, `'" abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ`)
}

// toTicks is v times one, rounded to the nearest tick; not ok above Longest.
func toTicks(v *big.Rat, one Length) (Length, bool) {
	x := new(big.Rat).Mul(v, new(big.Rat).SetInt64(int64(one)))
	if x.Cmp(new(big.Rat).SetInt64(int64(Longest))) > 0 {
		return 0, false
	}
	return Length(nearest(x)), true
}

// nearest is the whole number nearest to x, which is not negative; halves go
// up.
func nearest(x *big.Rat) int64 {
	n := new(big.Int).Lsh(x.Num(), 1)
	n.Add(n, x.Denom())
	n.Quo(n, new(big.Int).Lsh(x.Denom(), 1))
	return n.Int64()
}

// step is the step that q, in unit u, was read to.
func (q quantity) step(u Unit) Length {
	if q.den > 1 {
		return min(Inch, u.One()/Length(q.den))
	}
	step := u.One()
	for i := 0; i < q.places && step > 1; i++ {
		step /= 10
	}
	if u.Imperial() {
		if l, ok := toTicks(q.value, u.One()); ok && q.places >= 2 {
			if m := coarsest(l); m > 0 {
				step = m
			}
		}
		return max(Tick, min(step, Inch))
	}
	return max(Tick, min(step, 100*Millimetre))
}

// coarsest is the coarsest mark of an inch tape that l falls on, 0 for none.
func coarsest(l Length) Length {
	for m := Inch; m >= SixtyFourth; m /= 2 {
		if l%m == 0 {
			return m
		}
	}
	return 0
}

// list is what was read, in words.
func list(qs []quantity) string {
	parts := make([]string, len(qs))
	for i, q := range qs {
		parts[i] = q.text
	}
	return strings.Join(parts, " and ")
}

// commas asks about a comma, which is a decimal sign here and a separator of
// thousands there.
func commas(c *cursor) *Question {
	for _, t := range c.toks {
		if t.kind != comma {
			continue
		}
		point, none := strings.ReplaceAll(c.text, ",", "."), strings.ReplaceAll(c.text, ",", "")
		accept := ""
		if _, q := parse(point, UnitMillimetre, true); q == nil {
			accept = point + " if the comma is a decimal sign"
		}
		if i := strings.IndexByte(c.text, ','); i+3 < len(c.text) && digits(c.text[i+1:i+4]) {
			if accept != "" {
				accept += ", "
			}
			accept += none + " if it parts thousands"
		}
		if accept == "" {
			accept = "a decimal point, and thousands without a sign"
		}
		return ask(c.text, "", "a comma can be read two ways", accept)
	}
	return nil
}

// digits tells whether all of s is digits.
func digits(s string) bool {
	for i := 0; i < len(s); i++ {
		if !digit(s[i]) {
			return false
		}
	}
	return s != ""
}
