package paper

import (
	"bytes"
	"flag"
	"io"
	"os"
	"path/filepath"
	"testing"

	"strake/internal/sample"
	"strake/plan"
)

var update = flag.Bool("update", false, "write the golden files anew")

func plans() map[string]plan.Plan {
	return map[string]plan.Plan{
		"rectangle": sample.Rectangle(), "hearth": sample.Hearth(), "short": sample.ShortOfBoards(), "rooms": sample.TwoRooms(), "nothing": {},
	}
}

// papers are all papers of a plan by file name.
func papers(t *testing.T, p plan.Plan) map[string][]byte {
	t.Helper()
	out := map[string][]byte{"summary.txt": []byte(Summary(p)), "findings.txt": []byte(Findings(p))}
	for name, write := range map[string]func(io.Writer, plan.Plan) error{
		"rows.csv": RowsCSV, "rows.txt": RowsText, "cuts.csv": CutsCSV, "cuts.txt": CutsText, "fasteners.txt": Fasteners, "fasteners.csv": FastenersCSV,
	} {
		var b bytes.Buffer
		if err := write(&b, p); err != nil {
			t.Fatal(err)
		}
		out[name] = b.Bytes()
	}
	return out
}

func TestGolden(t *testing.T) {
	for name, p := range plans() {
		for file, got := range papers(t, p) {
			path := filepath.Join("testdata", name+"."+file)
			if *update {
				if err := os.WriteFile(path, got, 0o666); err != nil {
					t.Fatal(err)
				}
				continue
			}
			want, err := os.ReadFile(path)
			if err != nil {
				t.Fatal(err)
			}
			if !bytes.Equal(got, want) {
				t.Errorf("%s differs: look at both, then run with -update", path)
			}
		}
	}
}
