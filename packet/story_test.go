package packet

import (
	"fmt"
	"strings"
	"testing"

	"strake/sheet"
)

// Strips that follow one another meet in match marks: as many halves at their feet as at
// their tops, one fewer than there are strips; each foot names where the next begins.
func TestStripsMatch(t *testing.T) {
	for _, name := range []string{"sail-loft", "ferry-parlour", "ticket-office"} {
		d := newDesk(made(t, name, shipped(t)[name]), Letter)
		fields, strips, feet, tops := 0, 0, 0, 0
		var begins, named []string
		d.storyStick()
		for _, l := range d.pages {
			if l.no == 1 {
				fields++
			}
			for _, it := range l.Items {
				if g, ok := it.(sheet.Polygon); ok && g.Fill == sheet.Mid {
					if r := g.Rings[0]; r[2].Y < r[0].Y {
						feet++
					} else {
						tops++
					}
				}
			}
			for _, x := range texts(l.Sheet) {
				if no, at, ok := strings.Cut(x.Text, ". top edge at "); ok {
					strips++
					if no != "1" {
						begins = append(begins, at)
					}
				}
				if at, ok := strings.CutPrefix(x.Text, "next strip from "); ok {
					named = append(named, at)
				}
			}
		}
		if feet != strips-fields || tops != feet || feet == 0 {
			t.Errorf("%s: %d strips of %d sticks, %d halves at feet, %d at tops", name, strips, fields, feet, tops)
		}
		if fmt.Sprint(begins) != fmt.Sprint(named) {
			t.Errorf("%s: strips begin at %v, feet name %v", name, begins, named)
		}
	}
}
