package rack

import (
	"slices"

	"strake/tape"
)

// behind is what lies beside a run: joints in the rows next to it, and in the
// ones beyond those, along the run as racked, sorted. While a floor is filled
// that is mostly the row it is pushed against; once it is, both sides.
type behind struct {
	one, two []tape.Length
	side     [2][]tape.Length // the joints of one, by side
	hot      []tape.Length    // joints of one that are themselves near one beyond: a third would make a cluster
}

// sides gathers what lies on both sides of a run.
func (s shop) sides(ones, twos [2][]tape.Length) behind {
	b := behind{side: ones}
	for i := range ones {
		b.one = append(b.one, ones[i]...)
		b.two = append(b.two, twos[i]...)
		for _, x := range ones[i] {
			if nearest(twos[i], x) < s.preferred {
				b.hot = append(b.hot, x)
			}
		}
	}
	slices.Sort(b.one)
	slices.Sort(b.two)
	slices.Sort(b.hot)
	return b
}

// joint is what a joint at p costs against the rows beside; impossible when it
// is nearer than least to one of them.
func (s shop) joint(p, least tape.Length, b behind) int64 {
	c := s.near(nearest(b.one, p), least)
	if c >= impossible {
		return impossible
	}
	if len(b.two) > 0 && nearest(b.two, p) <= s.hReach {
		c += s.looks(costH)
	}
	if s.clustered(p, b) {
		c += s.looks(costCluster)
	}
	return c + s.stairs(p, b)
}

// clustered tells whether a joint at p is one of three or more in neighbouring
// rows, each under the preferred distance from the next: near one that is near
// one beyond, or near one on either side.
func (s shop) clustered(p tape.Length, b behind) bool {
	return nearest(b.hot, p) < s.preferred ||
		nearest(b.side[0], p) < s.preferred && nearest(b.side[1], p) < s.preferred
}

// clusters are the stretches in which a joint would make a cluster: open at
// both ends, and some may overlap.
func (s shop) clusters(b behind) []span {
	var out []span
	for _, x := range b.hot {
		out = append(out, span{x - s.preferred, x + s.preferred})
	}
	for _, x := range b.side[0] {
		for _, y := range b.side[1] {
			if sp := (span{max(x, y) - s.preferred, min(x, y) + s.preferred}); sp.from < sp.to {
				out = append(out, sp)
			}
		}
	}
	slices.SortFunc(out, func(a, b span) int { return int(a.from - b.from) })
	return out
}
