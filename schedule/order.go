package schedule

import "fmt"

// steps are all steps in order, those left out too.
func (p planner) steps() []Step {
	out := append(p.clearing(), p.subfloor()...)
	out = append(out, p.boards()...)
	if len(p.j.Done) > 0 {
		for i := range out {
			out[i] = when(out[i], false, "rows lie already: it was done before them")
		}
	}
	out = append(out, p.laying()...)
	return append(out, p.closing()...)
}

// clearing is what comes out of the room.
func (p planner) clearing() []Step {
	w := p.w
	tests := 0
	for _, l := range w.Layers {
		if l.Test {
			tests++
		}
	}
	coverings := tests > 0
	if w.Paint {
		tests++
	}
	test := Step{Key: "test", What: "Test suspect coverings and paint", Parts: []Part{p.number("sample", tests, "sample", "samples")}, after: labWait,
		Note: "Nothing suspect is touched before the laboratory has answered. Where it finds asbestos a licensed firm takes it out, and the hours below do not hold."}
	base := Step{Key: "base off", What: "Take base and shoe off, numbered by wall", Parts: []Part{p.walls("base_off")}}
	if w.Paint {
		base.gate = lab
	}
	tear := Step{Key: "tear out", What: "Tear out what lies there", rooms: w.Rooms}
	if coverings {
		tear.gate = lab
	}
	for _, l := range w.Layers {
		if l.Rate != "" {
			tear.Parts = append(tear.Parts, p.area(l.Rate, " of "+l.Name))
		}
	}
	nothing := "nothing comes out, by the layers told"
	if !w.LayersTold {
		nothing = "layers are not told under subfloor: where carpet or another covering comes out, write them, or its hours are missing here"
	}
	unsuspect := "nothing that is told is suspect"
	if w.AgeUnknown {
		unsuspect = "the year of the house is not told (subfloor, built): from before 1981 old coverings and adhesive, and from before 1978 paint, are tested by a laboratory before they are touched"
	}
	return []Step{
		untold(when(test, tests > 0, unsuspect), w.AgeUnknown),
		{Key: "empty", What: "Empty the room", Parts: []Part{p.each("empty", w.Rooms, "room", "rooms")}},
		p.off(),
		when(base, w.Base && w.Walls > 0, "the job has no base"),
		untold(when(tear, len(tear.Parts) > 0, nothing), !w.LayersTold),
		when(Step{Key: "clean", What: "Pull or scrape fixings, sweep, vacuum", Parts: []Part{p.area("clean", "")}}, w.SqFt > 0, "the area is not known"),
	}
}

// off is doors and appliances.
func (p planner) off() Step {
	s := Step{Key: "doors off", What: "Appliances out, doors off"}
	if n := p.w.Appliances; len(n) > 0 {
		s.Parts = append(s.Parts, p.each("appliances_out", n, "appliance", "appliances"))
	}
	if n := p.w.Doors; len(n) > 0 {
		s.Parts = append(s.Parts, p.each("doors_off", n, "door", "doors"))
	}
	return untold(when(s, len(s.Parts) > 0, "no door leaf or appliance is told under heights"), true)
}

// subfloor is what is done to what the boards lie on.
func (p planner) subfloor() []Step {
	w := p.w
	flat := "no place is told that is not flat"
	if !w.FlatTold {
		flat = "flatness is not told under subfloor: its hours are missing here"
	}
	under := "in wood, by a meter set to it"
	if w.Slab {
		under = "in a slab tests go by their own standard, and count here as readings"
	}
	return []Step{
		{Key: "look", What: "Look at layers and services", Parts: []Part{p.each("look", w.Rooms, "room", "rooms")}},
		when(Step{Key: "squeaks", What: "Screw down squeaks", Parts: []Part{p.number("screws", w.Screws, "screw", "screws")}}, w.Screws > 0, "no place is told that squeaks"),
		untold(when(Step{Key: "flatten", What: "Flatten", Parts: []Part{p.number("flatten", w.Flatten, "place", "places")}}, w.Flatten > 0, flat), !w.FlatTold),
		when(Step{Key: "overlay", What: "Overlay: panels screwed down over the subfloor", Parts: []Part{p.area("panel", " of panel")}}, w.Panel, "no panel is laid over the subfloor"),
		{Key: "read subfloor", What: "Moisture readings of the subfloor", Parts: []Part{p.number("read", w.ReadUnder, "reading", "readings")}, gate: climate,
			Note: fmt.Sprintf("After the house was at living climate for %d days or more; %s.", waitDays(p.j.ClimateDays, UsualClimate), under)},
	}
}

