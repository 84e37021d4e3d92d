package detail

import (
	"fmt"
	"slices"
	"strings"

	"strake/floor"
	"strake/section"
	"strake/tape"
	"strake/trim"
)

// gapCase is a gap at walls with what covers it: those with one are drawn once. Of what
// boards turn to the wall the drawing shows one way, and its notes name all.
type gapCase struct {
	r          floor.Range
	base, shoe tape.Length // shoe 0 and base > 0: one cover of that thickness
	ownCover   bool        // a cover of the wall's own
	way                    // that is drawn
	ways       []gapWay
}

// way is what boards turn to a wall: a row beside it its edge, else rows their ends.
type way struct {
	beside bool
	edge   section.Edge
}

// gapWay is a way with the walls that it holds for.
type gapWay struct {
	way
	walls []trim.Covered
}

// same tells whether two are one case.
func (a gapCase) same(b gapCase) bool {
	return a.r == b.r && a.base == b.base && a.shoe == b.shoe && a.ownCover == b.ownCover
}

// add takes in a wall of the case that meets boards in a way.
func (a *gapCase) add(k way, v trim.Covered) {
	i := slices.IndexFunc(a.ways, func(x gapWay) bool { return x.way == k })
	if i < 0 {
		a.ways, i = append(a.ways, gapWay{way: k}), len(a.ways)
	}
	a.ways[i].walls = append(a.ways[i].walls, v)
}

// gaps are the edges of the floor at walls.
func (w work) gaps() []Detail {
	var cases []gapCase
	for _, v := range w.h.Covered {
		c := w.gapCase(v)
		i := slices.IndexFunc(cases, c.same)
		if i < 0 {
			cases, i = append(cases, c), len(cases)
		}
		cases[i].add(c.way, v)
	}
	var out []Detail
	for _, c := range cases {
		slices.SortStableFunc(c.ways, func(a, b gapWay) int { return a.rank() - b.rank() })
		c.way = c.ways[0].way
		out = append(out, w.gap(c))
	}
	return out
}

// rank is the order in which ways are named, the one drawn first.
func (k way) rank() int {
	switch {
	case !k.beside:
		return 2
	case k.edge == section.Grooved:
		return 1
	}
	return 0
}

// gapCase is the case of a wall, and the way it meets boards.
func (w work) gapCase(v trim.Covered) gapCase {
	j := w.p.Job
	c := gapCase{base: j.Base, shoe: j.Shoe, way: way{beside: v.Beside}}
	if v.Cover != j.Base+j.Shoe {
		c.base, c.shoe, c.ownCover = v.Cover, 0, true
	}
	for _, e := range w.p.Floor.Edges {
		if e.Kind == floor.Wall && e.Wall == v.Wall {
			if c.r = e.Ends; v.Beside {
				c.r = e.Sides
			}
			break
		}
	}
	if v.Beside {
		c.edge = w.edgeAt("wall " + v.Wall.String())
	}
	return c
}

// edgeAt is what the row along a closing edge turns to it: its groove or tongue
// where it is a whole board with that left on, else a sawn edge.
func (w work) edgeAt(name string) section.Edge {
	for _, f := range w.p.AllFields() {
		for _, r := range f.Layout.Rips {
			if r.Edge != name || !r.Full() {
				continue
			}
			for _, q := range f.Layout.Runs {
				if q.Row == r.Row && (q.Ahead > 0) == r.Above {
					return section.Grooved
				}
			}
		}
	}
	return section.Square
}

// gap draws one case.
func (w work) gap(k gapCase) Detail {
	name, title := "gap-row-ends", "Edge gap where rows end at a wall"
	switch {
	case len(k.ways) > 1:
		name, title = "gap-at-walls", "Edge gap at the walls"
	case k.edge == section.Grooved:
		name, title = "gap-beside-rows", "Edge gap where a whole board lies along a wall"
	case k.beside:
		name, title = "gap-beside-rows", "Edge gap where a row lies along a wall, its edge sawn"
	}
	if k.ownCover {
		title += ", under a cover of its own"
	}
	var notes, each []string
	for _, x := range k.ways {
		var at []string
		for _, v := range x.walls {
			at = append(at, v.Wall.String())
			each = append(each, fmt.Sprintf("%s %s", v.Wall, w.spread(v.Least, v.Greatest)))
		}
		notes = append(notes, x.says(list("wall", at)))
	}
	how := "Gap as planned, at most: "
	if len(w.p.Lay.Pieces) > 0 {
		how = "Gap as laid by this plan: "
	}
	notes = append(notes, how+join(each)+".",
		"Keep the gap free of mortar, glue and scraps; spacers come out before the base goes on.", w.winterNote(k))
	return w.fitted(name, title, 0, func(s float64) section.Figure { return w.gapFigure(k, s) }, notes...)
}

