package plan

import (
	"fmt"

	"strake/finding"
	"strake/floor"
)

// nosingFindings say what a nosing that rows lie along must carry: it is
// fitted, glued and fastened first, and its profile decides what meets it.
func (p Plan) nosingFindings() []finding.Finding {
	var out []finding.Finding
	for _, f := range p.Fields {
		for _, r := range f.Layout.Rips {
			if r.Kind != floor.Nosing {
				continue
			}
			x := finding.Finding{Level: finding.Note, Rule: "nosing first", Where: fmt.Sprintf("row %d at %s", r.Row, r.Edge)}
			full := r.Narrowest == r.Width
			switch {
			case r.Above && full:
				x.Measured, x.Do = "the row meets it with its groove", "Fit, glue and fasten the nosing first; it needs a tongue there, or a spline in its groove."
			case full:
				x.Measured, x.Do = "the row meets it with its tongue", "Fit, glue and fasten the nosing first; it needs a groove there, or take the tongue off and set a spline."
			default:
				x.Measured, x.Do = "the row is ripped there", "Fit, glue and fasten the nosing first; groove the ripped edge for a spline, or pin a full board there with full_board_at."
			}
			out = append(out, x)
		}
	}
	return out
}
