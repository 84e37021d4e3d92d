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
	f.gap(1)
	t := table{cols: []column{{name: ""}, {name: "what", bold: true}, {name: "where"}, {name: "measured"}, {name: "limit"}, {name: "what to do"}}, size: working}
	var from cited
	for _, say := range paper.Says {
		named := false
		for _, v := range vs {
			if v.Say != say {
				continue
			}
			if !named {
				t.rows, named = append(t.rows, []string{capital(string(say))}), true
			}
			t.rows = append(t.rows, []string{toTick, v.Rule, v.Where, v.Measured, v.Limit + from.marks(v.Source), v.Do})
		}
	}
	f.table(t)
	f.sources(from)
}
