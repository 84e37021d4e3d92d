package subfloor

import "strake/tape"

// Reading is what a straightedge showed at one place.
type Reading struct {
	Place string
	Edge  tape.Length // the straightedge, or the distance of the two points it lay on
	Gap   tape.Length // largest, under it; of a hump under each end, held so that both are alike
	Hump  bool
	Long  tape.Length // how far the dip or hump reaches along it, 0: as long as the straightedge
	Wide  tape.Length // and across it, 0: not told
}

// Holds says what a reading proves.
type Holds int

// What it may prove.
const (
	Unsure Holds = iota // a shorter or longer straightedge would have to tell
	Passes
	Fails
)

// Judge holds a reading to a rule. The largest gap under a long straightedge is
// never less than that under a short one. So what a 6 ft straightedge may show at
// most also fails under a 4 ft one, and passes under an 8 ft one as far as the
// 6 ft figure goes; the rest cannot be told. Limit is the figure that decided, or
// the nearest one where it cannot be told.
func (r Rule) Judge(x Reading) (Holds, Limit) {
	if r.Apart {
		gap, ok := r.Between(x.Edge)
		switch {
		case !ok && x.Gap > r.At[len(r.At)-1].Gap:
			return Unsure, r.At[len(r.At)-1]
		case !ok:
			return Passes, r.At[len(r.At)-1]
		case x.Gap > gap:
			return Fails, Limit{x.Edge, gap}
		}
		return Passes, Limit{x.Edge, gap}
	}
	for i, a := range r.At {
		switch {
		case x.Edge <= a.Length && x.Gap > a.Gap:
			return Fails, a
		case x.Edge == a.Length:
			return Passes, a
		case x.Edge < a.Length && i == 0:
			return Unsure, a // too short to prove anything good
		case x.Edge < a.Length && x.Gap <= r.At[i-1].Gap:
			return Passes, r.At[i-1] // and what a longer one would add is not known
		case x.Edge < a.Length:
			return Unsure, r.At[i-1]
		}
	}
	last := r.At[len(r.At)-1]
	if x.Gap <= last.Gap {
		return Passes, last
	}
	return Unsure, last
}

// bowl is the volume under a shallow bowl, or of a shallow crown, against the
// block round it: two thirds each way of what a parabola fills.
const bowl = 4.0 / 9

// Volume is about what fills a dip to the straightedge or what a hump holds, in
// cubic metres; ok is false where its width was not told.
func (x Reading) Volume() (cubicMetres float64, ok bool) {
	long := x.Long
	if long == 0 {
		long = x.Edge
	}
	return bowl * x.Gap.Millimetres() * long.Millimetres() * x.Wide.Millimetres() / 1e9, x.Wide > 0
}
