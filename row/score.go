package row

import (
	"math"
	"slices"

	"strake/floor"
	"strake/lay"
	"strake/limits"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// scoreOf reads off the fields what a person weighs.
func (p Place) scoreOf(fs []Field, joists room.Wall) Score {
	s := Score{Narrowest: slices.Max(p.widths()), longest: p.Longest, Joists: joistsOf(p.Built, fs[0].Layout.Dir, joists)}
	for _, f := range fs {
		if f.Kind == lay.Field {
			s.add(f, p.Wishes.Seen)
			s.step(p.Wishes.Pins)
		}
		s.Rows += f.Layout.Rows
		s.Runs += len(f.Layout.Runs)
	}
	for _, d := range p.Built.Doorways {
		s.doorway(d, p.Built, fs)
	}
	slices.Sort(s.Through)
	slices.Sort(s.Beside)
	return s
}

// add counts one field.
func (s *Score) add(f Field, seen []room.Wall) {
	l, a := f.Layout, f.Aligned
	for _, r := range l.Rips {
		e := a.Edges[r.Index]
		run := (e.To.X - e.From.X).Abs()
		if r.Narrowest < s.Narrowest && r.Narrowest < r.Width {
			s.Narrowest, s.At = r.Narrowest, r.Edge
		}
		if r.Narrowest < r.Width {
			s.Ripped += run
		}
	}
	for _, r := range l.AtFrames {
		if r.Narrowest < s.Narrowest && r.Narrowest < r.Width {
			s.Narrowest, s.At = r.Narrowest, r.Edge
		}
	}
	s.Closing += len(l.Rips) + len(l.AtFrames)
	s.Tapers = append(s.Tapers, f.Tapers(seen)...)
	for _, o := range l.Odd {
		s.Under += o.Under
	}
	for _, r := range l.Runs {
		if len(r.Must) > 0 || len(r.Shape[0].Tidy()) > 4 {
			s.Notched++
		}
		if slices.ContainsFunc(r.Nailing, func(s lay.Stretch) bool { return s.By != lay.Nailer }) {
			s.ByHand++
		}
	}
	for _, t := range l.Splines {
		s.Spline += t.Along.Len()
	}
	s.Starts += l.Starts
	lo, hi := f.Part.Bare.Box()
	s.AcrossWidth = max(s.AcrossWidth, hi.Y-lo.Y)
}

// Tapers are the rips of a field that are wider at one end; seen are the walls
// where a taper is seen whatever it measures.
func (f Field) Tapers(seen []room.Wall) []Taper {
	var out []Taper
	for _, r := range f.Layout.Rips {
		e := chord(f.Aligned, f.Aligned.Edges[r.Index])
		t, ok := taperOf(r, e, (e.To.X - e.From.X).Abs())
		if !ok {
			continue
		}
		t.Row = r.Row
		t.Shown = t.Shown || r.Wall != (room.Wall{}) && slices.ContainsFunc(seen, func(w room.Wall) bool { return w == r.Wall || w == (room.Wall{r.Wall[1], r.Wall[0]}) })
		out = append(out, t)
	}
	return out
}

// doorway says what happens at a doorway.
func (s *Score) doorway(d room.Doorway, b room.Built, fs []Field) {
	w, ok := wallDir(b, d.Wall)
	seam := floor.Seam{Doorway: d.Name}.Name()
	switch {
	case !ok:
	case slices.ContainsFunc(fs, func(f Field) bool {
		return slices.ContainsFunc(f.Part.Edges, func(e floor.AlignedEdge) bool { return e.Name == seam })
	}):
		s.Changes = append(s.Changes, d.Name)
	case math.Abs(plane.XY(w).Dot(plane.XY(fs[0].Layout.Dir))) < math.Sqrt2/2:
		s.Through = append(s.Through, d.Name)
	default:
		s.Beside = append(s.Beside, d.Name)
	}
	if d.Beyond != room.BeyondRoom {
		s.Transitions++
	}
}

// chord is an edge from end to end of the bowed wall that it is a part of: by
// itself half of a bow may lie along the rows though the wall does not.
func chord(a floor.Aligned, e floor.AlignedEdge) floor.AlignedEdge {
	from, to := e.From, e.To
	if from.X > to.X {
		from, to = to, from
	}
	for _, g := range a.Edges {
		if g.Group != e.Group || !g.Beside {
			continue
		}
		for _, p := range []plane.Pt{g.From, g.To} {
			if p.X < from.X {
				from = p
			}
			if p.X > to.X {
				to = p
			}
		}
	}
	e.From, e.To = from, to
	return e
}

// taperOf tells whether a rip tapers by more than a saw cut, and whether that
// will be seen: always at what is flush (tile, stone), where it is more than
// 1/4 in over 6 ft, or where one rip loses more than a quarter of its width.
func taperOf(r Rip, e floor.AlignedEdge, run tape.Length) (Taper, bool) {
	by := (r.Left - r.Right).Abs()
	if by < tape.Inch/32 || run == 0 {
		return Taper{}, false
	}
	t := Taper{Edge: r.Edge, By: by, slope: float64((e.To.Y - e.From.Y).Abs()) / float64(run)}
	t.Per6 = tape.Length(t.slope * float64(6*tape.Foot)) // play hides some of the taper, none of the slope
	t.play = e.Range.Play()
	t.Fits = tape.Length(float64(t.play) / max(t.slope, 1e-9))
	t.wall, t.run = r.Wall, run
	t.Shown = e.Kind == floor.Flush || t.Per6 >= Noticed || 4*by > max(r.Left, r.Right)
	return t, true
}

func joistsOf(b room.Built, d plane.Dir, joists room.Wall) Joists {
	j, ok := wallDir(b, joists)
	if !ok {
		return JoistsUnknown
	}
	switch c := math.Abs(plane.XY(j).Dot(plane.XY(d))); {
	case c > math.Cos(20*math.Pi/180):
		return AlongJoists
	case c < math.Sin(20*math.Pi/180):
		return AcrossJoists
	}
	return OverJoists
}

// Shift is what a slip would do to the rip at a closing edge.
type Shift struct {
	Edge         string
	Row          int
	Rip          tape.Length
	LineIn       tape.Length // rip with the start line 1/8 in further in
	LineOut      tape.Length // and 1/8 in nearer to the start wall
	WiderRows    tape.Length // with every row 0.5 mm wider
	NarrowerRows tape.Length // and 0.5 mm narrower
}

// How far the start line and the row width are varied.
const (
	lineSlip  = tape.Eighth
	pitchSlip = tape.Millimetre / 2
)

// Sensitivity is what 1/8 in at the start line, or 0.5 mm a row, would do at
// every closing edge of a share of the floor. Row lines are counted from the first
// one.
func Sensitivity(l Layout, a floor.Aligned, lim limits.Limits) []Shift {
	if len(l.Runs) == 0 {
		return nil
	}
	p := newProblem(a, l.Courses().Widths, lim)
	first := l.Runs[0].High
	var out []Shift
	for _, e := range p.closing {
		if a.Edges[e.index].Kind == floor.Meeting {
			continue // rows of two fields meet there: their lines are set to each other
		}
		rows := rowsBetween(l.Courses(), first, e.need) // row lines between the first and this edge
		at := func(line, wider tape.Length) tape.Length {
			return e.rip(p.lines(l.Offset + line + rows*wider))
		}
		out = append(out, Shift{Edge: a.Edges[e.index].Name, Row: l.rowAt(e), Rip: at(0, 0),
			LineIn: at(lineSlip, 0), LineOut: at(-lineSlip, 0), WiderRows: at(0, pitchSlip), NarrowerRows: at(0, -pitchSlip)})
	}
	return out
}

// rowsBetween counts the whole rows from a line up to a height, below 0 when it
// lies under it.
func rowsBetween(c lay.Courses, line, y tape.Length) tape.Length {
	if y >= line {
		return tape.Length(c.Row(y) - c.Row(line))
	}
	return tape.Length(c.Row(y-1) + 1 - c.Row(line))
}
