package jobfile_test

import (
	"errors"
	"math"
	"reflect"
	"strings"
	"testing"

	"strake/jobfile"
	"strake/moisture"
	"strake/ready"
	"strake/receive"
	"strake/site"
	"strake/tape"
)

const dryJob = `strake: 1
rooms: {den: {corners: [A, B, C, D]}}
readings: {A-B: 144, B-C: 120, C-D: 144, D-A: 120, A-C: 187-7/16}
boards: {species: red oak, face: 5, ten_boards: 50.3, thickness: 3/4, lengths: {tally: [60 x 36 in, 60 x 48]}}
`

const dampKeys = `climate:
  winter: {temperature: 68 F, humidity: 30}
  summer: {temperature: 25.5 °C, humidity: 55}
  now: {temperature: 70, humidity: 140}
site:
  level: on
  subfloor: plywood on slab
  slab_days: 90
  heated: yes
  surface: 27 C
  room: dry
  crawl: {cover: yes, water: no, height: 20, vents: 2 sq ft, closed: no}
  flat: yes
  allowed: no
  sheet: {kind: felt, perm: 5}
  glue: no
  glue_over_sheet: yes
  limits: {slab_days_least: {is: 90, by: maker}}
moisture:
  meter: {kind: pin, least: 5, most: 40, calibrated_at: 20 C}
  subfloor: {readings: [9, 10.5], setting: plywood, table: {12: 10.8, 8: 7.1}, wood_at: 60F}
  boards: [8, 8.2]
  slab: {humidity: [70, 71], emission: 2.5}
  log: {2026-03-03: [9, 8.8], 2026-03-01: 9.4}
  limits:
    subfloor_most:
      - {is: 11, by: maker, source: leaflet}
      - {is: 10, by: code, source: by-law}
`

func TestMoistureKeys(t *testing.T) {
	j, _, err := jobfile.ReadJob("damp.yaml", []byte(dryJob+dampKeys))
	if err != nil {
		t.Fatal(err)
	}
	f := func(x float64) moisture.Temperature { return moisture.Temperature{Is: x, Unit: "F"} }
	c := func(x float64) moisture.Temperature { return moisture.Temperature{Is: x, Unit: "C"} }
	want := moisture.Job{
		Climate:  moisture.Climate{Winter: moisture.Air{Temperature: f(68), Humidity: 30}, Summer: moisture.Air{Temperature: c(25.5), Humidity: 55}, Now: moisture.Air{Temperature: f(70), Humidity: 140}},
		Meter:    moisture.Meter{Kind: moisture.Pin, Least: 5, Most: 40, Calibrated: c(20)},
		Subfloor: moisture.Sample{Reads: []float64{9, 10.5}, Setting: "plywood", Table: []moisture.Mark{{Shows: 8, Is: 7.1}, {Shows: 12, Is: 10.8}}, Wood: f(60)},
		Boards:   moisture.Sample{Reads: []float64{8, 8.2}},
		Slab:     moisture.Slab{Humidity: []float64{70, 71}, Emission: []float64{2.5}},
		Log:      []moisture.Entry{{Day: 20513, Reads: []float64{9.4}}, {Day: 20515, Reads: []float64{9, 8.8}}},
		Limits:   moisture.Limits{"subfloor_most": {{Is: 11, By: ready.Maker, Source: "leaflet"}, {Is: 10, By: ready.Code, Source: "by-law"}}},
	}
	if !reflect.DeepEqual(j.Moisture, want) {
		t.Errorf("read %+v\nwant %+v", j.Moisture, want)
	}
	surface := j.Site.Surface
	j.Site.Surface = 0
	wantSite := site.Site{
		Told: true, Level: site.On, Base: site.OnSlab, SlabDays: 90, Heated: site.Yes, Room: "dry",
		Crawl: site.Crawl{Told: true, Cover: site.Yes, Water: site.No, Height: 20 * tape.Inch, Vents: 2 * 144 * tape.Area(tape.Inch) * tape.Area(tape.Inch), Closed: site.No},
		Flat:  site.Yes, Allowed: site.No, Sheet: site.Sheet{Kind: "felt", Perm: 5}, Glue: site.No, GlueOver: site.Yes,
		Limits: site.Limits{"slab_days_least": {{Is: 90, By: ready.Maker, Source: "job file"}}},
	}
	if !reflect.DeepEqual(j.Site, wantSite) || math.Abs(surface-80.6) > 1e-9 {
		t.Errorf("read %+v, surface %g\nwant %+v", j.Site, surface, wantSite)
	}
	if j, _, err := jobfile.ReadJob("dry.yaml", []byte(dryJob)); err != nil || j.Site.Told || j.Moisture.Told() {
		t.Errorf("nothing is told, but %+v, %+v (%v)", j.Site, j.Moisture, err)
	}
	metric := strings.Replace(dryJob, "strake: 1\n", "strake: 1\nunit: mm\n", 1) + "climate: {now: {temperature: 21, humidity: 45}}\n"
	if j, _, _ := jobfile.ReadJob("metric.yaml", []byte(metric)); j.Moisture.Climate.Now.Temperature != c(21) {
		t.Errorf("in a metric job 21 is %v", j.Moisture.Climate.Now.Temperature)
	}
}

