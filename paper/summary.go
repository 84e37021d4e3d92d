package paper

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"strake/finding"
	"strake/floor"
	"strake/plan"
	"strake/plane"
	"strake/stock"
	"strake/tape"
	"strake/words"
)

// Summary is the plan in a few lines, for a terminal.
func Summary(p plan.Plan) string {
	say := words.In(p.Job.Unit)
	s := &summary{p: p, say: say, n: Count(p)}
	s.put("", p.Job.Name)
	if p.Lay.Example {
		s.put("", "Example layout, boards not yet known.")
	}
	for _, r := range p.Floor.Rooms {
		s.put("room", s.room(r))
		s.put("square", s.square(r))
	}
	s.put("rows", s.rows())
	last := ""
	for i := range p.Fields {
		if t := words.FieldText(p, i); t != last {
			s.put("field", t)
			last = t
		}
	}
	for _, r := range s.rips() {
		s.put("rip", r)
	}
	s.put("turn", s.splines())
	s.put("boards", s.boards())
	s.put("widths", s.widths())
	s.put("joints", s.joints())
	s.put("findings", s.findings())
	return s.b.String()
}

type summary struct {
	b   strings.Builder
	p   plan.Plan
	say words.Lengths
	n   Counts
	// squares are the corners that the shape takes for square; asked is set once they
	// were worked out, which takes long.
	squares []string
	asked   bool
}

func (s *summary) put(name, text string) {
	if text == "" {
		return
	}
	if name == "" {
		s.b.WriteString(text + "\n")
		return
	}
	fmt.Fprintf(&s.b, "  %-9s %s\n", name, text)
}

// room is a room's extent along and across the rows, and its area.
func (s *summary) room(r floor.RoomOutline) string {
	ring := make(plane.Ring, len(r.Corners))
	for i, c := range r.Corners {
		ring[i] = s.p.Aligned.Dir.ToRow(c)
	}
	lo, hi := ring.Box()
	area := ring.Area2() / 2
	unit, name := float64(tape.Metre)*float64(tape.Metre), "m2"
	if s.p.Job.Unit.Imperial() {
		unit, name = float64(tape.Foot)*float64(tape.Foot), "sq ft"
	}
	size := fmt.Sprintf("%.1f%s %s", float64(area)/unit, s.areaDoubt(r.Name, unit), name)
	return fmt.Sprintf("%s: %s along the rows, %s across, %s", r.Name, s.say.Of(hi.X-lo.X), s.say.Of(hi.Y-lo.Y), size)
}

// areaDoubt is two standard deviations of a room's area, in that unit.
func (s *summary) areaDoubt(room string, unit float64) string {
	for _, r := range s.p.Built.Rooms {
		if r.Name != room || !s.p.Survey.Converged {
			continue
		}
		two := 2 * s.p.Survey.Area(r).SD * float64(tape.Millimetre) * float64(tape.Millimetre) / unit
		if two > 0 && !math.IsInf(two, 0) && !math.IsNaN(two) {
			return fmt.Sprintf(" ± %.1f", math.Ceil(10*two)/10)
		}
	}
	return ""
}

// meantSquare is how far off square a corner may be, in degrees, and still
// count as one that was meant to be square.
const meantSquare = 10.0

// square is the corner farthest out of square, as the distance its wall
// strays over the length of the shorter of its two walls.
func (s *summary) square(r floor.RoomOutline) string {
	worst, at, long := 0.0, "", 0.0
	n := len(r.Corners)
	for i, c := range r.Corners {
		a, b := r.Corners[(i+n-1)%n].Sub(c), r.Corners[(i+1)%n].Sub(c)
		off := math.Asin(max(-1, min(1, a.Dot(b)/(a.Len()*b.Len()))))
		shorter := min(a.Len(), b.Len())
		if math.Abs(off)*180/math.Pi < meantSquare && math.Abs(off)*shorter > worst {
			worst, at, long = math.Abs(off)*shorter, r.Names[i], shorter
		}
	}
	out := tape.Length(math.Round(worst * float64(tape.Millimetre)))
	if s.say.Of(out) == s.say.Of(0) {
		if taken := s.taken(r); taken != "" {
			return "taken for granted, not measured, at corners " + taken
		}
		return "corners square, to the step lengths are printed in"
	}
	return fmt.Sprintf("corner %s is the farthest out: %s over %s", at, s.say.Of(out),
		s.say.Of(tape.Length(math.Round(long*float64(tape.Millimetre)))))
}

