package paper

import (
	"fmt"
	"io"
	"math"
	"sort"
	"strings"

	"strake/plan"
	"strake/survey"
	"strake/tape"
)

// reading is one line of the table of readings.
type reading struct {
	survey.Verdict
	name  string
	value tape.Length
	mark  string // "suspect", "unchecked", ""
}

// readingTable is every reading that was used, flagged ones first: suspects by
// their test, then the unchecked ones, then the others as they were written.
func readingTable(p plan.Plan) ([]reading, survey.Report) {
	rep := p.Survey.Report(p.Job.Readings)
	out := make([]reading, len(rep.Verdicts))
	for i, v := range rep.Verdicts {
		r := p.Job.Readings[v.Reading]
		out[i] = reading{Verdict: v, name: r.Name(), value: r.Value}
		switch {
		case v.Suspect && rep.Wrong:
			out[i].mark = "suspect"
		case !v.Checked:
			out[i].mark = "unchecked"
		}
	}
	rank := map[string]int{"suspect": 0, "unchecked": 1, "": 2}
	sort.SliceStable(out, func(i, j int) bool {
		a, b := out[i], out[j]
		if rank[a.mark] != rank[b.mark] {
			return rank[a.mark] < rank[b.mark]
		}
		return a.mark == "suspect" && math.Abs(a.Test) > math.Abs(b.Test)
	})
	return out, rep
}

// Readings is the table of readings with what the fit says of each, and the
// squareness of every corner with distances to check it by.
func Readings(w io.Writer, p plan.Plan) error {
	var b strings.Builder
	b.WriteString(head(p.Job.Name, "readings", false))
	rows, rep := readingTable(p)
	style := tape.Paper(p.Job.Unit)
	fmt.Fprintf(&b, "%-26s %12s %12s %9s %7s %6s %7s %11s  %s\n", "reading", "as written", "as fitted", "off (mm)", "± (mm)", "test", "checked", "would show", "")
	for _, r := range rows {
		fmt.Fprintf(&b, "%-26s %12s %12s %9.2f %7.2f %6.2f %6.0f%% %11s  %s\n", r.name, style.Of(r.value), style.Of(mm(r.Adjusted)),
			r.Residual, r.SD, r.Test, 100*r.Redundancy, shows(r.Smallest, style), r.mark)
	}
	b.WriteString("\n")
	wrap(&b, verdictInWords(rep), "", "")
	wrap(&b, "“off” is the fitted room less the reading. “checked” is how much of an error in a reading its own misfit shows. “would show” is the smallest error that would be noticed.", "", "")
	for _, set := range rep.Alike {
		var names []string
		for _, i := range set {
			names = append(names, p.Job.Readings[rep.Verdicts[i].Reading].Name())
		}
		wrap(&b, "Cannot be told apart: "+strings.Join(names, ", ")+".", "", "  ")
	}
	b.WriteString("\n")
	squareText(&b, p)
	_, err := io.WriteString(w, b.String())
	return err
}

// verdictInWords says what a surveyor reads off the variance factor.
func verdictInWords(rep survey.Report) string {
	switch {
	case rep.Assumed > 0 && rep.Spare == 0:
		return fmt.Sprintf("The shape rests on square corners in place of %d readings; nothing checks the others.", rep.Assumed)
	case rep.Spare == 0:
		return "The readings just fix the shape; nothing checks them."
	}
	s := fmt.Sprintf("%d readings to spare. Together they miss %.1f times what a tape does (1 is expected); by chance that comes in %s of such jobs.",
		rep.Spare, math.Sqrt(rep.Variance), share(rep.Chance))
	if rep.Wrong {
		return s + " A reading is wrong."
	}
	return s + " They agree."
}

func share(c float64) string {
	if c < 0.001 {
		return "fewer than one in a thousand"
	}
	return fmt.Sprintf("%.0f in 100", 100*c)
}

func shows(mmSize float64, style tape.Style) string {
	if math.IsInf(mmSize, 0) || mmSize > 1e5 {
		return "nothing"
	}
	return style.Up(mm(mmSize))
}

func mm(v float64) tape.Length {
	return tape.Length(math.Round(v * float64(tape.Millimetre)))
}

// ReadingsCSV is the same table for a spreadsheet, in mm.
func ReadingsCSV(w io.Writer, p plan.Plan) error {
	rows, _ := readingTable(p)
	lines := [][]string{{"reading", "written mm", "fitted mm", "fitted less written mm", "standard deviation mm", "test", "redundancy", "smallest error that shows mm", "mark"}}
	for _, r := range rows {
		show := fmt.Sprintf("%.2f", r.Smallest)
		if math.IsInf(r.Smallest, 0) {
			show = ""
		}
		lines = append(lines, []string{r.name, fmt.Sprintf("%.4f", r.value.Millimetres()), fmt.Sprintf("%.4f", r.Adjusted), fmt.Sprintf("%.3f", r.Residual),
			fmt.Sprintf("%.3f", r.SD), fmt.Sprintf("%.3f", r.Test), fmt.Sprintf("%.3f", r.Redundancy), show, r.mark})
	}
	return table(w, lines)
}
