package check

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// Nothing that is written in a lay makes the checker panic, and what it says
// of a lay does not depend on anything else.
func TestGarbledLaysAreReported(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		names := []string{"plain", "ell", "slant", "header", "spline"}
		b := goodLays[rapid.SampledFrom(names).Draw(t, "room")]()
		for range rapid.IntRange(1, 6).Draw(t, "slips") {
			garble(t, b)
		}
		first := b.held()
		b.told = true // runs followed their pieces once; the lay is now as it is
		second := b.held()
		if !slices.EqualFunc(first, second, func(f, g finding.Finding) bool { return f.String() == g.String() }) {
			t.Fatalf("two answers:\n%v\n%v", first, second)
		}
		for _, f := range first {
			if f.Rule == "" || f.Where == "" || f.Measured == "" || f.Do == "" && f.Level == finding.Stop {
				t.Fatalf("a finding that says too little: %#v", f)
			}
		}
	})
}

// odd draws a length that is likely to hurt.
func odd(t *rapid.T) tape.Length {
	return tape.Length(rapid.OneOf(
		rapid.Int64Range(-3, 3),
		rapid.Int64Range(-300_000, 300_000),
		rapid.SampledFrom([]int64{math.MinInt64, math.MaxInt64, int64(tape.Longest), int64(-tape.Longest), int64(in(5))}),
	).Draw(t, "length"))
}

func pick[T any](t *rapid.T, s []T) *T {
	if len(s) == 0 {
		return new(T)
	}
	return &s[rapid.IntRange(0, len(s)-1).Draw(t, "index")]
}

var profiles = []lay.Profile{lay.Groove, lay.Tongue, lay.TongueOff, lay.Cut, lay.Ripped, lay.Plain, lay.Spline, "odd"}

func garble(t *rapid.T, b *bench) {
	p, r, bd := pick(t, b.lay.Pieces), pick(t, b.lay.Runs), pick(t, b.lay.Boards)
	z := pick(t, b.lay.Zones)
	ring := func(o *plane.Ring) {
		*o = slices.Clone(*o)
		q := pick(t, *o)
		q.X, q.Y = q.X+odd(t), q.Y+odd(t)
	}
	switch rapid.IntRange(0, 21).Draw(t, "kind") {
	case 0:
		ring(&p.Outline)
	case 1:
		ring(&p.InBoard)
	case 2:
		ring(&pick(t, bd.Parts).Outline)
	case 3:
		p.Outline = p.Outline.Move(plane.P(odd(t), 0))
	case 4:
		p.Board = rapid.IntRange(-1, len(b.lay.Boards)).Draw(t, "board")
	case 5:
		p.Run = rapid.IntRange(9, 15).Draw(t, "run")
	case 6:
		p.Left, p.Ahead = rapid.SampledFrom(profiles).Draw(t, "left"), rapid.SampledFrom(profiles).Draw(t, "ahead")
	case 7:
		p.Right, p.Behind = rapid.SampledFrom(profiles).Draw(t, "right"), rapid.SampledFrom(profiles).Draw(t, "behind")
	case 8:
		p.Off = append(p.Off, plane.Span{From: odd(t), To: odd(t)})
	case 9:
		p.Turned, p.How = !p.Turned, rapid.SampledFrom([]lay.How{lay.Dropped, lay.Angled, lay.Slid, ""}).Draw(t, "how")
	case 10:
		r.Low, r.High = r.Low+odd(t), r.High+odd(t)
	case 11:
		r.Order, r.Row, r.Part = int(odd(t)), int(odd(t)), rapid.IntRange(-1, 30).Draw(t, "part")
	case 12:
		r.Unfilled, r.Pieces = true, nil
		r.Outline = plane.Rect(plane.P(odd(t), odd(t)), plane.P(odd(t), odd(t)))
	case 13:
		bd.Length, bd.Width = bd.Length+odd(t), bd.Width+odd(t)
	case 14:
		z.Width, z.Offset, z.Butt = z.Width+odd(t), z.Offset+odd(t), odd(t)
	case 15:
		z.Dir = plane.Dir{X: rapid.Float64().Draw(t, "dx"), Y: rapid.Float64().Draw(t, "dy")}
		z.Ahead = rapid.IntRange(-1, 1).Draw(t, "ahead")
	case 16:
		for i := range z.Outline {
			ring(&z.Outline[i])
		}
		b.at[z.ID] = floor.Aligned{Dir: z.Dir}
	case 18:
		b.told = true
		ring(&r.Outline)
	case 19:
		b.told = true
		r.LeftEnd.Reach, r.RightEnd.Need = r.LeftEnd.Reach+odd(t), odd(t)
		r.LeftEnd.Edge = rapid.SampledFrom([]string{"", "wall A-B", "wall D-A", "x"}).Draw(t, "edge")
	case 20:
		b.told = true
		r.LeftEnd.Mitred, r.RightEnd.InPlace, r.RightEnd.Need = !r.LeftEnd.Mitred, !r.RightEnd.InPlace, r.RightEnd.Need+odd(t)
	case 21:
		b.told = true
		by := rapid.SampledFrom([]lay.Fasten{lay.Nailer, lay.HandNail, lay.FaceNail, "odd"}).Draw(t, "by")
		r.Nailing = append(slices.Clone(r.Nailing), lay.Stretch{Along: plane.Span{From: odd(t), To: odd(t)}, By: by})
		r.Nailing[0].By = by
	case 17:
		b.lay.Relaxed = append(b.lay.Relaxed, lay.Relaxation{Rule: jointRule, Run: r.ID, To: odd(t)})
		b.lay.Exempt = append(b.lay.Exempt, lay.Exemption{Rule: shortRule, Run: r.ID}, lay.Exemption{Rule: ripRule, Edge: "wall A-B"})
	}
}