// says names the walls at which boards lie in a way.
func (k way) says(walls string) string {
	switch {
	case !k.beside:
		return "Rows end at " + walls + ", cut or as milled, tongue off."
	case k.edge == section.Grooved:
		return "A whole board lies along " + walls + ", its groove to the wall."
	}
	return "A row lies along " + walls + ", its edge sawn or its tongue taken off."
}

func join(s []string) string {
	out := ""
	for i, x := range s {
		if i > 0 {
			out += "; "
		}
		out += x
	}
	return out
}

// winterNote says what the gap grows by.
func (w work) winterNote(k gapCase) string {
	for _, x := range k.ways {
		for _, v := range x.walls {
			if v.Winter > 0 {
				return "By winter the board at the wall shrinks by about " + w.say.Rip(v.Winter) + ": the lap drawn does not count that."
			}
		}
	}
	return ""
}

const (
	wallThick = 12.7 // of the plaster drawn, real mm
	baseShown = 32.0 // of a base, over the boards
	shoeHigh  = 19.0 // a usual shoe
	shown     = 56.0 // of the floor beyond the gap
)

func (w work) gapFigure(k gapCase, scale float64) section.Figure {
	c := section.New(scale)
	least, most := k.r.Least.Millimetres(), k.r.Greatest.Millimetres()
	end := most + shown
	up, top := w.up(), w.top()
	high := top + baseShown
	low := w.under(c, ground{x0: -wallThick - 14, x1: end, a: 0, b: end, note: end - 22})
	c.Cut("wall", section.Plaster, section.Rect(-wallThick, 0, 0, high+8), 2)
	c.Break(section.At(-wallThick, high+8), section.At(0, high+8))
	if k.beside {
		c.Board("board", w.prof, least, up, end-least, k.edge, section.GoesOn)
	} else {
		c.Cut("board", section.Grain, section.Rect(least, up, end, top), 1)
	}
	c.Break(section.At(end, low), section.At(end, top))
	c.Break(section.At(-wallThick-14, low), section.At(-wallThick-14, 0))
	if most > least {
		c.Named("farthest", section.Hidden, section.At(most, up), section.At(most, top))
	}
	w.covers(c, k, top, high)
	c.Dim(section.Under, section.At(0, 0), section.At(least, up), "gap at least "+w.say.Rip(k.r.Least))
	if most > least {
		c.Dim(section.Under, section.At(0, 0), section.At(most, up), "at most "+w.say.Rip(k.r.Greatest))
	}
	c.Dim(section.Leftward, section.At(-wallThick-14, up), section.At(0, top), w.height(w.p.Job.Boards.Thickness))
	c.Note(section.At(least+shown*0.55, up+w.prof.Thick*0.35), w.boardNote(k))
	c.Note(section.At(least/2, up+w.prof.Thick/2), "Gap, left free all along the wall")
	if most > least {
		c.NoteLine(section.At(most, top-3), "Dashed: boards end no farther from the wall than this")
	}
	return c.Figure(0)
}

// boardNote says which edge or end faces the wall.
func (w work) boardNote(k gapCase) string {
	switch {
	case len(k.ways) > 1 && k.edge == section.Grooved:
		return "The board at the wall, here a whole one: what lies at which wall is said below"
	case len(k.ways) > 1:
		return "The board at the wall, here its sawn edge: what lies at which wall is said below"
	case !k.beside:
		return "Row ends, cut or as milled, tongue off"
	case k.edge == section.Grooved:
		return "A whole board, its groove to the wall"
	}
	return "The row at the wall: its edge sawn, or its tongue taken off"
}

// covers draws base and shoe, or what else covers the gap.
func (w work) covers(c *section.Canvas, k gapCase, top, high float64) {
	base, shoe := k.base.Millimetres(), k.shoe.Millimetres()
	cover := base + shoe
	if cover == 0 {
		c.Note(section.At(-3, high), "Wall. No base or shoe is told in the job: nothing hides the gap yet")
		return
	}
	if base > 0 {
		c.Cut("base", section.Trim, section.Rect(0, top+0.5, base, high), 2)
		c.Break(section.At(0, high), section.At(base, high))
	}
	if shoe > 0 {
		c.Cut("shoe", section.Trim, quarter(base, top+0.5, shoe, shoeHigh))
	}
	switch {
	case k.ownCover:
		c.Note(section.At(base/2, high-8), "What covers the gap here, "+w.say.Rip(k.base)+" thick, nailed to the wall")
		c.Dim(section.Above, section.At(0, high), section.At(base, high), w.say.Rip(k.base))
	case base > 0 && shoe > 0:
		c.Note(section.At(base/2, high-8), "Base, nailed to the wall, never to the boards; its height is not told in the job")
		c.Note(section.At(base+shoe*0.5, top+6), "Shoe, nailed to the base; its height is not told in the job")
		c.Dim(section.Above, section.At(0, high), section.At(base, high), "base "+w.say.Rip(k.base))
		c.Dim(section.Above, section.At(base, top+shoeHigh), section.At(cover, top+4), "shoe "+w.say.Rip(k.shoe))
	case base > 0:
		c.Note(section.At(base/2, high-8), "Base, nailed to the wall, never to the boards; its height is not told in the job")
		c.Dim(section.Above, section.At(0, high), section.At(base, high), "base "+w.say.Rip(k.base))
	default:
		c.Note(section.At(shoe*0.5, top+6), "Shoe, nailed to the wall, never to the boards; its height is not told in the job")
		c.Dim(section.Above, section.At(0, high), section.At(shoe, top+4), "shoe "+w.say.Rip(k.shoe))
	}
	if lap := k.base + k.shoe - k.r.Greatest; lap > 0 {
		c.Dim(section.Under, section.At(k.r.Greatest.Millimetres(), w.up()), section.At(cover, top), "lap at least "+w.say.Rip(lap))
	}
}

