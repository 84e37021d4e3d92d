package packet

import (
	"cmp"
	"strings"

	"strake/sheet"
)

// flow is a part of the packet that is filled from the top, over as many pages as it
// takes.
type flow struct {
	d      *desk
	title  string
	across bool
	says   string // what stands beside the title, if not the name of the job
	*leaf
	y    float64
	size float64 // of the writing
}

// open begins a part on a page of its own.
func (d *desk) open(title string, across bool) *flow {
	f := &flow{d: d, title: title, across: across, size: body}
	f.turn()
	return f
}

// openBeside begins a part on a page of its own, with something else than the job's name
// beside each title.
func (d *desk) openBeside(title, says string) *flow {
	f := &flow{d: d, title: title, says: says, size: body}
	f.turn()
	return f
}

// turn goes on on the next page.
func (f *flow) turn() {
	no := 1
	if f.leaf != nil {
		no = f.leaf.no + 1
	}
	job := f.d.in.Plan.Job.Name
	f.leaf = newLeaf(f.d.paper, f.across, cmp.Or(f.says, job), f.title, no)
	if f.says != "" {
		f.leaf.job = job
	}
	f.d.pages = append(f.d.pages, f.leaf)
	f.y = f.body.y
}

// left is how much of the page is left, mm.
func (f *flow) left() float64 { return f.body.y + f.body.h - f.y }

// need turns the page where less than h mm is left of it.
func (f *flow) need(h float64) {
	if f.left() < h && f.y > f.body.y {
		f.turn()
	}
}

func (f *flow) gap(h float64) { f.y += h }

// leading is the distance of lines over the size of their writing.
const leading = 1.4

// heading begins a part of the page; it is not left alone at its foot.
func (f *flow) heading(text string) {
	if f.y > f.body.y {
		f.gap(2.5)
	}
	f.need(subtitle*leading + 3*f.size*leading)
	for _, l := range sheet.WrapPrinted(text, subtitle, f.body.w, true) {
		f.write(l, f.body.x, f.y+subtitle, subtitle, true)
		f.y += subtitle * leading
	}
	f.line(f.body.x, f.y-0.4, f.body.x+f.body.w, f.y-0.4, thin)
	f.gap(1.2)
}

// para writes a paragraph.
func (f *flow) para(text string) { f.hung(text, 0, 0) }

// item writes a paragraph behind a dash.
func (f *flow) item(text string) {
	if text == "" {
		return
	}
	f.need(f.size * leading)
	f.write("–", f.body.x, f.y+f.size, f.size, false)
	f.hung(text, f.size*1.5, 0)
}

// step writes a paragraph behind its number.
func (f *flow) step(no, text string) {
	f.need(f.size * leading)
	f.write(no, f.body.x, f.y+f.size, f.size, true)
	f.hung(text, f.size*2.6, 0.6)
}

// tick writes a paragraph behind a box to tick.
func (f *flow) tick(text string) {
	f.need(f.size * leading)
	f.tickBox(f.body.x, f.y+f.size)
	f.hung(text, f.size*1.9, 0.5)
}

// tickBox draws a box to tick on a line of writing.
func (l *leaf) tickBox(x, base float64) {
	l.frame(box{x, base - 2.7, 3, 3}, sheet.White, rule)
}

// hung writes a paragraph indented, with some room after it.
func (f *flow) hung(text string, indent, after float64) {
	for _, l := range sheet.WrapPrinted(text, f.size, f.body.w-indent, false) {
		f.need(f.size * leading)
		f.write(l, f.body.x+indent, f.y+f.size, f.size, false)
		f.y += f.size * leading
	}
	f.gap(after)
}

// small writes in a smaller size what is needed seldom.
func (f *flow) small(text string) {
	size := f.size
	f.size = note
	f.para(text)
	f.size = size
}

// blanks draws lines to write on.
func (f *flow) blanks(n int) {
	for range n {
		f.need(8)
		f.y += 8
		f.line(f.body.x, f.y, f.body.x+f.body.w, f.y, faint)
	}
	f.gap(2)
}

// figure places a drawing in the middle of the page's width, w by h mm.
func (f *flow) figure(w, h float64, items []sheet.Item) {
	f.need(h)
	f.Put(sheet.Moved(items, sheet.Pt{X: f.body.x + max(0, f.body.w-w)/2, Y: f.y}, 1)...)
	f.y += h
}

// capital begins a text with a capital letter.
func capital(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}
