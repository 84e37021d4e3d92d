package survey

import (
	"fmt"
	"math"
	"sort"
	"strings"

	"strake/finding"
	"strake/room"
	"strake/tape"
)

// gross is how many of its own standard deviations a reading may miss before
// it is named; the search for the one that is wrong has its own test.
const gross = 4.0

// Findings says what the fit says of the readings and of the room.
func (r Result) Findings(rs []Reading, style tape.Style) []finding.Finding {
	var out []finding.Finding
	for _, name := range r.Apart {
		out = append(out, finding.Finding{Level: finding.Stop, Rule: "rooms that hang together", Where: name,
			Measured: "no doorway joins it to the first room", Do: "Give the doorway between them, with its distance from a corner in each."})
	}
	if !r.Converged {
		out = append(out, finding.Finding{Level: finding.Stop, Rule: "readings that close",
			Measured: "no shape fits these readings", Do: "Look for a reading written against the wrong corners, and check which corners stand into the room."})
		return out
	}
	out = append(out, r.assumed(rs)...)
	out = append(out, r.misses(rs, style)...)
	for _, rm := range r.Built.Rooms {
		out = append(out, r.outOfSquare(rm, style)...)
		out = append(out, r.outOfParallel(rm, style)...)
	}
	return out
}

// assumed says that the shape rests on corners taken for square, and which
// reading would do most about it.
func (r Result) assumed(rs []Reading) []finding.Finding {
	if r.Redundant >= 0 {
		return nil
	}
	f := finding.Finding{Level: finding.Warn, Rule: "shape rests on assumed square corners",
		Measured: fmt.Sprintf("%d independent readings short of a fixed shape", -r.Redundant),
		Limit:    fmt.Sprintf("%d are needed", r.shape()-r.hard())}
	if next, sd := r.NextReading(rs); next != "" {
		f.Do = fmt.Sprintf("Measure %s next: it is in doubt by %.0f mm (2 standard deviations).", next, 2*sd)
	}
	return []finding.Finding{f}
}

// NextReading is the distance between two corners of one room, not read yet,
// that is most in doubt, with its standard deviation in mm.
func (r Result) NextReading(rs []Reading) (string, float64) {
	read := map[string]bool{}
	for _, x := range rs {
		read[x.From+"-"+x.To], read[x.To+"-"+x.From] = true, true
	}
	best, worst := "", 0.0
	for _, rm := range r.Built.Rooms {
		ring := rm.Ring()
		for i, a := range ring {
			for _, b := range ring[i+1:] {
				if read[a+"-"+b] || !r.sees(ring, a, b) {
					continue
				}
				if sd := r.DistanceSD(a, b); sd > worst+1e-6 {
					best, worst = a+"-"+b, sd
				}
			}
		}
	}
	return best, worst
}

// sees tells whether a tape can be pulled straight from a to b inside the room.
func (r Result) sees(ring []string, a, b string) bool {
	p, q := r.Built.At[a], r.Built.At[b]
	n := len(ring)
	for i := range ring {
		c, d := ring[i], ring[(i+1)%n]
		if c == a || c == b || d == a || d == b {
			continue
		}
		u, v := r.Built.At[c], r.Built.At[d]
		side := q.Sub(p)
		if side.Cross(u.Sub(p))*side.Cross(v.Sub(p)) < 0 && v.Sub(u).Cross(p.Sub(u))*v.Sub(u).Cross(q.Sub(u)) < 0 {
			return false
		}
	}
	return r.net.within(p.Add(q).Times(0.5), r.x) || neighbours(ring, a, b)
}

func neighbours(ring []string, a, b string) bool {
	for i, c := range ring {
		d := ring[(i+1)%len(ring)]
		if c == a && d == b || c == b && d == a {
			return true
		}
	}
	return false
}

// DistanceSD is the standard deviation of a distance between two corners (mm),
// infinite where nothing fixes it.
func (r Result) DistanceSD(a, b string) float64 {
	if r.covariance == nil {
		return math.Inf(1)
	}
	u := r.Built.At[b].Sub(r.Built.At[a])
	if u.Len() == 0 {
		return 0
	}
	u = u.Unit()
	i, j := r.net.index[a], r.net.index[b]
	terms := []entry{{i, -u.X}, {i + 1, -u.Y}, {j, u.X}, {j + 1, u.Y}}
	sum := 0.0
	for _, p := range terms {
		for _, q := range terms {
			sum += p.v * q.v * r.covariance.At(p.i, q.i)
		}
	}
	return math.Sqrt(math.Max(0, sum))
}

