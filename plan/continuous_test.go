package plan_test

import (
	"context"
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"strake/check"
	"strake/finding"
	"strake/jobfile"
	"strake/plan"
	"strake/row"
)

// A closet off the long wall of a bedroom; at says where its doorway begins, so
// long its back wall.
func closetJob(at, long float64, more string) string {
	return fmt.Sprintf(`strake: 1
rooms: {bedroom: {corners: [A, B, C, D]}, closet: {corners: [E, F, G, H]}}
readings: {A-B: 180, B-C: 143, C-D: 180, D-A: 143, A-C: 229-29/32, B-D: 229-29/32, E-F: %v, F-G: 30, G-H: %v, H-E: 30}
doorways: {closet door: {wall: C-D, from: D, at: %v, width: 32, thickness: 5, undercut: yes, beyond: {wall: E-F, from: E, at: 6}}}
boards: {face: 5, thickness: 3/4, lengths: {mix: {least: 12, most: 84, mean: 42}}}
base: 1/2
shoe: 3/4
%s
`, long, long, at, more)
}

// sliverAt is where a doorway of that closet makes a rip of 1-3/4 in of 5 in
// boards whatever the start, with rows out of the closet.
const sliverAt = 59.5

func planText(t *testing.T, text string) plan.Plan {
	t.Helper()
	j, _, err := jobfile.ReadJob("job", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return plan.MakeWithin(context.Background(), j, 0)
}

func goesThrough(p plan.Plan) bool { return p.Layout.Dir.X*p.Layout.Dir.X < 0.5 } // wall C-D lies along X

func toldOf(p plan.Plan, rule string) (finding.Finding, bool) {
	i := slices.IndexFunc(p.Findings, func(f finding.Finding) bool { return f.Rule == rule })
	if i < 0 {
		return finding.Finding{}, false
	}
	return p.Findings[i], true
}

// Rows along the long wall pass a closet behind it; wished to go on from it they
// run out of it, unless that leaves a sliver or another direction is wished for;
// pinned they do so all the same.
func TestContinuousFromTheCloset(t *testing.T) {
	for name, tt := range map[string]struct {
		at, long float64
		more     string
		through  bool
		level    finding.Level
		says     string
	}{
		"not asked":                     {60, 48, "", false, "", ""},
		"wished":                        {60, 48, "wishes: {continuous_from: closet}", true, finding.Note, "without a break"},
		"by the doorway":                {60, 48, "wishes: {continuous_from: closet door}", true, finding.Note, "without a break"},
		"against another wish":          {60, 48, "wishes: {rows_along: A-B, continuous_from: closet}", false, finding.Warn, "lie along the opening"},
		"pinned against a wish":         {60, 48, "wishes: {rows_along: A-B}\npins: {continuous_from: closet}", true, finding.Note, "without a break"},
		"square to another wall":        {60, 48, "wishes: {rows_across: A-B, continuous_from: closet}", true, finding.Note, "without a break"},
		"square to the wrong wall":      {60, 48, "wishes: {rows_across: B-C, continuous_from: closet}", false, finding.Warn, "lie along the opening"},
		"between two walls":             {60, 48, "wishes: {rows_between: [B-C, D-A], continuous_from: closet}", true, finding.Note, "without a break"},
		"between the wrong walls":       {60, 48, "wishes: {rows_between: [A-B, C-D], continuous_from: closet}", false, finding.Warn, "lie along the opening"},
		"pinned between the wrong ones": {60, 48, "wishes: {rows_between: [A-B, C-D]}\npins: {continuous_from: closet}", true, finding.Note, "without a break"},
		"leaves a sliver":               {sliverAt, 48, "wishes: {continuous_from: closet}", false, finding.Warn, "would leave a rip of"},
		"pinned with a sliver":          {sliverAt, 48, "pins: {continuous_from: closet}", true, finding.Note, "without a break"},
	} {
		p := planText(t, closetJob(tt.at, tt.long, tt.more))
		if got := goesThrough(p); got != tt.through {
			t.Errorf("%s: rows go through: %v", name, got)
		}
		f, told := toldOf(p, "continuous rows")
		if told != (tt.says != "") || told && (f.Level != tt.level || !strings.Contains(f.Measured, tt.says)) {
			t.Errorf("%s: told %v", name, f)
		}
		for _, f := range p.Findings {
			if f.Level == finding.Stop {
				t.Errorf("%s: %v", name, f)
			}
		}
		if f, narrow := toldOf(p, "narrowest rip"); narrow != strings.HasPrefix(name, "pinned with") || narrow && !strings.Contains(f.Do, "continuous through closet door") {
			t.Errorf("%s: a sliver told: %v", name, f)
		}
	}
}

// The checker finds rows that lie along the opening at fault where they are
// pinned to go on through it.
func TestContinuousIsHeld(t *testing.T) {
	p := planText(t, closetJob(60, 48, "pins: {continuous_from: closet}"))
	free := planText(t, closetJob(60, 48, ""))
	if len(p.Pins) != 1 {
		t.Fatalf("pins %v", p.Pins)
	}
	l := free.Lay
	l.Pins = p.Pins
	fs := check.Lay(l, p.Floor, p.Job.Limits, p.Job.Boards, p.Pins...)
	if !slices.ContainsFunc(fs, func(f finding.Finding) bool {
		return f.Rule == "pin" && f.Level == finding.Stop && strings.Contains(f.Measured, "along the opening")
	}) {
		t.Errorf("%v", fs)
	}
}

// Each candidate says whether it keeps the wish; those that do come first of the
// others.
func TestContinuousIsScored(t *testing.T) {
	p := planText(t, closetJob(60, 48, "wishes: {rows_along: A-B, continuous_from: closet}"))
	c := plan.Choose(p.Job)
	kept := 0
	for i, k := range c.Candidates {
		through := k.Layout.Dir.X*k.Layout.Dir.X < 0.5 && k.Variant != row.TurnedAt
		if k.Score.From != "closet" || len(k.Fields) == 1 && (k.Score.Breaks == "") != through {
			t.Errorf("%d %s: from %q, breaks %q", i, k.Name, k.Score.From, k.Score.Breaks)
		}
		if k.Score.Breaks == "" {
			kept++
		}
	}
	if kept == 0 || kept == len(c.Candidates) {
		t.Errorf("%d of %d keep it", kept, len(c.Candidates))
	}
}

// A taper of 1/2 in over 20 ft goes unnoticed along a plain wall, and is seen
// along a hall and at a wall that the job names.
func TestTaperAlongAHall(t *testing.T) {
	for wide, seen := range map[int]string{48: "", 130: "", 131: "wishes: {rows_along: A-B, seen_walls: [D-C]}"} {
		d := math.Sqrt(float64(240*240 + wide*wide))
		e := math.Sqrt(240*240 + (float64(wide)+0.75)*(float64(wide)+0.75))
		if seen == "" {
			seen = "wishes: {rows_along: A-B}"
		}
		p := planText(t, fmt.Sprintf(`strake: 1
unit: mm
rooms: {store: {corners: [A, B, C, D]}}
readings: {A-B: 240 in, B-C: %v in, C-D: 240 in, D-A: %d in, A-C: %.1f, B-D: %.1f}
boards: {face: 5 in, thickness: 3/4 in, lengths: {one: 60 in}}
base: 1/2 in
shoe: 3/4 in
%s
`, float64(wide)+0.75, wide, e*25.4, d*25.4, seen))
		f, told := toldOf(p, "taper")
		if shown := strings.Contains(f.Do, "will be seen"); !told || shown != (wide != 130) {
			t.Errorf("%d in wide: %v", wide, f)
		}
	}
}

// A wall that is wished to take the taper does, unless that leaves a sliver; and
// then it is told.
func TestTaperWished(t *testing.T) {
	taperAt := func(p plan.Plan) string {
		for _, f := range p.Fields {
			for _, x := range f.Tapers(nil) {
				return x.Edge
			}
		}
		return ""
	}
	room := func(more string) string {
		return `strake: 1
rooms: {store: {corners: [A, B, C, D]}}
readings: {A-B: 237, B-C: 180, C-D: 239, D-A: 180, A-C: 299-3/16, B-D: 297-5/8}
boards: {face: 5, thickness: 3/4, lengths: {one: 60}}
base: 1/2
shoe: 3/4
` + more
	}
	for _, wall := range []string{"B-C", "D-A"} {
		p := planText(t, room("wishes: {taper_at: "+wall+"}"))
		if got := taperAt(p); got != "wall "+wall {
			t.Errorf("the taper wished for at %s is at %q", wall, got)
		}
	}
	// Along D-A 3 in cannot be kept, along the longest wall it can.
	strict := "limits: {narrowest_rip: 3}\n"
	p := planText(t, room(strict+"wishes: {taper_at: B-C}"))
	if f, told := toldOf(p, "taper at a wall"); taperAt(p) != "" || !told || !strings.Contains(f.Measured, "would leave a rip of") {
		t.Errorf("tapers at %q, told %v", taperAt(p), f)
	}
	p = planText(t, room(strict+"pins: {taper_at: B-C}"))
	if _, narrow := toldOf(p, "narrowest rip"); taperAt(p) != "wall B-C" || !narrow {
		t.Errorf("pinned: tapers at %q, a narrow rip told: %v", taperAt(p), narrow)
	}
	if f, told := toldOf(p, "taper"); !told || !strings.Contains(f.Do, "will be seen") {
		t.Errorf("2 in over 15 ft: %v", f)
	}
}
