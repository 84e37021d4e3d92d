package jobfile

import (
	"os"
	"strings"
	"testing"
)

// A thing that stays by the name of a doorway is refused, with its line; by another it is
// not.
func TestStayNamedAsADoorway(t *testing.T) {
	data, err := os.ReadFile("../examples/ferry-parlour.yaml")
	if err != nil {
		t.Fatal(err)
	}
	if _, _, err := ReadJob("ferry", data); err != nil {
		t.Fatal(err)
	}
	twice := strings.Replace(string(data), "  hearth:\n", "  hall door:\n", 1)
	if twice == string(data) {
		t.Fatal("no hearth to rename")
	}
	_, _, err = ReadJob("ferry", []byte(twice))
	if err == nil || !strings.Contains(err.Error(), "a doorway has this name too") {
		t.Errorf("%v", err)
	}
}
