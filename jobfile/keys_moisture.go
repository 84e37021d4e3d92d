package jobfile

import (
	"fmt"
	"sort"
	"strconv"
	"time"

	"github.com/goccy/go-yaml/ast"

	"strake/moisture"
)

// contents is a key whose value is a list of readings, in percent or another
// unit of a test.
func contents[T any](key, doc string, most float64, to func(*T) *[]float64) field[T] {
	s := shape{words: "a list of readings, such as [8.1, 7.9, 8.4]", schema: map[string]any{"type": "array", "items": map[string]any{"type": "number", "minimum": 0, "maximum": most}}}
	return custom(key, doc, s, func(d *decoder, n ast.Node, t *T) { d.contents(n, most, to(t)) })
}

func (d *decoder) contents(n ast.Node, most float64, to *[]float64) {
	nodes, _ := d.items(n, "a list of readings, such as [8.1, 7.9, 8.4]")
	for i, v := range nodes {
		d.under(strconv.Itoa(i), v, func(n ast.Node) {
			if x, ok := d.figure(n, 0, most); ok {
				*to = append(*to, x)
			}
		})
	}
}

var meterTable = table[moisture.Meter]{fields: []field[moisture.Meter]{
	choice("kind", "pin (resistance) or pinless (dielectric).", []string{moisture.Pin, moisture.Pinless}, func(m *moisture.Meter) *string { return &m.Kind }).or("not known"),
	figure("least", "The least that it reads, in percent.", 0, 50, func(m *moisture.Meter) *float64 { return &m.Least }).or("6 for pin, 4 for pinless"),
	figure("most", "The most that it reads, in percent.", 5, 200, func(m *moisture.Meter) *float64 { return &m.Most }).or("30"),
	temperature("calibrated_at", "The temperature of the wood that a pin meter is calibrated for.", func(m *moisture.Meter) *moisture.Temperature { return &m.Calibrated }).or("70 F"),
}}

// markTable reads what a meter shows by what the wood holds then.
func markTable() field[moisture.Sample] {
	num := map[string]any{"type": "number", "minimum": 0, "maximum": 200}
	s := shape{words: "what the meter shows: what the wood holds, such as {8: 7.1, 12: 10.8}", schema: map[string]any{"type": "object", "additionalProperties": num}}
	return custom("table", "The table of the meter's maker for the species, in percent; between its lines a straight line is taken.", s, func(d *decoder, n ast.Node, t *moisture.Sample) {
		entries, _ := d.entries(n, s.words)
		for _, e := range entries {
			shows, err := strconv.ParseFloat(e.key, 64)
			if err != nil || !(shows >= 0 && shows <= 200) {
				d.fail(e.token, "this is not what a meter shows", e.key, s.words)
				continue
			}
			d.under(e.key, e.value, func(n ast.Node) {
				if is, ok := d.figure(n, 0, 200); ok {
					t.Table = append(t.Table, moisture.Mark{Shows: shows, Is: is})
				}
			})
		}
		sort.SliceStable(t.Table, func(i, j int) bool { return t.Table[i].Shows < t.Table[j].Shows })
		for i := 1; i < len(t.Table); i++ {
			if t.Table[i].Is <= t.Table[i-1].Is {
				d.fail(start(n), "what the wood holds does not rise with what the meter shows", fmt.Sprintf("%g for %g, %g for %g", t.Table[i-1].Is, t.Table[i-1].Shows, t.Table[i].Is, t.Table[i].Shows), "a table in which both rise")
				return
			}
		}
	})
}

var sampleTable = table[moisture.Sample]{fields: []field[moisture.Sample]{
	contents("readings", "What the meter showed, in percent, place by place.", 200, func(s *moisture.Sample) *[]float64 { return &s.Reads }).must(),
	text("setting", "The species or material that the meter was set to.", func(s *moisture.Sample) *string { return &s.Setting }).or("not written down"),
	markTable().or("readings stand as they are"),
	temperature("wood_at", "The temperature of the wood when it was read: a pin meter's readings are put right by half a point for each 10 °F.", func(s *moisture.Sample) *moisture.Temperature { return &s.Wood }).or("as the meter was calibrated"),
}}

