package packet

import (
	"strconv"
	"strings"

	"strake/finding"
	"strake/paper"
	"strake/sheet"
)

// cover puts the first page before the others. It names their pages, which its own
// length moves; so it is made again until that is right.
func (d *desk) cover() {
	rest := d.pages
	for n := 1; ; n = len(d.pages) {
		d.pages = nil
		d.coverBefore(rest, n+1)
		if len(d.pages) <= n {
			break
		}
	}
	d.pages = append(d.pages, rest...)
}

// coverBefore is the job's figures, what was found, and where things stand.
func (d *desk) coverBefore(rest []*leaf, from int) {
	p := d.in.Plan
	f := d.open("Floor: "+p.Job.Name, false)
	f.para("Print at its own size (100 %, not fitted to the page) and measure the bar of 100 mm on a sheet of the story stick before anything is marked by it. Left and right are those of the drawings. Lengths are " + d.lengths() + ".")
	f.heading("Figures")
	for _, l := range strings.Split(strings.TrimRight(paper.Summary(p), "\n"), "\n")[1:] {
		if !strings.HasPrefix(l, " ") { // no figure: what the layout is
			f.para(l)
			continue
		}
		f.figureLine(l)
	}
	f.gap(1)
	f.small(decide)
	f.findings()
	f.contents(rest, from)
}

// decide is who decides, and where the packet says what is not cleared yet.
const decide = "What applies where you live is decided by local code and a licensed professional, then by the makers' instructions; this is a reminder and no more. What has to be cleared before the work is begun stands under May it be laid?"

// lengths says how lengths are rounded.
func (d *desk) lengths() string {
	if d.in.Plan.Job.Unit.Imperial() {
		return "to 1/16 in, rips to 1/32 in"
	}
	return "to 1 mm, rips to 0.5 mm"
}

// figureLine is a line of the summary: a word and what it says.
func (f *flow) figureLine(l string) {
	word, text, _ := strings.Cut(strings.TrimSpace(l), " ")
	text = strings.TrimSpace(text)
	f.need(f.size * leading)
	f.write(word, f.body.x, f.y+f.size, f.size, true)
	f.hung(text, 18, 0.3)
}

// findings are those that stop the plan, in full, and the warnings in a line each.
func (f *flow) findings() {
	n := 0
	for _, level := range []finding.Level{finding.Stop, finding.Warn} {
		for _, x := range f.d.in.Plan.Findings {
			if x.Level != level {
				continue
			}
			if n == 0 {
				f.heading("Findings")
			}
			n++
			if level == finding.Warn && n > most {
				continue
			}
			f.item(x.String())
		}
	}
	if n > most {
		f.para("More warnings stand in the list of findings beside this packet.")
	}
}

// most is how many findings the cover tells before it points elsewhere.
const most = 12

// contents lists the parts with their pages, the first of them being page from, in three
// columns.
func (f *flow) contents(rest []*leaf, from int) {
	f.heading("What is in here")
	var all []listed
	for i, l := range rest {
		if l.no == 1 {
			all = append(all, listed{strconv.Itoa(from + i), l.title})
		}
	}
	rows, w := (len(all)+columns-1)/columns, f.body.w/columns
	for i := range rows {
		f.need(note * 1.1 * leading)
		for k := range columns {
			if at := i + k*rows; at < len(all) {
				f.part(all[at], f.body.x+float64(k)*w, w-2)
			}
		}
		f.y += note * 1.1 * leading
	}
}

// listed is a part of the packet and the page it begins on.
type listed struct{ page, title string }

// part writes a part with its page, w mm wide.
func (f *flow) part(p listed, x, w float64) {
	y, size := f.y+note*1.1, note*1.1
	f.Put(bold(sheet.Text{Text: p.page, At: sheet.Pt{X: x + pageWide - 2, Y: y}, Size: size, Anchor: sheet.End, Ink: sheet.Black}))
	f.Put(fitted(p.title, sheet.Pt{X: x + pageWide, Y: y}, size, w-pageWide, sheet.Start))
}

// columns are those of the contents.
const columns = 3

// pageWide is the room for the number of a page, mm.
const pageWide = 9.0
