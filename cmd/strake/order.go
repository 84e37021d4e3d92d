package main

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"runtime"
	"time"

	"strake/drawing"
	"strake/finding"
	"strake/paper"
	"strake/plan"
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
	p := plan.Rows(j)
	p.Findings = append(fs, p.Findings...)
	if finding.Worst(p.Findings) == finding.Stop || len(p.Fields) == 0 {
		r.tell(func(a *answer) { a.planned(p) })
		fmt.Fprint(r.out, paper.Findings(p))
		return errFindings
	}
	e := plan.Usual
	e.Workers = runtime.GOMAXPROCS(0)
	stop := waiting(r.err, "laying the floor over and over; Ctrl-C keeps what was laid till then")
	ps := p.Purchases(r.ctx, e)
	full := p
	if r.ctx.Err() == nil { // fasteners are counted board by board
		full = plan.MakeWithin(r.ctx, j, 0)
	}
	stop()
	r.tell(func(a *answer) { a.bought(p, ps) })
	list := full.Goods()
	list.Lines = append(p.Cartons(ps), list.Lines...)
	r.tell(func(a *answer) { a.listed(p, list) })
	text := paper.Order(p, ps) + paper.Goods(full, list)
	fmt.Fprint(r.out, text)
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
		var b bytes.Buffer
		if err := w.write(&b); err != nil {
			return fmt.Errorf("%s: %w", w.name, err)
		}
		files = append(files, file{w.name, b.Bytes()})
	}
	moved, err := writeAll(r.path(c.Out), files)
	if err != nil {
		return err
	}
	r.tell(func(a *answer) { a.wrote(c.Out, files) })
	fmt.Fprintf(r.out, "\nWritten to %s: order.txt, order.csv, goods.csv, order.xlsx, order.svg\n%s", c.Out, moved)
	return nil
}

// waiting tells a person at a terminal, once and after a while, what takes long;
// the function that it returns ends that.
func waiting(w io.Writer, what string) func() {
	f, ok := w.(*os.File)
	if !ok {
		return func() {}
	}
	if at, err := f.Stat(); err != nil || at.Mode()&os.ModeCharDevice == 0 {
		return func() {}
	}
	t := time.AfterFunc(firstTold, func() { fmt.Fprintln(w, what) })
	return func() { t.Stop() }
}