// taken are the corners of a room that its shape takes for square.
func (s *summary) taken(r floor.RoomOutline) string {
	if !s.asked {
		s.squares, s.asked = s.p.Survey.Report(s.p.Job.Readings).Squares, true
	}
	var out []string
	for _, c := range s.squares {
		if slices.Contains(r.Names, c) {
			out = append(out, c)
		}
	}
	return strings.Join(out, ", ")
}

func (s *summary) rows() string {
	if s.n.Rows == 0 {
		return "none could be laid out"
	}
	out := fmt.Sprintf("%d", s.n.Rows)
	if s.p.Layout.Why != "" && len(s.p.Fields) < 2 {
		out += "; " + s.p.Layout.Why
	}
	if s.p.Job.Boards.Known == stock.Unknown {
		return out + "; no boards chosen, as their lengths are not known"
	}
	if s.n.Unfilled > 0 {
		out += fmt.Sprintf("; no boards left for %d", s.n.Unfilled)
	}
	return out
}

// rips are the rows along the closing edges, each way they come once.
func (s *summary) rips() []string {
	var out []string
	for _, r := range words.Rips(s.p, s.say) {
		out = append(out, fmt.Sprintf("%s: row %d, %s", r.Edge, r.Row, r.Widths))
	}
	return out
}

func (s *summary) boards() string {
	if s.n.Boards == 0 {
		return ""
	}
	return fmt.Sprintf("%d boards used; %d crosscuts, %d tongues taken off; of the floor %.1f %% scrap and kerf, %.1f %% strips and offcuts left over",
		s.n.Boards, s.n.Crosscuts, s.n.TonguesOff, 100*s.n.Waste(), 100*s.n.Left())
}

// widths is how many boards of each face width are used.
func (s *summary) widths() string {
	if len(s.p.Job.Boards.Widths) == 0 || s.n.Boards == 0 {
		return ""
	}
	var out []string
	for _, w := range s.p.Job.Boards.Each() {
		n, sum := 0, tape.Length(0)
		for _, b := range s.p.Lay.Boards {
			if b.Width == w.Pitch() {
				n, sum = n+1, sum+b.Length
			}
		}
		out = append(out, fmt.Sprintf("%d of %s (%s)", n, s.say.Rip(w.Face), s.say.Of(sum)))
	}
	return strings.Join(out, ", ") + ". " + words.PatternText(s.p, s.say)
}

func (s *summary) joints() string {
	if !s.n.Joints {
		return ""
	}
	return fmt.Sprintf("%d pairs nearer than %s; the nearest %s apart, rows %s and %s", s.n.UnderPreferred,
		s.say.Of(s.p.Job.Limits.JointPreferred.Value), s.say.Of(s.n.Nearest), words.Row(s.n.NearestRowA), words.Row(s.n.NearestRowB))
}

// splines says where the sense of laying turns, and how many first rows are
// set to a line.
func (s *summary) splines() string {
	out := words.SplineText(s.p, s.say)
	if n := s.p.Layout.Starts; n > 1 {
		if out != "" {
			out += "; "
		}
		out += fmt.Sprintf("%d first rows, each set to a line carried from the start line", n)
	}
	return out
}

func (s *summary) findings() string {
	n := map[finding.Level]int{}
	for _, f := range s.p.Findings {
		n[f.Level]++
	}
	return fmt.Sprintf("%d stop, %d warn, %d note", n[finding.Stop], n[finding.Warn], n[finding.Note])
}
