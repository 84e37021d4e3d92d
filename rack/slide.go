package rack

import (
	"slices"

	"strake/tape"
)

// slid is a filling moved along its run as little as keeps its end tongue on,
// where the play at its near end and the joints allow it: no place on the unit
// may have done.
func (e *engine) slid(ps []placed, r run, b behind, least tape.Length) []placed {
	last := ps[len(ps)-1]
	back := last.end - (r.farReach - e.tongue)
	if !last.tongueOff || back <= 0 || ps[0].nearCut || ps[0].start-back < r.startLeast || last.end-back < r.wholeLeast {
		return ps
	}
	out := slices.Clone(ps)
	for i := range out {
		q := &out[i]
		was := q.start
		q.start, q.end = q.start-back, q.end-back
		if i > 0 && (r.forbidden(q.start) || e.joint(q.start, least, b) > e.joint(was, least, b)) {
			return ps
		}
		for _, s := range r.must {
			if q.start < s.from && q.end > s.to {
				return ps
			}
		}
	}
	out[len(out)-1].tongueOff = false
	return out
}

// forbidden tells whether no joint may fall at a place.
func (r run) forbidden(x tape.Length) bool {
	return slices.ContainsFunc(r.never, func(s span) bool { return s.from < x && x < s.to })
}
