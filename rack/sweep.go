package rack

import "strake/tape"

// sweep is the places base + k units of a run, to be marked from the joints
// behind instead of asked about one by one.
type sweep struct {
	at   []int64
	base tape.Length
	unit tape.Length
}

// span gives the places from from to to, ends included, not before least.
func (w sweep) span(from, to tape.Length, least int) (lo, hi int) {
	lo = max(least, ceilDiv(from-w.base, w.unit))
	hi = min(len(w.at)-1, floorDiv(to-w.base, w.unit))
	return
}

func floorDiv(a, b tape.Length) int {
	q := a / b
	if a%b < 0 {
		q--
	}
	return int(q)
}

func ceilDiv(a, b tape.Length) int { return -floorDiv(-a, b) }

// joints marks every place with what shop.joint says of it.
func (w sweep) joints(s shop, least tape.Length, b behind) {
	for _, y := range b.one {
		reach := max(least, s.preferred)
		lo, hi := w.span(y-reach, y+reach, 0)
		for k := lo; k <= hi; k++ {
			d := (w.base + tape.Length(k)*w.unit - y).Abs()
			w.at[k] = max(w.at[k], s.near(d, least))
		}
	}
	w.add(s.looks(costH), s.hReach, b.two)
	w.clusters(s.looks(costCluster), s.clusters(b))
	for _, y := range b.one {
		w.stairs(s, y, b.two)
	}
}

// add adds a cost wherever one of sorted joints lies within reach, once.
func (w sweep) add(cost int64, reach tape.Length, at []tape.Length) {
	next := 0
	for _, y := range at {
		lo, hi := w.span(y-reach, y+reach, next)
		for k := lo; k <= hi; k++ {
			w.at[k] = sum(w.at[k], cost)
		}
		next = max(next, hi+1)
	}
}

// clusters adds a cost wherever one of stretches, sorted by their beginnings,
// lies, once; their ends count as outside.
func (w sweep) clusters(cost int64, at []span) {
	next := 0
	for _, y := range at {
		lo, hi := w.span(y.from+1, y.to-1, next)
		for k := lo; k <= hi; k++ {
			w.at[k] = sum(w.at[k], cost)
		}
		next = max(next, hi+1)
	}
}

// stairs adds what continues the shift from a joint two rows back to y.
func (w sweep) stairs(s shop, y tape.Length, two []tape.Length) {
	next, _ := w.span(y-s.stairFarthest, y+s.stairFarthest, 0)
	_, last := w.span(y-s.stairFarthest, y+s.stairFarthest, 0)
	for i := len(two) - 1; i >= 0; i-- { // from the last: the places then rise
		x := 2*y - two[i]
		if x > y+s.stairFarthest+s.stairReach {
			break
		}
		lo, hi := w.span(x-s.stairReach, x+s.stairReach, next)
		for k := lo; k <= min(hi, last); k++ {
			w.at[k] = sum(w.at[k], costStair)
		}
		next = max(next, hi+1)
	}
}
