package moisture

import (
	"math"
	"testing"

	"strake/ready"
	"strake/tape"
)

// By hand: 4 in red oak (0.00369) laid at 8 %, by readings, in a house of 6.17 % in
// winter (70 °F, 30 %RH: 6.2, Wood Handbook table 4-2, from memory) and 9.25 % in summer
// (70 °F, 50 %RH: 9.2, the same): gaps of 4 x 0.00369 x 1.83 = 0.027 in, and 0.018 in too
// wide in summer.
func TestYearly(t *testing.T) {
	in := tape.Inch
	air := func(h float64) Air { return Air{Temperature{70, "F"}, h} }
	j := Job{Climate: Climate{Winter: air(30), Summer: air(50)}, Boards: Sample{Reads: []float64{7.9, 8.1}}}
	f := Floor{Species: "red oak", Faces: []tape.Length{4 * in}}
	y, ok := j.Yearly(f)
	if !ok || !y.Read || math.Abs(y.Laid-8) > 1e-9 || math.Abs(y.Moves[0].Gap.Inches()-0.027) > 0.0006 || math.Abs(y.Moves[0].Press.Inches()-0.0185) > 0.0006 {
		t.Errorf("%+v, %v", y, ok)
	}
	j.Boards = Sample{}
	if y, _ := j.Yearly(f); y.Read || math.Abs(y.Laid-y.Season.Aim) > 1e-9 || math.Abs(y.Moves[0].Gap.Inches()-y.Moves[0].Press.Inches()) > 1e-4 {
		t.Errorf("halfway: %+v", y)
	}
	j.Boards = Sample{Reads: []float64{6.05}} // drier than any winter: no gap opens
	if y, _ := j.Yearly(f); y.Moves[0].Gap != 0 || y.Moves[0].Press == 0 {
		t.Errorf("laid too dry: %+v", y)
	}
	if _, ok := j.Yearly(Floor{Species: "plastic", Faces: f.Faces}); ok {
		t.Error("a species that nobody knows")
	}
	j.Climate.Winter = Air{}
	if _, ok := j.Yearly(f); ok {
		t.Error("no winter was told")
	}
}

// A maker's limit of humidity goes before the trade's, and brings its source.
func TestServiceOfAMaker(t *testing.T) {
	trade := Job{}.Service()
	if by, from := trade.Whose(); trade.Dry.Is != 30 || trade.Humid.Is != 50 || by != "trade guidance" || len(from) != 1 {
		t.Errorf("%+v by %s, %v", trade, by, from)
	}
	s := Job{Limits: Limits{HumidityLeast: {{Is: 35, By: ready.Maker, Source: "leaflet"}}}}.Service()
	if by, from := s.Whose(); s.Dry.Is != 35 || s.Humid.Is != 50 || by != "the maker's and trade guidance" || len(from) != 2 || from[0] != "leaflet" {
		t.Errorf("%+v by %s, %v", s, by, from)
	}
}
