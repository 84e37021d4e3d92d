package subfloor

import (
	"math"

	"strake/tape"
)

// FNumbers are the flatness and levelness numbers of a slab from heights at
// 12 in stations along one or more lines: FF from how the slope changes from
// station to station, FL from how the height changes over 10 ft. Larger is
// flatter. Each is 0 where the lines are too short to tell: three stations and
// two changes for FF, 12 stations for FL; a floor without any change has no
// number either, and is told as infinite.
//
// Definitions by ASTM E1155; the constants from memory. Values of all lines are
// pooled. The standard asks for a test section of 320 sq ft, 8 ft a side at
// least: for a smaller room the numbers are a guide.
func FNumbers(lines [][]tape.Length) (ff, fl float64) {
	var q, z []float64
	for _, h := range lines {
		for i := 2; i < len(h); i++ {
			q = append(q, (h[i]-h[i-1]).Inches()-(h[i-1]-h[i-2]).Inches())
		}
		for i := 10; i < len(h); i++ {
			z = append(z, (h[i] - h[i-10]).Inches())
		}
	}
	return fNumber(4.57, q), fNumber(12.5, z)
}

func fNumber(k float64, x []float64) float64 {
	if len(x) < 2 {
		return 0
	}
	mean, sum := 0.0, 0.0
	for _, v := range x {
		mean += v / float64(len(x))
	}
	for _, v := range x {
		sum += (v - mean) * (v - mean)
	}
	return k / (3*math.Sqrt(sum/float64(len(x)-1)) + math.Abs(mean))
}

// FNumbers are those of the grid's rows and columns; ok is false where its marks
// are not 12 in apart (to 1/4 in), none of its lines is long enough, or nothing
// changes along them.
func (g Grid) FNumbers() (ff, fl float64, ok bool) {
	if (g.Step - tape.Foot).Abs() > tape.Inch/4 {
		return 0, 0, false
	}
	var lines [][]tape.Length
	for _, l := range g.lines(2 * g.Step) {
		if l.by.Col*l.by.Row != 0 {
			continue
		}
		h := make([]tape.Length, l.n)
		for k := range h {
			h[k], _ = g.At(l.mark(k))
		}
		lines = append(lines, h)
	}
	ff, fl = FNumbers(lines)
	return ff, fl, ff > 0 && !math.IsInf(ff, 0) && !math.IsInf(fl, 0)
}
