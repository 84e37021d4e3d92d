package pdf

import (
	"io"

	"strake/sheet"
)

// Renderer writes sheets as the pages of one document.
type Renderer struct{}

// Render writes them.
func (Renderer) Render(w io.Writer, title string, sheets ...sheet.Sheet) error {
	return Write(w, title, sheets...)
}
