package plan

import (
	"fmt"
	"math"

	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/room"
	"strake/row"
	"strake/tape"
)

// oldFindings say how each old floor that this one comes to lies to its rows:
// run on, header or turn, with the misfit of each in figures.
func (p Plan) oldFindings(style tape.Style) []finding.Finding {
	var out []finding.Finding
	fine := style
	fine.Step = style.Step / 2
	for _, d := range p.Built.Doorways {
		if d.Old.RowWidth > 0 {
			out = append(out, p.old(d, fine))
		}
	}
	return out
}

func (p Plan) old(d room.Doorway, style tape.Style) finding.Finding {
	x := finding.Finding{Level: finding.Note, Rule: "joining an old floor", Where: d.Said()}
	from, to, ok := floor.Jambs(p.Built, d.Wall, d.From, d.At, d.Width)
	if !ok {
		return x
	}
	wall := plane.DirOf(from, to)
	through := math.Abs(plane.XY(wall).Dot(plane.XY(p.Layout.Dir))) < math.Sqrt2/2
	switch {
	case through && d.Old.Along:
		x.Measured = "its rows lie square to these"
		x.Do = "These rows end at its last row: " + p.joined(d, "edge", style)
	case !through && !d.Old.Along:
		x.Measured = "its rows lie square to these"
		x.Do = "They meet at a header: " + headerFor(d.Old.Offers)
	case !through:
		x.Measured = p.sideBySide(d, style)
		x.Do = alongside(d.Old.Offers)
	default:
		p.runOn(&x, d, wall, style)
	}
	return x
}

// runOn is about rows that run the same way through an opening.
func (p Plan) runOn(x *finding.Finding, d room.Doorway, wall plane.Dir, style tape.Style) {
	mark, _ := p.Built.OldEdge(d)
	pitch, c := p.Layout.Pitch, p.Layout.Courses()
	y := p.Aligned.Dir.ToRow(mark).Y
	off := min(y-c.Below(y), c.Above(y)-y)
	if len(c.Widths) > 1 {
		x.Measured = fmt.Sprintf("its row edges lie %s from these, and its rows are all %s wide", style.Of(off), style.Of(d.Old.RowWidth))
		x.Limit = "rows of the same widths for rows that run on"
		x.Do = "A header across the opening hides that, or turn the rows."
		return
	}
	rows := float64(d.Width) / float64(pitch)
	drift := tape.Length(rows * math.Abs(float64(pitch-d.Old.RowWidth)))
	x.Measured = fmt.Sprintf("its row edges lie %s from these; over the %.0f rows of the opening they part by another %s (its rows %s, these %s)",
		style.Of(off), rows, style.Up(drift), style.Of(d.Old.RowWidth), style.Of(pitch))
	x.Limit = style.Of(tight) + " for rows that run on"
	pinned := p.narrowestWith(lay.Pin{Kind: lay.PinEdge, Where: "the old floor's edge", At: mark})
	switch {
	case off+drift <= tight:
		x.Do = "They run on: " + p.joined(d, "row ends", style)
	case drift <= 2*tight:
		x.Do = fmt.Sprintf("To run on in register, pin row_edge_on: %s: the narrowest rip is then %s instead of %s. Else a header across the opening, which hides any misfit, or a turn. As it is planned, %s",
			d.Name, style.Of(pinned), style.Of(p.narrowest()), p.joined(d, "row ends", style))
	default:
		x.Do = fmt.Sprintf("Its rows are too wide or too narrow to run on: a header across the opening hides that, or turn the rows. Pinned to its edge the narrowest rip would be %s. As it is planned, %s", style.Of(pinned), p.joined(d, "row ends", style))
	}
}

func (p Plan) narrowest() tape.Length {
	least := p.Layout.Pitch
	for _, r := range p.Layout.Rips {
		least = min(least, r.Narrowest)
	}
	return least
}

// narrowestWith is the narrowest rip of the first field with one pin more.
func (p Plan) narrowestWith(pin lay.Pin) tape.Length {
	w := rowWishes(p.Job, append([]lay.Pin{pin}, p.Pins...))
	fs := row.Fields(placeOf(p.Job, p.Built, p.Floor, w, tape.Paper(p.Job.Unit)))
	q := Plan{Layout: fs[0].Layout}
	return q.narrowest()
}

// sideBySide is about rows that lie along the opening on both sides.
func (p Plan) sideBySide(d room.Doorway, style tape.Style) string {
	for _, r := range p.Layout.Rips {
		if r.Edge == d.Said() {
			return fmt.Sprintf("rows lie along it on both sides; row %d beside it is %s wide (its rows are %s)", r.Row, style.Of(r.Narrowest), style.Of(d.Old.RowWidth))
		}
	}
	return "rows lie along it on both sides"
}

// joined says how the row ends that come to an old floor are joined to its edge
// or its row ends, and what that takes.
func (p Plan) joined(d room.Doorway, its string, style tape.Style) string {
	switch {
	case !d.Mates():
		return "a strip covers the joint, and the ends stop under it."
	case p.Job.Boards.EndTongue == 0:
		return "boards with plain ends butt against it, cut in place."
	}
	ends, long := p.endsAt(d.Said())
	switch d.Old.Offers {
	case room.OffersTongue:
		return fmt.Sprintf("%s of these rows take the tongue of its %s, a sawn one grooved on the job.", count(ends, "end"), its)
	case room.OffersGroove:
		return fmt.Sprintf("%s of these rows get a spline into the groove of its %s, %s in all.", count(ends, "end"), its, style.Up(long))
	}
	return fmt.Sprintf("its %s are square: groove them on the job over %s; %s of these rows get a spline into that.", its, style.Up(long), count(ends, "end"))
}

func count(n int, what string) string {
	if n == 1 {
		return "one " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}

// endsAt is how many row ends come to an edge of the floor, and how wide they
// are together.
func (p Plan) endsAt(edge string) (ends int, long tape.Length) {
	for _, f := range p.Fields {
		for _, r := range f.Layout.Runs {
			for k, e := range []lay.EndRange{r.Left, r.Right} {
				if e.Edge == edge {
					ends++
					long += []tape.Length{r.WidthLeft, r.WidthRight}[k]
				}
			}
		}
	}
	return ends, long
}

func headerFor(offers room.Offer) string {
	switch offers {
	case room.OffersTongue:
		return "its ends carry tongues, so the first row here lies along the opening with its groove to them."
	case room.OffersGroove:
		return "its ends carry grooves: a spline there, and the first row here along the opening with its groove to it."
	}
	return "its ends are square: groove them for a spline, or butt the first row here against them."
}

func alongside(offers room.Offer) string {
	switch offers {
	case room.OffersTongue:
		return "Its last row offers a tongue: start here with a full board's groove on it (full_board_at), and its rows simply go on."
	case room.OffersGroove:
		return "Its last row offers a groove: a spline in it and a full board's groove on that (full_board_at), or close here with the tongue going in."
	}
	return "Its last row is square: groove its edge for a spline, or close against it with a ripped row and a strip."
}
