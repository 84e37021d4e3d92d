package svg

import (
	"io"

	"strake/sheet"
)

// Renderer writes one sheet as SVG.
type Renderer struct{}

// Render writes the sheet; the title is its own.
func (Renderer) Render(w io.Writer, _ string, sheets ...sheet.Sheet) error {
	s, err := sheet.One("svg", sheets)
	if err != nil {
		return err
	}
	return Write(w, s)
}
