package plan_test

import (
	"context"
	"math"
	"math/rand/v2"
	"testing"

	"strake/finding"
	"strake/job"
	"strake/lay"
	"strake/plan"
	"strake/plane"
	"strake/room"
	"strake/stock"
	"strake/tape"
)

// ring is a hall all around a core: a room with a large thing that stays in
// its middle.
func (f floors) ring(seed uint64) job.Job {
	j := f.job(seed)
	j.Sketch, j.Readings, j.Boards.Tally = room.Sketch{}, nil, nil
	w, h := f.mm(3500, 7000), f.mm(3200, 6000)
	s := f.outline(w, h, false, f.chance(0.3))
	f.addRoom(&j, "hall", "", s)
	l := func(v float64) tape.Length { return tape.Length(v * 8000) }
	a, b := f.mm(900, 1300), f.mm(900, 1300)
	j.Sketch.Stays = []room.Stay{{Name: "core", Kind: room.Cabinet, Meets: room.MeetsGap, Cover: 5 * tape.Inch / 4, Wall: room.Wall{"A", "B"}, From: "A",
		At: l(a), Off: l(b), Width: l(w * 0.4), Depth: l(h * 0.35)}}
	f.stock(&j, s)
	return j
}

// closetBehind is a room with a closet behind its start wall, and perhaps a
// second one behind that, ahead of it or beside it.
func (f floors) closetBehind(seed uint64) job.Job {
	j := f.job(seed)
	j.Sketch, j.Readings, j.Boards.Tally = room.Sketch{}, nil, nil
	w, h := f.mm(2800, 6000), f.mm(2200, 4500)
	d, a, b := f.mm(600, 1200), f.mm(200, 900), f.mm(1300, 2400)
	s := shape{at: []plane.XY{{X: 0, Y: 0}, {X: a, Y: 0}, {X: a, Y: -d}, {X: b, Y: -d}, {X: b, Y: 0}, {X: w, Y: 0}, {X: w, Y: h}, {X: 0, Y: h}}, into: []int{1, 4}}
	if f.chance(0.5) { // the closet turns a corner, ahead again behind the wall
		e := b + f.mm(500, 1500)
		s = shape{at: []plane.XY{{X: 0, Y: 0}, {X: a, Y: 0}, {X: a, Y: -2 * d}, {X: e, Y: -2 * d}, {X: e, Y: -250}, {X: b + 200, Y: -250}, {X: b + 200, Y: -d}, {X: b, Y: -d}, {X: b, Y: 0}, {X: e + w/2, Y: 0}, {X: e + w/2, Y: h}, {X: 0, Y: h}}, into: []int{1, 6, 7, 8}}
		s.into = s.into[:0]
		n := len(s.at)
		for i := range s.at {
			u, v := s.at[(i+1)%n].Sub(s.at[i]), s.at[i].Sub(s.at[(i+n-1)%n])
			if v.Cross(u) < 0 {
				s.into = append(s.into, i)
			}
		}
	}
	for i := range s.at {
		s.at[i].X += f.NormFloat64() * 3
		s.at[i].Y += f.NormFloat64() * 3
	}
	f.addRoom(&j, "main", "", s)
	if n := len(s.at); f.chance(0.4) {
		j.Sketch.Stays = []room.Stay{{Name: "hearth", Kind: room.Hearth, Meets: room.MeetsFlush, Wall: room.Wall{j.Sketch.Rooms[0].Corners[n-2], j.Sketch.Rooms[0].Corners[n-1]},
			From: j.Sketch.Rooms[0].Corners[n-1], At: tape.Length(w * 0.3 * 8000), Width: tape.Length(w * 0.3 * 8000), Depth: tape.Length(h * 0.2 * 8000)}}
	}
	f.stock(&j, s)
	return j
}

// TestInterlock: with splines allowed at least 95 in 100 floors with islands,
// closets behind the start line or a hall all around a core get a plan in
// which tongue meets groove everywhere and nothing is buried before it can be
// slid, dropped or angled in; the rest say why. Both are proved by rules of the
// checker, which shares no code with the rows.
func TestInterlock(t *testing.T) {
	t.Parallel()
	n := floorCount(30)
	good, splines, backwards := 0, 0, 0
	for seed := range uint64(n) {
		f := floors{rand.New(rand.NewPCG(seed, 1234))}
		var j job.Job
		switch seed % 3 {
		case 0:
			j = f.ring(seed)
		case 1:
			j = f.closetBehind(seed)
		default:
			j = f.job(seed)
		}
		j.Wishes.Backwards = []string{"short", "all", "none"}[f.IntN(3)]
		j.Wishes.Middle = f.chance(0.3)
		p := plan.MakeWithin(context.Background(), j, light/5)
		stops := 0
		for _, x := range p.Findings {
			if x.Level != finding.Stop {
				continue
			}
			stops++
			t.Logf("floor %d: %s", seed, x)
			if x.Rule == "tongue and groove" || x.Rule == "order of laying" || x.Rule == "zones" || x.Do == "" {
				t.Errorf("floor %d: %s", seed, x)
			}
		}
		if stops > 0 {
			continue
		}
		good++
		if len(p.Layout.Splines) > 0 {
			splines++
		}
		if got, want := slipOf(p.Lay), splineOf(p); (got - want).Abs() > tape.Length(len(p.Lay.Pieces))*tape.Inch/4 {
			t.Errorf("floor %d: %v of spline glued in, the rows ask for %v", seed, got, want)
		}
		for _, z := range p.Lay.Zones {
			if z.Ahead < 0 {
				backwards++
			}
		}
		if j.Wishes.Backwards == "none" && !j.Wishes.Middle && len(p.Layout.Splines) > 0 {
			t.Errorf("floor %d has splines though none were wanted", seed)
		}
	}
	t.Logf("%d of %d floors planned, %d with splines", good, n, splines)
	if good*100 < n*95 {
		t.Errorf("only %d of %d", good, n)
	}
	if splines < n/6 || backwards != splines {
		t.Errorf("%d floors with splines, %d laid backwards in part", splines, backwards)
	}
}

