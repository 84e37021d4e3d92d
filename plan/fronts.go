package plan

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"strake/finding"
	"strake/row"
	"strake/tape"
)

// rowSlip is how far one row wanders from the one before beyond what its
// measured width says: a standard deviation, from memory.
const rowSlip = tape.Millimetre / 10

// tight is how far two fronts may lie apart for a row to close over both.
const tight = tape.Inch / 32

// frontFindings say where two fronts meet again round something, how far apart
// they are likely to be by then, when to measure, and what a header there would
// take as the planned way out.
func (p Plan) frontFindings(style tape.Style) []finding.Finding {
	var out []finding.Finding
	fine := style
	fine.Step = style.Step / 2
	for _, f := range p.Fields {
		for _, c := range f.Layout.Closures {
			out = append(out, p.front(f, c, fine))
		}
	}
	return out
}

func (p Plan) front(f row.Field, c row.Closure, style tape.Style) finding.Finding {
	own := slices.Clone(c.Rows) // rows that the arms share move both fronts alike
	slices.Sort(own)
	n := len(own)
	apart := tape.Length(2 * math.Sqrt(float64(own[n-1]+own[n-2])) * float64(rowSlip)) // two standard deviations, of the two longest arms
	x := finding.Finding{Level: finding.Note, Rule: "fronts that meet", Where: fmt.Sprintf("row %d, over %s", c.Row, armNames(c)),
		Measured: fmt.Sprintf("both fronts are to lie %s from the front of row %d; after %s to themselves they are likely within %s of each other",
			style.Of(c.At), f.Layout.StartRow, ownRows(c), style.Up(apart)),
		Limit:  style.Of(tight) + " apart, or the row does not close",
		Source: "from memory: each row wanders by 0.1 mm from the one before; a row is drawn up to 1/32 in"}
	check := max(1, c.Arms[0]-4)
	x.Do = fmt.Sprintf("Measure both arms from the start line at row %d and again at row %d, and steer the one that runs ahead or behind.", check, c.Arms[0])
	if !c.Loop {
		x.Do = fmt.Sprintf("One arm starts from a carried line: check that line from the start line before its first row, and both fronts at row %d.", c.Arms[0])
	}
	x.Do += fmt.Sprintf(" The way out is a header of %s between them instead of row %d%s.", style.Of(c.Long), c.Row, p.headerPrice(c.Long))
	return x
}

// ownRows says how many rows each front has had to itself.
func ownRows(c row.Closure) string {
	var out []string
	for _, n := range c.Rows {
		out = append(out, fmt.Sprint(n))
	}
	if len(slices.Compact(slices.Clone(c.Rows))) == 1 {
		return count(c.Rows[0], "row") + " each"
	}
	return strings.Join(out, " and ") + " rows"
}

// headerPrice is what the wood of a header costs, where cartons have a price
// and a content.
func (p Plan) headerPrice(long tape.Length) string {
	k := p.Job.Boards.Carton
	if k.Price <= 0 || k.Area <= 0 {
		return ""
	}
	area := tape.Area(long) * tape.Area(p.Job.Boards.Face)
	return fmt.Sprintf(", about %.2f %s of wood", k.Price*float64(area)/float64(k.Area), p.Job.Boards.Currency)
}

func armNames(c row.Closure) string {
	var names []string
	for i, r := range c.Arms {
		name := fmt.Sprint(r)
		if c.Parts[i] > 0 {
			name += string(rune('a' + (c.Parts[i]-1)%26))
		}
		names = append(names, name)
	}
	return strings.Join(names, " and ")
}