// quarter is a shoe moulding: square to wall and floor, rounded to the room.
func quarter(x, y, wide, high float64) []section.XY {
	out := []section.XY{section.At(x, y), section.At(x+wide, y)}
	for _, t := range arc {
		out = append(out, section.At(x+wide-float64(wide*0.85*(1-t[0])), y+high*0.15+float64(high*0.85*t[1])))
	}
	return append(out, section.At(x, y+high))
}

// arc are points of a quarter circle from level to upright: cosine and sine.
var arc = [][2]float64{{1, 0}, {0.966, 0.259}, {0.866, 0.5}, {0.707, 0.707}, {0.5, 0.866}, {0.259, 0.966}, {0, 1}}

// stayGaps are the edges at what stays with a gap under a cover, those alike once.
func (w work) stayGaps() []Detail {
	var cases []gapCase
	names := map[int][]string{}
	for _, s := range w.p.Job.Sketch.Stays {
		e, ok := longest(w.edges(floor.Stays, func(e floor.AlignedEdge) bool { return e.Name == s.Name }))
		if !ok {
			continue
		}
		k := gapCase{way: way{beside: e.Beside}, r: e.Range, base: s.Cover, ownCover: true}
		if s.Cover == 0 {
			k.base, k.shoe, k.ownCover = w.p.Job.Base, w.p.Job.Shoe, false
		}
		i := slices.IndexFunc(cases, func(c gapCase) bool { return c.same(k) && c.way == k.way })
		if i < 0 {
			cases, i = append(cases, k), len(cases)
		}
		names[i] = append(names[i], s.Name)
	}
	var out []Detail
	for i, k := range cases {
		at := strings.Join(names[i], ", ")
		out = append(out, w.fitted(slug("edge", names[i][0]), "Edge at "+at, 0, func(sc float64) section.Figure { return w.stayFigure(k, at, sc) },
			"Holds round "+at+".", "What stands there is not nailed through the boards, and the boards are not nailed to it."))
	}
	return out
}

// stayFigure draws the gap at something that stays, under its flange, collar or
// toe-kick.
func (w work) stayFigure(k gapCase, name string, scale float64) section.Figure {
	if !k.ownCover {
		return w.gapFigure(k, scale)
	}
	c := section.New(scale)
	least, most, cover := k.r.Least.Millimetres(), k.r.Greatest.Millimetres(), k.base.Millimetres()
	end := max(most, cover) + 30
	up, top := w.up(), w.top()
	low := w.under(c, ground{x0: -40, x1: end, a: 0, b: end, note: end - 16})
	c.Cut("wall", section.Plain, section.Rect(-26, 0, 0, top+36), 2, 3)
	c.Break(section.At(-26, top+36), section.At(0, top+36))
	c.Break(section.At(-26, 0), section.At(-26, top+36))
	if k.beside {
		c.Board("board", w.prof, least, up, end-least, section.Square, section.GoesOn)
	} else {
		c.Cut("board", section.Grain, section.Rect(least, up, end, top), 1)
	}
	c.Break(section.At(end, low), section.At(end, top))
	if most > least {
		c.Named("farthest", section.Hidden, section.At(most, up), section.At(most, top))
	}
	c.Cut("base", section.Trim, section.Rect(0, top+0.5, cover, top+10))
	c.Dim(section.Under, section.At(0, 0), section.At(least, up), "gap at least "+w.say.Rip(k.r.Least))
	if most > least {
		c.Dim(section.Under, section.At(0, 0), section.At(most, up), "at most "+w.say.Rip(k.r.Greatest))
	}
	c.Dim(section.Above, section.At(0, top+36), section.At(cover, top+10), "covered "+w.say.Rip(k.base))
	c.Note(section.At(-10, top+25), name+" (its shape is not told in the job)")
	c.Note(section.At(cover*0.6, top+6), "What covers the gap: flange, collar or toe-kick")
	c.Note(section.At(end-12, up+w.prof.Thick*0.4), "Boards of this floor")
	return c.Figure(0)
}
