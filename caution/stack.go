package caution

import (
	"fmt"

	"strake/ready"
	"strake/wood"
)

// footprint is the floor that a carton of 20 sq ft covers, in square feet, where
// it is not told.
const footprint = 4.67

// stack holds a stack of cartons to what the floor carries.
func (w Work) stack() []ready.Verdict {
	s := w.Stack
	if s.High == 0 {
		return nil
	}
	r, unit := w.rule(FloorLoad)
	weight, known := s.weight(w)
	v := ready.Verdict{Rule: "cartons on the floor", Where: "stack", Source: r.Source}
	if !known {
		v.Say, v.Measured = ready.Look, fmt.Sprintf("%d high, of a weight not known", s.High)
		v.Do = "Write the weight of a carton under stack, or its area under boards and a species that is known."
		return one(v)
	}
	load := s.Load(weight, w.Carton)
	most, of := r.In(w.imperial(), unit)
	said, _ := ready.Ruling{Limit: ready.Limit{Is: load}}.In(w.imperial(), unit)
	v.Say, v.Measured, v.Limit = ready.Go, fmt.Sprintf("%d high, about %.0f %s", s.High, said.Is, of), "at most "+most.Words(of)
	if load > r.Is {
		v.Say = ready.Fix
		v.Do = fmt.Sprintf("Stack them %d high at most, spread along the walls and across the joists, in the rooms where they go.", int(r.Is/load*float64(s.High)))
		if load/float64(s.High) > r.Is {
			v.Do = "Lay cartons side by side with floor free between them; ask somebody licensed what this floor carries."
		}
	}
	return one(v)
}

// weight is the weight of a carton in pounds, told or by its boards.
func (s Stack) weight(w Work) (float64, bool) {
	if s.Pounds > 0 {
		return s.Pounds, true
	}
	per, ok := wood.PoundsPerSqFt(w.Species, w.Thickness)
	return per * w.Carton, ok && w.Carton > 0
}

// Load is what a stack puts on the floor that it covers, in pounds per square
// foot, with cartons of a weight in pounds and of so many square feet of boards.
func (s Stack) Load(pounds, boards float64) float64 {
	covers := s.Long.Inches() * s.Wide.Inches() / 144
	switch {
	case covers > 0:
	case boards > 0:
		covers = footprint * boards / 20
	default:
		covers = footprint
	}
	return float64(s.High) * pounds / covers
}
