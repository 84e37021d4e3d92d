package drawing

import (
	"fmt"
	"math"

	"strake/plan"
	"strake/plane"
	"strake/row"
	"strake/sheet"
	"strake/tape"
	"strake/words"
)

// The page of the choices, A3 across, and one cell of it.
const (
	choiceW, choiceH = 420.0, 297.0
	choiceEdge       = 12.0
	choiceCols       = 3
)

// Choices draws each way to lay the rows, all with the same wall at the top so
// that they can be compared: ripped rows tinted, the start row marked.
func Choices(c plan.Choices) sheet.Sheet {
	s := sheet.Sheet{Title: c.Job.Name + ", ways to lay the rows", W: choiceW, H: choiceH}
	name := sheet.Text{Text: c.Job.Name + ": ways to lay the rows", At: sheet.Pt{X: choiceEdge, Y: choiceEdge + 6}, Size: 7, Bold: true, Ink: sheet.Black}
	name.Size = min(name.Size, name.Size*(choiceW-2*choiceEdge)/name.Width())
	s.Put(name, sheet.Text{Text: ChoicesKey, At: sheet.Pt{X: choiceEdge, Y: choiceEdge + 13}, Size: 3.5, Ink: sheet.Black})
	choices(&s, c, box{sheet.Pt{X: choiceEdge, Y: choiceEdge + 20}, sheet.Pt{X: choiceW - choiceEdge, Y: choiceH - choiceEdge}}, choiceCols)
	return s
}

// ChoicesKey says how the drawing of the choices is read.
const ChoicesKey = "Seen from above, all turned alike. Grey rows are ripped; the heavy line is the front of the first long row, a dashed one a spline."

// ChoicesIn are the ways to lay the rows drawn into w by h mm, in so many columns.
func ChoicesIn(c plan.Choices, w, h float64, cols int) []sheet.Item {
	var s sheet.Sheet
	choices(&s, c, box{sheet.Pt{}, sheet.Pt{X: w, Y: h}}, cols)
	return s.Items
}

func choices(s *sheet.Sheet, c plan.Choices, b box, cols int) {
	say := words.In(c.Job.Unit)
	rows := max(2, (len(c.Candidates)+cols-1)/cols)
	w, h := b.w()/float64(cols), b.h()/float64(rows)
	for i, k := range c.Candidates {
		x, y := b.a.X+float64(i%cols)*w, b.a.Y+float64(i/cols)*h
		foot := y + h
		write := func(text string, size float64, bold bool) {
			wide := w - 8
			if bold {
				wide /= 1.15 // bold letters are wider by no more
			}
			for _, l := range sheet.Wrap(text, size, wide) {
				s.Put(sheet.Text{Text: l, At: sheet.Pt{X: x, Y: y + size}, Size: size, Bold: bold, Ink: sheet.Black})
				y += size * 1.35
			}
		}
		write(fmt.Sprintf("%d  %s", i+1, k.Heading), 4.4, true)
		if k.Variant != row.Plain {
			write(string(k.Variant), 3.4, true)
		}
		write(ripNote(k.Score, say)+"; "+joistNote(k.Score.Joists), 3, false)
		choice(s, k, c.Candidates[0].Layout.Dir, x, y+2, w-8, foot-y-6)
	}
}

// ripNote is the narrowest rip of a candidate, with where it lies.
func ripNote(s row.Score, say words.Lengths) string {
	switch {
	case s.Closing == 0:
		return "no row closes along a wall"
	case s.At == "":
		return "every closing row a full board"
	}
	return fmt.Sprintf("narrowest rip %s at %s", say.Rip(s.Narrowest), s.At)
}

// joistNote is how rows lie to the joists, or that these are not known.
func joistNote(j row.Joists) string {
	if j == row.JoistsUnknown {
		return "joists " + string(j)
	}
	return string(j)
}

// choice draws one candidate into a box. All are turned so that the first
// candidate's rows lie level.
func choice(s *sheet.Sheet, k row.Candidate, level plane.Dir, x, y, w, h float64) {
	at := k.Layout.Dir // of what is drawn now
	turn := func(p plane.Pt) plane.XY {
		q := at.FromRow(p)
		v := plane.XY(level)
		return plane.XY{X: v.Dot(q), Y: v.Cross(q)}
	}
	lo, hi := plane.XY{X: math.Inf(1), Y: math.Inf(1)}, plane.XY{X: math.Inf(-1), Y: math.Inf(-1)}
	for _, r := range k.Aligned.Bare {
		for _, p := range r {
			q := turn(p)
			lo.X, lo.Y, hi.X, hi.Y = math.Min(lo.X, q.X), math.Min(lo.Y, q.Y), math.Max(hi.X, q.X), math.Max(hi.Y, q.Y)
		}
	}
	scale := math.Min(w/(hi.X-lo.X), h/(hi.Y-lo.Y))
	place := func(p plane.Pt) sheet.Pt {
		q := turn(p)
		return sheet.Pt{X: x + (q.X-lo.X)*scale, Y: y + (hi.Y-q.Y)*scale}
	}
	path := func(r plane.Ring) []sheet.Pt {
		out := make([]sheet.Pt, len(r))
		for i, p := range r {
			out[i] = place(p)
		}
		return out
	}
	for _, f := range k.Fields {
		at = f.Layout.Dir
		for _, r := range f.Layout.Runs {
			fill := sheet.White
			if r.Widest < r.High-r.Low {
				fill = sheet.Light
			}
			var rings [][]sheet.Pt
			for _, g := range r.Shape {
				rings = append(rings, path(g))
			}
			s.Put(sheet.Polygon{Rings: rings, Fill: fill, Pen: sheet.Pen{Width: 0.15, Ink: sheet.Mid}})
		}
		for _, t := range f.Layout.Splines {
			s.Put(sheet.Polyline{Points: []sheet.Pt{place(plane.P(t.Along.From, t.Y)), place(plane.P(t.Along.To, t.Y))}, Pen: splinePen})
		}
	}
	at = k.Layout.Dir
	for _, r := range k.Aligned.Bare {
		s.Put(sheet.Polygon{Rings: [][]sheet.Pt{path(r)}, Pen: sheet.Pen{Width: 0.6, Ink: sheet.Black}})
	}
	if f, ok := firstLong(k.Layout.Runs); ok {
		s.Put(sheet.Polyline{Points: []sheet.Pt{place(plane.P(f.Left.Reach, f.Front())), place(plane.P(f.Right.Reach, f.Front()))}, Pen: sheet.Pen{Width: 0.9, Ink: sheet.Black}})
	}
}

// firstLong is the run laid first of those half as long as the longest: one in a
// doorway's depth is no line to see a floor by.
func firstLong(runs []row.Run) (first row.Run, ok bool) {
	most := tape.Length(0)
	for _, r := range runs {
		most = max(most, r.Length())
	}
	for _, r := range runs {
		if 2*r.Length() >= most && (!ok || r.Order < first.Order) {
			first, ok = r, true
		}
	}
	return
}
