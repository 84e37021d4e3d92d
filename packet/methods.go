package packet

import (
	"strings"

	"strake/method"
	"strake/sheet"
)

// methods are the cards of hand work, one a page; a card that is a little too long for
// the paper is set smaller.
func (d *desk) methods() {
	for _, k := range method.Cards(d.in.Plan) {
		l := plainLeaf(d.paper, "How it is done: "+strings.ReplaceAll(k.Name, "-", " "))
		d.pages = append(d.pages, l)
		for _, by := range []float64{1, 0.97, 0.94, 0.91, 0.88} {
			items, fits := k.On(l.body.w/by, l.body.h/by)
			if fits || by == 0.88 {
				l.Put(sheet.Moved(items, sheet.Pt{X: l.body.x, Y: l.body.y}, by)...)
				break
			}
		}
	}
}
