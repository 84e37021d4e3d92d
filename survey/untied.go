package survey

import (
	"fmt"
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"

	"strake/finding"
	"strake/tape"
)

// untied names doorways between rooms that no reading goes through, where one
// would say more of how the rooms lie than the doorway's own figures do. A slip
// in those shows in no reading, however well each room is checked.
func (r Result) untied(rs []Reading, style tape.Style) []finding.Finding {
	var out []finding.Finding
	var ties []candidate
	var sure *mat.SymDense
	for _, d := range r.Built.Doorways {
		near, far, ok := r.sides(r.net.roomOf(d.Wall[0]), d)
		if !ok || d.Name == "" || r.tied(rs, near.room, far.room) {
			continue
		}
		if ties == nil {
			ties, _ = r.candidates(r.net.with(), r.x, rs, r.step)
			sure = r.doorsExact(rs)
		}
		best, sd := r.bestTie(ties, d.Name, sure)
		if best < 0 {
			continue
		}
		out = append(out, finding.Finding{Level: finding.Warn, Rule: "rooms tied by a reading",
			Where: fmt.Sprintf("%s, between %s and %s", d.Said(), r.Built.Rooms[near.room].Name, r.Built.Rooms[far.room].Name),
			Measured: fmt.Sprintf("no reading goes through it, so an error in its figures would not show; %s is in doubt by %s (2 standard deviations)",
				ties[best].ask.Reading.Name(), style.Up(ticks(2*sd))),
			Limit: "a reading through it",
			Do:    "Measure " + ties[best].ask.Name(style) + "."})
	}
	return out
}

// says is the doubt, in a tape's deviations squared, that a doorway's own
// figures must put into a reading through it for that reading to be asked for.
const says = 1

// bestTie is the reading through a doorway into which the doorway's own figures
// put most doubt, -1 where none is worth taking, and its standard deviation, mm.
// sure is the covariance were they exact.
func (r Result) bestTie(cands []candidate, doorway string, sure *mat.SymDense) (int, float64) {
	best, worst, sd := -1, float64(says), 0.0
	if r.covariance == nil || sure == nil {
		return best, sd
	}
	for k, c := range cands {
		if c.ask.Through != doorway {
			continue
		}
		row := slices.DeleteFunc(slices.Clone(c.row), func(e entry) bool { return e.i == r.net.scale() })
		q := quadratic(r.covariance, row)
		if v := (q - quadratic(sure, row)) * c.ask.ease(); v > worst*(1+1e-9) {
			best, worst, sd = k, v, c.sd*math.Sqrt(q)
		}
	}
	return best, sd
}

// doorsExact is the covariance of the unknowns were every doorway as given.
func (r Result) doorsExact(rs []Reading) *mat.SymDense {
	m := r.model
	m.DoorMM /= 100
	return r.net.inverse(r.net.observations(rs, m), append([]float64(nil), r.x...))
}

// tied tells whether a reading goes from one of two rooms to the other.
func (r Result) tied(rs []Reading, i, j int) bool {
	for _, v := range rs {
		if !r.net.usable(v) {
			continue
		}
		a, b := r.net.roomOf(v.From), r.net.roomOf(v.Wall[0])
		if v.To != "" {
			a, b = r.net.roomOf(v.To), a
		}
		if a == i && b == j || a == j && b == i {
			return true
		}
	}
	return false
}
