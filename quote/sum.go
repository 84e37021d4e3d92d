package quote

import (
	"slices"

	"strake/goods"
	"strake/schedule"
)

// Ask is what a quote is reckoned from.
type Ask struct {
	Terms Terms
	Steps []schedule.Step
	Crew  schedule.Crew
	Lines []goods.Line // boards and all else
	Tax   float64      // share
	Taxed bool         // Tax was told
}

// Labour is a step of the work with what it costs.
type Labour struct {
	What  string
	Hours float64 // of all hands, the likely ones
	Money goods.Money
}

// Sum is a quote reckoned up. Money that is not told is not known.
type Sum struct {
	Hands  int
	Off    float64
	Extra  goods.Money // an hour of what comes besides
	Steps  []Labour
	Hours  float64 // of all hands
	Labour goods.Money
	Goods  []goods.Line // charged for
	Owner  []goods.Line // bought by whom the floor is for
	Cost   goods.Money  // of Goods, as far as they are priced
	Markup goods.Money
	Also   goods.Money
	Tax    goods.Money
	All    goods.Money
	Open   []string // what has to be known before All is the price
}

// Of reckons a quote up.
func Of(a Ask) Sum {
	s := Sum{Hands: 1, Off: a.Terms.off(), Extra: a.Terms.extra()}
	if a.Crew == schedule.Helped {
		s.Hands = 2
	}
	s.labour(a)
	s.goods(a)
	for _, x := range a.Terms.Also {
		s.Also = s.Also.Plus(x.Price)
	}
	s.total(a)
	return s
}

// labour is each step that is done. With two people an hour is an hour of both.
func (s *Sum) labour(a Ask) {
	hour := a.Terms.Rate
	if s.Hands == 2 && hour.Told {
		second := a.Terms.Helper
		if !second.Told {
			second = hour
		}
		hour = hour.Plus(second)
	}
	for _, x := range a.Steps {
		h := x.Hours()
		if x.Out != "" || h == 0 {
			continue
		}
		l := Labour{What: x.What, Hours: h * float64(s.Hands), Money: spread(hour.Times(h), s.Off)}
		s.Steps, s.Hours, s.Labour = append(s.Steps, l), s.Hours+l.Hours, s.Labour.Plus(l.Money)
	}
	if !hour.Told {
		s.Open = append(s.Open, "the rate of an hour")
	}
}

// spread lets money be off by a share either way.
func spread(m goods.Money, off float64) goods.Money {
	m.Low, m.High = m.Low*(1-off), m.High*(1+off)
	return m
}

// goods is what is charged for: neither what the owner buys nor what an installer
// has or keeps, such as tools and protection.
func (s *Sum) goods(a Ask) {
	for _, x := range a.Lines {
		switch {
		case x.Uncounted && !slices.Contains(a.Terms.Owner, x.Group):
			s.Open = append(s.Open, "how many "+x.What)
		case x.Count == 0 || x.Group == goods.Gear || x.Group == goods.Besides || x.Group == goods.Tools && x.Unit != "day":
		case slices.Contains(a.Terms.Owner, x.Group):
			s.Owner = append(s.Owner, x)
		case !x.Bought():
		default:
			s.Goods, s.Cost = append(s.Goods, x), s.Cost.Plus(x.Total())
			if !x.Each.Told {
				s.Open = append(s.Open, "the price of "+x.What)
			}
		}
	}
	boards := func(x goods.Line) bool { return x.Group == goods.Boards }
	if !slices.ContainsFunc(a.Lines, boards) && !slices.Contains(a.Terms.Owner, goods.Boards) {
		s.Open = append(s.Open, "how many cartons of boards, and their price")
	}
	if len(s.Goods) == 0 {
		return
	}
	if a.Terms.MarkupTold {
		s.Markup = s.Cost.Times(a.Terms.Markup)
	} else {
		s.Open = append(s.Open, "the markup on materials")
	}
}

func (s *Sum) total(a Ask) {
	goodsToo := s.Cost.Plus(s.Markup)
	net := goodsToo.Plus(s.Labour).Plus(s.Also)
	on := goodsToo
	if a.Terms.TaxOn == OnAll {
		on = net
	}
	if a.Taxed {
		s.Tax = on.Times(a.Tax)
	} else {
		s.Open = append(s.Open, "tax")
	}
	s.All = net.Plus(s.Tax)
}
