// Package limits is what a lay must keep: how far apart end joints lie, how
// short a piece and how narrow a rip may be, how wide the gap at a wall is.
//
// Each figure carries its source into every output. For a 5 in board, 3/4 in
// thick, end joints keep 6 in apart at least and 8 in by preference, no end
// piece is under 8 in, no rip under 2 in, and walls keep a gap of 3/4 in. The
// maker's figure replaces any of them, and local code replaces the maker's.
package limits

import "strake/tape"

// Figure is one limit with where it comes from.
type Figure struct {
	Value  tape.Length
	Source string
}

// Limits are the figures that a lay is held to.
type Limits struct {
	JointMin           Figure // end joints of neighbouring runs: at least this far apart
	JointPreferred     Figure // end joints of neighbouring runs: better this far apart
	ShortestPiece      Figure // no piece at an end of a run shorter than this
	NarrowestRip       Figure // no rip at a closing edge narrower than this; see RipFrom
	Kerf               Figure // what the saw blade takes
	GapLeast           Figure // least gap at an edge that cannot move
	Lap                Figure // what covers an edge laps over the board by this
	EndFit             Figure // how far a row end may vary where the cover leaves no play: no end is cut closer
	JambLeast          Figure // undercut jamb: nearest a board end comes to the face (negative: behind it)
	JambGreatest       Figure // undercut jamb: farthest from the face towards the room (negative: still behind it)
	FlushEnd           Figure // row end flush against tile or stone: a fine joint
	FlushSide          Figure // row flush beside tile or stone: a soft joint
	TransitionLeast    Figure // under a transition: least gap to the other floor
	TransitionGreatest Figure // under a transition: greatest gap its flange covers
	NailerBehind       Figure // a floor nailer wants so much floor behind the tongue edge
	NailerAhead        Figure // and so much room ahead of it, for the mallet
	HReach             Figure // H-joint: in line within this with a joint two rows back
	StairReach         Figure // stair-step: the same shift twice running, within this
	StairFarthest      Figure // and no larger than this
	WideFloor          Figure // across more boards than this a start in the middle is worth a thought

	// Widest is the row width of the widest boards, where there are several widths.
	Widest tape.Length
}

// Where the default figures come from.
const (
	srcJoint   = "NWFA rule of thumb (2008 text, as quoted by its technical adviser in Wood Floor Business): strip 6 in, 3 to 5 in plank 8 in, wider 10 in"
	srcJointMn = "NOFMA tip sheet: joints closer than 6 in are picked out while racking"
	srcShort   = "common practice, no source: 8 in (MFMA and NOFMA mill nothing under 9 in)"
	srcRip     = "common practice, no source: half a board or 2 in, the smaller"
	srcKerf    = "common practice, no source: a 1/8 in blade"
	srcGap     = "US trade practice, makers' instructions: gap not less than the board's thickness"
	srcLap     = "common practice, no source: cover laps the board by 1/4 in"
	srcFit     = "common practice, no source: nobody cuts a row end closer than 1/16 in"
	srcJamb    = "common practice, no source: boards slide 1/4 to 1/2 in under an undercut jamb"
	srcFlush   = "common practice, no source: fine joint at tile or stone, cut in place"
	srcSoft    = "from memory: soft joint (cork or sealant) of 1/4 in beside tile or stone; the maker's figure first"
	srcTrans   = "from memory: a transition wants 3/8 in to either side and its flange covers 5/8 in; the maker's figure first"
	srcLooks   = "common craft figure, no source: what the eye takes for a line or a stair"
	srcWide    = "from memory: beyond about 20 ft across the boards a floor is started in the middle, or spacer rows are left; the maker's figure first"
	srcNailer  = "from memory: a floor nailer with its mallet wants 8 in behind the tongue edge and 12 in ahead; try yours"
)

// MillShortest is the shortest piece a mill bundles (MFMA grading rules, also
// quoted for NOFMA): the value to use when the mill's rule is chosen.
const MillShortest = 9 * tape.Inch

// Default is the set of figures for boards of this face width and thickness.
func Default(face, thickness tape.Length) Limits {
	preferred := 6 * tape.Inch
	switch {
	case face > 5*tape.Inch:
		preferred = 10 * tape.Inch
	case face >= 3*tape.Inch:
		preferred = 8 * tape.Inch
	}
	return Limits{
		JointMin:           Figure{6 * tape.Inch, srcJointMn},
		JointPreferred:     Figure{preferred, srcJoint},
		ShortestPiece:      Figure{8 * tape.Inch, srcShort},
		NarrowestRip:       Figure{min(face/2, 2*tape.Inch), srcRip},
		Kerf:               Figure{tape.Eighth, srcKerf},
		GapLeast:           Figure{thickness, srcGap},
		Lap:                Figure{tape.Inch / 4, srcLap},
		EndFit:             Figure{tape.Sixteenth, srcFit},
		JambLeast:          Figure{-tape.Inch / 2, srcJamb},
		JambGreatest:       Figure{-tape.Inch / 4, srcJamb},
		FlushEnd:           Figure{tape.Sixteenth, srcFlush},
		FlushSide:          Figure{tape.Inch / 4, srcSoft},
		TransitionLeast:    Figure{3 * tape.Eighth, srcTrans},
		TransitionGreatest: Figure{5 * tape.Eighth, srcTrans},
		NailerBehind:       Figure{8 * tape.Inch, srcNailer},
		NailerAhead:        Figure{12 * tape.Inch, srcNailer},
		HReach:             Figure{2 * tape.Inch, srcLooks},
		StairReach:         Figure{1 * tape.Inch, srcLooks},
		StairFarthest:      Figure{14 * tape.Inch, srcLooks},
		WideFloor:          Figure{20 * tape.Foot, srcWide},
	}
}

// RipFrom is the narrowest rip from a board of this row width. Where there are
// boards of several widths the figure is for the widest; of a narrower one half
// a board will do.
func (l Limits) RipFrom(width tape.Length) tape.Length {
	if width >= l.Widest {
		return l.NarrowestRip.Value
	}
	return min(l.NarrowestRip.Value, width/2)
}
