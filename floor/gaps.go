package floor

import (
	"fmt"

	"strake/finding"
	"strake/limits"
	"strake/room"
	"strake/tape"
)

// Trim is what covers the gap at walls: base and shoe, as thicknesses.
type Trim struct{ Base, Shoe tape.Length }

// under is the gap range under a cover of this thickness: from the least gap
// to the cover less the lap. Where the cover is too thin for that, the range
// is the least gap alone.
func under(cover tape.Length, lim limits.Limits) Range {
	least := lim.GapLeast.Value
	return Range{least, max(least, cover-lim.Lap.Value)}
}

// gaps are the ranges an edge of this kind has: for row ends, for sides. Where
// the cover leaves no play, row ends still have what no saw cuts closer, or a
// wall a hair out of square would ask for a mitre at every row.
func gaps(k Kind, cover tape.Length, lim limits.Limits) (ends, sides Range, inPlace bool) {
	same := func(f limits.Figure) Range { return Range{f.Value, f.Value} }
	switch k {
	case Jamb:
		r := Range{lim.JambLeast.Value, lim.JambGreatest.Value}
		return r, r, false
	case Flush:
		return same(lim.FlushEnd), same(lim.FlushSide), true
	case Transition:
		r := Range{lim.TransitionLeast.Value, lim.TransitionGreatest.Value}
		return r, r, false
	case Meeting:
		return Range{}, Range{}, false
	case Nosing:
		return Range{}, Range{}, true
	}
	r := under(cover, lim)
	return Range{r.Least, max(r.Greatest, r.Least+lim.EndFit.Value)}, r, false
}

// coverFinding tells when a cover is too thin for the least gap and a full
// lap, or does not hide the gap at all.
func coverFinding(where string, cover tape.Length, lim limits.Limits, style tape.Style) []finding.Finding {
	least, lap := lim.GapLeast.Value, lim.Lap.Value
	f := finding.Finding{
		Rule: "cover of the gap", Where: where, Source: lim.GapLeast.Source,
		Measured: fmt.Sprintf("cover %s, least gap %s", style.Of(cover), style.Of(least)),
	}
	switch {
	case cover >= least+lap:
		return nil
	case cover >= least:
		f.Level = finding.Note
		f.Limit = fmt.Sprintf("lap of %s wanted, %s left", style.Of(lap), style.Of(cover-least))
		f.Do = "No play is left here. A shoe or a thicker base gives some."
	default:
		f.Level = finding.Warn
		f.Limit = fmt.Sprintf("%s of the gap would show", style.Of(least-cover))
		f.Do = "Add a shoe, take a thicker base, undercut the drywall, or enter a smaller least gap if the maker allows it."
	}
	return []finding.Finding{f}
}

// stayKind is the kind of edge that something that stays makes.
func stayKind(s room.Stay) Kind {
	switch s.Meets {
	case room.MeetsFlush:
		return Flush
	case room.MeetsTransition:
		return Transition
	}
	return Stays
}

// beyondKind is the kind of edge at the far end of a doorway.
func beyondKind(b room.Beyond) Kind {
	switch b {
	case room.BeyondFlush:
		return Flush
	case room.BeyondStair:
		return Nosing
	}
	return Transition
}
