package quote

import (
	"strake/goods"
	"strake/schedule"
)

// TaxOn says what tax is on. Law decides; nothing told: materials with their markup.
type TaxOn string

// What it may be on.
const (
	OnMaterials TaxOn = "materials"
	OnAll       TaxOn = "all"
)

// Also is what is charged besides hours and goods.
type Also struct {
	What  string
	Price goods.Money
}

// Terms are what the job says of a quote; zero where nothing was told.
type Terms struct {
	Told       bool
	For, By    string
	Licence    string // numbers of licence and insurance
	Date       schedule.Day
	Valid      int         // days from Date, 0 not told
	Rate       goods.Money // an hour of one person
	Helper     goods.Money // an hour of the second one
	Extra      goods.Money // an hour of what comes besides
	Off        float64     // share that hours may be off by
	OffTold    bool
	Markup     float64 // share on goods
	MarkupTold bool
	TaxOn      TaxOn
	Fixed      bool          // the likely total is the price; else it is an estimate
	Owner      []goods.Group // bought by whom the floor is for
	Also       []Also
	Excluded   []string
	Conditions []string
	Payment    []string
}

// UsualOff is how far hours of rates may be off where the job does not say.
const (
	UsualOff = 0.25
	SrcOff   = "common practice, no source: hours of rates come out within a quarter either way"
)

// off is the share in use.
func (t Terms) off() float64 {
	if t.OffTold {
		return t.Off
	}
	return UsualOff
}

// extra is the rate of what comes besides: its own, else the rate.
func (t Terms) extra() goods.Money {
	if t.Extra.Told {
		return t.Extra
	}
	return t.Rate
}

// Until is the last day that a quote is valid, 0 not known.
func (t Terms) Until() schedule.Day {
	if t.Date == 0 || t.Valid == 0 {
		return 0
	}
	return t.Date + schedule.Day(t.Valid)
}
