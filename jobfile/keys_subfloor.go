package jobfile

import (
	"strconv"
	"strings"

	"github.com/goccy/go-yaml/ast"

	"strake/job"
	"strake/room"
	"strake/subfloor"
	"strake/tape"
)

var subfloorTable = table[job.Subfloor]{fields: []field[job.Subfloor]{
	choice("on", "What carries the floor: wood (panels or boards on joists) or a slab of concrete.", []subfloor.Base{subfloor.OnWood, subfloor.OnSlab}, func(s *job.Subfloor) *subfloor.Base { return &s.On }).must(),
	whole("built", "The year the building, or the floor in it, was made: old coverings of before 1981 are not touched before they were tested.", 1500, 2100, func(s *job.Subfloor) *int { return &s.Built }).or("not known, and old coverings are presumed to hold asbestos"),
	list("layers", "What lies on the joists or the slab now, from the top down.", "layer", layerTable, func(_ *decoder, _ ast.Node, s *job.Subfloor, l subfloor.Layer) { s.Layers = append(s.Layers, l) }).or("not known"),
	choice("flat", "The rule that flatness is held to. The figures published in the US contradict each other: us is 3/16 in under 6 ft and 1/4 in under 10 ft, us strict 1/8 in under 6 ft and 3/16 in under 10 ft.", flatRules(), func(s *job.Subfloor) *string { return &s.Flat }).or("us, or us strict on bare concrete and where fasteners are shorter than 1-1/2 in"),
	list("flat_limits", "The maker's own figures, or those of a local rule: they go before flat.", "figure", flatTable, func(_ *decoder, _ ast.Node, s *job.Subfloor, l subfloor.Limit) { s.Own = append(s.Own, l) }).or("none"),
	choice("flat_limits_by", "Whose figures flat_limits are: local code goes before the maker's.", []string{"maker", "code"}, func(s *job.Subfloor) *string { return &s.OwnBy }).or("maker"),
	text("flat_limits_from", "Where flat_limits come from.", func(s *job.Subfloor) *string { return &s.OwnFrom }).or("the job file"),
	list("straightedge", "What a straightedge showed, place by place.", "place", straightedgeTable, func(_ *decoder, _ ast.Node, s *job.Subfloor, r subfloor.Reading) { s.Readings = append(s.Readings, r) }).or("none"),
	sub("heights", "Heights read on a grid, by a level line, a laser or a water level.", heightsTable, func(s *job.Subfloor) *job.Heights { return &s.Heights }).or("none"),
	list("squeaks", "Places that squeak.", "place", squeakTable, func(_ *decoder, _ ast.Node, s *job.Subfloor, q subfloor.Squeak) { s.Squeaks = append(s.Squeaks, q) }).or("none"),
}}

func flatRules() []string {
	var out []string
	for _, r := range subfloor.Rules() {
		out = append(out, r.Name)
	}
	return out
}

var layerTable = table[subfloor.Layer]{fields: []field[subfloor.Layer]{
	choice("what", "What it is; planks is board sheathing, leveller a compound that sets, backer cement board, foam also pad and cork, paper also felt.", subfloor.Materials(), func(l *subfloor.Layer) *subfloor.Material { return &l.Material }).must(),
	length("thickness", "How thick it is.", within{mm / 10, 300 * mm}, func(l *subfloor.Layer) *tape.Length { return &l.Thickness }).or("not known"),
}}

var flatTable = table[subfloor.Limit]{fields: []field[subfloor.Limit]{
	length("under", "A straightedge of this length.", within{100 * mm, 15 * tape.Metre}, func(l *subfloor.Limit) *tape.Length { return &l.Length }).must(),
	length("gap", "The largest gap under it.", within{mm / 10, 50 * mm}, func(l *subfloor.Limit) *tape.Length { return &l.Gap }).must(),
}}

