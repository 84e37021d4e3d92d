package goods

import (
	"strake/tape"
)

// Way says what becomes of base or shoe.
type Way string

// The ways.
const (
	Refit Way = "refit" // what is there comes off, numbered by wall, and goes on again
	Buy   Way = "buy"
	NoWay Way = "none"
)

// Have says how a tool comes to the site.
type Have string

// The ways.
const (
	Own      Have = "own"
	Rent     Have = "rent"
	Borrow   Have = "borrow"
	BuyOne   Have = "buy"
	NotKnown Have = ""
)

// Tool is what the job says of a tool.
type Tool struct {
	Name  string
	Have  Have
	Days  int
	Daily Money // rent for a day
	Price Money // to buy
}

// Roll is what the sheet is sold in.
type Roll struct{ Width, Length, Lap tape.Length }

// Glue is how adhesive goes on, and what it is sold in.
type Glue struct {
	Bead  tape.Length // across
	Apart tape.Length // from one bead to the next
	Tube  float64     // millilitres
}

// Wants is what the job says of the goods; zero figures are the defaults.
type Wants struct {
	Told        bool
	Base, Shoe  Way
	BaseSold    []tape.Length
	ShoeSold    []tape.Length
	StripSold   []tape.Length
	NosingSold  []tape.Length
	DoorJoints  bool        // strips may be joined in a doorway
	Fit         tape.Length // what a piece is cut longer by, to be fitted
	FitTold     bool
	Casing      tape.Length // from a jamb's face to its outer edge, where a doorway does not say
	CasingTold  bool
	Roll        Roll
	StapleEvery tape.Length
	Glue        Glue
	SplineSold  tape.Length
	Tools       []Tool
	Prices      Prices
}

// Prices are what things cost.
type Prices struct {
	Told     bool
	Currency string
	Tax      float64 // share
	TaxTold  bool
	Of       map[Item]Money
}

// Item is what a price is entered under.
type Item string

// The items.
const (
	Carton     Item = "carton" // its price stands with the boards
	BaseItem   Item = "base"
	ShoeItem   Item = "shoe"
	TMould     Item = "t_mould"
	Reducer    Item = "reducer"
	Threshold  Item = "threshold"
	Transition Item = "transition"
	Nosing     Item = "nosing"
	SheetItem  Item = "underlayment"
	Staples    Item = "staples"
	Fasteners  Item = "fasteners"
	Nails      Item = "finish_nails"
	Spline     Item = "spline"
	Adhesive   Item = "adhesive"
	Putty      Item = "putty"
	Blade      Item = "blade"
	Bags       Item = "bags"
	Disposal   Item = "disposal"
)

// Items are all items, with what one of them is a price of.
var Items = []struct {
	Item Item
	Of   string
	Long bool // a foot, or a metre in a job of metric units
}{
	{BaseItem, "base", true}, {ShoeItem, "shoe", true},
	{TMould, "one T-mould as sold", false}, {Reducer, "one reducer as sold", false}, {Threshold, "one threshold as sold", false},
	{Transition, "one transition strip of a kind not told", false}, {Nosing, "one nosing as sold", false},
	{SheetItem, "a roll of what goes under the boards", false}, {Staples, "a box of staples for it", false},
	{Fasteners, "a box of cleats or staples", false}, {Nails, "a box of finish nails", false}, {Spline, "one spline as sold", false},
	{Adhesive, "a tube of adhesive", false}, {Putty, "a tub of putty", false}, {Blade, "a saw blade", false},
	{Bags, "a rubble bag", false}, {Disposal, "having a cubic yard taken away, or a cubic metre in a job of metric units", false},
}

// The defaults, with their sources.
const (
	SrcBase   = "common practice, no source: base and shoe come in bars of 8, 12 and 16 ft"
	SrcStrip  = "a flooring store's list of mouldings: sold in lengths of 78 in"
	SrcFit    = "common practice, no source: cut 1/2 in long and fitted"
	SrcCasing = "common practice, no source: casings of 2-1/4 in, set back 1/4 in from the jamb's face"
	SrcRoll   = "from memory: number 15 felt comes in rolls of 36 in by 144 ft"
	SrcLap    = "Hardwood Floors magazine, February 2017: laps of at least 4 in"
	SrcStaple = "common practice, no source: a staple every 12 in along both edges of a sheet"
	SrcGlue   = "common practice, no source: 1/4 in beads across the boards, 12 in apart, from tubes of 28 fl oz, where its maker does not say"
	SrcSpline = "common practice, no source: slip tongue comes in lengths of 36 in"
	common    = "common practice, no source"
)

// Filled is w with the defaults where nothing was told.
func (w Wants) Filled() Wants {
	ft := tape.Foot
	if len(w.BaseSold) == 0 {
		w.BaseSold = []tape.Length{8 * ft, 12 * ft, 16 * ft}
	}
	if len(w.ShoeSold) == 0 {
		w.ShoeSold = []tape.Length{8 * ft, 12 * ft, 16 * ft}
	}
	for _, s := range []*[]tape.Length{&w.StripSold, &w.NosingSold} {
		if len(*s) == 0 {
			*s = []tape.Length{78 * tape.Inch}
		}
	}
	if w.Base == "" {
		w.Base = Refit
	}
	if w.Shoe == "" {
		w.Shoe = Buy
	}
	if !w.FitTold {
		w.Fit = tape.Inch / 2
	}
	if !w.CasingTold {
		w.Casing = tape.Inch * 5 / 2
	}
	for _, x := range []struct {
		to *tape.Length
		is tape.Length
	}{{&w.Roll.Width, 36 * tape.Inch}, {&w.Roll.Length, 144 * ft}, {&w.Roll.Lap, 4 * tape.Inch}, {&w.StapleEvery, ft},
		{&w.Glue.Bead, tape.Inch / 4}, {&w.Glue.Apart, ft}, {&w.SplineSold, 36 * tape.Inch}} {
		if *x.to == 0 {
			*x.to = x.is
		}
	}
	if w.Glue.Tube == 0 {
		w.Glue.Tube = 828
	}
	return w
}
