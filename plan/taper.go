package plan

import (
	"fmt"

	"strake/finding"
	"strake/lay"
	"strake/row"
	"strake/tape"
)

// taperFindings tell each row that tapers along an edge, and whether that will
// be seen: always at tile or stone, at a wall the job names, and where a rip
// loses more than a quarter of its width.
func (p Plan) taperFindings(style tape.Style) []finding.Finding {
	var out []finding.Finding
	fine := style
	fine.Step = style.Step / 2
	for _, f := range p.Fields {
		if f.Kind != lay.Field {
			continue
		}
		for _, t := range f.Tapers(p.Job.Wishes.Seen) {
			x := finding.Finding{Level: finding.Note, Rule: "taper", Where: fmt.Sprintf("row %d at %s", t.Row, t.Edge),
				Measured: fmt.Sprintf("%s from end to end, %s in 6 ft", fine.Of(t.By), fine.Of(t.Per6)),
				Limit:    fine.Of(row.Noticed) + " in 6 ft", Source: "common craft figure: less goes unnoticed along a plain wall",
				Do: "Usually not noticed along a plain wall. If light falls along it, name it under seen_walls."}
			if t.Shown {
				x.Do = "It will be seen. Share it between two walls (rows_between), give it to the wall that is seen least (taper_at), or hide it under a wider shoe."
			}
			out = append(out, x)
		}
	}
	return out
}
