package trim

import (
	"fmt"

	"strake/ready"
	"strake/room"
	"strake/tape"
)

// Meeting is this floor against what lies beyond an opening.
type Meeting struct {
	Opening
	Stack  Stack
	Beyond tape.Length // height of the floor there over the subfloor
	Diff   tape.Length // how much higher this floor is
	Strip  Strip
	Gap    string
	How    string
	Wide   tape.Length // the opening between its jambs, 0 not known
	Flush  bool        // the job says that the floors meet flush
}

// inside tells whether an opening leads to another room of this floor.
func (w work) inside(name string) bool {
	d, ok := w.doorway(name)
	return ok && d.Beyond == room.BeyondRoom
}

// meetings are the openings where another floor lies beyond, at the job's
// build-up; those of a height not told are left out, but for stairs.
func (w work) meetings() []Meeting {
	var out []Meeting
	for _, o := range w.job.Openings {
		d, isDoor := w.doorway(o.Name)
		m := Meeting{Opening: o, Stack: w.stack(w.chosen(), o.Shim), Wide: d.Width}
		switch {
		case isDoor && d.Beyond == room.BeyondStair:
			m.Strip = Nosing
		case w.inside(o.Name) || !o.Known:
			continue
		default:
			m.Beyond, m.Diff = w.beyond(o), w.diff(w.chosen(), o)
			m.Strip = w.strip(o.Covering, m.Diff)
		}
		s, _ := w.stay(o.Name)
		m.Flush = isDoor && d.Beyond == room.BeyondFlush || !isDoor && s.Meets == room.MeetsFlush
		m.Gap, m.How = w.gap(m.Strip), w.how(m.Strip, o.Covering, m.Diff)
		out = append(out, m)
	}
	return out
}

// beyond is the height of the floor beyond over the subfloor.
func (w work) beyond(o Opening) tape.Length {
	if len(o.Layers) > 0 {
		return Stack(o.Layers).Height()
	}
	return w.over(o.Height)
}

// diff is how much higher this floor comes than the one beyond.
func (w work) diff(b Build, o Opening) tape.Length {
	return w.stack(b, o.Shim).Height() - w.beyond(o)
}

// against says both heights and which is the higher.
func (w work) against(m Meeting) string {
	side := "higher"
	if m.Diff < 0 {
		side = "lower"
	}
	s := fmt.Sprintf("this floor %s over the subfloor, %s %s", w.say(m.Stack.Height()), name(m.Covering), w.say(m.Beyond))
	if m.Diff == 0 {
		return s + ": alike"
	}
	return s + fmt.Sprintf(": %s %s", w.say(m.Diff.Abs()), side)
}

func (w work) meetingVerdicts() []ready.Verdict {
	var out []ready.Verdict
	for _, m := range w.meetings() {
		if m.Strip == Nosing {
			continue // the plan says of nosings what it has to
		}
		out = append(out, w.meet(m))
		if v, ok := w.level(m); ok {
			out = append(out, v)
		}
	}
	return out
}

// meet says which strip goes there.
func (w work) meet(m Meeting) ready.Verdict {
	flush, t, red := w.rule(FlushMost), w.rule(TMouldMost), w.rule(ReducerMost)
	v := ready.Verdict{Say: ready.Go, Rule: "height against the floor beyond", Where: m.Name, Measured: w.against(m),
		Limit: fmt.Sprintf("flush to %s; T-mould to %s; reducer or threshold to %s", flush.words, t.words, red.words), Source: red.Source + "; flush: " + flush.Source,
		Do: m.How + " Gap: " + m.Gap + "."}
	switch {
	case m.Flush && m.Strip != None:
		v.Say, v.Do = ready.Fix, "The job has it met flush, and it is not. Another build-up brings it there, or say that it is met by a transition. "+v.Do
	case m.Strip == Ramp:
		v.Say = ready.Fix
	case m.Strip == Reducer || m.Strip == Threshold:
		v.Say = ready.Look
	}
	return v
}

// level holds the step to the published figures of what trips; nothing where
// it may stand upright.
func (w work) level(m Meeting) (ready.Verdict, bool) {
	up, most := w.rule(UprightMost), w.rule(BevelledMost)
	run, ramp := Bevel(m.Diff, up.Is, most.Is)
	if run == 0 {
		return ready.Verdict{}, false
	}
	v := ready.Verdict{Say: ready.Look, Rule: "change of level", Where: m.Name, Measured: w.say(m.Diff.Abs()),
		Limit: fmt.Sprintf("upright to %s; bevelled to %s", up.words, most.words), Source: up.Source}
	if most.Source != up.Source {
		v.Source += "; " + most.Source
	}
	v.Do = fmt.Sprintf("A strip that rises over at least %s for what is over %s, no steeper than 1:2.", w.up(run), w.say(up.Is))
	if ramp {
		v.Do = "By that standard this is a ramp and no strip. In a private house nobody asks for it; people trip over it all the same."
	}
	return v, true
}

// untold are openings of the floor whose height beyond nobody has told.
func (w work) untold() []ready.Verdict {
	known := map[string]bool{}
	for _, o := range w.job.Openings {
		known[o.Name] = o.Known
	}
	var out []ready.Verdict
	for _, d := range w.f.Doorways {
		if d.Beyond == room.BeyondStair && len(w.job.Stairs) == 0 {
			r := w.rule(RiserApart)
			out = append(out, ready.Verdict{Say: ready.Look, Rule: "risers of a stair", Where: d.Name, Measured: "not told", Limit: "at most " + r.words + " within a flight", Source: r.Source,
				Do: "This floor changes the riser at its head: measure all risers of the flight and write them under heights, stairs."})
		}
		if d.Beyond == room.BeyondRoom || d.Beyond == room.BeyondStair || known[d.Name] {
			continue
		}
		out = append(out, ready.Verdict{Say: ready.Look, Rule: "height against the floor beyond", Where: d.Name, Measured: "not told", Source: common,
			Do: "Lay a straightedge over the edge there and measure from its underside down to " + w.from() + "; write height (or layers) under heights, openings."})
	}
	return out
}

// from says what heights are measured from.
func (w work) from() string {
	if w.job.From == Now {
		return "what lies on this side now"
	}
	return "the subfloor on this side"
}
