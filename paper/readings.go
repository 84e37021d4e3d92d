package paper

import (
	"fmt"
	"io"
	"math"
	"slices"
	"strings"

	"strake/plan"
	"strake/survey"
	"strake/tape"
)

// Reading is one line of the table of readings.
type Reading struct {
	survey.Verdict
	Name  string
	Value tape.Length
	Mark  string // "suspect", "unchecked", ""
	rank  int    // suspects below 0, the likeliest least; 0 unchecked, 1 the others
}

// ReadingTable is every reading that was used, flagged ones first: suspects by
// how likely, then the unchecked ones, then the others as they were written.
func ReadingTable(p plan.Plan) ([]Reading, survey.Report) {
	rep := p.Survey.Report(p.Job.Readings)
	out := make([]Reading, len(rep.Verdicts))
	for i, v := range rep.Verdicts {
		r := p.Job.Readings[v.Reading]
		out[i] = Reading{Verdict: v, Name: r.Name(), Value: r.Value, rank: 1}
		switch {
		case v.Suspect && rep.Wrong:
			out[i].Mark = "suspect"
		case !v.Checked:
			out[i].Mark, out[i].rank = "unchecked", 0
		}
	}
	for i, k := range rep.Suspects {
		out[k].rank = i - len(rep.Suspects)
	}
	slices.SortStableFunc(out, func(a, b Reading) int { return a.rank - b.rank })
	return out, rep
}

// Readings is the table of readings with what the fit says of each and what to
// do, and how square and how parallel the walls are, with distances to check
// it by.
func Readings(w io.Writer, p plan.Plan) error {
	var b strings.Builder
	b.WriteString(head(p.Job.Name, "readings", false))
	rows, rep := ReadingTable(p)
	style := tape.Paper(p.Job.Unit)
	tableText(&b, rows, style)
	b.WriteString("\n")
	wrap(&b, ReadingsVerdict(rep), "", "")
	doText(&b, p, rep, style)
	squareText(&b, p)
	parallelText(&b, p)
	_, err := io.WriteString(w, b.String())
	return err
}

func tableText(b *strings.Builder, rows []Reading, style tape.Style) {
	wide := len("reading")
	for _, r := range rows {
		wide = max(wide, len([]rune(r.Name)))
	}
	line := func(cells ...any) {
		s := fmt.Sprintf("%-*s %12s %12s %9s %7s %6s %8s %11s  %s", append([]any{wide}, cells...)...)
		b.WriteString(strings.TrimRight(s, " ") + "\n")
	}
	line("reading", "as written", "as fitted", "off (mm)", "± (mm)", "test", "checked", "would show", "")
	for _, r := range rows {
		line(r.Name, style.Of(r.Value), style.Of(mm(r.Adjusted)), hundredths(r.Residual), fmt.Sprintf("%.2f", r.SD),
			fmt.Sprintf("%.2f", math.Abs(r.Test)), fmt.Sprintf("%.0f%%", 100*r.Redundancy), Shows(r.Smallest, style), r.Mark)
	}
	b.WriteString("\n")
	wrap(b, "“off” is the fitted room less the reading, “±” what a reading taken so is good for (one standard deviation). "+
		"“test” weighs the one against the other: one good reading in a thousand is above 3.29. “checked” is how much of an error in a reading would stand in its own “off”; "+
		"“would show” is the smallest error that would be noticed.", "", "")
}

// hundredths prints v to two places, never as -0.00.
func hundredths(v float64) string {
	if math.Abs(v) < 0.005 {
		v = 0
	}
	return fmt.Sprintf("%.2f", v)
}

// ReadingsVerdict says what a surveyor reads off the variance factor and its
// chi-square test.
func ReadingsVerdict(rep survey.Report) string {
	switch {
	case rep.Assumed > 0 && rep.Spare == 0:
		return fmt.Sprintf("The shape rests on square corners in place of %s; nothing checks the others.", count(rep.Assumed, "reading"))
	case rep.Spare == 0:
		return "The readings just fix the shape; nothing checks them."
	}
	s := fmt.Sprintf("%s to spare beyond what fixes the shape. Together the readings miss %.1f times what such a tape does (1 is expected; variance factor %.2f).",
		count(rep.Spare, "reading"), math.Sqrt(rep.Variance), rep.Variance)
	s += fmt.Sprintf(" With nothing wrong, %s would miss by as much or more (chi-square test).", share(rep.Chance))
	if rep.Wrong {
		return s + " So a reading is wrong; it pulls the others with it, whose tests fall once it is put right. What is said of corners and walls below holds only then."
	}
	return s + " So they agree."
}

