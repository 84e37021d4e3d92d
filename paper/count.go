package paper

import (
	"strake/lay"
	"strake/plan"
	"strake/plane"
	"strake/tape"
)

// Counts are the figures of a plan.
type Counts struct {
	Rows, Unfilled           int // rows; runs without boards
	Boards, Pieces           int
	Crosscuts                int // measured, mitres among them; one that makes two ends counts once
	Rips, Mitres, Notches    int // pieces ripped; mitred ends; notches
	TonguesOff               int
	Scrap, Kerf, Need        tape.Area // Need: what boards must cover
	Over                     tape.Area // strips ripped off, and offcuts that no row takes
	UnderPreferred           int       // pairs of end joints of neighbouring rows nearer than preferred
	Joints                   bool      // there are such pairs at all
	Nearest                  tape.Length
	NearestRowA, NearestRowB lay.Run
}

// Waste is scrap and kerf over what boards must cover.
func (c Counts) Waste() float64 {
	if c.Need == 0 {
		return 0
	}
	return float64(c.Scrap+c.Kerf) / float64(c.Need)
}

// Left is Over over what boards must cover.
func (c Counts) Left() float64 {
	if c.Need == 0 {
		return 0
	}
	return float64(c.Over) / float64(c.Need)
}

// Count counts p.
func Count(p plan.Plan) Counts {
	c := Counts{Boards: len(p.Lay.Boards), Pieces: len(p.Lay.Pieces), Need: p.Aligned.Need.Area2() / 2}
	rows := map[int]bool{}
	for _, r := range p.Lay.Runs {
		rows[r.Row] = true
		if r.Unfilled {
			c.Unfilled++
		}
	}
	c.Rows = len(rows)
	c.cuts(p)
	c.parts(p)
	c.joints(p)
	return c
}

func (c *Counts) cuts(p plan.Plan) {
	for _, cut := range CutList(p) {
		switch cut.Kind {
		case Crosscut, Mitre:
			if !cut.Same {
				c.Crosscuts++
			}
			if cut.Kind == Mitre {
				c.Mitres++
			}
		case Rip:
			c.Rips++
		case NotchCut:
			c.Notches++
		case TongueOff:
			c.TonguesOff++
		}
	}
}

func (c *Counts) parts(p plan.Plan) {
	for _, b := range p.Lay.Boards {
		for _, part := range b.Parts {
			switch part.Kind {
			case lay.IsScrap:
				c.Scrap += part.Outline.Area2() / 2
			case lay.IsKerf:
				c.Kerf += part.Outline.Area2() / 2
			case lay.IsStrip, lay.IsOffcut:
				c.Over += part.Outline.Area2() / 2
			}
		}
	}
}

// joints measures the end joints of rows that lie against each other.
func (c *Counts) joints(p plan.Plan) {
	for _, r := range p.Lay.Runs {
		for _, s := range p.Lay.Runs {
			if r.High == s.Low && p.FieldOf(r.Zone) == p.FieldOf(s.Zone) {
				c.between(p, r, s)
			}
		}
	}
}

func (c *Counts) between(p plan.Plan, r, s lay.Run) {
	a, b := extent(r).Meet(extent(s)), p.Job.Limits.JointPreferred.Value
	for _, x := range jointsOf(p.Lay, r) {
		for _, y := range jointsOf(p.Lay, s) {
			if x < a.From || x > a.To || y < a.From || y > a.To {
				continue
			}
			d := (x - y).Abs()
			if d < b {
				c.UnderPreferred++
			}
			if !c.Joints || d < c.Nearest {
				c.Joints, c.Nearest, c.NearestRowA, c.NearestRowB = true, d, r, s
			}
		}
	}
}

func extent(r lay.Run) plane.Span {
	lo, hi := r.Outline.Box()
	return plane.Span{From: lo.X, To: hi.X}
}

// jointsOf are the places of a run's end joints.
func jointsOf(l lay.Lay, r lay.Run) []tape.Length {
	var out []tape.Length
	for i := 0; i+1 < len(r.Pieces); i++ {
		_, hi := l.Pieces[r.Pieces[i]].Outline.Box()
		out = append(out, hi.X)
	}
	return out
}
