package subfloor

import (
	"math"

	"strake/tape"
)

// Work is what makes a grid flat: the heights to have, mark by mark.
type Work struct {
	To          []tape.Length // like Grid.Height
	Off, Up     float64       // to take off and to build up, cubic metres, each mark standing for its square
	MostOff     tape.Length
	MostUp      tape.Length
	Flat        bool // the rule holds afterwards
	OffAt, UpAt int  // marks
}

// Change is what happens at a mark: above 0 build up, below 0 take off.
func (w Work) Change(g Grid, m Mark) tape.Length { return w.To[g.index(m)] - g.Height[g.index(m)] }

// finest is how near to its limit a place is brought, so that the last of a long
// row of ever smaller steps need not be made: 1/20 mm.
const finest = tape.Millimetre / 20

// tries and patience are how often a mark is moved on average before the first
// way is given up, and the second.
const (
	tries    = 20
	patience = 2000
)

// mostMoves bounds both on large grids: a floor that takes more is read wrongly,
// or is not mended mark by mark.
const mostMoves = 40_000

// Flatten looks for heights that hold the rule and take little work: again and
// again the place that is most over it is moved, a hump down and a dip up, until
// none is over. Nothing is taken off below most; what of a hump has to stay is
// made up for by building up to both sides.
//
// This is not the least work there is: it is what a person with a straightedge
// would do, worst place first. On a very rough floor that need not come to an
// end; then all three marks of the worst place are moved at once, each by no more
// than it takes. Floors that hold the rule and keep what may not be taken off are
// a convex set with an inside, and each such step goes nearer to all of it.
func (g Grid) Flatten(r Rule, most tape.Length) Work {
	f := newFlattening(g, r, most)
	w := Work{Flat: f.run(tries, f.move)}
	if !w.Flat {
		f = newFlattening(g, r, most)
		w.Flat = f.run(patience, f.share)
	}
	w.To = f.g.Height
	side := g.Step.Millimetres() / 1000
	for i, to := range w.To {
		d := to - g.Height[i]
		volume := d.Abs().Millimetres() / 1000 * side * side
		switch {
		case g.Hole != nil && g.Hole[i]:
		case d < 0:
			w.Off, w.MostOff, w.OffAt = w.Off+volume, max(w.MostOff, -d), w.OffAt+1
		case d > 0:
			w.Up, w.MostUp, w.UpAt = w.Up+volume, max(w.MostUp, d), w.UpAt+1
		}
	}
	return w
}

// flattening is the floor while it is made flat.
type flattening struct {
	g       Grid // as it has become
	least   []tape.Length
	rule    Rule
	lines   []line
	through [][]int // lines through each mark
	over    []Over  // the worst of each line
}

func newFlattening(g Grid, r Rule, most tape.Length) *flattening {
	f := &flattening{g: g, rule: r, lines: g.lines(r.Longest()), through: make([][]int, len(g.Height))}
	f.g.Height = append([]tape.Length(nil), g.Height...)
	for _, h := range g.Height {
		f.least = append(f.least, h-most)
	}
	f.over = make([]Over, len(f.lines))
	for i, l := range f.lines {
		for k := range l.n {
			m := g.index(l.mark(k))
			f.through[m] = append(f.through[m], i)
		}
		f.look(i)
	}
	return f
}

func (f *flattening) look(line int) { f.over[line], _ = f.g.worst(f.lines[line], f.rule) }

func (f *flattening) run(tries int, move func(Over)) bool {
	for range min(mostMoves, tries*len(f.g.Height)) {
		var worst Over
		for _, o := range f.over {
			if o.By() > worst.By() {
				worst = o
			}
		}
		if worst.By() <= finest {
			return true
		}
		move(worst)
	}
	return false
}

// move brings one place within its limit. A step goes a little past it, or the
// moves of neighbours would shrink for ever.
func (f *flattening) move(o Over) {
	by := o.By() + finest/2
	k := f.g.index(o.Most)
	if o.Side == Dip {
		f.raise(k, by)
		return
	}
	down := min(by, f.g.Height[k]-f.least[k])
	f.raise(k, -down)
	if left := by - down; left > 0 { // the top has to stay: its feet come up
		f.raise(f.g.index(o.From), left)
		f.raise(f.g.index(o.To), left)
	}
}

// share moves a place and the two marks that show it, each in proportion to what
// it does for the gap: the shortest step that brings it within its limit.
func (f *flattening) share(o Over) {
	i, j, k := f.g.index(o.From), f.g.index(o.To), f.g.index(o.Most)
	b := span(o.From, o.Most) / span(o.From, o.To)
	a := 1 - b
	by := float64(o.By()+finest/2) / (a*a + b*b + 1) * float64(o.Side)
	for _, m := range []struct {
		at    int
		share float64
	}{{k, 1}, {i, -a}, {j, -b}} {
		to := max(f.least[m.at], f.g.Height[m.at]+tape.Length(math.Round(m.share*by)))
		f.raise(m.at, to-f.g.Height[m.at])
	}
}

// span is how many marks lie from one to the other, in a measure that suits any
// straight line.
func span(a, b Mark) float64 { return math.Hypot(float64(b.Col-a.Col), float64(b.Row-a.Row)) }

func (f *flattening) raise(k int, by tape.Length) {
	if by == 0 {
		return
	}
	f.g.Height[k] += by
	for _, l := range f.through[k] {
		f.look(l)
	}
}
