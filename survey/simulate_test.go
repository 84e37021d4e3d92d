package survey

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/stat/distuv"

	"strake/plane"
	"strake/room"
	"strake/tape"
)

// simulated is a room drawn from the stated prior and a tape of stated error.
type simulated struct {
	*rand.Rand
	m     Model
	scale float64 // of this tape, mm per m
	s     room.Sketch
	at    map[string]plane.XY
}

// newSimulated draws a room of these turns: walls of 1.5 to 6 m, corners off
// square by the stated deviation.
func newSimulated(seed uint64, s room.Sketch) simulated {
	f := simulated{Rand: rand.New(rand.NewPCG(seed, 4)), m: Tape(), s: s, at: map[string]plane.XY{}}
	f.scale = f.NormFloat64() * f.m.ScalePerM
	for !f.draw() {
	}
	return f
}

// draw makes all walls but two at random and the last two close the ring; false
// when one comes out too short.
func (f simulated) draw() bool {
	r := f.s.Rooms[0]
	n := len(r.Corners)
	off := make([]float64, n)
	mean := 0.0
	for i := range off {
		off[i] = f.NormFloat64() * f.m.SquareDeg
		mean += off[i] / float64(n)
	}
	heading, p := 0.0, plane.XY{}
	var dirs []plane.XY
	for i, c := range r.Corners {
		if i > 0 {
			turn, _ := r.Turn(c)
			heading += 180 - (turn + off[i] - mean) // the errors of a ring sum to nothing
		}
		t := heading * math.Pi / 180
		dirs = append(dirs, plane.XY{X: math.Cos(t), Y: math.Sin(t)})
	}
	for i, c := range r.Corners[:n-1] {
		f.at[c] = p
		p = p.Add(dirs[i].Times(1500 + 4500*f.Float64()))
	}
	// The last corner but one moves along its wall, and the last lies where the
	// last two walls cross.
	last, before := r.Corners[n-1], r.Corners[n-2]
	a := f.at[before]
	u, v := dirs[n-2], dirs[n-1]
	d := plane.XY{}.Sub(a)
	k := d.Cross(v) / u.Cross(v)
	f.at[last] = a.Add(u.Times(k))
	back := -f.at[last].Dot(v)
	return k > 900 && back > 900 && simple(r.Corners, f.at)
}

// simple tells whether no two walls cross and every corner turns as sketched.
func simple(ring []string, at map[string]plane.XY) bool {
	n := len(ring)
	for i := range ring {
		for j := range i {
			if crosses(at[ring[i]], at[ring[(i+1)%n]], at[ring[j]], at[ring[(j+1)%n]]) {
				return false
			}
		}
	}
	return true
}

// read is what this tape says of a span of this many mm: scale, hook and
// reading error, rounded to 1/16 in.
func (f simulated) read(r Reading, mm float64) Reading {
	sd := math.Hypot(f.m.ReadingMM, f.m.HookMM)
	r.Step = tape.Sixteenth
	r.Value = tape.Nearest(ticks(mm*(1+f.scale/1000)+sd*f.NormFloat64()), tape.Sixteenth)
	return r
}

func (f simulated) between(pairs ...string) []Reading {
	var out []Reading
	for _, p := range pairs {
		a, b := p[:1], p[1:]
		out = append(out, f.read(Reading{From: a, To: b}, f.at[a].Sub(f.at[b]).Len()))
	}
	return out
}

var (
	fourWalls = room.Sketch{Rooms: []room.Room{{Name: "room", Corners: []string{"A", "B", "C", "D"}}}}
	lShape    = room.Sketch{Rooms: []room.Room{{Name: "L", Corners: []string{"A", "B", "C", "D", "E", "F"}, Into: []string{"D"}}}}
)

