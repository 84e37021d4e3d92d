package png

import (
	"io"

	"strake/sheet"
)

// Renderer writes one sheet as PNG.
type Renderer struct{ DPI float64 }

// Render writes the sheet; a picture has no title.
func (r Renderer) Render(w io.Writer, _ string, sheets ...sheet.Sheet) error {
	s, err := sheet.One("png", sheets)
	if err != nil {
		return err
	}
	return Write(w, s, r.DPI)
}
