package check

import (
	"strake/lay"
	"strake/plane"
	"strake/tape"
)

// jointPair are two end joints of neighbouring runs.
type jointPair struct {
	a, b *run // b lies on the far side of a's High line
	x, y tape.Length
}

func (j jointPair) apart() tape.Length { return (j.x - j.y).Abs() }

// later is the run of the two that is laid second.
func (j jointPair) later() *run {
	if j.a.Order > j.b.Order {
		return j.a
	}
	return j.b
}

// jointPairs are all pairs of end joints of runs whose strips share a row line
// and that both lie inside the stretch the two runs have in common.
func (s *site) jointPairs() []jointPair {
	var out []jointPair
	for _, a := range s.runs {
		for _, b := range s.runs {
			if a.High != b.Low || a.zone.Dir != b.zone.Dir {
				continue
			}
			both := a.extent().Meet(b.extent())
			for _, x := range a.joints(both) {
				for _, y := range b.joints(both) {
					out = append(out, jointPair{a, b, x, y})
				}
			}
		}
	}
	return out
}

// extent is how far the pieces of r reach along the row.
func (r *run) extent() plane.Span {
	var out plane.Span
	for i, p := range r.pieces {
		if i == 0 {
			out = p.box.x()
		}
		out = plane.Span{From: min(out.From, p.box.lo.X), To: max(out.To, p.box.hi.X)}
	}
	return out
}

// joints are the places of r's end joints strictly inside a stretch.
func (r *run) joints(in plane.Span) []tape.Length {
	var out []tape.Length
	for i := 1; i < len(r.pieces); i++ {
		if x := r.pieces[i].box.lo.X; x > in.From && x < in.To {
			out = append(out, x)
		}
	}
	return out
}

// jointRule is the name that relaxations of the joint distance carry.
const jointRule = "joint distance"

// relaxed is the figure that the joints of r are held to instead of the limit,
// where the lay names one. Several for one run: the least of them.
func (s *site) relaxed(r *run) (lay.Relaxation, bool) {
	var out lay.Relaxation
	found := false
	for _, x := range s.lay.Relaxed {
		if x.Rule == jointRule && x.Run == r.ID && (!found || x.To < out.To) {
			out, found = x, true
		}
	}
	return out, found
}
