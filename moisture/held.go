package moisture

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"strake/ready"
	"strake/wood"
)

// meter tells readings that the meter cannot have made, or that its table does
// not reach, and single ones far from the rest.
func (j Job) meter(s Sample, l Looked, where string) []ready.Verdict {
	var out []ready.Verdict
	if len(l.Beyond) > 0 {
		least, most := j.Meter.span()
		limit := fmt.Sprintf("%g to %g %%, what the meter reads", least, most)
		if len(s.Table) > 0 {
			t := sorted(s.Table)
			limit += fmt.Sprintf(", and its table from %g to %g %%", t[0].Shows, t[len(t)-1].Shows)
		}
		out = append(out, ready.Verdict{Say: ready.Fix, Rule: suspectRule, Where: where, Measured: percents(l.Beyond), Limit: limit,
			Do:     "Left out of the mean. Read there again, see whether the pins touch metal or glue, and whether the meter is set to the material; wetter than it reads is too wet, drier is not known.",
			Source: "Wood Handbook (FPL-GTR-190): resistance meters 6 to 30 %, dielectric ones 4 to 30 %; the meter's own leaflet first"})
	}
	if len(l.Far) > 0 {
		out = append(out, ready.Verdict{Say: ready.Look, Rule: "single readings far off", Where: where, Measured: percents(l.Far), Limit: fmt.Sprintf("mean %.1f %%", l.Mean),
			Do: "Read those places again. A wet spot stays wet however good the mean is: look for a leak, an outside wall, a spot over a damp crawl space.", Source: "guidance goes by the mean; single readings: " + common})
	}
	return out
}

// setting compares the species that the meter was set to with the boards'.
func (j Job) setting(f Floor) []ready.Verdict {
	if len(j.Boards.Reads) == 0 || j.Boards.Setting == "" {
		return nil
	}
	set, ok := wood.Find(j.Boards.Setting)
	is, ok2 := wood.Find(f.Species)
	panel := slices.ContainsFunc(panels, func(word string) bool { return strings.Contains(strings.ToLower(j.Boards.Setting), word) })
	if !ok2 {
		is.Name = "solid wood"
	}
	if !panel && (!ok || !ok2 || set.Name == is.Name) || len(j.Boards.Table) > 0 {
		return nil
	}
	return []ready.Verdict{{Say: ready.Fix, Rule: suspectRule, Where: theBoards, Measured: "meter set to " + j.Boards.Setting, Limit: "the boards are " + is.Name,
		Do: "Read again with the meter set to the wood, or write the meter's table for it: a wrong setting is off by whole points.", Source: srcSetting}}
}

const srcSetting = common + ": a subfloor read 18 % on the wrong setting and was 10 to 11 %"

// panels are words for a subfloor that a meter has settings of its own for.
var panels = []string{"plywood", "osb", "concrete", "particleboard"}

// underSetting looks whether the meter was set to what the subfloor is made of,
// where its top layer is known.
func (j Job) underSetting(f Floor) []ready.Verdict {
	s := j.Subfloor
	if len(s.Reads) == 0 || len(s.Table) > 0 {
		return nil
	}
	if f.Under == "" {
		return j.onConcrete(f)
	}
	under := f.Under
	if under == "osb" || under == "mdf" {
		under = strings.ToUpper(under)
	}
	v := ready.Verdict{Rule: settingRule, Where: subfloor, Measured: "set to " + s.Setting, Limit: "the subfloor is " + under,
		Source: srcSetting}
	named := func(word string) bool { return strings.Contains(strings.ToLower(s.Setting), word) }
	boards, known := wood.Find(f.Species)
	set, ok := wood.Find(s.Setting)
	switch {
	case s.Setting == "":
		v.Say, v.Measured = ready.Look, "setting not written down"
		v.Do = "See that the meter is set to " + under + ", by its maker's table, and write it as setting."
	case named(f.Under):
		return nil
	case slices.ContainsFunc(panels, named):
		v.Say, v.Do = ready.Fix, "Read again with the meter set to "+under+", or write the meter's table for it: a wrong setting is off by whole points."
	case ok && known && set.Name == boards.Name:
		v.Say, v.Do = ready.Fix, "That is the setting for the boards. Read the subfloor again with the meter set to "+under+", or write the meter's table for it."
	default:
		return nil
	}
	return []ready.Verdict{v}
}

