package paper

import (
	"fmt"
	"strings"

	"strake/plan"
	"strake/stock"
	"strake/words"
)

// rulesText says by which rules boards are picked on site, where their lengths
// are not known.
func rulesText(b *strings.Builder, p plan.Plan, say words.Lengths) {
	if p.Job.Boards.Known != stock.Unknown {
		return
	}
	l := p.Job.Limits
	b.WriteString("\nNo boards are chosen, as their lengths are not known. Pick them row by row:\n")
	for _, s := range []string{
		fmt.Sprintf("end joints at least %s from those of the row behind, better %s", say.Of(l.JointMin.Value), say.Of(l.JointPreferred.Value)),
		fmt.Sprintf("none within %s of one two rows back (an H), none by the same shift twice running (a stair)", say.Of(l.HReach.Value)),
		fmt.Sprintf("no piece at an end of a row shorter than %s, but for rows shorter than that", say.Of(l.ShortestPiece.Value)),
		"boards from several cartons beside each other; the longest and straightest for the first rows and doorways; crooked ones to mid-field or cut up",
		"the cut end of the last board of a row begins a later row, cut end to the wall",
		"write what lies under laid in the job, and strake check --laid names every joint that breaks or strains a limit",
	} {
		wrap(b, s, "  - ", "    ")
	}
}

// unfilledText is what stands in a row without boards.
func unfilledText(p plan.Plan) string {
	if p.Job.Boards.Known == stock.Unknown {
		return "boards: " + strings.Repeat("_", 8)
	}
	return noBoards
}
