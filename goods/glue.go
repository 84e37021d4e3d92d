package goods

import (
	"fmt"
	"math"

	"strake/fasten"
	"strake/site"
	"strake/tape"
)

// Beads are lines across the rows: their length, and how many stretches.
func Beads(fs []Field, apart tape.Length) (length tape.Length, lines int) {
	for _, f := range fs {
		lo, hi := f.Area.Box()
		for x := lo.X + apart/2; x < hi.X; x += apart {
			for _, s := range f.Area.Section(x, false) {
				length += s.Len()
				lines++
			}
		}
	}
	return length, lines
}

// adhesive counts tubes by the beads.
func (k *work) adhesive() {
	g := k.w.Glue
	length, lines := Beads(k.f.Under.Fields, g.Apart)
	b := g.Bead.Millimetres()
	ml := math.Pi / 4 * b * b * length.Millimetres() / 1000
	l := Line{Group: Under, What: fmt.Sprintf("flooring adhesive, tube of %.0f ml", g.Tube), Item: Adhesive, Count: int(math.Ceil(ml / g.Tube)), Unit: "tube",
		From:   fmt.Sprintf("%s of bead of %s in %d lines across the rows, %s apart: %.0f ml", k.long(length), k.say(g.Bead), lines, k.say(g.Apart), ml),
		Source: SrcGlue + "; " + fasten.SrcGlue, Do: "Elastomeric, of a kind that the boards' maker names; boards are pressed into it wet, and nailed."}
	if k.f.Under.Glue != site.Yes {
		l.Notes = append(l.Notes, "taken since boards are wider than "+k.say(fasten.Wide)+" and neither glue nor a sheet is written under site")
	}
	k.add(l)
}
