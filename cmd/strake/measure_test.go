package main

import (
	"bytes"
	"fmt"
	"math"
	"regexp"
	"strings"
	"testing"

	"strake/finding"
	"strake/jobfile"
	"strake/measure"
	"strake/survey"
	"strake/tape"
)

const sketched = `strake: 1
name: Oar store
rooms:
  store: {corners: [A, B, C, D]}
rough: {A-B: 180, B-C: 130}
boards: {face: 5, thickness: 3/4, lengths: {one: 48}}
`

// The keys that the sheet writes go into the job file as they are. With their
// figures filled in, here those of a true rectangle, nothing goes unchecked and
// no two readings are alike; with one left empty the job is refused.
func TestMeasuredKeysAreJobKeys(t *testing.T) {
	k, err := jobfile.ReadSketch("store.yaml", []byte(sketched))
	if err != nil {
		t.Fatal(err)
	}
	s := measure.Make((&measureCmd{}).ask(k))
	var b bytes.Buffer
	if err := s.Keys(&b); err != nil {
		t.Fatal(err)
	}
	if _, _, err := jobfile.ReadJob("store.yaml", []byte(sketched+b.String())); err == nil {
		t.Error("readings left empty are taken for readings")
	}
	filled := fill(t, s, b.String())
	j, _, err := jobfile.ReadJob("store.yaml", []byte(sketched+filled))
	if err != nil {
		t.Fatalf("%v\n%s", err, filled)
	}
	if len(j.Readings) < 5+3+1 || len(j.Sketch.Points) != len(s.Marks) {
		t.Errorf("%d readings, %d marks of %d", len(j.Readings), len(j.Sketch.Points), len(s.Marks))
	}
	for _, f := range survey.Adjust(j.Sketch, j.Readings, j.Tape).Findings(j.Readings, tape.Paper(j.Unit)) {
		if f.Level != finding.Note || strings.Contains(f.Rule, "told apart") {
			t.Errorf("%s", f)
		}
	}
}

var (
	emptyReading = regexp.MustCompile(`(?m)^  (\w+)-(\w+):$`)
	emptyWidth   = regexp.MustCompile(`\{from: \w+, wall: \w-\w, is: `)
)

// fill writes what the tape would say, to 1/16 in; every width is 130 in.
func fill(t *testing.T, s measure.Sheet, keys string) string {
	t.Helper()
	keys = emptyReading.ReplaceAllStringFunc(keys, func(line string) string {
		m := emptyReading.FindStringSubmatch(line)
		d := s.Built.At[m[1]].Sub(s.Built.At[m[2]]).Len()
		return line + fmt.Sprintf(" %g", math.Round(d/25.4*16)/16)
	})
	return emptyWidth.ReplaceAllString(keys, "${0}130")
}
