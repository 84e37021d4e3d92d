package plan

import (
	"context"
	"slices"

	"strake/check"
	"strake/finding"
	"strake/floor"
	"strake/job"
	"strake/rack"
	"strake/row"
	"strake/stock"
	"strake/survey"
	"strake/tape"
)

// Make plans a job: survey, floor, rows, racking, check. It always returns
// what could be made, with the findings of every stage. Cancelling ctx cuts
// the racking short; the plan then says so.
func Make(ctx context.Context, j job.Job) Plan { return MakeWithin(ctx, j, rack.Polishing) }

// MakeWithin is Make with so much work, in places tried, spent on bettering a
// board layout that is complete; with none the first one found is the answer.
func MakeWithin(ctx context.Context, j job.Job, polishing int) Plan {
	return MakeTold(ctx, j, polishing, nil)
}

// MakeTold is MakeWithin with somebody to be told how the racking stands.
func MakeTold(ctx context.Context, j job.Job, polishing int, tell func(rack.Progress)) Plan {
	p := laidOut(ctx, j, polishing, tell)
	p.Findings = append(p.Findings, p.ReadyFindings()...)
	return p
}

// laidOut is the plan without the verdicts on site, moisture and subfloor: a floor that
// may not be laid yet is planned all the same.
func laidOut(ctx context.Context, j job.Job, polishing int, tell func(rack.Progress)) Plan {
	p := Rows(j)
	if finding.Worst(p.Findings) == finding.Stop {
		return p
	}
	ask := rack.Ask{
		Fields: p.Fields, Boards: j.Boards, Limits: j.Limits,
		Seed: j.Seed, WoodFirst: j.Wishes.WoodFirst, Shades: j.Wishes.Shades, Polishing: polishing, Pinned: j.Pins.Boards, Progress: tell, Style: tape.Paper(j.Unit),
	}
	if j.Boards.Known == stock.Unknown {
		p.Lay = rack.Bare(ask)
	} else {
		p.Lay, p.Worth = rack.Racked(ctx, ask)
	}
	p.Findings = append(p.Findings, p.laidAside()...)
	p.Findings = append(p.Findings, p.Lay.Findings...)
	p.Findings = append(p.Findings, p.leftFinding(p.Lay, tape.Paper(j.Unit))...)
	p.Findings = append(p.Findings, p.untold(check.Lay(p.Lay, p.Floor, j.Limits, j.Boards, p.Pins...))...)
	return p
}

// Rows is Make without the boards: readings, floor and rows only.
func Rows(j job.Job) Plan {
	style := tape.Paper(j.Unit)
	p := Plan{Job: j}
	s := fitted(j)
	p.Survey, p.Built = s, s.Built
	p.Findings = s.Findings(j.Readings, style)
	if finding.Worst(p.Findings) == finding.Stop {
		p.Findings = append(p.Findings, alsoWrong(j, s, style)...)
		return p
	}
	var fs []finding.Finding
	p.Floor, fs = floor.New(s.Built, floor.Trim{Base: j.Base, Shoe: j.Shoe}, j.Limits, style)
	p.Findings = append(p.Findings, fs...)
	if finding.Worst(fs) == finding.Stop {
		return p
	}
	if fs := p.turnedFindings(); len(fs) > 0 {
		p.Findings = append(p.Findings, fs...)
		return p
	}
	p.Pins = pinsOf(j, s.Built, p.Floor)
	p.Fields = row.Fields(placeOf(j, s.Built, p.Floor, rowWishes(j, p.Pins), style))
	p.Layout, p.Aligned = p.Fields[0].Layout, p.Fields[0].Aligned
	for _, f := range p.Fields {
		p.Findings = append(p.Findings, f.Layout.Findings...)
	}
	p.Findings = append(p.Findings, p.widthFindings(style)...)
	p.doubts()
	p.Findings = append(p.Findings, p.doubtFindings(style)...)
	p.Findings = append(p.Findings, p.gapFindings(j, style)...)
	p.Findings = append(p.Findings, p.taperFindings(style)...)
	p.Findings = append(p.Findings, p.wideFindings(style)...)
	p.Findings = append(p.Findings, p.frontFindings(style)...)
	p.Findings = append(p.Findings, p.nosingFindings()...)
	p.Findings = append(p.Findings, p.oldFindings(style)...)
	return p
}

// alsoWrong is what stops the floor of readings that do not hold: walls that
// cross and the like say where to look.
func alsoWrong(j job.Job, s survey.Result, style tape.Style) []finding.Finding {
	if !s.Converged {
		return nil
	}
	_, fs := floor.New(s.Built, floor.Trim{Base: j.Base, Shoe: j.Shoe}, j.Limits, style)
	return slices.DeleteFunc(fs, func(f finding.Finding) bool { return f.Level != finding.Stop })
}

// fitted is the survey of a job; a job without a tape of its own has the
// default one.
func fitted(j job.Job) survey.Result {
	model := j.Tape
	if model.ReadingMM == 0 && model.HookMM == 0 {
		model = survey.Tape()
	}
	return survey.Adjust(j.Sketch, j.Readings, model)
}
