package jobfile

import (
	"math"
	"strconv"
	"strings"

	"github.com/goccy/go-yaml/ast"

	"strake/moisture"
)

var temperatureShape = shape{words: "a temperature, such as 70 F or 21 C", schema: map[string]any{"type": []any{"string", "number"}, "pattern": `^ *[-−]?[0-9.]+ *°? *[FCfc]? *$`}}

// temperature is a key whose value is a temperature. A number without a unit is
// in °F where the job is in inches or feet, else in °C.
func temperature[T any](key, doc string, to func(*T) *moisture.Temperature) field[T] {
	return custom(key, doc, temperatureShape, func(d *decoder, n ast.Node, t *T) {
		s, ok := d.text(n, temperatureShape.words)
		if !ok {
			return
		}
		v, ok := d.degrees(s)
		if !ok {
			d.fail(n.GetToken(), "this is not a temperature", s, temperatureShape.words)
			return
		}
		*to(t) = v
	})
}

// degrees reads 70 F, 70 °F, 21C or 70. What no thermometer shows is refused.
func (d *decoder) degrees(s string) (moisture.Temperature, bool) {
	t := moisture.Temperature{Unit: "C"}
	if d.unit.Imperial() {
		t.Unit = "F"
	}
	s = strings.TrimSpace(strings.ReplaceAll(s, "−", "-"))
	for _, u := range []string{"F", "C"} {
		if cut, ok := strings.CutSuffix(strings.ToUpper(s), u); ok {
			s, t.Unit = strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(cut), "°")), u
			break
		}
	}
	x, err := strconv.ParseFloat(s, 64)
	t.Is = x
	return t, err == nil && !math.IsNaN(x) && x >= -100 && x <= 250
}

// airTable reads a thermo-hygrometer. Humidity over 100 is read and told as a
// suspect value, so that the rest is still judged.
var airTable = table[moisture.Air]{fields: []field[moisture.Air]{
	temperature("temperature", "Its temperature; a number without F or C is °F where the job is in inches or feet, else °C.", func(a *moisture.Air) *moisture.Temperature { return &a.Temperature }).must(),
	figure("humidity", "Its relative humidity, in percent.", -1000, 1000, func(a *moisture.Air) *float64 { return &a.Humidity }).must(),
}}

func climateField() field[draft] {
	tb := table[moisture.Climate]{fields: []field[moisture.Climate]{
		sub("winter", "The room's usual air in the drier season, heated.", airTable, func(c *moisture.Climate) *moisture.Air { return &c.Winter }).or("not known"),
		sub("summer", "The room's usual air in the more humid season.", airTable, func(c *moisture.Climate) *moisture.Air { return &c.Summer }).or("not known"),
		sub("now", "The room's air today, by a thermo-hygrometer.", airTable, func(c *moisture.Climate) *moisture.Air { return &c.Now }).or("not known"),
	}}
	return sub("climate", "The air indoors that the floor will live in: what content to lay boards at, and how far they will move.", tb,
		func(j *draft) *moisture.Climate { return &j.Moisture.Climate })
}
