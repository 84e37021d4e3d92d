package packet

import (
	"fmt"
	"slices"
	"strings"
)

// cited are the sources of figures on a part of the packet, numbered as they are first
// named.
type cited []string

// marks are the numbers of sources, as they stand behind a figure; several in one text
// are parted by semicolons.
func (c *cited) marks(sources ...string) string {
	out := ""
	for _, all := range sources {
		for one := range strings.SplitSeq(all, "; ") {
			if one == "" {
				continue
			}
			i := slices.Index(*c, one)
			if i < 0 {
				i = len(*c)
				*c = append(*c, one)
			}
			out += fmt.Sprintf(" [%d]", i+1)
		}
	}
	return out
}

// sources lists what was cited, one behind the other.
func (f *flow) sources(c cited) {
	if len(c) == 0 {
		return
	}
	f.heading("Where figures come from")
	var all []string
	for i, s := range c {
		all = append(all, fmt.Sprintf("[%d] %s.", i+1, strings.TrimRight(s, ".")))
	}
	f.small(strings.Join(all, " "))
}
