package goods

import (
	"fmt"

	"strake/bars"
	"strake/tape"
)

// Floor is what there is to know of the floor, read off its plan.
type Floor struct {
	Unit       tape.Unit
	Style      tape.Style
	Base, Shoe tape.Length // thickness, 0 none
	Kerf       tape.Length
	Stretches  []Stretch
	Casings    []string // doorways whose casing is taken for the usual one
	Openings   []Opening
	Under      UnderFloor
	Fixed      Fixed
	Out        TearOut
	Saws       Saws
	Site       SiteFloor
	Rental     Rental
}

// List is everything but the boards, with the cuts that bars are bought for.
type List struct {
	Lines []Line
	Cuts  []Cuts
}

// Cuts is how the bars of one kind are cut.
type Cuts struct {
	What  string
	Names []string // of the pieces
	Long  []tape.Length
	Cut   bars.Cut
}

// work is a list being made.
type work struct {
	f    Floor
	w    Wants
	list List
}

// Of is the list of a floor.
func Of(f Floor, w Wants) List {
	k := &work{f: f, w: w.Filled()}
	k.tearOut()
	k.under()
	k.fixing()
	k.strips()
	k.mouldings()
	k.tools()
	k.gear()
	return k.list
}

// add adds a line with its price.
func (k *work) add(l Line) {
	if m, ok := k.w.Prices.Of[l.Item]; ok && !l.Each.Told && l.Item != "" && l.Count > 0 {
		l.Each = m
	}
	k.list.Lines = append(k.list.Lines, l)
}

// say prints a length, long one that runs along walls and rows.
func (k *work) say(l tape.Length) string { return k.f.Style.Of(l) }

// fine prints a width for the saw, to half the step of other lengths.
func (k *work) fine(l tape.Length) string {
	s := k.f.Style
	if s.Step == 0 {
		s.Step = tape.Paper(s.Unit).Step
	}
	s.Step /= 2
	return s.Of(l)
}

func (k *work) long(l tape.Length) string {
	if k.f.Unit.Imperial() {
		return fmt.Sprintf("%.0f ft", l.Inches()/12)
	}
	return fmt.Sprintf("%.1f m", l.Millimetres()/1000)
}

// cut cuts pieces out of bars and adds a line for each length bought. Priced long,
// a bar costs its length.
func (k *work) cut(l Line, names []string, pieces, sold []tape.Length, long bool) {
	c := bars.Of(bars.Ask{Pieces: pieces, Sold: sold, Kerf: k.f.Kerf})
	if len(c.Bars) > 0 {
		k.list.Cuts = append(k.list.Cuts, Cuts{l.What, names, pieces, c})
	}
	what, each := l.What, l.Each
	for i, b := range c.Lengths() {
		x := l
		x.What, x.Count, x.Unit, x.Each = what+", "+k.say(b.Length), b.Count, "bar", each
		if m, ok := k.w.Prices.Of[l.Item]; ok && long {
			x.Each = m.Times(k.per(b.Length))
		}
		if i > 0 {
			x.From, x.Do, x.Notes, x.Source = "the same", "", nil, ""
		} else {
			x.Notes = append(x.Notes, k.proof(c))
		}
		k.add(x)
	}
	for _, i := range c.Long {
		x := l
		x.What, x.Count, x.Unit = what+", "+k.say(pieces[i])+" in one piece", 1, "piece"
		x.From = names[i] + ", longer than the bars sold"
		x.Do = "Have it made, or ask for a longer one: it must not be joined there."
		x.Item, x.Made = "", true
		k.add(x)
	}
}

// per is a length in what prices by length are for.
func (k *work) per(l tape.Length) float64 {
	if k.f.Unit.Imperial() {
		return l.Inches() / 12
	}
	return l.Millimetres() / 1000
}

// proof says how good a cut is.
func (k *work) proof(c bars.Cut) string {
	scrap := fmt.Sprintf("%s of %s is scrap, kerfs too", k.say(c.Scrap), k.long(c.Bought))
	if c.Proved {
		return scrap + "; no way takes fewer bars, or as many shorter ones"
	}
	return fmt.Sprintf("%s; no way takes fewer than %d bars, or so many of under %s", scrap, c.Fewest, k.long(c.Least))
}
