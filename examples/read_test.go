package examples_test

import (
	"testing"

	"strake/examples"
	"strake/jobfile"
)

func TestExamplesRead(t *testing.T) {
	for _, e := range examples.List() {
		data, err := examples.Read(e.Name)
		if err != nil {
			t.Fatal(err)
		}
		_, found, err := jobfile.ReadJob(e.Name, data)
		if err != nil {
			t.Error(err)
		}
		for _, f := range found {
			t.Errorf("%s: %v", e.Name, f)
		}
	}
}
