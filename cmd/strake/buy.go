package main

import (
	"fmt"
	"runtime"

	"strake/finding"
	"strake/goods"
	"strake/job"
	"strake/paper"
	"strake/plan"
	"strake/rack"
	"strake/schedule"
	"strake/schedule/takeoff"
)

// bought is what a floor takes: boards with their risk, everything else, and the days.
type bought struct {
	rows   plan.Plan // without boards
	full   plan.Plan // with them, if there was time
	boards []plan.Purchase
	list   goods.List // boards first
	days   schedule.Calendar
}

// buy counts what a floor takes. Where the rows cannot be set out it says why, and the
// error is errFindings.
func buy(r rim, j job.Job, fs []finding.Finding) (bought, error) {
	p := plan.Rows(j)
	p.Findings = append(fs, p.Findings...)
	if finding.Worst(p.Findings) == finding.Stop || len(p.Fields) == 0 {
		r.tell(func(a *answer) { a.planned(p) })
		fmt.Fprint(r.out, paper.Findings(p))
		return bought{}, errFindings
	}
	told := r.progress()
	defer told.end()
	e := plan.Usual
	e.Workers = runtime.GOMAXPROCS(0)
	e.Tell = func(given, of int) { told.at("laying the floor over and over", given, of) }
	b := bought{rows: p, full: p, boards: p.Purchases(r.ctx, e)}
	if r.ctx.Err() == nil { // fasteners are counted board by board
		b.full = plan.MakeTold(r.ctx, j, rack.Polishing, told.racking())
	}
	b.rest()
	return b, nil
}

// rest counts everything but the boards: the days, and the goods with what is rented on
// them.
func (b *bought) rest() {
	b.days = schedule.Make(carried(takeoff.Of(b.rows), b.boards), b.rows.Job.Schedule)
	b.list = b.full.GoodsOn(b.days)
	b.list.Lines = append(b.rows.Cartons(b.boards), b.list.Lines...)
}

// carried is work with the cartons that were counted, where the job does not say how
// many there are.
func carried(w schedule.Work, ps []plan.Purchase) schedule.Work {
	n := 0
	for _, x := range ps {
		if x.Advised == 0 {
			return w
		}
		n += x.Advised
	}
	if w.CartonsBy != "" {
		w.Cartons, w.CartonsBy = n, ""
	}
	return w
}
