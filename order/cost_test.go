package order

import (
	"math"
	"testing"

	"strake/tape"
)

func TestCostByHand(t *testing.T) {
	ft := tape.Foot
	ns := []Need{{Taken: 95 * ft}, {Taken: 100 * ft}, {Taken: 101 * ft}, {Taken: 125 * ft}} // 10, 10, 11 and 13 cartons of 10 ft
	terms := Terms{Price: 50, Trip: 30, Refund: 0.8}
	for cartons, want := range map[int]float64{
		10: (500 + 500 + 580 + 680) / 4.0,
		11: (510 + 510 + 550 + 680) / 4.0, // one of 11 goes back for 40
		13: (650 - 120 + 650 - 120 + 650 - 80 + 650) / 4.0,
	} {
		if got := Cost(ns, 10*ft, cartons, terms); math.Abs(got-want) > 1e-9 {
			t.Errorf("%d cartons: %g, want %g", cartons, got, want)
		}
	}
	if Cost(nil, 10*ft, 5, terms) != 0 {
		t.Error("nothing was laid")
	}
}

func TestDeadline(t *testing.T) {
	for _, c := range []struct {
		rows int
		aDay float64
		lead int
		want int
	}{{30, 6, 2, 18}, {30, 6.5, 3, 10}, {30, 6, 10, -30}, {30, 6, 0, 30}} {
		if got := Deadline(c.rows, c.aDay, c.lead); got != c.want {
			t.Errorf("%+v: %d", c, got)
		}
	}
}
