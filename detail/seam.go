package detail

import (
	"strings"

	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/row"
	"strake/section"
	"strake/words"
)

// splines are the lines where the sense of laying is turned: once, with the places
// where they lie.
func (w work) splines() []Detail {
	var at []string
	var rows [2]string
	for _, f := range w.p.AllFields() {
		for _, s := range f.Layout.Splines {
			a, b := w.rowsAt(f, s)
			if rows[0] == "" {
				rows = [2]string{a, b}
			}
			at = append(at, "row "+a+" against row "+b+", "+w.say.Of(s.Along.Len())+" long")
		}
	}
	if len(at) == 0 {
		return nil
	}
	notes := []string{"Holds between " + strings.Join(at, "; ") + ".",
		"Glue the spline into the groove of the row that lies, flush at its ends; no glue in the second groove. Beyond it boards are turned end for end, and rows are laid the other way.",
		"Fasteners beyond it go through the tongues that face the other way.", splineCaution}
	return []Detail{w.fitted("spline", "Spline where the laying turns round", 0, func(s float64) section.Figure { return w.splineFigure(rows, s) }, notes...)}
}

const splineCaution = "A spline ripped on a table saw is a thin strip near the blade: push stick, feather board, and the saw maker's instructions; or buy it."

// rowsAt are the names of the rows below and above a spline.
func (w work) rowsAt(f row.Field, s row.SplineLine) (below, above string) {
	name := func(low bool) string {
		for _, r := range f.Layout.Runs {
			y := r.High
			if low {
				y = r.Low
			}
			if y == s.Y && r.Left.Reach < s.Along.To && s.Along.From < r.Right.Reach {
				return words.RowPart(r.Row, r.Part)
			}
		}
		return "?"
	}
	return name(false), name(true)
}

const halfShown = 52.0 // of a board beside a joint, real mm

func (w work) splineFigure(rows [2]string, scale float64) section.Figure {
	c := section.New(scale)
	up, top := w.up(), w.top()
	low := w.under(c, ground{x0: -halfShown, x1: halfShown, a: -halfShown, b: halfShown, note: halfShown - 16})
	c.Board("below", w.prof, -halfShown, up, halfShown, section.GoesOn, section.Grooved)
	c.Board("above", w.prof, 0, up, halfShown, section.Grooved, section.GoesOn)
	w.splineAt(c, 0, up)
	for _, x := range []float64{-halfShown, halfShown} {
		c.Break(section.At(x, low), section.At(x, top))
	}
	c.Pointer(section.At(-14, top+10), section.At(-46, top+10))
	c.Pointer(section.At(14, top+10), section.At(46, top+10))
	c.Word(section.At(-30, top+13), section.Middle, "rows go on this way")
	c.Word(section.At(30, top+13), section.Middle, "and this way")
	c.Note(section.At(-30, up+w.prof.Thick*0.75), "Row "+rows[0]+", its groove here")
	c.Note(section.At(28, up+w.prof.Thick*0.75), "Row "+rows[1]+", its groove here")
	c.Note(section.At(2, up+(w.prof.TongueLow+w.prof.TongueTop)/2), w.splineNote())
	c.Dim(section.Leftward, section.At(-halfShown, up), section.At(-halfShown, top), w.height(w.p.Job.Boards.Thickness))
	if d := w.p.Job.Boards.SideTongue; d > 0 {
		c.Dim(section.Under, section.At(0, up), section.At(d.Millimetres(), up), "tongue "+w.say.Rip(d))
	}
	return c.Figure(0)
}

