package plan

import (
	"math"

	"strake/fasten"
	"strake/floor"
	"strake/job"
	"strake/plane"
	"strake/ready"
	"strake/room"
	"strake/site"
	"strake/subfloor"
	"strake/tape"
)

// notLooked is what is said of a subfloor that the job tells nothing of.
var notLooked = ready.Verdict{Say: ready.Look, Rule: "subfloor", Where: "subfloor", Measured: "layers and flatness are not told", Limit: "a look at both before anything is ordered",
	Do: "See at a vent or a hole what the layers are, lay a straightedge over the floor, and write both under subfloor.", Source: "common practice, no source"}

// underVerdicts are what there is to say of the subfloor; where the job tells
// nothing of it but its joists, of rows that run along them.
func (p Plan) underVerdicts() []ready.Verdict {
	switch {
	case p.Job.Subfloor.Told():
	case onSlab(p.Job):
		return nil
	default:
		return p.Underfloor().RowVerdicts(tape.Paper(p.Job.Unit))
	}
	return p.Underfloor().Verdicts(tape.Paper(p.Job.Unit))
}

// Underfloor is what was found under the floor, with how its rows lie to the
// joists where both are known.
func (p Plan) Underfloor() subfloor.Survey {
	j := p.Job.Subfloor
	_, u, _ := p.nailing(0).Use()
	rule, by := j.Rule(u.Length)
	return subfloor.Survey{On: j.On, Built: j.Built, Rule: rule, By: by.String(), Layers: j.Layers, Readings: j.Readings,
		Grid: j.Heights.Grid, Squeaks: j.Squeaks, Joists: p.Job.Joists.Spacing, Rows: p.lean(),
		SqFt: p.squareFeet(), SlabSaid: p.Job.Site.Base == site.Concrete}
}

// lean is how the rows lie to the joists, "" where that is not known.
func (p Plan) lean() subfloor.Lean {
	a, ok := p.Built.At[p.Job.Joists.Along[0]]
	b, ok2 := p.Built.At[p.Job.Joists.Along[1]]
	if !ok || !ok2 || a == b || len(p.Fields) == 0 {
		return ""
	}
	d, along := plane.XY(p.Fields[0].Layout.Dir), b.Sub(a)
	return subfloor.LeanOf(math.Atan2(along.Cross(d), along.Dot(d)) * 180 / math.Pi)
}

// Nailing is the floor as it is nailed down: its boards, what they are nailed
// into, and what fasteners keep out of.
func (p Plan) Nailing() fasten.Floor {
	thick, _, known := subfloor.Nailing(subfloor.Fates(p.Job.Subfloor.Layers, p.Job.Subfloor.Built))
	if !known || thick == 0 {
		return p.nailing(0)
	}
	return p.nailing(thick + p.Job.Trim.Panel)
}

func (p Plan) nailing(base tape.Length) fasten.Floor {
	j := p.Job
	by := ready.Maker
	if j.Nails.By == "code" {
		by = ready.Code
	}
	from := j.Nails.From
	if from == "" {
		from = "job file"
	}
	f := fasten.Floor{Thickness: j.Boards.Thickness, Slab: onSlab(j), Base: base, Lay: p.Lay,
		Own: fasten.Own{Kind: j.Nails.Kind, Length: j.Nails.Length, Spacing: j.Nails.Spacing, End: j.Nails.End, Box: j.Nails.Box, By: by, Source: from},
		Gap: j.Limits.GapLeast.Value, Cover: j.Base + j.Shoe, Paper: j.Trim.SheetUnder(felted(j))}
	for _, b := range j.Boards.Each() {
		f.Face = max(f.Face, b.Face)
	}
	f.Joists = p.joists()
	for _, k := range j.KeepFree {
		if o := setOut(p.Built, k.Wall, k.From, k.At, k.Off, k.Width, k.Depth); o != nil {
			f.Free = append(f.Free, fasten.Free{Name: k.Name, What: k.What, Outline: o, Margin: k.Margin, Depth: k.Below + j.Trim.Panel, Known: k.Known})
		}
	}
	return f
}

// joists are where the joists lie, as the job tells it from a wall; none where it
// does not.
func (p Plan) joists() fasten.Joists {
	j := p.Job.Joists
	if !j.Placed || j.Spacing <= 0 || onSlab(p.Job) {
		return fasten.Joists{}
	}
	_, ccw, ok := p.Built.FindWall(j.Along)
	a, b := p.Built.At[ccw[0]], p.Built.At[ccw[1]]
	if !ok || a == b {
		return fasten.Joists{}
	}
	d := b.Sub(a).Unit()
	return fasten.Joists{At: a.Add(d.Left().Times(j.First.Millimetres())), Along: d, Spacing: j.Spacing}
}

// onSlab tells whether a slab carries the floor, by what the job says of its
// subfloor, else of its site.
func onSlab(j job.Job) bool {
	if j.Subfloor.On != "" {
		return j.Subfloor.On == subfloor.OnSlab
	}
	return j.Site.Base != "" && j.Site.Base != site.Wood
}

// setOut is a rectangle set out from a wall, on the floor plan; nil where the wall
// has no place.
func setOut(b room.Built, w room.Wall, from string, at, off, width, depth tape.Length) []plane.XY {
	start, end, ok := floor.Jambs(b, w, from, at, width)
	if !ok || start == end {
		return nil
	}
	in := end.Sub(start).Unit().Left()
	near, far := in.Times(off.Millimetres()), in.Times((off + depth).Millimetres())
	return []plane.XY{start.Add(near), end.Add(near), end.Add(far), start.Add(far)}
}

// Mark is a mark of the grid of heights: its place on the floor plan, the height
// read there, and what is done. Read is false where nothing was read.
type Mark struct {
	At     plane.XY
	Height tape.Length
	Change tape.Length // above 0 build up, below 0 take off
	Read   bool
	Over   bool // more off than the rule lets pass
}

// Heights are the marks of the job's grid with what makes it flat, line by line;
// none where no grid was read or its wall has no place.
func (p Plan) Heights() ([]Mark, subfloor.Work) {
	h := p.Job.Subfloor.Heights
	o := setOut(p.Built, h.Wall, h.From, h.At, h.Off, max(h.Step*tape.Length(h.Cols-1), tape.Inch), tape.Inch)
	if h.Cols == 0 || o == nil {
		return nil, subfloor.Work{}
	}
	origin, along, in := o[0], o[1].Sub(o[0]).Unit(), o[3].Sub(o[0]).Unit()
	if h.From != p.leftEnd(h.Wall) { // lines begin at the other end of the wall
		origin, along = o[1], along.Times(-1)
	}
	s := p.Underfloor()
	w := s.Work()
	over := map[subfloor.Mark]bool{}
	for _, x := range s.Grid.Over(s.Rule) {
		over[x.Most] = true
	}
	var out []Mark
	step := h.Step.Millimetres()
	for i := range h.Height {
		m := subfloor.Mark{Col: i % h.Cols, Row: i / h.Cols}
		v, read := h.Grid.At(m)
		out = append(out, Mark{origin.Add(along.Times(step * float64(m.Col))).Add(in.Times(step * float64(m.Row))), v, w.Change(h.Grid, m), read, over[m]})
	}
	return out, w
}

// leftEnd is the corner of a wall that comes first going round its room
// counter-clockwise.
func (p Plan) leftEnd(w room.Wall) string {
	_, ccw, _ := p.Built.FindWall(w)
	return ccw[0]
}
