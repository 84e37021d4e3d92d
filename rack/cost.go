package rack

import (
	"slices"

	"strake/tape"
)

// Costs are ordered: one H-joint outweighs all that the levels under it can
// add up to in a run, and so on down. A run has at most some 30 joints.
const (
	costH         int64 = 1 << 50         // a joint in line with one two runs back,
	costCluster         = costH - costH/8 // with the H-joints, the lesser of two that cannot both be had
	costNear      int64 = 1 << 42         // a joint under the preferred distance
	costShort     int64 = 1 << 33         // each inch it falls short of it
	costWaste     int64 = 1 << 20         // each 1/16 in of scrap and kerf; a crosscut counts an inch
	costStair     int64 = 1 << 15         // the same shift again
	costLength    int64 = 1 << 6          // evenness: each inch, scaled by use
	impossible    int64 = 1 << 62
	woodShift           = 30            // wood first: waste goes up so far,
	looksShift          = 6             // and joints go down so far, so that it outweighs them all
	crosscut            = 1 * tape.Inch // what a measured crosscut counts as waste
	shortRun            = 4 * tape.Foot // a doorway, a closet: better one piece
	shortJoint          = 4 * tape.Inch // what a joint there counts as waste
	tongueOffCost       = costWaste / 4 // taking a tongue off is no measured cut, but work
	keepCost            = 2 * costWaste // an offcut kept is one more piece lying about
	useBonus            = 3 * costWaste // an offcut used is one less
)

// waste is the cost of so much board lost.
func (s shop) waste(l tape.Length) int64 {
	c := costWaste * int64((l+tape.Sixteenth-1)/tape.Sixteenth)
	if s.woodFirst {
		c <<= woodShift
	}
	return c
}

// near is the cost of a joint at this distance from one in the row behind.
func (s shop) near(d, least tape.Length) int64 {
	switch {
	case d < least:
		return impossible
	case d < s.preferred:
		return s.looks(costNear + costShort*int64(s.preferred-d)/int64(tape.Inch))
	}
	return 0
}

// looks is the cost of a joint that is not well placed.
func (s shop) looks(c int64) int64 {
	if s.woodFirst {
		c >>= looksShift
	}
	return c
}

// stairs counts the joints behind that p continues by the same shift.
func (s shop) stairs(p tape.Length, b behind) int64 {
	var c int64
	i, _ := slices.BinarySearch(b.one, p-s.stairFarthest)
	for ; i < len(b.one) && b.one[i] <= p+s.stairFarthest; i++ {
		shift := p - b.one[i]
		if nearest(b.two, b.one[i]-shift) <= s.stairReach {
			c += costStair
		}
	}
	return c
}

// nearest is the distance from p to the nearest of sorted places.
func nearest(at []tape.Length, p tape.Length) tape.Length {
	d := tape.Longest
	i, _ := slices.BinarySearch(at, p)
	if i < len(at) {
		d = at[i] - p
	}
	if i > 0 {
		d = min(d, p-at[i-1])
	}
	return d
}
