package fasten

import (
	"math"

	"strake/tape"
)

// Entry is about how high over the subfloor a fastener enters above the tongue:
// 0.54 in for a 3/4 in board, in proportion for others.
func Entry(thickness tape.Length) tape.Length { return thickness * 18 / 25 }

// Tip is how deep the tip of one through the tongue ends below the top of the
// subfloor; under 0 it does not reach it. Paper and the like under the boards
// lift the entry by their thickness.
func (u Use) Tip(paper tape.Length) tape.Length {
	down := float64(u.Length) * math.Sin(u.Slant*math.Pi/180)
	return tape.Length(math.Round(down)) - u.Entry - paper
}

// Out is how far the tip comes out below a subfloor of a thickness, 0 where it
// stays in.
func (u Use) Out(paper, subfloor tape.Length) tape.Length { return max(0, u.Tip(paper)-subfloor) }

// Hidden tells whether what covers an edge also hides the heads of nails through
// the face: the gap at the wall and the nails' distance from the board's edge
// come to no more than the cover is wide, its own shadow of 1/8 in left.
func (u Use) Hidden(gap, cover tape.Length) bool { return gap+u.Edge+tape.Eighth <= cover }
