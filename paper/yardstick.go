package paper

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"strake/lay"
	"strake/limits"
	"strake/plan"
	"strake/rack"
	"strake/tape"
)

// Yardsticks are what a board layout is worth beside its limits.
type Yardsticks struct {
	Joints        int         // end joints
	H, Stairs     int         // H-joints; shifts repeated row after row
	Cluster       int         // most joints in neighbouring rows that each lie under the preferred distance from the next
	Mean          tape.Length // of the distances from each joint to the nearest in the row behind
	First, Last   tape.Length // mean length of the pieces in the first and the last third of the rows
	FewestBoards  int         // by length alone, the longest first
	LengthLaid    tape.Length
	OffcutsAtOnce int // most offcuts waiting to be used at one time
	Lots          lots
}

// YardsticksOf measures a layout from its pieces alone.
func YardsticksOf(p plan.Plan) Yardsticks {
	var y Yardsticks
	strips := jointStrips(p)
	var sum tape.Length
	count := 0
	for _, n := range sorted(strips) {
		for _, x := range strips[n] {
			y.Joints++
			one, two := strips[n-1], strips[n-2]
			if d, ok := nearestJoint(one, x); ok {
				sum, count = sum+d, count+1
			}
			if d, ok := nearestJoint(two, x); ok && d <= p.Job.Limits.HReach.Value {
				y.H++
			}
			if !p.Job.Boards.Shift.Fixed() { // there they are meant
				y.Stairs += stairsAt(x, one, two, p.Job.Limits)
			}
		}
	}
	if count > 0 {
		y.Mean = sum / tape.Length(count)
	}
	y.Cluster = longestCluster(strips, p.Job.Limits.JointPreferred.Value)
	y.First, y.Last = thirds(p.Lay)
	y.fewest(p)
	y.OffcutsAtOnce = offcutsAtOnce(p.Lay)
	y.Lots = lotsOf(pieceStrips(p))
	return y
}

// farApart keeps the rows of several fields apart.
const farApart = 1 << 50

// jointStrips are the end joints by their row, counted across the rows, sorted;
// those of another field lie far off.
func jointStrips(p plan.Plan) map[int][]tape.Length {
	out := map[int][]tape.Length{}
	for _, r := range p.Lay.Runs {
		field := p.FieldOf(r.Zone)
		n := p.Field(field).Layout.Courses().Row(r.Low) + farApart*field
		for i := 1; i < len(r.Pieces); i++ {
			lo, _ := p.Lay.Pieces[r.Pieces[i]].Outline.Box()
			out[n] = append(out[n], lo.X)
		}
	}
	for _, at := range out {
		slices.Sort(at)
	}
	return out
}

// pieceStrips are the pieces by their row, counted across the rows.
func pieceStrips(p plan.Plan) map[int][]pieceAt {
	out := map[int][]pieceAt{}
	for _, r := range p.Lay.Runs {
		field := p.FieldOf(r.Zone)
		n := p.Field(field).Layout.Courses().Row(r.Low) + farApart*field
		for _, id := range r.Pieces {
			q := p.Lay.Pieces[id]
			lo, hi := q.Outline.Box()
			out[n] = append(out[n], pieceAt{lo.X, hi.X, q.Board, p.Lay.Boards[q.Board].Carton})
		}
	}
	return out
}

func sorted[V any](strips map[int]V) []int {
	var out []int
	for n := range strips {
		out = append(out, n)
	}
	slices.Sort(out)
	return out
}

func nearestJoint(at []tape.Length, x tape.Length) (tape.Length, bool) {
	best := tape.Length(-1)
	for _, a := range at {
		if d := (a - x).Abs(); best < 0 || d < best {
			best = d
		}
	}
	return best, best >= 0
}

// stairsAt counts the joints one row back that x follows by a shift which they
// follow in their turn.
func stairsAt(x tape.Length, one, two []tape.Length, l limits.Limits) int {
	n := 0
	for _, a := range one {
		shift := x - a
		if shift.Abs() > l.StairFarthest.Value {
			continue
		}
		if d, ok := nearestJoint(two, a-shift); ok && d <= l.StairReach.Value {
			n++
		}
	}
	return n
}

// longestCluster is the longest chain of joints, each in the row after the one
// before it and nearer to it than preferred.
func longestCluster(strips map[int][]tape.Length, preferred tape.Length) int {
	type joint struct {
		row int
		at  tape.Length
	}
	long := map[joint]int{}
	best := 0
	for _, row := range sorted(strips) {
		for _, x := range strips[row] {
			n := 1
			for _, a := range strips[row-1] {
				if (a - x).Abs() < preferred {
					n = max(n, long[joint{row - 1, a}]+1)
				}
			}
			long[joint{row, x}] = n
			best = max(best, n)
		}
	}
	return best
}

// thirds are the mean lengths of the pieces in the first and the last third of
// the rows.
func thirds(l lay.Lay) (first, last tape.Length) {
	rows := 0
	for _, r := range l.Runs {
		rows = max(rows, r.Row)
	}
	var sum, count [2]tape.Length
	for _, r := range l.Runs {
		k := -1
		switch {
		case 3*r.Row <= rows:
			k = 0
		case 3*r.Row > 2*rows:
			k = 1
		default:
			continue
		}
		for _, id := range r.Pieces {
			lo, hi := l.Pieces[id].Outline.Box()
			sum[k], count[k] = sum[k]+hi.X-lo.X, count[k]+1
		}
	}
	return sum[0] / max(1, count[0]), sum[1] / max(1, count[1])
}

