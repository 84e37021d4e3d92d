package goods

import (
	"strake/tape"
	"strake/trim"
)

// Opening is an edge that takes a strip or a nosing.
type Opening struct {
	Name   string
	Strip  trim.Strip // "": height not told
	Length tape.Length
	Sides  []tape.Length // of something that stays: each side, instead of Length
}

// kinds are strips as they are bought.
var kinds = map[trim.Strip]struct {
	what string
	item Item
}{
	trim.TMould: {"T-mould", TMould}, trim.Reducer: {"reducer", Reducer}, trim.Threshold: {"threshold", Threshold},
	trim.Ramp: {"threshold made as a ramp", Threshold}, trim.Nosing: {"nosing", Nosing}, "": {"transition strip", Transition},
}

// stripOrder is how they are listed.
var stripOrder = []trim.Strip{trim.TMould, trim.Reducer, trim.Threshold, trim.Ramp, "", trim.Nosing}

// strips are what lies at the openings, each kind out of bars of its own.
func (k *work) strips() {
	for _, s := range stripOrder {
		var names []string
		var pieces []tape.Length
		for _, o := range k.f.Openings {
			if o.Strip == s {
				n, p := k.strip(o)
				names, pieces = append(names, n...), append(pieces, p...)
			}
		}
		if len(pieces) == 0 {
			continue
		}
		sold := k.w.StripSold
		if s == trim.Nosing {
			sold = k.w.NosingSold
		}
		l := Line{Group: Strips, What: kinds[s].what, Item: kinds[s].item, From: listed(names), Source: SrcStrip + "; " + SrcFit}
		switch s {
		case "":
			l.Do = "Its kind hangs on the height of the floor beyond: measure it, and write it under heights, openings."
		case trim.Nosing:
			l.Do = "In one piece: no joint on a step. Glued and fastened before the boards come up to it."
		case trim.Ramp:
			l.Do = "Made to measure: no strip of a guide takes the difference."
		}
		k.cut(l, names, pieces, sold, false)
	}
}

// strip is an opening in pieces: one, or where joints are allowed and no bar is
// long enough as many alike as it takes. Never on a step.
func (k *work) strip(o Opening) (names []string, out []tape.Length) {
	sides := o.Sides
	if len(sides) == 0 {
		sides = []tape.Length{o.Length}
	}
	for i, l := range sides {
		name := o.Name
		if len(sides) > 1 {
			name += " " + string(rune('a'+i%26))
		}
		n := tape.Length(1)
		most := longest(k.w.StripSold)
		if o.Strip != trim.Nosing && (k.w.DoorJoints || len(o.Sides) > 0) && l+k.w.Fit > most {
			n = (l + k.w.Fit + most - 1) / most
		}
		for range n {
			names, out = append(names, name), append(out, (l+k.w.Fit+n-1)/n)
		}
	}
	return names, out
}

func longest(ls []tape.Length) tape.Length {
	out := tape.Length(1)
	for _, l := range ls {
		out = max(out, l)
	}
	return out
}

// listed is names in a sentence.
func listed(names []string) string {
	out := ""
	for i, n := range names {
		switch {
		case i == 0:
		case i == len(names)-1:
			out += " and "
		default:
			out += ", "
		}
		out += n
	}
	return out
}
