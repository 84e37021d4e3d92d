package packet

import (
	"strconv"
	"strings"

	"strake/finding"
	"strake/paper"
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
	f.small(paper.Decide)
	f.findings()
	f.contents(rest, from)
}

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
		f.para("More warnings stand in findings.txt.")
	}
}

// most is how many findings the cover tells before it points elsewhere.
const most = 12

// contents lists the parts with their pages, the first of them being page from.
func (f *flow) contents(rest []*leaf, from int) {
	f.heading("What is in here")
	t := table{cols: []column{{name: "page", w: 1, right: true}, {name: "", w: 12}}}
	for i, l := range rest {
		if l.no == 1 {
			t.rows = append(t.rows, []string{strconv.Itoa(from + i), l.title})
		}
	}
	f.table(t)
}
