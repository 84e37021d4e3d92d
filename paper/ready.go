package paper

import (
	"strings"

	"strake/ready"
)

// Ranks is said above every list of verdicts.
const Ranks = "Local code and licensed practice come first, then the makers' instructions, then trade guidance, then every figure here. A limit that you enter with its rank is shown with it."

// Lead is what the worst verdict means for the floor.
var Lead = map[ready.Say]string{
	ready.Go:    "Go: nothing that was looked at keeps the floor from being laid.",
	ready.Look:  "Go, with a look at what is listed: nothing that was looked at keeps the floor from being laid.",
	ready.Wait:  "Wait: time or readings settle what is listed under wait.",
	ready.Fix:   "Fix first what is listed under fix.",
	ready.Other: "This floor does not belong here as it is: see another product.",
}

// Says are the verdicts in the order they are listed, the heaviest first.
var Says = []ready.Say{ready.Other, ready.Fix, ready.Wait, ready.Look, ready.Go}

// Ready is all verdicts as text, the heaviest first, each kind in the order of
// the work.
func Ready(name string, vs []ready.Verdict) string {
	var b strings.Builder
	b.WriteString(head(name, "may it be laid", false))
	wrap(&b, Lead[ready.Worst(vs)], "", "")
	wrap(&b, Ranks, "", "")
	for _, say := range Says {
		title := "\n" + strings.ToUpper(string(say[:1])) + string(say[1:]) + "\n"
		for _, v := range vs {
			if v.Say == say {
				b.WriteString(title)
				title = ""
				verdict(&b, v)
			}
		}
	}
	return b.String()
}

func verdict(b *strings.Builder, v ready.Verdict) {
	source := v.Source
	if source != "" {
		source = "After: " + source
	}
	told(b, v.Rule, v.Where, v.Measured, v.Limit, v.Do, source)
}