// onConcrete notices a meter set to concrete on a wood subfloor whose top layer is
// not known.
func (j Job) onConcrete(f Floor) []ready.Verdict {
	if f.Slab || !strings.Contains(strings.ToLower(j.Subfloor.Setting), "concrete") {
		return nil
	}
	return []ready.Verdict{{Say: ready.Fix, Rule: settingRule, Where: subfloor, Measured: "set to " + j.Subfloor.Setting, Limit: "wood is read",
		Do: "Read the wood again with the meter set to what it is, such as plywood; a slab is tested by probes or dishes (moisture, slab).", Source: srcSetting}}
}

// wanted is how many readings an area asks for: so many for 1,000 sq ft, and
// never fewer than half of that.
func wanted(sqft float64, per1000 int) int {
	return max(per1000/2, int(math.Ceil(sqft*float64(per1000)/1000-1e-9)))
}

// Wanted is how many readings of subfloor and boards a floor asks for.
func Wanted(f Floor) (subfloor, boards int) {
	return wanted(f.SqFt, subfloorReadings), wanted(f.SqFt, boardReadings)
}

// The readings asked for over 1,000 sq ft.
const (
	subfloorReadings = 20
	boardReadings    = 40
)

// count asks for more readings where there are too few for the area.
func count(have int, f Floor, per1000 int, where string) []ready.Verdict {
	want := wanted(f.SqFt, per1000)
	v := ready.Verdict{Say: ready.Go, Rule: countRule, Where: where, Measured: fmt.Sprint(have), Limit: fmt.Sprintf("at least %d", want), Source: srcCount}
	if f.SqFt > 0 {
		v.Limit += " for " + f.area() + ", trade guidance"
	} else {
		v.Limit += " up to 500 sq ft, trade guidance"
	}
	if have < want {
		v.Say, v.Do = ready.Wait, fmt.Sprintf("Take %d more, spread over the whole floor, also along outside walls and over the worst of what is below.", want-have)
		if where == theBoards {
			v.Do = fmt.Sprintf("Take %d more, of boards from several cartons.", want-have)
		}
	}
	return []ready.Verdict{v}
}

// figures are count, mean, spread and range in words.
func (l Looked) words() string {
	s := fmt.Sprintf("mean %.1f %%, %.1f to %.1f %%, spread %.1f", l.Mean, l.Least, l.Most, l.Spread)
	for i, x := range l.Contents {
		if math.Abs(x-l.Shown[i]) > 0.005 {
			return s + ", put right from what the meter showed"
		}
	}
	return s
}

// subfloor holds the subfloor to its limit.
func (j Job) subfloor(l Looked, f Floor) []ready.Verdict {
	if len(j.Subfloor.Reads) == 0 {
		return nil
	}
	out := count(len(l.Contents), f, subfloorReadings, subfloor)
	if len(l.Contents) == 0 {
		return out
	}
	r, unit := Guides.Rule(j.Limits, SubfloorMost)
	v := ready.Verdict{Say: ready.Go, Rule: "moisture of the wood subfloor", Where: subfloor, Measured: l.words(), Limit: "at most " + r.Words(unit), Source: r.Source}
	switch {
	case l.Mean > r.Is:
		v.Say, v.Holds = ready.Wait, true
		v.Do = "Lay nothing. Find where the water comes from (crawl space, plumbing, new building work, a wet screed), stop it, dry the house, and read again."
		if j.Subfloor.Setting == "" {
			v.Do += " First see that the meter is set to the material of the subfloor: one read 18 % on the wrong setting and was 10 to 11 % (" + common + ")."
		}
	case l.Mean+2*l.MeanDoubt() > r.Is && l.MeanDoubt() > 0:
		v.Say, v.Do = ready.Look, fmt.Sprintf("The mean is doubtful by %.1f points, and the limit lies within: take more readings.", 2*l.MeanDoubt())
	}
	v.Do = join(v.Do, r.Stricter(true, unit))
	return append(out, v)
}

