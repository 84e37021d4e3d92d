package rack

import (
	"math"
	"slices"

	"strake/stock"
	"strake/tape"
)

// exact lets a run close with whole boards wherever its gaps allow.
func (r *run) exact() {
	r.startLeast, r.startMost = r.nearReach, r.nearNeed
	r.wholeLeast, r.wholeMost = r.farNeed, r.farReach
}

// sureness is how many standard deviations of its boards' lengths a run has to
// keep from both limits to be planned without a cut.
const sureness = 2

// doubted takes from the play of a run what its boards may be off, at the short
// and at the long limit of its length: each by twice the length error. The two
// ends give in proportion to their play, so that nothing else is lost. Where
// no play is left the last piece is cut to measure.
//
// A board that is cut is longer than what it has to be by as much, so that it is
// long enough, and by the blade.
func (e *engine) doubted(r run) run {
	off, untrusted := e.doubtOf(r)
	if off == 0 && !untrusted {
		return r
	}
	margin := e.margin(r)
	if r.spare = max(e.blade, margin); r.farCut {
		return r
	}
	near, far := r.nearNeed-r.nearReach, r.farReach-r.farNeed
	if r.nearCut {
		near = 0 // a cut first piece begins where it was cut to begin
	}
	if untrusted || near+far < 2*margin {
		r.farCut, r.unsure = true, true
		return r
	}
	give := tape.Length(0)
	if near+far > 0 {
		give = tape.Length(float64(margin) * float64(near) / float64(near+far))
	}
	r.startLeast, r.startMost = r.nearReach+give, r.nearNeed-give
	r.wholeLeast, r.wholeMost = r.farNeed+margin-give, r.farReach-margin+give
	return r
}

// dared is a run that closes whole though its lengths may be off by more than
// its play: in the middle half of it.
func dared(r run) run {
	r.unsure, r.farCut = false, false
	near, far := r.nearNeed-r.nearReach, r.farReach-r.farNeed
	r.startLeast, r.startMost = r.nearReach+near/4, r.nearNeed-near/4
	r.wholeLeast, r.wholeMost = r.farNeed+far/4, r.farReach-far/4
	return r
}

// doubtsOf are the boards of each width by what their rows take up; nil where
// all are alike.
func doubtsOf(a Ask) map[tape.Length]stock.Boards {
	if len(a.Boards.Widths) == 0 {
		return nil
	}
	out := map[tape.Length]stock.Boards{}
	for _, b := range a.Boards.Each() {
		out[b.Pitch()] = b
	}
	return out
}

// doubtOf is what the length of a board for a run may be off, and whether its
// tally is not trusted.
func (e *engine) doubtOf(r run) (off float64, untrusted bool) {
	if b, ok := e.doubts[r.wide()]; ok {
		return b.LengthError(), b.Doubted && b.Known == stock.Tallied
	}
	return e.lengthError, e.untrusted
}

// margin is twice what the boards of a run may be off together.
func (e *engine) margin(r run) tape.Length {
	n := 1.0
	if e.meanBoard > 0 {
		n = max(1, math.Ceil(float64(r.length())/float64(e.meanBoard)))
	}
	off, _ := e.doubtOf(r)
	return tape.Length(math.Ceil(sureness * off * math.Sqrt(n)))
}

// trusted are the runs as they would be were all lengths exact.
func trusted(runs []run) []run {
	out := slices.Clone(runs)
	for i := range out {
		r := &out[i]
		if r.unsure {
			r.farCut, r.unsure = false, false
		}
		r.spare = 0
		r.exact()
	}
	return out
}
