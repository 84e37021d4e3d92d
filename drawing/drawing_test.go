package drawing

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"testing"

	"strake/internal/sample"
	"strake/plan"
	"strake/sheet/svg"
)

var update = flag.Bool("update", false, "write the golden files anew")

// plans are the plans drawn in these tests.
func plans() map[string]plan.Plan {
	return map[string]plan.Plan{
		"rectangle": sample.Rectangle(), "hearth": sample.Hearth(), "short": sample.ShortOfBoards(), "rooms": sample.TwoRooms(), "nothing": {},
	}
}

func drawn(t *testing.T, p plan.Plan) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := svg.Write(&b, Floor(p)); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestGolden(t *testing.T) {
	for name, p := range plans() {
		got, path := drawn(t, p), filepath.Join("testdata", name+".svg")
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
			t.Errorf("%s differs from %s: look at both, then run with -update", name, path)
		}
	}
}
