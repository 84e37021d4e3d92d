package paper

import (
	"fmt"
	"math"
	"strings"

	"strake/lay"
	"strake/plane"
	"strake/saw"
	"strake/tape"
	"strake/words"
)

// keeps names the long edge that a ripped piece still has.
func keeps(p Piece) string {
	if k := p.Cuts.Rip.Keeps; k != "" {
		return string(k) + " edge"
	}
	return "neither edge"
}

// ends are the two ends of a piece in words, left first.
func ends(p Piece) string { return string(p.Lay.Left) + " | " + string(p.Lay.Right) }

// notches describes each notch that can be measured, by its sizes and its place.
func notches(p Piece, say words.Lengths) []string {
	var out []string
	for _, n := range p.Cuts.Notches {
		if !say.Nil(n.Along) && !say.Nil(n.Across) {
			out = append(out, notch(p, n, say))
		}
	}
	return out
}

// Of a notch: how many times as long as deep it is where it is called an edge cut back,
// and a corner where it is called a taper.
const shallow, tapers = 6, 2

func notch(p Piece, n saw.Notch, say words.Lengths) string {
	end, edge := off(n.FromEnd, n.End, say.Of), off(n.FromEdge, n.Edge, say.Rip)
	at := n.FromEnd == 0 && n.FromEdge == 0
	switch {
	case n.Corner && at && n.Along > tapers*n.Across:
		return fmt.Sprintf("%s: %s at the %s, to nothing at %s from there", cutBack+string(n.Edge), say.Rip(n.Across), n.End, say.Of(n.Along))
	case n.Corner && at:
		return cornerOff(p, n, say)
	case !n.Slanted && n.FromEdge == 0 && n.Along > shallow*n.Across:
		return fmt.Sprintf("%s by %s over %s, %s", cutBack+string(n.Edge), say.Rip(n.Across), say.Of(n.Along), end)
	}
	s := fmt.Sprintf("%s%s along by %s across, %s, %s", notched, say.Of(n.Along), say.Rip(n.Across), end, edge)
	if n.Slanted {
		s += ", slanted"
	}
	return s
}

// What a notch begins with in words.
const (
	notched = "notch "
	cutBack = "cut back the "
	corner  = "saw the corner off "
)

// IsNotch tells whether a part of Work or CutWords is of a notch, whatever its form.
func IsNotch(s string) bool {
	return strings.HasPrefix(s, notched) || strings.HasPrefix(s, cutBack) || strings.HasPrefix(s, corner)
}

// off is how far from an end or an edge; what prints as 0 is at it.
func off(d tape.Length, side saw.Side, say func(tape.Length) string) string {
	if say(d) == say(0) {
		return "at the " + string(side)
	}
	return say(d) + " from the " + string(side)
}

// cornerOff describes a corner that one slanted cut takes off: by its two sides, and the
// width that is left square beside it.
func cornerOff(p Piece, n saw.Notch, say words.Lengths) string {
	lo, hi := p.Lay.Outline.Box()
	deg := math.Atan2(float64(n.Along), float64(n.Across)) * 180 / math.Pi
	s := fmt.Sprintf(corner+"at the %s: %s along the %s by %s across (%.1f degrees off square)", n.End, say.Of(n.Along), n.Edge, say.Rip(n.Across), deg)
	if left := hi.Y - lo.Y - n.Across; !say.Nil(left) {
		s += ", " + say.Rip(left) + " of the end stays square"
	}
	return s
}

// mitre describes a slanted end: which side is the longer, by how much, and
// the angle off square; "" for an end that is as good as square.
func mitre(p Piece, left bool, say words.Lengths) string {
	slant, side, long := p.Cuts.Right, saw.RightEnd, saw.AheadEdge
	if left {
		slant, side = p.Cuts.Left, saw.LeftEnd
	}
	if say.Nil(slant) {
		return ""
	}
	if (slant > 0) == left {
		long = saw.BehindEdge
	}
	lo, hi := p.Lay.Outline.Box()
	deg := math.Atan2(float64(slant.Abs()), float64(hi.Y-lo.Y)) * 180 / math.Pi
	s := fmt.Sprintf("mitre the %s, %s longer at the %s (%.1f degrees off square)", side, say.Rip(slant.Abs()), long, deg)
	if p.InPlace {
		s += ", measured in place"
	}
	return s
}

