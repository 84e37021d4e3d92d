package sheet

import (
	"fmt"
	"io"
)

// Renderer writes sheets in one form. The same sheets give the same bytes.
type Renderer interface {
	Render(w io.Writer, title string, sheets ...Sheet) error
}

// One is the only one of sheets, for a form that holds no more.
func One(form string, sheets []Sheet) (Sheet, error) {
	if len(sheets) != 1 {
		return Sheet{}, fmt.Errorf("a .%s holds one sheet, and these are %d: write a .pdf", form, len(sheets))
	}
	return sheets[0], nil
}