// A piece that moves along its row, by a tick or by more than its gap's play,
// is seen: it lies on its neighbour, or in the gap, or leaves the subfloor bare.
// (A first piece may move to the wall by a tick: that is within the tolerance.)
func TestNoPieceMovesUnseen(t *testing.T) {
	for _, name := range []string{"plain", "ell", "slant"} {
		for _, p := range goodLays[name]().lay.Pieces {
			for _, d := range []tape.Length{in(-1.25), -1, in(1.25)} {
				b := goodLays[name]()
				if d == -1 && boxOf(p.Outline).lo.X == 0 {
					continue
				}
				b.slide(p.ID, d)
				if len(stops(b.held())) == 0 {
					t.Errorf("%s room: piece id %d moved by %v, and nothing was said", name, p.ID, d)
				}
			}
		}
	}
}

// manyRows is a room of the bench's size: 40 runs of 276 in in boards of 5 in
// (an invented room, for measuring only), ripped and tapered at one side.
func manyRows() *bench {
	b := newBench()
	reach := plane.Ring{pt(0, 1), pt(276, 2), pt(276, 200.25), pt(0, 200.25)}
	z := b.zone(lay.Zone{Kind: lay.Field, Width: in(5), Ahead: 1}, around(plane.Dir{X: 1}, reach))
	for i := range 40 {
		r := b.run(z, i+1, 0, float64(5*i))
		x := 24.0 + 12*float64(i%3)
		b.whole(r, x, 0)
		for x+48 < 264 {
			b.whole(r, 36, x)
			x += 36
		}
		b.cut(r, 66, 276-x, x)
	}
	for i := range b.lay.Runs[0].Pieces { // row 1 against the slanted wall
		p := &b.lay.Pieces[b.lay.Runs[0].Pieces[i]]
		y := func(x tape.Length) tape.Length { return in(1) + nearest(frac(x, 276)) }
		lo, hi := p.Outline.Box()
		p.Outline = plane.Ring{plane.P(lo.X, y(lo.X)), plane.P(hi.X, y(hi.X)), hi, plane.P(lo.X, hi.Y)}
		p.InBoard = p.Outline.Move(plane.P(-lo.X, 0))
		p.Behind = lay.Ripped
		bd := &b.lay.Boards[p.Board]
		for j := range bd.Parts {
			if bd.Parts[j].Kind == lay.IsPiece {
				bd.Parts[j].Outline = p.InBoard
			}
		}
		w := hi.X - lo.X
		b.part(p.Board, lay.IsScrap, plane.Ring{{}, plane.P(w, 0), plane.P(w, y(hi.X)), plane.P(0, y(lo.X))})
	}
	return b.count()
}

func TestManyRowsHold(t *testing.T) {
	b := manyRows()
	if n := len(b.lay.Pieces); n < 250 {
		t.Errorf("only %d pieces", n)
	}
	for _, f := range b.held() {
		if f.Level != finding.Note {
			t.Error(f)
		}
	}
}

func BenchmarkBenchRoom(b *testing.B) {
	m := manyRows()
	for b.Loop() {
		m.held()
	}
}
