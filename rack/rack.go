package rack

import (
	"context"
	"math/rand/v2"
	"slices"

	"strake/finding"
	"strake/lay"
	"strake/limits"
	"strake/row"
	"strake/stock"
	"strake/tape"
)

// Ask is all that racking depends on.
type Ask struct {
	Fields    []row.Field
	Boards    stock.Boards
	Limits    limits.Limits
	Seed      uint64
	Polishing int // units of work for bettering a filled floor; 0: none
	Budget    int // units of work, one for each place tried; 0: Budget
	WoodFirst bool
	Shades    stock.Shades
	Pinned    map[string][]tape.Length // boards of rows by name, from left to right
	Plain     bool                     // one lay of very many: rests are not weighed by what later runs make of them, and nothing is said of it
	AtHand    int                      // boards known at a time, in the order of the tally: those of the open cartons; 0: all
	Progress  func(Progress)           // told of each better floor; nil: nobody
	Style     tape.Style
}

// Budget is the work allowed where nothing else is said: some 20 s on a small
// machine, far more than a room takes.
const Budget = 2_000_000_000

// largeFloor is the work allowed on top for each place that joints could have:
// some eight passes over a pool of boards.
const largeFloor = 8 * 64

// Lay fills every run of the layout it can and returns the floor board by
// board. A cancelled search leaves the runs it did not reach unfilled and says
// so.
func Lay(ctx context.Context, a Ask) lay.Lay {
	l, _ := Racked(ctx, a)
	return l
}

// Racked is Lay with what the layout is worth.
func Racked(ctx context.Context, a Ask) (lay.Lay, Worth) {
	ls, widths, fs := supply(a)
	e := newEngine(ctx, a, ls, widths)
	plan := e.run(a.Fields)
	l := e.build(a, ls, plan)
	if a.Plain {
		return l, Worth{Work: e.work}
	}
	l.Findings = slices.Concat(fs, e.findings(a, plan), e.whyUnfilled(a, plan), e.pinFindings(plan, a.Style))
	l.Findings = append(l.Findings, e.unsureFindings(a, plan)...)
	l.Findings = append(l.Findings, e.patternFindings(a, plan)...)
	l.Findings = append(l.Findings, e.markFindings(a, plan)...)
	return l, e.worthOf(plan)
}

// filled is a run with its pieces, as racked.
type filled struct {
	run
	pieces []placed
	least  tape.Length // joint distance held to
	ok     bool
}

func newEngine(ctx context.Context, a Ask, ls, widths []tape.Length) *engine {
	e := &engine{
		ctx: ctx, rng: rand.New(rand.NewPCG(a.Seed, 0x5eed)), budget: a.Budget, polishing: a.Polishing, plain: a.Plain,
		shop: shop{
			blade: a.Limits.Kerf.Value, shortest: a.Limits.ShortestPiece.Value,
			jointMin: a.Limits.JointMin.Value, preferred: max(a.Limits.JointPreferred.Value, a.Limits.JointMin.Value),
			hReach: a.Limits.HReach.Value, stairReach: a.Limits.StairReach.Value, stairFarthest: a.Limits.StairFarthest.Value,
			tongue: a.Boards.EndTongue, woodFirst: a.WoodFirst,
		},
	}
	if e.budget == 0 {
		e.budget = Budget + largeFloor*int(need(a)/tape.Sixteenth)
	}
	e.hand, e.atHand, e.progress, e.asked = a.Boards.Hand, a.AtHand, a.Progress, a.Pinned
	e.unit = unit(ls)
	e.pattern = newPattern(a, ls)
	e.lengthError, e.untrusted, e.meanBoard = a.Boards.LengthError(), a.Boards.Doubted && a.Boards.Known == stock.Tallied, mean(ls)
	e.doubts = doubtsOf(a)
	e.kinds.of = widths
	e.marks, e.shadesApart = marksOf(a, widths), a.Shades == stock.ShadesApart
	e.delivered(ls)
	e.mixes = e.mixable()
	return e
}

// finest is the smallest unit searched in; finer lengths are taken down to it.
const finest = tape.SixtyFourth

