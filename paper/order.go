package paper

import (
	"cmp"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"

	"strake/order"
	"strake/plan"
	"strake/stock"
	"strake/tape"
	"strake/words"
)

// layers are the ways to lay as they are said.
var layers = map[order.Layer]string{
	order.Strict:  "a strict layer (boards as they come, rests thrown away)",
	order.Careful: "a careful layer (a pile of rests, eight boards to choose from)",
	order.Planned: "laid by a plan of the boards that are there",
}

// Order is what has to be bought, as text: cartons against the chance of running
// short.
func Order(p plan.Plan, ps []plan.Purchase) string {
	var b strings.Builder
	b.WriteString(head(p.Job.Name, "what to buy", false))
	for i, x := range ps {
		if i > 0 {
			b.WriteString("\n")
		}
		o := orderText{&b, p, x, words.In(p.Job.Unit)}
		o.write(len(ps) > 1)
	}
	return b.String()
}

// noCarton is said where an answer in cartons cannot be given.
const noCarton = "Write the area of a carton under boards (carton: {area: 20 sq ft}) for the answer in cartons."

// Bought is what is said of boards of one width that have to be bought.
type Bought struct {
	Advice  []string
	Unknown bool // nothing can be said
	Layers  []order.Layer
	Chances [][]string // a line for each number of cartons: how many, then for each layer the chance of running short and what is left, then what it is
	Reorder string
	Stands  []string // figures that the answer stands on, with their sources
}

// BoughtOf says it.
func BoughtOf(p plan.Plan, x plan.Purchase) Bought {
	if x.Unknown {
		return Bought{Unknown: true}
	}
	o := orderText{nil, p, x, words.In(p.Job.Unit)}
	out := Bought{Advice: o.advised(), Reorder: o.reorder(), Stands: o.stands()}
	if s := o.stopped(); s != "" {
		out.Advice = append(out.Advice, s)
	}
	for _, l := range x.Layers {
		out.Layers = append(out.Layers, l.Layer)
	}
	if x.Carton == 0 {
		out.Advice, out.Stands = []string{inBoards(p, x.Boards)}, nil // what chances stand on says nothing here
		return out
	}
	if !x.Counted() {
		return out
	}
	for c := x.Fewest; c <= o.last(); c++ {
		line := []string{strconv.Itoa(c)}
		for _, l := range x.Layers {
			line = append(line, o.cell(l, c))
		}
		out.Chances = append(out.Chances, append(line, strings.TrimPrefix(o.mark(c), "  <- ")))
	}
	return out
}

// inBoards says what a plan takes where no carton is known.
func inBoards(p plan.Plan, b stock.Boards) string {
	used := 0
	for _, x := range p.Lay.Boards {
		if _, ok := p.Job.Boards.OfPitch(x.Width); !ok || len(p.Job.Boards.Widths) == 0 || x.Width == b.Pitch() {
			used++
		}
	}
	switch b.Known {
	case stock.Tallied:
		have := 0
		for _, c := range b.Tally {
			have += c.Count
		}
		return fmt.Sprintf("%d boards are counted, the plan lays %d: %d to spare. None is to be bought for it; keep what is over for repairs.", have, used, have-used)
	case stock.OneSize:
		return fmt.Sprintf("The plan lays %d boards of %s. What a carton holds is not in the job, so cartons are not told.", used, words.In(p.Job.Unit).Of(b.One))
	}
	return fmt.Sprintf("The plan lays %d boards of an example of the lengths. What a carton holds is not in the job, so cartons are not told.", used)
}

type orderText struct {
	b   *strings.Builder
	p   plan.Plan
	x   plan.Purchase
	say words.Lengths
}

func (o orderText) write(several bool) {
	if several {
		fmt.Fprintf(o.b, "Boards of %s\n\n", o.say.Rip(o.x.Boards.Face))
	}
	if o.x.Unknown {
		wrap(o.b, "Nothing is known of the lengths of the boards, so nothing can be laid over and over. Write a mix, a tally or one length under lengths.", "", "")
		return
	}
	floor := o.x.Model.Floor()
	wrap(o.b, fmt.Sprintf("The rows measure %s of %s board, %s of face.", o.long(floor), o.say.Rip(o.x.Boards.Face), o.area(floor)), "", "")
	o.advice()
	if !o.x.Counted() {
		return
	}
	o.parts()
	o.forced()
	if o.x.Carton == 0 {
		wrap(o.b, noCarton, "\n", "")
		return
	}
	o.table()
	o.curve()
	o.deadline()
	o.terms()
}

func (o orderText) long(l tape.Length) string {
	if o.p.Job.Unit.Imperial() {
		return fmt.Sprintf("%.0f ft", float64(l)/float64(tape.Foot))
	}
	return fmt.Sprintf("%.1f m", l.Millimetres()/1000)
}

