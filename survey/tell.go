package survey

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"strake/finding"
	"strake/tape"
)

// inches is the blunder (mm) above which planning stops: the shape is out by
// more than a floor can hide.
const inches = 75

// farOff is how many times the tape's doubt all readings together may miss by
// before planning stops: that is no slip of a sixteenth.
const farOff = 20

// wrong tells which reading is probably wrong, by how much, and what to do.
func (p Report) wrong(r Result, rs []Reading, style tape.Style) []finding.Finding {
	if !p.Wrong || len(p.Suspects) == 0 {
		return nil
	}
	top := p.Verdicts[p.Suspects[0]]
	f := finding.Finding{Level: finding.Warn, Rule: "readings that do not agree", Where: p.names(p.Suspects, rs),
		Measured: fmt.Sprintf("if %s alone is wrong, it was read %s; its test is %.1f, and together the readings miss %.1f times what a tape does", rs[top.Reading].Name(), byHow(top.Blunder, style), math.Abs(top.Test), math.Sqrt(p.Variance)),
		Limit:    fmt.Sprintf("test %.2f (one good reading in a thousand is above)", critical)}
	if math.Abs(top.Blunder) > inches || math.Sqrt(p.Variance) > farOff {
		f.Level = finding.Stop
	}
	f.Do = p.again(rs, style)
	if math.Abs(top.Blunder) > inches && len(top.Slips) == 0 {
		f.Do += " So much is seldom misread: see that each reading stands against its own corners, and that the corners are named in their order round the room."
	}
	return []finding.Finding{f}
}

func byHow(mm float64, style tape.Style) string {
	if mm < 0 {
		return style.Of(ticks(-mm)) + " too short"
	}
	return style.Of(ticks(mm)) + " too long"
}

// again says which readings to take again, and what would tell them apart.
func (p Report) again(rs []Reading, style tape.Style) string {
	var out []string
	switch {
	case p.Locatable:
		out = append(out, "Measure "+p.names(p.Suspects, rs)+" again.")
	case p.Spare <= 1:
		out = append(out, "With one reading to spare an error shows, but not where it is: measure all of these again.")
	default:
		out = append(out, "Any of these may be the wrong one, the first most likely: measure them again in this order.")
	}
	if p.Locate != nil {
		verb := "would show which"
		if p.Locate.Alike > 0.8 {
			verb = "would narrow it down"
		}
		out = append(out, fmt.Sprintf("One reading more, %s, %s.", p.Locate.Ask.Name(style), verb))
	}
	for _, k := range p.Suspects {
		if v := p.Verdicts[k]; len(v.Slips) > 0 {
			s := v.Slips[0]
			out = append(out, fmt.Sprintf("%s: %s? %s would fit.", rs[v.Reading].Name(), s.Name, style.Of(s.Meant)))
		}
	}
	if a, b := p.Swapped[0], p.Swapped[1]; a != b {
		x, y := rs[p.Verdicts[a].Reading], rs[p.Verdicts[b].Reading]
		out = append(out, swapText(x.Name(), y.Name(), x.Value, y.Value, style))
	}
	return strings.Join(out, " ")
}

func (p Report) names(verdicts []int, rs []Reading) string {
	var out []string
	for _, k := range verdicts {
		out = append(out, rs[p.Verdicts[k].Reading].Name())
	}
	return strings.Join(out, ", ")
}

// others names what was given without being a reading, and may be wrong.
func (p Report) others() []finding.Finding {
	var out []finding.Finding
	for _, name := range p.Others {
		out = append(out, finding.Finding{Level: finding.Warn, Rule: "what was given agrees with the readings", Where: name,
			Measured: "the readings do not bear it out",
			Limit:    fmt.Sprintf("test %.2f", critical),
			Do:       "Measure it again: a doorway's distance from its corner on both sides and the thickness of the wall there, or the angle."})
	}
	return out
}

