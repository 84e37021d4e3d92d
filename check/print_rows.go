package check

import (
	"fmt"
	"strings"
)

// rowList names runs of the site as shortly as they can be told: "rows 31 to
// 48 and 52a". A row all of whose runs are meant is named whole. Zones follow
// each other: "rows 3 and 4 of the field; row 1 of the header".
func (s *site) rowList(of func(*run) bool) string {
	var out []string
	for _, z := range s.zones {
		var names []string
		from, to, open := 0, 0, false // rows named whole, one after the other
		flush := func() {
			if open { // the number may be any: a lay with row 0 is told of too
				names = append(names, spell(from, to)...)
			}
			open = false
		}
		for _, strip := range z.strips() {
			parts, all := meant(strip, of)
			switch {
			case len(parts) == 0:
			case all && open && strip[0].Row == to+1:
				to++
			case all:
				flush()
				from, to, open = strip[0].Row, strip[0].Row, true
			default:
				flush()
				names = append(names, parts...)
			}
		}
		flush()
		if len(names) > 0 {
			out = append(out, z.rowNames(names))
		}
	}
	return strings.Join(out, "; ")
}

// meant names the runs of a strip that are meant, and tells whether all are.
func meant(strip []*run, of func(*run) bool) (names []string, all bool) {
	for _, n := range strip {
		if of(n) {
			names = append(names, fmt.Sprintf("%d%s", n.Row, letters(n.Part)))
		}
	}
	return names, len(names) == len(strip)
}

// spell is a stretch of rows: two are named singly.
func spell(from, to int) []string {
	switch to - from {
	case 0:
		return []string{fmt.Sprint(from)}
	case 1:
		return []string{fmt.Sprint(from), fmt.Sprint(to)}
	}
	return []string{fmt.Sprintf("%d to %d", from, to)}
}

// rowNames joins names of rows of the zone.
func (z *zone) rowNames(names []string) string {
	out := "rows "
	if len(names) == 1 && !strings.Contains(names[0], " ") {
		out = "row "
	}
	last := len(names) - 1
	if last > 0 {
		out += strings.Join(names[:last], ", ") + " and "
	}
	out += names[last]
	if z.name != "" {
		out += " of the " + z.name
	}
	return out
}
