package rack

import (
	"math"
	"slices"

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
	if e.lengthError == 0 && !e.untrusted {
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
	if e.untrusted || near+far < 2*margin {
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

// margin is twice what the boards of a run may be off together.
func (e *engine) margin(r run) tape.Length {
	n := 1.0
	if e.meanBoard > 0 {
		n = max(1, math.Ceil(float64(r.length())/float64(e.meanBoard)))
	}
	return tape.Length(math.Ceil(sureness * e.lengthError * math.Sqrt(n)))
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
