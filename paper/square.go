package paper

import (
	"fmt"
	"math"
	"strings"

	"strake/floor"
	"strake/plan"
	"strake/tape"
)

// legs are the two legs of a 3-4-5 triangle, the largest that fits a corner is
// taken: 3 and 4 ft and their multiples, or 60 and 80 cm and theirs.
func legs(imperial bool, short, long tape.Length) (a, b tape.Length) {
	unit := tape.Foot
	if !imperial {
		unit = 200 * tape.Millimetre
	}
	k := min(short/(3*unit), long/(4*unit))
	return 3 * unit * k, 4 * unit * k
}

// squareText lists every corner: how far it is out of square over its shorter
// wall, and the diagonal that a 3-4-5 check on site will read with the corner
// as it is.
func squareText(b *strings.Builder, p plan.Plan) {
	style := tape.Paper(p.Job.Unit)
	b.WriteString("Corners, and what to read when you check them on site\n")
	for _, r := range p.Floor.Rooms {
		n := len(r.Corners)
		for i := range r.Corners {
			u := r.Corners[(i+1)%n].Sub(r.Corners[i])
			v := r.Corners[(i+n-1)%n].Sub(r.Corners[i])
			if u.Len() == 0 || v.Len() == 0 {
				continue
			}
			cos := u.Unit().Dot(v.Unit())
			if math.Abs(cos) > 0.3 {
				fmt.Fprintf(b, "  %s, corner %-3s %.1f degrees\n", r.Name, r.Names[i], math.Acos(max(-1, min(1, cos)))*180/math.Pi)
				continue
			}
			cornerText(b, r, i, u.Len(), v.Len(), cos, p.Job.Unit.Imperial(), style)
		}
	}
}

func cornerText(b *strings.Builder, r floor.RoomOutline, i int, ul, vl, cos float64, imperial bool, style tape.Style) {
	short := math.Min(ul, vl)
	sense := "opens"
	if cos > 0 {
		sense = "closes"
	}
	fmt.Fprintf(b, "  %s, corner %-3s %s by %s over %s", r.Name, r.Names[i], sense, style.Of(mm(math.Abs(cos)*short)), style.Of(mm(short)))
	one, other := legs(imperial, mm(math.Min(ul, vl)), mm(math.Max(ul, vl)))
	if one == 0 {
		b.WriteString("\n")
		return
	}
	x, y := one.Millimetres(), other.Millimetres()
	d := math.Sqrt(x*x + y*y - 2*x*y*cos)
	square := math.Hypot(x, y)
	fmt.Fprintf(b, "; %s and %s along its walls read %s across (square: %s)\n", style.Of(one), style.Of(other), style.Of(mm(d)), style.Of(mm(square)))
}
