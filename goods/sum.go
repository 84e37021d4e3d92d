package goods

// Sum is what a list costs.
type Sum struct {
	Net, Tax, All Money
	Unpriced      []string // what is bought and has no price
}

// Cost adds up lines; tax is a share on top.
func Cost(ls []Line, tax float64) Sum {
	var s Sum
	for _, l := range ls {
		t := l.Total()
		if l.Bought() && !t.Told {
			s.Unpriced = append(s.Unpriced, l.What)
		}
		s.Net = s.Net.Plus(t)
	}
	s.Tax = s.Net.Times(tax)
	s.All = s.Net.Plus(s.Tax)
	return s
}