// boards is what is done until readings say go.
func (p planner) boards() []Step {
	w := p.w
	deliver := Step{Key: "deliver", What: "Deliver and carry in", Parts: []Part{p.part("carry", float64(w.Cartons), count(w.Cartons, "carton", "cartons")+w.CartonsBy)}, gate: delivery,
		Note: "To where no floor is opened up, off the floor, no more stacked in one place than it carries; cartons opened or cross-stacked with laths between, as the maker says."}
	deliver = untold(when(deliver, w.Cartons > 0, "cartons are not known"), true)
	if w.Here && p.j.Delivery <= p.j.Start {
		deliver = when(deliver, false, "boards are there: the job tells of some of them")
	}
	under := Step{Key: "undercut", What: "Undercut jambs and casings", Parts: []Part{p.each("undercut", double(w.Jambs), "jamb", "jambs")}}
	if w.Paint {
		under.gate = lab
	}
	return []Step{
		deliver,
		{Key: "read boards", What: "Readings of the boards", Parts: []Part{p.number("read", w.ReadBoards, "reading", "readings")}, after: restWait,
			Note: "Of several cartons; the same boards again every other day, into the log of the job."},
		when(under, len(w.Jambs) > 0, "no doorway has its jambs undercut"),
		{Key: "go", What: "Readings again: go or wait", Parts: []Part{p.number("read", w.ReadUnder+w.ReadBoards, "reading", "readings")}, gate: rested,
			Note: "Only go goes on. strake ready says it, with the limits."},
	}
}

// double has each opening's jambs, left and right.
func double(names []string) []string {
	var out []string
	for _, n := range names {
		out = append(out, n+" left", n+" right")
	}
	return out
}

// laying is from the sheet to the last row.
func (p planner) laying() []Step {
	w := p.w
	begun := len(p.j.Done) > 0
	lies := "rows lie already: it was done before them"
	sheet := untold(when(Step{Key: "sheet", What: "Underlayment", Parts: []Part{p.area("sheet", "")}}, w.Sheet, "no sheet is told under site"), true)
	set := Step{Key: "set out", What: "Set out on it; carry the joists up the wall", Parts: []Part{p.each("set_out", w.Rooms, "room", "rooms")}}
	rack := Step{Key: "rack", What: "Rack: lay dry what can be, all cuts but those measured in place", Parts: []Part{p.dry()},
		Note: "Before the nailer is rented: cut starter rips and what is not measured in place."}
	if begun {
		sheet, set = when(sheet, false, lies), when(set, false, lies)
		rack.gate = rested // a hold holds the rows that are left as well
	}
	rows := p.rows()
	if len(rows) == 0 {
		rack = when(rack, false, "all rows lie")
	} else if w.Glued {
		rows[len(rows)-1].after = glueWait
	}
	return append([]Step{sheet, set, rack}, rows...)
}

func list(names []string) string {
	out := ""
	for i, n := range names {
		switch {
		case i == 0:
		case i == len(names)-1:
			out += " and "
		default:
			out += ", "
		}
		out += n
	}
	return out
}

// closing is what follows the last row.
func (p planner) closing() []Step {
	w := p.w
	in := Step{Key: "doors on", What: "Doors back on, appliances back", gate: cured}
	if n := w.Doors; len(n) > 0 {
		in.Parts = append(in.Parts, p.each("doors_on", n, "door", "doors"))
	}
	if n := w.Appliances; len(n) > 0 {
		in.Parts = append(in.Parts, p.each("appliances_in", n, "appliance", "appliances"))
	}
	base := Step{Key: "base on", What: "Base, by its numbers, and shoe", gate: cured}
	if w.BaseOn {
		base.Parts = append(base.Parts, p.walls("base_on"))
	}
	if w.Shoe {
		base.Parts = append(base.Parts, p.walls("shoe_on"))
	}
	return []Step{
		when(Step{Key: "finish", What: "Sand and finish", Parts: []Part{p.area("finish", "")}, after: cureWait,
			Note: "The label of the finish goes before all days given here. Socks after a day, furniture after two or three, rugs after two to four weeks (common practice, no source)."}, w.OnSite, "boards come finished, or hazards does not say that they are finished on site"),
		when(Step{Key: "transitions", What: "Transitions and nosings", Parts: []Part{p.each("transitions", w.Openings, "opening", "openings")}, gate: cured}, len(w.Openings) > 0, "no opening ends this floor"),
		when(base, len(base.Parts) > 0 && w.Walls > 0, "no base and no shoe goes on"),
		when(in, len(in.Parts) > 0, "no door leaf or appliance is told under heights"),
	}
}

// dry is the area of the rows that are not laid yet.
func (p planner) dry() Part {
	area := 0.0
	for _, r := range p.w.Rows {
		if !p.j.laid(r.Number) {
			area += weight(r)
		}
	}
	return p.part("rack", area, p.square(area))
}

// square says an area.
func (p planner) square(sqft float64) string {
	if p.w.Imperial {
		return fmt.Sprintf("%.0f sq ft", sqft)
	}
	return fmt.Sprintf("%.1f m2", sqft*0.09290304)
}
