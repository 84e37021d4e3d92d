package schedule

import (
	"fmt"
	"strings"
)

// Step is a step of the job.
type Step struct {
	Key    string
	What   string
	Parts  []Part
	Out    string // why it is left out, "" where it is done
	Untold bool   // left out because the job does not say whether it is needed
	Note   string
	rooms  []string
	rows   []Row
	gate   gate
	after  wait
	places bool // its parts are rows
}

// Part is a quantity with its rate.
type Part struct {
	Of       string // "412 sq ft of carpet"
	Quantity float64
	Used     Used
	Hours    float64 // as computed, not rounded
}

// gate is what a step waits for besides the step before it.
type gate int

const (
	none     gate = iota
	lab           // what was sampled
	climate       // the house at living climate
	delivery      // the boards
	rested        // boards at rest, and what readings say
	cured         // finish or glue
)

// wait begins with the end of a step.
type wait int

const (
	noWait   wait = iota
	labWait       // for the laboratory
	restWait      // for boards to come to rest
	cureWait
	glueWait // for the glue under the last rows
)

// Hours are what a step takes, in quarters rounded up.
func (s Step) Hours() float64 { return float64(s.quarters()) / 4 }

func (s Step) quarters() int {
	h := 0.0
	for _, p := range s.Parts {
		h += p.Hours
	}
	q := int(h*4 + 1 - 1e-9)
	return q
}

// planner makes steps out of work.
type planner struct {
	w      Work
	j      Job
	factor float64
}

// part is a quantity at its rate.
func (p planner) part(key string, q float64, of string) Part {
	u := p.j.used(key, p.w.Imperial)
	return Part{Of: of, Quantity: q, Used: u, Hours: u.Hours * u.Unit.Of(q, p.w.Imperial)}
}

func (p planner) area(key, of string) Part {
	return p.part(key, p.w.SqFt, p.square(p.w.SqFt)+of)
}

func (p planner) walls(key string) Part {
	said := fmt.Sprintf("%.0f ft of wall", p.w.Walls)
	if !p.w.Imperial {
		said = fmt.Sprintf("%.1f m of wall", p.w.Walls*0.3048)
	}
	return p.part(key, p.w.Walls, said)
}

func (p planner) each(key string, names []string, one, many string) Part {
	return p.part(key, float64(len(names)), count(len(names), one, many)+" ("+strings.Join(names, ", ")+")")
}

func (p planner) number(key string, n int, one, many string) Part {
	return p.part(key, float64(n), count(n, one, many))
}

func count(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}

// when is a step that is done, or left out for a reason.
func when(s Step, yes bool, out string) Step {
	if !yes {
		s.Out, s.Parts = out, nil
	}
	return s
}

// untold is a step that, left out, may be needed all the same for all that the job
// tells.
func untold(s Step, yes bool) Step {
	s.Untold = yes && s.Out != ""
	return s
}
