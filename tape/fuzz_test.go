package tape_test

import (
	"errors"
	"testing"

	"strake/tape"
)

// Whatever is written: a length that is read lies in range and prints as text
// that reads as the same length; else the error is a question that says what
// would be accepted.
func FuzzParse(f *testing.F) {
	for _, s := range []string{
		`12' 7-3/8"`, `12'-7 3/8"`, `7⅜"`, `12′ 7⅜″`, "7-3/8", "151.375 in", "12ft 7in", "3.84 m", "384 cm", "3840", `12' 13"`, "3,84 m", "-5 mm",
		"", " ", "-", "'", `"`, "/", "1/", "1//2", "--1", "1-2-3", "½½", "1 1/2 1/2", "0.0000001 mm", "''''", "\xff", "9' 9.9\"", "1.2.3",
	} {
		f.Add(s, "in", true)
		f.Add(s, "mm", false)
	}
	f.Fuzz(func(t *testing.T, s, bare string, signed bool) {
		var l tape.Length
		var err error
		if signed {
			l, err = tape.ParseSigned(s, tape.Unit(bare))
		} else {
			var r tape.Reading
			r, err = tape.ParseReading(s, tape.Unit(bare))
			if l = r.Value; err == nil && (l < 0 || r.Step <= 0) {
				t.Errorf("%q reads as %d to %d", s, l, r.Step)
			}
		}
		if err != nil {
			var q *tape.Question
			if !errors.As(err, &q) || q.Ask == "" || q.Accept == "" || l != 0 {
				t.Errorf("%q: %d with %#v", s, l, err)
			}
			return
		}
		if again, err := tape.ParseSigned(l.String(), ""); l.Abs() > tape.Longest || err != nil || again != l {
			t.Errorf("%q reads as %d, prints as %s, which reads as %d (%v)", s, l, l, again, err)
		}
	})
}

func FuzzParseArea(f *testing.F) {
	for _, s := range []string{"20 sq ft", "1.8 m2", "20 ft²", ".5 m2", "20", "m2", "1e9 m2", "2 2 2"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		a, err := tape.ParseArea(s)
		if a < 0 || a > tape.Largest || (err != nil && a != 0) {
			t.Errorf("%q reads as %d, %v", s, a, err)
		}
	})
}