// misses names readings that the fitted room does not bear out.
func (r Result) misses(rs []Reading, style tape.Style) []finding.Finding {
	var bad []int
	for i, v := range r.Residuals {
		if !math.IsNaN(v) && math.Abs(v) > gross*r.Deviation[i] {
			bad = append(bad, i)
		}
	}
	sort.SliceStable(bad, func(a, b int) bool {
		return math.Abs(r.Residuals[bad[a]])/r.Deviation[bad[a]] > math.Abs(r.Residuals[bad[b]])/r.Deviation[bad[b]]
	})
	if len(bad) == 0 {
		return nil
	}
	var names []string
	for _, i := range bad {
		names = append(names, rs[i].From+"-"+rs[i].To)
	}
	worst := bad[0]
	f := finding.Finding{Level: finding.Warn, Rule: "readings that do not agree", Where: strings.Join(names, ", "),
		Measured: fmt.Sprintf("%s misses the fitted room by %s", names[0], style.Of(ticks(math.Abs(r.Residuals[worst])))),
		Limit:    fmt.Sprintf("%s (4 standard deviations)", style.Of(ticks(gross*r.Deviation[worst]))),
		Do:       "Measure these again. With one reading to spare an error shows, but not where it is."}
	if math.Abs(r.Residuals[worst]) > 75 {
		f.Level, f.Do = finding.Stop, "One of these readings is wrong by inches, or was written against the wrong corners. Measure them again before going on."
	}
	return []finding.Finding{f}
}

func ticks(mm float64) tape.Length {
	return tape.Length(math.Round(mm * float64(tape.Millimetre)))
}

// outOfSquare gives each corner's slant over the shorter of its two walls.
func (r Result) outOfSquare(rm room.Room, style tape.Style) []finding.Finding {
	ring := rm.Ring()
	n := len(ring)
	worst, where, over := 0.0, "", 0.0
	for i, c := range ring {
		want, given := rm.Turn(c)
		if given {
			continue
		}
		a, b, d := r.Built.At[ring[(i+n-1)%n]], r.Built.At[c], r.Built.At[ring[(i+1)%n]]
		off := inside(a, b, d) - want*math.Pi/180
		arm := math.Min(a.Sub(b).Len(), d.Sub(b).Len())
		if v := math.Abs(math.Tan(off)) * arm; v > worst {
			worst, where, over = v, c, arm
		}
	}
	if worst < 1.5 { // mm: less than a tape tells
		return nil
	}
	return []finding.Finding{{Level: finding.Note, Rule: "out of square", Where: rm.Name + ", corner " + where,
		Measured: fmt.Sprintf("%s over %s", style.Of(ticks(worst)), style.Of(ticks(over)))}}
}

// outOfParallel gives the walls that face each other and are not evenly apart.
func (r Result) outOfParallel(rm room.Room, style tape.Style) []finding.Finding {
	ring := rm.Ring()
	n := len(ring)
	worst, where, over := 0.0, "", 0.0
	for i := range ring {
		a, b := r.Built.At[ring[i]], r.Built.At[ring[(i+1)%n]]
		u := b.Sub(a).Unit()
		for j := i + 1; j < n; j++ {
			c, d := r.Built.At[ring[j]], r.Built.At[ring[(j+1)%n]]
			v := d.Sub(c)
			if v.Len() == 0 || u.Dot(v.Unit()) > -0.98 {
				continue // not facing
			}
			length := math.Min(b.Sub(a).Len(), v.Len())
			if s := math.Abs(u.Cross(v.Unit())) * length; s > worst {
				worst, over = s, length
				where = ring[i] + "-" + ring[(i+1)%n] + " and " + ring[j] + "-" + ring[(j+1)%n]
			}
		}
	}
	if worst < 1.5 {
		return nil
	}
	return []finding.Finding{{Level: finding.Note, Rule: "out of parallel", Where: rm.Name + ", walls " + where,
		Measured: fmt.Sprintf("%s over %s", style.Of(ticks(worst)), style.Of(ticks(over)))}}
}
