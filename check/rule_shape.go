package check

import (
	"fmt"
	"math"
	"slices"

	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/stock"
	"strake/tape"
)

var shapeRule = declare("shape",
	"The lay can be read: every piece has a run, every run a zone and a strip, every part a board, and every outline is simple, runs counter-clockwise and holds area.",
	nil) // run before the others, by readable: they rest on it

// reader collects what is wrong with the form of a lay.
type reader struct {
	lay   lay.Lay
	at    map[int]floor.Aligned
	zones map[int]lay.Zone
	runs  map[int]lay.Run
	out   []finding.Finding
}

// readable tells what keeps a lay from being measured at all.
func readable(l lay.Lay, at map[int]floor.Aligned, b stock.Boards) []finding.Finding {
	r := &reader{lay: l, at: at, zones: map[int]lay.Zone{}, runs: map[int]lay.Run{}}
	r.checkStock(b)
	r.checkZones()
	r.checkRuns()
	r.checkBoards()
	r.checkPieces()
	r.checkLists()
	r.checkRows()
	return r.out
}

func (r *reader) bad(where, what string, pieces ...int) {
	f := shapeRule.stop(where, pieces...)
	f.Measured, f.Do = what, "The lay is not well formed: plan again, or mend the file; nothing else was measured."
	r.out = append(r.out, f)
}

// checkStock keeps the figures of the stock within what can be measured.
func (r *reader) checkStock(b stock.Boards) {
	for _, l := range []tape.Length{b.Face, b.TenBoards / 10, b.SideTongue, b.EndTongue, b.Thickness} {
		if l < 0 || l > tape.Metre*10 {
			r.bad("stock", "a size of the boards is negative or over 10 m")
			return
		}
	}
}

func (r *reader) checkZones() {
	if len(r.lay.Zones) == 0 {
		r.bad("lay", "no zone")
	}
	for _, z := range r.lay.Zones {
		where := fmt.Sprintf("zone %d", z.ID)
		if len(z.Outline) > 0 && !regionHolds(z.Outline) {
			r.bad(where, "its outline holds no area")
		}
		if _, twice := r.zones[z.ID]; twice {
			r.bad(where, "number used twice")
		}
		r.zones[z.ID] = z
		if what := zoneFault(z); what != "" {
			r.bad(where, what)
		}
		a, ok := r.at[z.ID]
		if !ok {
			r.bad(where, "no floor given in its frame")
		}
		if !regionFits(a.Reach) || !regionFits(a.Need) || !regionFits(a.Bare) {
			r.bad(where, "the floor is larger than can be measured")
		}
		for _, o := range z.Outline {
			if what := ringFault(o, false); what != "" {
				r.bad(where, "outline "+what)
			}
		}
		if len(r.lay.Zones) > 1 && len(z.Outline) == 0 {
			r.bad(where, "no outline, though there are several zones")
		}
	}
}

// zoneFault is what is wrong with the figures of a zone.
func zoneFault(z lay.Zone) string {
	size := math.Hypot(z.Dir.X, z.Dir.Y)
	switch {
	case z.Kind != lay.Field && z.Kind != lay.Header && z.Kind != lay.Frame:
		return fmt.Sprintf("unknown kind %q", z.Kind)
	case z.Ahead != 1 && z.Ahead != -1:
		return fmt.Sprintf("tongue direction %d is neither 1 nor -1", z.Ahead)
	case z.Hand != stock.RightHand && z.Hand != stock.LeftHand && z.Hand != "":
		return fmt.Sprintf("unknown hand %q", z.Hand)
	case !(math.Abs(size-1) < 1e-9):
		return "its direction is no unit step"
	case z.Width <= 0 || z.Width > tape.Metre*10:
		return "boards without width"
	case patternFault(z) != "":
		return patternFault(z)
	case z.Offset.Abs() > tape.Longest || z.Butt < 0 || z.Butt > tape.Metre:
		return "offset or butt gap out of range"
	}
	return ""
}

func (r *reader) checkRuns() {
	for _, n := range r.lay.Runs {
		where := rowName(n, "")
		if _, twice := r.runs[n.ID]; twice {
			r.bad(where, fmt.Sprintf("run number %d used twice", n.ID))
		}
		r.runs[n.ID] = n
		z, ok := r.zones[n.Zone]
		switch {
		case !ok:
			r.bad(where, fmt.Sprintf("lies in no zone (%d)", n.Zone))
		case n.Low.Abs() > tape.Longest || !slices.Contains(widthsOf(z), n.High-n.Low):
			r.bad(where, "its strip is not one board wide")
		case stripFault(z, n) != "":
			r.bad(where, stripFault(z, n))
		case n.Part < 0:
			r.bad(where, "part below 0")
		case n.Unfilled && len(n.Pieces) > 0:
			r.bad(where, "unfilled, though it has pieces", n.Pieces...)
		case !n.Unfilled && len(n.Pieces) == 0:
			r.bad(where, "no pieces, though it is not said to be unfilled")
		}
		if what := ringFault(n.Outline, true); n.Unfilled && what != "" {
			r.bad(where, "outline "+what)
		}
	}
}

