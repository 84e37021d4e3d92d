package jobfile_test

import (
	"errors"
	"fmt"
	"os"
	"strings"
	"testing"
	"time"

	"strake/examples"
	"strake/jobfile"
)

// holds checks what is true of every answer of ReadJob: errors have a place in
// the text, say what would be accepted, and none is the guard's.
func holds(t *testing.T, text string) {
	t.Helper()
	begun := time.Now()
	defer func() {
		if d := time.Since(begun); d > 20*time.Second {
			t.Errorf("%.200q ... (%d bytes) took %v", text, len(text), d)
		}
	}()
	_, _, err := jobfile.ReadJob("job.yaml", []byte(text))
	if err == nil {
		return
	}
	var errs jobfile.Errors
	if !errors.As(err, &errs) || len(errs) == 0 {
		t.Fatalf("%q: %v is not a list of errors", text, err)
	}
	lines := strings.Split(strings.ReplaceAll(text, "\r\n", "\n"), "\n")
	for _, e := range errs {
		if e.Line < 1 || e.Line > len(lines) || e.Column < 1 || e.What == "" || e.Accept == "" {
			t.Errorf("%q: %v at %d:%d of %d lines", text, e, e.Line, e.Column, len(lines))
		}
		if strings.Contains(e.What, "cannot be read") {
			t.Errorf("%q: the reader panicked: %v", text, e)
		}
	}
}

func FuzzReadJob(f *testing.F) {
	f.Add(whole)
	f.Add(string(jobfile.Starter()))
	for _, e := range examples.List() {
		text, _ := examples.Read(e.Name)
		f.Add(string(text))
	}
	bad, _ := os.ReadFile("testdata/refuse_many.yaml")
	f.Add(string(bad))
	for _, s := range []string{
		"", "a", "- a", "a: b: c", "a: [", "---\n---\n", "a: |\n  b\n", "? a\n: b\n", "strake: !mm\n", "rooms: !!seq\n", "rooms: {a: }", "rooms:\n  x:\n",
		"rooms: {<<: {a: b}}", "strake: 1\nrooms:\n- a\n", "readings: {? [a] : b}", "readings:\n  A-B: >\n    12'\n", "\t", "%YAML 1.2\n---\na: b", "a: 'b\n", "&a : b", "*a : b",
	} {
		f.Add(s)
	}
	f.Fuzz(holds)
}

// The seeds of the fuzz test with one character dropped or changed, at every
// place of the whole form.
func TestEverySlipOfTheFinger(t *testing.T) {
	for i := range whole {
		holds(t, whole[:i]+whole[i+1:])
		c := []string{"\n", ":", "-", "[", "'", " ", "9", "{", "#", "&", "!", "\""}[i%12]
		holds(t, whole[:i]+c+whole[i+1:])
	}
}

// manyKeys is a mapping of n keys that are none.
func manyKeys(n int) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, "k%d: 1\n", i)
	}
	return b.String()
}

// steps is n mappings, each inside the last.
func steps(n int) string {
	var b strings.Builder
	for i := range n {
		b.WriteString(strings.Repeat(" ", i) + "a:\n")
	}
	return b.String()
}

// What would make the parser call itself too often, or read too long, is
// refused before; other large files are read in good time.
func TestRefusedBeforeParsing(t *testing.T) {
	for name, text := range map[string]string{
		"brackets": "a: " + strings.Repeat("[", 100_000),
		"braces":   "a: " + strings.Repeat("{a: ", 50_000),
		"dashes":   strings.Repeat("- ", 100_000),
		"marks":    strings.Repeat("? ", 100_000),
		"many":     "a: [" + strings.Repeat("1,", 60_000) + "]",
		"keys":     manyKeys(9_000),
		"names":    "strake: 1\nrooms:\n  a: {corners: [A, B, C]}\nreadings:\n" + strings.ReplaceAll(manyKeys(7_000), "k", "  A-x"),
		"steps":    steps(450),
		"size":     strings.Repeat("# a remark\n", 40_000),
		"no text":  "strake: 1\nname: \xff\xfe\n",
		"zero":     "strake: 1\nname: \x00\n",
	} {
		begun := time.Now()
		holds(t, text)
		if _, _, err := jobfile.ReadJob("job.yaml", []byte(text)); err == nil {
			t.Errorf("%s: read without an error", name)
		}
		t.Logf("%s: %v", name, time.Since(begun))
	}
}
