package plan

import (
	"strake/goods"
	"strake/quote"
	"strake/schedule"
)

// Quote reckons up what an installer asks: for goods, those of the boards with them,
// and the hours of a calendar.
func (p Plan) Quote(l goods.List, c schedule.Calendar) quote.Sum {
	prices := p.Job.Goods.Prices
	return quote.Of(quote.Ask{Terms: p.Job.Quote, Steps: c.Steps, Crew: c.Job.Crew, Lines: l.Lines, Tax: prices.Tax, Taxed: prices.TaxTold})
}
