package row

import (
	"slices"

	"strake/floor"
	"strake/lay"
	"strake/limits"
	"strake/plane"
	"strake/tape"
)

// worthwhile is the shortest stretch that is fastened in a way of its own: 8 in,
// the most from fastener to fastener along solid plank (NWFA fastener schedule,
// 2019, as reprinted by Hardwood Floors, Aug/Sep 2025), less what rounding its
// ends may take.
const worthwhile = 8*tape.Inch - 16*tape.Tick

// zones sets how each run is fastened along its length. First and last rows
// are face-nailed (common practice, no source): wherever no row lies behind, or
// none ahead. Of the rest the floor nailer takes what leaves it room behind the
// tongue edge and ahead of it; what does not is nailed by hand through the
// tongue.
func (l *Layout) zones(a floor.Aligned, lim limits.Limits) {
	n := l.neighbours()
	rooms := sections{g: a.Bare, at: map[tape.Length][]plane.Span{}}
	for i := range l.Runs {
		r := &l.Runs[i]
		turns := append(l.besideTurns(n, *r), nailerTurns(a, *r, lim)...)
		r.Nailing = stretches(*r, turns, func(x tape.Length) lay.Fasten {
			switch behind, ahead := l.beside(n, *r, x); {
			case !behind || !ahead:
				return lay.FaceNail
			case !nailerFits(rooms.of(x), *r, lim):
				return lay.HandNail
			}
			return lay.Nailer
		})
	}
}

// stretches splits a run at turns, asks how each part is fastened in its
// middle, and joins what is too short to the longer neighbour.
func stretches(r Run, turns []tape.Length, by func(x tape.Length) lay.Fasten) []lay.Stretch {
	turns = append(turns, r.Left.Reach, r.Right.Reach)
	slices.Sort(turns)
	var out []lay.Stretch
	for i, to := range turns[1:] {
		if s := (plane.Span{From: turns[i], To: to}); !s.Empty() && s.From >= r.Left.Reach && s.To <= r.Right.Reach {
			out = append(out, lay.Stretch{Along: s, By: by(s.From + s.Len()/2)})
		}
	}
	out = cramped(joined(out))
	for len(out) > 1 {
		k := shortest(out)
		if out[k].Along.Len() >= worthwhile {
			break
		}
		out[k].By = out[longerBeside(out, k)].By
		out = joined(out)
	}
	return out
}

// cramped joins short stretches where the nailer has no room to each other
// first: two of them side by side are too long to give to the nailer. Of two
// short ones both are face-nailed.
func cramped(ss []lay.Stretch) []lay.Stretch {
	for i := 0; i+1 < len(ss); i++ {
		a, b := &ss[i], &ss[i+1]
		short, shortB := a.Along.Len() < worthwhile, b.Along.Len() < worthwhile
		switch {
		case a.By == lay.Nailer || b.By == lay.Nailer || !short && !shortB:
			continue
		case short && shortB:
			a.By, b.By = lay.FaceNail, lay.FaceNail
		case short:
			a.By = b.By
		default:
			b.By = a.By
		}
		ss = joined(ss)
		i = -1
	}
	return ss
}

// joined makes one of neighbours that are fastened alike.
func joined(ss []lay.Stretch) []lay.Stretch {
	var out []lay.Stretch
	for _, s := range ss {
		if n := len(out); n > 0 && out[n-1].By == s.By {
			out[n-1].Along.To = s.Along.To
			continue
		}
		out = append(out, s)
	}
	return out
}

// shortest is the index of the shortest stretch.
func shortest(ss []lay.Stretch) int {
	k := 0
	for i, s := range ss {
		if s.Along.Len() < ss[k].Along.Len() {
			k = i
		}
	}
	return k
}

// longerBeside is the index of the longer neighbour of the k-th of two
// stretches or more.
func longerBeside(ss []lay.Stretch, k int) int {
	switch {
	case k == 0:
		return 1
	case k == len(ss)-1 || ss[k-1].Along.Len() >= ss[k+1].Along.Len():
		return k - 1
	}
	return k + 1
}

// neighbours are runs by the line that they have below them, and by that above,
// in the order of laying.
type neighbours struct{ byLow, byHigh map[tape.Length][]int }

