package paper

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"strake/jobfile"
	"strake/plan"
)

// The list of heights of the kitchen, before boards are laid: what follows from the
// job alone stays as it is, whatever the search does.
func TestHeightsList(t *testing.T) {
	data, err := os.ReadFile("../examples/keepers-kitchen.yaml")
	if err != nil {
		t.Fatal(err)
	}
	for name, change := range map[string]*strings.Replacer{
		"kitchen":       strings.NewReplacer(),
		"kitchen-panel": strings.NewReplacer("  sheet: 1/32\n", "  panel: 1/2\n"),
	} {
		j, _, err := jobfile.ReadJob(name, []byte(change.Replace(string(data))))
		if err != nil {
			t.Fatal(err)
		}
		var b bytes.Buffer
		if err := Heights(&b, plan.Rows(j)); err != nil {
			t.Fatal(err)
		}
		for _, l := range strings.Split(b.String(), "\n") {
			if len([]rune(l)) > columns {
				t.Errorf("%s: a line of %d columns: %s", name, len([]rune(l)), l)
			}
		}
		path := filepath.Join("testdata", name+".heights.txt")
		if *update {
			if err := os.WriteFile(path, b.Bytes(), 0o666); err != nil {
				t.Fatal(err)
			}
			continue
		}
		want, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(b.Bytes(), want) {
			t.Errorf("%s differs: look at both, then run with -update", path)
		}
	}
}