func TestReceivedKeys(t *testing.T) {
	keys := "received: {opened: [{boards: 20, culls: 1, lot: 0417, shade: pale}, {boards: 21}], ten_boards: [50.3, 50 in], limits: {culls_most: {is: 3, by: maker, source: leaflet}}}"
	j, _, err := jobfile.ReadJob("x.yaml", []byte(dryJob+keys))
	want := receive.Delivery{
		Cartons: []receive.Carton{{Lot: "0417", Shade: "pale", Boards: 20, Culls: 1}, {Boards: 21}}, Tens: []float64{1277.62, 1270},
		Limits: receive.Limits{"culls_most": {{Is: 3, By: ready.Maker, Source: "leaflet"}}},
	}
	if err != nil || !reflect.DeepEqual(j.Received, want) {
		t.Errorf("%+v (%v)", j.Received, err)
	}
}

func TestMoistureMistakes(t *testing.T) {
	for _, c := range []struct{ keys, what string }{
		{"climate: {now: {temperature: warm, humidity: 40}}", "this is not a temperature"},
		{"climate: {now: {temperature: 700 F, humidity: 40}}", "this is not a temperature"},
		{"climate: {now: {temperature: 70 F}}", "“humidity” is missing"},
		{"climate: {spring: {temperature: 70 F, humidity: 40}}", "“spring” is not a key here"},
		{"moisture: {boards: [8, dry]}", "this is not such a number"},
		{"moisture: {boards: [8, -1]}", "this is not such a number"},
		{"moisture: {boards: {setting: oak}}", "“readings” is missing"},
		{"moisture: {subfloor: {readings: [9], table: {oak: 7}}}", "this is not what a meter shows"},
		{"moisture: {subfloor: {readings: [9], table: {8: 9, 12: 8}}}", "does not rise"},
		{"moisture: {log: {3 March: [9]}}", "this is not a date"},
		{"moisture: {log: {2026-02-30: [9]}}", "this is not a date"},
		{"moisture: {log: {1950-02-20: [9]}}", "too long ago"},
		{"moisture: {meter: {least: 20, most: 10}}", "the least that the meter reads is not below the most"},
		{"moisture: {limits: {subfloor_most: 11}}", "something else belongs here"},
		{"moisture: {limits: {subfloor_most: {is: 11}}}", "“by” is missing"},
		{"moisture: {limits: {subfloor_most: {is: 11, by: guidance}}}", "is not known here"},
		{"received: {opened: [{boards: 20, culls: 21}]}", "more culls than boards"},
		{"received: {opened: [{culls: 2}]}", "“boards” is missing"},
		{"received: {ten_boards: [50, wide]}", ""},
		{"site: {heated: perhaps}", "this is neither yes nor no"},
		{"site: {level: under}", "is not known here"},
		{"site: {surface: hot}", "this is not a temperature"},
		{"site: {sheet: {perm: 5}}", "“kind” is missing"},
	} {
		_, _, err := jobfile.ReadJob("x.yaml", []byte(dryJob+c.keys+"\n"))
		var errs jobfile.Errors
		if !errors.As(err, &errs) || len(errs) != 1 || !strings.Contains(errs[0].What, c.what) || errs[0].Line != 5 {
			t.Errorf("%s: %v", c.keys, err)
		}
	}
}

// Rows go up by what was measured of the delivery, unless boards say it themselves.
func TestRowWidthFromTheDelivery(t *testing.T) {
	keys := "received: {ten_boards: [50.3, 50.1 in]}\n"
	for own, want := range map[string]tape.Length{"": 502 * tape.Inch / 100, "ten_boards: 50.5, ": 505 * tape.Inch / 100} {
		text := strings.Replace(dryJob, "ten_boards: 50.3, ", own, 1) + keys
		j, fs, err := jobfile.ReadJob("d.yaml", []byte(text))
		if err != nil {
			t.Fatal(err)
		}
		said := false
		for _, f := range fs {
			said = said || f.Rule == "row width from the delivery"
		}
		if j.Boards.Pitch() != want || said != (own == "") {
			t.Errorf("%q: rows go up by %s, want %s; said: %v", own, j.Boards.Pitch(), want, said)
		}
	}
	if _, _, err := jobfile.ReadJob("d.yaml", []byte(strings.Replace(dryJob, "ten_boards: 50.3, ", "", 1)+"received: {ten_boards: [75]}\n")); err == nil || !strings.Contains(err.Error(), "d.yaml:5:") {
		t.Errorf("%v", err)
	}
}
