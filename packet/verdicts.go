package packet

import (
	"strake/paper"
	"strake/ready"
)

// verdicts are what stands in the way of laying, and what was looked at.
func (d *desk) verdicts() {
	vs := d.in.Plan.Ready()
	f := d.open("May it be laid?", false)
	f.para(paper.Lead[ready.Worst(vs)])
	f.small(paper.Ranks)
	for _, say := range paper.Says {
		t := table{cols: []column{{name: "", w: 0.8}, {name: "what", w: 4, bold: true}, {name: "where", w: 3}, {name: "measured", w: 4}, {name: "limit", w: 4}, {name: "what to do", w: 6}}, size: note * 1.05}
		for _, v := range vs {
			if v.Say == say {
				t.rows = append(t.rows, []string{toTick, v.Rule, v.Where, v.Measured, v.Limit, v.Do})
			}
		}
		if len(t.rows) == 0 {
			continue
		}
		f.titled(capital(string(say)), t)
	}
	f.small("Where each limit comes from: strake ready.")
}
