// Package ready is whether a floor may be laid yet: what was looked at, what
// was found, what it was held to and by whose rule, and what to do.
//
// A subfloor that reads 14 % is held to 12 %: the verdict is {Say: Wait, Rule:
// "wood subfloor, moisture", Where: "subfloor", Measured: "14.0 %", Limit:
// "12 %, trade guidance", Do: "Find where the water comes from ..."}. Rooms that
// look at subfloor, fasteners or heights return verdicts of the same type.
package ready

import "strake/finding"

// Say is the verdict itself.
type Say string

// The verdicts, from the lightest to the heaviest.
const (
	Go    Say = "go"              // as it should be
	Look  Say = "look"            // nothing is wrong, or nothing is known: worth a look
	Wait  Say = "wait"            // time or more readings settle it
	Fix   Say = "fix"             // something has to be done first
	Other Say = "another product" // this floor does not belong here
)

// heavy is the order of the verdicts.
var heavy = map[Say]int{Go: 0, Look: 1, Wait: 2, Fix: 3, Other: 4}

// Verdict is one thing looked at.
type Verdict struct {
	Say      Say
	Rule     string // short name of the rule, in the trade's words
	Where    string // named place: subfloor, a room, a doorway
	Measured string // what was found, with its unit
	Limit    string // what it was held to, with its unit and whose limit it is
	Do       string // what to do about it
	Source   string // where the limit comes from
	Holds    bool   // nothing may be laid while it stands
}

// Held tells whether v keeps a person from going on: it says wait, fix or
// another product.
func (v Verdict) Held() bool { return heavy[v.Say] >= heavy[Wait] }

// Finding is v as a finding of a plan: a stop where nothing may be laid, a
// warning where something has to be waited for or done, a note else.
func (v Verdict) Finding() finding.Finding {
	f := finding.Finding{Level: finding.Note, Rule: v.Rule, Where: v.Where, Measured: v.Measured, Limit: v.Limit, Do: v.Do, Source: v.Source}
	switch {
	case !v.Held():
	case v.Holds:
		f.Level = finding.Stop
	default:
		f.Level = finding.Warn
	}
	return f
}

// Findings are the verdicts that are worth a line in a plan: all but go.
func Findings(vs []Verdict) []finding.Finding {
	var out []finding.Finding
	for _, v := range vs {
		if v.Say != Go {
			out = append(out, v.Finding())
		}
	}
	return out
}

// Worst is the heaviest verdict among vs, Go when there are none.
func Worst(vs []Verdict) Say {
	worst := Go
	for _, v := range vs {
		if heavy[v.Say] > heavy[worst] {
			worst = v.Say
		}
	}
	return worst
}
