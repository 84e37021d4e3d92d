// Package receive is whether what was delivered is what will be laid: lots and
// shades, culls counted, the width over ten boards, and when to stop opening
// cartons.
//
// Of 1,000 sq ft in 50 cartons, five are opened: 100 sq ft, which is as much as
// makers let be opened. With 12 culls among 110 boards, 11 %, where the trade takes 5 %
// for usual: stop, and call the seller before the next carton.
package receive

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"gonum.org/v1/gonum/stat/distuv"

	"strake/ready"
	"strake/stock"
)

// Carton is one carton that was opened and looked through.
type Carton struct {
	Lot, Shade string        // as printed, or as seen; "" not written down
	Boards     int           // in it
	Culls      int           // of those, not fit to be laid anywhere
	Lengths    []stock.Class // of its boards, where they were measured
}

// Delivery is what came, and what was opened of it.
type Delivery struct {
	Cartons []Carton
	Tens    []float64 // widths over ten boards from five cartons pushed tight, in mm
	Limits  Limits
}

// Order is what was bought, as far as it is known.
type Order struct {
	Cartons  int     // delivered, 0 not known
	SqFt     float64 // of one carton, 0 not known
	Ten      float64 // what ten rows are planned to take up, in mm; 0 not of one width
	Imperial bool
}

// Limits are limits that replace the guidance, by their keys.
type Limits = ready.Limits

// The keys of the limits.
const (
	CullsMost  = "culls_most"
	OpenedPart = "opened_most"
	OpenedArea = "opened_area_most"
	TensApart  = "ten_boards_apart"
)

const (
	common    = "common practice, no source"
	srcCulls  = "makers' instructions and grading rules (MFMA among them): up to 5 % of defects are within grade"
	srcOpened = "a maker's instructions: decide to reject within the first 10 % or 100 sq ft opened, whichever is less"
)

// Guides are the limits of trade guidance.
var Guides = ready.Guides{
	{Key: CullsMost, Unit: "%", Doc: "Of the boards looked through, at most this share is culled, in percent.", Is: 5, Source: srcCulls},
	{Key: OpenedPart, Unit: "%", Doc: "The share of the delivery that may be opened before it counts as accepted, in percent; see opened_area_most.", Is: 10, Source: srcOpened},
	{Key: OpenedArea, Unit: "sq ft", Doc: "The area that may be opened before the delivery counts as accepted, in square feet, where that is less than opened_most.", Is: 100, Source: srcOpened},
	{Key: TensApart, Unit: "mm", Doc: "Widths over ten boards differ by this much at most, in mm.", Is: 2, Source: common},
}

// Told tells whether anything was looked at.
func (d Delivery) Told() bool { return len(d.Cartons) > 0 || len(d.Tens) > 0 }

// Verdicts is what there is to say of a delivery.
func Verdicts(d Delivery, o Order) []ready.Verdict {
	if !d.Told() {
		return nil
	}
	out := slices.Concat(d.mixed("lots", func(c Carton) string { return c.Lot }), d.mixed("shades", func(c Carton) string { return c.Shade }))
	return slices.Concat(out, d.culls(o), d.tens(o))
}

// mixed tells cartons that differ in what they say of themselves.
func (d Delivery) mixed(rule string, of func(Carton) string) []ready.Verdict {
	count := map[string]int{}
	var names []string
	for _, c := range d.Cartons {
		if s := of(c); s != "" {
			if count[s]++; count[s] == 1 {
				names = append(names, s)
			}
		}
	}
	if len(names) == 0 {
		return nil
	}
	var words []string
	for _, s := range names {
		words = append(words, fmt.Sprintf("%s (%d)", s, count[s]))
	}
	v := ready.Verdict{Say: ready.Go, Rule: rule, Where: "cartons opened", Measured: strings.Join(words, ", "), Limit: "all alike", Source: common}
	if len(names) > 1 {
		v.Say, v.Do = ready.Look, "Lay a few boards of each side by side in daylight, and mate them by hand, side and end. If they pass, mix them over the floor (shades in the tally do that); if not, call the seller with all cartons still whole."
	}
	return []ready.Verdict{v}
}

// Lengths are the boards of the cartons that were measured.
func (d Delivery) Lengths() []stock.Class {
	var out []stock.Class
	for _, c := range d.Cartons {
		out = append(out, c.Lengths...)
	}
	return out
}

// Counted is all boards looked through, and the culls among them.
func (d Delivery) Counted() (boards, culls int) {
	for _, c := range d.Cartons {
		boards, culls = boards+c.Boards, culls+c.Culls
	}
	return boards, culls
}

// atLeast is the share of culls in the whole delivery that is exceeded nine
// times in ten, by what was counted: the lower bound of Clopper and Pearson.
func atLeast(culls, boards int) float64 {
	if culls == 0 {
		return 0
	}
	return distuv.Beta{Alpha: float64(culls), Beta: float64(boards-culls) + 1}.Quantile(0.1)
}

