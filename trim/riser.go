package trim

import (
	"fmt"
	"slices"
	"strings"

	"strake/ready"
	"strake/tape"
)

// Flight is a stair with its risers as they will be.
type Flight struct {
	Stair
	Rise tape.Length   // how much this floor raises its end of the flight
	Then []tape.Length // the risers, from the foot up
	// Least and Most are how much this floor may come up there with treads and
	// other end as told; Least is above Most where nothing keeps the limit.
	Least, Most tape.Length
	Even        bool // the limit is kept
}

// Apart is the difference of the largest and the smallest riser.
func (f Flight) Apart() tape.Length { return slices.Max(f.Then) - slices.Min(f.Then) }

// rise is how much a build-up raises this floor over what heights are measured
// from.
func (w work) rise(b Build, shim tape.Length) tape.Length {
	return w.stack(b, shim).Height() - w.over(0)
}

// Risers are the risers of a flight once its foot, its treads and its head are
// raised.
func Risers(now []tape.Length, foot, treads, head tape.Length) []tape.Length {
	out := slices.Clone(now)
	if len(out) == 0 {
		return out
	}
	out[0] += treads - foot
	last := len(out) - 1
	out[last] += head - treads
	return out
}

// ends are how much foot and head of a stair come up at a rise of this floor.
func (s Stair) ends(rise tape.Length) (foot, head tape.Length) {
	if s.Head {
		return s.Other, rise
	}
	return rise, s.Other
}

// own is the riser that this floor changes, counted from 0 at the foot.
func (s Stair) own() int {
	if s.Head {
		return len(s.Risers) - 1
	}
	return 0
}

// flight is a stair at a rise of this floor.
func (w work) flight(s Stair, rise tape.Length) Flight {
	foot, head := s.ends(rise)
	f := Flight{Stair: s, Rise: rise, Then: Risers(s.Risers, foot, s.Treads, head)}
	f.Even = f.Apart() <= w.rule(RiserApart).Is
	foot, head = s.ends(0)
	level := Risers(s.Risers, foot, s.Treads, head) // were this floor not raised
	own := level[s.own()]
	rest := slices.Delete(level, s.own(), s.own()+1)
	apart := w.rule(RiserApart).Is
	low, high := slices.Max(rest)-apart, slices.Min(rest)+apart // between them its riser has to be
	f.Least, f.Most = own-high, own-low
	if s.Head {
		f.Least, f.Most = low-own, high-own
	}
	if slices.Max(rest)-slices.Min(rest) > apart {
		f.Least, f.Most = 1, 0
	}
	return f
}

// stairs are those with risers to compare.
func (w work) stairs() []Stair {
	return slices.DeleteFunc(slices.Clone(w.job.Stairs), func(s Stair) bool { return len(s.Risers) < 2 })
}

func (w work) flights() []Flight {
	var out []Flight
	for _, s := range w.stairs() {
		out = append(out, w.flight(s, w.rise(w.chosen(), s.Shim)))
	}
	return out
}

func (w work) riserVerdicts() []ready.Verdict {
	var out []ready.Verdict
	for _, f := range w.flights() {
		out = append(out, w.risers(f))
		if v, ok := w.steep(f); ok {
			out = append(out, v)
		}
	}
	return out
}

// risers holds the difference within a flight to the limit.
func (w work) risers(f Flight) ready.Verdict {
	r := w.rule(RiserApart)
	end, i := "foot", f.own()
	if f.Head {
		end = "head"
	}
	v := ready.Verdict{Say: ready.Go, Rule: "risers of a stair", Where: f.Name, Source: r.Source,
		Measured: fmt.Sprintf("this floor comes up by %s at its %s: that riser %s instead of %s; largest and smallest %s apart", w.say(f.Rise), end, w.say(f.Then[i]), w.say(f.Risers[i]), w.say(f.Apart())),
		Limit:    "at most " + r.words + " within a flight"}
	if f.Even {
		v.Do = r.stricter
		return v
	}
	v.Say, v.Holds = ready.Fix, true
	narrow := w.standing(f)
	switch {
	case f.Least <= f.Most && narrow.Most < narrow.Least:
		v.Do = "No build-up of this floor keeps it without making a riser too high."
	case f.Most < f.Least:
		v.Do = "The other risers are further apart than that already: no build-up of this floor mends it."
	case narrow.Most < 0:
		v.Do = "No build-up keeps it with the treads as they are: this floor would have to go down."
	default:
		v.Do = "Keep it: this floor may come up by " + w.between(narrow) + " there" + w.bound(f, narrow) + "."
		if bs := w.keep(f.Stair); len(bs) > 0 {
			v.Do += " Build-ups that do: " + strings.Join(bs, "; ") + "."
		} else if len(w.job.Stocked.Boards)+len(w.job.Stocked.Panels) > 0 {
			v.Do += " None that is stocked does."
		}
	}
	v.Do += " Or treads and the floor at its other end come up by as much too: treads alone move the fault to that end. Steps that differ are a fall waiting: local code and a licensed stair builder decide."
	return v
}

// standing is the range of a flight, narrowed to what keeps its riser from becoming
// too high; one that is so already may stay as it is.
func (w work) standing(f Flight) Flight {
	now := f.Risers[f.own()]
	room := max(0, w.rule(RiserMost).Is-now)
	if f.Head {
		f.Most = min(f.Most, room+f.Rise-(f.Then[f.own()]-now))
	} else {
		f.Least = max(f.Least, f.Rise+f.Then[f.own()]-now-room)
	}
	return f
}

// bound says that a range was narrowed by the highest riser.
func (w work) bound(f, narrow Flight) string {
	if f.Most == narrow.Most && (f.Least == narrow.Least || narrow.Least <= 0) {
		return ""
	}
	return ", for no riser to be over " + w.rule(RiserMost).words
}

// between is the range that the floor may come up by.
func (w work) between(f Flight) string {
	if f.Least <= 0 {
		return "at most " + w.f.style().Down(f.Most)
	}
	return w.up(f.Least) + " to " + w.f.style().Down(f.Most)
}

// keep are the build-ups that keep a flight's limit, as said.
func (w work) keep(s Stair) []string {
	var out []string
	for _, b := range w.builds() {
		if f := w.flight(s, w.rise(b, s.Shim)); f.Even && !w.tooHigh(f) {
			out = append(out, w.build(b))
		}
	}
	return out
}

// tooHigh tells whether the floor makes a riser higher than is let stand.
func (w work) tooHigh(f Flight) bool {
	high := slices.Max(f.Then)
	return high > w.rule(RiserMost).Is && high > slices.Max(f.Risers)
}

// steep holds each riser to the highest that is let stand.
func (w work) steep(f Flight) (ready.Verdict, bool) {
	r := w.rule(RiserMost)
	if !w.tooHigh(f) {
		return ready.Verdict{}, false
	}
	high := slices.Max(f.Then)
	return ready.Verdict{Say: ready.Fix, Rule: "height of a riser", Where: f.Name, Measured: w.say(high), Limit: "at most " + r.words, Source: r.Source,
		Do: "Ask what your code lets stand, before the floor is ordered: a lower build-up, or treads raised too."}, true
}
