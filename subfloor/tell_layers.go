package subfloor

import (
	"fmt"
	"strings"

	"strake/ready"
	"strake/tape"
)

// layers says of each layer that has to be tested, to come out or to be looked at:
// what has to be tested before all else, for nothing over it is torn out before.
func (t teller) layers() []ready.Verdict {
	var first, out []ready.Verdict
	for i, f := range t.fates {
		v := ready.Verdict{Rule: "layer under the floor", Where: fmt.Sprintf("layer %d from the top", i+1), Measured: t.named(f.Layer) + " " + f.Why, Source: f.Source}
		switch {
		case f.Test:
			v.Say, v.Holds = ready.Fix, true
			v.Do = "Stop: leave it alone, and have it tested by a laboratory before it is lifted, sanded, scraped, drilled or swept. Removal and disposal go by local rules; a licensed firm decides how."
			first = append(first, v)
			continue
		case f.Out:
			v.Say, v.Do = ready.Fix, "Take it out before boards are nailed, and count the height that it leaves."
		case f.Look:
			v.Say, v.Do = ready.Look, "Find out, and write it under layers."
		default:
			continue
		}
		out = append(out, v)
	}
	return append(first, out...)
}

func (t teller) named(l Layer) string {
	if l.Thickness == 0 {
		return l.Material.Said()
	}
	return t.fine(l.Thickness) + " " + l.Material.Said()
}

// nailing says what is left to nail into, and whether it is thick enough for its
// joists.
func (t teller) nailing() []ready.Verdict {
	thick, top, known := Nailing(t.fates)
	v := ready.Verdict{Rule: "nailing base", Where: "subfloor", Source: srcCommon}
	switch {
	case t.On == OnSlab && top == "" && t.SlabSaid:
		return nil
	case t.On == OnSlab && top == "":
		v.Say, v.Measured, v.Limit = ready.Fix, "a slab, and no wood over it", "wood that holds a nail"
		v.Do = "Lay a nailing base (plywood or sleepers over a vapour retarder, as the maker of the floor has it), or take boards that are made to be glued down."
		return []ready.Verdict{v}
	case len(t.fates) == 0 || t.unknown():
		return nil
	case top == "":
		v.Say, v.Measured, v.Limit = ready.Fix, "nothing is left that holds a nail", "plywood, OSB or sound board sheathing"
		v.Do = "See what carries the layers that come out, and write it under layers; a panel over it may be what is needed."
		if f, ok := t.thinOSB(); ok {
			v.Measured, v.Source = t.named(f.Layer)+", "+f.Why, srcLayers
			v.Do = "Lay plywood over it, screwed down to the joists, its joints half a panel off those under it, thick enough by itself for the joists' spacing; write it as a layer on top."
		}
		return []ready.Verdict{v}
	case t.On == OnSlab:
		return nil // what lies flat on a slab spans nothing
	case !known || t.Joists == 0:
		v.Say, v.Measured, v.Limit = ready.Look, "thickness or joist spacing is not known", "a thickness for each layer that stays, and spacing under joists"
		v.Do = "Read the edge of the panel at a vent or a hole, and find the joists by their nail lines."
		return []ready.Verdict{v}
	}
	return []ready.Verdict{t.panel(top, thick)}
}

// thinOSB is a layer of OSB that stays and is too thin to nail into, where there is one.
func (t teller) thinOSB() (Fate, bool) {
	for _, f := range t.fates {
		if f.Material == OSB && !f.Out && !f.Holds {
			return f, true
		}
	}
	return Fate{}, false
}

func (t teller) unknown() bool {
	for _, f := range t.fates {
		if f.Look {
			return true
		}
	}
	return false
}

// panel holds the nailing base to its joists.
func (t teller) panel(top Material, thick tape.Length) ready.Verdict {
	p, ok := PanelFor(t.Joists)
	v := ready.Verdict{Say: ready.Go, Rule: "panel over joists", Where: "joists " + t.say(t.Joists) + " on centre", Measured: t.fine(thick) + " " + saidAll(Holding(t.fates)), Source: p.Source}
	if !ok {
		v.Say, v.Limit, v.Do, v.Source = ready.Fix, "no table goes beyond 24 in", "Ask an engineer what has to be added before a floor is laid here.", panels[2].Source
		return v
	}
	v.Limit = "at least " + t.fine(p.Needs(top)) + ", " + ready.Guidance.String() + "; " + p.APA
	if p.How != "" {
		v.Limit += "; " + p.How
	}
	if !p.Enough(top, thick) {
		v.Say, v.Do = ready.Fix, t.remedies(ThinRemedies(p, thick))
	}
	return v
}

// remedies are ways out in a sentence, each with the height it adds.
func (t teller) remedies(rs []Remedy) string {
	var out []string
	for _, r := range rs {
		s := r.What
		if r.Height > 0 {
			s += " (floor higher by " + t.say(r.Height) + ")"
		}
		if c := r.Cost(t.SqFt); c != "" {
			s += ", " + c
		}
		out = append(out, s)
	}
	return "One of: " + strings.Join(out, "; ") + ". No joist is cut, notched or planed." + priced(rs, t.SqFt)
}

// rows says when rows lie along the joists.
func (t teller) rows() []ready.Verdict {
	if t.On == OnSlab || t.Rows != Along {
		return nil
	}
	return []ready.Verdict{{Say: ready.Fix, Rule: "rows along the joists", Where: "subfloor", Measured: "rows lie along the joists: the panels sag between them, and the rows with them", Limit: "across or at an angle, " + ready.Guidance.String(),
		Do: t.remedies(AlongRemedies()), Source: AlongRemedies()[0].Source}}
}

// squeaks says how many screws each place that squeaks takes.
func (t teller) squeaks() []ready.Verdict {
	var out []ready.Verdict
	for _, q := range t.Squeaks {
		v := ready.Verdict{Say: ready.Fix, Rule: "squeak", Where: q.Place, Measured: t.say(q.Long) + " by " + t.say(q.Wide), Source: SrcScrews}
		spacing := t.Joists
		if spacing == 0 {
			spacing = 16 * tape.Inch
			v.Limit = "joists taken to be " + t.say(spacing) + " on centre"
		}
		v.Do = fmt.Sprintf("Screw it down to its joists, a screw every %s: about %d. Look first for pipes and wires beside the joists.", t.say(ScrewsApart), Screws(q.Long, q.Wide, spacing))
		out = append(out, v)
	}
	return out
}
