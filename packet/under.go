package packet

import (
	"strake/drawing"
	"strake/sheet"
)

// under is what makes the subfloor flat, to chalk from, where heights were read.
func (d *desk) under() {
	d.tiled("What makes the subfloor flat", "A figure under a white triangle is built up, under a black one taken off; bold is over the limit; a question mark was not read. Mark the subfloor with it before sheets or boards cover it.",
		drawing.LooseHeights(d.in.Plan), nil)
}

// log is how the boards come to rest, where a log of them is kept.
func (d *desk) log() {
	f := d.open("How the boards come to rest", true)
	s := drawing.Acclimation(d.in.Plan)
	k := min(f.body.w/s.W, f.left()/s.H)
	f.figure(s.W*k, s.H*k, sheet.Moved(s.Items, sheet.Pt{}, k))
}

func heightsRead(in In) bool {
	marks, _ := in.Plan.Heights()
	return len(marks) > 0 && laidOut(in)
}

func logged(in In) bool {
	_, ok := in.Plan.Acclimation()
	return ok
}
