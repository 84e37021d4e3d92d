package paper

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"strake/goods"
	"strake/plan"
	"strake/quote"
	"strake/schedule"
	"strake/stock"
	"strake/words"
)

// law is said before anything that two people sign.
const law = "Local law on contracts, licences, the rights of whoever buys, and taxes comes before anything written here. Where it asks for a form, a licence, a right to withdraw or a limit on what is paid in advance, that holds. This sheet is a help to write one, and no legal advice."

// quoter makes the parts of a quote.
type quoter struct {
	p   plan.Plan
	ps  []plan.Purchase
	l   goods.List
	c   schedule.Calendar
	t   quote.Terms
	sum quote.Sum
}

// Quote is what a small installer asks for a floor, to be signed by both: scope, what
// is not in it, hours, materials, what it comes to, conditions. The list of goods has
// the boards in it; the calendar tells the hours.
func Quote(p plan.Plan, ps []plan.Purchase, l goods.List, c schedule.Calendar) Form {
	q := quoter{p, ps, l, c, p.Job.Quote, p.Quote(l, c)}
	f := Form{Name: p.Job.Name, Title: q.title(), Lead: []string{law}}
	f.add(FormPart{Head: "Between", Lines: q.between()})
	f.add(FormPart{Head: "What is done", Lines: q.scope()})
	f.add(FormPart{Head: "Not included", Lines: said(q.excluded()...)})
	f.add(FormPart{Head: "Not known when this was written, so not in the price", Lines: q.untold()})
	f.add(q.hours())
	f.add(q.materials())
	f.add(FormPart{Head: "Bought by whom the floor is for", Lines: q.owner()})
	f.add(q.total())
	f.add(FormPart{Head: "Still open, so that there is no total", Lines: q.open()})
	f.add(FormPart{Head: "Conditions", Lines: said(q.conditions()...)})
	f.add(FormPart{Head: "Payment", Lines: q.payment()})
	f.add(FormPart{Head: "Signed", Lines: signatures("For who lays it", "For whom it is laid")})
	return f
}

// title says what kind of price it is; a blank sheet says neither.
func (q quoter) title() string {
	switch {
	case len(q.sum.Open) > 0:
		return "quote, with blanks to fill in"
	case q.t.Fixed:
		return "quote, fixed price"
	}
	return "quote, an estimate"
}

func (q quoter) between() []FormLine {
	out := []FormLine{filled("Whom the floor is for", q.t.For), filled("Who lays it", q.t.By), filled("Licence and insurance", q.t.Licence)}
	date, until := "", ""
	if q.t.Date > 0 {
		date = q.t.Date.Said()
	}
	if u := q.t.Until(); u > 0 {
		until = u.Said()
	} else if q.t.Valid > 0 {
		until = fmt.Sprintf("%d days from the day of the quote", q.t.Valid)
	}
	return append(out, filled("Day of the quote", date), filled("Valid until", until))
}

// scope is the floor, what meets it, and each step of the work.
func (q quoter) scope() []FormLine {
	s := &summary{p: q.p, say: words.In(q.p.Job.Unit)}
	var out []FormLine
	for _, r := range q.p.Floor.Rooms {
		out = append(out, FormLine{What: "Room", Says: s.room(r)})
	}
	out = append(out, FormLine{What: "Boards", Says: boardsWords(q.p)})
	last := ""
	for i := range q.p.Fields {
		if t := cmp.Or(words.FieldText(q.p, i), q.p.Layout.Why); t != last && t != "" {
			out, last = append(out, FormLine{What: "Direction", Says: t}), t
		}
	}
	out = append(out, openingWords(q.p)...)
	for _, st := range q.c.Steps {
		if st.Out != "" {
			continue
		}
		var of []string
		for _, x := range st.Parts {
			of = append(of, x.Of)
		}
		out = append(out, FormLine{What: st.What, Says: strings.Join(of, "; ")})
	}
	return out
}

// boardsWords are the boards of the job.
func boardsWords(p plan.Plan) string {
	b, say := p.Job.Boards, words.In(p.Job.Unit)
	var faces []string
	for _, w := range b.Each() {
		faces = append(faces, say.Rip(w.Face))
	}
	name := cmp.Or(b.Name, b.Species, "kind not told")
	if b.Name != "" && b.Species != "" && !strings.Contains(b.Name, b.Species) {
		name += ", " + b.Species
	}
	out := fmt.Sprintf("%s; face %s", name, strings.Join(faces, ", "))
	if b.Thickness > 0 {
		out += ", " + say.Rip(b.Thickness) + " thick"
	}
	if b.Known == stock.MixOnly || p.Lay.Example {
		out += "; their lengths are not yet known one by one"
	}
	return out
}

