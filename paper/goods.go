package paper

import (
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"

	"strake/goods"
	"strake/plan"
	"strake/words"
)

// Goods is everything else that has to be on site, as text.
func Goods(p plan.Plan, l goods.List) string {
	var b strings.Builder
	b.WriteString("\nEverything else\n")
	var from sources
	for _, g := range goods.Groups {
		first := true
		for _, x := range l.Lines {
			if x.Group != g {
				continue
			}
			if first {
				b.WriteString("\n" + strings.ToUpper(string(g[:1])) + string(g[1:]) + "\n")
				first = false
			}
			goodsLine(&b, x, &from)
		}
	}
	cutsOfBars(&b, p, l.Cuts)
	costText(&b, p, l)
	if len(from) > 0 {
		b.WriteString("\nWhere figures come from\n")
		for i, s := range from {
			wrap(&b, s, fmt.Sprintf("  [%d] ", i+1), "      ")
		}
	}
	return b.String()
}

// goodsLine is one thing with what it is counted from.
func goodsLine(b *strings.Builder, x goods.Line, from *sources) {
	s := x.What
	if x.Count > 0 {
		s = HowMany(x.Count, x.Unit) + ": " + x.What
	}
	if x.From != "" {
		s += " (" + x.From + ")"
	}
	s += from.marks(x.Source)
	wrap(b, s, "  - ", "    ")
	if len(x.Notes) > 0 {
		wrap(b, strings.Join(x.Notes, "; "), "    ", "    ")
	}
	wrap(b, x.Do, "    ", "    ")
}

// sources are where figures come from, numbered as they are first named.
type sources []string

// marks are the numbers of sources, parted by semicolons, as they stand in a line.
func (s *sources) marks(all string) string {
	out := ""
	for one := range strings.SplitSeq(all, "; ") {
		out += s.mark(one)
	}
	return out
}

// mark is the number of one source, nothing for none.
func (s *sources) mark(one string) string {
	if one == "" {
		return ""
	}
	i := slices.Index(*s, one)
	if i < 0 {
		i = len(*s)
		*s = append(*s, one)
	}
	return fmt.Sprintf(" [%d]", i+1)
}

// several are units whose plural is not made with an s.
var several = map[string]string{"box": "boxes"}

// HowMany is a number of units: 1 box, 3 boxes.
func HowMany(n int, unit string) string {
	if n == 1 {
		return "1 " + unit
	}
	if s, ok := several[unit]; ok {
		unit = s
	} else if unit != "" {
		unit += "s"
	}
	return strings.TrimSpace(strconv.Itoa(n) + " " + unit)
}

// cutsOfBars says how each bar is cut.
func cutsOfBars(b *strings.Builder, p plan.Plan, cuts []goods.Cuts) {
	if len(cuts) == 0 {
		return
	}
	say := words.In(p.Job.Unit)
	b.WriteString("\nHow the bars are cut\n")
	for _, c := range cuts {
		for i, bar := range c.Cut.Bars {
			left := bar.Length
			var parts []string
			for _, k := range bar.Pieces {
				parts = append(parts, c.Names[k]+" "+say.Of(c.Long[k]))
				left -= c.Long[k]
			}
			wrap(b, fmt.Sprintf("%s %d, %s: %s; scrap %s", c.What, i+1, say.Of(bar.Length), strings.Join(parts, ", "), say.Of(left)), "  - ", "    ")
		}
	}
}

// costText is what the whole list costs, with a low and a high.
func costText(b *strings.Builder, p plan.Plan, l goods.List) {
	tax := p.Job.Goods.Prices.Tax
	s := goods.Cost(l.Lines, tax)
	if !s.Net.Told {
		return
	}
	fmt.Fprintf(b, "\nWhat it costs%s\n", inCurrency(p.Currency()))
	fmt.Fprintf(b, "  %-44s %12s %12s %12s\n", "", "low", "likely", "high")
	line := func(what string, m goods.Money) {
		fmt.Fprintf(b, "  %-44s %12.2f %12.2f %12.2f\n", what, m.Low, m.Likely, m.High)
	}
	for _, g := range goods.Groups {
		var sum goods.Money
		for _, x := range l.Lines {
			if x.Group == g {
				sum = sum.Plus(x.Total())
			}
		}
		if sum.Told {
			line(string(g), sum)
		}
	}
	if tax > 0 {
		line(fmt.Sprintf("tax, %.4g %%", 100*tax), s.Tax)
	}
	line("total", s.All)
	if len(s.Unpriced) > 0 {
		wrap(b, "Not in it, since no price is written: "+strings.Join(s.Unpriced, "; ")+".", "  ", "  ")
	}
}

func inCurrency(currency string) string {
	if currency == "" {
		return ""
	}
	return ", " + currency
}

// GoodsCSV writes goods.csv, a line for each thing; without a total, so that a
// column can be summed.
func GoodsCSV(w io.Writer, l goods.List) error {
	lines := [][]string{{"group", "what", "count", "unit", "counted from", "price each", "price, low", "price", "price, high", "what to do", "source"}}
	money := func(m goods.Money, x float64) string {
		if !m.Told {
			return ""
		}
		return strconv.FormatFloat(x, 'f', 2, 64)
	}
	for _, x := range l.Lines {
		n := ""
		if x.Count > 0 {
			n = strconv.Itoa(x.Count)
		}
		t := x.Total()
		lines = append(lines, []string{string(x.Group), x.What, n, x.Unit, x.From, money(x.Each, x.Each.Likely), money(t, t.Low), money(t, t.Likely), money(t, t.High), x.Do, x.Source})
	}
	return table(w, lines)
}
