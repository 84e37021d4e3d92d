package rack

import (
	"cmp"
	"slices"

	"strake/tape"
)

// ledger is a filled floor being bettered: what each run costs, kept up to date
// so that opening a few runs of a large floor costs no look at the others.
type ledger struct {
	*engine
	fs     []filled
	strips map[int][]int // runs by strip
	users  map[int][]int // runs by board
	joints map[int][]tape.Length
	looks  []int64 // cost of each run's joints against both sides
	flawed []bool  // a joint that costs anything, a cut not asked for, or an end cut off that is too short to use
}

func (e *engine) ledger(fs []filled) *ledger {
	g := &ledger{engine: e, fs: fs, strips: map[int][]int{}, users: map[int][]int{}, joints: jointsOf(fs, nil),
		looks: make([]int64, len(fs)), flawed: make([]bool, len(fs))}
	all := make([]int, len(fs))
	for i, f := range fs {
		all[i] = i
		g.strips[f.strip()] = append(g.strips[f.strip()], i)
	}
	g.use(all)
	g.weigh(all)
	return g
}

// use notes which boards some runs take.
func (g *ledger) use(runs []int) {
	for _, i := range runs {
		for _, q := range g.fs[i].pieces {
			if q.board >= 0 && !slices.Contains(g.users[q.board], i) {
				g.users[q.board] = append(g.users[q.board], i)
			}
		}
	}
}

// free forgets which boards some runs take.
func (g *ledger) free(runs []int) {
	for _, i := range runs {
		for _, q := range g.fs[i].pieces {
			g.users[q.board] = slices.DeleteFunc(g.users[q.board], func(j int) bool { return j == i })
		}
	}
}

// weigh works out anew what some runs cost.
func (g *ledger) weigh(runs []int) {
	for _, i := range runs {
		g.looks[i] = g.joined(g.fs[i], g.joints)
		cuts, asked := g.fs[i].cuts()
		g.flawed[i] = !g.isLaid(i) && (g.looks[i] > 0 || cuts > asked || !g.fs[i].ok || g.scraps(g.fs[i]))
	}
}

// scraps tells whether the cut that ends a run leaves a piece of board too short
// to use, or none where a saw cut would have one.
func (e *engine) scraps(f filled) bool {
	if !f.ok || len(f.pieces) == 0 {
		return false
	}
	q := f.pieces[len(f.pieces)-1]
	if q.board < 0 || !q.farCut {
		return false
	}
	rest := e.whole(q.board).to - q.to - e.loss(q.farMitre)
	return rest > e.unit && rest < e.shortest
}

// isLaid tells whether a run lies already, or is pinned, and is not to be opened.
func (g *ledger) isLaid(i int) bool {
	_, ok := g.laid[g.fs[i].index]
	_, pin := g.pinned[g.fs[i].index]
	return ok || pin
}

// cuts counts the crosscuts of a filled run, and those its ends ask for.
func (f filled) cuts() (cuts, asked int) {
	for _, q := range f.pieces {
		cuts += q.crosscuts()
	}
	if f.farCut {
		asked++
	}
	if f.nearCut {
		asked++
	}
	return
}

// strip is what tells the strip of a run from others among joints.
func (f filled) strip() int { return f.level }

// bad are the runs that could be better.
func (g *ledger) bad() []int {
	var out []int
	for i, is := range g.flawed {
		if is {
			out = append(out, i)
		}
	}
	return out
}

// without are the joints of all runs but some.
func (g *ledger) without(runs []int) map[int][]tape.Length {
	out := make(map[int][]tape.Length, len(g.joints))
	for k, at := range g.joints {
		out[k] = at
	}
	done := map[int]bool{}
	for _, i := range runs {
		k := g.fs[i].strip()
		if done[k] {
			continue
		}
		done[k] = true
		delete(out, k)
		for _, j := range g.strips[k] {
			if g.fs[j].ok && !slices.Contains(runs, j) {
				g.fs[j].noted(out)
			}
		}
	}
	return out
}

// beside are some runs and those within two strips of them.
func (g *ledger) beside(runs []int) []int {
	var out []int
	for _, i := range runs {
		for k := -2; k <= 2; k++ {
			out = append(out, g.strips[g.fs[i].strip()+k]...)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// near are the runs in the strips on both sides of one, those filled anew as
// they are now.
func (g *ledger) near(r run, next map[int]filled) []filled {
	if g.marks == nil {
		return nil
	}
	var out []filled
	for _, k := range []int{r.level - 1, r.level + 1} {
		for _, i := range g.strips[k] {
			if f, ok := next[i]; ok {
				out = append(out, f)
			} else {
				out = append(out, g.fs[i])
			}
		}
	}
	return out
}

// worth is what a part of a floor costs, to be compared in the order that the
// job asks for.
type worth struct {
	unfilled    int
	wood, looks int64
	same        int // neighbours of one carton and shade
}

// less tells whether a costs less than b.
func (e *engine) less(a, b worth) bool {
	if a.unfilled != b.unfilled {
		return a.unfilled < b.unfilled
	}
	if e.woodFirst {
		return cmp.Or(cmp.Compare(a.wood, b.wood), cmp.Compare(a.looks, b.looks), cmp.Compare(a.same, b.same)) < 0
	}
	// stair-steps come after wood
	return cmp.Or(cmp.Compare(a.looks/costWaste, b.looks/costWaste), cmp.Compare(a.wood, b.wood), cmp.Compare(a.looks, b.looks), cmp.Compare(a.same, b.same)) < 0
}

// lying is what an offcut that is left over counts as in wood, so that they are
// used up rather than new boards begun.
const lying = 2 * tape.Sixteenth

// lost is what the runs cost in wood that so much of was taken for, with this
// left over: crosscuts, and what is neither laid nor left.
func (e *engine) lost(fs []filled, runs []int, taken tape.Length, left pile) int64 {
	taken += crosscut*tape.Length(left.sawn()) + lying*tape.Length(len(left.heads)+len(left.tails))
	for _, i := range runs {
		cuts, _ := fs[i].cuts()
		taken += crosscut * tape.Length(cuts)
		for _, q := range fs[i].pieces {
			taken -= q.length()
		}
	}
	return int64(taken)
}

// sawn counts the cuts whose other side is laid while this one lies about.
func (p pile) sawn() int {
	n := 0
	for _, t := range slices.Concat(p.heads, p.tails) {
		if t.sawn {
			n++
		}
	}
	return n
}

// hopeless tells whether the boards left, of some width, cannot come to the runs
// not filled, whatever is done.
func (e *engine) hopeless(fs []filled) bool {
	for _, w := range e.kinds.widths(fs) {
		some, left := e.kinds.ofRuns(fs, e.left, w)
		var need tape.Length
		for _, f := range some {
			if !f.ok {
				need += f.farNeed - f.nearNeed
			}
		}
		if need > left.length() {
			return true
		}
	}
	return false
}

// length is all that lies in a pile and can be joined on. What has lost both
// ends of the mill's is as good as scrap.
func (p pile) length() tape.Length {
	var sum tape.Length
	for _, t := range slices.Concat(p.boards, p.heads, p.tails) {
		if t.groove || t.tongue {
			sum += t.length()
		}
	}
	return sum
}
