package plan

import (
	"fmt"

	"strake/finding"
	"strake/tape"
	"strake/wood"
)

// wideFindings look at the width across the boards, summed through doorways:
// beyond the limit a start in the middle lets the floor move half to either
// side, and spacer rows give it room inside.
func (p Plan) wideFindings(style tape.Style) []finding.Finding {
	var out []finding.Finding
	limit := p.Job.Limits.WideFloor
	for _, f := range p.Fields {
		if len(f.Part.Bare) == 0 {
			continue
		}
		lo, hi := f.Part.Bare.Box()
		across := hi.Y - lo.Y
		if limit.Value == 0 || across <= limit.Value {
			continue
		}
		w := finding.Finding{Level: finding.Note, Rule: "wide floor", Where: f.Name, Measured: style.Of(across) + " across the boards",
			Limit: style.Of(limit.Value), Source: limit.Source}
		if w.Where == "" {
			w.Where = "floor"
		}
		if s, ok := wood.Find(p.Job.Boards.Species + " " + p.Job.Boards.Name); ok {
			w.Measured += fmt.Sprintf("; one point of moisture content wants %s of it, were it free to move (%s, %.5f)", style.Of(s.Change(across, 1)), s.Name, s.Tangential)
		}
		w.Do = "Start in the middle with start_middle, so that half of that goes to either side, or leave spacer rows (small spacers between rows, taken out once nailed) as the maker says."
		if p.Job.Wishes.Middle || p.Job.Pins.Spline != "" {
			w.Do = "It starts inside and goes both ways; ask the maker about spacer rows besides."
		}
		out = append(out, w)
	}
	return out
}
