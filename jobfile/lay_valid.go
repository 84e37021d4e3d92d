package jobfile

import (
	"fmt"
	"math"
	"slices"

	"strake/finding"
	"strake/lay"
	"strake/stock"
	"strake/tape"
)

// farthest is how far from the frame's origin anything of a lay may lie.
const farthest = 8 * tape.Longest

var (
	zoneKinds = []lay.ZoneKind{lay.Field, lay.Header, lay.Frame}
	profiles  = []lay.Profile{lay.Groove, lay.Tongue, lay.TongueOff, lay.Cut, lay.Ripped, lay.Plain, lay.Spline}
	hows      = []lay.How{"", lay.Slid, lay.Dropped, lay.Angled}
	fastens   = []lay.Fasten{lay.Nailer, lay.HandNail, lay.FaceNail}
	partKinds = []lay.PartKind{lay.IsPiece, lay.IsOffcut, lay.IsStrip, lay.IsScrap, lay.IsKerf}
	knowns    = []stock.Known{"", stock.Tallied, stock.OneSize, stock.MixOnly, stock.Unknown}
	faults    = append([]stock.Fault{stock.Sound}, stock.Faults...)
	hands     = []stock.Hand{"", stock.RightHand, stock.LeftHand}
	levels    = []finding.Level{finding.Note, finding.Warn, finding.Stop}
)

// valid tells whether every number of w points at something and every word is
// known. Whether the lay is a good one is for the checker.
func (w *wireLay) valid() error {
	v := &validity{w: w}
	if w.Unit != layUnit {
		v.failf("the unit of lengths is %q; known is %q", w.Unit, layUnit)
	}
	oneOf(v, "known", w.Known, knowns)
	v.lengths("the lay", w.Kerf)
	v.ids("zone", len(w.Zones), func(i int) int { return w.Zones[i].ID }, false)
	v.ids("run", len(w.Runs), func(i int) int { return w.Runs[i].ID }, false)
	v.ids("piece", len(w.Pieces), func(i int) int { return w.Pieces[i].ID }, true)
	v.ids("board", len(w.Boards), func(i int) int { return w.Boards[i].ID }, true)
	for i := range w.Zones {
		v.zone(&w.Zones[i])
	}
	for i := range w.Runs {
		v.run(&w.Runs[i])
	}
	for i := range w.Pieces {
		v.piece(&w.Pieces[i])
	}
	for i := range w.Boards {
		v.board(&w.Boards[i])
	}
	v.rest()
	return v.err
}

// validity keeps the first thing that is wrong.
type validity struct {
	w   *wireLay
	err error
}

func (v *validity) failf(format string, args ...any) {
	if v.err == nil {
		v.err = fmt.Errorf(format, args...)
	}
}

// oneOf checks that a word is known.
func oneOf[S ~string](v *validity, where string, s S, known []S) {
	if !slices.Contains(known, s) {
		v.failf("%s: %q is not known; known are %q", where, s, known)
	}
}

// ids checks that n things carry the numbers 0 to n-1, each once; in place
// when thing i must be number i.
func (v *validity) ids(what string, n int, id func(int) int, inPlace bool) {
	seen := make([]bool, n)
	for i := range n {
		k := id(i)
		switch {
		case k < 0 || k >= n:
			v.failf("%s %d: there are %d, so their numbers run from 0 to %d", what, k, n, n-1)
			return
		case seen[k]:
			v.failf("%s %d is there twice", what, k)
			return
		case inPlace && k != i:
			v.failf("%s %d stands in place %d; they stand in the order of their numbers", what, k, i)
			return
		}
		seen[k] = true
	}
}

// in checks that number k is one of n things.
func (v *validity) in(where, what string, k, n int) {
	if k < 0 || k >= n {
		v.failf("%s: %s %d does not exist; there are %d", where, what, k, n)
	}
}

// lengths checks that lengths are near enough to the floor to be reckoned with.
func (v *validity) lengths(where string, ls ...tape.Length) {
	for _, l := range ls {
		if l > farthest || l < -farthest {
			v.failf("%s: %d ticks is farther than any floor reaches", where, int64(l))
			return
		}
	}
}

// ring checks one outline: pairs, three corners or none, and small enough for
// exact areas.
func (v *validity) ring(where string, r wireRing) {
	if r == nil {
		return
	}
	v.lengths(where, r...)
	if len(r)%2 != 0 || len(r) < 6 {
		v.failf("%s: an outline is x, y, x, y ... of three corners at least; this has %d numbers", where, len(r))
		return
	}
	if v.err != nil {
		return
	}
	lo, hi := fromRing(r).Box()
	if hi.X-lo.X > tape.Longest || hi.Y-lo.Y > tape.Longest {
		v.failf("%s: this outline is larger than any floor", where)
	}
}

