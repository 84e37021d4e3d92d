package plan

import (
	"slices"
	"strake/caution"

	"strake/finding"
	"strake/job"
	"strake/moisture"
	"strake/ready"
	"strake/receive"
	"strake/site"
	"strake/subfloor"
	"strake/tape"
	"strake/trim"
)

// Ready is every verdict on whether the floor may be laid yet, also on what
// nobody has read or answered.
func (p Plan) Ready() []ready.Verdict {
	f := p.moistureFloor()
	vs := slices.Concat(site.Verdicts(p.Job.Site, site.Floor{SqFt: f.SqFt, Style: tape.Paper(p.Job.Unit)}), caution.Verdicts(p.work()), p.received(), moisture.Verdicts(p.Job.Moisture, f))
	if !p.Job.Subfloor.Told() {
		vs = append(vs, notLooked)
	}
	if !p.Job.Trim.Told {
		vs = append(vs, trim.NotTold)
	}
	return slices.Concat(vs, p.underVerdicts(), p.Nailing().Verdicts(tape.Paper(p.Job.Unit)), p.trimVerdicts())
}

// ReadyFindings are the verdicts as findings, of what the job says anything
// about: a plan does not ask for readings where nothing is written of them.
func (p Plan) ReadyFindings() []finding.Finding {
	f := p.moistureFloor()
	var vs []ready.Verdict
	if p.Job.Site.Told {
		vs = append(vs, site.Verdicts(p.Job.Site, site.Floor{SqFt: f.SqFt, Style: tape.Paper(p.Job.Unit)})...)
	}
	if p.Job.Hazards.Told {
		vs = append(vs, caution.Verdicts(p.work())...)
	}
	vs = append(vs, p.received()...)
	if p.Job.Moisture.Told() {
		vs = append(vs, moisture.Verdicts(p.Job.Moisture, f)...)
	}
	vs = append(vs, p.underVerdicts()...)
	if p.Job.Subfloor.Told() || p.Job.Nails.Told || len(p.Job.KeepFree) > 0 {
		vs = append(vs, p.Nailing().Verdicts(tape.Paper(p.Job.Unit))...)
	}
	return ready.Findings(append(vs, p.trimVerdicts()...))
}

// MoistureVerdicts are those on air, boards, subfloor and slab alone, also on what
// nobody has read.
func (p Plan) MoistureVerdicts() []ready.Verdict {
	return moisture.Verdicts(p.Job.Moisture, p.moistureFloor())
}

// ReadingsWanted is how many readings of subfloor and boards the floor asks for.
func (p Plan) ReadingsWanted() (subfloor, boards int) { return moisture.Wanted(p.moistureFloor()) }

// Acclimation is the log of the boards as it is drawn; not ok where none is kept.
func (p Plan) Acclimation() (moisture.Chart, bool) { return p.Job.Moisture.Chart(p.moistureFloor()) }

// received is what there is to say of the delivery, nothing where none of it was
// looked at.
func (p Plan) received() []ready.Verdict {
	b := p.Job.Boards
	o := receive.Order{Cartons: b.Cartons, SqFt: b.Carton.FaceArea(b.Face).SquareFeet(), Imperial: p.Job.Unit.Imperial()}
	if len(b.Widths) == 0 {
		o.Ten = 10 * b.Pitch().Millimetres()
	}
	return receive.Verdicts(p.Job.Received, o)
}

// moistureFloor is what the verdicts want to know of the floor.
func (p Plan) moistureFloor() moisture.Floor {
	j := p.Job
	f := moisture.Floor{
		Species: j.Boards.Species + " " + j.Boards.Name, Faces: faces(j), Gap: j.Limits.GapLeast.Value,
		Slab: j.Site.Base == site.Concrete, Imperial: j.Unit.Imperial(),
	}
	if _, top, _ := subfloor.Nailing(subfloor.Fates(j.Subfloor.Layers, j.Subfloor.Built)); !f.Slab {
		f.Under = string(top)
	}
	if len(p.Aligned.Need) == 0 {
		return f
	}
	f.SqFt = p.squareFeet()
	lo, hi := p.Aligned.Bare.Box()
	f.Across = hi.Y - lo.Y
	return f
}

// squareFeet is the floor's area, 0 where it is not known.
func (p Plan) squareFeet() float64 {
	if len(p.Aligned.Need) == 0 {
		return 0
	}
	return tape.Area(p.Aligned.Bare.Area2() / 2).SquareFeet()
}

// faces are the face widths of the boards, each once, the widest first.
func faces(j job.Job) []tape.Length {
	var out []tape.Length
	for _, b := range j.Boards.Each() {
		if !slices.Contains(out, b.Face) {
			out = append(out, b.Face)
		}
	}
	slices.SortFunc(out, func(a, b tape.Length) int { return int(b - a) })
	return out
}
