package tape

import (
	"math/big"
	"strings"
)

// quantity is one number with its unit, as written: the 12' or the 7-3/8" of
// 12' 7-3/8".
type quantity struct {
	value  *big.Rat
	den    int64 // denominator as written, 1 without a fraction
	places int   // decimal places as written
	unit   Unit  // "" when bare
	text   string
}

// units are the words for a unit, in lower case.
var units = map[string]Unit{
	"'": UnitFoot, "ft": UnitFoot, "foot": UnitFoot, "feet": UnitFoot,
	`"`: UnitInch, "in": UnitInch, "inch": UnitInch, "inches": UnitInch, "ins": UnitInch,
	"mm": UnitMillimetre, "cm": UnitCentimetre, "m": UnitMetre,
	"millimetre": UnitMillimetre, "millimetres": UnitMillimetre, "millimeter": UnitMillimetre, "millimeters": UnitMillimetre,
	"centimetre": UnitCentimetre, "centimetres": UnitCentimetre, "centimeter": UnitCentimetre, "centimeters": UnitCentimetre,
	"metre": UnitMetre, "metres": UnitMetre, "meter": UnitMetre, "meters": UnitMetre,
}

// One is the length of one u, 0 for a unit that is not known.
func (u Unit) One() Length {
	switch u {
	case UnitInch:
		return Inch
	case UnitFoot:
		return Foot
	case UnitMillimetre:
		return Millimetre
	case UnitCentimetre:
		return Centimetre
	case UnitMetre:
		return Metre
	}
	return 0
}

// cursor walks the tokens of one text.
type cursor struct {
	text string
	toks []token
	at   int
}

// is tells whether the token i places ahead is of kind k.
func (c *cursor) is(i int, k kind) bool {
	return c.at+i < len(c.toks) && c.toks[c.at+i].kind == k
}

// tight tells whether no space stands before the token i places ahead.
func (c *cursor) tight(i int) bool { return !c.toks[c.at+i].space }

func (c *cursor) peek(i int) string { return c.toks[c.at+i].text }

// quantity reads one number and its unit.
func (c *cursor) quantity() (quantity, *Question) {
	start := c.at
	q, bad := c.amount()
	if bad != nil {
		return q, bad
	}
	if c.is(0, word) {
		u, ok := units[strings.ToLower(c.peek(0))]
		if !ok {
			return q, ask(c.text, "", "“"+c.peek(0)+"” is no unit of a tape", `in, ft, ', ", mm, cm or m after the number`)
		}
		q.unit = u
		c.at++
		if c.is(0, unknown) && c.peek(0) == "." { // 12 ft. 7 in.
			c.at++
		}
	}
	q.text = join(c.toks[start:c.at])
	return q, nil
}

// amount reads a number with its fraction: 7, 7.5, 3/8, ⅜, 7⅜, 7 3/8, 7-3/8.
func (c *cursor) amount() (quantity, *Question) {
	q := quantity{value: new(big.Rat), den: 1}
	f, n := c.part()
	if n == 0 {
		if !c.is(0, number) {
			return q, ask(c.text, "", "there is no number where one was looked for", forms)
		}
		num := c.peek(0)
		q.value.SetString(zeroed(num))
		if i := strings.IndexByte(num, '.'); i >= 0 {
			q.places = len(num) - i - 1
		}
		c.at++
		if f, n = c.part(); n == 0 {
			return q, nil
		}
	}
	bad := c.fraction(&q, f)
	c.at += n
	return q, bad
}

// part is the fraction that comes next, with or without the dash that ties it
// to whole inches before it, and its number of tokens; 0 when none comes next.
func (c *cursor) part() (string, int) {
	n := 0
	if c.at > 0 && c.is(0, dash) && c.is(-1, number) && c.at+1 < len(c.toks) && c.tight(0) && c.tight(1) {
		n = 1
	}
	switch {
	case c.is(n, glyph):
		return c.peek(n), n + 1
	case c.is(n, number) && c.is(n+1, slash) && c.is(n+2, number):
		return c.peek(n) + "/" + c.peek(n+2), n + 3
	}
	return "", 0
}

// fraction adds the fraction f to q.
func (c *cursor) fraction(q *quantity, f string) *Question {
	if q.places > 0 || strings.Contains(f, ".") {
		return ask(c.text, "", "a decimal point and a fraction do not go together", `7-3/8" or 7.375 in`)
	}
	num, den, _ := strings.Cut(f, "/")
	top, ok1 := new(big.Int).SetString(num, 10)
	under, ok2 := new(big.Int).SetString(den, 10)
	if !ok1 || !ok2 || !under.IsInt64() || !mark(under.Int64()) {
		return ask(c.text, "", f+" is no mark of a tape", "halves, quarters, eighths, sixteenths, thirty-seconds or sixty-fourths, or a decimal number")
	}
	if top.Cmp(under) >= 0 {
		return ask(c.text, "", f+" is not less than one", `the whole inches before the fraction, such as 1-1/8"`)
	}
	q.den = under.Int64()
	q.value.Add(q.value, new(big.Rat).SetFrac(top, under))
	return nil
}

// mark tells whether d divides an inch on a tape.
func mark(d int64) bool {
	switch d {
	case 2, 4, 8, 16, 32, 64:
		return true
	}
	return false
}

// zeroed is the number n with a 0 before a leading point.
func zeroed(n string) string {
	if strings.HasPrefix(n, ".") {
		return "0" + n
	}
	return n
}

// join writes tokens as they stood.
func join(toks []token) string {
	var b strings.Builder
	for i, t := range toks {
		if t.space && i > 0 {
			b.WriteByte(' ')
		}
		b.WriteString(t.text)
	}
	return b.String()
}
