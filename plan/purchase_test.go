package plan

import (
	"context"
	"reflect"
	"testing"

	"strake/examples"
	"strake/job"
	"strake/jobfile"
	"strake/order"
	"strake/stock"
	"strake/tape"
)

// shipped is a job of the examples.
func shipped(tb testing.TB, name string) job.Job {
	tb.Helper()
	data, err := examples.Read(name)
	if err != nil {
		tb.Fatal(err)
	}
	j, _, err := jobfile.ReadJob(name, data)
	if err != nil {
		tb.Fatal(err)
	}
	return j
}

// The runs that are laid over and over are those of the plan, in their order, and
// no run lies beside one that is laid after it.
func TestRunsOfAPurchase(t *testing.T) {
	for _, name := range []string{"sail-loft", "ticket-office", "ferry-parlour"} {
		p := Rows(shipped(t, name))
		m := p.model(p.Job.Boards, p.Job.Order.Filled())
		var want tape.Length
		n := 0
		for _, f := range p.Fields {
			for _, r := range f.Layout.Runs {
				want += r.Length()
				n++
			}
		}
		if m.Floor() != want || len(m.Runs) != n {
			t.Errorf("%s: %d runs of %s, want %d of %s", name, len(m.Runs), m.Floor(), n, want)
		}
		beside := 0
		for i, r := range m.Runs {
			for _, b := range r.Beside {
				beside++
				if b >= i || m.Runs[b].To <= r.From || m.Runs[b].From >= r.To {
					t.Errorf("%s: run %d lies beside %d", name, i, b)
				}
			}
		}
		if beside < n/2 {
			t.Errorf("%s: %d pairs of %d runs lie side by side", name, beside, n)
		}
	}
}

// The same job gives the same answer for any number of workers; the advised number
// keeps to the risk, one fewer does not; a smaller risk never asks for fewer.
func TestPurchase(t *testing.T) {
	p := Rows(shipped(t, "sail-loft"))
	e := Effort{Lays: 1000, Planned: 12, Workers: 1}
	first := p.Purchases(context.Background(), e)
	e.Workers = 3
	if again := p.Purchases(context.Background(), e); !reflect.DeepEqual(first, again) {
		t.Error("three workers give another answer")
	}
	x := first[0]
	if len(x.Layers) != 3 || x.Fewest < 10 || x.Ten < x.Fewest {
		t.Fatalf("%+v", x)
	}
	for _, l := range x.Layers {
		if l.Advised == 0 || l.Parts.Taken < l.Parts.Floor {
			t.Errorf("%s: %+v", l.Layer, l)
			continue
		}
		for _, c := range l.Choices {
			if kept := c.Short+c.Doubt <= x.Wants.Risk; kept != (c.Cartons >= l.Advised) {
				t.Errorf("%s advises %d, and %+v", l.Layer, l.Advised, c)
			}
		}
	}
	if x.Advised != x.Of(order.Careful).Advised+order.Spares {
		t.Errorf("%d advised", x.Advised)
	}
	p.Job.Order.Risk = 0.2
	if easy := p.Purchases(context.Background(), e)[0]; easy.Advised > x.Advised {
		t.Errorf("1 in 5: %d, 1 in 100: %d", easy.Advised, x.Advised)
	}
}

func TestPurchaseOfUnknownBoards(t *testing.T) {
	j := shipped(t, "sail-loft")
	j.Boards.Known, j.Boards.Mix = stock.Unknown, stock.Mix{}
	if x := Rows(j).Purchases(context.Background(), Usual)[0]; !x.Unknown || len(x.Layers) != 0 {
		t.Errorf("%+v", x)
	}
	j = shipped(t, "sail-loft")
	j.Boards.Carton.Area = 0
	x := Rows(j).Purchases(context.Background(), Effort{Lays: 50, Planned: 2, Workers: 2})[0]
	if x.Advised != 0 || len(x.Layers) == 0 || len(x.Layers[0].Choices) != 0 || x.Layers[0].Parts.Taken == 0 {
		t.Errorf("a carton of no known area: %+v", x)
	}
}

func TestPurchaseStopped(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	stop()
	for _, l := range Rows(shipped(t, "sail-loft")).Purchases(ctx, Effort{Lays: 100_000, Planned: 300, Workers: 2})[0].Layers {
		if l.Cut == nil {
			t.Errorf("%s does not say that it was cut short", l.Layer)
		}
	}
}

// What strake order takes: lays by hand and by a plan of one room.
func BenchmarkPurchase(b *testing.B) {
	j := shipped(b, "sail-loft")
	p := Rows(j)
	m := p.model(j.Boards, j.Order.Filled())
	b.Run("10,000 strict", func(b *testing.B) {
		for b.Loop() {
			_, _ = order.Simulate(context.Background(), m, order.Strict, 10_000, 1, 2)
		}
	})
	b.Run("10,000 careful", func(b *testing.B) {
		for b.Loop() {
			_, _ = order.Simulate(context.Background(), m, order.Careful, 10_000, 1, 2)
		}
	})
	b.Run("300 planned", func(b *testing.B) {
		for b.Loop() {
			_, _ = p.losses(context.Background(), j.Boards, m, Effort{Planned: 300, Workers: 2})
		}
	})
}
