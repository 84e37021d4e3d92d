package plan_test

import (
	"context"
	"math/rand/v2"
	"slices"
	"testing"

	"strake/check"
	"strake/finding"
	"strake/lay"
	"strake/plan"
	"strake/plane"
	"strake/tape"
)

// said are the rules about what a lay says of its runs besides their pieces.
var said = []string{"outline of a run", "row numbers", "ends of a run", "fastening", "made for this job"}

// lie is one way to say a wrong thing of a run, and the rule that must see it;
// false where it cannot be told of this run.
type lie struct {
	name string
	rule string
	tell func(*lay.Run) bool
}

var lies = []lie{
	{"outline longer by an inch", "outline of a run", func(r *lay.Run) bool { return moveEnd(r, tape.Inch) }},
	{"outline shorter by an inch", "outline of a run", func(r *lay.Run) bool {
		return moveEnd(r, -tape.Inch) && !r.Unfilled // else its end is out of range
	}},
	{"outline an inch higher", "outline of a run", func(r *lay.Run) bool {
		r.Outline = r.Outline.Move(plane.P(0, tape.Inch))
		return true
	}},
	{"row number", "row numbers", func(r *lay.Run) bool { r.Row += 500; return true }},
	{"letter", "row numbers", func(r *lay.Run) bool { r.Part += 5; return true }},
	{"left reach two inches farther", "ends of a run", func(r *lay.Run) bool {
		r.LeftEnd.Reach -= 2 * tape.Inch
		return !r.LeftEnd.Mitred
	}},
	{"right reach two inches farther", "ends of a run", func(r *lay.Run) bool {
		r.RightEnd.Reach += 2 * tape.Inch
		return !r.RightEnd.Mitred
	}},
	{"left need two inches less", "ends of a run", func(r *lay.Run) bool { r.LeftEnd.Need += 2 * tape.Inch; return true }},
	{"right need two inches less", "ends of a run", func(r *lay.Run) bool { r.RightEnd.Need -= 2 * tape.Inch; return true }},
	{"ends exchanged", "ends of a run", func(r *lay.Run) bool {
		r.LeftEnd.Edge, r.RightEnd.Edge = r.RightEnd.Edge, r.LeftEnd.Edge
		return r.LeftEnd.Edge != r.RightEnd.Edge && r.LeftEnd.Edge != "" && r.RightEnd.Edge != ""
	}},
	{"in place or not", "ends of a run", func(r *lay.Run) bool { r.LeftEnd.InPlace = !r.LeftEnd.InPlace; return true }},
	{"fastening short of the end", "fastening", func(r *lay.Run) bool {
		r.Nailing = slices.Clone(r.Nailing)
		r.Nailing[len(r.Nailing)-1].Along.To -= 2 * tape.Inch
		return true
	}},
	{"nailer where the face is nailed", "fastening", func(r *lay.Run) bool { return refasten(r, lay.FaceNail, lay.Nailer) }},
	{"nailer where the hand nails", "fastening", func(r *lay.Run) bool { return refasten(r, lay.HandNail, lay.Nailer) }},
	{"hand where the face is nailed", "fastening", func(r *lay.Run) bool { return refasten(r, lay.FaceNail, lay.HandNail) }},
}

// moveEnd moves the right end of the outline.
func moveEnd(r *lay.Run, d tape.Length) bool {
	_, hi := r.Outline.Box()
	r.Outline = slices.Clone(r.Outline)
	for i, p := range r.Outline {
		if p.X == hi.X {
			r.Outline[i].X += d
		}
	}
	return true
}

// refasten says another fastening of the first stretch that is over 30 in.
func refasten(r *lay.Run, from, to lay.Fasten) bool {
	r.Nailing = slices.Clone(r.Nailing)
	for i, s := range r.Nailing {
		if s.By == from && s.Along.Len() > 30*tape.Inch {
			r.Nailing[i].By = to
			return true
		}
	}
	return false
}

// Of random floors the checker believes what the plan says of its runs, and sees
// every lie about one.
func TestWhatIsSaidOfRuns(t *testing.T) {
	t.Parallel()
	count := map[string]int{}
	for seed := range uint64(6) {
		f := floors{rand.New(rand.NewPCG(seed, 991))}
		j := f.job(seed)
		if seed%3 == 2 { // boards run out
			j.Boards.Tally = j.Boards.Tally[:len(j.Boards.Tally)*2/3]
		}
		p := plan.MakeWithin(context.Background(), j, 0)
		if len(p.Lay.Runs) == 0 {
			continue
		}
		for _, x := range p.Findings {
			if slices.Contains(said, x.Rule) && x.Level == finding.Stop {
				t.Errorf("floor %d: %v", seed, x)
			}
		}
		r := rand.New(rand.NewPCG(seed, 5))
		for _, l := range lies {
			for _, bad := range told(p.Lay, l, r, 2) {
				count[l.name]++
				if !slices.ContainsFunc(check.Lay(bad, p.Floor, j.Limits, j.Boards), func(x finding.Finding) bool { return x.Rule == l.rule }) {
					t.Errorf("floor %d: %s, and nothing was said", seed, l.name)
				}
			}
		}
	}
	for _, l := range lies {
		if count[l.name] == 0 {
			t.Errorf("%s: was never told", l.name)
		}
	}
}

// told are lays that tell a lie each, of up to so many runs chosen at random.
func told(good lay.Lay, l lie, r *rand.Rand, most int) []lay.Lay {
	var out []lay.Lay
	for _, i := range r.Perm(len(good.Runs)) {
		bad := good
		bad.Runs = slices.Clone(good.Runs)
		if len(out) < most && l.tell(&bad.Runs[i]) {
			out = append(out, bad)
		}
	}
	return out
}
