package subfloor

import (
	"fmt"

	"strake/ready"
	"strake/tape"
)

// unread asks for a straightedge where nobody has laid one.
func (t teller) unread() []ready.Verdict {
	if len(t.Readings)+len(t.Grid.Height) > 0 || len(t.Rule.At) == 0 {
		return nil
	}
	return []ready.Verdict{{Say: ready.Look, Rule: "flatness", Where: "subfloor", Measured: "not read", Limit: t.limit(t.Rule.At[0]), Source: t.Rule.Source,
		Do: "Slide a straightedge of " + t.lengths() + " over all of it, both ways, and write the worst places under straightedge, or heights on a grid under heights. Flat counts, not level."}}
}

// readings holds each straightedge reading to the rule.
func (t teller) readings() []ready.Verdict {
	var out []ready.Verdict
	for _, x := range t.Readings {
		if len(t.Rule.At) == 0 {
			continue
		}
		holds, limit := t.Rule.Judge(x)
		what := "dip"
		if x.Hump {
			what = "hump"
		}
		v := ready.Verdict{Rule: "flatness", Where: x.Place, Source: t.Rule.Source,
			Measured: fmt.Sprintf("%s of %s under %s", what, t.fine(x.Gap), t.say(x.Edge)), Limit: t.limit(limit)}
		switch holds {
		case Passes:
			v.Say = ready.Go
		case Unsure:
			v.Say = ready.Look
			v.Do = "A straightedge of this length does not settle it: read it again with one of " + t.lengths() + "."
			if !t.style.Unit.Imperial() && t.By == ready.Guidance.String() {
				v.Do += " Or hold the floor to a rule made for metric ones: flat: bs sr2, or flat: din row 3."
			}
		case Fails:
			v.Say, v.Do = ready.Fix, t.put(x)
		}
		out = append(out, v)
	}
	return out
}

// put is what is done about a reading, with how much material.
func (t teller) put(x Reading) string {
	side, act := Dip, "built up by"
	if x.Hump {
		side, act = Hump, "taken off by"
	}
	spare, known := t.spare()
	may := MayTake(t.top(), spare, known)
	s := Do(t.top(), side, may > 0, known)
	if side == Hump && may > 0 {
		s += " No more than " + t.fine(may) + " may come off here."
	}
	if side == Hump && may == 0 {
		return s
	}
	long := x.Long
	if long == 0 {
		long = x.Edge
	}
	s += fmt.Sprintf(" To lie flush it is %s %s at most, over %s", act, t.fine(x.Gap), t.say(long))
	if m3, ok := x.Volume(); ok {
		s += " by " + t.say(x.Wide) + ", about " + t.volume(m3)
	}
	return s + "."
}

// limit is a figure of the rule in words.
func (t teller) limit(l Limit) string {
	under := "under "
	if t.Rule.Apart {
		under = "between points "
	}
	s := t.fine(l.Gap) + " " + under + t.say(l.Length)
	if t.Rule.Apart {
		s += " apart"
	}
	return s + ", " + t.By
}

// lengths are the straightedges that the rule speaks of.
func (t teller) lengths() string {
	if t.Rule.Apart {
		return "up to " + t.say(t.Rule.Longest())
	}
	s := t.say(t.Rule.At[0].Length)
	if n := len(t.Rule.At); n > 1 {
		s += " and of " + t.say(t.Rule.At[n-1].Length)
	}
	return s
}

// named is a mark in words: counted from 1, rows from the wall.
func (m Mark) named() string { return fmt.Sprintf("mark %d of line %d", m.Col+1, m.Row+1) }

// grid holds the grid to the rule, and says what makes it flat.
func (t teller) grid() []ready.Verdict {
	g := t.Grid
	if len(g.Height) == 0 || len(t.Rule.At) == 0 {
		return nil
	}
	var out []ready.Verdict
	if hs := g.Holes(); len(hs) > 0 {
		out = append(out, ready.Verdict{Say: ready.Look, Rule: "grid of heights with holes", Where: hs[0].named(), Source: srcCommon,
			Measured: fmt.Sprintf("%d of %d marks not read", len(hs), len(g.Height)), Limit: "a height at each mark",
			Do: "No straightedge was laid over them here: what they hide is not known. Read them, or lay a straightedge across and write it under straightedge."})
	}
	over := g.Over(t.Rule)
	v := ready.Verdict{Say: ready.Go, Rule: "flatness", Where: "grid of heights", Source: t.Rule.Source}
	if len(over) == 0 {
		dip, hump := t.worstOf(Dip), t.worstOf(Hump)
		v.Measured = fmt.Sprintf("dips up to %s, humps up to %s", t.fine(dip.Gap), t.fine(hump.Gap))
		v.Limit = t.limit(t.Rule.At[0])
		out = append(out, v)
	} else {
		out = append(out, t.over(v, over))
	}
	return append(out, t.fNumbers()...)
}

// worstOf is the largest gap that the rule speaks of.
func (t teller) worstOf(s Side) Rest { return t.Grid.Gap(s, t.Rule.Longest()) }

func (t teller) over(v ready.Verdict, over []Over) ready.Verdict {
	worst := over[0]
	for _, o := range over {
		if o.By() > worst.By() {
			worst = o
		}
	}
	what := "dip"
	if worst.Side == Hump {
		what = "hump"
	}
	v.Say = ready.Fix
	v.Where = "grid of heights, worst at " + worst.Most.named()
	v.Measured = fmt.Sprintf("%s of %s between points %s apart; %d of %d marks over", what, t.fine(worst.Gap), t.say(worst.Apart), len(over), len(t.Grid.Height))
	v.Limit = t.limit(worst.Limit)
	w := t.Work()
	if !w.Flat {
		v.Do = "No way was found to bring it within the limit by taking off and building up: lay a new panel on sleepers or shims, or ask a flooring firm."
		return v
	}
	v.Do = "flatness.svg shows what to do at each mark: " + t.amount("take off", w.OffAt, w.MostOff, w.Off)
	if w.OffAt > 0 && w.UpAt > 0 {
		v.Do += "; "
	}
	v.Do += t.amount("build up", w.UpAt, w.MostUp, w.Up) + "."
	if w.OffAt > 0 {
		v.Do += " " + Do(t.top(), Hump, true, true)
	} else if spare, known := t.spare(); worst.Side == Hump && MayTake(t.top(), spare, known) == 0 {
		v.Do += " " + Do(t.top(), Hump, false, known)
	}
	if w.UpAt > 0 {
		v.Do += " " + Do(t.top(), Dip, true, true)
	}
	return v
}

func (t teller) amount(act string, n int, most tape.Length, m3 float64) string {
	if n == 0 {
		return ""
	}
	return fmt.Sprintf("%s at %d, up to %s, about %s in all", act, n, t.fine(most), t.volume(m3))
}

// fNumbers are told of slabs read at 12 in stations.
func (t teller) fNumbers() []ready.Verdict {
	ff, fl, ok := t.Grid.FNumbers()
	if t.top() != OnSlab || !ok {
		return nil
	}
	v := ready.Verdict{Say: ready.Go, Rule: "F-numbers", Where: "grid of heights", Measured: fmt.Sprintf("FF %.0f", ff), Source: "ASTM E1155, constants from memory; its test sections are 320 sq ft and larger"}
	if fl > 0 {
		v.Measured += fmt.Sprintf(", FL %.0f", fl)
	}
	return []ready.Verdict{v}
}
