package packet

import "strake/paper"

// cautions are what to mind with each task.
func (d *desk) cautions() {
	f := d.open("What to mind, task by task", false)
	f.para(paper.Decide)
	task := ""
	for _, c := range d.in.Plan.Cautions() {
		if c.Task != task {
			task = c.Task
			f.heading(capital(task))
		}
		f.item(c.Do)
		size := f.size
		f.size = note
		f.hung("After: "+c.Source, body*1.5, 0.6)
		f.size = size
	}
}
