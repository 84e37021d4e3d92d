package jobfile

import (
	"fmt"
	"strings"
)

// keyDoc is one key as told to people.
type keyDoc struct {
	key, doc, without string
	need              bool
	shape             shape
}

// Keys lists every key of a job file for people, as Markdown: what it means,
// what is written there, and what holds when it is left out. It is made from
// the same keys that ReadJob reads by.
func Keys() string {
	var b strings.Builder
	b.WriteString("# Keys of a job file\n\n")
	b.WriteString("A key marked * must be there. Lengths are written with their unit (12' 7-3/8\", 151.375 in, 3.84 m, 384 cm, 3844.9 mm)\n")
	b.WriteString("or as a bare number in the job's unit.\n\n")
	keyList(&b, jobTable.shape().keys, 0)
	return b.String()
}

// keyList writes keys, indented, each with the keys under it.
func keyList(b *strings.Builder, keys []keyDoc, depth int) {
	for _, k := range keys {
		star := ""
		if k.need {
			star = " *"
		}
		indent := strings.Repeat("  ", depth)
		fmt.Fprintf(b, "%s- `%s`%s: %s", indent, k.key, star, k.doc)
		if !strings.HasPrefix(k.shape.words, "keys with") && k.shape.named == "" {
			fmt.Fprintf(b, " Written as %s.", k.shape.words)
		}
		if k.without != "" {
			fmt.Fprintf(b, " Left out: %s.", k.without)
		}
		b.WriteString("\n")
		if k.shape.named != "" && len(k.shape.keys) > 0 {
			fmt.Fprintf(b, "%s  - *name of the %s*\n", indent, k.shape.named)
			keyList(b, k.shape.keys, depth+2)
			continue
		}
		keyList(b, k.shape.keys, depth+1)
	}
}
