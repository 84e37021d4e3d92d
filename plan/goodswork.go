package plan

import (
	"math"
	"slices"

	"strake/goods"
	"strake/lay"
	"strake/saw"
	"strake/subfloor"
	"strake/tape"
)

// tornOut is what comes out.
func (p Plan) tornOut() goods.TearOut {
	o := goods.TearOut{SqFt: p.moistureFloor().SqFt}
	for _, f := range subfloor.Fates(p.Job.Subfloor.Layers, p.Job.Subfloor.Built) {
		if f.Out {
			o.Layers = append(o.Layers, goods.OutLayer{What: string(f.Material), Thickness: f.Thickness, Test: f.Test})
		}
	}
	return o
}

// sawn is what the saws have to do for the boards laid.
func (p Plan) sawn() goods.Saws {
	var s goods.Saws
	if len(p.Lay.Pieces) == 0 {
		return s
	}
	for _, b := range p.Job.Boards.Each() {
		s.Face = max(s.Face, b.Face)
	}
	for _, x := range p.Lay.Pieces {
		c := saw.Of(x)
		lo, hi := x.Outline.Box()
		for _, e := range []struct {
			is    lay.Profile
			slant tape.Length
		}{{x.Left, c.Left}, {x.Right, c.Right}} {
			if e.is == lay.Cut {
				s.Steepest = max(s.Steepest, math.Atan2(float64(e.slant.Abs()), float64(hi.Y-lo.Y))*180/math.Pi)
			}
		}
		for _, n := range c.Notches {
			if n.Sawn(p.Job.Unit) {
				s.Notches++
			}
		}
		if !c.Rip.Done {
			continue
		}
		least := min(c.Rip.Left, c.Rip.Right)
		if s.Rips == 0 || least < s.Narrowest {
			s.Narrowest = least
		}
		s.Rips++
		if c.Rip.Taper() {
			s.Tapers++
			s.Longest = max(s.Longest, c.Long())
		}
	}
	return s
}

// sawCuts is how many cuts the saw makes at most: each sawn end of a piece (two of
// them may be made by one cut) and each rip.
func (p Plan) sawCuts() int {
	n := 0
	for _, x := range p.Lay.Pieces {
		for _, e := range []lay.Profile{x.Left, x.Right, x.Behind, x.Ahead} {
			if e == lay.Cut || e == lay.Ripped {
				n++
			}
		}
	}
	return n
}

// asked is what the site asks of tools and gear.
func (p Plan) asked() goods.SiteFloor {
	var s goods.SiteFloor
	for _, d := range p.Job.Sketch.Doorways {
		if d.Undercut {
			s.Undercut = append(s.Undercut, d.Name)
		}
	}
	for _, c := range p.Cautions() {
		if !slices.Contains(s.Tasks, c.Task) {
			s.Tasks = append(s.Tasks, c.Task)
		}
	}
	return s
}
