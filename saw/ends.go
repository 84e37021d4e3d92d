package saw

import (
	"strake/lay"
	"strake/stock"
	"strake/tape"
)

// SawnEnd tells whether the left or the right end of a piece was made by the
// saw, also where it was grooved on the job afterwards: to take a spline, or
// the tongue of a header.
func SawnEnd(p lay.Piece, left bool, board tape.Length, hand stock.Hand) bool {
	switch end(p, left) {
	case lay.Cut:
		return true
	case lay.Spline, lay.Groove:
		lo, hi := p.InBoard.Box()
		at := hi.X
		if left != p.Turned {
			at = lo.X
		}
		if hand == stock.LeftHand {
			return at != board
		}
		return at != 0
	}
	return false
}

func end(p lay.Piece, left bool) lay.Profile {
	if left {
		return p.Left
	}
	return p.Right
}
