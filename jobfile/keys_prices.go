package jobfile

import (
	"slices"
	"strconv"

	"github.com/goccy/go-yaml/ast"

	"strake/goods"
)

// mostMoney is the highest price of one thing.
const mostMoney = 1e7

// price is a key whose value is a price, or a range of one.
func price[T any](key, doc string, to func(*T) *goods.Money) field[T] {
	one := map[string]any{"type": "number", "minimum": 0}
	s := shape{words: "a price such as 12.50, or its range such as [11, 14]", schema: map[string]any{"anyOf": []any{one, map[string]any{"type": "array", "items": one, "minItems": 2, "maxItems": 2}}}}
	return custom(key, doc, s, func(d *decoder, n ast.Node, t *T) {
		nodes, ok := d.items(n, s.words)
		if !ok {
			return
		}
		var xs []float64
		for i, v := range nodes {
			d.under(strconv.Itoa(i), v, func(n ast.Node) {
				if x, ok := d.figure(n, 0, mostMoney); ok {
					xs = append(xs, x)
				}
			})
		}
		switch {
		case len(xs) != len(nodes):
		case len(xs) == 1:
			*to(t) = goods.Exactly(xs[0])
		case len(xs) == 2 && xs[0] <= xs[1]:
			*to(t) = goods.Money{Told: true, Low: xs[0], Likely: (xs[0] + xs[1]) / 2, High: xs[1]}
		default:
			d.fail(start(n), "this is no range of a price", strconv.Itoa(len(xs))+" figures", "one price, or two with the lower first: [11, 14]")
		}
	})
}

func pricesField() field[draft] {
	fields := []field[goods.Prices]{
		text("currency", "What prices are in, such as USD.", func(p *goods.Prices) *string { return &p.Currency }).or("the currency of the boards"),
		percent("tax", "Tax on top of all prices, in percent.", 100, func(p *goods.Prices) *float64 { return &p.Tax }, func(p *goods.Prices) *bool { return &p.TaxTold }).or("none, or in the prices"),
	}
	for _, x := range goods.Items {
		doc := "The price of " + x.Of + "."
		if x.Long {
			doc = "The price of a foot of " + x.Of + ", or of a metre in a job of metric units."
		}
		f := price(string(x.Item), doc, func(p *goods.Prices) *goods.Money { return new(goods.Money) })
		read := price(string(x.Item), doc, func(m *goods.Money) *goods.Money { return m }).read
		f.read = func(d *decoder, n ast.Node, p *goods.Prices) {
			var m goods.Money
			if read(d, n, &m); m.Told {
				if p.Of == nil {
					p.Of = map[goods.Item]goods.Money{}
				}
				p.Of[x.Item] = m
			}
		}
		fields = append(fields, f.or("not known: the total is without it"))
	}
	return told(sub("prices", "What the goods cost; the price of a carton stands under boards, carton.", table[goods.Prices]{fields: fields}, func(j *draft) *goods.Prices { return &j.Goods.Prices }), func(j *draft) { j.Goods.Prices.Told = true })
}

// priced tells whether a price is written anywhere in the job but for cartons, and
// the path of one.
func (n *names) priced() (string, bool) {
	for _, x := range goods.Items {
		if _, ok := n.j.Goods.Prices.Of[x.Item]; ok {
			return at("prices", string(x.Item)), true
		}
	}
	for _, t := range n.j.Goods.Tools {
		for _, x := range []struct {
			m   goods.Money
			key string
		}{{t.Daily, "daily"}, {t.Price, "price"}} {
			if x.m.Told {
				return at("goods", "tools", t.Name, x.key), true
			}
		}
	}
	return n.quoted()
}

// goods checks what the job says of goods and prices.
func (n *names) goods() {
	g, b := &n.j.Goods, n.j.Boards
	path, priced := n.priced()
	switch {
	case priced && g.Prices.Currency == "" && b.Currency == "":
		n.d.failPath(path, "a price without a currency", "", "currency: USD, or another, under prices")
	case g.Prices.Currency != "" && b.Currency != "" && g.Prices.Currency != b.Currency:
		n.d.failPath(at("prices", "currency"), "boards are priced in another currency", g.Prices.Currency+", and "+b.Currency+" under boards", "one currency for all prices of a job")
	}
	if r := g.Filled().Roll; r.Lap*2 > r.Width {
		n.d.failPath(at("goods", "roll", "lap"), "sheets would lie over each other by more than half", "", "a lap of at most half the roll's width")
	}
	for _, t := range g.Tools {
		path := at("goods", "tools", t.Name)
		switch {
		case !slices.Contains(goods.ToolNames, t.Name):
			n.d.failPath(path+keyOf, "no tool of the list has this name", t.Name, suggest(t.Name, goods.ToolNames))
		case t.Have != goods.Rent && (t.Days > 0 || t.Daily.Told):
			n.d.failPath(path, "days and daily go with what is rented", string(t.Have), "have: rent; or leave them out")
		case t.Have != goods.BuyOne && t.Price.Told:
			n.d.failPath(at("goods", "tools", t.Name, "price"), "a price goes with what is bought", string(t.Have), "have: buy; or daily, with have: rent")
		}
	}
}
