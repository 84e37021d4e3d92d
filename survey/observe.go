package survey

import (
	"fmt"
	"math"

	"strake/plane"
	"strake/room"
	"strake/tape"
)

// observation is one equation: what the unknowns say less what was observed,
// over its standard deviation.
type observation struct {
	name    string // equations of one name err together
	reading int    // index of the tape reading, -1 for an assumption
	sd      float64
	corner  string // of an angle
	soft    bool   // a corner taken for square: an assumption, which checks nothing
	needs   []int
	misfit  func(x []float64) float64
}

// corner holds the inside angle at b; its misfit is in mm over a metre, so
// that all observations are lengths.
func (n *net) corner(a, b, c string, degrees, sdDegrees float64) observation {
	want := degrees * math.Pi / 180
	return observation{
		name: fmt.Sprintf("corner %s", b), reading: -1, sd: sdDegrees * math.Pi / 180 * 1000,
		needs: n.needs(a, b, c),
		misfit: func(x []float64) float64 {
			t := inside(n.at(a, x), n.at(b, x), n.at(c, x)) - want
			if t > math.Pi {
				t -= 2 * math.Pi
			} else if t < -math.Pi {
				t += 2 * math.Pi
			}
			return t * 1000
		},
	}
}

// jambs are the two ends of a doorway on one wall, in the counter-clockwise
// order of that wall's room.
func (n *net) jambs(w room.Wall, from string, at, width tape.Length, x []float64) (start, end plane.XY) {
	near := n.along(w, from, at.Millimetres(), x)
	far := n.along(w, from, (at + width).Millimetres(), x)
	if from == w[0] {
		return near, far
	}
	return far, near
}

// through is the four equations of a doorway between two rooms: each jamb of
// one room, carried square through the wall, is the other room's.
func (n *net) through(d room.Doorway, m Model) []observation {
	_, here, ok := n.sketch.FindWall(d.Wall)
	_, there, ok2 := n.sketch.FindWall(d.OtherWall)
	if !ok || !ok2 {
		return nil
	}
	step := func(x []float64, end, along bool) float64 {
		s1, e1 := n.jambs(here, d.From, d.At, d.Width, x)
		s2, e2 := n.jambs(there, d.OtherFrom, d.OtherAt, d.Width, x)
		u := unit(e1.Sub(s1))
		gap := e2.Sub(s1)
		if end {
			gap = s2.Sub(e1)
		}
		if along {
			return gap.Dot(u)
		}
		return -gap.Dot(u.Left()) - d.Thickness.Millimetres() // the wall lies to the right
	}
	var out []observation
	for k := range 4 {
		end, along := k&1 != 0, k&2 != 0
		what := ", thickness of the wall"
		if along {
			what = ", distance along the wall"
		}
		out = append(out, observation{
			name: d.Said() + what, reading: -1, sd: m.DoorMM,
			needs:  n.needs(here[0], here[1], there[0], there[1]),
			misfit: func(x []float64) float64 { return step(x, end, along) },
		})
	}
	return out
}

// tapeName names the equation of the tape's scale.
const tapeName = "tape"

// observations are all equations of a job.
func (n *net) observations(rs []Reading, m Model) []observation {
	var out []observation
	for i, r := range rs {
		if o, ok := n.reading(i, r, m); ok {
			out = append(out, o)
		}
	}
	for _, r := range n.sketch.Rooms {
		out = append(out, n.corners(r.Ring(), r.Turn, m)...)
	}
	square := func(string) (float64, bool) { return 90, false }
	for _, st := range n.sketch.Stays {
		out = append(out, n.corners(n.stayRing(st), square, m)...)
	}
	for _, d := range n.sketch.Doorways {
		if d.Beyond == room.BeyondRoom {
			out = append(out, n.through(d, m)...)
		}
	}
	if !m.NoScale {
		s := n.scale()
		out = append(out, observation{
			name: tapeName, reading: -1, sd: m.ScalePerM, needs: []int{s},
			misfit: func(x []float64) float64 { return x[s] },
		})
	}
	return out
}

func (n *net) corners(ring []string, turn func(string) (float64, bool), m Model) []observation {
	var out []observation
	for i, b := range ring {
		degrees, given := turn(b)
		sd := m.SquareDeg
		if given {
			sd = m.AngleDeg
		}
		if !given && m.NoSquares {
			continue
		}
		a, c := ring[(i+len(ring)-1)%len(ring)], ring[(i+1)%len(ring)]
		o := n.corner(a, b, c, degrees, sd)
		o.soft, o.corner = !given, b
		out = append(out, o)
	}
	return out
}
