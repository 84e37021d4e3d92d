package row

import (
	"cmp"
	"fmt"
	"slices"

	"strake/tape"
)

// ripped is what is left of a board along an edge. Rips from boards of several
// widths are compared by the share of the board they keep: 1-1/2 in of a 2 in
// board is a better row than 2 in of 5.
type ripped struct{ left, of, limit tape.Length }

// sliver tells whether less is left than may be.
func (r ripped) sliver() bool { return r.left < r.limit }

// compare is negative where less of its board is left than of s.
func (r ripped) compare(s ripped) int { return cmp.Compare(r.left*s.of, s.left*r.of) }

// spares tells whether the rip that keeps least of its board keeps more here
// than in t.
func (s score) spares(t score) bool {
	if len(s.rips) == 0 || len(t.rips) == 0 {
		return len(s.rips) < len(t.rips)
	}
	return s.rips[0].compare(t.rips[0]) > 0
}

// tell is the rip that keeps least of its board in words, with the width of
// that board where there are several.
func (s score) tell(full tape.Length, style tape.Style) string {
	out := style.Of(s.narrowest(full))
	if slices.ContainsFunc(s.rips, func(r ripped) bool { return r.of != full }) {
		out += fmt.Sprintf(" of a row of %s", style.Of(s.rips[0].of))
	}
	return out
}
