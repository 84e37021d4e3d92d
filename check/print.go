package check

import (
	"math/big"
	"strconv"
	"strings"

	"strake/stock"
	"strake/tape"
)

// styleFor prints in the tape that the boards are made by: inches where the
// face is a whole number of 1/64 in, else millimetres.
func styleFor(b stock.Boards) tape.Style {
	if b.Face%tape.SixtyFourth == 0 {
		return tape.Style{Unit: tape.UnitInch, Step: tape.SixtyFourth}
	}
	return tape.Style{Unit: tape.UnitMillimetre, Step: tape.Millimetre / 10}
}

// say prints a length. One that lies between the marks of the tape is told
// exactly too, so that a tick too little does not read as enough.
func (s *site) say(l tape.Length) string {
	if l > 1000*tape.Longest || l < -1000*tape.Longest {
		return "no length at all (" + strconv.FormatInt(int64(l), 10) + " ticks)"
	}
	if l%s.tape.Step == 0 {
		return s.tape.Of(l)
	}
	exact := l.String()
	if s.tape.Unit.Imperial() {
		exact = strings.TrimRight(big.NewRat(int64(l), int64(tape.Inch)).FloatString(6), "0") + `"`
	}
	return "about " + s.tape.Of(l) + " (" + exact + ")"
}

// sayArea prints an area in square inches or square millimetres.
func (s *site) sayArea(a *big.Rat) string {
	one, unit := tape.Inch, " sq in"
	if !s.tape.Unit.Imperial() {
		one, unit = tape.Millimetre, " sq mm"
	}
	v := new(big.Rat).Quo(a, rat(one))
	v.Quo(v, rat(one))
	if v.Sign() > 0 && v.Cmp(big.NewRat(1, 100)) < 0 {
		return "under 0.01" + unit
	}
	return v.FloatString(2) + unit
}
