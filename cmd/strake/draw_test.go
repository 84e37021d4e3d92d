package main

import (
	"bytes"
	"context"
	"encoding/xml"
	"image/png"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"strake/packet"
)

const drawnJob = `strake: 1
name: Den
unit: in
rooms: {den: {corners: [A, B, C, D]}}
readings: {A-B: 144, B-C: 120, C-D: 144, D-A: 120, A-C: 187-7/16}
boards: {face: 5, thickness: 3/4, lengths: {mix: {least: 12, most: 84, mean: 42}}}
`

// Every drawing in every form: written where it can be, some of them twice the same, and
// what it says it is; refused with a reason where several sheets do not go into one file.
func TestEveryDrawingInEveryForm(t *testing.T) {
	if testing.Short() {
		t.Skip("SKIPPED with -short: sixty drawings")
	}
	dir := t.TempDir()
	job := filepath.Join(dir, "den.yaml")
	if err := os.WriteFile(job, []byte(drawnJob), 0o600); err != nil {
		t.Fatal(err)
	}
	several := append([]string{"all", "details"}, packet.Names()...)
	for _, what := range append(strings.Split(drawingNames(), ", "), "detail-start-line") {
		for _, ending := range []string{".svg", ".pdf", ".png", ".dxf"} {
			var made [2][]byte
			for i := range made {
				if i == 1 && !slices.Contains([]string{"plan", "lines", "detail-start-line"}, what) {
					made[1] = made[0]
					continue
				}
				file := filepath.Join(dir, what+string(rune('a'+i))+ending)
				var out, errs bytes.Buffer
				code := run([]string{"draw", job, what, "-o", file, "--dpi", "30"}, rim{ctx: context.Background(), out: &out, err: &errs})
				made[i], _ = os.ReadFile(file)
				switch refused := slices.Contains(several, what) && ending != ".pdf"; {
				case refused && (code == exitOK || !strings.Contains(errs.String(), "several sheets make a .pdf") || made[i] != nil):
					t.Errorf("%s%s: %d, %s", what, ending, code, errs.String())
				case !refused && code != exitOK:
					t.Errorf("%s%s: %d, %s%s", what, ending, code, out.String(), errs.String())
				case !refused:
					isForm(t, what+ending, ending, made[i])
				}
			}
			if !bytes.Equal(made[0], made[1]) {
				t.Errorf("%s%s: other bytes the second time", what, ending)
			}
		}
	}
}

// isForm holds a file to what its ending says.
func isForm(t *testing.T, name, ending string, data []byte) {
	t.Helper()
	ok := false
	switch ending {
	case ".svg":
		d := xml.NewDecoder(bytes.NewReader(data))
		n := 0
		for {
			tok, err := d.Token()
			if err == io.EOF {
				ok = n > 3
				break
			}
			if err != nil {
				break
			}
			if _, is := tok.(xml.StartElement); is {
				n++
			}
		}
	case ".pdf":
		ok = bytes.HasPrefix(data, []byte("%PDF-")) && bytes.Contains(data, []byte("%%EOF")) && bytes.Contains(data, []byte("/Type /Page"))
	case ".png":
		m, err := png.Decode(bytes.NewReader(data))
		ok = err == nil && m.Bounds().Dx() > 100
	case ".dxf":
		ok = bytes.Contains(data, []byte("AC1009")) && bytes.HasSuffix(data, []byte("EOF\n")) && (bytes.Contains(data, []byte("POLYLINE")) || bytes.Contains(data, []byte("TEXT")))
	}
	if !ok {
		t.Errorf("%s is not what its ending says: %d bytes", name, len(data))
	}
}
