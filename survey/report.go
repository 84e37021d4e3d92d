package survey

import (
	"fmt"
	"math"
	"strings"

	"strake/finding"
	"strake/room"
	"strake/tape"
)

// Findings says what the fit says of the readings and of the room: first what
// cannot be, then what is wrong or unchecked, then what is crooked.
func (r Result) Findings(rs []Reading, style tape.Style) []finding.Finding {
	out := append(r.rings(), r.turns()...)
	out = append(out, r.apart()...)
	if len(out) > len(r.Apart) {
		return out
	}
	out = append(out, r.twice(style)...)
	out = append(out, r.detours(rs, style)...)
	out = append(out, r.sideless(rs)...)
	cannot := len(out) > len(r.Apart)
	loose := r.loose(rs, style)
	out = append(out, loose...)
	rep := r.Report(rs)
	if !r.Converged && cannot {
		return out // and why no shape fits is said already
	}
	if !r.Converged {
		return append(out, r.noShape(rs, rep, style)...)
	}
	if len(loose) == 0 {
		out = append(out, r.assumed(rs, rep, style)...)
	}
	out = append(out, rep.wrong(r, rs, style)...)
	crooked, told := r.notSquare()
	out = append(out, crooked...)
	if len(crooked) == 0 {
		out = append(out, r.against(rs, rep)...)
	}
	out = append(out, rep.others()...)
	if len(loose) == 0 {
		out = append(out, r.untied(rs, style)...)
	}
	out = append(out, rep.crooked(told, style)...)
	if len(loose) == 0 {
		out = append(out, rep.unread(rs, r.model, style)...)
		out = append(out, rep.twins(rs, style)...)
	}
	for _, rm := range r.Built.Rooms {
		out = append(out, r.outOfSquare(rm, style)...)
		out = append(out, r.outOfParallel(rm, style)...)
	}
	return out
}

func (r Result) apart() []finding.Finding {
	var out []finding.Finding
	for _, name := range r.Apart {
		out = append(out, finding.Finding{Level: finding.Stop, Rule: "rooms that hang together", Where: name,
			Measured: "no doorway joins it to the first room", Do: "Give the doorway between them, with its distance from a corner in each."})
	}
	return out
}

// assumed says that the shape rests on corners taken for square, and which
// reading would do most about it.
func (r Result) assumed(rs []Reading, rep Report, style tape.Style) []finding.Finding {
	if rep.Assumed == 0 {
		return nil
	}
	f := finding.Finding{Level: finding.Warn, Rule: "shape rests on assumed square corners", Where: "corners " + strings.Join(rep.Squares, ", "),
		Do:       "Measure walls and diagonals that are not read yet.",
		Measured: fmt.Sprintf("%d independent %s short of a fixed shape", rep.Assumed, plural(rep.Assumed, "reading")),
		Limit:    fmt.Sprintf("%d are needed", r.shape()-r.hard())}
	if next, sd := r.NextReading(rs); next != "" {
		f.Do = fmt.Sprintf("Measure %s next: it is in doubt by %s (2 standard deviations).", next, style.Up(ticks(2*sd)))
	}
	return []finding.Finding{f}
}

// plural is a word for n things.
func plural(n int, one string) string {
	if n == 1 {
		return one
	}
	return one + "s"
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
		spots := r.corners(ring)
		for i, a := range spots {
			for _, b := range spots[i+1:] {
				if read[a.name+"-"+b.name] || !r.sees(ring, a, b) || r.inTheWay(a.at, b.at) != "" {
					continue
				}
				if sd := r.DistanceSD(a.name, b.name); sd > worst+1e-6 {
					best, worst = a.name+"-"+b.name, sd
				}
			}
		}
	}
	return best, worst
}

// ticks rounds mm to a length; what is farther than ten floors is cut there.
func ticks(mm float64) tape.Length {
	const far = 10 * float64(tape.Longest)
	return tape.Length(math.Round(math.Max(-far, math.Min(far, mm*float64(tape.Millimetre)))))
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
		if v := math.Abs(math.Sin(math.Max(-math.Pi/2, math.Min(math.Pi/2, off)))) * arm; v > worst {
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
		u := unit(b.Sub(a))
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