// openingWords are the openings with what lies there, and base and shoe.
func openingWords(p plan.Plan) []FormLine {
	var out []FormLine
	say := words.In(p.Job.Unit)
	strip := map[string]string{}
	for _, o := range p.Stripped() {
		strip[o.Name] = "a strip whose kind hangs on the height beyond, which is not told"
		if o.Strip != "" {
			strip[o.Name] = string(o.Strip)
		}
	}
	higher := map[string]string{}
	if s, ok := p.HeightSheet(); ok {
		l := heightLister{style: heightStyle(p.Job.Unit)}
		for _, m := range s.Meetings {
			if m.Known {
				higher[m.Name] = "this floor comes out " + l.higher(m.Diff)
				if m.Diff == 0 {
					higher[m.Name] = "both floors at one height"
				}
			}
		}
	}
	for _, d := range p.Job.Sketch.Doorways {
		s := strip[d.Name]
		if s == "" && d.Beyond != "room" {
			s = "met flush"
		}
		if s == "" {
			continue
		}
		if h := higher[d.Name]; h != "" {
			s += "; " + h
		}
		out = append(out, FormLine{What: "Opening", Says: d.Name + ", " + say.Of(d.Width) + ": " + s})
	}
	for _, s := range p.Job.Sketch.Stays {
		t := "the floor goes round it"
		if strip[s.Name] != "" {
			t += "; " + strip[s.Name]
		}
		out = append(out, FormLine{What: "Stays", Says: s.Name + ": " + t})
	}
	for _, m := range []struct {
		what  string
		thick bool
		way   goods.Way
	}{{"Base", p.Job.Base > 0, p.Job.Goods.Filled().Base}, {"Shoe", p.Job.Shoe > 0, p.Job.Goods.Filled().Shoe}} {
		if m.thick {
			out = append(out, FormLine{What: m.what, Says: map[goods.Way]string{goods.Refit: "what is there comes off and goes on again", goods.Buy: "new", goods.NoWay: "none goes on"}[m.way]})
		}
	}
	return out
}

// done tells whether a step of the schedule is in it.
func (q quoter) done(key string) bool {
	for _, s := range q.c.Steps {
		if s.Key == key && s.Out == "" {
			return true
		}
	}
	return false
}

// excluded is what is not in the price, by what the plan does not hold.
func (q quoter) excluded() []string {
	out := append([]string(nil), q.t.Excluded...)
	if !q.done("finish") {
		out = append(out, "Sanding, staining and finishing of the boards.")
	}
	if !q.done("overlay") {
		out = append(out, "Panels over the subfloor, and new subfloor.")
	}
	return append(out,
		"Taking out or making safe what holds asbestos or lead: a licensed firm does that, on a contract of its own.",
		"Gas, water, drains, electricity, heating: licensed trades part and join them again.",
		"Work on joists, beams and whatever carries the floor.",
		"Painting, filling and caulking of base, casings, doors and walls.",
		"What is written nowhere above.")
}

// untold are steps that may be needed for all that is known.
func (q quoter) untold() []FormLine {
	var out []FormLine
	for _, s := range q.c.Steps {
		if s.Untold {
			out = append(out, FormLine{What: s.What, Says: s.Out})
		}
	}
	return out
}

func (q quoter) currency() string { return q.p.Currency() }

// cells are an amount of something with what it costs.
func cells(of string, m goods.Money) []string {
	if !m.Told {
		return []string{of, "", "______", ""}
	}
	return []string{of, fmt.Sprintf("%.2f", m.Low), fmt.Sprintf("%.2f", m.Likely), fmt.Sprintf("%.2f", m.High)}
}

// rateWords says a price as it was written.
func rateWords(m goods.Money, currency string) string {
	if !m.Told {
		return strings.TrimSpace("______ " + currency)
	}
	s := fmt.Sprintf("%.2f", m.Likely)
	if m.Low != m.High {
		s = fmt.Sprintf("%.2f to %.2f", m.Low, m.High)
	}
	return strings.TrimSpace(s + " " + currency)
}

