package jobfile

import (
	"fmt"

	"strake/finding"
	"strake/limits"
	"strake/stock"
	"strake/tape"
)

// odd is what is allowed in a job but worth a second look.
func odd(d *decoder, j *draft) []finding.Finding {
	o := &oddities{d: d, j: j, style: tape.Paper(j.Unit)}
	o.walk()
	o.received()
	o.rowWidth()
	o.preferred()
	o.shortBoards()
	o.repeats()
	o.doorways()
	o.cartons()
	return o.found
}

type oddities struct {
	d     *decoder
	j     *draft
	style tape.Style
	found []finding.Finding
}

func (o *oddities) note(level finding.Level, rule, where, measured, limit, do string) {
	o.found = append(o.found, finding.Finding{Level: level, Rule: rule, Where: where, Measured: measured, Limit: limit, Do: do})
}

// walk asks for the way round where no room has it: the wrong one mirrors the
// floor, and nothing else would show it.
func (o *oddities) walk() {
	for _, r := range o.j.Sketch.Rooms {
		if o.d.given(at("rooms", r.Name, "walk")) {
			return
		}
	}
	o.note(finding.Note, "way round the room not given", o.j.Sketch.Rooms[0].Name, "taken as "+counterClockwise, "", "If you named the corners clockwise seen from above, write “walk: clockwise” under the room: else the plan is a mirror image.")
}

// received says that the row width is that of the boards received.
func (o *oddities) received() {
	if ten := receivedTen(o.d, o.j); ten > 0 && len(o.j.Boards.Widths) == 0 {
		o.note(finding.Note, "row width from the delivery", "boards", fine(o.j.Unit, ten)+" over ten boards, by "+measurements(len(o.j.Received.Tens)), "", "The rows go up by a tenth of that; ten_boards under boards goes before it.")
	}
}

func measurements(n int) string {
	if n == 1 {
		return "one measurement"
	}
	return fmt.Sprintf("%d measurements", n)
}

// mostAir is the most air in a joint that has been seen (1.3 mm a row; common
// practice, no source), rounded up.
const mostAir = 3 * mm / 2

// rowWidth looks at the ten-board width against the face.
func (o *oddities) rowWidth() {
	for _, b := range o.j.Boards.Each() {
		o.rowWidthOf(b)
	}
}

func (o *oddities) rowWidthOf(b stock.Boards) {
	switch {
	case b.Pitch() < b.Face:
		o.note(finding.Warn, "row width under face width", "boards", fine(o.j.Unit, b.Pitch()), fine(o.j.Unit, b.Face), "Measure the face of a few boards and the ten boards again: pushed tight they cannot take less than their faces.")
	case b.Air() > mostAir:
		o.note(finding.Warn, "much air in the joints", "boards", fine(o.j.Unit, b.Air())+" a row", fine(o.j.Unit, mostAir), "Measure ten boards again, pushed tight, over their faces without the last tongue.")
	}
}

// preferred raises the preferred joint distance where it is below the least.
func (o *oddities) preferred() {
	l := &o.j.Limits
	if l.JointPreferred.Value >= l.JointMin.Value {
		return
	}
	o.note(finding.Note, "preferred joint distance below the minimum", "limits", o.style.Of(l.JointPreferred.Value), o.style.Of(l.JointMin.Value), "The minimum is taken for both.")
	l.JointPreferred = limits.Figure{Value: l.JointMin.Value, Source: l.JointMin.Source}
}

// shortBoards looks for boards that are too short for the end of a run.
func (o *oddities) shortBoards() {
	least, count := o.j.Limits.ShortestPiece.Value, 0
	for _, b := range o.j.Boards.Each() {
		for _, c := range b.Tally {
			if c.Length < least {
				count += c.Count
			}
		}
	}
	if count > 0 {
		o.note(finding.Note, "boards shorter than the shortest piece", "tally", fmt.Sprintf("%d boards", count), o.style.Of(least), "They can lie in the middle of a run, not at its ends.")
	}
}

// farOff is how far two readings of the same distance may differ: more is a
// slip and no spread.
const farOff = in / 2

// repeats compares readings of the same distance.
func (o *oddities) repeats() {
	first := map[[2]string]tape.Length{}
	for _, r := range o.j.Readings {
		key := [2]string{min(r.From, r.To), max(r.From, r.To)}
		v, again := first[key]
		if !again {
			first[key] = r.Value
			continue
		}
		if diff := (r.Value - v).Abs(); diff > farOff {
			o.note(finding.Warn, "two readings of one distance differ", r.From+"-"+r.To, o.style.Of(diff), o.style.Of(farOff), fmt.Sprintf("Read it once more (line %d).", r.Line))
		}
	}
}

// doorways looks for doorways of a width that doors do not have.
func (o *oddities) doorways() {
	for _, w := range o.j.Sketch.Doorways {
		switch {
		case w.Width < 18*in:
			o.note(finding.Note, "narrow doorway", w.Name, o.style.Of(w.Width), o.style.Of(18*in), "Check its width between the jambs.")
		case w.Width > 12*tape.Foot:
			o.note(finding.Note, "wide doorway", w.Name, o.style.Of(w.Width), o.style.Of(12*tape.Foot), "Check its width between the jambs; two rooms that open so wide may be one ring of corners.")
		}
	}
}

// cartons compares what the cartons hold with the boards that were counted.
func (o *oddities) cartons() {
	b := o.j.Boards
	if b.Carton.Price > 0 && b.Currency == "" {
		o.note(finding.Warn, "price without a currency", "boards", fmt.Sprintf("%g", b.Carton.Price), "", "Add a currency, such as USD, to have it on paper.")
	}
	var counted float64
	for _, w := range b.Each() {
		for _, c := range w.Tally {
			counted += c.Length.Millimetres() * float64(c.Count) * w.Face.Millimetres() / 1e6
		}
	}
	bought := b.Carton.FaceArea(b.Face).SquareMetres() * float64(b.Cartons)
	if counted == 0 || bought == 0 {
		return
	}
	if off := counted/bought - 1; off > 0.05 || off < -0.05 {
		o.note(finding.Warn, "tally against cartons", "boards", fmt.Sprintf("%+.0f %%", off*100), "5 %", "Count again: the tally and the cartons bought differ by more than cartons do.")
	}
}

// fine prints widths that differ by less than a mark of the tape.
func fine(u tape.Unit, l tape.Length) string {
	if u.Imperial() {
		return tape.Style{Unit: tape.UnitInch, Step: in / 1000}.Of(l)
	}
	return tape.Style{Unit: tape.UnitMillimetre, Step: mm / 100}.Of(l)
}