// Work are the things to do to a board to make the piece, in words.
func Work(p Piece, say words.Lengths) []string {
	if p.Whole {
		return append(append([]string{"whole"}, grooved(p)...), tongues(p, say)...)
	}
	var out []string
	if s := crosscutText(p, say); s != "" {
		out = append(out, s)
	}
	for _, left := range []bool{true, false} {
		if m := mitre(p, left, say); m != "" {
			out = append(out, m)
		}
	}
	if p.Cuts.Rip.Done {
		out = append(out, ripText(p, say))
	}
	out = append(out, notches(p, say)...)
	out = append(out, grooved(p)...)
	return append(out, tongues(p, say)...)
}

// grooved are the ends that are grooved on the job or get a spline, to meet
// the boards of another field or a header.
func grooved(p Piece) []string {
	var out []string
	for k, e := range []lay.Profile{p.Lay.Left, p.Lay.Right} {
		name := []string{"left end", "right end"}[k]
		switch {
		case e == lay.Spline && p.Sawn[k]:
			out = append(out, "groove the "+name+" and glue a spline in")
		case e == lay.Spline:
			out = append(out, "glue a spline into the groove of the "+name)
		case e == lay.Groove && p.Sawn[k]:
			out = append(out, "groove the "+name+" to take the tongue beyond")
		}
	}
	return out
}

// crosscutText names the ends that are cut square.
func crosscutText(p Piece, say words.Lengths) string {
	s := ""
	switch left, right := p.Sawn[0] && say.Nil(p.Cuts.Left), p.Sawn[1] && say.Nil(p.Cuts.Right); {
	case left && right:
		s = "crosscut both ends"
	case left:
		s = "crosscut the left end"
	case right:
		s = "crosscut the right end"
	}
	if s != "" && p.InPlace {
		s += ", measured in place"
	}
	return s
}

func ripText(p Piece, say words.Lengths) string {
	r := p.Cuts.Rip
	s := fmt.Sprintf("rip to %s, saw at %s", say.Rip(r.Left), say.Rip(p.SawRip[0]))
	if say.Rip(r.Left) != say.Rip(r.Right) {
		s = fmt.Sprintf("taper from %s at the left to %s at the right, saw from %s to %s",
			say.Rip(r.Left), say.Rip(r.Right), say.Rip(p.SawRip[0]), say.Rip(p.SawRip[1]))
	}
	s += ", keeps the " + keeps(p)
	if keeps(p) == "neither edge" {
		s = strings.Replace(s, "keeps the", "keeps", 1)
	}
	for _, b := range r.Bends {
		s += fmt.Sprintf(", %s wide at %s from the left", say.Rip(b.Width), say.Of(b.FromLeft))
	}
	return s
}

// tongues are the tongues to take off a piece.
func tongues(p Piece, say words.Lengths) []string {
	var out []string
	for _, e := range []struct {
		has  lay.Profile
		name string
	}{{p.Lay.Left, "left end"}, {p.Lay.Right, "right end"}, {p.Lay.Behind, "edge behind"}, {p.Lay.Ahead, "edge ahead"}} {
		if e.has == lay.TongueOff {
			out = append(out, "take the tongue off the "+e.name)
		}
	}
	lo, hi := p.Lay.Outline.Box()
	for _, s := range p.Lay.Off {
		if say.Of(s.From-lo.X) == say.Of(s.To-lo.X) {
			continue // a hair at a row end: nobody saws that
		}
		if end := pared(s, lo.X, hi.X); end != "" {
			out = append(out, fmt.Sprintf("pare %s of the side tongue off at the %s", say.Of(s.To-s.From), end))
			continue
		}
		out = append(out, fmt.Sprintf("take the side tongue off from %s to %s from the left", say.Of(s.From-lo.X), say.Of(s.To-lo.X)))
	}
	return out
}

// pare is how long a bit of tongue at the end of a piece is that a chisel takes off.
const pare = 10 * tape.Millimetre

// pared is the end of a piece that a bit of its tongue is pared off at, "" where what
// comes off is longer, or lies elsewhere.
func pared(s plane.Span, from, to tape.Length) string {
	switch {
	case s.To-s.From > pare:
		return ""
	case s.From-from < tape.Millimetre:
		return "left end"
	case to-s.To < tape.Millimetre:
		return "right end"
	}
	return ""
}

// head starts every text list: the job, what the list is, and a warning where
// the boards are an example.
func head(job, what string, isExample bool) string {
	var b strings.Builder
	if job != "" {
		what = job + ": " + what
	}
	b.WriteString(what + "\n" + strings.Repeat("=", len([]rune(what))) + "\n\n")
	if isExample {
		b.WriteString("EXAMPLE LAYOUT, BOARDS NOT YET KNOWN: rows, rips, order of laying and lines\nhold, the lengths of the pieces do not.\n\n")
	}
	return b.String()
}
