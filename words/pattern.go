package words

import (
	"strings"

	"strake/plan"
	"strake/tape"
)

// PatternText says in which order rows of several face widths follow each
// other, from row 1 on; "" where all are of one.
func PatternText(p plan.Plan, s Lengths) string {
	runs := p.Layout.Runs
	if len(p.Job.Boards.Widths) == 0 || len(runs) == 0 {
		return ""
	}
	c := p.Layout.Courses()
	var faces []string
	for i, first := 0, c.Row(runs[0].Low); i < len(c.Widths); i++ {
		faces = append(faces, s.Rip(Face(p, c.Width(first+i))))
	}
	return "Faces of the rows from row 1 on, over and over: " + strings.Join(faces, ", ")
}

// Face is the face width of the boards that rows of a width are laid with.
func Face(p plan.Plan, width tape.Length) tape.Length {
	b, _ := p.Job.Boards.OfPitch(width)
	return b.Face
}