func (l *Layout) neighbours() neighbours {
	n := neighbours{byLow: map[tape.Length][]int{}, byHigh: map[tape.Length][]int{}}
	for i, r := range l.Runs {
		n.byLow[r.Low], n.byHigh[r.High] = append(n.byLow[r.Low], i), append(n.byHigh[r.High], i)
	}
	return n
}

// sections are the upright sections of a region, each made once: most turns of a
// run are turns of others too.
type sections struct {
	g  plane.Region
	at map[tape.Length][]plane.Span
}

// of is the section just to the right of x.
func (s sections) of(x tape.Length) []plane.Span {
	out, ok := s.at[x]
	if !ok {
		out = s.g.Section(x, false)
		s.at[x] = out
	}
	return out
}

// besideTurns are the ends of the rows behind and ahead of a run.
func (l *Layout) besideTurns(n neighbours, r Run) []tape.Length {
	var out []tape.Length
	for _, is := range [2][]int{n.byHigh[r.Low], n.byLow[r.High]} {
		for _, i := range is {
			o := &l.Runs[i]
			out = append(out, o.Left.Reach, o.Left.Need, o.Right.Need, o.Right.Reach)
			for _, y := range []tape.Length{r.Low, r.High} {
				for _, s := range append(onLine(o.Shape, y), onLine(r.Shape, y)...) {
					out = append(out, s.From, s.To)
				}
			}
		}
	}
	return out
}

// beside tells whether at x a row surely lies behind the run, and ahead of it:
// both come to the line between them there, and no wall stands in it. Where a row
// may end in the play of its gap is not known yet: it is counted to where it must.
func (l *Layout) beside(n neighbours, r Run, x tape.Length) (behind, ahead bool) {
	lies := func(is []int, y tape.Length) bool {
		return comesTo(&r, y, x) && slices.ContainsFunc(is, func(i int) bool {
			o := &l.Runs[i]
			return o.Left.Need <= x && x <= o.Right.Need && comesTo(o, y, x)
		})
	}
	behind, ahead = lies(n.byHigh[r.Low], r.Low), lies(n.byLow[r.High], r.High)
	if r.Ahead < 0 {
		return ahead, behind
	}
	return
}

// comesTo tells whether a run lies at its line y at x.
func comesTo(r *Run, y, x tape.Length) bool {
	if x < r.Left.Reach || x > r.Right.Reach {
		return false
	}
	for _, ring := range r.Shape {
		for i, p := range ring {
			if q := ring[(i+1)%len(ring)]; p.Y == y && q.Y == y && p.X != q.X && min(p.X, q.X) <= x && x <= max(p.X, q.X) {
				return true
			}
		}
	}
	return false
}

// nailerTurns is where the room for the nailer can begin or end: at corners of
// the floor, and where a wall crosses the tongue edge or either clearance.
func nailerTurns(a floor.Aligned, r Run, lim limits.Limits) []tape.Length {
	var out []tape.Length
	sense := tape.Length(r.Ahead)
	levels := []tape.Length{r.Front(), r.Front() - sense*lim.NailerBehind.Value, r.Front() + sense*lim.NailerAhead.Value}
	for _, ring := range a.Bare {
		for i, p := range ring {
			q := ring[(i+1)%len(ring)]
			out = append(out, p.X)
			for _, y := range levels {
				if p.Y != q.Y && min(p.Y, q.Y) < y && y < max(p.Y, q.Y) {
					out = append(out, p.X+tape.Length(float64(q.X-p.X)*float64(y-p.Y)/float64(q.Y-p.Y)))
				}
			}
		}
	}
	return out
}

// nailerFits tells whether a floor nailer has room in a section of the floor: from
// the tongue edge back to the wall behind, and on to the wall ahead.
func nailerFits(section []plane.Span, r Run, lim limits.Limits) bool {
	for _, s := range section {
		if y := r.Front(); s.From < y && y < s.To {
			behind, ahead := y-s.From, s.To-y
			if r.Ahead < 0 {
				behind, ahead = ahead, behind
			}
			return behind >= lim.NailerBehind.Value && ahead >= lim.NailerAhead.Value
		}
	}
	return false
}
