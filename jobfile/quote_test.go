package jobfile_test

import (
	"errors"
	"reflect"
	"strings"
	"testing"

	"strake/goods"
	"strake/job"
	"strake/jobfile"
	"strake/quote"
	"strake/schedule"
)

const quoteKeys = `schedule: {start: 2027-03-01, who: with helper}
prices: {currency: USD, tax: 8}
quote:
  for: Ada Pell, 3 Quay Lane
  by: Sandlin Floors
  licence: F-118
  date: 2027-02-01
  valid_days: 30
  rate: [48, 56]
  helper_rate: 30
  extra_rate: 60
  hours_off: 20
  markup: 0
  tax_on: all
  fixed: yes
  owner_buys: [boards, base and shoe]
  also: [{what: travel, price: 40}]
  not_included: [moving the piano]
  conditions: [current is there, 'water, too']
  payment: half when begun
handover:
  laid: 2027-03-17
  finish: hardwax oil
  spares_at: loft
  remarks: [a valve under the plank by the stove]
`

func TestQuoteKeys(t *testing.T) {
	j, _, err := jobfile.ReadJob("q.yaml", []byte(dryJob+quoteKeys))
	if err != nil {
		t.Fatal(err)
	}
	day := func(s string) schedule.Day {
		d, err := schedule.ParseDay(s)
		if err != nil {
			t.Fatal(err)
		}
		return d
	}
	want := quote.Terms{Told: true, For: "Ada Pell, 3 Quay Lane", By: "Sandlin Floors", Licence: "F-118", Date: day("2027-02-01"), Valid: 30,
		Rate: goods.Money{Told: true, Low: 48, Likely: 52, High: 56}, Helper: goods.Exactly(30), Extra: goods.Exactly(60), Off: 0.2, OffTold: true, MarkupTold: true,
		TaxOn: quote.OnAll, Fixed: true, Owner: []goods.Group{goods.Boards, goods.Mould}, Also: []quote.Also{{What: "travel", Price: goods.Exactly(40)}},
		Excluded: []string{"moving the piano"}, Conditions: []string{"current is there", "water, too"}, Payment: []string{"half when begun"}}
	if !reflect.DeepEqual(j.Quote, want) {
		t.Errorf("read %+v\nwant %+v", j.Quote, want)
	}
	if want.Until() != day("2027-03-03") {
		t.Errorf("valid until %s", want.Until())
	}
	if h := (job.Handover{Told: true, Laid: day("2027-03-17"), Finish: "hardwax oil", Spares: "loft", Remarks: []string{"a valve under the plank by the stove"}}); !reflect.DeepEqual(j.Handover, h) {
		t.Errorf("read %+v\nwant %+v", j.Handover, h)
	}
}

func TestQuoteErrors(t *testing.T) {
	for _, c := range []struct{ from, to, what string }{
		{"date: 2027-02-01", "date: soon", "this is not a date"},
		{"valid_days: 30", "valid_days: 0", "this is not such a number"},
		{"rate: [48, 56]", "rate: [56, 48]", "no range of a price"},
		{"rate: [48, 56]", "rate: 0", "an hour costs nothing"},
		{"rate: [48, 56]", "rate: -1", "this is not such a number"},
		{"hours_off: 20", "hours_off: 95", "this is not such a number"},
		{"markup: 0", "markup: -5", "this is not such a number"},
		{"tax_on: all", "tax_on: labour", "is not known here"},
		{"currency: USD, tax: 8", "currency: USD", "no tax is written that could be on it"},
		{"currency: USD, tax: 8", "tax: 8", "a price without a currency"},
		{"who: with helper", "who: alone", "a second person has a rate"},
		{"[boards, base and shoe]", "[boards, base]", "is not known here"},
		{"[boards, base and shoe]", "[boards, boards]", "one group is named twice"},
		{"{what: travel, price: 40}", "{what: travel}", "“price” is missing"},
		{"{what: travel, price: 40}", "{price: 40}", "“what” is missing"},
		{"payment: half", "payments: half", "“payments” is not a key here"},
		{"[moving the piano]", `["a\tb"]`, "does not print"},
		{"laid: 2027-03-17", "laid: 17 March", "this is not a date"},
		{"spares_at", "spares", "“spares” is not a key here"},
	} {
		text := strings.Replace(dryJob+quoteKeys, c.from, c.to, 1)
		_, _, err := jobfile.ReadJob("q.yaml", []byte(text))
		var errs jobfile.Errors
		if !errors.As(err, &errs) || !strings.Contains(err.Error(), c.what) || !strings.Contains(err.Error(), "q.yaml:") || strings.Contains(err.Error(), "q.yaml:1:1") {
			t.Errorf("%s for %s: %v", c.to, c.from, err)
		}
	}
}
