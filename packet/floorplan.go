package packet

import (
	"strake/drawing"
)

// floorPlan is the floor on one page, then to scale over as many as it takes.
func (d *desk) floorPlan() {
	f := &flow{d: d, title: "Floor plan", across: true, size: body}
	f.turn()
	f.figure(f.body.w, f.body.h, drawing.FloorOn(d.in.Plan, drawing.Page{W: f.body.w, H: f.body.h}).Items)
	s, apart := drawing.LooseFloor(d.in.Plan)
	d.tiled("Row plan to scale", "Every board with its number and the length it is cut to; what has no room in the drawing is listed over it or behind the tiles. A number that stands twice is one board cut in two.", s, apart)
}
