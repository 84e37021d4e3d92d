package subfloor

import (
	"fmt"

	"strake/ready"
	"strake/tape"
)

// Survey is what was found under a floor.
type Survey struct {
	On       Base
	Built    int    // year of the building, 0 not known
	Rule     Rule   // zero: none is held
	By       string // whose rule it is
	Layers   []Layer
	Readings []Reading
	Grid     Grid // no marks: none was read
	Squeaks  []Squeak
	Joists   tape.Length // on centre, 0 not known
	Rows     Lean        // how rows lie to the joists, "" not known
	SqFt     float64     // area of the floor, 0 not known
	SlabSaid bool        // that nothing is nailed to a slab was said already
}

// Squeak is a place that squeaks: so long across the joists, so wide along them.
type Squeak struct {
	Place      string
	Long, Wide tape.Length
}

// Verdicts are what there is to say of all that was found, in the order in which
// it is dealt with: what has to be tested or come out, what is left to nail into,
// then flatness.
func (s Survey) Verdicts(style tape.Style) []ready.Verdict {
	t := teller{s, style, Fates(s.Layers, s.Built)}
	var out []ready.Verdict
	out = append(out, t.layers()...)
	out = append(out, t.nailing()...)
	out = append(out, t.rows()...)
	out = append(out, t.squeaks()...)
	out = append(out, t.unread()...)
	out = append(out, t.readings()...)
	return append(out, t.grid()...)
}

// RowVerdicts are those on how the rows lie to the joists alone, for a subfloor of
// which nothing else is told.
func (s Survey) RowVerdicts(style tape.Style) []ready.Verdict {
	return teller{Survey: s, style: style}.rows()
}

// Work is what makes the grid flat by the rule of the survey.
func (s Survey) Work() Work {
	spare, known := s.spare()
	return s.Grid.Flatten(s.Rule, MayTake(s.top(), spare, known))
}

// top is what straightedge and level lie on once all that has to has come out.
func (s Survey) top() Base {
	if _, wood, _ := Nailing(Fates(s.Layers, s.Built)); s.On == OnSlab && wood != "" {
		return OverSlab
	}
	return s.On
}

// spare is what the top panel can lose; known is false where its thickness or the
// joists are not.
func (s Survey) spare() (tape.Length, bool) {
	thick, top, known := Nailing(Fates(s.Layers, s.Built))
	p, ok := PanelFor(s.Joists)
	if !known || !ok || s.Joists == 0 || thick == 0 {
		return 0, false
	}
	return p.Spare(top, thick), true
}

type teller struct {
	Survey
	style tape.Style
	fates []Fate
}

// fine is a style for what is read with a wedge or a feeler.
func (t teller) fine(l tape.Length) string {
	f := t.style
	f.Step = tape.Inch / 32
	if !f.Unit.Imperial() {
		f.Step = tape.Millimetre / 2
	}
	return f.Of(l)
}

func (t teller) say(l tape.Length) string { return t.style.Of(l) }

// volume is an amount to take off or build up, with litres or cubic feet, as it
// is bought.
func (t teller) volume(cubicMetres float64) string {
	if t.style.Unit.Imperial() {
		return fmt.Sprintf("%.2g cu ft", cubicMetres*35.3147)
	}
	return fmt.Sprintf("%.2g litres", cubicMetres*1000)
}
