package paper_test

import (
	"strings"
	"testing"

	"strake/examples"
	"strake/jobfile"
	"strake/paper"
	"strake/plan"
)

func handed(t *testing.T, text string) string {
	t.Helper()
	j, _, err := jobfile.ReadJob("h.yaml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return flat(formText(t, paper.Handover(plan.Rows(j), nil)))
}

// What a job tells of stands on the sheet: by hand, a 4 in board of red oak laid at 8.06 %
// and at 6.8 % in winter shrinks by 4 x 0.00369 x 1.25 = 0.018 in.
func TestHandoverOfTheKitchen(t *testing.T) {
	data, err := examples.Read("keepers-kitchen")
	if err != nil {
		t.Fatal(err)
	}
	got := handed(t, string(data)+"handover: {laid: 2190-03-17, finish: hardwax oil, spares_at: loft, remarks: [the plank by the stove hides a valve]}\n")
	for _, want := range []string{"Humidity: 30 to 50 %RH", "trade guidance", "up to 0.018 in beside each board", "laid at 8.1 % by their readings", "31 rows: 0.570 in in all",
		"Lots: 0311", "Where they are: loft", "Water pipe: pipe: from corner C along wall C-D 40\"", "Heating: none in the floor", "Stays under it: plywood", "Under the boards: felt",
		"cleats of 2\"", "Finished with: hardwax oil", "Last board laid on: Wed 2190-03-17", "the plank by the stove hides a valve", "wet mopping", "steam", "rolls", "Taken over by, name"} {
		if !strings.Contains(got, want) {
			t.Errorf("no %q in\n%s", want, got)
		}
	}
}

// A maker's band goes before the trade's, and says whose it is.
func TestHandoverOfAMaker(t *testing.T) {
	got := handed(t, smallJob+"moisture: {limits: {humidity_least: {is: 35, by: maker, source: the leaflet}, humidity_most: {is: 55, by: maker, source: the leaflet}}}\n")
	if !strings.Contains(got, "35 to 55 %RH") || !strings.Contains(got, "the maker's") || !strings.Contains(got, "the leaflet") {
		t.Errorf("%s", got)
	}
}

// What nobody told is a blank, and no figure.
func TestHandoverWithBlanks(t *testing.T) {
	got := handed(t, smallJob)
	for _, want := range []string{"Laid by _", "Last board laid on _", "Finished with, and when _", "Winter gaps: not known", "0.018 in for each point", "Really kept _", "Lots _", "Where they are _", "were not looked for, or nobody wrote", "Day _"} {
		if !strings.Contains(got, want) {
			t.Errorf("no %q in\n%s", want, got)
		}
	}
	if strings.Contains(got, "beside each board at the driest") {
		t.Errorf("a gap of air that nobody told of:\n%s", got)
	}
	if got := handed(t, strings.Replace(smallJob, "species: red oak, ", "", 1)); strings.Contains(got, "for each point") {
		t.Errorf("a wood that nobody named moves:\n%s", got)
	}
	heated := handed(t, strings.Replace(smallJob, "heated: no", "heated: yes", 1))
	if !strings.Contains(heated, "nothing is nailed, screwed or drilled into it anywhere") {
		t.Errorf("%s", heated)
	}
}
