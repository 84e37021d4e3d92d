package order

import (
	_ "embed"
	"maps"
	"os"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
)

//go:embed policy.txt
var rules string

// tree is the source of this project and the policy for it.
func tree(t *testing.T) (house, policy) {
	t.Helper()
	p, err := parse(rules)
	if err != nil {
		t.Fatal(err)
	}
	h, err := open(os.DirFS("../.."), "strake")
	if err != nil {
		t.Fatal(err)
	}
	return h, p
}

func TestTreeKeepsThePolicy(t *testing.T) {
	h, p := tree(t)
	if len(h.rooms) < 20 || len(h.rooms["check"]) < 20 {
		t.Fatalf("only %d rooms read, %d files of check", len(h.rooms), len(h.rooms["check"]))
	}
	for _, b := range h.breaches(p) {
		t.Error(b)
	}
}

// What the search and the checker share could hide a mistake from both, so it
// is written down here, and each of these rooms has outside oracles of its own.
func TestSearchAndCheckerShareOnlyTheGround(t *testing.T) {
	h, _ := tree(t)
	search, checker := h.leansOn("rack"), h.leansOn("check")
	maps.DeleteFunc(search, func(r string, _ bool) bool { return !checker[r] })
	got := slices.Sorted(maps.Keys(search))
	want := []string{"finding", "floor", "lay", "limits", "plane", "room", "stock", "tape"}
	if !slices.Equal(got, want) {
		t.Errorf("rack and check both lean on %v, want %v", got, want)
	}
}

// small is a house of two rooms, a rim and rules for them.
const small = `
tape < rack, check
rack !< check
rack, check < cmd
rim: cmd
fmt, time, math/rand/v2, strings in everyone
encoding/json, example.org/yaml in file
NONE < file
time: never Now
fmt: never Println
math/rand/v2: only New NewPCG
`

func source(imports, body string) *fstest.MapFile {
	return &fstest.MapFile{Data: []byte("package p\n" + imports + "\n" + body)}
}

// The test must see each kind of breach: a house that is in order, broken in
// one way at a time.
func TestBreachesAreSeen(t *testing.T) {
	for name, c := range map[string]struct {
		path, imports, body string
		want                string // "" for none
	}{
		"in order":               {"rack/a.go", `import ("strings"; "m/tape")`, "var _ = strings.ToLower", ""},
		"own random source":      {"rack/a.go", `import "math/rand/v2"`, "var _ = rand.New(rand.NewPCG(1, 2))", ""},
		"a test may":             {"rack/a_test.go", `import "os"`, "var _ = os.Exit", ""},
		"the rim may":            {"cmd/a.go", `import ("os"; "time")`, "var _ = time.Now", ""},
		"the file room may":      {"file/a.go", `import "example.org/yaml/ast"`, "type t struct { a int `json:\"a\"` }", ""},
		"upwards":                {"tape/a.go", `import "m/rack"`, "", "tape may not import rack"},
		"across":                 {"check/a.go", `import "m/rack"`, "", "check comes to rack, and must not"},
		"the long way round":     {"tape/a.go", `import "m/rack"`, "", "check comes to rack, and must not"},
		"disk":                   {"rack/a.go", `import "os"`, "", "rack may not import os"},
		"disk under a build tag": {"rack/a_plan9.go", `import "os"`, "", "rack may not import os"},
		"net":                    {"rack/a.go", `import "net/http"`, "", "rack may not import net/http"},
		"log":                    {"rack/a.go", `import l "log"`, "", "rack may not import log"},
		"clock":                  {"rack/a.go", `import "time"`, "var now = time.Now", "rack uses time.Now"},
		"clock renamed":          {"rack/a.go", `import t "time"`, "var now = t.Now()", "rack uses time.Now"},
		"chance":                 {"rack/a.go", `import "math/rand/v2"`, "var n = rand.IntN(3)", "rack uses math/rand/v2.IntN"},
		"terminal":               {"rack/a.go", `import "fmt"`, "func f() { fmt.Println() }", "rack uses fmt.Println"},
		"builtin terminal":       {"rack/a.go", ``, "func f() { println() }", "rack calls println"},
		"a form of writing":      {"rack/a.go", `import "encoding/json"`, "", "rack may not import encoding/json"},
		"even at the rim":        {"cmd/a.go", `import "encoding/json"`, "", "cmd may not import encoding/json"},
		"a stranger at the rim":  {"cmd/a.go", `import "example.org/x"`, "", "cmd may not import example.org/x"},
		"field names":            {"rack/a.go", ``, "type t struct { a int `yaml:\"a\"` }", "rack says how a value is written"},
		"hidden use":             {"rack/a.go", `import . "fmt"`, "", "fmt is imported without a name"},
		"unknown room":           {"attic/a.go", ``, "", "attic: no line of policy.txt names this room"},
	} {
		t.Run(name, func(t *testing.T) {
			p, err := parse(small)
			if err != nil {
				t.Fatal(err)
			}
			h, err := open(fstest.MapFS{
				"tape/tape.go": source("", ""), "rack/rack.go": source(`import "m/tape"`, ""), "file/f.go": source("", ""),
				"check/c.go": source(`import "m/tape"`, ""), "cmd/c.go": source(`import ("m/rack"; "m/check")`, ""),
				c.path: source(c.imports, c.body),
			}, "m")
			if err != nil {
				t.Fatal(err)
			}
			got := strings.Join(h.breaches(p), "\n")
			if c.want == "" && got != "" || !strings.Contains(got, c.want) {
				t.Errorf("breaches %q, want %q", got, c.want)
			}
		})
	}
}

func TestPolicyFindsItsOwnFaults(t *testing.T) {
	for text, want := range map[string]string{
		"a < b\nb < c\na !< c": "c may come to a, and must not",
		"a < b\nb < a":         "a may come back to itself",
		"a b c":                "line 1: a b c",
		"time: perhaps Now":    "line 1: time",
	} {
		if _, err := parse(text); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q: error %v, want %q", text, err, want)
		}
	}
	h, err := open(fstest.MapFS{"a/a.go": source("", "")}, "m")
	if err != nil {
		t.Fatal(err)
	}
	p, _ := parse("a < b")
	if got := h.breaches(p); len(got) != 1 || !strings.Contains(got[0], "b: policy.txt names it") {
		t.Errorf("a room that is gone: %v", got)
	}
}