var straightedgeTable = table[subfloor.Reading]{fields: []field[subfloor.Reading]{
	text("place", "Where it lay, so that you find it again.", func(r *subfloor.Reading) *string { return &r.Place }).must(),
	length("under", "How long the straightedge is; by DIN 18202 the distance of the two points it lay on.", within{100 * mm, 15 * tape.Metre}, func(r *subfloor.Reading) *tape.Length { return &r.Edge }).must(),
	length("gap", "The largest gap under it. Of a hump: under each end, held so that both are alike.", within{0, 150 * mm}, func(r *subfloor.Reading) *tape.Length { return &r.Gap }).must(),
	yes("hump", "It rocks on a hump, instead of bridging a dip.", func(r *subfloor.Reading) *bool { return &r.Hump }).or("no"),
	length("long", "How far the dip or hump reaches along the straightedge.", within{10 * mm, 15 * tape.Metre}, func(r *subfloor.Reading) *tape.Length { return &r.Long }).or("as long as the straightedge"),
	length("wide", "And across it, for the amount of material.", within{10 * mm, 15 * tape.Metre}, func(r *subfloor.Reading) *tape.Length { return &r.Wide }).or("no amount is told"),
}}

var squeakTable = table[subfloor.Squeak]{fields: []field[subfloor.Squeak]{
	text("place", "Where it squeaks.", func(q *subfloor.Squeak) *string { return &q.Place }).must(),
	length("long", "Its length across the joists.", within{10 * mm, 15 * tape.Metre}, func(q *subfloor.Squeak) *tape.Length { return &q.Long }).must(),
	length("wide", "Its width along the joists.", within{10 * mm, 15 * tape.Metre}, func(q *subfloor.Squeak) *tape.Length { return &q.Wide }).must(),
}}

var heightsTable = table[job.Heights]{fields: []field[job.Heights]{
	wall("wall", "The wall that the lines of the grid run along.", func(h *job.Heights) *room.Wall { return &h.Wall }).must(),
	corner("from", "The corner of that wall where each line begins.", func(h *job.Heights) *string { return &h.From }).must(),
	length("at", "From that corner along the wall to the first mark of each line.", anywhere, func(h *job.Heights) *tape.Length { return &h.At }).or("0"),
	length("off", "From the wall to the first line, square to it.", anywhere, func(h *job.Heights) *tape.Length { return &h.Off }).or("0"),
	length("step", "From mark to mark and from line to line; 12 in also gives F-numbers of a slab.", within{50 * mm, 3 * tape.Metre}, func(h *job.Heights) *tape.Length { return &h.Step }).must(),
	heightLines().must(),
}}

// hole is what is written for a mark that was not read.
const hole = "x"

// mostMarks is the largest grid: every way to lay a straightedge over it is looked at.
const mostMarks = 600

// heightLines reads the lines of a grid, one after the other from the wall.
func heightLines() field[job.Heights] {
	item := map[string]any{"anyOf": []any{lengthSchema(true), map[string]any{"const": hole}}}
	s := shape{words: "a list of lines, each a list of heights such as [0, 1/16, -1/8, x]", schema: map[string]any{
		"type": "array", "minItems": 1, "items": map[string]any{"type": "array", "items": item}}}
	return custom("lines", "The heights, line by line from the wall: up is more, x is a mark that was not read. All lines are equally long. Only differences count.", s, func(d *decoder, n ast.Node, h *job.Heights) {
		nodes, _ := d.items(n, s.words)
		for i, v := range nodes {
			d.under(strconv.Itoa(i), v, func(n ast.Node) { d.heightLine(n, h) })
		}
		if marks := h.Rows * h.Cols; marks > mostMarks {
			d.fail(start(n), "this grid has too many marks", strconv.Itoa(marks), "at most "+strconv.Itoa(mostMarks)+": a wider step")
		}
	})
}

func (d *decoder) heightLine(n ast.Node, h *job.Heights) {
	nodes, _ := d.items(n, "a list of heights, such as [0, 1/16, -1/8, x]")
	if h.Rows == 0 {
		h.Cols = len(nodes)
	}
	if len(nodes) != h.Cols {
		d.fail(start(n), "this line has "+strconv.Itoa(len(nodes))+" heights, the first has "+strconv.Itoa(h.Cols), "", "as many in each line, x where one was not read")
		return
	}
	h.Rows++
	for i, v := range nodes {
		d.under(strconv.Itoa(i), v, func(n ast.Node) {
			if s, ok := scalar(n); ok && strings.TrimSpace(s) == hole {
				h.Height, h.Hole = append(h.Height, 0), append(h.Hole, true)
				return
			}
			r, _ := d.reading(n, within{-300 * mm, 300 * mm})
			h.Height, h.Hole = append(h.Height, r.Value), append(h.Hole, false)
		})
	}
}
