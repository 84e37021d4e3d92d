package paper

import (
	"fmt"
	"io"
	"slices"
	"strconv"

	"strake/book"
	"strake/goods"
	"strake/plan"
	"strake/tape"
	"strake/words"
)

// Workbook writes order.xlsx: the goods with prices to fill in and formulas for what
// they come to, cartons against the chance of running short, and the cuts of bars.
func Workbook(w io.Writer, p plan.Plan, ps []plan.Purchase, l goods.List) error {
	return book.Write(w, []book.Sheet{goodsSheet(p, l), cartonsSheet(p, ps), barsSheet(p, l.Cuts)})
}

func heads(names ...string) []book.Cell {
	var out []book.Cell
	for _, n := range names {
		out = append(out, book.T(n, book.Head))
	}
	return out
}

// goodsSheet has a row for each thing in the order of its groups, then sum, tax and
// total, each low, likely and high.
func goodsSheet(p plan.Plan, l goods.List) book.Sheet {
	s := book.Sheet{Name: "Goods", Widths: []float64{17, 34, 8, 11, 11, 11, 11, 12, 12, 12, 36, 40, 30}}
	cur := inCurrency(p.Currency())
	s.Rows = append(s.Rows, heads("group", "what", "count", "unit", "each, low"+cur, "each"+cur, "each, high"+cur, "low"+cur, "likely"+cur, "high"+cur, "counted from", "what to do", "where figures come from"))
	lines := slices.Clone(l.Lines)
	slices.SortStableFunc(lines, func(a, b goods.Line) int {
		return slices.Index(goods.Groups, a.Group) - slices.Index(goods.Groups, b.Group)
	})
	for _, x := range lines {
		s.Rows = append(s.Rows, goodsRow(x, len(s.Rows)))
	}
	last := len(s.Rows)
	sum := goods.Cost(lines, p.Job.Goods.Prices.Tax)
	total := func(name string, m goods.Money, formula func(col string) string, rate book.Cell) {
		row := []book.Cell{book.T(name, book.Head), {}, rate, {}, {}, {}, {}}
		for i, v := range []float64{m.Low, m.Likely, m.High} {
			row = append(row, book.F(formula(book.Column(7+i)), v, book.Sum))
		}
		s.Rows = append(s.Rows, row)
	}
	total("sum", sum.Net, func(c string) string { return fmt.Sprintf("SUM(%s2:%s%d)", c, c, last) }, book.Cell{})
	total("tax", sum.Tax, func(c string) string { return fmt.Sprintf("%s%d*$C$%d", c, last+1, last+2) }, book.N(p.Job.Goods.Prices.Tax, book.Share))
	total("total", sum.All, func(c string) string { return fmt.Sprintf("%s%d+%s%d", c, last+1, c, last+2) }, book.Cell{})
	return s
}

// goodsRow is one thing; what is bought without a price has an empty one to fill in.
func goodsRow(x goods.Line, row int) []book.Cell {
	out := []book.Cell{book.T(string(x.Group), book.Plain), book.T(x.What, book.Plain)}
	if x.Count == 0 {
		out = append(out, make([]book.Cell, 8)...)
	} else {
		out = append(out, book.N(float64(x.Count), book.Plain), book.T(x.Unit, book.Plain))
		for _, v := range []float64{x.Each.Low, x.Each.Likely, x.Each.High} {
			if x.Each.Told {
				out = append(out, book.N(v, book.Money))
			} else {
				out = append(out, book.Cell{})
			}
		}
		t := x.Total()
		for i, v := range []float64{t.Low, t.Likely, t.High} {
			out = append(out, book.F(book.Ref(2, row)+"*"+book.Ref(4+i, row), v, book.Money))
		}
	}
	return append(out, book.T(x.From, book.Plain), book.T(x.Do, book.Plain), book.T(x.Source, book.Plain))
}

// areaUnit is the unit that a table of a job has areas in, areaIn an area in it.
func areaUnit(u tape.Unit) string {
	if u.Imperial() {
		return "sq ft"
	}
	return "m2"
}

func areaIn(u tape.Unit, a tape.Area) float64 {
	if u.Imperial() {
		return a.SquareFeet()
	}
	return a.SquareMetres()
}

// cartonsSheet has a row for each number of cartons and each way to lay.
func cartonsSheet(p plan.Plan, ps []plan.Purchase) book.Sheet {
	s := book.Sheet{Name: "Cartons", Widths: []float64{12, 12, 10, 14, 12, 16, 14, 16}}
	cur := inCurrency(p.Currency())
	s.Rows = append(s.Rows, heads("face", "laid", "cartons", "running short", "doubt of it", "left, "+areaUnit(p.Job.Unit), "price"+cur, "cost, running short included"+cur))
	say := words.In(p.Job.Unit)
	for _, x := range ps {
		for _, l := range x.Layers {
			for i, c := range l.Choices {
				row := []book.Cell{book.T(say.Rip(x.Boards.Face), book.Plain), book.T(string(l.Layer), book.Plain), book.N(float64(c.Cartons), book.Plain),
					book.N(c.Short, book.Share), book.N(c.Doubt, book.Share), book.N(areaIn(p.Job.Unit, x.Area(c.Left)), book.Money)}
				if each := x.Boards.Carton.Price; each > 0 {
					row = append(row, book.N(each*float64(c.Cartons), book.Money))
				}
				if i < len(l.Costs) {
					row = append(row, book.N(l.Costs[i], book.Money))
				}
				s.Rows = append(s.Rows, row)
			}
		}
	}
	return s
}

// barsSheet has a row for each piece that is cut out of a bar.
func barsSheet(p plan.Plan, cuts []goods.Cuts) book.Sheet {
	s := book.Sheet{Name: "Bars", Widths: []float64{20, 8, 14, 24, 14}}
	s.Rows = append(s.Rows, heads("what", "bar", "its length", "piece", "cut to"))
	say := words.In(p.Job.Unit)
	for _, c := range cuts {
		for i, b := range c.Cut.Bars {
			for _, k := range b.Pieces {
				s.Rows = append(s.Rows, []book.Cell{book.T(c.What, book.Plain), book.T(strconv.Itoa(i+1), book.Plain), book.T(say.Of(b.Length), book.Plain), book.T(c.Names[k], book.Plain), book.T(say.Of(c.Long[k]), book.Plain)})
			}
		}
	}
	return s
}