// headers are the boards that part two fields in a doorway, those alike once.
func (w work) headers() []Detail {
	type sides struct{ groove, tongue bool }
	names := map[sides][]string{}
	var order []sides
	for _, f := range w.p.AllFields() {
		if f.Kind != lay.Header {
			continue
		}
		var k sides
		k.groove, k.tongue = w.headerSides(f)
		if names[k] == nil {
			order = append(order, k)
		}
		names[k] = append(names[k], strings.TrimPrefix(f.Name, "header in "))
	}
	var out []Detail
	for _, k := range order {
		in := strings.Join(names[k], ", ")
		out = append(out, w.fitted(slug("header", strings.TrimPrefix(names[k][0], "doorway ")), "Header in "+in, 0, func(s float64) section.Figure { return w.headerFigure(k.groove, k.tongue, s) },
			"Holds in "+in+". One board lies across, and each side has rows of its own.",
			"Row ends with a tongue go into its groove; cut ends and sawn sides are grooved on the job for its tongue or for a spline: see the row cards.",
			"It moves across its width, and the rows that end at it do not: keep it dry-fitted until both sides are cut.", routerNote))
	}
	return out
}

// headerSides tells whether rows lie beside the header on its groove side and on
// its tongue side; else they end at it.
func (w work) headerSides(h row.Field) (groove, tongue bool) {
	d := plane.XY(h.Layout.Dir)
	for _, f := range w.p.AllFields() {
		if f.Kind != lay.Field {
			continue
		}
		along := plane.XY(f.Layout.Dir)
		beside := along.Dot(d)*along.Dot(d) > 0.5
		for _, e := range f.Part.Edges {
			if e.Kind != floor.Meeting || !strings.Contains(e.Name, strings.TrimPrefix(h.Name, "header in ")) {
				continue
			}
			if onLeft(h, f, e) {
				tongue = tongue || beside
			} else {
				groove = groove || beside
			}
		}
	}
	return groove, tongue
}

// onLeft tells whether an edge of a field lies on the side of a header that its
// tongue faces.
func onLeft(h, f row.Field, e floor.AlignedEdge) bool {
	lo, hi := h.Part.Reach.Box()
	a, b := f.Part.Dir.FromRow(e.From), f.Part.Dir.FromRow(e.To)
	mid := h.Part.Dir.ToRow(a.Add(b).Times(0.5))
	up := mid.Y > lo.Y+(hi.Y-lo.Y)/2
	for _, r := range h.Layout.Runs {
		return up == (r.Ahead >= 0)
	}
	return up
}

func (w work) headerFigure(left, right bool, scale float64) section.Figure {
	c := section.New(scale)
	face, up, top := w.prof.Face, w.up(), w.top()
	arm := w.arm(46)
	low := w.under(c, ground{x0: -arm, x1: face + arm, a: -arm, b: face + arm, note: face + arm - w.arm(14)})
	c.Board("board", w.prof, 0, up, face, section.Grooved, section.Tongued)
	w.field(c, "left", left, -arm, 0, section.GoesOn, section.Grooved)
	w.splineAt(c, 0, up)
	w.field(c, "right", right, face, face+arm, section.Grooved, section.GoesOn)
	c.Break(section.At(-arm, low), section.At(-arm, top))
	c.Break(section.At(face+arm, low), section.At(face+arm, top))
	c.Dim(section.Above, section.At(0, top), section.At(face, top), "face "+w.say.Rip(w.p.Job.Boards.Face))
	c.Note(section.At(face*0.5, up+w.prof.Thick*0.5), "Header, cut across")
	c.Note(section.At(2, up+(w.prof.TongueLow+w.prof.TongueTop)/2), "Its groove: a tongue end of a row, or a spline as drawn")
	c.Note(section.At(face+2, up+(w.prof.TongueLow+w.prof.TongueTop)/2), "Its tongue, into the groove of what comes to it, milled or cut on the job")
	c.Note(section.At(-arm+w.arm(14), up+w.prof.Thick*0.75), sideSaid(left))
	c.Note(section.At(face+arm-w.arm(18), up+w.prof.Thick*0.75), sideSaid(right))
	return c.Figure(w.column())
}

func sideSaid(beside bool) string {
	if beside {
		return "Rows of this side lie along it"
	}
	return "Rows of this side end at it"
}

