package survey

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"

	"strake/plane"
	"strake/room"
)

// start is a first guess of the unknowns: each room from its ring alone, its
// turns as sketched and its walls as read, then set against its neighbour
// through a doorway; what stays is set out from its readings.
// apart lists rooms that no doorway joins to the first.
func (n *net) start(rs []Reading) (x []float64, apart []string) {
	x = make([]float64, n.count)
	local := make([][]plane.XY, len(n.sketch.Rooms))
	for i, r := range n.sketch.Rooms {
		local[i] = ringStart(r, rs)
	}
	placed := make([]bool, len(local))
	right := 0.0
	for i, r := range n.sketch.Rooms {
		if placed[i] {
			continue
		}
		if i > 0 {
			apart = append(apart, r.Name)
			for k := range local[i] {
				local[i][k].X += right + 2000
			}
		}
		n.set(x, r, local[i])
		placed[i] = true
		n.spread(x, local, placed)
		for _, c := range r.Corners {
			right = math.Max(right, n.at(c, x).X)
		}
	}
	for _, st := range n.sketch.Stays {
		n.startStay(st, rs, x)
	}
	n.first = slices.Clone(x)
	return x, apart
}

func (n *net) set(x []float64, r room.Room, at []plane.XY) {
	for k, c := range r.Ring() {
		i := n.index[c]
		x[i], x[i+1] = at[k].X, at[k].Y
	}
}

// spread places every room that a doorway joins to a placed one.
func (n *net) spread(x []float64, local [][]plane.XY, placed []bool) {
	for again := true; again; {
		again = false
		for _, d := range n.sketch.Doorways {
			if d.Beyond != room.BeyondRoom {
				continue
			}
			i, here, ok := n.sketch.FindWall(d.Wall)
			j, there, ok2 := n.sketch.FindWall(d.OtherWall)
			if !ok || !ok2 || placed[i] == placed[j] {
				continue
			}
			s := side{here, d.From, d.At.Millimetres()}
			t := side{there, d.OtherFrom, d.OtherAt.Millimetres()}
			if placed[j] {
				i, j, s, t = j, i, t, s
			}
			n.dock(x, n.sketch.Rooms[j], local[j], s, t, d.Width.Millimetres(), d.Thickness.Millimetres())
			placed[j], again = true, true
		}
	}
}

// side is a doorway as seen from one of its rooms.
type side struct {
	wall room.Wall
	from string
	at   float64
}

// dock sets room r so that its side t of a doorway lies against side s.
func (n *net) dock(x []float64, r room.Room, local []plane.XY, s, t side, width, thickness float64) {
	n.set(x, r, local)
	at := func(sd side) (start plane.XY, u plane.XY) {
		a, b := n.at(sd.wall[0], x), n.at(sd.wall[1], x)
		u = unit(b.Sub(a))
		d := sd.at
		if sd.from != sd.wall[0] {
			d = b.Sub(a).Len() - sd.at - width
		}
		return a.Add(u.Times(d)), u
	}
	s0, u := at(s)
	t0, v := at(t)
	goal := s0.Add(u.Times(width)).Sub(u.Left().Times(thickness)) // where t's start belongs
	cos, sin := -u.Dot(v), -v.Cross(u)
	for k, p := range local {
		q := p.Sub(t0)
		local[k] = goal.Add(plane.XY{X: cos*q.X - sin*q.Y, Y: sin*q.X + cos*q.Y})
	}
	n.set(x, r, local)
}

// ringStart walks round a room: the turns give each wall's direction; the
// lengths are the readings, and the unread ones what closes the ring best.
func ringStart(r room.Room, rs []Reading) []plane.XY {
	ring := r.Ring()
	if len(ring) == 0 {
		return nil
	}
	dirs := directions(r, ring)
	lengths := wallLengths(ring, dirs, rs)
	out := make([]plane.XY, len(ring))
	for i := 1; i < len(ring); i++ {
		out[i] = out[i-1].Add(dirs[i-1].Times(lengths[i-1]))
	}
	return out
}

// directions spreads what the turns fail to add up to (n-2 half turns) evenly.
func directions(r room.Room, ring []string) []plane.XY {
	sum := 0.0
	for _, c := range ring {
		d, _ := r.Turn(c)
		sum += d
	}
	miss := (float64(len(ring)-2)*180 - sum) / float64(len(ring))
	out := make([]plane.XY, len(ring))
	heading := 0.0
	for i := range ring {
		if i > 0 {
			d, _ := r.Turn(ring[i])
			heading += 180 - d - miss
		}
		t := heading * math.Pi / 180
		out[i] = plane.XY{X: math.Cos(t), Y: math.Sin(t)}
	}
	return out
}

// wallLengths solves for the walls of a ring (mm): readings between any two of
// its corners whose span is nearly straight count as sums of walls along it;
// closing the ring counts most, an even length least.
func wallLengths(ring []string, dirs []plane.XY, rs []Reading) []float64 {
	k := len(ring)
	mean, read := 0.0, 0
	pos := map[string]int{}
	for i, c := range ring {
		pos[c] = i
	}
	known := map[int]float64{}
	for _, r := range rs {
		i, ok := pos[r.From]
		j, ok2 := pos[r.To]
		if !ok || !ok2 || i == j {
			continue
		}
		v := r.Value.Millimetres()
		switch {
		case (i+1)%k == j:
			known[i] = v
		case (j+1)%k == i:
			known[j] = v
		default:
			mean, read = mean+v/2, read+1
			continue
		}
		mean, read = mean+v, read+1
	}
	if read > 0 {
		mean /= float64(read)
	} else {
		mean = 3000
	}
	a := mat.NewDense(k+2, k, nil)
	b := mat.NewVecDense(k+2, nil)
	for i := range ring {
		w, v := 0.01, mean
		if l, ok := known[i]; ok {
			w, v = 1, l
		}
		a.Set(i, i, w)
		b.SetVec(i, w*v)
		a.Set(k, i, 1000*dirs[i].X)
		a.Set(k+1, i, 1000*dirs[i].Y)
	}
	var x mat.VecDense
	out := make([]float64, k)
	if err := x.SolveVec(a, b); err != nil {
		for i := range out {
			out[i] = mean
		}
		return out
	}
	for i := range out {
		out[i] = math.Max(x.AtVec(i), mean/50)
	}
	return out
}

// within tells whether p lies in some room.
func (n *net) within(p plane.XY, x []float64) bool {
	for k := range n.sketch.Rooms {
		if holds(n.round(k, x), p) {
			return true
		}
	}
	return false
}
