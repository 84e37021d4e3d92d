package jobfile_test

import (
	"bytes"
	"encoding/json"
	"flag"
	"os"
	"strings"
	"testing"

	"github.com/goccy/go-yaml"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"strake/examples"
	"strake/jobfile"
)

var update = flag.Bool("update", false, "write the schema and the list of keys anew")

// The committed schema and list of keys are those that the reader's own table
// makes.
func TestGeneratedFilesAreCurrent(t *testing.T) {
	for name, want := range map[string][]byte{"strake.schema.json": jobfile.Schema(), "KEYS.md": []byte(jobfile.Keys())} {
		if *update {
			if err := os.WriteFile(name, want, 0o644); err != nil {
				t.Fatal(err)
			}
		}
		got, err := os.ReadFile(name)
		if err != nil || !bytes.Equal(got, want) {
			t.Errorf("%s is not current (%v): go test ./jobfile -update", name, err)
		}
	}
}

// schema is the committed schema, ready to hold documents against.
func schema(t *testing.T) *jsonschema.Schema {
	t.Helper()
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(jobfile.Schema()))
	if err != nil {
		t.Fatal(err)
	}
	c := jsonschema.NewCompiler()
	if err := c.AddResource("strake.schema.json", doc); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile("strake.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// asJSON is a YAML text as the values that a schema is held against.
func asJSON(t *testing.T, text []byte) any {
	t.Helper()
	j, err := yaml.YAMLToJSON(text)
	if err != nil {
		t.Fatal(err)
	}
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(j))
	if err != nil {
		t.Fatalf("%v\n%s", err, j)
	}
	return doc
}

func TestExamplesKeepTheSchema(t *testing.T) {
	s := schema(t)
	texts := map[string][]byte{"the first job": jobfile.Starter()}
	for _, e := range examples.List() {
		texts[e.Name], _ = examples.Read(e.Name)
	}
	for name, text := range texts {
		if err := s.Validate(asJSON(t, text)); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// The schema refuses what an editor should mark, and so does the reader.
func TestSchemaRefuses(t *testing.T) {
	s := schema(t)
	good := string(jobfile.Starter())
	for _, tt := range []struct{ old, new string }{
		{"strake: 1", "strake: 2"},
		{"face: 3-1/4\"", "fase: 3-1/4\""},
		{"thickness: 3/4\"", "# thickness"},
		{"undercut: yes", "undercut: perhaps"},
		{"beyond: transition", "beyond: garden"},
		{"kind: register", "kind: sofa"},
		{"unit: in", "unit: furlong"},
		{"unit: in", "unit: in\npaper: a3"},
		{"price: 129", "price: cheap"},
		{"at: 40\"", "at: forty"},
		{"rows_along: A-B", "rows_along: A"},
		{"A-B: 11' 8-1/4\"", "A: 11' 8-1/4\""},
		{"seed: 1", "seed: -1"},
	} {
		bad := strings.Replace(good, tt.old, tt.new, 1)
		if bad == good {
			t.Fatalf("%q is not in the first job", tt.old)
		}
		if s.Validate(asJSON(t, []byte(bad))) == nil {
			t.Errorf("the schema accepts %q", tt.new)
		}
		if _, _, err := jobfile.ReadJob("bad.yaml", []byte(bad)); err == nil {
			t.Errorf("the reader accepts %q", tt.new)
		}
	}
}

// Every key says what it means.
func TestEveryKeyHasWords(t *testing.T) {
	var doc map[string]any
	if err := json.Unmarshal(jobfile.Schema(), &doc); err != nil {
		t.Fatal(err)
	}
	count := 0
	var walk func(path string, v any)
	walk = func(path string, v any) {
		m, _ := v.(map[string]any)
		props, _ := m["properties"].(map[string]any)
		for k, p := range props {
			count++
			if d, _ := p.(map[string]any)["description"].(string); len(d) < 8 {
				t.Errorf("%s.%s has no words", path, k)
			}
			walk(path+"."+k, p)
		}
		if a, ok := m["additionalProperties"].(map[string]any); ok {
			walk(path+".*", a)
		}
		for _, a := range asList(m["anyOf"]) {
			walk(path, a)
		}
	}
	walk("", doc)
	if count < 70 {
		t.Errorf("only %d keys were looked at", count)
	}
}

func asList(v any) []any {
	l, _ := v.([]any)
	return l
}