// boards holds the boards to their limit and to the content aimed for.
func (j Job) boards(l Looked, f Floor) []ready.Verdict {
	if len(j.Boards.Reads) == 0 {
		return nil
	}
	out := count(len(l.Contents), f, boardReadings, theBoards)
	if len(l.Contents) == 0 {
		return out
	}
	r, unit := Guides.Rule(j.Limits, BoardsMost)
	v := ready.Verdict{Say: ready.Go, Rule: boardsRule, Where: theBoards, Measured: l.words(), Limit: "at most " + r.Words(unit), Source: r.Source}
	if l.Mean > r.Is {
		v.Say, v.Holds = ready.Wait, true
		v.Do = "Lay nothing. Let the boards dry in the room, stacked with laths between, and log their readings."
	}
	v.Do = join(v.Do, r.Stricter(true, unit))
	return append(append(out, v), j.aim(l)...)
}

// aim holds the boards to the content halfway between the seasons.
func (j Job) aim(l Looked) []ready.Verdict {
	s, ok := j.Climate.Season()
	if !ok {
		return nil
	}
	r, unit := Guides.Rule(j.Limits, AimWithin)
	v := ready.Verdict{Say: ready.Go, Rule: aimRule, Where: theBoards, Measured: fmt.Sprintf("mean %.1f %%", l.Mean),
		Limit: fmt.Sprintf("within %s, of %.1f %%", r.Words(unit), s.Aim), Source: r.Source}
	if math.Abs(l.Mean-s.Aim) > r.Is {
		v.Say = ready.Wait
		v.Do = "Condition the building first, then let the boards come to the aim, and log their readings: days alone tell nothing."
	}
	v.Do = join(v.Do, r.Stricter(true, unit))
	return []ready.Verdict{v}
}

// apart holds boards and subfloor to each other.
func (j Job) apart(boards, sub Looked, f Floor) []ready.Verdict {
	if len(boards.Contents) == 0 || len(sub.Contents) == 0 {
		return nil
	}
	r, unit := DifferenceOf(j.Limits, f.widest())
	off := boards.Mean - sub.Mean
	doubt := 2 * math.Hypot(boards.MeanDoubt(), sub.MeanDoubt())
	v := ready.Verdict{Say: ready.Go, Rule: apartRule, Where: "boards and subfloor",
		Measured: fmt.Sprintf("%.1f points apart by their means (%.1f and %.1f %%)", math.Abs(off), boards.Mean, sub.Mean),
		Limit:    fmt.Sprintf("at most %s, boards of %s", r.Words(unit), f.width(f.widest())), Source: r.Source}
	switch {
	case math.Abs(off) > r.Is:
		v.Say, v.Holds = ready.Wait, true
		v.Do = "Lay nothing. The wetter of the two has to dry: " + map[bool]string{true: "the boards.", false: "the subfloor. Find where its water comes from first."}[off > 0]
	case math.Abs(off)+doubt > r.Is && doubt > 0:
		v.Say, v.Do = ready.Look, fmt.Sprintf("The difference is doubtful by %.1f points, and the limit lies within: take more readings.", doubt)
	}
	v.Do = join(v.Do, r.Stricter(true, unit))
	return []ready.Verdict{v}
}

func percents(xs []float64) string {
	var out []string
	for _, x := range xs {
		out = append(out, fmt.Sprintf("%.4g", x))
	}
	return strings.Join(out, ", ") + " %"
}

// join is two sentences, either of which may be missing.
func join(a, b string) string { return strings.TrimSpace(a + " " + b) }
