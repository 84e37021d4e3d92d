package paper

import (
	"fmt"
	"math"
	"strings"

	"strake/floor"
	"strake/plan"
	"strake/tape"
)

// legs are the two legs of the largest 3-4-5 triangle that fits a corner: 3
// and 4 ft and their multiples, or 60 and 80 cm and theirs; in a small corner
// half or a quarter of that. Zero where none fits.
func legs(imperial bool, short, long tape.Length) (a, b tape.Length) {
	unit := tape.Foot
	if !imperial {
		unit = 200 * tape.Millimetre
	}
	for _, u := range []tape.Length{unit, unit / 2, unit / 4} {
		if k := min(short/(3*u), long/(4*u)); k > 0 {
			return 3 * u * k, 4 * u * k
		}
	}
	return 0, 0
}

// squareText lists every corner: how far it is out of square over its shorter
// wall, and the diagonal that a 3-4-5 check on site will read with the corner
// as it is.
func squareText(b *strings.Builder, p plan.Plan) {
	style := tape.Paper(p.Job.Unit)
	if len(p.Floor.Rooms) == 0 {
		return
	}
	b.WriteString("\nCorners, and what to read when you check them on site\n")
	for _, r := range p.Floor.Rooms {
		n := len(r.Corners)
		for i := range r.Corners {
			u := r.Corners[(i+1)%n].Sub(r.Corners[i])
			v := r.Corners[(i+n-1)%n].Sub(r.Corners[i])
			if u.Len() == 0 || v.Len() == 0 {
				continue
			}
			name := fmt.Sprintf("%s, corner %s: ", r.Name, r.Names[i])
			cos := u.Unit().Dot(v.Unit())
			if math.Abs(cos) > 0.3 {
				wrap(b, name+fmt.Sprintf("%.1f degrees between its walls, not meant square", math.Acos(max(-1, min(1, cos)))*180/math.Pi), "  - ", "    ")
				continue
			}
			wrap(b, name+cornerText(u.Len(), v.Len(), cos, p.Job.Unit.Imperial(), style), "  - ", "    ")
		}
	}
}

// cornerText says how a corner stands whose walls are u and v mm long, cos
// being that of the angle between them.
func cornerText(u, v, cos float64, imperial bool, style tape.Style) string {
	short, long := math.Min(u, v), math.Max(u, v)
	out := mm(math.Abs(cos) * short)
	s := "square"
	if style.Of(out) != style.Of(0) {
		s = "opens"
		if cos > 0 {
			s = "closes"
		}
		s += fmt.Sprintf(" by %s over %s", style.Of(out), style.Of(mm(short)))
	}
	one, other := legs(imperial, mm(short), mm(long))
	if one == 0 {
		return s
	}
	x, y := one.Millimetres(), other.Millimetres()
	return s + fmt.Sprintf("; %s and %s along its walls read %s across (square: %s)", style.Of(one), style.Of(other),
		style.Of(mm(math.Sqrt(x*x+y*y-2*x*y*cos))), style.Of(mm(math.Hypot(x, y))))
}

// parallelText lists the walls of each room that face each other, and how much
// nearer they are at one end.
func parallelText(b *strings.Builder, p plan.Plan) {
	style := tape.Paper(p.Job.Unit)
	title := "\nWalls that face each other\n"
	for _, r := range p.Floor.Rooms {
		n := len(r.Corners)
		for i := range r.Corners {
			for j := i + 1; j < n; j++ {
				if s := facing(r, i, j, style); s != "" {
					b.WriteString(title)
					title = ""
					wrap(b, r.Name+", "+s, "  - ", "    ")
				}
			}
		}
	}
}

// facing says how parallel the walls from corners i and j are; "" where they
// do not face each other.
func facing(r floor.RoomOutline, i, j int, style tape.Style) string {
	n := len(r.Corners)
	i2, j2 := (i+1)%n, (j+1)%n
	u, v := r.Corners[i2].Sub(r.Corners[i]), r.Corners[j2].Sub(r.Corners[j])
	if u.Len() == 0 || v.Len() == 0 || u.Unit().Dot(v.Unit()) > -0.98 {
		return ""
	}
	along := u.Unit()
	at := func(k int) float64 { return along.Dot(r.Corners[k].Sub(r.Corners[i])) }
	off := func(k int) float64 { return along.Cross(r.Corners[k].Sub(r.Corners[i])) }
	lo, hi := math.Max(0, at(j2)), math.Min(u.Len(), at(j))
	if hi-lo < 1 || off(j) <= 0 && off(j2) <= 0 { // past each other, or back to back
		return ""
	}
	slope := (off(j) - off(j2)) / (at(j) - at(j2)) // how much wider for each mm from corner i to i2
	short := math.Min(u.Len(), v.Len())
	by := mm(math.Abs(slope) * short)
	walls := fmt.Sprintf("walls %s-%s and %s-%s: ", r.Names[i], r.Names[i2], r.Names[j], r.Names[j2])
	if style.Of(by) == style.Of(0) {
		return walls + "parallel"
	}
	near := r.Names[i] + " and " + r.Names[j2]
	if slope < 0 {
		near = r.Names[i2] + " and " + r.Names[j]
	}
	return walls + fmt.Sprintf("%s over %s out of parallel, nearer at %s", style.Of(by), style.Of(mm(short)), near)
}
