package wood

import (
	"math"
	"testing"

	"strake/tape"
)

// Worked examples: red oak and white oak 5 in, 6 to 9 %: 0.055 in each
// (Hardwood Floors magazine 2016; a reseller's copy of NWFA A200); 1 m of white
// oak, one point: 3.65 mm (arithmetic on table 13-5).
func TestChange(t *testing.T) {
	for _, c := range []struct {
		name  string
		width tape.Length
		pts   float64
		want  float64 // in
	}{
		{"red oak, No. 1 Common", 5 * tape.Inch, 3, 0.055},
		{"White Oak", 5 * tape.Inch, 3, 0.055},
		{"white-oak", tape.Metre, 1, 3.65 / 25.4},
	} {
		s, ok := Find(c.name)
		if !ok {
			t.Fatalf("%s is not found", c.name)
		}
		if got := s.Change(c.width, c.pts).Inches(); math.Abs(got-c.want) > 0.0005 {
			t.Errorf("%s: %.4f in, want %.4f", c.name, got, c.want)
		}
	}
	if _, ok := Find("soak"); ok {
		t.Error("soak is no wood")
	}
	if s, _ := Find("soft red maple"); s.Tangential != 0.00289 {
		t.Errorf("red maple is %v", s)
	}
}
