package detail

import (
	"strake/floor"
	"strake/room"
	"strake/section"
	"strake/tape"
	"strake/trim"
)

// stones are the edges at hearths and tile that stay and are met flush, without a
// frame: row ends and rows beside.
func (w work) stones() []Detail {
	var out []Detail
	for _, s := range w.p.Job.Sketch.Stays {
		if s.Meets != room.MeetsFlush || s.Frame != room.NoFrame {
			continue
		}
		var parts []opening
		for _, beside := range []bool{false, true} {
			o, ok := w.openingAt(s.Name, floor.Flush, func(e floor.AlignedEdge) bool {
				return e.Name == s.Name && e.Beside == beside
			})
			if ok {
				parts = append(parts, o)
			}
		}
		if len(parts) > 0 {
			out = append(out, w.stone(s, parts))
		}
	}
	return out
}

func (w work) stone(s room.Stay, parts []opening) Detail {
	notes := []string{"Holds round " + s.Name + "."}
	if parts[0].known {
		notes = append(notes, w.heightsNote(parts[0]))
		if parts[0].m.Strip != trim.None {
			notes = append(notes, "By these heights it is not flush: "+parts[0].m.How)
		}
	} else {
		notes = append(notes, "How high "+s.Name+" lies over the subfloor is not told in the job: measure it before boards are ordered.")
	}
	notes = append(notes, "Row ends: lay the board over, mark it against the stone, cut on the line, dress to fit. A fireplace needs its hearth: boards go no nearer to the opening than the local code lets wood come.")
	draw := func(scale float64) section.Figure {
		var fs []section.Figure
		for _, o := range parts {
			title := "Where row ends meet it"
			if o.beside {
				title = "Where a row lies beside it"
			}
			fs = append(fs, section.Caption(title, section.Middle, MostW-4, true), w.stoneFigure(s.Name, o, scale))
		}
		return section.Below(3, fs...)
	}
	return w.fitted(slug("edge", s.Name), "Boards at "+s.Name, 0, draw, notes...)
}

// stoneFigure is one joint: boards to the left, what stays from x 0 on.
func (w work) stoneFigure(name string, o opening, scale float64) section.Figure {
	c := section.New(scale)
	gap := o.r.Least.Millimetres()
	here, shim := w.top(), 0.0
	there := here
	if o.known {
		here, there, shim = o.m.Stack.Height().Millimetres(), o.m.Beyond.Millimetres(), o.m.Shim.Millimetres()
	}
	const x0, x1 = -62.0, 38.0
	low := w.under(c, ground{x0: x0, x1: x1, a: x0, b: 0, note: x0 + 12, shim: shim})
	c.Cut("beyond", section.Masonry, section.Rect(0, 0, x1, there), 1)
	w.sideways(c, "board", o.beside, x0, -gap, here-w.prof.Thick, section.Square)
	c.Break(section.At(x0, low), section.At(x0, here))
	c.Break(section.At(x1, low), section.At(x1, there))
	if o.beside && gap > 0 {
		c.Cut("soft joint", section.Soft, section.Rect(-gap, here-w.prof.Thick, 0, here))
		c.NoteLine(section.At(-gap/2, here), "Soft joint: cork or sealant, so that boards can move")
	} else {
		c.NoteLine(section.At(-gap/2, here), "Fine joint; the cut is measured in place")
	}
	c.Dim(section.Above, section.At(-gap, here), section.At(0, there), w.say.Rip(o.r.Least))
	c.Dim(section.Leftward, section.At(x0, 0), section.At(x0, here), w.height(mm(here)))
	c.Note(section.At(x0+34, here-w.prof.Thick*0.4), w.stoneBoard(o))
	c.Note(section.At(18, there*0.6), w.stoneName(name, o))
	return c.Figure(0)
}

func (w work) stoneBoard(o opening) string {
	if o.beside {
		return "A row beside it, ripped or whole, tongue off"
	}
	return "Row ends"
}

func (w work) stoneName(name string, o opening) string {
	if o.known {
		return name + ", " + w.height(o.m.Beyond) + " over the subfloor"
	}
	return name + ": its height is not told in the job"
}

// frames are the boards round what stays.
func (w work) frames() []Detail {
	var out []Detail
	for _, s := range w.p.Job.Sketch.Stays {
		if s.Frame == room.NoFrame {
			continue
		}
		if d, ok := w.frameDetail(s); ok {
			out = append(out, d)
		}
	}
	return out
}

// frameDetail is a frame from above, as it lies, and cut across.
func (w work) frameDetail(s room.Stay) (Detail, bool) {
	rings := w.frameRings(s.Name)
	if len(rings) == 0 {
		return Detail{}, false
	}
	gap := tape.Length(0)
	kind := floor.Flush
	for _, e := range w.p.Floor.Edges {
		if e.Stay == s.Name {
			gap, kind = e.Sides.Least, e.Kind
		}
	}
	how := "Mitred: both ends of each corner are cut to half of the corner's angle."
	if s.Frame == room.Butted {
		how = "Butted: the boards in front run through, the others end square at their backs."
	}
	above := w.frameAbove(s, rings)
	draw := func(scale float64) section.Figure {
		return section.Below(3,
			section.Caption("Cut across", section.Middle, MostW-4, true), w.frameFigure(s, gap, kind, scale),
			section.Caption("From above, not to scale", section.Middle, MostW-4, true), above)
	}
	return w.fitted(slug("frame", s.Name), "Frame of "+s.Name, 0, draw, "Holds round "+s.Name+".", how,
		"Dry-fit the whole frame before any of it is fastened. Cut the corners from boards a little long and close the joint by shavings.",
		"Row ends and sawn sides that come to the frame are grooved on the job, and a spline is glued in where groove meets groove: see the row cards.", routerNote), true
}