// count is a number of things: "1 reading", "2 readings".
func count(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}

func share(c float64) string {
	switch {
	case c < 0.001:
		return "fewer than one such job in a thousand"
	case c < 0.01:
		return "fewer than one such job in a hundred"
	}
	return fmt.Sprintf("%.0f in 100 such jobs", 100*c)
}

// doing are the findings of the survey that ask for something.
var doing = map[string]bool{
	"readings that do not agree": true, "unchecked readings": true, "shape rests on assumed square corners": true,
	"what was given agrees with the readings": true, "corners taken for square": true,
}

// doText says what to do about flagged readings, which cannot be told apart,
// and which reading to take next.
func doText(b *strings.Builder, p plan.Plan, rep survey.Report, style tape.Style) {
	b.WriteString("\nWhat to do\n")
	for _, f := range p.Survey.Findings(p.Job.Readings, style) {
		if doing[f.Rule] && f.Do != "" {
			wrap(b, fmt.Sprintf("%s (%s): %s. %s", strings.TrimSpace(f.Where), f.Rule, f.Measured, f.Do), "  - ", "    ")
		}
	}
	wrap(b, NextReading(p, rep, style), "  - ", "    ")
	for _, set := range rep.Alike {
		var names []string
		for _, i := range set {
			names = append(names, p.Job.Readings[rep.Verdicts[i].Reading].Name())
		}
		wrap(b, "An error in one of these would show, but not in which: "+strings.Join(names, ", ")+".", "  - ", "    ")
	}
}

// NextReading is the one reading to take next: what tells suspects apart, else
// what checks or fixes most, else what would tell readings apart that cannot be
// told apart, else what is most in doubt.
func NextReading(p plan.Plan, rep survey.Report, style tape.Style) string {
	name, sd := p.Survey.NextReading(p.Job.Readings)
	switch {
	case rep.Wrong && rep.Locate != nil:
		return fmt.Sprintf("Take next: %s. It tells the suspects apart best.", rep.Locate.Ask.Name(style))
	case rep.Wrong:
		return "Take next: the suspect, once more."
	case rep.Assumed > 0 && name != "":
		return fmt.Sprintf("Take next: %s. Nothing read so far says it to better than %s.", name, style.Up(mm(2*sd)))
	case len(rep.Remedies) > 0:
		return fmt.Sprintf("Take next: %s. It checks most of what is unchecked.", rep.Remedies[0].Ask.Name(style))
	case next(rep.Apart) != nil:
		return fmt.Sprintf("An error would show in every reading, but not always in which. To tell that better, take next: %s.", next(rep.Apart).Ask.Name(style))
	case name != "" && !math.IsInf(sd, 0):
		return fmt.Sprintf("No reading more is needed. The least sure distance left is %s, to %s (two standard deviations).", name, style.Up(mm(2*sd)))
	}
	return "No reading more is needed."
}

// next is the first remedy there is, nil for none.
func next(ms []*survey.Remedy) *survey.Remedy {
	for _, m := range ms {
		if m != nil {
			return m
		}
	}
	return nil
}

// Shows is the least error that would be noticed, of so many mm, up to the step of a
// tape; "nothing" where none would.
func Shows(mmSize float64, style tape.Style) string {
	if math.IsInf(mmSize, 0) || mmSize > 1e5 {
		return "nothing"
	}
	return style.Up(mm(mmSize))
}

// mm is a length of v millimetres; what nothing fixes is cut at ten kilometres.
func mm(v float64) tape.Length {
	return tape.Length(math.Round(max(-1e7, min(1e7, v)) * float64(tape.Millimetre)))
}

// ReadingsCSV is the same table for a spreadsheet, in mm.
func ReadingsCSV(w io.Writer, p plan.Plan) error {
	rows, _ := ReadingTable(p)
	lines := [][]string{{"reading", "written mm", "fitted mm", "fitted less written mm", "standard deviation mm", "test", "redundancy", "smallest error that shows mm", "mark"}}
	for _, r := range rows {
		show := fmt.Sprintf("%.2f", r.Smallest)
		if math.IsInf(r.Smallest, 0) {
			show = ""
		}
		lines = append(lines, []string{r.Name, fmt.Sprintf("%.4f", r.Value.Millimetres()), fmt.Sprintf("%.4f", r.Adjusted), fmt.Sprintf("%.3f", r.Residual),
			fmt.Sprintf("%.3f", r.SD), fmt.Sprintf("%.3f", r.Test), fmt.Sprintf("%.3f", r.Redundancy), show, r.Mark})
	}
	return table(w, lines)
}
