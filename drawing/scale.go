package drawing

import (
	"fmt"

	"strake/tape"
)

// scale is a scale that rulers are made in.
type scale struct {
	one  float64 // 1 on paper is this much on the floor
	name string
}

var inchScales = []scale{
	{8, "1-1/2 in = 1 ft"}, {12, "1 in = 1 ft"}, {16, "3/4 in = 1 ft"}, {24, "1/2 in = 1 ft"}, {32, "3/8 in = 1 ft"},
	{48, "1/4 in = 1 ft"}, {64, "3/16 in = 1 ft"}, {96, "1/8 in = 1 ft"}, {192, "1/16 in = 1 ft"},
}

var metricScales = []scale{{10, ""}, {20, ""}, {25, ""}, {50, ""}, {100, ""}, {200, ""}, {500, ""}}

// String is the scale as written on the sheet.
func (s scale) String() string {
	if s.name == "" {
		return fmt.Sprintf("1:%g", s.one)
	}
	return fmt.Sprintf("%s (1:%g)", s.name, s.one)
}

// paper is a size of sheet, landscape.
type paper struct {
	name  string
	w, h  float64 // mm
	panel float64 // of it, the column of writing at the right; 0 there is none
	tight *sides  // what is kept free round the floor, nil: around
}

var (
	inchPaper   = []paper{{"17 x 11 in paper", 431.8, 279.4, panel, nil}, {"22 x 17 in paper", 558.8, 431.8, panel, nil}, {"34 x 22 in paper", 863.6, 558.8, panel, nil}}
	metricPaper = []paper{{"A3 paper", 420, 297, panel, nil}, {"A2 paper", 594, 420, panel, nil}, {"A1 paper", 841, 594, panel, nil}}
)

// readable is how high a row must be on paper for its boards to be numbered, mm.
const readable = 2.9

// fit chooses paper and scale for a floor of w by h mm with rows so wide.
//
//  1. The smallest paper on which the floor comes at 1:50 (1/4 in = 1 ft) or
//     larger and a row is high enough to number its boards.
//  2. Else the smallest on which it comes at 1:50 or larger.
//  3. Else the largest, at the scale that fits.
func fit(u tape.Unit, w, h, row float64) (paper, scale) {
	papers, scales, least := metricPaper, scalesOf(u), 50.0
	if u.Imperial() {
		papers, least = inchPaper, 48
	}
	for _, high := range []float64{readable, 0} {
		for _, p := range papers {
			if s := largest(p, scales, w, h); s.one <= least && row/s.one >= high {
				return p, s
			}
		}
	}
	last := papers[len(papers)-1]
	return last, largest(last, scales, w, h)
}

func largest(p paper, scales []scale, w, h float64) scale {
	a := p.free()
	for _, s := range scales {
		if w <= a.w()*s.one && h <= a.h()*s.one {
			return s
		}
	}
	return scales[len(scales)-1]
}
