package check

import (
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"strake/finding"
	"strake/lay"
	"strake/plane"
	"strake/stock"
)

// Every rule_*.go declares one rule, every declared rule is listed, has a text
// and something that holds a lay to it, and is broken by a test.
func TestEveryRuleIsListedRunAndBroken(t *testing.T) {
	files, err := filepath.Glob("rule_*.go")
	if err != nil {
		t.Fatal(err)
	}
	files = slices.DeleteFunc(files, func(f string) bool { return strings.HasSuffix(f, "_test.go") })
	if len(files) != len(Rules()) {
		t.Errorf("%d rule files and %d rules", len(files), len(Rules()))
	}
	for _, f := range files {
		if n := declares(t, f); n != 1 {
			t.Errorf("%s declares %d rules, want 1", f, n)
		}
	}
	tested := map[string]bool{}
	for _, s := range slips {
		tested[s.rule] = true
	}
	for _, n := range notes {
		tested[n.rule] = true
	}
	for i, r := range Rules() {
		switch {
		case r.Name == "" || !strings.HasSuffix(r.Text, "."):
			t.Errorf("rule %q has the text %q", r.Name, r.Text)
		case r.hold == nil && r.Name != "shape":
			t.Errorf("rule %q holds nothing", r.Name)
		case i > 0 && Rules()[i-1].Name == r.Name:
			t.Errorf("two rules named %q", r.Name)
		case !tested[r.Name]:
			t.Errorf("no test breaks the rule %q", r.Name)
		}
	}
}

// declares counts the calls of declare in a file.
func declares(t *testing.T, file string) int {
	t.Helper()
	f, err := parser.ParseFile(token.NewFileSet(), file, nil, 0)
	if err != nil {
		t.Fatal(err)
	}
	n := 0
	ast.Inspect(f, func(x ast.Node) bool {
		if c, ok := x.(*ast.CallExpr); ok {
			if id, ok := c.Fun.(*ast.Ident); ok && id.Name == "declare" {
				n++
			}
		}
		return true
	})
	return n
}

// notes are lays that hold with something to tell.
var notes = []slip{
	{"example", plainRoom, func(b *bench) { b.lay.Example = true }, "example layout", "lay", "not yet known", 0},
	{"under the preferred distance", plainRoom, func(b *bench) { b.lim.JointPreferred.Value = in(28) }, "preferred joint distance", "row 1 and row 2", `2 pairs of end joints closer, the closest 17-7/8" apart`, 0},
	{"relaxed", ellRoom, func(b *bench) {
		b.swap(1, 0)
		b.lim.JointPreferred.Value = in(5)
		b.lay.Relaxed = []lay.Relaxation{{Rule: jointRule, Run: 11, From: in(6), To: in(5), Why: "short boards"}}
	}, "joint distance", "row 2", `relaxed to 5"`, 0},
	{"closet", nook, func(*bench) {}, "shortest piece", "row", `7" long`, 2},
	{"sliver, named", plainRoom, func(b *bench) {
		b.lim.NarrowestRip.Value = in(3.25)
		b.lay.Exempt = []lay.Exemption{{Rule: ripRule, Run: -1, Edge: "wall A-B", Why: "behind the range"}}
	}, "narrowest rip", "row 1 at wall A-B", `3" wide`, 0},
	{"no closing edge, named", slantRoom, func(b *bench) {
		b.lim.NarrowestRip.Value = in(4.5)
		b.lay.Exempt = []lay.Exemption{{Rule: ripRule, Run: -1, Edge: "wall A-B"}}
	}, "narrowest rip", "row 1 at wall A-B", `3" wide`, 0},
	{"dropped in", plainRoom, func(b *bench) {
		b.lay.Runs[0].Order, b.lay.Runs[1].Order = 2, 1
		b.lay.Pieces[0].How, b.lay.Pieces[1].How = lay.Dropped, lay.Dropped
	}, "order of laying", "row 1", "2 of 2 pieces dropped in", 0},
	{"closing row angled in", plainRoom, func(b *bench) { b.lay.Pieces[6].How = lay.Angled }, "order of laying", "row 3", "1 of 2 pieces angled in", 0},
}

func TestWhatHoldsIsTold(t *testing.T) {
	for _, s := range notes {
		t.Run(strings.ReplaceAll(s.name, " ", "-"), func(t *testing.T) {
			b := s.room()
			s.hurt(b)
			fs := b.held()
			if len(fs) != max(1, s.times) {
				t.Errorf("%d findings, want %d", len(fs), max(1, s.times))
			}
			for _, f := range fs {
				if f.Level != finding.Note || f.Rule != s.rule || !strings.Contains(f.Where, s.where) || !strings.Contains(f.Measured, s.says) {
					t.Errorf("got %v\nwant a note of %q at %q saying %q", f, s.rule, s.where, s.says)
				}
			}
		})
	}
}

// What a slip would break if it were not allowed for.
func TestWhatIsAllowed(t *testing.T) {
	for name, b := range map[string]*bench{
		"a tongue whose free stretch is taken off": func() *bench {
			b := headerRoom()
			p := &b.lay.Pieces[0]
			p.Behind, p.Off = lay.Tongue, []plane.Span{{From: in(-1), To: in(20)}}
			return b
		}(),
		"a piece that plays in its gap": func() *bench {
			b := plainRoom()
			b.sawn(4, in(-0.25))
			return b
		}(),
		"a jamb's negative gap": jambRoom(),
		"plain ends": func() *bench {
			b := ellRoom()
			b.stock.EndTongue = 0
			for i := range b.lay.Pieces {
				p := &b.lay.Pieces[i]
				for _, end := range []*lay.Profile{&p.Left, &p.Right} {
					if *end != lay.Cut {
						*end = lay.Plain
					}
				}
			}
			return b
		}(),
		"fixed lengths": func() *bench {
			b := splineRoom()
			b.stock.Known, b.stock.Mix = stock.MixOnly, stock.Mix{Least: in(24), Most: in(72)}
			b.lay.Example = true
			return b
		}(),
	} {
		for _, f := range b.held() {
			if b.lay.Example && f.Rule == "example layout" && f.Level == finding.Note {
				continue // a mix says so, and is allowed to
			}
			t.Errorf("%s: %v", name, f)
		}
	}
}

func TestRunNames(t *testing.T) {
	for part, want := range map[int]string{0: "row 12", 1: "row 12a", 2: "row 12b", 26: "row 12z", 27: "row 12aa"} {
		if got := rowName(lay.Run{Row: 12, Part: part}, ""); got != want {
			t.Errorf("part %d: %q, want %q", part, got, want)
		}
	}
}