// opened is how much was opened and may be, in words and as a share of what may
// be; not ok where it is not known how much was bought.
func (d Delivery) opened(o Order) (words string, share float64, ok bool) {
	if o.SqFt <= 0 {
		return "", 0, false
	}
	area, _ := Guides.Rule(d.Limits, OpenedArea)
	part, _ := Guides.Rule(d.Limits, OpenedPart)
	most := area.Is
	if o.Cartons > 0 {
		most = min(most, float64(o.Cartons)*o.SqFt*part.Is/100)
	}
	is := float64(len(d.Cartons)) * o.SqFt
	words = fmt.Sprintf("%.0f sq ft opened, of %.0f", is, most)
	if !o.Imperial {
		words = fmt.Sprintf("%.1f m2 opened, of %.1f", is*sqm, most*sqm)
	}
	return words + " that may be before the delivery counts as accepted", is / most, true
}

// most is how much may be opened, where the area of a carton is not known.
func (d Delivery) most() string {
	area, _ := Guides.Rule(d.Limits, OpenedArea)
	part, _ := Guides.Rule(d.Limits, OpenedPart)
	return fmt.Sprintf("%g %% or %g sq ft, the lesser, is", part.Is, area.Is)
}

// sqm is a square foot in square metres.
const sqm = 0.09290304

// culls holds the share of culls to its limit, and what was opened to how much
// may be.
func (d Delivery) culls(o Order) []ready.Verdict {
	boards, culls := d.Counted()
	if boards == 0 {
		return nil
	}
	r, unit := Guides.Rule(d.Limits, CullsMost)
	share := 100 * float64(culls) / float64(boards)
	opened, used, known := d.opened(o)
	v := ready.Verdict{Say: ready.Go, Rule: "culls", Where: "cartons opened", Measured: fmt.Sprintf("%d of %d boards, %.1f %%", culls, boards, share),
		Limit: "at most " + r.Words(unit), Source: r.Source, Do: "Nail nothing that is visibly bad: what is nailed counts as accepted."}
	if !known {
		v.Do += fmt.Sprintf(" Decide before %s opened (%s).", d.most(), srcOpened)
	}
	if known {
		v.Measured += "; " + opened
		v.Source += "; " + srcOpened
	}
	switch {
	case share > r.Is:
		v.Say, v.Holds = ready.Fix, true
		v.Do = "Open no more cartons and lay nothing. Call the seller, with pictures and the count. " + v.Do
		if least := 100 * atLeast(culls, boards); least > r.Is {
			v.Do += fmt.Sprintf(" It is not chance: nine times in ten the whole delivery has over %.1f %%.", least)
		} else {
			v.Do += " So few boards may mislead; the count of them is still what the seller should hear before more is opened."
		}
		if known && used > 1 {
			v.Do += " More is open already than may be: say so."
		}
	case known && used >= 1:
		v.Say = ready.Look
		v.Do += " So much is open now that the delivery counts as accepted with the next carton: decide first."
	}
	return []ready.Verdict{v}
}

// tens looks at the widths over ten boards: how wide a row is, and whether
// cartons agree.
// plannedWith says whether the rows are planned with a width over ten boards, and
// how to have it so.
func (o Order) plannedWith(mean, apart float64, say func(float64) string) string {
	switch {
	case o.Ten == 0:
		return fmt.Sprintf("Write ten_boards: %s under boards.", say(mean))
	case math.Abs(o.Ten-mean) <= apart/2:
		return fmt.Sprintf("The rows are planned with %s over ten.", say(o.Ten))
	}
	return fmt.Sprintf("The rows are planned with %s over ten: write ten_boards: %s under boards and plan again.", say(o.Ten), say(mean))
}

func (d Delivery) tens(o Order) []ready.Verdict {
	if len(d.Tens) == 0 {
		return nil
	}
	var sum float64
	for _, x := range d.Tens {
		sum += x
	}
	mean, apart := sum/float64(len(d.Tens)), slices.Max(d.Tens)-slices.Min(d.Tens)
	r, _ := Guides.Rule(d.Limits, TensApart)
	say := func(mm float64) string {
		if o.Imperial {
			return fmt.Sprintf("%.3f in", mm/25.4)
		}
		return fmt.Sprintf("%.1f mm", mm)
	}
	v := ready.Verdict{Say: ready.Go, Rule: "width over ten boards", Where: "cartons opened",
		Measured: fmt.Sprintf("%s by %d measurements, %s apart", say(mean), len(d.Tens), say(apart)), Limit: fmt.Sprintf("at most %s apart, %s", say(r.Is), r.By), Source: r.Source,
		Do: o.plannedWith(mean, r.Is, say)}
	switch {
	case math.Round(apart*100) > math.Round(r.Is*100):
		v.Say = ready.Fix
		v.Do = "Cartons of other widths: rows of them open gaps beside each other. Measure each carton, lay boards of one width together in whole rows, or call the seller. " + v.Do
	case o.Ten > 0 && math.Abs(o.Ten-mean) > r.Is/2:
		v.Say = ready.Fix
	case len(d.Tens) < 2:
		v.Say, v.Do = ready.Look, "Measure ten others too, two from each of five cartons: one measurement does not show whether cartons agree. "+v.Do
	}
	return []ready.Verdict{v}
}
