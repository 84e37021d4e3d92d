package words

import (
	"strings"

	"strake/floor"
	"strake/room"
)

// Meets says how boards meet a floor edge: the gap, the joint, the strip over
// it, and whether the cut is measured in place.
func Meets(e floor.AlignedEdge, s Lengths) string {
	out := meets(e, s)
	if e.InPlace && !e.Beside {
		out += ", cut measured in place"
	}
	return out
}

func meets(e floor.AlignedEdge, s Lengths) string {
	switch e.Kind {
	case floor.Jamb:
		return jamb(e.Range, s)
	case floor.Flush:
		if e.Beside {
			return "flush, soft joint " + span(e.Range, s)
		}
		if e.Old != "" {
			return "joined to the old floor, " + joined(e.Old)
		}
		return "flush, fine joint " + span(e.Range, s)
	case floor.Transition:
		return "under the transition, gap " + span(e.Range, s)
	case floor.Nosing:
		return "nosing, gap " + span(e.Range, s)
	case floor.Stays:
		return "gap " + span(e.Range, s) + " under its cover"
	}
	return "gap " + span(e.Range, s)
}

// joined says how ends are joined to an old floor.
func joined(o room.Offer) string {
	switch o {
	case room.OffersTongue:
		return "a groove on its tongue"
	case room.OffersGroove:
		return "a spline in its groove"
	}
	return "a spline in both, its edge grooved on the job"
}

// jamb says how far boards go under an undercut jamb's face.
func jamb(r floor.Range, s Lengths) string {
	if r.Greatest > 0 {
		return "gap " + span(r, s)
	}
	return "undercut jamb, boards " + span(floor.Range{Least: -r.Greatest, Greatest: -r.Least}, s) + " under its face"
}

// span prints a gap range; gaps are small, so to the finer step.
func span(r floor.Range, s Lengths) string {
	if r.Play() == 0 {
		return s.Rip(r.Least)
	}
	return s.Rip(r.Least) + " to " + s.Rip(r.Greatest)
}

// Wall is a wall's bare name, A-B, from an edge named "wall A-B".
func Wall(edge string) string { return strings.TrimPrefix(edge, "wall ") }