// hours are the steps with their hours at the rate.
func (q quoter) hours() FormPart {
	part := FormPart{Head: "Hours" + inCurrency(q.currency()), Columns: []string{"hours", "low", "likely", "high"}}
	for _, s := range q.sum.Steps {
		part.Lines = append(part.Lines, FormLine{What: s.What, Cells: cells(fmt.Sprintf("%.2f", s.Hours), s.Money)})
	}
	part.Lines = append(part.Lines, FormLine{What: "all hours", Cells: cells(fmt.Sprintf("%.2f", q.sum.Hours), q.sum.Labour), Sum: true})
	who := map[schedule.Crew]string{schedule.Helped: "two people, the first time", schedule.Experienced: "one person who has laid floors before"}[q.c.Job.Crew]
	if who == "" {
		who = "one person, for the first time"
	}
	rate := "at " + rateWords(q.t.Rate, q.currency()) + " for an hour of one person"
	if q.sum.Hands == 2 {
		rate += ", and " + rateWords(moneyOr(q.t.Helper, q.t.Rate), q.currency()) + " for one of the second; hours of both are counted"
	}
	part.Notes = append(part.Notes, fmt.Sprintf("Hours are reckoned, not known: by the rates of strake schedule for %s, %s.", who, rate))
	if q.c.Job.Crew != schedule.Experienced {
		part.Notes = append(part.Notes, "Whoever lays floors for a living is quicker: write who: experienced under schedule, and rates of your own.")
	}
	from := "the job"
	if !q.t.OffTold {
		from = quote.SrcOff
	}
	part.Notes = append(part.Notes, fmt.Sprintf("Low and high: %.0f %% fewer hours, and more [%s].", 100*q.sum.Off, from))
	return part
}

func moneyOr(m, or goods.Money) goods.Money {
	if m.Told {
		return m
	}
	return or
}

// materials are the goods at cost.
func (q quoter) materials() FormPart {
	part := FormPart{Head: "Materials, at cost" + inCurrency(q.currency()), Columns: []string{"count", "low", "likely", "high"}}
	for _, x := range q.sum.Goods {
		part.Lines = append(part.Lines, FormLine{What: x.What, Cells: cells(HowMany(x.Count, x.Unit), x.Total())})
	}
	if len(part.Lines) == 0 {
		return part
	}
	label := "all materials"
	for _, x := range q.sum.Goods {
		if !x.Each.Told {
			label = "all materials that have a price"
		}
	}
	part.Lines = append(part.Lines, FormLine{What: label, Cells: cells("", q.sum.Cost), Sum: true})
	part.Notes = append(part.Notes, "Tools and protective gear are the installer's own; what is rented for this job is listed.")
	return part
}

func (q quoter) owner() []FormLine {
	var out []FormLine
	for _, x := range q.sum.Owner {
		out = append(out, FormLine{What: x.What, Says: HowMany(x.Count, x.Unit)})
	}
	return out
}

// total is what hours, goods and the rest come to. With something open it says what is
// known so far, and leaves the total blank.
func (q quoter) total() FormPart {
	part := FormPart{Head: "What it comes to" + inCurrency(q.currency()), Columns: []string{"", "low", "likely", "high"}}
	add := func(what string, m goods.Money, sum bool) {
		part.Lines = append(part.Lines, FormLine{What: what, Cells: cells("", m), Sum: sum})
	}
	add("hours", q.sum.Labour, false)
	if len(q.sum.Goods) > 0 {
		add("materials", q.sum.Cost, false)
		name := "markup on materials"
		if q.t.MarkupTold {
			name = fmt.Sprintf("markup on materials, %.4g %%", 100*q.t.Markup)
		}
		add(name, q.sum.Markup, false)
	}
	for _, x := range q.t.Also {
		add(x.What, x.Price, false)
	}
	prices := q.p.Job.Goods.Prices
	name := "tax"
	if prices.TaxTold {
		on := "materials with their markup"
		if q.t.TaxOn == quote.OnAll {
			on = "all of it"
		}
		name = fmt.Sprintf("tax, %.4g %% on %s", 100*prices.Tax, on)
	}
	add(name, q.sum.Tax, false)
	if len(q.sum.Open) > 0 {
		add("known so far", q.sum.All, true)
		part.Lines = append(part.Lines, FormLine{What: "total, once all is filled in", Cells: []string{"", "", "______", ""}})
		return part
	}
	add("total of what is listed", q.sum.All, true)
	switch {
	case q.t.Fixed:
		part.Notes = append(part.Notes, fmt.Sprintf("The price is fixed: %s. Low and high say how far the reckoning may be off; they are the risk of who lays it.", rateWords(goods.Exactly(q.sum.All.Likely), q.currency())))
	default:
		part.Notes = append(part.Notes, "An estimate: hours really worked and goods really bought are charged. Over the high nothing is charged that was not agreed in writing before.")
	}
	part.Notes = append(part.Notes, "On what the tax is, local law says.")
	return part
}

