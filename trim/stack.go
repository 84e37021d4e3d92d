package trim

import (
	"strings"

	"strake/tape"
)

// felt is how thick number 15 felt and its like are taken for.
const felt = tape.Inch / 32

// Stack is the new floor's layers, from the subfloor up.
type Stack []Layer

// Height is how high the stack's top lies over the subfloor.
func (s Stack) Height() tape.Length {
	var h tape.Length
	for _, l := range s {
		h += l.Thickness
	}
	return h
}

// Build is boards of a thickness on a panel of a thickness, 0 none.
type Build struct{ Board, Panel tape.Length }

// chosen is the build-up of the job.
func (w work) chosen() Build { return Build{w.f.Board, w.job.Panel} }

// stack is a build-up with its sheet, and what is shimmed at a place.
func (w work) stack(b Build, shim tape.Length) Stack {
	var s Stack
	add := func(what string, t tape.Length) {
		if t != 0 {
			s = append(s, Layer{what, t})
		}
	}
	add("shim", shim)
	add("panel", b.Panel)
	add("sheet", w.sheet())
	add("board", b.Board)
	return s
}

// sheet is the thickness of what is rolled out under the boards.
func (w work) sheet() tape.Length { return w.job.SheetUnder(w.f.Felt) }

// SheetUnder is the thickness of what is rolled out under the boards; rolled tells
// that felt or paper is, where the job gives no thickness.
func (j Job) SheetUnder(rolled bool) tape.Length {
	if !j.SheetTold && rolled {
		return felt
	}
	return j.Sheet
}

// words are the layers with their thickness, from the subfloor up.
func (w work) words(s Stack) string {
	var out []string
	for _, l := range s {
		out = append(out, l.What+" "+w.say(l.Thickness))
	}
	return strings.Join(out, ", ")
}