func (o orderText) area(l tape.Length) string { return o.printed(o.x.Area(l)) }

// advice is the answer.
func (o orderText) advice() {
	first := "\n"
	for _, s := range o.advised() {
		wrap(o.b, s, first, "")
		first = ""
	}
}

// advised is the answer, a sentence or two each.
func (o orderText) advised() []string {
	w := o.x.Wants
	l := o.x.Of(w.Layer)
	switch {
	case o.x.Carton == 0:
		return nil
	case l.Lays == 0:
		return []string{"No cartons were counted, as the work was stopped before. strake order counts them."}
	case l.Advised == 0:
		return []string{fmt.Sprintf("No number of cartons that was tried runs short as seldom as %s: see below.", chance(w.Risk))}
	}
	keep := ""
	if w.Spares > 0 {
		keep = fmt.Sprintf(", and %d to keep for repairs: %d", w.Spares, o.x.Advised)
	}
	out := []string{fmt.Sprintf("Buy %s%s. By %s they run short on at most %s of such floors. The rule of ten per cent over the floor says %d.",
		cartons(l.Advised), keep, layers[w.Layer], chance(w.Risk), o.x.Ten)}
	if s := bought(o.x.Boards.Cartons, max(l.Advised, o.x.Advised)); s != "" {
		out = append(out, s)
	}
	if o.p.Job.Boards.Carton.Price > 0 {
		out = append(out, fmt.Sprintf("At %.2f a carton that is %s; the rule of ten per cent comes to %s.", o.p.Job.Boards.Carton.Price, o.money(o.x.Advised), o.money(o.x.Ten)))
	}
	return append(out, "Buy all of them from one lot. A carton fewer that has to be bought later may be of another lot, another shade, or no longer made.")
}

// bought says what is lacking where cartons were bought already.
func bought(have, want int) string {
	switch {
	case have == 0:
		return ""
	case have < want:
		return fmt.Sprintf("Bought already, by the job: %s; buy %d more, of the same lot.", cartons(have), want-have)
	case have == want:
		return fmt.Sprintf("Bought already, by the job: %s; that is enough.", cartons(have))
	}
	return fmt.Sprintf("Bought already, by the job: %s; %d more than that.", cartons(have), have-want)
}

func cartons(n int) string {
	if n == 1 {
		return "1 carton"
	}
	return strconv.Itoa(n) + " cartons"
}

func (o orderText) money(n int) string {
	return strings.TrimSpace(fmt.Sprintf("%.2f %s", float64(n)*o.p.Job.Boards.Carton.Price, o.p.Job.Boards.Currency))
}

// chance says a chance as people do: 1 in 100.
func chance(x float64) string {
	switch {
	case x <= 0:
		return "none"
	case x >= 0.995:
		return "nearly all"
	case x > 0.2:
		return fmt.Sprintf("%.0f in 100", 100*x)
	}
	if n := math.Round(1 / x); n < 1000 {
		return fmt.Sprintf("1 in %.0f", n)
	}
	return "under 1 in 1000"
}

// parts splits the need.
func (o orderText) parts() {
	o.b.WriteString("\nWhat is needed beyond the floor itself, on average, in percent of it\n")
	o.b.WriteString("                cutting   culls  slips     all\n")
	for _, l := range o.x.Layers {
		n := l.Parts
		pc := func(x tape.Length) float64 { return 100 * float64(x) / float64(n.Floor) }
		fmt.Fprintf(o.b, "  %-12s %8.2f %7.2f %6.2f %7.2f\n", l.Layer, pc(n.Cut), pc(n.Culls), pc(n.Mistakes), pc(n.Taken-n.Floor))
	}
}

// forced says where a layer could not keep joints apart.
func (o orderText) forced() {
	for _, l := range o.x.Layers {
		if l.Forced >= 0.5 {
			wrap(o.b, fmt.Sprintf("The %s layer puts about %.0f joints of a floor nearer than %s to one beside: no board in hand keeps off. What it takes to keep them apart is not in its figures.", l.Layer, l.Forced, o.say.Of(o.x.Model.Joint)), "  ", "  ")
		}
	}
}