// unit is the step that all lengths are whole numbers of, a sixteenth of an
// inch or a millimetre where they allow so much.
func unit(ls []tape.Length) tape.Length {
	g := gcd(ls)
	switch {
	case g == 0:
		return tape.Sixteenth
	case g%tape.Sixteenth == 0:
		return tape.Sixteenth
	case g%tape.Millimetre == 0:
		return tape.Millimetre
	}
	return g
}

// run fills the runs in the order of laying. Where one of a small floor cannot
// be filled, every way of using the few boards is tried.
func (e *engine) run(fields []row.Field) []filled {
	out := e.fillAll(e.oriented(fields))
	byOrder(out)
	return out
}

// byOrder puts runs in the order of laying.
func byOrder(fs []filled) {
	slices.SortStableFunc(fs, func(a, b filled) int { return a.Order - b.Order })
}

// oriented are the runs of all fields as racked.
func (e *engine) oriented(fields []row.Field) []run {
	var runs []run
	for _, o := range Order(fields) {
		f := fields[o.Field]
		r := f.Layout.Runs[o.Run]
		v := e.doubted(orient(r, len(runs), e.signOf(r.Ahead)))
		v.field, v.level, v.alone = o.Field, f.Layout.Courses().Row(r.Low)+o.Field*farApart, f.Kind != lay.Field
		v.start = r.Row == f.Layout.StartRow || r.Row == f.Layout.StartRow+r.Ahead
		runs = append(runs, v)
	}
	return runs
}

// farApart keeps the strips of several fields apart as places of joints.
const farApart = 1 << 50

func (e *engine) fillAll(runs []run) []filled {
	out := e.greedy(runs)
	if e.pattern != nil {
		return out
	}
	out = e.bestStart(runs, out)
	if unfilled(out) == 0 || e.spent() {
		return e.polishFields(out)
	}
	if slices.ContainsFunc(runs, func(r run) bool { return r.alone }) {
		return e.thrifty(runs, out)
	}
	if every, ok := e.everyWay(runs); ok {
		return e.measured(every)
	}
	out = e.thrifty(runs, out)
	if unfilled(out) > 0 && !e.untrusted {
		out = e.daring(runs, out)
	}
	return e.polish(out)
}

// daring racks again with some runs, the last of those of a width that want
// boards, to close whole though their lengths may be off by more than the play:
// there are too few boards to end so many runs in a cut. It takes as few as it
// finds enough, by doubling, and at last takes all lengths for exact.
func (e *engine) daring(runs []run, before []filled) []filled {
	wanting := map[tape.Length]bool{}
	for _, f := range before {
		if !f.ok {
			wanting[f.wide()] = true
		}
	}
	var unsure []int
	for i, r := range runs {
		if r.unsure && wanting[r.wide()] {
			unsure = append(unsure, i)
		}
	}
	if len(unsure) == 0 {
		return before
	}
	for n := 1; ; n = min(2*n, len(unsure)) {
		some := slices.Clone(runs)
		for _, i := range unsure[len(unsure)-n:] {
			some[i] = dared(some[i])
		}
		if out := e.thrifty(some, before); unfilled(out) == 0 || e.spent() {
			return out
		}
		if n == len(unsure) {
			break
		}
	}
	all := trusted(runs)
	if every, ok := e.everyWay(all); ok {
		return e.measured(every)
	}
	return e.thrifty(all, before)
}

// thrifty racks again with wood first and every offcut kept, for boards that
// ran out; it keeps the better of the two.
func (e *engine) thrifty(runs []run, before []filled) []filled {
	keep, left := e.shop, e.left
	e.woodFirst, e.scarce = true, true
	out := e.greedy(runs)
	if unfilled(out) < unfilled(before) {
		return out
	}
	e.shop, e.left = keep, left
	return before
}

func unfilled(fs []filled) int {
	n := 0
	for _, f := range fs {
		if !f.ok {
			n++
		}
	}
	return n
}

// measured notes the joint distance that each run keeps.
func (e *engine) measured(fs []filled) []filled {
	joints := map[int][]tape.Length{}
	for i := range fs {
		f := &fs[i]
		f.least = e.jointMin
		one := e.around(f.run, joints).one
		for _, q := range f.pieces[1:] {
			f.least = min(f.least, nearest(one, q.start))
		}
		f.noted(joints)
	}
	return fs
}

