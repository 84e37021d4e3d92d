package drawing

import (
	"math"
	"strings"

	"strake/plan"
	"strake/plane"
	"strake/sheet"
	"strake/tape"
	"strake/words"
)

// Measured draws the rooms on a page as they came out of the readings: every wall
// with its length and, under it, twice its standard deviation, so that the wall is
// nearly always within it.
func Measured(p plan.Plan, g Page) sheet.Sheet {
	d := newDraw(p, g.bare(dimensioned))
	if d.empty() {
		d.nothing()
		return d.sheet()
	}
	d.doubt = d.wallDoubt
	d.drawStays()
	d.drawEdges()
	d.drawScaleBar()
	d.drawTop()
	d.nameCorners()
	d.nameStays()
	d.dimension()
	s := d.sheet()
	s.Title = p.Job.Name + ": as measured"
	return s
}

// wallDoubt is twice the standard deviation of a wall's length, nothing where it is
// not known or too small to read.
func (d *draw) wallDoubt(w words.RoomWall) string {
	a, b, ok := strings.Cut(w.Name, "-")
	if !ok || !d.p.Survey.Converged {
		return ""
	}
	known := d.p.Survey.Built.At
	if _, ok := known[a]; !ok {
		return ""
	}
	if _, ok := known[b]; !ok {
		return ""
	}
	sd := d.p.Survey.SD(func(at func(string) plane.XY) float64 { return at(b).Sub(at(a)).Len() })
	if math.IsInf(sd, 0) || math.IsNaN(sd) {
		return "± not known"
	}
	two := tape.Length(math.Ceil(2 * sd * float64(tape.Millimetre)))
	if two <= 0 {
		return ""
	}
	return "± " + tape.Paper(d.p.Job.Unit).Up(two)
}