// fewest is the bound on boards: the longest of all the boards there are, used
// whole, until they reach the length laid; of several widths for each by itself.
func (y *Yardsticks) fewest(p plan.Plan) {
	key := func(width tape.Length) tape.Length {
		if len(p.Job.Boards.Widths) == 0 {
			return 0
		}
		return width
	}
	all, laid := map[tape.Length][]tape.Length{}, map[tape.Length]tape.Length{}
	for _, b := range p.Lay.Boards {
		all[key(b.Width)] = append(all[key(b.Width)], b.Length)
	}
	for _, s := range p.Lay.Spare {
		for range s.Count {
			all[key(s.Width)] = append(all[key(s.Width)], s.Length)
		}
	}
	for _, q := range p.Lay.Pieces {
		lo, hi := q.Outline.Box()
		laid[key(p.Lay.Boards[q.Board].Width)] += hi.X - lo.X
	}
	for width, need := range laid {
		y.LengthLaid += need
		boards := all[width]
		slices.SortFunc(boards, func(a, b tape.Length) int { return cmp.Compare(b, a) })
		for sum := tape.Length(0); sum < need && len(boards) > 0; boards = boards[1:] {
			sum += boards[0]
			y.FewestBoards++
		}
	}
}

// offcutsAtOnce is the most boards that wait, cut once, for their other piece
// to be laid.
func offcutsAtOnce(l lay.Lay) int {
	order := map[int][]int{} // board -> places in the order of laying
	for _, r := range l.Runs {
		for _, id := range r.Pieces {
			b := l.Pieces[id].Board
			order[b] = append(order[b], r.Order)
		}
	}
	change := map[int]int{}
	for _, at := range order {
		if lo, hi := slices.Min(at), slices.Max(at); hi > lo {
			change[lo]++
			change[hi]--
		}
	}
	var places []int
	for k := range change {
		places = append(places, k)
	}
	slices.Sort(places)
	now, most := 0, 0
	for _, k := range places {
		now += change[k]
		most = max(most, now)
	}
	return most
}

// yardstickText is the block at the foot of the row list.
func yardstickText(b *strings.Builder, p plan.Plan) {
	y, n := YardsticksOf(p), Count(p)
	if n.Pieces == 0 {
		return
	}
	style := tape.Paper(p.Job.Unit)
	b.WriteString("\nWhat this board layout is worth\n")
	joints := count(y.Joints, "end joint")
	if n.Joints { // rows lie beside each other
		joints += fmt.Sprintf("; to the nearest in the row behind %s on average, %s at the least; %s nearer than %s",
			style.Of(y.Mean), style.Of(n.Nearest), count(n.UnderPreferred, "pair"), style.Of(p.Job.Limits.JointPreferred.Value))
	}
	lines := []string{joints,
		fmt.Sprintf("%s (in line within %s, one row between), %s (the same shift within %s twice running), longest cluster %d",
			count(y.H, "H-joint"), style.Of(p.Job.Limits.HReach.Value), count(y.Stairs, "stair-step"), style.Of(p.Job.Limits.StairReach.Value), y.Cluster),
	}
	if y.First > 0 && y.Last > 0 {
		lines = append(lines, fmt.Sprintf("mean piece %s in the first third of the rows, %s in the last", style.Of(y.First), style.Of(y.Last)))
	}
	lines = append(lines, fmt.Sprintf("%s; scrap and kerf %.2f %% of the floor; %s, by length alone no fewer than %d would do; at most %s about at once",
		count(n.Crosscuts, "crosscut"), 100*n.Waste(), count(n.Boards, "board"), y.FewestBoards, lying(y.OffcutsAtOnce)))
	lines = append(lines, woodText(p, style)...)
	lines = append(lines, playText(playOf(p.Lay), style)...)
	if l := y.Lots; l.Most > 0 {
		lines = append(lines, fmt.Sprintf("%d of %d neighbours, end to end or side by side, are from one carton; at most %d boards of one (%s) lie together", l.Same, l.Pairs, l.Most, l.Carton))
	}
	for _, l := range lines {
		wrap(b, l, "  - ", "    ")
	}
}

// woodText holds scrap, kerf and cuts against what they cannot be less than.
func woodText(p plan.Plan, style tape.Style) []string {
	w := p.Worth
	if w == (rack.Worth{}) {
		return nil
	}
	s := fmt.Sprintf("scrap and kerf along the boards %s, with an inch for each crosscut %s", style.Of(w.Lost), style.Of(w.Cost()))
	switch {
	case w.Chain > 0:
		s += fmt.Sprintf("; rows all alike, in boards of these lengths cut at the far ends of rows only, lose no less than %s", style.Of(w.Chain))
	case w.FewestCuts > 0:
		s += fmt.Sprintf("; with as many boards of these lengths as one likes, these rows need %s at the least", count(w.FewestCuts, "crosscut"))
	default:
		s += "; with as many boards of these lengths as one likes none need be lost"
	}
	return []string{s}
}

func lying(offcuts int) string {
	if offcuts == 1 {
		return "1 offcut lies"
	}
	return fmt.Sprintf("%d offcuts lie", offcuts)
}
