package survey

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"strake/finding"
)

const (
	unclosed = 20.0 // degrees that a room's angles may fail to add up by
	oblique  = 5.0  // degrees that a corner taken for square may come out off it
	pulled5  = 5.0  // deviations that squares may pull a reading by
)

// turns names rooms whose corners, as sketched, cannot close: n corners turn
// through (n-2) half turns. A corner that stands into the room and was not
// named so is the usual cause, and the fit would bend every wall to hide it.
func (r Result) turns() []finding.Finding {
	var out []finding.Finding
	for _, rm := range r.net.sketch.Rooms {
		if len(rm.Corners) < 3 {
			continue
		}
		sum := 0.0
		for _, c := range rm.Corners {
			a, _ := rm.Turn(c)
			sum += a
		}
		want := float64(len(rm.Corners)-2) * 180
		if math.Abs(sum-want) <= unclosed {
			continue
		}
		out = append(out, finding.Finding{Level: finding.Stop, Rule: "corners that close", Where: rm.Name,
			Measured: fmt.Sprintf("the inside angles of its %d corners come to %.0f degrees", len(rm.Corners), sum), Limit: fmt.Sprintf("%.0f", want),
			Do: "Name every corner that stands into the room under into, and give the angle of every corner that is clearly not square under angles."})
	}
	return out
}

// notSquare names corners that were taken for square and are far from it. Many
// at once have one cause, and are one finding.
func (r Result) notSquare() (fs []finding.Finding, corners []string) {
	var is, wants []string
	for _, rm := range r.Built.Rooms {
		ring := rm.Ring()
		n := len(ring)
		for i, c := range ring {
			want, given := rm.Turn(c)
			at := inside(r.Built.At[ring[(i+n-1)%n]], r.Built.At[c], r.Built.At[ring[(i+1)%n]]) * 180 / math.Pi
			if off := math.Abs(at - want); given || off <= oblique || r.model.NoSquares {
				continue
			}
			corners, is = append(corners, c), append(is, fmt.Sprintf("%.0f", at))
			if w := fmt.Sprintf("%.0f", want); !slices.Contains(wants, w) {
				wants = append(wants, w)
			}
			fs = append(fs, finding.Finding{Level: finding.Stop, Rule: "corners taken for square", Where: "corner " + c,
				Measured: fmt.Sprintf("the readings make it %.0f degrees", at), Limit: fmt.Sprintf("within %.0f of %.0f", oblique, want),
				Do: "If it really is not square, give its angle under angles; if it stands into the room, name it under into; else a wall beside it was read wrong."})
		}
	}
	if len(fs) <= fewCorners {
		return fs, corners
	}
	f := fs[0]
	f.Where, f.Measured = "corners "+strings.Join(corners, ", "), "the readings make them "+strings.Join(is, ", ")+" degrees"
	f.Limit = fmt.Sprintf("within %.0f of %s", oblique, strings.Join(wants, " or "))
	f.Do = "So many at once: a wall was read wrong or written against the wrong corners, the corners are not named in their order round the room, or one that stands into the room is not named under into. Where a corner really is not square, give its angle under angles."
	return []finding.Finding{f}, corners
}

// fewCorners are told one by one: a wall that was read wrong moves so many.
const fewCorners = 2

// against says that corners taken for square hold the fitted room away from
// what the readings alone would make of it.
func (r Result) against(rs []Reading, rep Report) []finding.Finding {
	if rep.Wrong {
		return nil // said already
	}
	var names []string
	for _, v := range rep.Verdicts {
		if math.Abs(v.Residual-v.unheld) > pulled5*v.SD {
			names = append(names, rs[v.Reading].Name())
		}
	}
	if len(names) == 0 {
		return nil
	}
	return []finding.Finding{{Level: finding.Stop, Rule: "square corners against readings", Where: strings.Join(names, ", "),
		Measured: "corners taken for square pull the room away from these readings", Limit: fmt.Sprintf("%.0f standard deviations", pulled5),
		Do: "Look which corner is not square, and give its angle under angles."}}
}
