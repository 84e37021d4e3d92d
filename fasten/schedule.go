package fasten

import "strake/tape"

// Kind is a kind of fastener.
type Kind string

// The kinds.
const (
	Cleat  Kind = "cleat"
	Staple Kind = "staple"
	Brad   Kind = "brad" // a flooring brad, straight through the face
)

// Schedule is a row of the fastening schedule: what boards of a thickness and
// width take. Lengths from and to are the range the schedule gives.
type Schedule struct {
	Flooring               string
	Cleat, Staple          string      // gauges; "" where that kind does not go
	Least                  tape.Length // of a fastener
	SpacingFrom, SpacingTo tape.Length // along a board
	EndFrom, EndTo         tape.Length // from each end of a board
	PerBoard               int         // at least
	TopNailed              bool        // through the face of square-edged boards, one for each inch of width
	Source                 string
}

const (
	srcNWFA  = "NWFA fastener schedule, 2019, as reprinted by Hardwood Floors, Aug/Sep 2025; the maker's own first"
	srcTwoIn = "common practice, no source: 2 in fasteners for 3/4 in boards on a wood subfloor"
	srcShort = "common practice: 1-1/2 in where the tip must not come out below"
	SrcGlue  = "NWFA as quoted by Floor Covering Installer and Hardwood Floors (Nov 2020): glue-assist for boards wider than 5 in"
	SrcEnds  = "common practice, no source: a nail within 1 in of a board's end is given a pilot hole; the shortest board still takes two"
	SrcFace  = "common practice, no source: about 1/2 in from the edge at the wall (1/4 to 1/2 in, from memory, where base and shoe hide them only then), pre-drilled, set and filled"
	SrcBox   = "from memory: cleats come in boxes of 1,000 and 5,000, staples of 5,000"
	SrcTip   = "geometry; how high a fastener enters (0.54 in over the subfloor for a 3/4 in board) is common practice, no source"
)

const (
	half    = tape.Inch / 2
	quarter = tape.Inch / 4
)

// Nearest is how near to a board's edge a nail goes through its face at most.
const Nearest = quarter

// made is how much thinner a board may be than its name: 3/4 in ones are made
// down to 23/32.
const made = tape.Inch / 32

// thickest is what the schedule's 3/4 in rows are let stand for: a little over
// what 20 mm boards are.
const thickest = 7 * tape.Eighth

// Strip is the face under which boards are called strip, Wide that over which
// they are called wide plank and are glued besides.
const (
	Strip = 3 * tape.Inch
	Wide  = 5 * tape.Inch
)

// ScheduleFor is the row for tongued boards of a thickness and face; ok is false
// for boards thicker than any in it, or of no known thickness.
func ScheduleFor(thickness, face tape.Length, engineered bool) (s Schedule, ok bool) {
	in := tape.Inch
	s = Schedule{PerBoard: 2, Least: 3 * half, SpacingFrom: 6 * in, SpacingTo: 8 * in, EndFrom: in, EndTo: 3 * in, Source: srcNWFA,
		Cleat: "16 to 18 gauge", Staple: "15.5 gauge"}
	thin := func() {
		s.Cleat, s.Staple, s.Least = "18 to 20 gauge", "narrow crown", 5*quarter
		s.SpacingFrom, s.SpacingTo, s.EndFrom, s.EndTo = 3*in, 4*in, in, 2*in
	}
	switch {
	case thickness <= 0:
		return Schedule{}, false
	case engineered && thickness < 5*tape.Eighth-made/2:
		s.Flooring = "engineered, under 5/8 in"
		thin()
	case engineered:
		s.Flooring = "engineered, 5/8 in and over"
	case thickness > thickest:
		return Schedule{}, false
	case thickness >= 3*quarter-made:
		s.Flooring = "solid plank, 3/4 in, 3 in and wider"
		if face < Strip {
			s.Flooring = "solid strip, 3/4 in, under 3 in"
			s.SpacingFrom, s.SpacingTo = 8*in, 10*in
		}
	case thickness > half:
		s.Flooring = "solid, over 1/2 in and under 3/4 in"
		s.Cleat, s.Staple = "18 gauge", "18 gauge"
	default:
		s.Flooring = "solid, 1/2 in and under"
		thin()
	}
	return s, true
}

// SquareEdged is the row for 5/16 in square-edged boards, nailed through the face.
func SquareEdged() Schedule {
	return Schedule{Flooring: "square-edged, 5/16 in, nailed through the face", Cleat: "15 gauge brad", Least: tape.Inch,
		SpacingFrom: 13 * half, SpacingTo: 7 * tape.Inch, TopNailed: true, Source: srcNWFA}
}

// Glue tells whether boards of this face are glued besides.
func Glue(face tape.Length) bool { return face > Wide }

// Use is what is used on a floor: the schedule with a choice made.
type Use struct {
	Kind     Kind
	Length   tape.Length
	Spacing  tape.Length // at most, along a board
	End      tape.Length // from each end of a board
	PerBoard int         // at least
	Slant    float64     // degrees from level, of those through the tongue
	Entry    tape.Length // of those, above the subfloor
	Edge     tape.Length // of those through the face, from the board's edge
	Source   string
	Joists   Joists // those through the face stand over them; zero: not known where they lie
}

// Chosen is the usual choice out of a schedule: the widest spacing it allows, the
// middle of its range for ends, 2 in for 3/4 in boards, or what keeps the tip
// above the underside where there is something below (short).
func Chosen(s Schedule, kind Kind, thickness tape.Length, short bool) Use {
	u := Use{Kind: kind, Length: s.Least, Spacing: s.SpacingTo, End: (s.EndFrom + s.EndTo) / 2, PerBoard: s.PerBoard,
		Slant: 45, Entry: Entry(thickness), Edge: half, Source: s.Source}
	if s.Least == 3*half && thickness >= 3*quarter-made {
		if u.Length, u.Source = 2*tape.Inch, srcTwoIn; short {
			u.Length, u.Source = 3*half, srcShort
		}
	}
	return u
}

// Box is how many of a kind are sold together.
func Box(k Kind) int {
	if k == Staple {
		return 5000
	}
	return 1000
}

// Boxes is how many boxes n fasteners take with some to spare for bent and lost
// ones: 5 % (common practice, no source).
func Boxes(n, box int) int {
	if n <= 0 || box <= 0 {
		return 0
	}
	return (n + (n+19)/20 + box - 1) / box
}