func (e *engine) greedy(runs []run) []filled {
	p := e.stock.clone()
	joints := map[int][]tape.Length{} // by the level of the strip
	out := make([]filled, len(runs))
	e.reserve(runs, &p)
	e.shadeParts(runs)
	e.begin(runs, p)
	e.setOut(runs)
	for i, r := range runs {
		e.reached(i, len(runs))
		e.turnTo(r, len(runs)-1-i)
		e.order = i
		if f, ok := e.fixed(r); ok {
			out[i] = f
			f.noted(joints)
			continue
		}
		e.lookAround(r, out[:i])
		q := e.known(p, r)
		if r.alone {
			q.heads, q.tails = nil, nil
		}
		out[i].run = r
		if _, ok := e.pinned[i]; ok {
			out[i].pieces, out[i].least = e.fillPinned(r, e.around(r, joints))
			out[i].ok = true
			p.boards = append(p.boards, e.pinned[i]...)
		} else if out[i].pieces, out[i].least, out[i].ok = e.patterned(r, e.kinds.only(p, r), joints); !out[i].ok {
			out[i].pieces, out[i].least, out[i].ok = e.fill(r, q, e.around(r, joints))
		}
		if !out[i].ok {
			continue
		}
		e.share.drawn(out[i].pieces, p)
		p.use(out[i].pieces, e.shop)
		if r.alone {
			p.forget(out[i].pieces)
		}
		e.tidy(&p)
		out[i].noted(joints)
	}
	e.left = p
	return out
}

// polishFields betters the runs of the fields; headers and frames, the last,
// stay as they are.
func (e *engine) polishFields(fs []filled) []filled {
	n := slices.IndexFunc(fs, func(f filled) bool { return f.alone })
	if n < 0 {
		return e.polish(fs)
	}
	return append(e.polish(fs[:n:n]), fs[n:]...)
}

// noted adds the joints of a filled run to those of its strip.
func (f filled) noted(joints map[int][]tape.Length) {
	at := joints[f.level]
	for _, q := range f.pieces[1:] {
		at = append(at, f.sign*q.start)
	}
	slices.Sort(at)
	joints[f.level] = at
}

// within are the joints that lie inside a run, along it as racked, sorted.
func within(at []tape.Length, r run) []tape.Length {
	var out []tape.Length
	for _, x := range at {
		if x *= r.sign; r.nearReach < x && x < r.farReach {
			out = append(out, x)
		}
	}
	if r.sign < 0 {
		slices.Reverse(out)
	}
	return out
}

// signOf is 1 where the end tongues of a run lie to the right, else -1.
func (e *engine) signOf(ahead int) tape.Length {
	if (lay.Zone{Ahead: ahead, Hand: e.hand}).TongueRight() {
		return 1
	}
	return -1
}

// heap is how many offcuts of a kind lie about at once to be chosen from: the
// longest.
const heap = 8

// tidy lays the longest offcuts on top.
func (e *engine) tidy(p *pile) {
	for _, list := range []*[]item{&p.heads, &p.tails} {
		slices.SortStableFunc(*list, func(a, b item) int { return int(b.length() - a.length()) })
	}
}

// findings say what the search could not keep.
func (e *engine) findings(a Ask, plan []filled) []finding.Finding {
	var out []finding.Finding
	if e.ctx.Err() != nil {
		f := finding.Finding{Level: finding.Warn, Rule: "search", Measured: "cancelled before all runs were filled", Do: "Start it again to get the whole board layout."}
		if unfilled(plan) == 0 {
			f.Measured, f.Do = "cancelled while a better board layout was looked for", "All rows have boards; start it again for a better choice of them."
		}
		out = append(out, f)
	}
	if e.scarce {
		out = append(out, finding.Finding{Level: finding.Note, Rule: "boards are scarce", Measured: "saving wood came before looks, and every offcut is kept",
			Do: "With a few more boards the joints would lie better."})
	}
	return out
}
