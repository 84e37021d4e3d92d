package tape_test

import (
	"errors"
	"strings"
	"testing"

	"strake/tape"
)

const in, mm = tape.Inch, tape.Millimetre

func TestReadings(t *testing.T) {
	tests := []struct {
		text string
		bare tape.Unit
		want tape.Length
		step tape.Length
	}{
		{`12' 7-3/8"`, "", 151*in + 3*tape.Eighth, tape.Eighth},
		{`12'-7 3/8"`, "", 151*in + 3*tape.Eighth, tape.Eighth},
		{`12' - 7 3/8"`, "", 151*in + 3*tape.Eighth, tape.Eighth},
		{`12'7⅜"`, "", 151*in + 3*tape.Eighth, tape.Eighth},
		{`12′ 7⅜″`, "", 151*in + 3*tape.Eighth, tape.Eighth},
		{`12’ 7-3⁄8”`, "", 151*in + 3*tape.Eighth, tape.Eighth},
		{`12' 7-3/8''`, "", 151*in + 3*tape.Eighth, tape.Eighth},
		{`12' 7-3/8’’`, "", 151*in + 3*tape.Eighth, tape.Eighth},
		{`12 ft 7 in`, "", 151 * in, in},
		{`12ft 7in`, "", 151 * in, in},
		{`12 ft. 7 in.`, "", 151 * in, in},
		{`12 Feet 7 Inches`, "", 151 * in, in},
		{`12'`, "", 144 * in, in},
		{`12' 0"`, "", 144 * in, in},
		{`12.5'`, "", 150 * in, in},
		{`7-3/16"`, "", 7*in + 3*tape.Sixteenth, tape.Sixteenth},
		{`7 4/16"`, "", 7*in + in/4, tape.Sixteenth},
		{`7"`, "", 7 * in, in},
		{`3/8"`, "", 3 * tape.Eighth, tape.Eighth},
		{`⅜ in`, "", 3 * tape.Eighth, tape.Eighth},
		{`1/64"`, "", tape.SixtyFourth, tape.SixtyFourth},
		{`7-3/8`, tape.UnitInch, 7*in + 3*tape.Eighth, tape.Eighth},
		{`7⅜`, tape.UnitInch, 7*in + 3*tape.Eighth, tape.Eighth},
		{`12`, tape.UnitFoot, 144 * in, in},
		{`151.375 in`, "", 151*in + 3*tape.Eighth, tape.Eighth},
		{`151.50 in`, "", 151*in + in/2, in / 2},
		{`151.3 in`, "", 151*in + 3*in/10, in / 10},
		{`151.33 in`, "", 151*in + 33*in/100, in / 100},
		{`.5 in`, "", in / 2, in / 10},
		{`3.84 m`, "", 3840 * mm, 10 * mm},
		{`3.840 m`, "", 3840 * mm, mm},
		{`3 m`, "", 3000 * mm, 100 * mm},
		{`384 cm`, "", 3840 * mm, 10 * mm},
		{`384.4cm`, "", 3844 * mm, mm},
		{`3840`, tape.UnitMillimetre, 3840 * mm, mm},
		{`3844.9 mm`, "", 3844*mm + 9*mm/10, mm / 10},
		{`0.000125 mm`, "", tape.Tick, tape.Tick},
		{`0.0000625 mm`, "", tape.Tick, tape.Tick}, // half a tick goes up
		{`0.0000624 mm`, "", 0, tape.Tick},
		{`200 m`, "", tape.Longest, 100 * mm},
		{`  7"  `, "", 7 * in, in},
	}
	for _, tt := range tests {
		got, err := tape.ParseReading(tt.text, tt.bare)
		if err != nil || got.Value != tt.want || got.Step != tt.step {
			t.Errorf("ParseReading(%q, %q) = %v to %v, %v; want %v to %v", tt.text, tt.bare, got.Value, got.Step, err, tt.want, tt.step)
		}
	}
}

func TestQuestions(t *testing.T) {
	tests := []struct {
		text   string
		bare   tape.Unit
		ask    string // part of the question
		accept string // part of what would be accepted
	}{
		{`12' 13"`, "", `13" is a foot or more`, `13' 1"`},
		{`12' 12"`, "", `12" is a foot or more`, `13' 0"`},
		{`3,84 m`, "", "comma", "3.84 m if the comma is a decimal sign"},
		{`3,840 mm`, "", "comma", "3840 mm if it parts thousands"},
		{`12' 7`, "", "unit of 7 is missing", `12' 7"`},
		{`12`, "", "unit is missing", "12 mm"},
		{`7-3/8`, tape.UnitMillimetre, "fractions belong to the inch tape", `7-3/8"`},
		{`1/2 m`, "", "fractions belong to the inch tape", `1/2"`},
		{`12.5' 3"`, "", "feet before inches are whole", ""},
		{`7 1/3"`, "", "1/3 is no mark of a tape", "eighths"},
		{`7⅓"`, "", "1/3 is no mark of a tape", "eighths"},
		{`1/0"`, "", "1/0 is no mark", ""},
		{`1/128"`, "", "1/128 is no mark", ""},
		{`9/8"`, "", "9/8 is not less than one", ""},
		{`7.5-3/8"`, "", "do not go together", ""},
		{`7 - 3/8"`, tape.UnitInch, "no number where one was looked for", ""},
		{`3 840`, tape.UnitMillimetre, "several numbers", ""},
		{`3 m 84 cm`, "", "several numbers", ""},
		{`7" 12'`, "", "several numbers", ""},
		{`12' 40 mm`, "", "feet go with inches", ""},
		{`-7"`, "", "minus", ""},
		{`12 furlongs`, "", "“furlongs” is no unit", "mm"},
		{`twelve feet`, "", "no number", ""},
		{``, "", "nothing is written", ""},
		{`201 m`, "", "farther than any floor", ""},
		{`99999999999999999999999999 mm`, "", "farther than any floor", ""},
		{strings.Repeat("1", 65), "in", "longer than any length", ""},
		{`7"!`, "", "no number", ""},
		{"\xff", "", "no number", ""},
		{`12 in in`, "", "no number", ""},
		{`1e3 mm`, "", "“e” is no unit", ""},
	}
	for _, tt := range tests {
		l, err := tape.Parse(tt.text, tt.bare)
		var q *tape.Question
		if !errors.As(err, &q) {
			t.Errorf("Parse(%q) = %v, %v; want a question", tt.text, l, err)
			continue
		}
		if !strings.Contains(q.Ask, tt.ask) || !strings.Contains(q.Accept, tt.accept) || q.Accept == "" || l != 0 {
			t.Errorf("Parse(%q) = %v, %v; want it to ask %q and accept %q", tt.text, l, err, tt.ask, tt.accept)
		}
	}
}

func TestSigned(t *testing.T) {
	for text, want := range map[string]tape.Length{
		`-1/2"`: -in / 2, `−1/2"`: -in / 2, `- 7-3/8"`: -(7*in + 3*tape.Eighth), `7"`: 7 * in, `-12' 7"`: -151 * in, `-3 mm`: -3 * mm,
	} {
		if got, err := tape.ParseSigned(text, ""); got != want || err != nil {
			t.Errorf("ParseSigned(%q) = %v, %v; want %v", text, got, err, want)
		}
	}
}
