package plan

import (
	"fmt"

	"strake/finding"
	"strake/job"
	"strake/tape"
	"strake/wood"
)

// gapFindings look at a least gap under the boards' thickness. At row ends it
// is worth a note, since wood hardly moves along its length; beside the rows
// it is a warning, with the movement that the width of the floor wants.
func (p Plan) gapFindings(j job.Job, style tape.Style) []finding.Finding {
	gap := j.Limits.GapLeast.Value
	if gap >= j.Boards.Thickness || len(p.Aligned.Need) == 0 {
		return nil
	}
	lo, hi := p.Aligned.Bare.Box()
	across := hi.Y - lo.Y
	ends := finding.Finding{Level: finding.Note, Rule: "least gap at row ends", Where: "walls that rows end at",
		Measured: style.Of(gap), Limit: style.Of(j.Boards.Thickness) + ", the boards' thickness", Source: j.Limits.GapLeast.Source,
		Do: "Accepted: wood hardly moves along its length."}
	sides := finding.Finding{Level: finding.Warn, Rule: "least gap beside the rows", Where: "walls that run with the rows",
		Measured: style.Of(gap), Limit: style.Of(j.Boards.Thickness) + ", the boards' thickness",
		Do: "Ask the maker, or give these walls the full gap under a shoe."}
	if s, ok := wood.Find(j.Boards.Species + " " + j.Boards.Name); ok {
		sides.Measured += fmt.Sprintf("; %s across the boards wants %s for each point of moisture content, were it free to move (%s, %.5f)",
			style.Of(across), style.Of(s.Change(across, 1)), s.Name, s.Tangential)
		sides.Source = s.Source
	} else {
		sides.Measured += fmt.Sprintf("; floor %s across the boards, species not known", style.Of(across))
	}
	return []finding.Finding{ends, sides}
}
