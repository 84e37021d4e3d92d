package jobfile

import (
	"slices"
	"strconv"

	"github.com/goccy/go-yaml/ast"

	"strake/goods"
	"strake/quote"
	"strake/schedule"
)

var alsoTable = table[quote.Also]{fields: []field[quote.Also]{
	text("what", "What it is for.", func(a *quote.Also) *string { return &a.What }).must(),
	price("price", "What it costs.", func(a *quote.Also) *goods.Money { return &a.Price }).must(),
}}

// ownerMay are the groups that whoever the floor is for may buy.
var ownerMay = []goods.Group{goods.Boards, goods.Tear, goods.Under, goods.Fixing, goods.Strips, goods.Mould}

// ownerField reads the groups that the owner buys.
func ownerField() field[quote.Terms] {
	var names []string
	var enum []any
	for _, g := range ownerMay {
		names, enum = append(names, string(g)), append(enum, string(g))
	}
	s := shape{words: "a list of groups of the goods, such as [boards, base and shoe]", schema: map[string]any{"type": "array", "items": map[string]any{"enum": enum}}}
	return custom("owner_buys", "Goods that whoever the floor is for buys; they are listed without a price. The groups are boards, tear-out, under the boards, fixing, transitions and nosings, base and shoe.", s, func(d *decoder, n ast.Node, q *quote.Terms) {
		nodes, _ := d.items(n, s.words)
		for i, v := range nodes {
			d.under(strconv.Itoa(i), v, func(n ast.Node) {
				t, ok := d.text(n, "a group of the goods")
				switch {
				case !ok:
				case !slices.Contains(names, t):
					d.notOne(n.GetToken(), t, names)
				default:
					q.Owner = append(q.Owner, goods.Group(t))
				}
			})
		}
	})
}

func quoteField() field[draft] {
	tb := table[quote.Terms]{fields: []field[quote.Terms]{
		text("for", "Whom the floor is for: name and address.", func(q *quote.Terms) *string { return &q.For }).or("a blank"),
		text("by", "Who lays it: name and address.", func(q *quote.Terms) *string { return &q.By }).or("a blank"),
		text("licence", "Numbers of licence and insurance.", func(q *quote.Terms) *string { return &q.Licence }).or("a blank"),
		date("date", "The day of the quote.", func(q *quote.Terms) *schedule.Day { return &q.Date }).or("a blank"),
		whole("valid_days", "It is valid for so many days from then.", 1, 365, func(q *quote.Terms) *int { return &q.Valid }).or("a blank"),
		price("rate", "What an hour of one person costs.", func(q *quote.Terms) *goods.Money { return &q.Rate }).or("not known: there are hours, and no total"),
		price("helper_rate", "What an hour of the second person costs (who: with helper, under schedule).", func(q *quote.Terms) *goods.Money { return &q.Helper }).or("the same"),
		price("extra_rate", "What an hour costs of work that comes besides: a subfloor found bad, hidden damage.", func(q *quote.Terms) *goods.Money { return &q.Extra }).or("the rate"),
		percent("hours_off", "How far the hours may be off either way, in percent: makes the low and the high.", 90, func(q *quote.Terms) *float64 { return &q.Off }, func(q *quote.Terms) *bool { return &q.OffTold }).or("25: " + quote.SrcOff),
		percent("markup", "On what materials cost, in percent; 0 for none.", 500, func(q *quote.Terms) *float64 { return &q.Markup }, func(q *quote.Terms) *bool { return &q.MarkupTold }).or("not known: there is no total"),
		choice("tax_on", "What the tax (tax, under prices) is on: materials with their markup, or all. Local law decides.", []quote.TaxOn{quote.OnMaterials, quote.OnAll}, func(q *quote.Terms) *quote.TaxOn { return &q.TaxOn }).or("materials"),
		yes("fixed", "The likely total is a fixed price; else it is an estimate, and hours worked and goods bought are charged.", func(q *quote.Terms) *bool { return &q.Fixed }).or("no"),
		ownerField().or("nothing"),
		list("also", "What is charged besides hours and goods: travel, a permit, a dumpster.", "charge", alsoTable, func(_ *decoder, _ ast.Node, q *quote.Terms, a quote.Also) { q.Also = append(q.Also, a) }).or("nothing"),
		texts("not_included", "What is not included besides what the sheet says itself.", "[painting of the walls]", func(q *quote.Terms) *[]string { return &q.Excluded }).or("what follows from the plan"),
		texts("conditions", "Conditions of your own, besides those of the sheet.", "[water and current are there]", func(q *quote.Terms) *[]string { return &q.Conditions }).or("those of the sheet"),
		texts("payment", "How it is paid. Local law may limit what is asked before the work.", "[a third when boards are ordered, the rest when it is done]", func(q *quote.Terms) *[]string { return &q.Payment }).or("a blank"),
	}}
	return told(sub("quote", "What a small installer asks for the floor: strake quote writes the sheet.", tb, func(j *draft) *quote.Terms { return &j.Quote }), func(j *draft) { j.Quote.Told = true })
}

// quoted tells whether the quote has a price, and the path of one.
func (n *names) quoted() (string, bool) {
	q := n.j.Quote
	for _, x := range []struct {
		m   goods.Money
		key string
	}{{q.Rate, "rate"}, {q.Helper, "helper_rate"}, {q.Extra, "extra_rate"}} {
		if x.m.Told {
			return at("quote", x.key), true
		}
	}
	return at("quote", "also", "0", "price"), len(q.Also) > 0
}

// quote checks what a quote says of the rest of the job.
func (n *names) quote() {
	q, j := n.j.Quote, n.j
	if q.Helper.Told && j.Schedule.Crew != schedule.Helped {
		n.d.failPath(at("quote", "helper_rate"), "a second person has a rate, and none works by the schedule", "", "who: with helper, under schedule; or leave it out")
	}
	if q.Rate.Told && q.Rate.High == 0 {
		n.d.failPath(at("quote", "rate"), "an hour costs nothing", "0", "what an hour costs; or leave it out")
	}
	if q.TaxOn != "" && !j.Goods.Prices.TaxTold {
		n.d.failPath(at("quote", "tax_on"), "no tax is written that could be on it", string(q.TaxOn), "tax, in percent, under prices")
	}
	if len(q.Owner) > 0 && len(slices.Compact(slices.Sorted(slices.Values(q.Owner)))) < len(q.Owner) {
		n.d.failPath(at("quote", "owner_buys"), "one group is named twice", "", "each once")
	}
}
