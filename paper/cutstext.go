package paper

import (
	"fmt"
	"io"
	"strings"

	"strake/plan"
	"strake/words"
)

var KindTitles = map[Kind]string{
	Crosscut: "Crosscuts, square", Rip: "Rips, by what the saw is set to", Mitre: "Mitres", NotchCut: "Notches and cut-outs",
	TongueOff: "Tongues taken off (not measured; counted apart)",
}

// CutsText writes cuts.txt, the cut list to take to the saw.
func CutsText(w io.Writer, p plan.Plan) error {
	say, cuts, n := words.In(p.Job.Unit), CutList(p), Count(p)
	var b strings.Builder
	b.WriteString(head(p.Job.Name, "cut list", p.Lay.Example))
	wrap(&b, fmt.Sprintf("%d measured crosscuts and mitres, %d pieces ripped, %d notches, %d tongues taken off. Kerf %s.",
		n.Crosscuts, n.Rips, n.Notches, n.TonguesOff, say.Rip(p.Lay.Kerf)), "", "")
	for _, k := range Kinds {
		cutGroup(&b, k, cuts, say)
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func cutGroup(b *strings.Builder, k Kind, cuts []Cut, say words.Lengths) {
	title := "\n" + KindTitles[k] + "\n"
	for _, c := range cuts {
		if c.Kind != k || c.Same {
			continue
		}
		b.WriteString(title)
		title = ""
		cutText(b, c, say)
	}
}

func cutText(b *strings.Builder, c Cut, say words.Lengths) {
	pc := c.Piece
	first := fmt.Sprintf("  [ ] %-11s board %-4s row %-4s piece %-2d ", say.Of(pc.Cuts.Long()), pc.Board, pc.Row, pc.No)
	wrap(b, strings.Join(CutWords(c, say), ", "), first, strings.Repeat(" ", len([]rune(first))))
}

// CutWords is what to know of a cut: what is cut, what stays, and what its
// other side makes.
func CutWords(c Cut, say words.Lengths) []string {
	out := []string{what(c, say) + ofFace(c.Piece.Face, say)}
	if c.Kind != Crosscut && c.Kind != Mitre {
		return out
	}
	if c.Kind == Mitre {
		out = append(out, "short side "+say.Of(c.Piece.Cuts.Short()))
	} else if c.Piece.InPlace {
		out = append(out, "measured in place")
	}
	if k := keptEnd(c); k == "no end" {
		out = append(out, "both ends are cut")
	} else {
		out = append(out, "keeps the "+k)
	}
	if o := c.Other; o != nil {
		out = append(out, "the other part is "+o.Name+", "+say.Of(o.Cuts.Long()))
	}
	return out
}
