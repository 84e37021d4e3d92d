package main

import (
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"regexp"
	"runtime"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"strake": main})
}

// TestScripts runs what a person would type; see testdata/script.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 "testdata/script",
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Cmds: map[string]func(*testscript.TestScript, bool, []string){
			"exits": exits, "change": change, "nudge": nudge, "count": count, "listing": listing, "rename": rename, "append": appendTo,
		},
	})
}

// exits CODE COMMAND ARG...: the command ends with exactly this code.
func exits(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: exits CODE COMMAND ARG...")
	}
	got := 0
	var exit *exec.ExitError
	if err := ts.Exec(args[1], args[2:]...); errors.As(err, &exit) {
		got = exit.ExitCode()
	} else {
		ts.Check(err)
	}
	if want, err := strconv.Atoi(args[0]); err != nil || got != want {
		ts.Fatalf("exit code %d, want %s", got, args[0])
	}
}

// change FILE PATTERN TEXT: the first match of the pattern becomes the text.
func change(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 3 {
		ts.Fatalf("usage: change FILE PATTERN TEXT")
	}
	old := ts.ReadFile(args[0])
	at := regexp.MustCompile(args[1]).FindStringIndex(old)
	if at == nil {
		ts.Fatalf("%s has no %s", args[0], args[1])
	}
	write(ts, args[0], old[:at[0]]+args[2]+old[at[1]:])
}

// appendTo FILE OTHER adds the text of another file to the end of a file.
func appendTo(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: append FILE OTHER")
	}
	ts.Check(os.WriteFile(ts.MkAbs(args[0]), []byte(ts.ReadFile(args[0])+ts.ReadFile(args[1])), 0o644))
}

// rename FILE TEXT OTHER: every such text of the file becomes the other.
func rename(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 3 {
		ts.Fatalf("usage: rename FILE TEXT OTHER")
	}
	old := ts.ReadFile(args[0])
	if !strings.Contains(old, args[1]) {
		ts.Fatalf("%s has no %s", args[0], args[1])
	}
	write(ts, args[0], strings.ReplaceAll(old, args[1], args[2]))
}

// count FILE PATTERN LEAST: at least so many lines of the file match.
func count(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 3 {
		ts.Fatalf("usage: count FILE PATTERN LEAST")
	}
	least, err := strconv.Atoi(args[2])
	ts.Check(err)
	n := 0
	for _, line := range strings.Split(ts.ReadFile(args[0]), "\n") {
		if regexp.MustCompile(args[1]).MatchString(line) {
			n++
		}
	}
	if n < least {
		ts.Fatalf("%d lines of %s match %s, want at least %d", n, args[0], args[1], least)
	}
}

// listing FOLDER FILE: the folder holds just the names in the file.
func listing(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 2 {
		ts.Fatalf("usage: listing FOLDER FILE")
	}
	entries, err := os.ReadDir(ts.MkAbs(args[0]))
	ts.Check(err)
	var got []string
	for _, e := range entries {
		got = append(got, e.Name())
	}
	if want := strings.Fields(ts.ReadFile(args[1])); !slices.Equal(got, want) {
		ts.Fatalf("%s holds %v, want %v", args[0], got, want)
	}
}

// nudge FILE PIECE TICKS: this piece of the written lay is moved along its row.
func nudge(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 3 {
		ts.Fatalf("usage: nudge FILE PIECE TICKS")
	}
	var lay map[string]any
	d := json.NewDecoder(strings.NewReader(ts.ReadFile(args[0])))
	d.UseNumber()
	ts.Check(d.Decode(&lay))
	i, err := strconv.Atoi(args[1])
	ts.Check(err)
	by, err := strconv.ParseInt(args[2], 10, 64)
	ts.Check(err)
	outline := lay["pieces"].([]any)[i].(map[string]any)["outline"].([]any)
	for k := 0; k < len(outline); k += 2 {
		x, err := outline[k].(json.Number).Int64()
		ts.Check(err)
		outline[k] = json.Number(fmt.Sprint(x + by))
	}
	out, err := json.Marshal(lay)
	ts.Check(err)
	write(ts, args[0], string(out))
}

func write(ts *testscript.TestScript, name, text string) {
	ts.Check(os.WriteFile(ts.MkAbs(name), []byte(text), 0o644))
}

// TestPictureIsCurrent holds the picture in the README to what the program
// draws now.
func TestPictureIsCurrent(t *testing.T) {
	if runtime.GOARCH != "amd64" {
		t.Skip("the picture was drawn on amd64; other processors may round its last figures otherwise")
	}
	dir := t.TempDir()
	var said strings.Builder
	code := run([]string{"plan", "../../examples/ferry-parlour.yaml", "-o", dir}, rim{ctx: t.Context(), out: &said, err: &said})
	if code != exitOK {
		t.Fatalf("exit code %d: %s", code, said.String())
	}
	now, err := os.ReadFile(dir + "/plan.svg")
	if err != nil {
		t.Fatal(err)
	}
	shown, err := os.ReadFile("../../docs/ferry-parlour.svg")
	if err != nil {
		t.Fatal(err)
	}
	if string(now) != string(shown) {
		t.Error("docs/ferry-parlour.svg is not what strake draws now; make docs refreshes it")
	}
}
