package survey

import (
	"math"
	"sort"
	"strings"

	"strake/tape"
)

// Slip is a way people misread or miswrite a tape.
type Slip struct {
	Name  string
	Meant tape.Length // what the reading then should have been
}

// known are the slips of the two tapes that are a fixed length: how much too
// long the reading comes out. Common practice, no source.
var (
	inchSlips = []slipBy{
		{"read 1 ft too long", tape.Foot}, {"read 1 ft too short", -tape.Foot},
		{"read 1 in too long; a tape started at its 1 in mark (the burnt inch) does that", tape.Inch},
		{"read 1 in too short", -tape.Inch},
	}
	metricSlips = []slipBy{
		{"read 10 cm too long; a tape started at its 10 cm mark does that", 10 * tape.Centimetre},
		{"read 10 cm too short", -10 * tape.Centimetre},
		{"read 1 cm too long", tape.Centimetre}, {"read 1 cm too short", -tape.Centimetre},
	}
)

type slipBy struct {
	name string
	by   tape.Length
}

// slips are those that come to this blunder within its doubt (mm), the
// nearest first.
func slips(r Reading, blunder, sd float64) []Slip {
	var out []Slip
	miss := map[string]float64{}
	add := func(name string, by tape.Length) {
		d := math.Abs(by.Millimetres() - blunder)
		if _, told := miss[name]; by == 0 || told || by >= r.Value || d > 2.6*sd+0.5 {
			return
		}
		miss[name] = d
		out = append(out, Slip{name, r.Value - by})
	}
	fixed := metricSlips
	if imperial(r) {
		fixed = inchSlips
	}
	for _, s := range fixed {
		add(s.name, s.by)
	}
	for _, text := range r.texts() {
		for _, w := range miswritten(text) {
			if meant, err := tape.Parse(w.text, r.unit()); err == nil {
				add(w.name, r.Value-meant)
			}
		}
	}
	sort.SliceStable(out, func(a, b int) bool { return miss[out[a].Name] < miss[out[b].Name] })
	return out
}

// imperial tells which tape a reading was taken with.
func imperial(r Reading) bool {
	if r.Unit != "" {
		return r.Unit.Imperial()
	}
	return r.Value%tape.SixtyFourth == 0
}

func (r Reading) unit() tape.Unit {
	switch {
	case r.Unit != "":
		return r.Unit
	case imperial(r):
		return tape.UnitInch
	}
	return tape.UnitMillimetre
}

// texts are the ways the reading may stand on the sheet: as written, or where
// that is not known in inches and in feet, or in mm.
func (r Reading) texts() []string {
	switch {
	case r.Text != "":
		return []string{r.Text}
	case imperial(r):
		step := tape.SixtyFourth
		return []string{tape.Style{Unit: tape.UnitInch, Step: step}.Of(r.Value), tape.Style{Unit: tape.UnitFoot, Step: step}.Of(r.Value)}
	}
	return []string{tape.Style{Unit: tape.UnitMillimetre, Step: tape.Millimetre}.Of(r.Value)}
}

type miswriting struct{ name, text string }

// miswritten are the texts that may have been meant by a text: two neighbouring
// digits the other way round, a 6 for a 9, a 9 for a 6.
func miswritten(text string) []miswriting {
	var out []miswriting
	for i := range len(text) {
		c := text[i]
		if i+1 < len(text) && digit(c) && digit(text[i+1]) && c != text[i+1] {
			t := text[:i] + string(text[i+1]) + string(c) + text[i+2:]
			out = append(out, miswriting{"digits swapped: " + strings.TrimSpace(t) + " written as " + text, t})
		}
		if c == '6' || c == '9' {
			t := text[:i] + string('6'+'9'-c) + text[i+1:]
			out = append(out, miswriting{"a 6 and a 9 mistaken: " + strings.TrimSpace(t) + " written as " + text, t})
		}
	}
	return out
}

func digit(c byte) bool { return '0' <= c && c <= '9' }
