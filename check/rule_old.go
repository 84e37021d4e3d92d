package check

import (
	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/room"
)

var _ = declare("old floor",
	"Every row end that lies against an old floor mates with what that offers: a groove takes its tongue, a tongue or a spline goes into its groove or into the one that is cut into its square edge on the job.",
	holdOld)

func holdOld(r Rule, s *site) []finding.Finding {
	if s.stock.EndTongue == 0 {
		return nil // plain ends butt
	}
	var out []finding.Finding
	for _, p := range s.pieces {
		for _, e := range sides(p.Outline) {
			f, ok := p.oldBeside(e)
			if !ok {
				continue
			}
			as := p.routed(p.profile(e), e, e.axis())
			if mates(as, beyondOld(f.Old)) {
				continue
			}
			g := r.stop(p.label()+" at "+f.Name, p.ID)
			g.Measured, g.Limit = string(as)+" against "+offered(f.Old), "tongue in groove, or a spline between grooves"
			g.Do = "Groove the end on the job for its tongue, or for a spline."
			out = append(out, g)
		}
	}
	return out
}

// oldBeside is the edge of the floor at an old one that an end side of p lies
// against, to what rounding may put it off.
func (p *piece) oldBeside(e edge) (floor.AlignedEdge, bool) {
	if e.long() && e.flat() {
		return floor.AlignedEdge{}, false
	}
	for _, f := range p.zone.at.Edges {
		if f.Old == "" {
			continue
		}
		line := edge{f.To, f.From} // the floor's edges run the way the sides of pieces do
		if max(e.beside(line, int64(touching)), line.beside(e, int64(touching))) > corners {
			return f, true
		}
	}
	return floor.AlignedEdge{}, false
}

// beyondOld is what lies beyond the joint: a square edge is grooved on the job.
func beyondOld(o room.Offer) lay.Profile {
	if o == room.OffersTongue {
		return lay.Tongue
	}
	return lay.Groove
}

func offered(o room.Offer) string {
	switch o {
	case room.OffersTongue:
		return "the tongue of the old floor"
	case room.OffersGroove:
		return "the groove of the old floor"
	}
	return "the edge of the old floor, grooved on the job"
}

// meetsOld tells whether some side of p at one end lies against an old floor.
func (p *piece) meetsOld(on side) bool {
	for _, e := range sides(p.Outline) {
		if _, ok := p.oldBeside(e); ok && e.faces() == on {
			return true
		}
	}
	return false
}
