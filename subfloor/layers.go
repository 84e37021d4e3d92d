package subfloor

import (
	"slices"
	"strings"

	"strake/tape"
)

// Material is what a layer under the new boards is made of.
type Material string

// The materials.
const (
	Plywood       Material = "plywood"
	OSB           Material = "osb"
	Planks        Material = "planks" // square or diagonal board sheathing, 1x6 and the like
	OldBoards     Material = "old boards"
	Particleboard Material = "particleboard"
	MDF           Material = "mdf"
	Hardboard     Material = "hardboard"
	Gypsum        Material = "gypsum"   // poured gypsum or gypsum board
	Leveller      Material = "leveller" // cement-based compound
	Backer        Material = "backer"   // cement board
	Carpet        Material = "carpet"
	Foam          Material = "foam" // pad, foam, cork
	Sheet         Material = "sheet vinyl"
	Resilient     Material = "resilient tile"
	Adhesive      Material = "adhesive"
	CeramicTile   Material = "ceramic tile"
	Laminate      Material = "laminate"
	Paper         Material = "paper" // felt, building paper
	Concrete      Material = "concrete"
	Unknown       Material = "unknown"
)

// Said is the material as it is called in a sentence.
func (m Material) Said() string {
	if m == OSB || m == MDF {
		return strings.ToUpper(string(m))
	}
	return string(m)
}

// saidAll are materials in a sentence: plywood over planks.
func saidAll(ms []Material) string {
	var out []string
	for _, m := range ms {
		out = append(out, m.Said())
	}
	return strings.Join(out, " over ")
}

// Layer is one layer, told from the top.
type Layer struct {
	Material  Material
	Thickness tape.Length // 0: not told
}

// Fate is what becomes of a layer before boards are nailed over it.
type Fate struct {
	Layer
	Holds bool // a nail holds in it
	Out   bool // it comes out
	Test  bool // it may hold asbestos: have it tested before it is touched
	Look  bool // nobody knows what it is
	Why   string

	Source string
}

// kind is what is known of a material.
type kind struct {
	holds, out, test bool
	why              string
}

const (
	srcLayers = "an installer's published guide: board sheathing holds nails, particleboard and 1/2 in OSB do not"
	srcTest   = "RFCI recommended work practices: presume asbestos in old resilient coverings, backing and adhesive unless a laboratory says otherwise; local rules first"
	srcCommon = "common practice, no source"
)

// source is where it comes from what is said of a material.
func source(m Material, test bool) string {
	switch {
	case test:
		return srcTest
	case m == Particleboard || m == OSB || m == Planks:
		return srcLayers
	}
	return srcCommon
}

var kinds = map[Material]kind{
	Plywood:       {holds: true, why: "holds a nail"},
	OSB:           {holds: true, why: "holds a nail where it is thick enough"},
	Planks:        {holds: true, why: "holds a nail where they are sound and nailed down; rows cross them or lie at an angle to them"},
	OldBoards:     {holds: true, why: "hold a nail where they are sound and nailed down; lay across them, or 1/2 in plywood between"},
	Particleboard: {out: true, why: "does not hold nails and swells: it comes out, down to what carries it"},
	MDF:           {out: true, why: "does not hold nails and swells: it comes out"},
	Hardboard:     {out: true, why: "is an underlay for thin coverings, no nailing base: it comes out"},
	Gypsum:        {out: true, why: "breaks up under nails: it comes out, or another way of fixing is used"},
	Leveller:      {out: true, why: "cracks under nails and rattles loose, unless its maker allows nailing through it"},
	Backer:        {out: true, why: "breaks up under nails: it comes out"},
	Carpet:        {out: true, why: "comes out with its tack strips and staples"},
	Foam:          {out: true, why: "gives under the boards so that nails work loose: it comes out"},
	Sheet:         {out: true, test: true, why: "is an old covering whose backing may hold asbestos"},
	Resilient:     {out: true, test: true, why: "is an old covering that may hold asbestos"},
	Adhesive:      {out: true, test: true, why: "that is old, above all black, may hold asbestos: it is not sanded, scraped dry or ground"},
	CeramicTile:   {out: true, why: "comes out with its bed; the bed of an old tile may hold asbestos, its dust holds silica"},
	Laminate:      {out: true, why: "lies loose: it comes out"},
	Paper:         {why: "is thin: comes out with what lies over it or stays"},
	Concrete:      {why: "holds no flooring nail: a nailing base, or boards made for gluing"},
	Unknown:       {why: "material: look at a vent, a doorway or a hole drilled, before anything is ordered"},
}

