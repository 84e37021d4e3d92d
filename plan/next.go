package plan

import (
	"context"
	"slices"

	"strake/rack"
	"strake/stock"
	"strake/tape"
)

// AtHand is a board at hand.
type AtHand struct {
	Length tape.Length
	Face   tape.Length // where the job has boards of several face widths
	stock.Marks
}

// Next proposes up to so many of the runs of a plan's rows that are not laid
// yet, from these boards: those at hand, each once. Of several face widths the
// narrowest come first.
func Next(ctx context.Context, p Plan, boards []AtHand, laid []rack.Laid, count int) []rack.Proposal {
	b := p.Job.Boards
	counted := b.Known == stock.Tallied // then the job says how boards are measured
	b.Known, b.Tally = stock.Tallied, nil
	b.Widths = slices.Clone(b.Widths)
	for i := range b.Widths {
		b.Widths[i].Known, b.Widths[i].Tally = stock.Tallied, nil
	}
	for _, l := range boards {
		one := stock.Class{Length: l.Length, Count: 1, Marks: l.Marks}
		b.Tally = append(b.Tally, one)
		for i := range b.Widths {
			if w := &b.Widths[i]; w.Face == l.Face {
				w.Tally = append(w.Tally, one)
			}
		}
	}
	if !counted {
		b.ReadTo, b.Slip = stock.StepOf(b.Tally), stock.UsualSlip
	}
	return rack.Next(ctx, rack.Ask{
		Fields: p.AllFields(), Boards: b, Limits: p.Job.Limits,
		Seed: p.Job.Seed, WoodFirst: p.Job.Wishes.WoodFirst, Shades: p.Job.Wishes.Shades, Polishing: rack.Polishing, Style: tape.Paper(p.Job.Unit),
	}, laid, count)
}