// sampleField reads a sample: its readings alone, or keys.
func sampleField(key, doc string, to func(*moisture.Job) *moisture.Sample) field[moisture.Job] {
	in := sampleTable.shape()
	list := map[string]any{"type": "array", "items": map[string]any{"type": "number", "minimum": 0, "maximum": 200}}
	s := shape{words: "keys with values, or a list of readings alone", keys: in.keys, schema: map[string]any{"anyOf": []any{list, in.schema}}}
	return custom(key, doc, s, func(d *decoder, n ast.Node, j *moisture.Job) {
		switch n.(type) {
		case *ast.MappingNode, *ast.MappingValueNode:
			sampleTable.read(d, n, to(j))
		default:
			d.contents(n, 200, &to(j).Reads)
		}
	})
}

var slabTable = table[moisture.Slab]{fields: []field[moisture.Slab]{
	contents("humidity", "Relative humidity in the slab, in percent, of each probe (ASTM F2170).", 1000, func(s *moisture.Slab) *[]float64 { return &s.Humidity }).or("not tested"),
	contents("emission", "Emission of each test, in lb per 1,000 sq ft in 24 h (ASTM F1869).", 100, func(s *moisture.Slab) *[]float64 { return &s.Emission }).or("not tested"),
}}

// logField reads the acclimation log: readings by their dates.
func logField() field[moisture.Job] {
	list := map[string]any{"type": "array", "items": map[string]any{"type": "number", "minimum": 0, "maximum": 200}}
	s := shape{words: "readings by their dates, such as {2026-03-01: [9.4, 9.1], 2026-03-03: [9.0, 8.8]}", schema: map[string]any{"type": "object",
		"propertyNames": map[string]any{"pattern": "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"}, "additionalProperties": map[string]any{"anyOf": []any{list, list["items"]}}}}
	return custom("log", "Readings of the same boards, day by day while they lie in the room; they are put right as those of the boards are.", s, func(d *decoder, n ast.Node, j *moisture.Job) {
		entries, _ := d.entries(n, s.words)
		for _, e := range entries {
			day, err := time.Parse("2006-01-02", e.key)
			if err != nil {
				d.fail(e.token, "this is not a date", e.key, "year, month and day, such as 2026-03-01")
				continue
			}
			d.under(e.key, e.value, func(n ast.Node) {
				l := moisture.Entry{Day: int(day.Unix() / 86400)}
				if day.Unix() < 0 {
					d.fail(e.token, "this date is too long ago", e.key, "a date from 1970-01-01 on")
					return
				}
				if d.contents(n, 200, &l.Reads); len(l.Reads) > 0 {
					j.Log = append(j.Log, l)
				}
			})
		}
		sort.SliceStable(j.Log, func(a, b int) bool { return j.Log[a].Day < j.Log[b].Day })
	})
}

func moistureField() field[draft] {
	tb := table[moisture.Job]{fields: []field[moisture.Job]{
		sub("meter", "What the readings are taken with.", meterTable, func(j *moisture.Job) *moisture.Meter { return &j.Meter }).or("not known"),
		sampleField("boards", "Readings of boards of several cartons.", func(j *moisture.Job) *moisture.Sample { return &j.Boards }).or("not read yet"),
		sampleField("subfloor", "Readings of the wood subfloor.", func(j *moisture.Job) *moisture.Sample { return &j.Subfloor }).or("not read yet"),
		sub("slab", "Tests of a concrete slab.", slabTable, func(j *moisture.Job) *moisture.Slab { return &j.Slab }).or("not tested"),
		logField().or("no log"),
		rankedField(moisture.Guides, func(j *moisture.Job) *moisture.Limits { return &j.Limits }).or("trade guidance, each with its source"),
	}}
	return sub("moisture", "Readings of boards, subfloor and slab: strake ready holds them to the rules.", tb, func(j *draft) *moisture.Job { return &j.Moisture })
}

// meter checks that a meter's range is one.
func meter(d *decoder, j *draft) {
	m := j.Moisture.Meter
	if m.Most > 0 && m.Least >= m.Most {
		d.failPath(at("moisture", "meter", "least"), "the least that the meter reads is not below the most", strconv.FormatFloat(m.Least, 'g', -1, 64), "less than "+strconv.FormatFloat(m.Most, 'g', -1, 64))
	}
}
