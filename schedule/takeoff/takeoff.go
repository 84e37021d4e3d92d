// Package takeoff reads off a plan what there is to do, with its quantities:
// areas, lengths of wall, openings and jambs, layers that come out, rows by how
// they are nailed, and what readings say of the day that laying may begin.
//
// Of a parlour of 250 sq ft, 68 ft of wall, a hall door with undercut jambs and 36
// rows it says so; the hours are schedule's.
package takeoff

import (
	"cmp"

	"strake/caution"
	"strake/goods"
	"strake/plan"
	"strake/ready"
	"strake/schedule"
	"strake/setout"
	"strake/site"
	"strake/subfloor"
	"strake/tape"
	"strake/trim"
)

// Of is the work of a plan. Its boards need not be racked.
func Of(p plan.Plan) schedule.Work {
	j := p.Job
	w := schedule.Work{Name: j.Name, Imperial: j.Unit.Imperial(), Rooms: rooms(p), Base: j.Base > 0, BaseOn: j.Base > 0 && j.Goods.Base != goods.NoWay, Shoe: j.Shoe > 0 && j.Goods.Shoe != goods.NoWay,
		LayersTold: len(j.Subfloor.Layers) > 0, Panel: j.Trim.Panel > 0, Sheet: j.Site.Sheet.Kind != "", Glued: j.Site.Glue == site.Yes,
		OnSite: j.Hazards.Finish == caution.OnSite, Slab: j.Site.Base == site.Concrete, Fields: len(p.AllFields()), Rows: rows(p), Walls: walls(p)}
	for _, r := range w.Rows {
		for _, a := range r.SqFt {
			w.SqFt += a
		}
	}
	w.ReadUnder, w.ReadBoards = p.ReadingsWanted()
	openings(&w, p)
	heights(&w, j.Trim)
	under(&w, p)
	cartons(&w, p)
	w.Here = len(j.Moisture.Boards.Reads) > 0 || len(j.Moisture.Log) > 0 || len(j.Received.Cartons) > 0
	paint(&w, p)
	w.Hold = hold(p)
	return w
}

// paint is whether it is tested, by the verdict on it.
func paint(w *schedule.Work, p plan.Plan) {
	for _, v := range p.Ready() {
		if v.Rule == caution.PaintRule && p.Job.Hazards.Paint == "" {
			w.Paint, w.AgeUnknown = v.Say == ready.Fix, v.Say != ready.Fix
		}
	}
}

// rooms are the rooms in the order of laying, then those without a row.
func rooms(p plan.Plan) []string {
	var out []string
	have := map[string]bool{}
	for _, s := range setout.Stages(p) {
		out, have[s.Room] = append(out, s.Room), true
	}
	for _, r := range p.Job.Sketch.Rooms {
		if !have[r.Name] {
			out = append(out, r.Name)
		}
	}
	return out
}

// walls are the feet of wall that take a base: all but openings with their casings and
// what stands against them.
func walls(p plan.Plan) float64 {
	var sum tape.Length
	for _, s := range p.Stretches() {
		sum += s.Length
	}
	return float64(sum) / float64(tape.Foot)
}

func openings(w *schedule.Work, p plan.Plan) {
	for _, d := range p.Job.Sketch.Doorways {
		if d.Undercut {
			w.Jambs = append(w.Jambs, d.Name)
		}
	}
	for _, o := range p.Stripped() {
		w.Openings = append(w.Openings, o.Name)
	}
}

func heights(w *schedule.Work, t trim.Job) {
	for _, o := range t.Openings {
		if o.Leaf.Told || o.Track.Told {
			w.Doors = append(w.Doors, o.Name)
		}
	}
	for _, a := range t.Appliances {
		w.Appliances = append(w.Appliances, a.Name)
	}
}

// loose are layers that lie loose.
var loose = map[subfloor.Material]bool{subfloor.Laminate: true, subfloor.Foam: true, subfloor.Paper: true}

// under is what comes out and what is done to the subfloor.
func under(w *schedule.Work, p plan.Plan) {
	carpet := false
	for _, f := range subfloor.Fates(p.Job.Subfloor.Layers, p.Job.Subfloor.Built) {
		if !f.Out {
			continue
		}
		l := schedule.Layer{Name: string(f.Material), Rate: "layer_out", Test: f.Test}
		switch {
		case f.Material == subfloor.Carpet:
			l.Rate, carpet = "carpet_out", true
		case f.Material == subfloor.Foam && carpet:
			l.Rate = "" // the rate of carpet has the pad in it
		case loose[f.Material]:
			l.Rate = "loose_out"
		}
		w.Layers = append(w.Layers, l)
	}
	s := p.Job.Subfloor
	for _, q := range s.Squeaks {
		w.Screws += subfloor.Screws(q.Long, q.Wide, cmp.Or(p.Job.Joists.Spacing, usualJoists))
	}
	w.FlatTold = len(s.Readings) > 0 || s.Heights.Cols > 0
	under := p.Underfloor()
	for _, r := range s.Readings {
		if holds, _ := under.Rule.Judge(r); holds == subfloor.Fails {
			w.Flatten++
		}
	}
	if s.Heights.Cols > 0 {
		work := under.Work()
		w.Flatten += patches(work.OffAt) + patches(work.UpAt)
	}
}

// usualJoists are taken where the job does not tell theirs: common practice, no
// source.
const usualJoists = 16 * tape.Inch

// patches is how many places so many marks come to: one works on a few at once.
// Common practice, no source.
func patches(marks int) int { return (marks + 3) / 4 }

// cartons are those bought, else as many as the area asks for with a tenth more.
func cartons(w *schedule.Work, p plan.Plan) {
	b := p.Job.Boards
	per := b.Carton.Area.SquareFeet()
	w.Cartons = b.Cartons
	if w.Cartons > 0 || w.SqFt == 0 {
		return
	}
	w.CartonsBy = ", by the area and a tenth more"
	if per == 0 {
		per, w.CartonsBy = 20, ", by the area and a tenth more, taken for 20 sq ft each"
	}
	for float64(w.Cartons)*per < 1.1*w.SqFt {
		w.Cartons++
	}
}
