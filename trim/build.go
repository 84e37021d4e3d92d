package trim

import (
	"fmt"
	"slices"
	"strings"

	"strake/ready"
	"strake/tape"
)

// Compared is what one build-up leads to.
type Compared struct {
	Build
	Chosen  bool
	Height  tape.Length // over the subfloor, where nothing is shimmed
	Strips  []Strip     // at each opening of a height told, in their order
	Flush   int         // of those, how many are met flush
	Stairs  []bool      // whether each flight keeps its limit
	Fits    []bool      // whether each appliance does
	Cut     []tape.Length
	Passing bool // all stairs and appliances
}

// builds are the build-ups of what is stocked with what the job has chosen: by
// rising height, each once.
func (w work) builds() []Build {
	boards := append(slices.Clone(w.job.Stocked.Boards), w.f.Board)
	panels := append(slices.Clone(w.job.Stocked.Panels), w.job.Panel, 0)
	var out []Build
	for _, b := range boards {
		for _, p := range panels {
			if x := (Build{b, p}); !slices.Contains(out, x) {
				out = append(out, x)
			}
		}
	}
	slices.SortFunc(out, func(a, b Build) int {
		if d := int(a.Board + a.Panel - b.Board - b.Panel); d != 0 {
			return d
		}
		return int(a.Board - b.Board)
	})
	return out
}

// build names a build-up.
func (w work) build(b Build) string {
	if b.Panel == 0 {
		return w.say(b.Board) + " boards, no panel"
	}
	return w.say(b.Board) + " boards on a " + w.say(b.Panel) + " panel"
}

// compared are all build-ups with what they lead to.
func (w work) compared() []Compared {
	var out []Compared
	for _, b := range w.builds() {
		out = append(out, w.compare(b))
	}
	return out
}

func (w work) compare(b Build) Compared {
	c := Compared{Build: b, Chosen: b == w.chosen(), Height: w.stack(b, 0).Height(), Passing: true}
	for _, m := range w.meetings() {
		if m.Strip == Nosing {
			continue
		}
		s := w.strip(m.Covering, w.diff(b, m.Opening))
		c.Strips = append(c.Strips, s)
		if s == None {
			c.Flush++
		}
	}
	for _, s := range w.stairs() {
		c.Stairs = append(c.Stairs, w.flight(s, w.rise(b, s.Shim)).Even)
	}
	for _, a := range w.job.Appliances {
		c.Fits = append(c.Fits, w.fit(b, a).Pass)
	}
	for _, o := range w.job.Openings {
		if o.Leaf.Told {
			c.Cut = append(c.Cut, w.swing(b, o).Cut)
		}
	}
	c.Passing = !slices.Contains(c.Stairs, false) && !slices.Contains(c.Fits, false)
	return c
}

// buildVerdicts say which build-ups keep stairs and appliances and meet more of
// what lies beyond flush than the job's does.
func (w work) buildVerdicts() []ready.Verdict {
	if len(w.job.Stocked.Boards)+len(w.job.Stocked.Panels) == 0 {
		return nil
	}
	var now Compared
	var better []string
	all := w.compared()
	for _, c := range all {
		if c.Chosen {
			now = c
		}
	}
	if len(now.Strips)+len(now.Stairs)+len(now.Fits) == 0 {
		return nil
	}
	for _, c := range all {
		if c.Passing && (!now.Passing || c.Flush > now.Flush) {
			better = append(better, fmt.Sprintf("%s (%s high, %s)", w.build(c.Build), w.say(c.Height), flushWords(c)))
		}
	}
	v := ready.Verdict{Say: ready.Go, Rule: "build-up", Where: "of what is stocked", Source: common,
		Measured: fmt.Sprintf("%s, %s high: %s", w.build(now.Build), w.say(now.Height), flushWords(now))}
	if !now.Passing {
		v.Measured += "; a stair or an appliance speaks against it"
	}
	switch {
	case len(better) > 0:
		v.Say, v.Do = ready.Look, "Better by heights: "+strings.Join(better, "; ")+". The list of heights compares them all. A panel also wants longer fasteners and its own cost and work."
	case !now.Passing:
		v.Say, v.Do = ready.Look, "None of what is stocked keeps all stairs and appliances: see each of them."
	}
	return []ready.Verdict{v}
}

func flushWords(c Compared) string {
	return fmt.Sprintf("flush with %d of %d floors beyond", c.Flush, len(c.Strips))
}
