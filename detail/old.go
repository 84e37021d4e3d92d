package detail

import (
	"strings"

	"strake/floor"
	"strake/room"
	"strake/section"
)

// oldFloors are the joints of row ends to an old floor of boards at one height.
func (w work) oldFloors() []Detail {
	var out []Detail
	drawn := map[room.Old][]string{}
	var order []room.Old
	for _, d := range w.p.Job.Sketch.Doorways {
		if !d.Mates() || len(w.edges(floor.Flush, func(e floor.AlignedEdge) bool { return e.Name == d.Said() && e.Old != "" })) == 0 {
			continue
		}
		key := room.Old{Offers: d.Old.Offers, RowWidth: 1, Along: d.Old.Along}
		if drawn[key] == nil {
			order = append(order, key)
		}
		drawn[key] = append(drawn[key], d.Name)
	}
	for _, o := range order {
		names := drawn[o]
		out = append(out, w.fitted(slug("old floor", names[0]), "Joint to the old floor at "+strings.Join(names, ", "), 0,
			func(s float64) section.Figure { return w.oldFigure(o, s) },
			"Holds at "+strings.Join(names, ", ")+".",
			"No gap and no strip: both floors are one height, and the row edges of this floor lie on those of the old one where they meet end to end.",
			"Try the fit of new tongue and old groove on a scrap first: old boards are seldom milled to the same figure.", routerNote))
	}
	return out
}

func (w work) oldFigure(o room.Old, scale float64) section.Figure {
	c := section.New(scale)
	up, top := w.up(), w.top()
	low := w.under(c, ground{x0: -halfShown, x1: halfShown, a: -halfShown, b: 0, note: -halfShown + 12})
	ring := w.prof.Ring(halfShown, section.GoesOn, section.Grooved)
	c.Cut("board", section.Grain, section.Shift(ring, section.At(-halfShown, up)), len(ring)-2)
	edge := section.Grooved
	if o.Offers == room.OffersTongue {
		edge = section.Tongued
	}
	w.oldBoard(c, o.Along, edge)
	said := "Old floor: offers its tongue"
	joint := "Old tongue into the end groove, milled or cut on the job"
	if edge == section.Grooved {
		w.splineAt(c, 0, up)
		said, joint = "Old floor: offers its groove", "Spline, glued into the old groove, or an end tongue; its size is not told in the job"
		if o.Offers == room.OffersSquare {
			said, joint = "Old floor: its square edge is grooved on the job", "Spline in both grooves; its size is not told in the job"
		}
	}
	for _, x := range []float64{-halfShown, halfShown} {
		c.Break(section.At(x, low), section.At(x, top))
	}
	c.Note(section.At(-26, up+w.prof.Thick*0.75), "Row ends of this floor")
	c.Note(section.At(26, up+w.prof.Thick*0.75), said+"; how thick its boards are is not told in the job")
	c.Note(section.At(2, up+(w.prof.TongueLow+w.prof.TongueTop)/2), joint)
	c.Dim(section.Leftward, section.At(-halfShown, up), section.At(-halfShown, top), w.height(w.p.Job.Boards.Thickness))
	return c.Figure(0)
}

// oldBoard draws a board of the old floor right of x 0, seen in the mirror: its
// edge turned to this floor.
func (w work) oldBoard(c *section.Canvas, along bool, edge section.Edge) {
	ring := section.Shift(section.Mirror(w.prof.Ring(halfShown, section.GoesOn, edge), halfShown/2), section.At(0, w.up()))
	m := section.Grain
	if along {
		m = section.EndGrain
	}
	// In the mirror the open left edge has become the right one: the first side.
	c.Cut("old", m, ring, openSide(ring, halfShown))
}

// openSide is the upright side of a ring at x.
func openSide(ring []section.XY, x float64) int {
	for i, p := range ring {
		if q := ring[(i+1)%len(ring)]; p.X == x && q.X == x {
			return i
		}
	}
	return 0
}