// where says where what is open is written.
var where = []struct{ open, key string }{
	{"the rate of an hour", "rate, under quote"},
	{"the markup on materials", "markup, under quote; 0 for none"},
	{"tax", "tax, under prices; 0 for none"},
	{"how many cartons of boards, and their price", "carton: {area: , price: } under boards, and the lengths that are known of them"},
}

func (q quoter) open() []FormLine {
	var out []FormLine
	var prices []string
	for _, o := range q.sum.Open {
		if s, ok := strings.CutPrefix(o, "the price of "); ok {
			prices = append(prices, s)
			continue
		}
		key := "lengths, under boards" // what is not counted is counted board by board
		for _, w := range where {
			if w.open == o {
				key = w.key
			}
		}
		out = append(out, FormLine{What: strings.ToUpper(o[:1]) + o[1:], Says: "write " + key})
	}
	if len(prices) > 0 {
		out = append(out, FormLine{What: "Prices", Says: "write them under prices, or fill them in by hand: " + strings.Join(prices, "; ")})
	}
	return out
}

// conditions are what has to hold for the price to.
func (q quoter) conditions() []string {
	extra := fmt.Sprintf("by the hour at %s, goods at cost with the markup above, and only what both have agreed in writing before", rateWords(q.sum.Extra, q.currency()))
	out := append([]string(nil), q.t.Conditions...)
	out = append(out,
		"Not one board is laid before readings of the subfloor and of the boards say go, whatever the calendar says: days of work move with them. "+q.c.Work.Hold.Says(),
		"The house is kept at the air it is lived in, before the boards come, while they are laid and after.",
		"A subfloor that is found to be uneven, wet, rotten, loose or not fit to hold a nail is made good "+extra+".",
		"Nothing old that may hold asbestos, and no paint that may hold lead, is sanded, scraped, sawn or broken before a laboratory has tested it. What a test finds is outside of this price, and the days move.",
		"Damage that nobody could see, such as rot, insects, leaks, or pipes and cables that nobody told of: work stops at that place until both have agreed; then "+extra+".")
	out = append(out, q.cartons()...)
	out = append(out, "Whoever the floor is for tells of every pipe, cable and heating under the floor before the first nail, and empties cupboards that have to be moved.",
		"Boards of one lot are bought together; what is left over of them stays in the house for repairs, with its lot written down.")
	if q.t.Until() == 0 && q.t.Valid == 0 {
		out = append(out, "Valid only until the day written above; without one, until it is withdrawn.")
	}
	return out
}

// cartons says what stands behind the number of cartons.
func (q quoter) cartons() []string {
	var out []string
	for _, x := range q.ps {
		if x.Advised == 0 {
			continue
		}
		l := x.Of(x.Wants.Layer)
		short := "not known"
		if i := l.Advised - x.Fewest; i >= 0 && i < len(l.Choices) {
			short = chance(l.Choices[i].Short)
		}
		more := "is charged like the others"
		if slices.Contains(q.t.Owner, goods.Boards) {
			more = "is bought like the others, by whom the floor is for"
		}
		out = append(out, fmt.Sprintf("%s of %s are counted, %d of them to keep for repairs. The chance that the others do not do: %s (simulated, and no promise); a further one %s.",
			cartons(x.Advised), words.In(q.p.Job.Unit).Rip(x.Boards.Face), x.Wants.Spares, short, more))
	}
	return out
}

func (q quoter) payment() []FormLine {
	if len(q.t.Payment) == 0 {
		return []FormLine{{What: "How it is paid", Blanks: 2}}
	}
	return said(q.t.Payment...)
}

// signatures are lines for both to sign.
func signatures(names ...string) []FormLine {
	var out []FormLine
	for _, n := range names {
		out = append(out, FormLine{What: n + ", name", Blanks: 1}, FormLine{What: "  place and day", Blanks: 1}, FormLine{What: "  signature", Blanks: 1})
	}
	return out
}
