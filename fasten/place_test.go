package fasten

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// drawLay makes rows one above the other, each of one to three pieces, the last
// ripped at its free side, some boards with a tongue taken off in part, laid
// either way, and fastened in any way at all.
func drawLay(t *rapid.T) lay.Lay {
	ahead := rapid.SampledFrom([]int{1, -1}).Draw(t, "ahead")
	a := rapid.Float64Range(0, 6).Draw(t, "direction")
	l := lay.Lay{Zones: []lay.Zone{{ID: 3, Width: 5 * in, Ahead: ahead, Dir: plane.Dir{X: math.Cos(a), Y: math.Sin(a)}}}}
	rows := rapid.IntRange(1, 5).Draw(t, "rows")
	for i := range rows {
		row := i // from the start: rows laid the other way go down
		low := tape.Length(row) * 5 * in
		if ahead < 0 {
			low = -low - 5*in
		}
		r := lay.Run{ID: 10 + i, Zone: 3, Row: i + 1, Low: low, High: low + 5*in}
		x := tape.Length(rapid.IntRange(0, 30).Draw(t, "from")) * in
		left := x
		for range rapid.IntRange(1, 3).Draw(t, "pieces") {
			to := x + tape.Length(rapid.IntRange(1, 90*16).Draw(t, "length"))*tape.Sixteenth
			p := lay.Piece{ID: len(l.Pieces), Run: r.ID, Behind: lay.Groove, Ahead: lay.Tongue}
			lo, hi := r.Low, r.High
			if i == rows-1 {
				p.Ahead, hi = lay.Ripped, hi-2*in
				if ahead < 0 {
					lo, hi = r.Low+2*in, r.High
				}
			}
			p.Outline = plane.Rect(plane.P(x, lo), plane.P(to, hi))
			if rapid.IntRange(0, 3).Draw(t, "off") == 0 {
				p.Off = []plane.Span{{From: x, To: x + (to-x)/3}}
			}
			if ahead < 0 {
				p.Behind, p.Ahead = p.Ahead, p.Behind
			}
			r.Pieces = append(r.Pieces, p.ID)
			l.Pieces = append(l.Pieces, p)
			x = to
		}
		r.Outline = plane.Rect(plane.P(left, r.Low), plane.P(x, r.High))
		turn := left + tape.Length(rapid.IntRange(0, 100).Draw(t, "turn"))*(x-left)/100
		ways := []lay.Fasten{lay.Nailer, lay.HandNail, lay.FaceNail}
		r.Nailing = []lay.Stretch{
			{Along: plane.Span{From: left, To: turn}, By: rapid.SampledFrom(ways).Draw(t, "by")},
			{Along: plane.Span{From: turn, To: x}, By: rapid.SampledFrom(ways).Draw(t, "by")}}
		l.Runs = append(l.Runs, r)
	}
	return l
}

// bruteAlong finds by trial the fewest places, two at least, whose distance is no
// more than the spacing when they stand evenly between both ends.
func bruteAlong(u Use, length tape.Length) []float64 {
	end := math.Min(float64(u.End), float64(length)/4)
	for n := 2; ; n++ {
		step := (float64(length) - 2*end) / float64(n-1)
		if step > float64(u.Spacing) {
			continue
		}
		var out []float64
		for i := range n {
			out = append(out, end+float64(i)*step)
		}
		return out
	}
}

// bruteTotal counts a lay by trial, board by board, from nothing but rectangles.
func bruteTotal(l lay.Lay, u Use) Total {
	var t Total
	up := l.Zones[0].Ahead > 0
	for i, r := range l.Runs {
		beside := func(k int, x float64) bool {
			if k < 0 || k >= len(l.Runs) {
				return false
			}
			lo, hi := l.Runs[k].Outline.Box()
			return float64(lo.X) <= x && x <= float64(hi.X)
		}
		for _, id := range r.Pieces {
			p := l.Pieces[id]
			t.Pieces++
			lo, hi := p.Outline.Box()
			for _, at := range bruteAlong(u, hi.X-lo.X) {
				x := math.Floor(float64(lo.X) + at + 1e-6)
				face := r.Nailing[1].By
				if x <= float64(r.Nailing[0].Along.To) {
					face = r.Nailing[0].By
				}
				tongue := p.Ahead == lay.Tongue
				if !up {
					tongue = p.Behind == lay.Tongue
				}
				for _, o := range p.Off {
					tongue = tongue && (x < float64(o.From) || x > float64(o.To))
				}
				switch {
				case tongue && face == lay.Nailer:
					t.Nailer++
				case tongue && (face == lay.HandNail || beside(i+1, x)):
					t.Hand++
				default:
					t.Face++
				}
				if face == lay.FaceNail && !beside(i-1, x) {
					t.Face++
				}
			}
		}
	}
	return t
}

func TestPlacesAreBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := drawLay(t)
		u := Use{Kind: Cleat, Length: 2 * in, Spacing: tape.Length(rapid.IntRange(3, 10).Draw(t, "spacing")) * in,
			End: tape.Length(rapid.IntRange(1, 3).Draw(t, "end")) * in, PerBoard: 2, Slant: 45, Entry: Entry(3 * in / 4), Edge: in / 2}
		ps := Places(l, u)
		got, want := Sum(ps), bruteTotal(l, u)
		want.Pilots = got.Pilots // looked at below
		if got != want {
			t.Fatalf("%+v, by brute force %+v", got, want)
		}
		each := map[int][]Place{}
		for _, p := range ps {
			each[p.Piece] = append(each[p.Piece], p)
		}
		for _, pc := range l.Pieces {
			lo, hi := pc.Outline.Box()
			if len(each[pc.ID]) < 2 {
				t.Fatalf("%d fasteners in a board of %v", len(each[pc.ID]), hi.X-lo.X)
			}
			for _, p := range each[pc.ID] {
				near := p.At.X-lo.X < in || hi.X-p.At.X < in
				if near && !p.Pilot {
					t.Fatalf("no pilot %v from the end of a board", min(p.At.X-lo.X, hi.X-p.At.X))
				}
				if p.Pilot && p.By != lay.FaceNail && !near {
					t.Fatal("a pilot where none is needed")
				}
				if p.At.X <= lo.X || p.At.X >= hi.X || p.At.Y < lo.Y || p.At.Y > hi.Y {
					t.Fatal("a fastener beside its board")
				}
				if p.By == lay.FaceNail && (p.At != p.Tip || p.At.Y-lo.Y != in/2 && hi.Y-p.At.Y != in/2) {
					t.Fatalf("through the face at %v of a board from %v to %v", p.At, lo, hi)
				}
				if p.By != lay.FaceNail && (p.Tip.Y < lo.Y || p.Tip.Y > hi.Y) {
					t.Fatal("a slanting one does not go back under its own board")
				}
			}
		}
	})
}

// What comes into a part to be kept free is found by looking at 400 places along
// each fastener; those within 1/50 in of the margin may fall either way.
func TestFreeIsBruteForce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := drawLay(t)
		u := Use{Kind: Cleat, Length: 2 * in, Spacing: 8 * in, End: 2 * in, PerBoard: 2, Slant: 45, Entry: Entry(3 * in / 4), Edge: in / 2}
		mid := l.Zones[0].Dir.FromRow(plane.P(tape.Length(rapid.IntRange(0, 120).Draw(t, "x"))*in, tape.Length(rapid.IntRange(-12, 12).Draw(t, "y"))*in))
		turn := rapid.Float64Range(0, 3).Draw(t, "turn")
		long, wide := rapid.Float64Range(1, 1500).Draw(t, "long"), rapid.Float64Range(1, 200).Draw(t, "wide")
		f := Free{Name: "pipe", Margin: tape.Length(rapid.IntRange(0, 2).Draw(t, "margin")) * in}
		ex, ey := plane.XY{X: math.Cos(turn), Y: math.Sin(turn)}, plane.XY{X: -math.Sin(turn), Y: math.Cos(turn)}
		for _, c := range [][2]float64{{-1, -1}, {1, -1}, {1, 1}, {-1, 1}} {
			f.Outline = append(f.Outline, mid.Add(ex.Times(c[0]*long)).Add(ey.Times(c[1]*wide)))
		}
		ps := Places(l, u)
		hit := map[Place]bool{}
		for _, p := range f.Meets(l, ps, u, 0) {
			hit[p] = true
		}
		for _, p := range ps {
			a, b := l.Zones[0].Dir.FromRow(p.At), l.Zones[0].Dir.FromRow(p.Tip)
			least := math.Inf(1)
			for k := range 401 {
				q := a.Add(b.Sub(a).Times(float64(k) / 400)).Sub(mid)
				dx, dy := math.Max(0, math.Abs(q.Dot(ex))-long), math.Max(0, math.Abs(q.Dot(ey))-wide)
				least = math.Min(least, math.Hypot(dx, dy))
			}
			m := f.Margin.Millimetres()
			if math.Abs(least-m) > 0.5 && hit[p] != (least < m) {
				t.Fatalf("%v away with a margin of %v: %v", least, m, hit[p])
			}
		}
	})
}

