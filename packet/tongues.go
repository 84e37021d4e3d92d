package packet

import (
	"fmt"
	"slices"
	"strings"

	"strake/drawing"
	"strake/lay"
	"strake/paper"
	"strake/setout"
	"strake/words"
)

// tongues is which way tongues lead, and the rooms in the order of laying.
func (d *desk) tongues() {
	p := d.in.Plan
	f := d.open("Tongues, and the order of rooms", true)
	f.para("A heavy line is an edge that keeps its tongue, a dashed one an edge that is sawn off. Arrows: the way rows follow one another, tongue leading; a spline (heavy and dashed) is where groove meets groove and the way turns. A number in a ring: the rooms in the order of laying.")
	if s := words.SplineText(p, d.say); s != "" {
		f.para(s + ".")
	}
	list, between := d.orderOfRooms(), d.betweenRooms()
	h := f.left() - float64(len(list)+2)*f.size*leading*1.4 - 2
	f.figure(f.body.w, h, drawing.Tongues(p, drawing.Page{W: f.body.w, H: h}).Items)
	for i, s := range list {
		f.step(fmt.Sprint(i+1), s)
	}
	if between != "" {
		f.para("Rows that no room counts, in doorways and corners: " + between + ".")
	}
}

// betweenRooms are the rows, but for frames and headers, that no room's stage of the work has, with their places in
// the order of laying.
func (d *desk) betweenRooms() string {
	var out []string
	stages := setout.Stages(d.in.Plan)
	for _, r := range paper.Rows(d.in.Plan) {
		if d.in.Plan.Field(r.Field).Kind == lay.Field && !slices.ContainsFunc(stages, func(s setout.Stage) bool { return s.From <= r.Order && r.Order <= s.To }) {
			out = append(out, fmt.Sprintf("row %s (place %d)", r.Name, r.Order))
		}
	}
	if len(out) > most {
		out = append(out[:most], "and more: see the row cards")
	}
	return strings.Join(out, ", ")
}

// orderOfRooms says of each room which rows it has and where the work can rest.
func (d *desk) orderOfRooms() []string {
	var out []string
	for _, s := range setout.Stages(d.in.Plan) {
		out = append(out, paper.StageText(s))
	}
	return out
}
