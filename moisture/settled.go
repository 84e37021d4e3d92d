package moisture

import (
	"slices"

	"strake/ready"
)

// Names of rules that a schedule goes by.
const (
	missingRule   = "no readings yet"
	countRule     = "number of readings"
	slabCountRule = "number of slab tests"
	suspectRule   = "suspect value"
	settingRule   = "setting of the meter"
	airRule       = "air in service"
	leadRule      = "where the air leads"
	boardsRule    = "moisture of the boards"
	aimRule       = "boards against the mid-season content"
	apartRule     = "boards against subfloor"
)

// Settled is what settles a verdict that holds a floor up.
type Settled int

// The ways.
const (
	ByReading Settled = iota // readings or living climate, which the job has steps for
	ByRest                   // boards that come to rest: a log tells the day
	ByNobody                 // what no log tells the day of
)

// SettledBy is what settles a verdict on moisture that holds.
func SettledBy(v ready.Verdict) Settled {
	switch {
	case slices.Contains([]string{missingRule, countRule, slabCountRule, suspectRule, settingRule, airRule, leadRule}, v.Rule):
		return ByReading
	case v.Say == ready.Wait && slices.Contains([]string{boardsRule, aimRule, apartRule, RestRule}, v.Rule):
		return ByRest
	}
	return ByNobody
}
