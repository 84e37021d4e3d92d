package paper_test

import (
	"bytes"
	"context"
	"encoding/csv"
	"strings"
	"testing"

	"strake/goods"
	"strake/jobfile"
	"strake/paper"
	"strake/plan"
	"strake/quote"
	"strake/schedule"
	"strake/schedule/takeoff"
)

const smallJob = `strake: 1
name: Room at the chandler's
unit: in
rooms: {den: {corners: [A, B, C, D], walk: counter-clockwise}}
readings: {A-B: 144, B-C: 120, C-D: 144, D-A: 120, A-C: 187-7/16}
boards: {species: red oak, face: 5, thickness: 3/4, lengths: {mix: {least: 12, most: 84, mean: 42}}, carton: {area: 20 sq ft, price: 99.5}, currency: USD}
base: 1/2
shoe: 3/4
doorways: {hall: {wall: A-B, from: A, at: 20, width: 30, thickness: 4-1/2, undercut: yes, beyond: transition, ends: 2}}
site: {level: above, subfloor: wood, sheet: {kind: felt, perm: 5}, glue: no, heated: no}
`

// quoted is the quote of a job, with its sum; lays are simulated a few times only.
func quoted(t *testing.T, text string) (paper.Form, quote.Sum) {
	t.Helper()
	j, _, err := jobfile.ReadJob("q.yaml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	p := plan.Rows(j)
	ps := p.Purchases(context.Background(), plan.Effort{Lays: 200, Planned: 2, Workers: 1})
	c := schedule.Make(takeoff.Of(p), j.Schedule)
	p = plan.MakeWithin(context.Background(), j, 0)
	l := p.GoodsOn(c)
	l.Lines = append(p.Cartons(ps), l.Lines...)
	return paper.Quote(p, ps, l, c), p.Quote(l, c)
}

// formText is a form as text; no line of it is too long, and none ends in a space.
func formText(t *testing.T, f paper.Form) string {
	t.Helper()
	var b bytes.Buffer
	if err := paper.FormText(&b, f); err != nil {
		t.Fatal(err)
	}
	for _, l := range strings.Split(b.String(), "\n") {
		if len([]rune(l)) > 100 || strings.HasSuffix(l, " ") {
			t.Errorf("%d signs: %q", len([]rune(l)), l)
		}
	}
	return b.String()
}

// flat is text without its line ends.
func flat(s string) string { return strings.Join(strings.Fields(s), " ") }

// Without its keys the sheet has hours and blanks, says what is open, and names no
// total: nothing is reckoned from a rate that nobody gave.
func TestQuoteWithBlanks(t *testing.T) {
	f, s := quoted(t, smallJob)
	got := formText(t, f)
	for _, want := range []string{"quote, with blanks to fill in", "Local law on contracts", "Whom the floor is for _", "total, once all is filled in ______",
		"The rate of an hour: write rate, under quote", "The markup on materials", "Tax: write tax", "asbestos", "say go", "fit to hold a nail", "Damage that nobody could see",
		"what is left over of them stays in the house", "For who lays it, name _", "For whom it is laid, name _", "signature _", "Field, with the floor nailer", "Sanding, staining",
		"Not known when this was written", "flatness is not told"} {
		if !strings.Contains(flat(got), want) {
			t.Errorf("no %q in\n%s", want, got)
		}
	}
	if strings.Contains(got, "total of what is listed") || s.Labour.Told || len(s.Open) < 4 {
		t.Errorf("a total without a rate: open %v\n%s", s.Open, got)
	}
}

// prices has one for everything that the small job takes.
func prices() string {
	s := "prices: {tax: 10"
	for _, x := range goods.Items {
		s += ", " + string(x.Item) + ": 10"
	}
	return s + "}\n"
}

const fullQuote = `schedule: {start: 2190-03-01, who: experienced}
quote: {for: "Ada Pell, 3 Quay Lane", by: Sandlin Floors, licence: F-118, date: 2190-02-01, valid_days: 30, rate: 52, extra_rate: 60, markup: 15,
  also: [{what: travel, price: 40}], not_included: [moving the piano], payment: [half when begun], conditions: [current is there]}
`

// With all keys there is a total, which is the sum, and no figure is left blank.
func TestQuoteFilledIn(t *testing.T) {
	f, s := quoted(t, smallJob+prices()+fullQuote)
	if len(s.Open) > 0 {
		t.Fatalf("open: %v", s.Open)
	}
	got := flat(formText(t, f))
	for _, want := range []string{"quote, an estimate", "Ada Pell, 3 Quay Lane", "Valid until: Wed 2190-03-03", "52.00 USD for an hour", "by the hour at 60.00 USD", "moving the piano", "half when begun", "current is there",
		"markup on materials, 15 %", "travel 40.00 40.00 40.00", "tax, 10 % on materials with their markup", "total of what is listed", "who has laid floors before"} {
		if !strings.Contains(got, want) {
			t.Errorf("no %q in\n%s", want, got)
		}
	}
	if strings.Contains(got, "Still open") || strings.Contains(got, "once all is filled in") || strings.Contains(got, "write who: experienced") {
		t.Errorf("something is open:\n%s", got)
	}
	for _, p := range f.Parts {
		for _, l := range p.Lines {
			if len(p.Columns) > 0 && (len(l.Cells) != len(p.Columns) || strings.Contains(strings.Join(l.Cells, ""), "_")) {
				t.Errorf("%s, %s: %v", p.Head, l.What, l.Cells)
			}
		}
	}
	fixed, _ := quoted(t, strings.Replace(smallJob+prices()+fullQuote, "rate: 52,", "rate: 52, fixed: yes, owner_buys: [boards],", 1))
	if got := flat(formText(t, fixed)); !strings.Contains(got, "quote, fixed price") || !strings.Contains(got, "The price is fixed: ") || !strings.Contains(got, "Bought by whom the floor is for - boards of 5") {
		t.Errorf("%s", got)
	}
}

// The table has every line of the sheet, each as wide as its head.
func TestQuoteTable(t *testing.T) {
	f, _ := quoted(t, smallJob+prices()+fullQuote)
	var b bytes.Buffer
	if err := paper.FormCSV(&b, f); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(&b).ReadAll() // fails where a line has more or fewer cells
	if err != nil {
		t.Fatal(err)
	}
	n := 1 + len(f.Lead)
	for _, p := range f.Parts {
		n += len(p.Lines) + len(p.Notes)
	}
	if len(rows) != n {
		t.Errorf("%d lines, want %d", len(rows), n)
	}
	for _, want := range [][]string{{"part", "what", "says", "hours", "low", "likely", "high", "sum", "source"}, {"Between", "Licence and insurance", "F-118", "", "", "", "", "", ""}} {
		if !hasRow(rows, want) {
			t.Errorf("no %v", want)
		}
	}
}

func hasRow(rows [][]string, want []string) bool {
	for _, r := range rows {
		if strings.Join(r, "|") == strings.Join(want, "|") {
			return true
		}
	}
	return false
}