// table is the chance of running short for each number of cartons.
func (o orderText) table() {
	fmt.Fprintf(o.b, "\nChance of running short, and what is left on average where it does not (%s each)\n", o.area(o.x.Carton))
	o.b.WriteString("  cartons")
	for _, l := range o.x.Layers {
		fmt.Fprintf(o.b, "  %22s", l.Layer)
	}
	costs := o.x.Of(o.x.Wants.Layer).Costs
	if len(costs) > 0 {
		fmt.Fprintf(o.b, "  %12s", "cost")
	}
	o.b.WriteString("\n")
	for c := o.x.Fewest; c <= o.last(); c++ {
		fmt.Fprintf(o.b, "  %7d", c)
		for _, l := range o.x.Layers {
			fmt.Fprintf(o.b, "  %22s", o.cell(l, c))
		}
		if cost, ok := o.x.Cost(c); ok {
			fmt.Fprintf(o.b, "  %12.2f", cost)
		}
		o.b.WriteString(o.mark(c) + "\n")
	}
	wrap(o.b, fmt.Sprintf("± is the range that holds the chance of the model nine times in ten, by %d lays.", o.x.Layers[0].Lays), "  ", "  ")
	if len(costs) > 0 {
		o.costs()
	}
	if t := o.stopped(); t != "" {
		wrap(o.b, t, "  ", "  ")
	}
}

// stopped says which lays were cut short, "" where none were.
func (o orderText) stopped() string {
	var cut []string
	for _, l := range o.x.Layers {
		if l.Cut != nil {
			cut = append(cut, fmt.Sprintf("%s was cut short after %d lays", l.Layer, l.Lays))
		}
	}
	if len(cut) == 0 {
		return ""
	}
	return "Stopped: " + strings.Join(cut, "; ") + "."
}

// costs says what the costs of the table hold.
func (o orderText) costs() {
	w := o.x.Wants
	trip, back := "a second trip counts nothing (trip is not written)", "cartons cannot go back"
	if w.Trip > 0 {
		trip = o.sum(w.Trip) + " for a second trip"
	}
	if w.Refund > 0 {
		back = fmt.Sprintf("%.0f %% of its price back for a whole carton left over", 100*w.Refund)
	}
	wrap(o.b, fmt.Sprintf("Cost is in %s, on average over the lays of the %s layer, without spares: cartons at %s, and where they do not do the ones that lack and %s; %s.",
		cmp.Or(o.p.Currency(), "the currency of the job"), w.Layer, o.sum(o.p.Job.Boards.Carton.Price), trip, back), "  ", "  ")
}

// sum is an amount of money.
func (o orderText) sum(x float64) string {
	return strings.TrimSpace(fmt.Sprintf("%.2f %s", x, o.p.Currency()))
}

// deadline says by which row a further carton has to be ordered.
func (o orderText) deadline() { wrap(o.b, o.reorder(), "\n", "") }

func (o orderText) reorder() string {
	r, ok := o.p.Reorder()
	if !ok {
		return ""
	}
	s := fmt.Sprintf("A further carton takes %d days from order to delivery; at %.3g rows a day [%s]", o.x.Wants.Lead, r.ADay, r.Source)
	if r.Row < 1 {
		return fmt.Sprintf("%s the %d rows are laid sooner than that: what is missing stops the work. Count the boards over before the first row, and order then.", s, r.Rows)
	}
	left := o.x.Model.Floor() * tape.Length(r.Rows-r.Row) / tape.Length(r.Rows)
	return fmt.Sprintf("%s order it before row %d of %d: when that is laid, count the boards that are left. The rows still open take about %s of board and what cutting and culls take; with less in hand, order at once, of the same lot.",
		s, r.Row, r.Rows, o.long(left))
}

// last is the last number of cartons that is worth a line.
func (o orderText) last() int {
	last := max(o.x.Ten, o.x.Advised)
	for _, l := range o.x.Layers {
		last = max(last, l.Advised+1)
	}
	return min(last+1, o.x.Fewest+40)
}

func (o orderText) cell(l plan.Laying, cartons int) string {
	i := cartons - o.x.Fewest
	if len(l.Choices) == 0 {
		return "-"
	}
	if i >= len(l.Choices) {
		n := len(l.Choices) - 1
		c := l.Choices[n]
		return fmt.Sprintf("0.0 %% ±%.1f  %s", 100*c.Doubt, o.area(c.Left+tape.Length(i-n)*o.x.Carton))
	}
	c := l.Choices[i]
	left := o.area(c.Left)
	if c.Short >= 1 {
		left = "-"
	}
	return fmt.Sprintf("%.1f %% ±%.1f  %s", 100*c.Short, 100*c.Doubt, left)
}

func (o orderText) mark(c int) string {
	var out []string
	if c == o.x.Of(o.x.Wants.Layer).Advised {
		out = append(out, "advised")
	}
	if c == o.x.Advised && o.x.Wants.Spares > 0 {
		out = append(out, "with spares")
	}
	if c == o.x.Ten {
		out = append(out, "ten per cent")
	}
	if len(out) == 0 {
		return ""
	}
	return "  <- " + strings.Join(out, ", ")
}

// terms are the figures that the answer stands on.
func (o orderText) terms() {
	o.b.WriteString("\nWhat this stands on\n")
	for _, s := range o.stands() {
		wrap(o.b, s, "  - ", "    ")
	}
}

