package jobfile_test

import (
	"errors"
	"strings"
	"testing"

	"strake/jobfile"
	"strake/order"
	"strake/stock"
	"strake/tape"
)

const orderKeys = "order: {risk: 2, layer: strict, culls: 4, lots_differ: 50, spoiled: 3, spares: 2, lead_days: 12, rows_a_day: 7.5, trip: 35.5, refund: 85}\n"

func TestOrderKeys(t *testing.T) {
	j, _, err := jobfile.ReadJob("o.yaml", []byte(dryJob+orderKeys))
	if err != nil {
		t.Fatal(err)
	}
	want := order.Wants{Told: true, Risk: 0.02, Layer: order.Strict, Culls: 0.04, Varies: 0.5, Spoiled: 0.03, Spares: 2, Lead: 12, RowsADay: 7.5, Trip: 35.5, Refund: 0.85,
		CullsTold: true, VariesTold: true, SpoiledTold: true, SparesTold: true, RefundTold: true}
	if j.Order != want {
		t.Errorf("read %+v\nwant %+v", j.Order, want)
	}
	j, _, err = jobfile.ReadJob("o.yaml", []byte(dryJob+"order: {culls: 0, spares: 0}\n"))
	if err != nil {
		t.Fatal(err)
	}
	if w := j.Order.Filled(); w.Culls != 0 || w.Spares != 0 || w.Risk != order.Risk || w.Layer != order.Careful || w.Varies != order.LotVaries {
		t.Errorf("nothing is nothing, and the rest the defaults: %+v", w)
	}
}

func TestOrderErrors(t *testing.T) {
	for from, c := range map[string]struct{ to, what string }{
		"risk: 2":         {"risk: 60", "this is not such a number"},
		"risk: 2,":        {"risk: 0,", "this is not such a number"}, // nobody can promise none
		"layer: strict":   {"layer: sloppy", "is not known here"},
		"culls: 4":        {"culls: 4 in 100", "this is not such a number"},
		"spares: 2":       {"spares: -1", "this is not such a number"},
		"rows_a_day: 7.5": {"rows_a_day: 0", "this is not such a number"},
		"refund: 85":      {"refund: 120", "this is not such a number"},
		"trip: 35.5":      {"trips: 1", "trip"},
	} {
		_, _, err := jobfile.ReadJob("o.yaml", []byte(dryJob+strings.Replace(orderKeys, from, c.to, 1)))
		var errs jobfile.Errors
		if !errors.As(err, &errs) || !strings.Contains(err.Error(), c.what) || !strings.Contains(err.Error(), "o.yaml:5:") {
			t.Errorf("%s for %s: %v", c.to, from, err)
		}
	}
}

func TestMixOfAGrade(t *testing.T) {
	text := strings.Replace(dryJob, "lengths: {tally: [60 x 36 in, 60 x 48]}", "lengths: {mix: {grade: maple first}}, carton: {area: 24 sq ft, measure: nominal}", 1)
	j, _, err := jobfile.ReadJob("g.yaml", []byte(text+"received: {opened: [{boards: 20, culls: 1, lengths: [3 x 48 in, 61-1/2]}]}\n"))
	if err != nil {
		t.Fatal(err)
	}
	g, _ := stock.FindGrade("maple first")
	if m := j.Boards.Mix; m.Grade != g.Name || m.Least != g.Least || m.Most != g.Most || m.Mean != g.Mean || !j.Boards.Carton.Nominal {
		t.Errorf("%+v %+v", m, j.Boards.Carton)
	}
	if ls := j.Received.Lengths(); len(ls) != 2 || ls[0] != (stock.Class{Length: 48 * tape.Inch, Count: 3}) || ls[1].Count != 1 {
		t.Errorf("%+v", ls)
	}
	for _, c := range []struct{ from, to, what string }{
		{"grade: maple first", "grade: maple best", "is not known here"},
		{"grade: maple first", "least: 12, most: 84, mean: 12", "all boards would have one length"},
		{"grade: maple first", "grade: maple first, mean: 40", "stands beside a grade"},
		{"grade: maple first", "least: 12, most: 84", "mean"},
		{"measure: nominal", "measure: tally", "is not known here"},
	} {
		if _, _, err := jobfile.ReadJob("g.yaml", []byte(strings.Replace(text, c.from, c.to, 1))); err == nil || !strings.Contains(err.Error(), c.what) || !strings.Contains(err.Error(), "g.yaml:4:") {
			t.Errorf("%s: %v", c.to, err)
		}
	}
	if _, _, err := jobfile.ReadJob("g.yaml", []byte(dryJob+"received: {opened: [{boards: 2, lengths: [3 x 48 in]}]}\n")); err == nil || !strings.Contains(err.Error(), "more boards were measured") {
		t.Errorf("%v", err)
	}
}
