package plan

import (
	"fmt"
	"math"

	"strake/goods"
	"strake/order"
	"strake/tape"
)

// terms are what cartons cost; Price is 0 where it is not told.
func (p Purchase) terms() order.Terms {
	return order.Terms{Price: p.Boards.Carton.Price, Trip: p.Wants.Trip, Refund: p.Wants.Refund}
}

// Cost is what a number of cartons costs on average by the layer of the job, running
// short included; not ok where no price is told. Cartons beyond those that every
// lay was done with cost what is not refunded of them.
func (p Purchase) Cost(cartons int) (float64, bool) {
	costs := p.Of(p.Wants.Layer).Costs
	i := cartons - p.Fewest
	if len(costs) == 0 || i < 0 {
		return 0, false
	}
	n := len(costs) - 1
	over := float64(max(0, i-n)) * p.Boards.Carton.Price * (1 - p.Wants.Refund)
	return costs[min(i, n)] + over, true
}

// Cartons are the lines of boards: what is advised, and what may come besides when
// it does not do, or cartons go back.
func (p Plan) Cartons(ps []Purchase) []goods.Line {
	var out []goods.Line
	for _, x := range ps {
		if x.Advised == 0 {
			continue
		}
		l := goods.Line{Group: goods.Boards, Item: goods.Carton, What: fmt.Sprintf("boards of %s, %s", tape.Paper(p.Job.Unit).Of(x.Boards.Face), tape.Paper(p.Job.Unit).Area(x.Boards.Carton.Area)),
			Count: x.Advised, Unit: "carton", From: fmt.Sprintf("%d with the risk accepted, %d kept for repairs", x.Advised-x.Wants.Spares, x.Wants.Spares)}
		if x.Boards.Carton.Price > 0 {
			l.Each = goods.Exactly(x.Boards.Carton.Price)
		}
		out = append(out, l)
		if m := x.besides(); m.Told {
			out = append(out, goods.Line{Group: goods.Besides, What: "running short, or cartons that go back", Count: 1, Unit: "chance", Each: m,
				From: "on average over the lays simulated; at the least all goes back that is not needed by the best of them, at the most one carton more in a second trip"})
		}
	}
	return out
}

// besides is what comes on top of the cartons bought, spares left out of it.
func (p Purchase) besides() goods.Money {
	l := p.Of(p.Wants.Layer)
	price := p.Boards.Carton.Price
	i := l.Advised - p.Fewest
	if price <= 0 || i < 0 || i >= len(l.Costs) {
		return goods.Money{}
	}
	m := goods.Money{Told: true, Likely: l.Costs[i] - float64(l.Advised)*price, Low: -float64(l.Advised-l.Best) * price * p.Wants.Refund}
	if l.Choices[i].Short > 0 {
		m.High = p.Wants.Trip + price
	}
	m.Low, m.High = min(m.Low, m.Likely), max(m.High, m.Likely)
	return m
}

// Reorder is the row before which a further carton has to be ordered.
type Reorder struct {
	Row, Rows int
	ADay      float64 // rows
	Source    string
}

// Reorder is for the rows of p; not ok where no lead time is told.
func (p Plan) Reorder() (Reorder, bool) {
	w := p.Job.Order
	r := Reorder{ADay: w.RowsADay, Source: "job file"}
	var area float64
	for _, f := range p.Fields {
		r.Rows += f.Layout.Rows
		area += f.Layout.Face.Area2().SquareFeet() / 2
	}
	if w.Lead == 0 || r.Rows == 0 {
		return r, false
	}
	if r.ADay == 0 {
		r.ADay, r.Source = math.Max(1, math.Round(float64(r.Rows)*order.PersonDay/math.Max(area, 1))), order.SrcPersonDay
	}
	r.Row = order.Deadline(r.Rows, r.ADay, w.Lead)
	return r, true
}

// bestOf is how many cartons the most sparing lay takes.
func bestOf(ns []order.Need, carton tape.Length) int {
	best := 0
	for i, n := range ns {
		if c := int((n.Taken + carton - 1) / carton); i == 0 || c < best {
			best = c
		}
	}
	return best
}