// stands are the figures that the answer stands on, each with its source.
func (o orderText) stands() []string {
	w := o.x.Wants
	m := o.x.Model
	given := func(told bool, source string) string {
		if told {
			return "job file"
		}
		return source
	}
	return []string{
		fmt.Sprintf("%.3g %% of the boards are culls, on average over lots [%s]", 100*w.Culls, given(w.CullsTold, order.SrcCulls)),
		fmt.Sprintf("lots differ in that by %.3g %% of it [%s]", 100*w.Varies, given(w.VariesTold, order.SrcVaries)),
		o.seen(),
		fmt.Sprintf("%.3g %% of the cuts go wrong [%s]", 100*w.Spoiled, given(w.SpoiledTold, order.SrcSpoiled)),
		fmt.Sprintf("a board is %s long on average%s", o.say.Of(m.Lengths.Mean()), o.lengths()),
		o.measure(),
		o.racked(),
		"good parts of culls begin rows, by a careful layer and by a plan; boards left in hand are not counted as needed",
	}
}

// seen says what the cartons that were opened tell of culls.
func (o orderText) seen() string {
	boards, culls := o.p.Job.Received.Counted()
	if boards == 0 {
		return ""
	}
	l := o.x.Model.Lot
	return fmt.Sprintf("%s among the %d boards looked through so far: this delivery is taken for %.3g %%, give or take %.3g [Bayes' rule on the two figures above]", counted(culls, "cull"), boards, 100*l.Mean, 100*l.Mean*l.Varies)
}

// lengths says where the spread of lengths comes from.
func (o orderText) lengths() string {
	out := ", by what the job says of lengths"
	if g, ok := stock.FindGrade(o.x.Boards.Mix.Grade); ok && o.x.Boards.Known == stock.MixOnly {
		out = ", by the grade " + g.Name + " [" + g.Source + "]"
	}
	n := 0
	for _, c := range o.p.Job.Received.Lengths() {
		n += c.Count
	}
	if n > 0 && o.x.Boards.Known == stock.MixOnly {
		out += fmt.Sprintf("; %d boards that were measured count beside it, the assumed spread for %d", n, order.Believed)
	}
	return out
}

// racked says how many lays by a plan stand for all, where that are fewer than usual.
func (o orderText) racked() string {
	l := o.x.Of(order.Planned)
	if l.Racked == 0 || l.Racked >= order.PlannedLays || o.x.Boards.Known == stock.OneSize {
		return ""
	}
	return fmt.Sprintf("%d lays by a plan were racked in earnest, and stand for all; where boards are so short that joints hardly keep apart, or the floor is large, they are fewer than %d", l.Racked, order.PlannedLays)
}

// measure says what the area of a carton counts.
func (o orderText) measure() string {
	c := o.x.Boards.Carton
	if c.Nominal {
		return fmt.Sprintf("its %s are nominal measure, which counts 3/4 in a board more than lies on the floor: %s of face [board-measure factors of older flooring tables, from memory]", o.printed(c.Area), o.printed(c.FaceArea(o.x.Boards.Face)))
	}
	return "the area of a carton is face measure, what lies on the floor; bundles sold by nominal measure count 3/4 in a board more (measure: nominal)"
}

func (o orderText) printed(a tape.Area) string { return tape.Paper(o.p.Job.Unit).Area(a) }

// OrderCSV writes a line for each number of cartons and each way to lay.
func OrderCSV(w io.Writer, p plan.Plan, ps []plan.Purchase) error {
	lines := [][]string{{"face", "laid", "cartons", "chance of running short", "doubt of it", "left on average, " + areaUnit(p.Job.Unit), "lacking on average, " + areaUnit(p.Job.Unit), "price", "cost on average, running short included"}}
	say := words.In(p.Job.Unit)
	for _, x := range ps {
		for _, l := range x.Layers {
			for i, c := range l.Choices {
				price, cost := "", ""
				if i < len(l.Costs) {
					cost = strconv.FormatFloat(l.Costs[i], 'f', 2, 64)
				}
				if each := p.Job.Boards.Carton.Price; each > 0 {
					price = strconv.FormatFloat(each*float64(c.Cartons), 'f', 2, 64)
				}
				lines = append(lines, []string{say.Rip(x.Boards.Face), string(l.Layer), strconv.Itoa(c.Cartons), strconv.FormatFloat(c.Short, 'f', 5, 64), strconv.FormatFloat(c.Doubt, 'f', 5, 64),
					strconv.FormatFloat(areaIn(p.Job.Unit, x.Area(c.Left)), 'f', 1, 64), strconv.FormatFloat(areaIn(p.Job.Unit, x.Area(c.Lacks)), 'f', 1, 64), price, cost})
			}
		}
	}
	return table(w, lines)
}