// field draws boards of a field from x0 to x1, cut across or along.
func (w work) field(c *section.Canvas, name string, across bool, x0, x1 float64, left, right section.Edge) {
	up := w.up()
	if across {
		c.Board(name, w.prof, x0, up, x1-x0, left, right)
		return
	}
	ring := w.prof.Ring(x1-x0, left, right)
	open := 0
	if left == section.GoesOn {
		open = len(ring) - 2
	}
	c.Cut(name, section.Grain, section.Shift(ring, section.At(x0, up)), open)
}

// turns are the doorways where rows turn: a row along the doorway, and the ends of
// those beyond.
func (w work) turns() []Detail {
	var names []string
	edge := section.Square
	for _, f := range w.p.AllFields() {
		for _, e := range f.Part.Edges {
			door, ok := strings.CutPrefix(e.Name, "rows beyond in ")
			if !ok || f.Kind != lay.Field || !e.Beside || contains(names, door) {
				continue
			}
			names, edge = append(names, door), w.turnEdge(f, e.Name)
		}
	}
	if len(names) == 0 {
		return nil
	}
	notes := []string{"Holds in " + strings.Join(names, ", ") + ", under the closed leaf.",
		"Ends that have the fitting end go in as they are; cut ends are grooved on the job, and a spline is glued in where groove meets groove: see the row cards.", routerNote}
	return []Detail{w.fitted("turn", "Where rows turn in a doorway", 0, func(s float64) section.Figure { return w.turnFigure(edge, s) }, notes...)}
}

func contains(ss []string, s string) bool {
	for _, x := range ss {
		if x == s {
			return true
		}
	}
	return false
}

// turnEdge is what the row along the doorway turns to the ends beyond.
func (w work) turnEdge(f row.Field, name string) section.Edge {
	for _, r := range f.Layout.AtFrames {
		if r.Edge != name || !r.Full() {
			continue
		}
		for _, q := range f.Layout.Runs {
			if q.Row == r.Row {
				if (q.Ahead > 0) == r.Above {
					return section.Grooved
				}
				return section.Tongued
			}
		}
	}
	return section.Square
}

func (w work) turnFigure(edge section.Edge, scale float64) section.Figure {
	c := section.New(scale)
	up, top := w.up(), w.top()
	low := w.under(c, ground{x0: -halfShown, x1: halfShown, a: -halfShown, b: halfShown, note: halfShown - 16})
	side := "A row along the doorway, its sawn side grooved on the job"
	switch edge {
	case section.Tongued:
		side = "A row along the doorway, its tongue here"
	case section.Grooved:
		side = "A row along the doorway, its groove here"
	}
	mine := edge
	if edge == section.Square {
		mine = section.Grooved
	}
	c.Board("along", w.prof, -halfShown, up, halfShown, section.GoesOn, mine)
	ring := w.prof.Ring(halfShown, section.Grooved, section.GoesOn)
	c.Cut("ends", section.Grain, section.Shift(ring, section.At(0, up)), 0)
	if mine == section.Grooved {
		w.splineAt(c, 0, up)
		c.Note(section.At(2, up+(w.prof.TongueLow+w.prof.TongueTop)/2), "An end tongue, or a spline as drawn: as thick as a tongue, as wide as both grooves less a hair; its size is not told in the job")
	} else {
		c.Note(section.At(2, up+(w.prof.TongueLow+w.prof.TongueTop)/2), "Tongue into the end groove, milled or cut on the job")
	}
	for _, x := range []float64{-halfShown, halfShown} {
		c.Break(section.At(x, low), section.At(x, top))
	}
	c.Note(section.At(-30, up+w.prof.Thick*0.75), side)
	c.Note(section.At(30, up+w.prof.Thick*0.75), "Ends of the rows that turn")
	c.Dim(section.Leftward, section.At(-halfShown, up), section.At(-halfShown, top), w.height(w.p.Job.Boards.Thickness))
	return c.Figure(0)
}
