package method

import (
	"fmt"

	"strake/section"
	"strake/sheet"
	"strake/stock"
	"strake/tape"
)

func rackAhead(f facts) Card {
	which := "Row by row from the row cards: pieces in their order, left to right, each with its tongue away from you."
	if f.Lay.Example || f.Job.Boards.Known == stock.MixOnly || f.Job.Boards.Known == stock.Unknown {
		which = "The lengths on the row cards are an example: choose boards as they come, tongues away from you, by what is said below."
	}
	third := "No H (two joints in line with one row between), no stairs (the same step row after row), no cluster. Swap two boards of one row and look again."
	if f.pattern() > 0 {
		third = "Joints move by " + f.say.Of(f.pattern()) + " from row to row, as planned: a row that is off is put right before it is nailed."
	}
	return Card{Name: "rack-ahead", Title: "Rack a few rows ahead",
		Why: "Boards set out loose ahead of the nailer can still be swapped; nailed ones cannot. Joints, colours and faults are judged standing up, over several rows at once.",
		Steps: []string{
			"Open four or five cartons and mix from all of them. Check the lots: all alike.",
			"Lay the next six to ten rows loose, about a hand apart, each row near its place.",
			which,
			"End joints of neighbouring rows: at least " + f.say.Of(f.lim.JointMin.Value) + " apart, better " + f.say.Of(f.lim.JointPreferred.Value) + ". No end piece under " + f.say.Of(f.lim.ShortestPiece.Value) + ".",
			third,
			"Faults: a bad end is cut off and the rest used at a row's end; a twisted board, a broken tongue or groove is set aside and counted.",
			"Stand up, step back, look along the light. Too many dark or short ones together: swap now.",
			"Then mark all cuts of these rows, and walk to the saw once (cut list). Number pieces on the back: row and place.",
		},
		Caution: f.cautions("gloves for splinters, none near the saw; knee pads",
			[]string{"Loose boards slide and trip: leave a way through that nobody has to step over.", "Cartons open only as they are used: boards change with the air."}, lifting),
		Sources: []string{"joints: " + f.lim.JointMin.Source + "; " + f.lim.JointPreferred.Source, "end pieces: " + f.lim.ShortestPiece.Source, "cartons mixed, rows ahead: uptownfloors.com and kaprizhardwoodfloors.com; the rest: " + common},
		Figures: append([]Figure{f.looseFigure()}, f.jointFigures()...),
	}
}

// pattern is how far joints move from row to row where boards of one length lie in
// a fixed pattern; else 0.
func (f facts) pattern() tape.Length {
	if b := f.Job.Boards; b.Shift.Fixed() {
		return b.Shift.Of(b.One)
	}
	return 0
}

func (f facts) looseFigure() Figure {
	c := f.at(full)
	const x1 = 116.0
	c.planRow(0, x1, 0, 6, 50)
	c.planRow(0, x1, 6, 12, 26, 84)
	c.planTongue(0, x1, 12, true)
	for i, joints := range [][]float64{{62}, {36, 92}, {18, 74}} {
		y := 17 + 9*float64(i)
		from := 1.5 * float64(i)
		for _, j := range append(joints, x1-2) {
			c.Area("", sheet.White, section.Visible, section.Rect(from, y, j, y+6)...)
			c.planTongue(from, j, y+6, true)
			from = j + 2
		}
	}
	c.Arrow(section.At(-5, 14), section.At(-5, 40))
	c.Word(section.At(13, 2), section.Middle, "nailed")
	c.Word(section.At(13, 18.8), section.Middle, "loose")
	c.Note(section.At(80, 20), "Rows to come, about a hand apart, tongues away from you")
	return c.free("SET OUT LOOSE (seen from above)", 46)
}

// jointRows are five rows with a joint at each of the places.
func (c pic) jointRows(joints ...float64) {
	for i, j := range joints {
		y := 5.2 * float64(i)
		c.planRow(0, 52, y, y+5.2, j)
	}
}

func (f facts) jointFigures() []Figure {
	show := func(title string, wrong []section.XY, joints ...float64) Figure {
		c := f.at(full)
		c.jointRows(joints...)
		mark := section.At(5, 30.5)
		if wrong == nil {
			c.tick(mark)
			c.Dim(section.Above, section.At(joints[4], 26), section.At(joints[3], 20.8), fmt.Sprintf("%s or more", f.say.Of(f.lim.JointMin.Value)))
		} else {
			c.cross(mark)
			c.Line(bold, wrong...)
		}
		return c.free(title, 0)
	}
	right := show("RIGHT: well apart", nil, 30, 10, 36, 14, 47)
	if f.pattern() > 0 {
		return []Figure{right}
	}
	return []Figure{right, show("NOT an H", ring(14, 0.6, 14, 15), 14, 34, 14, 40, 22), show("NOT stairs", ring(7, 0.6, 45, 25.4), 10, 18, 26, 34, 42)}
}
