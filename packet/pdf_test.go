package packet

import (
	"bytes"
	"testing"

	"github.com/pdfcpu/pdfcpu/pkg/api"
	"github.com/pdfcpu/pdfcpu/pkg/pdfcpu/model"

	"strake/sheet/pdf"
)

// Every packet is a document that holds by pdfcpu (ISO 32000 as it reads it), with as
// many pages as it has sheets, and the same bytes each time.
func TestPacketHolds(t *testing.T) {
	api.DisableConfigDir()
	for name, data := range shipped(t) {
		sheets := Sheets(made(t, name, data), Letter)
		var a, b bytes.Buffer
		for _, w := range []*bytes.Buffer{&a, &b} {
			if err := pdf.Write(w, name, sheets...); err != nil {
				t.Fatal(err)
			}
		}
		if !bytes.Equal(a.Bytes(), b.Bytes()) {
			t.Errorf("%s: the same sheets give other bytes", name)
		}
		if a.Len() > 5<<20 {
			t.Errorf("%s: %d bytes", name, a.Len())
		}
		if err := api.Validate(bytes.NewReader(a.Bytes()), model.NewDefaultConfiguration()); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if n, err := api.PageCount(bytes.NewReader(a.Bytes()), nil); err != nil || n != len(sheets) {
			t.Errorf("%s: %d pages of %d sheets, %v", name, n, len(sheets), err)
		}
	}
}

// A document that was cut short does not hold: the check can fail.
func TestPacketCutShort(t *testing.T) {
	api.DisableConfigDir()
	var a bytes.Buffer
	if err := pdf.Write(&a, "one", Sheets(made(t, "sail-loft", shipped(t)["sail-loft"]), A4)[:1]...); err != nil {
		t.Fatal(err)
	}
	half := bytes.Replace(a.Bytes(), []byte("/Type /Page\n"), []byte("/Type /Pege\n"), 1)
	if err := api.Validate(bytes.NewReader(half), model.NewDefaultConfiguration()); err == nil {
		t.Error("a page of no type passes")
	}
}
