package packet

import (
	"strake/detail"
	"strake/sheet"
)

// details are drawings of edges, openings and turns at full or half size, as many on a
// page as go there.
func (d *desk) details() {
	all := detail.Of(d.in.Plan)
	if len(all) == 0 {
		return
	}
	f := d.open("Details", false)
	for _, x := range all {
		f.detail(x)
	}
}

// detail sets one drawing with its title above and its notes below it.
func (f *flow) detail(x detail.Detail) {
	var lines []string
	for _, s := range x.Notes {
		lines = append(lines, sheet.WrapPrinted(s, note, f.body.w-3, false)...)
	}
	title := sheet.WrapPrinted(x.Title, subtitle, f.body.w-40, true)
	high := float64(len(title))*subtitle*leading + x.H + float64(len(lines))*note*leading + 8
	f.need(high)
	for i, l := range title {
		f.write(l, f.body.x, f.y+subtitle, subtitle, true)
		if i == 0 {
			f.Put(sheet.Text{Text: x.Scale, At: sheet.Pt{X: f.body.x + f.body.w, Y: f.y + subtitle}, Size: body, Anchor: sheet.End, Ink: sheet.Black})
		}
		f.y += subtitle * leading
	}
	f.gap(1)
	f.Put(sheet.Moved(x.Items, sheet.Pt{X: f.body.x + max(0, f.body.w-x.W)/2, Y: f.y}, 1)...)
	f.y += x.H + 1
	for _, l := range lines {
		f.write(l, f.body.x+1.5, f.y+note, note, false)
		f.y += note * leading
	}
	f.gap(6)
}
