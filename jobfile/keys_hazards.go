package jobfile

import (
	"strconv"
	"strings"

	"github.com/goccy/go-yaml/ast"

	"strake/caution"
	"strake/site"
	"strake/tape"
)

var fireplaceTable = table[caution.Fireplace]{fields: []field[caution.Fireplace]{
	length("width", "Of its opening.", within{50 * mm, 5000 * mm}, func(f *caution.Fireplace) *tape.Length { return &f.Width }).must(),
	length("height", "Of its opening.", within{50 * mm, 5000 * mm}, func(f *caution.Fireplace) *tape.Length { return &f.Height }).must(),
	length("front", "From the opening out to the first wood, over what does not burn.", within{0, 5000 * mm}, func(f *caution.Fireplace) *tape.Length { return &f.Front }).must(),
	length("side", "From the side of the opening to the first wood; of its two sides the lesser.", within{0, 5000 * mm}, func(f *caution.Fireplace) *tape.Length { return &f.Side }).must(),
}}

var stackTable = table[caution.Stack]{fields: []field[caution.Stack]{
	whole("high", "Cartons on top of each other.", 1, 100, func(s *caution.Stack) *int { return &s.High }).must(),
	length("long", "Length of a carton as it lies.", within{100 * mm, 5000 * mm}, func(s *caution.Stack) *tape.Length { return &s.Long }).or("4.67 sq ft of floor for a carton of 20 sq ft"),
	length("wide", "Width of a carton as it lies.", within{50 * mm, 2000 * mm}, func(s *caution.Stack) *tape.Length { return &s.Wide }).or("see long"),
	weightField().or("by the species and thickness of its boards"),
}}

// weightField reads what a carton weighs.
func weightField() field[caution.Stack] {
	s := shape{words: "a weight, such as 55 lb or 25 kg", schema: map[string]any{"type": "string", "pattern": `^\s*[0-9]+(\.[0-9]+)?\s*(lb|kg)\s*$`}}
	return custom("weight", "What a carton weighs.", s, func(d *decoder, n ast.Node, st *caution.Stack) {
		v, ok := d.text(n, s.words)
		if !ok {
			return
		}
		per := 1.0
		num, found := strings.CutSuffix(strings.TrimSpace(v), "lb")
		if !found {
			num, found = strings.CutSuffix(strings.TrimSpace(v), "kg")
			per = 2.2046226
		}
		x, err := strconv.ParseFloat(strings.TrimSpace(num), 64)
		if !found || err != nil || !(x > 0 && x < 1000) {
			d.fail(n.GetToken(), "this is no weight", v, s.words)
			return
		}
		st.Pounds = x * per
	})
}

// noiseField reads tools and their levels.
func noiseField() field[caution.House] {
	s := shape{words: "tools with their levels in dBA, such as {table saw: 97}", schema: map[string]any{"type": "object", "additionalProperties": map[string]any{"type": "number", "minimum": 40, "maximum": 140}}}
	return custom("noise", "Levels at the ear of the person who works, in dBA, as the tool's maker or a meter has them.", s, func(d *decoder, n ast.Node, h *caution.House) {
		entries, _ := d.entries(n, s.words)
		for _, e := range entries {
			d.under(e.key, e.value, func(n ast.Node) {
				if x, ok := d.figure(n, 40, 140); ok {
					h.Noises = append(h.Noises, caution.Noise{Tool: e.key, Level: x})
				}
			})
		}
	})
}

func hazardsField() field[draft] {
	tb := table[caution.House]{fields: []field[caution.House]{
		choice("structure", "What was seen of what carries the floor.", []caution.Structure{caution.Sound, caution.Sags, caution.Joists, caution.Wall}, func(h *caution.House) *caution.Structure { return &h.Structure }).or("not answered"),
		choice("paint", "The paint on trim, jambs and doors that are taken off, sawn or sanded: none is touched, clean (tested, no lead) or lead. The year of the house stands under subfloor, built.", []caution.Paint{caution.NoPaint, caution.CleanOne, caution.LeadPaint}, func(h *caution.House) *caution.Paint { return &h.Paint }).or("not tested"),
		answer("services", "Pipes, tubes and cables under the floor were looked for.", func(h *caution.House) *site.Answer { return &h.Services }),
		choice("guard", "The guard rail at a stair or landing: it stays, comes off, or comes off with a temporary one ready.", []caution.Guard{caution.Stays, caution.ComesOff, caution.Temporary}, func(h *caution.House) *caution.Guard { return &h.Guard }).or("not answered"),
		each("fireplaces", "Openings for fire in the room, with what does not burn before them.", "fireplace", fireplaceTable, func(h *caution.House, name string, f caution.Fireplace) {
			f.Name = name
			h.Fireplaces = append(h.Fireplaces, f)
		}).or("none"),
		choice("finish", "Where the boards get their finish.", []caution.Finish{caution.Factory, caution.OnSite}, func(h *caution.House) *caution.Finish { return &h.Finish }).or("not known: cautions of both are shown"),
		sub("stack", "How cartons are stacked on the floor.", stackTable, func(h *caution.House) *caution.Stack { return &h.Stack }).or("not told"),
		noiseField().or("not told"),
		rankedField(caution.Guides, func(h *caution.House) *caution.Limits { return &h.Limits }).or("trade guidance and model codes, each with its source"),
	}}
	return told(sub("hazards", "What can hurt somebody: strake ready says what has to be cleared first, and cautions.txt what to mind with each task.", tb, func(j *draft) *caution.House { return &j.Hazards }), func(j *draft) { j.Hazards.Told = true })
}

// hazards checks what is told of what can hurt.
func (n *names) hazards() {
	s := n.j.Hazards.Stack
	if path := at("hazards", "stack"); (s.Long > 0) != (s.Wide > 0) {
		n.d.failPath(path, "a carton's length and width go together", "", "both long and wide, or neither")
	}
}
