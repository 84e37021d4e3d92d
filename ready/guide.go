package ready

// Limits are limits that replace the guidance, by their keys.
type Limits map[string][]Limit

// Guide is a limit of trade guidance with its key, unit and words.
type Guide struct {
	Key, Unit, Doc string
	Is             float64
	Source         string
}

// Guides are the limits of trade guidance of one room.
type Guides []Guide

// Rule is the limit that stands for a key beside those given, and its unit. A
// key that is none of the guides' is a slip of the room that asks.
func (gs Guides) Rule(given Limits, key string) (Ruling, string) {
	for _, g := range gs {
		if g.Key == key {
			return Rule(Limit{Is: g.Is, Source: g.Source}, given[key]...), g.Unit
		}
	}
	panic("ready: no limit " + key)
}
