package method

import (
	"fmt"
	"slices"

	"strake/lay"
)

func nailByHand(f facts) Card {
	return Card{Name: "nail-by-hand", Title: "Nail by hand near a wall",
		Why: "The floor nailer wants room for its foot and the mallet's swing: first and last rows and corners are nailed by hand." + f.byHand(),
		Steps: []string{
			"Push the board home, joint tight. Mark the nails in pencil: " + f.spaced() + ".",
			"Drill a pilot hole at 45 degrees from the corner above the tongue, down and back under the board: the bit a little thinner than the nail, the hole as deep as the board is thick.",
			"Drive the nail till its head is a nail's thickness off the wood. A hammer that touches the edge bruises it.",
			"Send it home with the nail set, flush with the slant, tongue whole: a scrap's groove closes over it.",
			"Along the wall through the face too, where base and shoe hide it: " + f.faceEdge() + " from the edge, drilled, straight down, set, filled" + f.joists() + ".",
			"A nail within " + f.inches(inch) + " of a board's end is always drilled. The shortest piece still takes " + number(f.use.PerBoard) + ".",
			"Nails of a finish gun hold less than cleats: closer, " + f.inches(4*inch) + " to " + f.inches(5*inch) + " apart.",
		},
		Caution: f.cautions("safety glasses; hearing protection with a gun or a drill; knee pads", nil, keepOut),
		Sources: f.sources(true, srcAngle+"; "+srcFace, srcFinish),
		Figures: []Figure{f.pilotFigure(), f.driveFigure(), f.setFigure(), f.wallFigure()},
	}
}

// faceEdge is how far from the edge nails go through the face.
func (f facts) faceEdge() string {
	if f.use.Edge <= 0 {
		return "as the maker says"
	}
	return f.say.Of(f.use.Edge)
}

func (f facts) joists() string {
	if f.use.Joists.Spacing == 0 {
		return "; into joists where you know them"
	}
	return "; into the joists, " + f.say.Of(f.use.Joists.Spacing) + " apart, where the row crosses them"
}

// byHand says which rows of the plan are nailed by hand, where they are few enough
// to be named, and how many nails it takes.
func (f facts) byHand() string {
	if f.count.Hand+f.count.Face == 0 {
		return ""
	}
	var rows []int
	for _, r := range f.Lay.Runs {
		if slices.ContainsFunc(r.Nailing, func(s lay.Stretch) bool { return s.By != lay.Nailer }) {
			rows = append(rows, r.Row)
		}
	}
	slices.Sort(rows)
	where := "the rows are named on the page Fasteners"
	if named := spans(slices.Compact(rows)); len(named) <= 4 {
		where = "in rows " + list(named)
	}
	return fmt.Sprintf(" Here: %d through the tongue and %d through the face, %s.", f.count.Hand, f.count.Face, where)
}

// spans are rising numbers with those that follow each other in one: 1 to 4, 9.
func spans(ns []int) []string {
	var out []string
	for i := 0; i < len(ns); {
		k := i
		for k+1 < len(ns) && ns[k+1] == ns[k]+1 {
			k++
		}
		s := fmt.Sprint(ns[i])
		if k > i {
			s += " to " + fmt.Sprint(ns[k])
		}
		out = append(out, s)
		i = k + 1
	}
	return out
}

// number is how many nails the shortest piece takes, in words: two where nothing
// else is known.
func number(n int) string {
	if s := map[int]string{1: "one", 3: "three", 4: "four"}[n]; s != "" {
		return s
	}
	return "two"
}