// stripFault is why the strip of a run is none of its zone's rows.
func stripFault(z lay.Zone, n lay.Run) string {
	if zoneFault(z) != "" {
		return ""
	}
	switch w, ok := widthOn(z, n.Low); {
	case !ok:
		return "its strip is not on a row line"
	case w != n.High-n.Low:
		return "its strip is not as wide as the pattern of the rows has it there"
	}
	return ""
}

func (r *reader) checkBoards() {
	for i, b := range r.lay.Boards {
		where := fmt.Sprintf("board %d", b.ID)
		switch {
		case b.ID != i:
			r.bad(where, fmt.Sprintf("stands in place %d", i))
		case b.Length <= 0 || b.Length > tape.Longest || b.Width <= 0 || b.Width > tape.Longest:
			r.bad(where, "length or width out of range")
		}
		for _, p := range b.Parts {
			if what := ringFault(p.Outline, true); what != "" {
				r.bad(where, fmt.Sprintf("%s: outline %s", p.Kind, what))
			}
			switch p.Kind {
			case lay.IsPiece, lay.IsOffcut, lay.IsStrip, lay.IsScrap, lay.IsKerf:
			default:
				r.bad(where, fmt.Sprintf("unknown part %q", p.Kind))
			}
		}
	}
}

func (r *reader) checkPieces() {
	for i, p := range r.lay.Pieces {
		where := fmt.Sprintf("piece id %d", p.ID)
		run, ok := r.runs[p.Run]
		switch {
		case p.ID != i:
			r.bad(where, fmt.Sprintf("stands in place %d", i))
		case !ok:
			r.bad(where, fmt.Sprintf("belongs to no run (%d)", p.Run), p.ID)
		case p.Board < 0 || p.Board >= len(r.lay.Boards):
			r.bad(where, fmt.Sprintf("comes from no board (%d)", p.Board), p.ID)
		case !knownProfile(p.Left) || !knownProfile(p.Right) || !knownProfile(p.Behind) || !knownProfile(p.Ahead):
			r.bad(where, "unknown profile", p.ID)
		case p.How != lay.Slid && p.How != lay.Dropped && p.How != lay.Angled:
			r.bad(where, fmt.Sprintf("unknown way into its place %q", p.How), p.ID)
		}
		if what := ringFault(p.InBoard, true); what != "" {
			r.bad(where, "outline in its board "+what, p.ID)
		}
		if what := ringFault(p.Outline, true); what != "" {
			r.bad(where, "outline "+what, p.ID)
		} else if b := boxOf(p.Outline); ok && (b.lo.Y < run.Low || b.hi.Y > run.High) {
			r.bad(where, "lies outside the strip of "+rowName(run, ""), p.ID)
		}
	}
}

func knownProfile(p lay.Profile) bool {
	switch p {
	case lay.Groove, lay.Tongue, lay.TongueOff, lay.Cut, lay.Ripped, lay.Plain, lay.Spline:
		return true
	}
	return false
}

// checkLists holds the runs' lists of pieces against the pieces: each listed
// once, by its own run, from left to right.
func (r *reader) checkLists() {
	listed := make([]int, len(r.lay.Pieces))
	for _, n := range r.lay.Runs {
		last := plane.P(math.MinInt64, 0)
		for _, id := range n.Pieces {
			if id < 0 || id >= len(listed) || r.lay.Pieces[id].Run != n.ID {
				r.bad(rowName(n, ""), fmt.Sprintf("lists piece id %d, which is not its own", id))
				continue
			}
			listed[id]++
			lo := boxOf(r.lay.Pieces[id].Outline).lo
			if lo.X < last.X {
				r.bad(rowName(n, ""), "pieces are not listed from left to right", id)
			}
			last = lo
		}
	}
	for id, times := range listed {
		if times != 1 {
			r.bad(fmt.Sprintf("piece id %d", id), fmt.Sprintf("listed by its run %d times", times), id)
		}
	}
}

// checkRows holds the row numbers: one strip, one number, no name twice.
func (r *reader) checkRows() {
	type row struct{ zone, n int }
	strip := map[row]tape.Length{}
	names := map[string]bool{}
	for _, n := range r.lay.Runs {
		k := row{n.Zone, n.Row}
		if low, ok := strip[k]; ok && low != n.Low {
			r.bad(rowName(n, ""), "one row number for two strips")
		}
		strip[k] = n.Low
		name := fmt.Sprint(n.Zone, n.Row, n.Part)
		if names[name] {
			r.bad(rowName(n, ""), "two runs of this name")
		}
		names[name] = true
	}
}