// distance2 is how far the fitted corners are from the true ones, squared, in
// the doubt that the fit states (Mahalanobis), with A fixed and B on the axis.
func (f simulated) distance2(r Result) (float64, int) {
	var idx []int
	for _, i := range r.free {
		if i != r.net.scale() {
			idx = append(idx, i)
		}
	}
	cov := mat.NewSymDense(len(idx), nil)
	for a, i := range idx {
		for b, j := range idx[:a+1] {
			cov.SetSym(a, b, r.covariance.At(i, j))
		}
	}
	u := f.at["B"].Sub(f.at["A"]).Unit()
	d := mat.NewVecDense(len(idx), nil)
	for name, i := range r.net.index {
		p := f.at[name].Sub(f.at["A"])
		for k, v := range []float64{u.Dot(p), u.Cross(p)} {
			if at := slices.Index(idx, i+k); at >= 0 {
				d.SetVec(at, r.x[i+k]-v)
			}
		}
	}
	var c mat.Cholesky
	if !c.Factorize(cov) {
		return math.Inf(1), len(idx)
	}
	var w mat.VecDense
	if c.SolveVecTo(&w, d) != nil {
		return math.Inf(1), len(idx)
	}
	return mat.Dot(d, &w), len(idx)
}

// The true corners lie in the stated 95 % region in 93 to 97 of 100 rooms: rooms
// drawn from the stated prior, from few readings (squares carry the rest) to
// many. Own bounds, own simulation.
func TestCoverage(t *testing.T) {
	sets := []struct {
		name  string
		s     room.Sketch
		pairs []string
	}{
		{"length and width", fourWalls, []string{"AB", "BC"}},
		{"four walls and a diagonal", fourWalls, []string{"AB", "BC", "CD", "DA", "AC"}},
		{"four walls, both diagonals", fourWalls, []string{"AB", "BC", "CD", "DA", "AC", "BD"}},
		{"L, six walls", lShape, []string{"AB", "BC", "CD", "DE", "EF", "FA"}},
		{"L, eleven readings", lShape, []string{"AB", "BC", "CD", "DE", "EF", "FA", "AC", "AD", "BD", "DF", "AE"}},
	}
	for k, set := range sets {
		const rooms = 2000
		in := 0
		for seed := range uint64(rooms) {
			f := newSimulated(seed+uint64(k)*rooms, set.s)
			r := Adjust(set.s, f.between(set.pairs...), f.m)
			d2, n := f.distance2(r)
			if d2 <= (distuv.ChiSquared{K: float64(n)}).Quantile(0.95) {
				in++
			}
		}
		share := 100 * float64(in) / rooms
		t.Logf("%s: %.2f %% inside", set.name, share)
		if share < 93 || share > 97 {
			t.Errorf("%s: %.2f %% inside the 95 %% region, want 93 to 97", set.name, share)
		}
	}
}

// score counts what became of planted blunders.
type score struct{ planted, shown, listed, first, apart, firstApart int }

func (s *score) add(rep Report, reading int, m Model) {
	k := slices.IndexFunc(rep.Verdicts, func(v Verdict) bool { return v.Reading == reading })
	s.planted++
	alone := true
	for _, set := range rep.Alike {
		alone = alone && !slices.Contains(set, k)
	}
	if alone {
		s.apart++
	}
	top := 0.0 // the list goes by the statistic alone, whether or not it alarms
	for _, v := range rep.Verdicts {
		top = max(top, v.Test*v.Test)
	}
	if v := rep.Verdicts[k]; v.Test*v.Test >= top-withinTop {
		s.listed++
	}
	if !rep.Wrong {
		return
	}
	s.shown++
	if rep.Suspects[0] == k {
		s.first++
		if alone {
			s.firstApart++
		}
	}
}

func (s score) percent(part, of int) float64 { return 100 * float64(part) / float64(max(1, of)) }

