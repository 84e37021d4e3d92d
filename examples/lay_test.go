package examples_test

import (
	"bytes"
	"context"
	"reflect"
	"testing"

	"strake/examples"
	"strake/finding"
	"strake/jobfile"
	"strake/plan"
)

// Each example gets a plan that holds, and its lay comes back from its written
// form the same to the tick.
func TestExamplesPlan(t *testing.T) {
	for _, e := range examples.List() {
		p := plan.Make(context.Background(), read(t, e.Name))
		for _, f := range p.Findings {
			if f.Level == finding.Stop {
				t.Errorf("%s: %v", e.Name, f)
			}
		}
		if len(p.Lay.Pieces) < 100 {
			t.Errorf("%s: %d pieces", e.Name, len(p.Lay.Pieces))
		}
		var b bytes.Buffer
		if err := jobfile.WriteLay(&b, p.Lay); err != nil {
			t.Errorf("%s: %v", e.Name, err)
			continue
		}
		if l, err := jobfile.ReadLay(b.Bytes()); err != nil || !reflect.DeepEqual(l, p.Lay) {
			t.Errorf("%s: the lay does not come back from %d bytes (%v)", e.Name, b.Len(), err)
		}
	}
}
