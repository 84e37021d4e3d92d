package check

import (
	"slices"
	"strings"

	"strake/finding"
)

// Rule is one thing that a lay is held to.
type Rule struct {
	Name string // in the trade's words; the Rule of its findings
	Text string // one sentence: what must hold
	hold func(Rule, *site) []finding.Finding
}

// known are all the rules. A rule enters by being declared, so none can exist
// without being run.
var known []Rule

// declare makes a rule and enters it among the known ones. What holds a lay to
// it is handed the rule, to make findings with.
func declare(name, text string, hold func(Rule, *site) []finding.Finding) Rule {
	r := Rule{name, text, hold}
	known = append(known, r)
	return r
}

// Rules lists every rule by name.
func Rules() []Rule {
	out := slices.Clone(known)
	slices.SortFunc(out, func(a, b Rule) int { return strings.Compare(a.Name, b.Name) })
	return out
}

// stop is a finding of r that breaks the lay.
func (r Rule) stop(where string, pieces ...int) finding.Finding {
	return finding.Finding{Level: finding.Stop, Rule: r.Name, Where: where, Pieces: pieces}
}

// note is a finding of r that is only worth knowing.
func (r Rule) note(where string, pieces ...int) finding.Finding {
	return finding.Finding{Level: finding.Note, Rule: r.Name, Where: where, Pieces: pieces}
}
