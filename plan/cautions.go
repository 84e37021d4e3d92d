package plan

import (
	"slices"

	"strake/caution"
	"strake/room"
	"strake/site"
	"strake/subfloor"
	"strake/tape"
)

// Cautions are what to mind with each task of the job, by the order of the tasks.
func (p Plan) Cautions() []caution.Caution { return caution.Cautions(p.work()) }

// mineral are layers whose dust holds silica.
var mineral = []subfloor.Material{subfloor.CeramicTile, subfloor.Backer, subfloor.Leveller, subfloor.Gypsum}

// work is what the job asks hands to do.
func (p Plan) work() caution.Work {
	j := p.Job
	w := caution.Work{House: j.Hazards, Built: j.Subfloor.Built, Base: j.Base > 0, Heated: j.Site.Heated == site.Yes, KeepFree: len(j.KeepFree),
		Crawl: j.Site.Crawl.Told, Glued: j.Site.Glue == site.Yes, Slab: onSlab(j), Thickness: j.Boards.Thickness,
		Species: j.Boards.Species + " " + j.Boards.Name, Carton: j.Boards.Carton.FaceArea(j.Boards.Face).SquareFeet(), Style: tape.Paper(j.Unit)}
	for _, d := range j.Sketch.Doorways {
		if d.Undercut {
			w.Undercut = append(w.Undercut, d.Name)
		}
		if d.Beyond == room.BeyondStair {
			w.Stairs = append(w.Stairs, d.Name)
		}
	}
	for _, f := range subfloor.Fates(j.Subfloor.Layers, j.Subfloor.Built) {
		w.TearOut = w.TearOut || f.Out
		w.Tested = w.Tested || f.Test
		w.Mineral = w.Mineral || f.Out && slices.Contains(mineral, f.Material)
	}
	flat := p.flatten()
	w.Mineral = w.Mineral || w.Slab && flat
	w.Sanded = !w.Slab && flat
	return w
}

// flatten tells whether something is taken off the subfloor to make it flat.
func (p Plan) flatten() bool {
	s := p.Underfloor()
	for _, r := range s.Readings {
		if r.Hump {
			return true
		}
	}
	return p.Job.Subfloor.Heights.Cols > 0 && s.Work().MostOff > 0
}
