package survey

import (
	"fmt"
	"math"

	"strake/plane"
	"strake/room"
	"strake/tape"
)

// Model says how far readings and assumptions are trusted.
type Model struct {
	ReadingMM     float64 // constant part of the tape's limit, as a standard deviation
	ScalePerM     float64 // mm per m, one shared error of the whole tape
	HookMM        float64 // hook and corner, each reading
	SquareDeg     float64 // a corner taken for square
	AngleDeg      float64 // an angle that was given
	DoorMM        float64 // jamb against jamb through a wall
	NoSquares     bool    // leave assumed square corners out
	NoScale       bool    // the tape has no scale error
	UnitWeights   bool    // every reading has a standard deviation of 1 mm
	DefaultStepMM float64 // rounding step where none is known
}

// Tape is the default model: a class II tape, limit 0.3 mm + 0.2 mm/m
// (MID 2014/32/EU annex X, from memory), each part taken as even over its
// limit, hence over root 3; hook and corner 0.8 mm (from memory); corners of
// houses square to half a degree (from memory).
func Tape() Model {
	return Model{
		ReadingMM: 0.3 / math.Sqrt(3), ScalePerM: 0.2 / math.Sqrt(3), HookMM: 0.8,
		SquareDeg: 0.5, AngleDeg: 0.25, DoorMM: 1.5, DefaultStepMM: tape.Sixteenth.Millimetres(),
	}
}

// deviation is the standard deviation of a reading in mm.
func (m Model) deviation(r Reading) float64 {
	switch {
	case m.UnitWeights:
		return 1
	case r.SD > 0:
		return r.SD
	}
	step := m.DefaultStepMM
	if r.Step > 0 {
		step = r.Step.Millimetres()
	}
	return math.Sqrt(m.ReadingMM*m.ReadingMM + m.HookMM*m.HookMM + step*step/12)
}

// observation is one equation: what the unknowns say less what was observed,
// over its standard deviation.
type observation struct {
	name    string
	reading int // index of the tape reading, -1 for an assumption
	sd      float64
	needs   []int
	misfit  func(x []float64) float64
}

func (n *net) distance(i int, r Reading, m Model) observation {
	want := r.Value.Millimetres()
	return observation{
		name: r.From + "-" + r.To, reading: i, sd: m.deviation(r),
		needs: append(n.needs(r.From, r.To), n.scale()),
		misfit: func(x []float64) float64 {
			return n.at(r.To, x).Sub(n.at(r.From, x)).Len()*(1+x[n.scale()]) - want
		},
	}
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
		u := e1.Sub(s1).Unit()
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
		out = append(out, observation{
			name: "doorway " + d.Name, reading: -1, sd: m.DoorMM,
			needs:  n.needs(here[0], here[1], there[0], there[1]),
			misfit: func(x []float64) float64 { return step(x, end, along) },
		})
	}
	return out
}

// observations are all equations of a job.
func (n *net) observations(rs []Reading, m Model) []observation {
	var out []observation
	for i, r := range rs {
		if n.known(r.From) && n.known(r.To) && r.From != r.To {
			out = append(out, n.distance(i, r, m))
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
			name: "tape", reading: -1, sd: m.ScalePerM, needs: []int{s},
			misfit: func(x []float64) float64 { return x[s] * 1000 },
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
		out = append(out, n.corner(a, b, c, degrees, sd))
	}
	return out
}
