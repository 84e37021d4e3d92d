package check

import (
	"slices"

	"strake/lay"
	"strake/tape"
)

// The row lines of a zone are walked here, width by width, from the figures in
// the lay alone.

// widthsOf are the widths of a zone's rows, over and over from its offset on.
func widthsOf(z lay.Zone) []tape.Length {
	if len(z.Pattern) > 0 {
		return z.Pattern
	}
	return []tape.Length{z.Width}
}

// roundOf is what all widths of a pattern take up.
func roundOf(widths []tape.Length) tape.Length {
	var sum tape.Length
	for _, w := range widths {
		sum += w
	}
	return sum
}

// patternFault is what is wrong with the widths of a zone's rows.
func patternFault(z lay.Zone) string {
	const most = 1000 // no floor has more rows to a pattern
	if len(z.Pattern) == 0 {
		return ""
	}
	for _, w := range z.Pattern {
		if w <= 0 || w > tape.Metre*10 {
			return "a row of its pattern has no width"
		}
	}
	if len(z.Pattern) > most || slices.Max(z.Pattern) != z.Width {
		return "its width is not that of the widest row of its pattern"
	}
	return ""
}

// widthOn is the width of the row above a height; false where no row line lies
// there.
func widthOn(z lay.Zone, y tape.Length) (tape.Length, bool) {
	widths := widthsOf(z)
	over := onward(y-z.Offset, roundOf(widths))
	for _, w := range widths {
		if over == 0 {
			return w, true
		}
		if over -= w; over < 0 {
			break
		}
	}
	return 0, false
}

// offLine is how far a height lies from the nearest row line of a zone.
func offLine(z lay.Zone, y tape.Length) tape.Length {
	widths := widthsOf(z)
	over := onward(y-z.Offset, roundOf(widths))
	least := over
	for _, w := range widths {
		over -= w
		least = min(least, over.Abs())
	}
	return least
}

// sameLines tells whether two zones have the same row lines.
func sameLines(a, b *zone) bool {
	return a.Width == b.Width && slices.Equal(a.Pattern, b.Pattern) && onward(a.Offset-b.Offset, roundOf(widthsOf(a.Zone))) == 0
}

// wide is how wide the boards of a run's row are.
func (r *run) wide() tape.Length { return r.High - r.Low }

// ripLimit is the narrowest that the boards of a run may be ripped to.
func (s *site) ripLimit(r *run) tape.Length { return s.lim.RipFrom(r.wide()) }
