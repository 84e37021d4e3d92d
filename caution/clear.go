package caution

import (
	"fmt"
	"strings"

	"strake/ready"
	"strake/site"
)

func one(v ready.Verdict) []ready.Verdict { return []ready.Verdict{v} }

// structure asks for an engineer where what carries the floor was touched or
// gives.
func (w Work) structure() []ready.Verdict {
	v := ready.Verdict{Rule: "what carries the floor", Where: "joists", Measured: string(w.Structure), Limit: "sound, and left alone", Source: srcJoists}
	switch w.Structure {
	case Sags:
		v.Say, v.Holds = ready.Fix, true
		v.Do = "Have a licensed engineer or builder look at it before weight is added: a floor laid over it goes on sagging. No joist is cut, notched or planed to make it flat."
	case Joists:
		v.Say, v.Holds = ready.Fix, true
		v.Do = "Stop. What may be cut from a joist, and where, is local code's and an engineer's to say; what was cut already has to be looked at before it is covered."
	case Wall:
		v.Say, v.Holds = ready.Fix, true
		v.Do = "Have a licensed engineer say what it carried and the authority whether it needs a permit, before it comes out or the floor covers where it stood. Cables and pipes in it are a licensed trade's."
	default:
		return nil
	}
	return one(v)
}

// PaintRule is the name of the rule on old paint.
const PaintRule = "old paint"

// paint stops work on painted trim until the paint was tested.
func (w Work) paint() []ready.Verdict {
	year, _ := w.rule(PaintYear)
	if w.Paint == NoPaint || w.Paint == CleanOne || !w.Base && len(w.Undercut) == 0 && w.Paint == "" {
		return nil
	}
	if w.Built > 0 && float64(w.Built) >= year.Is && w.Paint == "" {
		return nil
	}
	v := ready.Verdict{Say: ready.Fix, Rule: PaintRule, Where: "base, jambs and doors", Limit: fmt.Sprintf("tested, in houses from before %.0f; %s", year.Is, year.By), Source: year.Source}
	switch {
	case w.Paint == LeadPaint:
		v.Measured = "tested: lead"
		v.Do = "No dry sanding, scraping or sawing of it, no heat gun. Ask the authority what applies; a certified firm does it for pay, and its rules (sheeting, wet work, a HEPA vacuum, children kept away) are the ones to keep if you may do it yourself."
	case w.Built > 0:
		v.Measured = fmt.Sprintf("house of %d, not tested", w.Built)
		v.Do = "Have the paint tested before trim comes off or a jamb is sawn, and write paint: clean or lead under hazards."
	default:
		v.Say, v.Measured = ready.Look, "neither the year of the house nor a test is told"
		v.Do = "Write built under subfloor; from before that year, have the paint tested before trim comes off or a jamb is sawn."
	}
	return one(v)
}

// guard looks at the open edge of a stair.
func (w Work) guard() []ready.Verdict {
	v := ready.Verdict{Rule: "guard rail", Where: "stair", Measured: string(w.Guard), Limit: "no open edge, at no time", Source: srcGuard}
	if len(w.Stairs) > 0 {
		v.Where = strings.Join(w.Stairs, ", ")
	}
	switch {
	case w.Guard == ComesOff:
		v.Say, v.Holds = ready.Fix, true
		v.Do = "Put up a temporary one at once, before anything else is done up there; then write guard: temporary. The new one has to be what local code asks for, measured from the new floor."
	case w.Guard == Temporary:
		v.Say = ready.Look
		v.Do = "It stays until the new one stands. The new one is measured from the new floor, which is higher."
	case w.Guard == "" && len(w.Stairs) > 0:
		v.Say, v.Measured = ready.Look, "not answered"
		v.Do = "Does the guard rail at the stair come off for the floor? Write guard: stays, comes off or temporary under hazards."
	default:
		return nil
	}
	return one(v)
}

// services asks whether somebody looked for what a nail could meet.
func (w Work) services() []ready.Verdict {
	v := ready.Verdict{Rule: "pipes and cables", Where: "under the subfloor", Limit: "looked for before the first nail or screw", Source: common}
	switch {
	case w.Services == site.Yes && w.Heated && w.KeepFree == 0:
		v.Say, v.Measured = ready.Fix, "heating in the floor, and no part to keep free is told"
		v.Do = "Map its tubes or wires (a thermal picture while it runs, the installer's drawing), and write them under keep_free; keep the system under pressure or metered while nailing, so that a hit shows."
	case w.Services == site.Yes:
		v.Say, v.Measured = ready.Go, "looked for"
	case w.Services == site.No:
		v.Say, v.Holds, v.Measured = ready.Wait, true, "not looked for"
		v.Do = "Look from below, at radiators, vents and in the walls on both sides, and write what is found under keep_free. A nail can seal a pipe for months before it leaks."
	default:
		v.Say, v.Measured = ready.Look, "not answered"
		v.Do = "Look for pipes, tubes and cables under the floor and beside the joists, and write services: yes under hazards, and what is found under keep_free."
	}
	return one(v)
}
