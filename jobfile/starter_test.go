package jobfile_test

import (
	"testing"

	"strake/jobfile"
	"strake/stock"
	"strake/tape"
)

func TestStarterReads(t *testing.T) {
	j, found, err := jobfile.ReadJob("first.yaml", jobfile.Starter())
	if err != nil {
		t.Fatal(err)
	}
	if len(found) != 0 {
		t.Errorf("the first job has oddities: %v", found)
	}
	if len(j.Readings) != 6 || j.Boards.Known != stock.MixOnly || j.Base != tape.Inch/2 || j.Sketch.Doorways[0].At != 13*tape.Inch/2 {
		t.Errorf("the first job reads as %+v", j)
	}
}
