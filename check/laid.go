package check

import (
	"slices"
	"strings"

	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/limits"
	"strake/plane"
	"strake/stock"
	"strake/tape"
)

// LaidRow is a run as it lies on the floor, nailed or laid dry: what a person
// read off it, and nothing of how it came about.
type LaidRow struct {
	Name   string        // as the job has it
	Run    int           // index of the run among those planned, -1: there is none of that name
	From   tape.Length   // X where its first piece begins
	Told   bool          // From was read; else it is taken to lie as far out as it may
	Pieces []tape.Length // their faces, from left to right
	// CutTold tells that it is known which of its two ends are cut.
	CutTold, CutLeft, CutRight bool
	Front                      *LaidFront // its tongue edge, nil: not read
}

// LaidFront is where the tongue edge of a run was read to lie, without the
// tongue.
type LaidFront struct {
	Read        tape.Length // from there, square to the rows
	From        string      // the front of row 2, wall A-B
	Least, Most tape.Length // planned distance; two figures where a wall is out of parallel
	Rows        int         // rows between, where it is read from the front of another row; else 0
}

// LaidFloor is rows as laid with the rows that were planned there.
type LaidFloor struct {
	Rows  []LaidRow
	Runs  []lay.Run // planned: their strips, ends, zones and order, without pieces
	Zones []lay.Zone
	At    map[int]floor.Aligned // for each Zone.ID the floor in its frame
}

// Laid holds rows as laid to the rules that bear on them alone: nothing is
// asked of the rest of the floor. Findings of level Stop break a limit, those
// of level Warn strain one. The last is a note of what was looked at.
func Laid(f LaidFloor, lim limits.Limits, b stock.Boards, style tape.Style) []finding.Finding {
	if style.Step == 0 {
		style = tape.Paper(style.Unit)
	}
	s := &laidSite{LaidFloor: f, lim: lim, stock: b, tape: style, byRun: map[int]*laidRun{}}
	out := s.names()
	for _, r := range laidRules {
		out = append(out, r.hold(r, s)...)
	}
	return append(out, s.summary())
}

// laidSite is rows as laid with their look-ups.
type laidSite struct {
	LaidFloor
	lim   limits.Limits
	stock stock.Boards
	tape  tape.Style
	runs  []*laidRun       // those that can be held to something
	byRun map[int]*laidRun // by the index of the planned run
}

// laidRun is a run as laid beside the run that was planned there.
type laidRun struct {
	LaidRow
	plan   lay.Run
	zone   lay.Zone
	name   string        // row 12a
	to     tape.Length   // X where its last piece ends
	joints []tape.Length // X of its joints, from left to right
}

func (r *laidRun) extent() plane.Span { return plane.Span{From: r.From, To: r.to} }

// within are the joints strictly inside a stretch.
func (r *laidRun) within(in plane.Span) []tape.Length {
	return slices.DeleteFunc(slices.Clone(r.joints), func(x tape.Length) bool { return x <= in.From || x >= in.To })
}

// place takes up a row that has its run in the plan.
func (s *laidSite) place(row LaidRow) {
	n := &laidRun{LaidRow: row, plan: s.Runs[row.Run], name: "row " + row.Name, to: row.From}
	for _, z := range s.Zones {
		if z.ID == n.plan.Zone {
			n.zone = z
		}
	}
	for i, l := range row.Pieces {
		if i > 0 {
			n.joints = append(n.joints, n.to)
		}
		n.to += l
	}
	s.runs = append(s.runs, n)
	s.byRun[row.Run] = n
}

// rowNames lists runs by name: row 3, row 4a and row 5.
func rowNames(ns ...*laidRun) string {
	var out []string
	for _, n := range ns {
		out = append(out, n.name)
	}
	if len(out) < 2 {
		return strings.Join(out, "")
	}
	return strings.Join(out[:len(out)-1], ", ") + " and " + out[len(out)-1]
}
