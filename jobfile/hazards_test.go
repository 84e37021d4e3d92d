package jobfile_test

import (
	"errors"
	"math"
	"reflect"
	"strings"
	"testing"

	"strake/caution"
	"strake/jobfile"
	"strake/ready"
	"strake/site"
	"strake/tape"
)

const hazardKeys = `hazards:
  structure: wall comes out
  paint: clean
  services: no
  guard: temporary
  fireplaces:
    grate: {width: 30, height: 28, front: 18, side: 10}
  finish: on site
  stack: {high: 3, long: 48, wide: 14, weight: 25 kg}
  noise: {table saw: 97, nailer: 101.5}
  limits: {hearth_front_least: {is: 20, by: code, source: by-law}}
`

func TestHazardKeys(t *testing.T) {
	j, _, err := jobfile.ReadJob("h.yaml", []byte(dryJob+hazardKeys))
	if err != nil {
		t.Fatal(err)
	}
	in := tape.Inch
	want := caution.House{
		Told: true, Structure: caution.Wall, Paint: caution.CleanOne, Services: site.No, Guard: caution.Temporary,
		Fireplaces: []caution.Fireplace{{Name: "grate", Width: 30 * in, Height: 28 * in, Front: 18 * in, Side: 10 * in}},
		Finish:     caution.OnSite, Stack: caution.Stack{High: 3, Long: 48 * in, Wide: 14 * in, Pounds: j.Hazards.Stack.Pounds},
		Noises: []caution.Noise{{Tool: "table saw", Level: 97}, {Tool: "nailer", Level: 101.5}},
		Limits: caution.Limits{caution.HearthFront: {{Is: 20, By: ready.Code, Source: "by-law"}}},
	}
	if !reflect.DeepEqual(j.Hazards, want) || math.Abs(j.Hazards.Stack.Pounds-55.115565) > 1e-6 {
		t.Errorf("read %+v\nwant %+v", j.Hazards, want)
	}
}

func TestHazardErrors(t *testing.T) {
	for from, c := range map[string]struct{ to, what string }{
		"wall comes out":        {"wall", "is not known here"},
		"paint: clean":          {"paint: old", "is not known here"},
		"services: no":          {"services: perhaps", "yes or no"},
		", side: 10":            {"", "side"},
		"25 kg":                 {"heavy", "this is no weight"},
		"weight: 25 kg":         {"weight: 0 kg", "this is no weight"},
		", wide: 14":            {"", "go together"},
		"high: 3":               {"high: 0", "number"},
		"table saw: 97":         {"table saw: 970", "this is not such a number"},
		"by: code, source":      {"by: me, source", "is not known here"},
		"hearth_front_least: {": {"hearth_front: {", "hearth_front"},
	} {
		text := strings.Replace(hazardKeys, from, c.to, 1)
		_, _, err := jobfile.ReadJob("h.yaml", []byte(dryJob+text))
		var errs jobfile.Errors
		if !errors.As(err, &errs) || !strings.Contains(err.Error(), c.what) || !strings.Contains(err.Error(), "h.yaml:") {
			t.Errorf("%s for %s: %v", c.to, from, err)
		}
	}
}

func TestWhereJoistsLie(t *testing.T) {
	j, _, err := jobfile.ReadJob("j.yaml", []byte(dryJob+"joists: {along: B-C, spacing: 16, first: 7-1/2}\n"))
	if err != nil {
		t.Fatal(err)
	}
	if !j.Joists.Placed || j.Joists.First != 15*tape.Inch/2 {
		t.Errorf("%+v", j.Joists)
	}
	for _, text := range []string{"joists: {along: B-C, first: 7}\n", "joists: {spacing: 16, first: 7}\n"} {
		if _, _, err := jobfile.ReadJob("j.yaml", []byte(dryJob+text)); err == nil || !strings.Contains(err.Error(), "where joists lie is told by first together with") {
			t.Errorf("%s: %v", text, err)
		}
	}
}