func slipOf(l lay.Lay) tape.Length {
	var sum tape.Length
	for _, p := range l.Pieces {
		for _, s := range p.Slip {
			sum += s.Len()
		}
	}
	return sum
}

func splineOf(p plan.Plan) tape.Length {
	var sum tape.Length
	for _, s := range p.Layout.Splines {
		sum += s.Along.Len()
	}
	return sum
}

// A floor started in the middle: rows go both ways, half on either side, and
// one spline runs the length of the start line.
func TestStartInTheMiddle(t *testing.T) {
	j := roomJob(180, 250, 4.25, 0.75, 0.5, 0.75)
	j.Wishes.Middle = true
	p := made(t, j)
	if len(p.Layout.Splines) != 1 || math.Abs(p.Layout.Splines[0].Along.Len().Inches()-248.5) > 1 {
		t.Fatalf("splines %v", p.Layout.Splines)
	}
	ahead, back := 0, 0
	for _, r := range p.Lay.Runs {
		if p.Lay.Zones[r.Zone].Ahead > 0 {
			ahead++
		} else {
			back++
		}
		for _, id := range r.Pieces {
			q := p.Lay.Pieces[id]
			if (p.Lay.Zones[r.Zone].Ahead < 0) != q.Turned {
				t.Errorf("row %d: a piece turned the wrong way", r.Row)
			}
		}
	}
	if d := ahead - back; d < -2 || d > 2 {
		t.Errorf("%d rows ahead, %d backwards", ahead, back)
	}
	if first := p.Lay.Runs[0]; first.Order != 1 || first.Low != p.Layout.Splines[0].Y {
		t.Errorf("the first row lies at %v, the spline at %v", first.Low, p.Layout.Splines[0].Y)
	}
}

// TestFieldsAtDoorways: rows that turn in a doorway, or begin anew beyond a
// header, still mate everywhere, and the fields make the floor.
func TestFieldsAtDoorways(t *testing.T) {
	t.Parallel()
	n := floorCount(18)
	good, parted := 0, 0
	for seed := range uint64(n) {
		f := floors{rand.New(rand.NewPCG(seed, 4321))}
		var j job.Job
		for k := uint64(0); len(j.Sketch.Rooms) < 2; k++ {
			j = f.job(seed + 1000*k)
		}
		j.Sketch.Doorways[0].Rows = []room.RowsAt{room.RowsTurn, room.RowsHeader}[seed%2]
		j.Boards.Tally = append(j.Boards.Tally, stock.Class{Length: 40 * tape.Inch, Count: 12})
		p := plan.MakeWithin(context.Background(), j, light/5)
		stops := 0
		for _, x := range p.Findings {
			if x.Level == finding.Stop {
				stops++
				t.Logf("floor %d (%s): %s", seed, j.Sketch.Doorways[0].Rows, x)
			}
		}
		if len(p.Fields) > 1 {
			parted++
		}
		if stops == 0 {
			good++
		}
	}
	t.Logf("%d of %d planned, %d in several fields", good, n, parted)
	if good*100 < n*90 || parted < n/2 {
		t.Errorf("only %d of %d planned, %d in several fields", good, n, parted)
	}
}

// TestFrames: boards round a hearth or a tile, mitred or butted, rows along,
// across or slanting past them: everything mates, and the frame lies first.
func TestFrames(t *testing.T) {
	t.Parallel()
	n := floorCount(12)
	good := 0
	for seed := range uint64(n) {
		f := floors{rand.New(rand.NewPCG(seed, 555))}
		j := roomJob(float64(170+f.IntN(60)), float64(130+f.IntN(50)), []float64{2.25, 3.25, 4, 5}[f.IntN(4)], 0.75, 0.5, 0.75)
		for i := range j.Readings {
			j.Readings[i].Value += tape.Length(f.IntN(9)-4) * tape.Sixteenth / 2
		}
		s := room.Stay{Name: "hearth", Kind: room.Hearth, Meets: room.MeetsFlush, Wall: [][2]string{{"A", "B"}, {"D", "A"}}[f.IntN(2)], Width: in(float64(40 + f.IntN(30))), Depth: in(float64(14 + f.IntN(14)))}
		s.From, s.At = s.Wall[0], in(float64(20+f.IntN(30)))
		if f.chance(0.4) {
			s.Name, s.Kind, s.Off = "tile", room.Tile, in(float64(30+f.IntN(20)))
		}
		s.Frame = []room.FrameKind{room.Mitred, room.Butted}[f.IntN(2)]
		j.Sketch.Stays = []room.Stay{s}
		if f.chance(0.4) {
			j.Wishes.Angle = []float64{45, 44.8, -30, 12}[f.IntN(4)]
		}
		p := plan.MakeWithin(context.Background(), j, light/5)
		ok := true
		for _, x := range p.Findings {
			if x.Level == finding.Stop {
				ok = false
				t.Logf("floor %d (%s %s at %g degrees): %s", seed, s.Frame, s.Name, j.Wishes.Angle, x)
			}
		}
		if ok {
			good++
		}
		for _, r := range p.Lay.Runs {
			if p.Lay.Zones[r.Zone].Kind == lay.Frame && r.Order > 4 {
				t.Errorf("floor %d: a frame board is laid at place %d", seed, r.Order)
			}
		}
	}
	t.Logf("%d of %d planned", good, n)
	if good*100 < n*90 {
		t.Errorf("only %d of %d planned", good, n)
	}
}
