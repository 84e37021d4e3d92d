package detail

import (
	"strake/section"
	"strake/trim"
)

// Usual shapes of strips, real mm (T-mould 2 in wide with flanges that overlap 3/8
// to 1/2 in, reducer 2 in, threshold 2-1/8 in: from memory). Those bought are held
// against the drawing.
const (
	flange  = 11.0 // what a strip laps over boards
	plate   = 5.0  // its thickness there
	reach   = 42.0 // of a reducer beyond where this floor ends
	shapely = "its shape is usual, not told in the job: hold the one bought against this"
)

// over draws what lies over the joint.
func (j joint) over() {
	high := max(j.here, j.there)
	switch j.o.strip() {
	case trim.TMould:
		j.tMould(high)
	case trim.Reducer:
		j.reducer()
	case trim.Threshold:
		j.threshold()
	case trim.Ramp:
		j.ramp()
	case trim.None:
		j.flush()
	default:
		x0, x1 := j.far-flange, flange
		j.c.Named("strip", section.Hidden, section.At(x0, high), section.At(x0+2, high+plate), section.At(x1-2, high+plate), section.At(x1, high), section.At(x0, high))
		j.c.NoteLine(section.At(j.end-4, high+plate), "A strip goes over the joint: which one is not told in the job")
	}
}

// tMould lies on both floors, fastened to neither.
func (j joint) tMould(high float64) {
	stem := j.w.guide(trim.TMouldStem).Millimetres()
	a, b := (j.end+j.beyond-stem)/2, (j.end+j.beyond+stem)/2
	x0, x1 := j.far-flange, j.beyond+flange
	j.c.Cut("strip", section.Trim, []section.XY{{X: a, Y: 3}, {X: b, Y: 3}, {X: b, Y: high}, {X: x1, Y: j.there}, {X: x1, Y: j.there + 1.5}, {X: x1 - 6, Y: high + plate},
		{X: x0 + 6, Y: high + plate}, {X: x0, Y: j.here + 1.5}, {X: x0, Y: j.here}, {X: a, Y: high}})
	j.c.Note(section.At(x1-6, high+plate*0.5), "T-mould, fastened by its stem to the subfloor, to neither floor; "+shapely)
	j.c.Dim(section.Above, section.At(a, high+plate), section.At(b, high+plate), "stem "+j.w.say.Rip(j.w.guide(trim.TMouldStem)))
}

// reducer laps over this floor and slopes down to the lower one.
func (j joint) reducer() {
	x0, x1 := j.far-flange, reach
	if run, _ := j.w.bevel(j.o); run.Millimetres()+plate > x1-j.end {
		x1 = run.Millimetres() + plate + j.end
	}
	leg := j.end / 2
	j.c.Cut("strip", section.Trim, []section.XY{{X: leg, Y: 2}, {X: -1, Y: 2}, {X: -1, Y: j.there}, {X: x1, Y: j.there}, {X: x1, Y: j.there + 2}, {X: j.end + 2, Y: j.here + plate},
		{X: x0 + 5, Y: j.here + plate}, {X: x0, Y: j.here + 1.5}, {X: x0, Y: j.here}, {X: leg, Y: j.here}})
	j.c.Note(section.At(j.end, j.here+plate*0.6), "Reducer, its lip over this floor, fastened between the floors and never through the boards; "+shapely)
}

// threshold is square against what lies beyond.
func (j joint) threshold() {
	x0 := j.far - flange
	if j.there > j.here && j.o.m.Covering != "sill" { // made to both heights
		j.c.Cut("strip", section.Trim, []section.XY{{X: j.end / 2, Y: 2}, {X: -1, Y: 2}, {X: -1, Y: j.there}, {X: flange, Y: j.there}, {X: flange, Y: j.there + 2}, {X: flange - 5, Y: j.there + plate},
			{X: -2, Y: j.there + plate}, {X: x0, Y: j.here + 2}, {X: x0, Y: j.here}, {X: j.end / 2, Y: j.here}})
		j.c.Note(section.At(-4, j.there), "Threshold, made to both heights, fastened between the floors; "+shapely)
		return
	}
	j.c.Cut("strip", section.Trim, []section.XY{{X: j.end / 2, Y: 2}, {X: -0.5, Y: 2}, {X: -0.5, Y: j.here + plate + 1}, {X: j.end - 6, Y: j.here + plate + 1},
		{X: x0, Y: j.here + 2}, {X: x0, Y: j.here}, {X: j.end / 2, Y: j.here}})
	j.c.Note(section.At(j.end*0.6, j.here+plate*0.5), "Threshold, square against the "+j.o.beyond()+", fastened between the floors and never through the boards; "+shapely)
}

// ramp shows the step and what would take it.
func (j joint) ramp() {
	d := j.here - j.there
	j.c.Named("slope", section.Hidden, section.At(j.end, j.here), section.At(j.end+2*d, j.there))
	if d < 0 {
		j.c.NoteLine(section.At(j.end+d, (j.here+j.there)/2), "More than a strip takes: a panel under this floor, or a threshold made as a ramp (dashed: 1 up in 2 along)")
		return
	}
	j.c.NoteLine(section.At(j.end+d, (j.here+j.there)/2), "More than a strip takes: another build-up, or a threshold made as a ramp (dashed: 1 up in 2 along)")
}

// flush is the joint without a strip.
func (j joint) flush() {
	if j.o.beside && j.o.r.Least > 0 {
		j.c.Cut("soft joint", section.Soft, section.Rect(j.end, j.here-j.w.prof.Thick, 0, j.here))
	}
}