// plant puts 1/2 in into one checked reading, either way, and reports.
func (f simulated) plant(s *score, sk room.Sketch, rs []Reading) {
	clean := Adjust(sk, rs, f.m).Report(rs)
	var checked []int
	for _, v := range clean.Verdicts {
		if v.Checked {
			checked = append(checked, v.Reading)
		}
	}
	if len(checked) == 0 || clean.Spare < 3 {
		return
	}
	i := checked[f.IntN(len(checked))]
	by := tape.Inch / 2
	if f.IntN(2) == 0 {
		by = -by
	}
	bad := slices.Clone(rs)
	bad[i].Value += by
	s.add(Adjust(sk, bad, f.m).Report(bad), i, f.m)
}

// A blunder of 1/2 in in a checked reading of an L-shaped room with 12 to 14
// readings (redundancy 3 to 5): shown, listed, named first. Own bounds,
// own simulation.
func TestPlantedBlunder(t *testing.T) {
	var s score
	for seed := range uint64(1500) {
		f := newSimulated(seed+50_000, lShape)
		pairs := []string{"AB", "BC", "CD", "DE", "EF", "FA", "AC", "AD", "BD", "DF", "AE"}
		more := []string{"BF", "BE", "CF", "CE"}
		f.Shuffle(len(more), func(i, j int) { more[i], more[j] = more[j], more[i] })
		f.plant(&s, lShape, f.between(append(pairs, more[:1+f.IntN(3)]...)...))
	}
	s.hold(t, 95, 99, 0, 95)
}

// The same with the readings that Suggest asks for, taken in rooms whose rough
// shape was known to 5 in 100.
func TestPlantedBlunderSuggested(t *testing.T) {
	var s score
	for seed := range uint64(400) {
		sk := lShape
		if seed%3 == 0 {
			sk = fourWalls
		}
		f := newSimulated(seed+90_000, sk)
		s2, rs := f.suggested(sk)
		f.plant(&s, s2, rs)
	}
	s.hold(t, 95, 99, 90, 0)
}

// suggested reads what Suggest asks for.
func (f simulated) suggested(sk room.Sketch) (room.Sketch, []Reading) {
	ring := sk.Rooms[0].Corners
	var rough []Reading
	for i, c := range ring {
		d := ring[(i+1)%len(ring)]
		rough = append(rough, Reading{From: c, To: d, Value: ticks(f.at[c].Sub(f.at[d]).Len() * (0.95 + 0.1*f.Float64()))})
	}
	sheet := Suggest(sk, Want{Rough: rough, Step: tape.Sixteenth}, f.m)
	var rs []Reading
	sk.Points = nil
	at := func(name string) plane.XY { return f.at[name] }
	for _, it := range sheet.Items {
		for _, p := range it.Ask.Marks {
			if !slices.Contains(sk.Points, p) {
				sk.Points = append(sk.Points, p)
			}
			u := at(other(p.Wall, p.From)).Sub(at(p.From)).Unit()
			off := u.Left().Times(f.NormFloat64() * f.m.WallMM) // walls are straight to so much
			f.at[p.Name] = at(p.From).Add(u.Times(p.At.Millimetres())).Add(off)
		}
		a := it.Ask.Reading
		rs = append(rs, f.read(a, at(a.From).Sub(at(a.To)).Len()))
	}
	return sk, rs
}

func (s score) hold(t *testing.T, shown, listed, first, firstApart float64) {
	t.Helper()
	a, b, c, d := s.percent(s.shown, s.planted), s.percent(s.listed, s.planted), s.percent(s.first, s.planted), s.percent(s.firstApart, s.apart)
	t.Logf("%d planted: %.1f %% shown, %.1f %% listed, %.1f %% first; %d stood apart, %.1f %% of them first", s.planted, a, b, c, s.apart, d)
	if s.planted < 200 {
		t.Errorf("only %d blunders planted", s.planted)
	}
	if a < shown || b < listed || c < first || d < firstApart {
		t.Errorf("want %.0f, %.0f, %.0f, %.0f", shown, listed, first, firstApart)
	}
}