// Materials are the words for materials that jobs use.
func Materials() []Material {
	return []Material{Plywood, OSB, Planks, OldBoards, Particleboard, MDF, Hardboard, Gypsum, Leveller, Backer, Carpet, Foam, Sheet, Resilient, Adhesive, CeramicTile, Laminate, Paper, Concrete, Unknown}
}

// presumed is the year from which on old resilient coverings are not presumed to
// hold asbestos in the US.
const presumed = 1981

// Fates are what becomes of each layer, from the top. Built is the year of the
// building, 0 not known: resilient coverings from before 1981, or of unknown age,
// are presumed to hold asbestos. Nothing is judged below concrete.
func Fates(layers []Layer, built int) []Fate {
	var out []Fate
	for _, l := range layers {
		k := kinds[l.Material]
		f := Fate{Layer: l, Holds: k.holds, Out: k.out, Test: k.test && built < presumed, Look: l.Material == Unknown, Why: k.why}
		f.Source = source(l.Material, f.Test)
		if l.Material == OSB && l.Thickness > 0 && l.Thickness < minOSB {
			f.Holds, f.Why = false, "too thin to hold a nail by itself: a panel over it"
		}
		out = append(out, f)
		if l.Material == Concrete {
			break
		}
	}
	for i := range out { // what stays cannot lie on what comes out
		if out[i].Out {
			for k := range out[:i] {
				if out[k].Holds && !out[k].Out {
					out[k].Out, out[k].Why = true, "comes out with the "+out[i].Material.Said()+" under it"
				}
			}
		}
	}
	return out
}

// minOSB is the OSB that is refused as a nailing base: 1/2 in and under.
const minOSB = tape.Inch/2 + tape.Sixteenth/2

// Nailing is what is left to nail into, once what has to has come out: the
// thickness of the layers that hold, as far down as they lie on each other, and
// the topmost of them. Known is false where one of them has no thickness.
func Nailing(fs []Fate) (thick tape.Length, top Material, known bool) {
	known = true
	for _, f := range holding(fs) {
		if top == "" {
			top = f.Material
		}
		known = known && f.Thickness > 0
		thick += f.Thickness
	}
	return thick, top, known
}

// Holding are the materials that are left to nail into, each once, from the top.
func Holding(fs []Fate) []Material {
	var out []Material
	for _, f := range holding(fs) {
		if !slices.Contains(out, f.Material) {
			out = append(out, f.Material)
		}
	}
	return out
}

// holding are the layers that are left to nail into, as far down as they lie on
// each other.
func holding(fs []Fate) []Fate {
	var out []Fate
	for _, f := range fs {
		switch {
		case f.Out || f.Material == Paper && len(out) == 0:
			continue
		case !f.Holds:
			return out
		}
		out = append(out, f)
	}
	return out
}

// ComesOut is what lies over the topmost layer that stays and is laid over, once all
// that has to has come out; known is false where one of those has no thickness or
// nothing is told of what stays.
func ComesOut(fs []Fate) (thick tape.Length, known bool) {
	known = true
	for _, f := range fs {
		if f.Material == Concrete || f.Holds && !f.Out {
			return thick, known
		}
		known = known && f.Thickness > 0
		thick += f.Thickness
	}
	return thick, false
}
