package book

import (
	"fmt"
	"strconv"
	"strings"
)

// view keeps the head of a sheet in sight while one goes down it.
const view = `<sheetPr><pageSetUpPr fitToPage="1"/></sheetPr><sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>`

// page is how a sheet is printed: lying, as wide as the paper and as many pages long as
// it takes, its name and the number of the page below.
const page = `<pageMargins left="0.4" right="0.4" top="0.5" bottom="0.6" header="0.3" footer="0.3"/><pageSetup orientation="landscape" fitToWidth="1" fitToHeight="0"/><headerFooter><oddFooter>&amp;L&amp;A&amp;R&amp;P of &amp;N</oddFooter></headerFooter>`

// titles has the head of each sheet printed on each of its pages.
func titles(sheets []Sheet) string {
	if len(sheets) == 0 {
		return ""
	}
	var b strings.Builder
	for i, s := range sheets {
		fmt.Fprintf(&b, `<definedName name="_xlnm.Print_Titles" localSheetId="%d">%s!$1:$1</definedName>`, i, escaped("'"+strings.ReplaceAll(s.Name, "'", "''")+"'"))
	}
	return "<definedNames>" + b.String() + "</definedNames>"
}

// lineHigh is how high a line of text is, in points; mostHigh the highest that a row
// can be.
const lineHigh, mostHigh = 15, 405

// usualWide is how many signs a column takes that has no width of its own.
const usualWide = 8.43

// height is the attributes of a row whose text takes several lines, "" of one line:
// not every program sees by itself that it has to be higher.
func (s Sheet) height(row []Cell) string {
	most := 1
	for i, c := range row {
		wide := usualWide
		if i < len(s.Widths) {
			wide = s.Widths[i]
		}
		if c.kind == isText {
			most = max(most, linesOf(c.Text, int(wide)-2))
		}
	}
	if most == 1 {
		return ""
	}
	return ` ht="` + strconv.Itoa(min(mostHigh, most*lineHigh)) + `" customHeight="1"`
}

// linesOf is in how many lines of so many signs words go; a word that is longer goes on
// over several.
func linesOf(text string, wide int) int {
	wide = max(1, wide)
	n, used := 1, 0
	for _, w := range strings.Fields(text) {
		l := len([]rune(w))
		if used > 0 && used+1+l > wide {
			n, used = n+1, 0
		} else if used > 0 {
			used++
		}
		used += l
		for used > wide {
			n, used = n+1, used-wide
		}
	}
	return n
}
