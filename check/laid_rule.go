package check

import (
	"slices"
	"strings"

	"strake/finding"
)

// laidRule is one thing that rows as laid are held to.
type laidRule struct {
	Name string
	Text string // one sentence: what must hold
	hold func(laidRule, *laidSite) []finding.Finding
}

// laidRules are all of them, by name: one enters by being declared.
var laidRules []laidRule

func declareLaid(name, text string, hold func(laidRule, *laidSite) []finding.Finding) laidRule {
	r := laidRule{name, text, hold}
	laidRules = append(laidRules, r)
	slices.SortFunc(laidRules, func(a, b laidRule) int { return strings.Compare(a.Name, b.Name) })
	return r
}

// breaks is a finding that a limit is broken, strains one that it is strained.
func (r laidRule) breaks(where string) finding.Finding {
	return finding.Finding{Level: finding.Stop, Rule: r.Name, Where: where}
}

func (r laidRule) strains(where string) finding.Finding {
	return finding.Finding{Level: finding.Warn, Rule: r.Name, Where: where}
}
