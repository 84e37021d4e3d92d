package check

import (
	"testing"

	"strake/finding"
)

// Lengths between the marks are told by the mark, unless that reads as the limit.
func TestLengthsByTheMarks(t *testing.T) {
	for _, tt := range [][4]string{
		{`about 6-37/64" (6.575404") long`, `8"`, `6-37/64" long`, `8"`},
		{`about 2" (1.999995") wide`, `at least 2"`, `about 2" (1.999995") wide`, `at least 2"`},
		{`about 1 mm (1.000125 mm), then about 3 mm (2.9999 mm)`, `3 mm`, `1 mm, then about 3 mm (2.9999 mm)`, `3 mm`},
		{`it is about 5 rows (of 7)`, "", `it is about 5 rows (of 7)`, ""},
		{`2"`, `about 2" (2.000005")`, `2"`, `about 2" (2.000005")`},
	} {
		f := plainly([]finding.Finding{{Where: `from about 1" (1.01")`, Measured: tt[0], Limit: tt[1]}})[0]
		if f.Where != `from 1"` || f.Measured != tt[2] || f.Limit != tt[3] {
			t.Errorf("got %q, %q at %q, want %q, %q", f.Measured, f.Limit, f.Where, tt[2], tt[3])
		}
	}
}