// unread lists readings in which an error would not show, and what to measure
// so that it would.
func (p Report) unread(rs []Reading, m Model, style tape.Style) []finding.Finding {
	open := p.unchecked()
	if len(open) == 0 {
		return nil
	}
	least := math.Inf(1)
	for _, k := range open {
		least = math.Min(least, p.Verdicts[k].Smallest)
	}
	f := finding.Finding{Level: finding.Warn, Rule: "unchecked readings", Where: p.names(open, rs),
		Measured: "no error in these would show", Limit: style.Of(ticks(m.ShowMM)) + " should show"}
	if !math.IsInf(least, 1) {
		f.Measured = "an error under " + style.Up(ticks(least)) + " in these would not show"
	}
	f.Do = "Measure each of them twice."
	if do := p.toCheck(rs, style); do != "" {
		f.Do = do
	}
	if step := p.coarse(open, rs); step > 0 {
		f.Do = "They are written to " + style.Of(step) + " only: take them again to " + finer(step) + ", and write the fractions. " + f.Do
	}
	return []finding.Finding{f}
}

// coarse is the step that readings were written to where that step makes most
// of their doubt; 0 where it does not.
func (p Report) coarse(open []int, rs []Reading) tape.Length {
	for _, k := range open {
		v := p.Verdicts[k]
		if step := rs[v.Reading].Step; step.Millimetres()*step.Millimetres()/12 > v.SD*v.SD/2 {
			return step
		}
	}
	return 0
}

// finer is the step that a tape is read to where it was read to a coarse one.
func finer(step tape.Length) string {
	if step%tape.SixtyFourth == 0 {
		return `1/16"`
	}
	return "1 mm"
}

// toCheck lists the readings that would check the unchecked, in order.
func (p Report) toCheck(rs []Reading, style tape.Style) string {
	var out []string
	for _, m := range p.Remedies {
		s := m.Ask.Name(style)
		if len(m.Checks) > 0 {
			s += " (checks " + p.names(m.Checks, rs) + ")"
		} else if m.Fixes > 0 {
			s += " (fixes the shape)"
		}
		out = append(out, s)
	}
	if len(out) == 0 {
		return ""
	}
	return "Measure " + strings.Join(out, ", then ") + "."
}

// twins names sets of readings that cannot be told apart, and the reading more
// that would tell most of them apart.
func (p Report) twins(rs []Reading, style tape.Style) []finding.Finding {
	var out []finding.Finding
	for i, set := range p.Alike {
		f := finding.Finding{Level: finding.Note, Rule: "readings that cannot be told apart", Where: p.names(set, rs),
			Measured: "an error in one of these shows, but not in which"}
		if m := p.Apart[i]; m != nil {
			verb := "would narrow it down; strake measure lists all that it takes"
			if m.Shows {
				verb = "would show in which"
			}
			f.Do = fmt.Sprintf("One reading more, %s, %s.", m.Ask.Name(style), verb)
		}
		out = append(out, f)
	}
	return out
}

// crooked names corners that were taken for square, that no reading fixes, and
// that the readings all the same push out of square.
// What was told of a corner already is not told again.
func (p Report) crooked(told []string, style tape.Style) []finding.Finding {
	var out []finding.Finding
	for _, s := range p.Strained {
		if slices.Contains(told, s.Corner) {
			continue
		}
		f := finding.Finding{Level: finding.Warn, Rule: "corners taken for square", Where: "corner " + s.Corner,
			Measured: fmt.Sprintf("the readings push it %.1f degrees out of square", math.Abs(s.Degrees)), Limit: fmt.Sprintf("%.1f", s.Limit),
			Do: "Either it is not square, or a wall beside it was read wrong."}
		if len(p.Remedies) > 0 {
			f.Do += " Measure " + p.Remedies[0].Ask.Name(style) + ": it tells."
		}
		out = append(out, f)
	}
	return out
}
