package plan

import (
	"context"

	"strake/rack"
	"strake/stock"
	"strake/tape"
)

// Next proposes up to so many of the runs of a plan's rows that are not laid
// yet, from these boards: those at hand, each once.
func Next(ctx context.Context, p Plan, boards []tape.Length, laid []rack.Laid, count int) []rack.Proposal {
	b := p.Job.Boards
	counted := b.Known == stock.Tallied // then the job says how boards are measured
	b.Known, b.Tally = stock.Tallied, nil
	for _, l := range boards {
		b.Tally = append(b.Tally, stock.Class{Length: l, Count: 1})
	}
	if !counted {
		b.ReadTo, b.Slip = stock.StepOf(b.Tally), stock.UsualSlip
	}
	return rack.Next(ctx, rack.Ask{
		Fields: p.AllFields(), Boards: b, Limits: p.Job.Limits,
		Seed: p.Job.Seed, WoodFirst: p.Job.Wishes.WoodFirst, Polishing: rack.Polishing, Style: tape.Paper(p.Job.Unit),
	}, laid, count)
}
