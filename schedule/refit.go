package schedule

// laid tells whether a row is done.
func (j Job) laid(number int) bool {
	for _, d := range j.Done {
		if d.First <= number && number <= d.Last {
			return true
		}
	}
	return false
}

// Refit is what rows really done say of the rates.
type Refit struct {
	Rows          int     // rows, or parts of rows, that were done
	Took, Planned float64 // hours
	Factor        float64 // rates of rows are multiplied by it
	Strange       []Done  // that name rows the plan does not have
}

// refit is how many times the hours of the rates rows really took, over all that
// were done. One figure for all ways of laying: a few rows do not tell more.
func (p planner) refit() Refit {
	r := Refit{Factor: 1}
	for _, d := range p.j.Done {
		planned, rows := 0.0, 0
		for _, x := range p.w.Rows {
			if x.Number < d.First || x.Number > d.Last {
				continue
			}
			rows++
			for z, word := range zoneWords {
				planned += p.part(word.rate, x.SqFt[z], "").Hours
			}
		}
		if rows == 0 {
			r.Strange = append(r.Strange, d)
			continue
		}
		r.Rows += rows
		r.Took += d.Hours
		r.Planned += planned
	}
	if r.Planned > 0 && r.Took > 0 {
		r.Factor = r.Took / r.Planned
	}
	return r
}