// What lies deeper than any tip by its margin is not reached; what is nailed
// through the face goes deeper, and its depth is not known here.
func TestFreeBelow(t *testing.T) {
	l := lay.Lay{Zones: []lay.Zone{{Ahead: 1, Dir: plane.Dir{X: 1}}}}
	l.Pieces = []lay.Piece{{Outline: plane.Rect(plane.P(0, 0), plane.P(40*in, 5*in)), Ahead: lay.Tongue}}
	l.Runs = []lay.Run{{High: 5 * in, Outline: l.Pieces[0].Outline, Pieces: []int{0}, Nailing: []lay.Stretch{{Along: plane.Span{To: 40 * in}, By: lay.Nailer}}}}
	u := Use{Length: 2 * in, Spacing: 8 * in, End: 2 * in, PerBoard: 2, Slant: 45, Entry: Entry(3 * in / 4), Edge: in / 2}
	ps := Places(l, u)
	f := Free{Outline: []plane.XY{{X: 0, Y: 0}, {X: 1016, Y: 0}, {X: 1016, Y: 127}, {X: 0, Y: 127}}, Margin: in / 2, Known: true, Depth: 7 * in / 4}
	if n := len(f.Meets(l, ps, u, 0)); n != 0 || len(ps) != 6 {
		t.Errorf("%d of %d reach what lies 1-3/4 in down", n, len(ps))
	}
	f.Depth = 5 * in / 4
	if n := len(f.Meets(l, ps, u, 0)); n != 6 {
		t.Errorf("%d come within 1/2 in of what lies 1-1/4 in down", n)
	}
}

// A notch in the tongue edge takes no fastener through the tongue.
func TestNotch(t *testing.T) {
	p := lay.Piece{Outline: plane.Ring{plane.P(0, 0), plane.P(40*in, 0), plane.P(40*in, 5*in), plane.P(30*in, 5*in), plane.P(30*in, 3*in), plane.P(10*in, 3*in), plane.P(10*in, 5*in), plane.P(0, 5*in)}, Behind: lay.Groove, Ahead: lay.Tongue}
	l := lay.Lay{Zones: []lay.Zone{{Ahead: 1, Dir: plane.Dir{X: 1}}}, Pieces: []lay.Piece{p}}
	l.Runs = []lay.Run{{High: 5 * in, Outline: p.Outline, Pieces: []int{0}, Nailing: []lay.Stretch{{Along: plane.Span{To: 40 * in}, By: lay.Nailer}}}}
	for _, at := range Places(l, Use{Length: 2 * in, Spacing: 8 * in, End: 2 * in, PerBoard: 2, Slant: 45, Edge: in / 2}) {
		notch := at.At.X > 10*in && at.At.X < 30*in
		if notch != (at.By == lay.FaceNail) || notch && at.At.Y != 5*in/2 {
			t.Errorf("%+v", at)
		}
	}
}

// An inch round a rectangle, and an inch off each side of a triangle.
func TestGrown(t *testing.T) {
	f := Free{Margin: in, Outline: []plane.XY{{X: 0, Y: 0}, {X: 100, Y: 0}, {X: 100, Y: 50}, {X: 0, Y: 50}}}
	for i, want := range []plane.XY{{X: -25.4, Y: -25.4}, {X: 125.4, Y: -25.4}, {X: 125.4, Y: 75.4}, {X: -25.4, Y: 75.4}} {
		if got := f.Grown()[i]; got.Sub(want).Len() > 1e-9 {
			t.Errorf("%v, want %v", got, want)
		}
	}
	f.Outline = []plane.XY{{X: 0, Y: 0}, {X: 300, Y: 0}, {X: 40, Y: 200}}
	g := f.Grown()
	for i, a := range f.Outline {
		b := f.Outline[(i+1)%3]
		if d := -b.Sub(a).Unit().Cross(g[i].Sub(a)); math.Abs(d-25.4) > 1e-9 {
			t.Errorf("side %d: %.3f mm off", i, d)
		}
	}
}
