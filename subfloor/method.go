package subfloor

import "strake/tape"

// Base is what the floor lies on.
type Base string

// The bases. A job names the first two.
const (
	OnWood Base = "wood"
	OnSlab Base = "slab"
	// OverSlab is wood that holds a nail over a slab: what is read there is the
	// top of the wood.
	OverSlab Base = "wood over a slab"
)

// What is done about a hump or dip. Nothing that sets like mortar goes under
// nails: it breaks up where one goes through.
const (
	sandHump  = "Sand it down, with dust kept in: first make sure that no old paint, adhesive or covering is on it that needs a test; sink or draw every fastener."
	blindHump = "How much of it can come off is not known (its thickness and the spacing of the joists tell it), so none is sanded: build up to both sides, or lay a panel over it."
	overSlab  = "None of it is sanded: it is what the fasteners hold in, and nothing below it gives them more. Build up to both sides, or lay another panel."
	keepHump  = "The panel is no thicker than its joists need, so none of it is sanded off: build up to both sides, or lay a panel over it."
	shimDip   = "Build it up with layers that take a nail: building paper or felt, wood shingles, or plywood. No compound that sets hard goes under nails, unless its maker allows nailing through it."
	grindHump = "Grind it down, wet or with a shroud and HEPA suction: the dust holds silica; nothing is ground before old adhesive on it has been tested."
	fillDip   = "Fill it with a compound made for the floor above, on a primed slab, within its maker's depths; or take the edges down."
)

// Do says what is done about a place. May is whether anything may be taken off;
// known, whether what the panel can spare is known. Wood that lies over a slab is
// wood: what is filled under it would set under nails.
func Do(b Base, s Side, may, known bool) string {
	switch {
	case b == OnSlab && s == Hump:
		return grindHump
	case b == OnSlab:
		return fillDip
	case s == Dip:
		return shimDip
	case may:
		return sandHump
	case b == OverSlab:
		return overSlab
	case !known:
		return blindHump
	}
	return keepHump
}

// mostOff is what is ground off a slab at most before somebody has to look for
// what lies in it: reinforcement, heating pipes (common practice, no source).
const mostOff = tape.Inch / 4

// MayTake is how much may be taken off: of a slab a little, of wood what the
// panel has to spare, nothing where its thickness or the joists are not known.
func MayTake(b Base, spare tape.Length, known bool) tape.Length {
	switch {
	case b == OnSlab:
		return mostOff
	case known:
		return spare
	}
	return 0
}
