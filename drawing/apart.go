package drawing

import "strake/sheet"

// Apart is something that belongs at a place in a drawing and has no room there: it stands
// in a list beside the drawing.
type Apart struct {
	At   sheet.Pt
	Of   string // what several of them may have in common: their row; may be empty
	Text string
}

func (d *draw) apart(at sheet.Pt, of, text string) {
	d.noRoom = append(d.noRoom, Apart{at, of, text})
}