func (v *validity) zone(z *wireZone) {
	where := fmt.Sprintf("zone %d", z.ID)
	oneOf(v, where, z.Kind, zoneKinds)
	oneOf(v, where, z.Hand, hands)
	v.lengths(where, z.Width, z.Offset, z.Butt)
	if z.Width <= 0 {
		v.failf("%s: its boards have the width %d", where, int64(z.Width))
	}
	v.lengths(where, z.Pattern...)
	for _, w := range z.Pattern {
		if w <= 0 || w > z.Width {
			v.failf("%s: a row of its pattern is %d wide, and its widest %d", where, int64(w), int64(z.Width))
		}
	}
	if z.Ahead != 1 && z.Ahead != -1 {
		v.failf("%s: ahead is %d; it is 1 or -1", where, z.Ahead)
	}
	if len(z.Dir) != 2 {
		v.failf("%s: its direction has %d numbers; it is x, y", where, len(z.Dir))
		return
	}
	if size := math.Hypot(z.Dir[0], z.Dir[1]); !(math.Abs(size-1) < 1e-9) { // so that NaN fails too
		v.failf("%s: its direction has the length %g; it is 1", where, size)
	}
	for _, r := range z.Outline {
		v.ring(where, r)
	}
}

func (v *validity) run(r *wireRun) {
	where := fmt.Sprintf("run %d", r.ID)
	v.in(where, "zone", r.Zone, len(v.w.Zones))
	for _, s := range r.Nailing {
		oneOf(v, where, s.By, fastens)
		v.lengths(where, s.From, s.To)
	}
	v.lengths(where, r.Low, r.High, r.Left.Reach, r.Left.Need, r.Right.Reach, r.Right.Need)
	v.ring(where, r.Outline)
	for _, p := range r.Pieces {
		v.in(where, "piece", p, len(v.w.Pieces))
	}
}

func (v *validity) piece(p *wirePiece) {
	where := fmt.Sprintf("piece %d", p.ID)
	v.in(where, "run", p.Run, len(v.w.Runs))
	v.in(where, "board", p.Board, len(v.w.Boards))
	for _, pr := range []lay.Profile{p.Left, p.Right, p.Behind, p.Ahead} {
		oneOf(v, where, pr, profiles)
	}
	oneOf(v, where, p.How, hows)
	v.ring(where, p.Outline)
	v.ring(where, p.InBoard)
	v.lengths(where, p.Off...)
	v.lengths(where, p.Slip...)
	for _, r := range p.Routed {
		oneOf(v, where+", routed", r.As, []lay.Profile{lay.Groove, lay.Spline})
		if len(r.Line) != 4 {
			v.failf("%s: a routed line is x, y to x, y; this has %d numbers", where, len(r.Line))
			return
		}
		v.lengths(where, r.Line...)
	}
	if len(p.Slip)%2 != 0 {
		v.failf("%s: slip is from, to, from, to ...; this has %d numbers", where, len(p.Slip))
	}
	if len(p.Off)%2 != 0 {
		v.failf("%s: off is from, to, from, to ...; this has %d numbers", where, len(p.Off))
	}
}

func (v *validity) board(b *wireBoard) {
	where := fmt.Sprintf("board %d", b.ID)
	oneOf(v, where, b.Fault, faults)
	v.lengths(where, b.Length, b.Width)
	for _, p := range b.Parts {
		oneOf(v, where, p.Kind, partKinds)
		if p.Kind == lay.IsPiece {
			v.in(where, "piece", p.Piece, len(v.w.Pieces))
		} else if p.Piece != -1 {
			v.failf("%s: a part that is %s has the piece %d; it is -1", where, p.Kind, p.Piece)
		}
		v.ring(where, p.Outline)
	}
}

// rest checks what is said about runs and pieces.
func (v *validity) rest() {
	for _, c := range v.w.Spare {
		v.lengths("spare boards", c.Length, c.Width)
		oneOf(v, "spare boards", c.Fault, faults)
		if c.Count < 0 {
			v.failf("spare boards: a count of %d", c.Count)
		}
	}
	for _, r := range v.w.Relaxed {
		v.in("relaxed "+r.Rule, "run", r.Run, len(v.w.Runs))
		v.lengths("relaxed "+r.Rule, r.From, r.To)
	}
	for _, e := range v.w.Exempt {
		if e.Run != -1 {
			v.in("exempt "+e.Rule, "run", e.Run, len(v.w.Runs))
		}
	}
	for _, f := range v.w.Findings {
		oneOf(v, "finding "+f.Rule, finding.Level(f.Level), levels)
		for _, p := range f.Pieces {
			v.in("finding "+f.Rule, "piece", p, len(v.w.Pieces))
		}
	}
}
