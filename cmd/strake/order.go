package main

import (
	"bytes"
	"fmt"
	"io"

	"strake/drawing"
	"strake/paper"
	"strake/sheet/svg"
)

type orderCmd struct {
	Job string `arg:"" help:"The job file (YAML). strake new writes one."`
	Out string `short:"o" placeholder:"FOLDER" help:"Also write order.txt, order.csv, goods.csv, order.xlsx and order.svg to this folder."`
}

// Help says what is answered.
func (orderCmd) Help() string {
	return `Says how many cartons to buy: lays the job's own rows ten thousand times over, with boards drawn from the lengths that the job knows of and from lots whose share of culls differs, and counts how often a number of cartons does not do. Three ways to lay stand beside each other, and the rule of ten per cent.

    boards:
      carton: {area: 20 sq ft, price: 104.00}
    order: {risk: 1, layer: careful, culls: 5, spares: 1}

Figures that the job does not give are said with their source. The same job gives the same answer. Ctrl-C keeps what was laid till then, and says so.`
}

func (c *orderCmd) Run(r rim) error {
	j, fs, err := readJob(r, c.Job)
	if err != nil {
		return err
	}
	b, err := buy(r, j, fs)
	if err != nil {
		return err
	}
	p, ps, list := b.rows, b.boards, b.list
	r.tell(func(a *answer) { a.bought(p, ps); a.listed(p, list); a.found(fs) })
	text := paper.Order(p, ps) + paper.Goods(b.full, list)
	fmt.Fprint(r.out, text)
	tell(r, fs)
	if c.Out == "" {
		return nil
	}
	files := []file{{"order.txt", []byte(text)}}
	for _, w := range []struct {
		name  string
		write func(io.Writer) error
	}{
		{"order.csv", func(w io.Writer) error { return paper.OrderCSV(w, p, ps) }},
		{"goods.csv", func(w io.Writer) error { return paper.GoodsCSV(w, list) }},
		{"order.xlsx", func(w io.Writer) error { return paper.Workbook(w, p, ps, list) }},
		{"order.svg", func(w io.Writer) error { return svg.Write(w, drawing.Risk(p, ps)) }},
	} {
		var data bytes.Buffer
		if err := w.write(&data); err != nil {
			return fmt.Errorf("%s: %w", w.name, err)
		}
		files = append(files, file{w.name, data.Bytes()})
	}
	moved, err := writeAll(r.path(c.Out), files)
	if err != nil {
		return err
	}
	r.tell(func(a *answer) { a.wrote(c.Out, files) })
	fmt.Fprintf(r.out, "\nWritten to %s: order.txt, order.csv, goods.csv, order.xlsx, order.svg\n%s", c.Out, moved)
	return nil
}
