package subfloor

import "strake/tape"

// Side says which way a floor is off a straightedge.
type Side int

// The two ways.
const (
	Dip  Side = 1  // below the line of two high points
	Hump Side = -1 // above the line of two low ones: a straightedge on two equal blocks, or held so that both its ends stand off alike
)

// Rest is one way that a straightedge lies: on two marks with none between them
// on its other side, and the mark that is farthest from it.
type Rest struct {
	Side           Side
	From, To, Most Mark
	Apart          tape.Length // of the two marks it lies on
	Gap            tape.Length // at Most, to the nearest tick
}

// rests are all ways that a straightedge up to so long lies along a line, with a
// gap under it.
//
// Two marks carry it when the slope from the first to the second is no less than
// that to any mark between them, so one pass from each mark finds all its
// partners. For humps the floor is turned over.
func (g Grid) rests(l line, s Side, longest tape.Length, each func(Rest)) {
	h := make([]tape.Length, l.n)
	for k := range h {
		v, _ := g.At(l.mark(k))
		h[k] = v * tape.Length(s)
	}
	for i := range h {
		steepest := i + 1 // of those passed
		for j := i + 2; j < l.n && tape.Length(j-i)*l.step <= longest; j++ {
			// slope to j against slope to the steepest between, by cross products
			if (h[j]-h[i])*tape.Length(steepest-i) < (h[steepest]-h[i])*tape.Length(j-i) {
				continue
			}
			steepest = j
			most, off := deepest(h, i, j)
			if off > 0 {
				n := tape.Length(j - i)
				each(Rest{s, l.mark(i), l.mark(j), l.mark(most), n * l.step, (off + n/2) / n})
			}
		}
	}
}

// deepest is the mark farthest below the line from i to j, and how far, times j-i.
func deepest(h []tape.Length, i, j int) (most int, off tape.Length) {
	for k := i + 1; k < j; k++ {
		if o := h[i]*tape.Length(j-k) + h[j]*tape.Length(k-i) - h[k]*tape.Length(j-i); o > off {
			most, off = k, o
		}
	}
	return most, off
}

// Gap is the largest gap under a straightedge of a length anywhere on the grid,
// dips or humps, 0 where there is none.
func (g Grid) Gap(s Side, longest tape.Length) Rest {
	var worst Rest
	for _, l := range g.lines(longest) {
		g.rests(l, s, longest, func(r Rest) {
			if r.Gap > worst.Gap {
				worst = r
			}
		})
	}
	return worst
}

// Over is a place that a rule does not let pass.
type Over struct {
	Rest
	Limit Limit
}

// By is how much it is over.
func (o Over) By() tape.Length { return o.Gap - o.Limit.Gap }

// worst is the place of a line that is most over the rule, if any is.
func (g Grid) worst(l line, r Rule) (Over, bool) {
	var worst Over
	for _, s := range []Side{Dip, Hump} {
		g.rests(l, s, r.Longest(), func(x Rest) {
			if lim, ok := r.For(x.Apart); ok && x.Gap-lim.Gap > worst.By() {
				worst = Over{x, lim}
			}
		})
	}
	return worst, worst.By() > 0
}

// Over are the marks that a rule does not let pass, each with the straightedge
// that shows it worst, in the order of the grid.
func (g Grid) Over(r Rule) []Over {
	at := map[Mark]Over{}
	for _, l := range g.lines(r.Longest()) {
		for _, s := range []Side{Dip, Hump} {
			g.rests(l, s, r.Longest(), func(x Rest) {
				if lim, ok := r.For(x.Apart); ok && x.Gap-lim.Gap > max(0, at[x.Most].By()) {
					at[x.Most] = Over{x, lim}
				}
			})
		}
	}
	var out []Over
	for i := range g.Height {
		if o, ok := at[Mark{i % g.Cols, i / g.Cols}]; ok {
			out = append(out, o)
		}
	}
	return out
}
