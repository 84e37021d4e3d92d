package floor

import (
	"strake/finding"
	"strake/room"
)

// least overlap that is told of, mm²: a corner read a hair long is none.
const overlaps = 400.0

// overEachOther tells of things that stay that lie over each other, and of
// those that stand in a doorway: one of the two was set out wrong.
func overEachOther(b room.Built) []finding.Finding {
	var out []finding.Finding
	var names []string
	var outlines []outline
	for _, s := range b.Stays {
		if o, _ := stayOutline(b, s); len(o) > 2 {
			names, outlines = append(names, s.Name), append(outlines, o)
		}
	}
	for i, o := range outlines {
		for k, q := range outlines[:i] {
			if common(o, q) > overlaps {
				out = append(out, over(names[k]+" and "+names[i], "they lie over each other"))
			}
		}
		for _, d := range b.Doorways {
			if common(o, inFront(b, d)) > overlaps {
				out = append(out, over(names[i]+" and "+d.Said(), "it stands in the way of the doorway"))
			}
		}
	}
	return out
}

func over(where, what string) finding.Finding {
	return finding.Finding{Level: finding.Warn, Rule: "what stays", Where: where, Measured: what,
		Do: "Check from which corner each was measured; if it is so, board only what is left."}
}

// inFront is the floor just before a doorway: its width, 100 mm deep.
func inFront(b room.Built, d room.Doorway) outline {
	s, e, ok := Jambs(b, d.Wall, d.From, d.At, d.Width)
	if !ok || s == e {
		return nil
	}
	in := e.Sub(s).Unit().Left().Times(100)
	return outline{s, e, e.Add(in), s.Add(in)}
}

// common is the area that two outlines share.
func common(o, q outline) float64 {
	if len(o) < 3 || len(q) < 3 {
		return 0
	}
	u, err := join([]outline{o, q}, nil)
	if err != nil {
		return 0
	}
	return o.area() + q.area() - u.area()
}
