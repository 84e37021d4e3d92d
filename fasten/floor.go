package fasten

import (
	"fmt"

	"strake/lay"
	"strake/ready"
	"strake/tape"
)

// Floor is a floor to be nailed down.
type Floor struct {
	Thickness, Face tape.Length // of the boards
	Slab            bool        // the nailing base lies on a slab
	Base            tape.Length // thickness of the nailing base, 0 not known
	Own             Own
	Lay             lay.Lay // nothing: no boards are laid yet
	Free            []Free
	Gap, Cover      tape.Length // at the walls: the gap, and what covers it
	Joists          Joists
	Paper           tape.Length // what is rolled out under the boards, 0 nothing
}

// Own is what the job says of fasteners; zero figures are those of the schedule.
type Own struct {
	Kind                 Kind
	Length, Spacing, End tape.Length
	Box                  int
	By                   ready.Rank
	Source               string
}

// Use is the schedule of a floor and what is used; ok is false where no schedule
// speaks of such boards and the job does not say.
func (f Floor) Use() (Schedule, Use, bool) {
	s, ok := ScheduleFor(f.Thickness, f.Face, false)
	kind := f.Own.Kind
	if kind == "" {
		kind = Cleat
	}
	u := Chosen(s, kind, f.Thickness, f.Slab)
	if !ok {
		u = Use{Kind: kind, PerBoard: 2, Slant: 45, Entry: Entry(f.Thickness), Edge: half}
	}
	for _, x := range []struct{ own, to *tape.Length }{{&f.Own.Length, &u.Length}, {&f.Own.Spacing, &u.Spacing}, {&f.Own.End, &u.End}} {
		if *x.own > 0 {
			*x.to, u.Source = *x.own, f.Own.Source
		}
	}
	if u.Source == "" {
		u.Source = f.Own.By.String()
	}
	u.Joists = f.Joists
	u.Edge = f.edge(u.Edge)
	return s, u, u.Length > 0 && u.Spacing > 0 && u.End > 0
}

// edge is how far from the board's edge nails go through its face: about half an
// inch, nearer where base and shoe then hide them.
func (f Floor) edge(usual tape.Length) tape.Length {
	if hid := f.Cover - f.Gap - tape.Eighth; f.Cover > 0 && hid < usual && hid >= Nearest {
		return hid
	}
	return usual
}

// Verdicts are what there is to say before the first nail.
func (f Floor) Verdicts(style tape.Style) []ready.Verdict {
	s, u, ok := f.Use()
	if !ok {
		return []ready.Verdict{{Say: ready.Look, Rule: "fasteners", Where: "boards", Measured: style.Of(f.Thickness) + " thick", Limit: "up to " + style.Of(thickest) + ", " + ready.Guidance.String(),
			Do: "The schedule does not speak of such boards: write length, spacing and ends by their maker under fasteners.", Source: srcNWFA}}
	}
	out := f.schedule(s, u, style)
	out = append(out, f.tip(u, style)...)
	for _, x := range f.Free {
		out = append(out, f.free(x, u, style))
	}
	if Glue(f.Face) {
		out = append(out, ready.Verdict{Say: ready.Look, Rule: "glue-assist", Where: "boards", Measured: style.Of(f.Face) + " face", Limit: "glue besides nails over " + style.Of(Wide) + ", " + ready.Guidance.String(), Source: SrcGlue,
			Do: "Glue as well as nail where the boards' maker allows it, boards pressed into wet glue. A rolled sheet under the boards and glue exclude each other, unless the glue's maker allows both."})
	}
	return append(out, f.heads(u, style)...)
}

// schedule holds the job's own figures to the trade's. The maker and local code
// decide; that they ask less is still worth a look.
func (f Floor) schedule(s Schedule, u Use, style tape.Style) []ready.Verdict {
	if s.Flooring == "" {
		return nil
	}
	v := ready.Verdict{Say: ready.Go, Rule: "fastener schedule", Where: s.Flooring, Source: s.Source,
		Measured: fmt.Sprintf("%s %s, every %s, %s from ends", style.Of(u.Length), u.Kind, style.Of(u.Spacing), style.Of(u.End)),
		Limit: fmt.Sprintf("at least %s, every %s to %s, %s to %s from ends, at least %d a board, %s", style.Of(s.Least), style.Of(s.SpacingFrom), style.Of(s.SpacingTo),
			style.Of(s.EndFrom), style.Of(s.EndTo), s.PerBoard, ready.Guidance)}
	if u.Length < s.Least || u.Spacing > s.SpacingTo || u.End > s.EndTo || u.End < s.EndFrom {
		v.Say = ready.Look
		v.Do = "These figures (" + f.Own.By.String() + ": " + u.Source + ") ask for less than the trade's: they go before it; see that they are for these boards on this base."
	}
	return []ready.Verdict{v}
}

// tip says where the tip ends.
func (f Floor) tip(u Use, style tape.Style) []ready.Verdict {
	fine := style
	if fine.Unit.Imperial() {
		fine.Step = tape.Inch / 32
	}
	down := u.Tip(f.Paper)
	v := ready.Verdict{Say: ready.Look, Rule: "fastener tip", Where: "subfloor", Measured: fine.Of(down) + " below its top", Source: SrcTip}
	if f.Paper > 0 {
		v.Measured += ", the sheet under the boards counted"
	}
	switch out := u.Out(f.Paper, f.Base); {
	case down <= 0:
		v.Say, v.Limit, v.Do = ready.Fix, "in the nailing base", "It does not come through the board: take longer ones."
	case f.Base == 0:
		v.Limit = "thickness of the subfloor not known"
		v.Do = "Treat everything within " + style.Of(3*half) + " of the subfloor's top as reached: find pipes, cables and heating before you nail, and write them under keep_free."
	case f.Slab && out > 0:
		v.Say, v.Limit = ready.Fix, style.Of(f.Base)+" of nailing base over the slab"
		v.Do = "The tip meets the slab, bends, or breaks it and what lies in it: take shorter ones, or a thicker base."
	case out > 0:
		v.Limit = style.Of(f.Base) + " of subfloor: out below by " + fine.Of(out)
		v.Do = "It can hit what lies right under the panel: pipes, cables, heating, ducts. Look from below, or find them before you nail, and write them under keep_free."
	default:
		v.Say, v.Limit = ready.Go, style.Of(f.Base)+" of subfloor"
	}
	return []ready.Verdict{v}
}

// free counts what falls in a part to be kept free.
func (f Floor) free(x Free, u Use, style tape.Style) ready.Verdict {
	v := ready.Verdict{Say: ready.Look, Rule: "keep free of fasteners", Where: x.Name, Limit: "none within " + style.Of(x.Margin), Source: srcFree,
		Do: "Mark it on the subfloor and on the paper over it, and put no fastener there; glue those boards, and put the fasteners just outside."}
	if x.What == "pipe" || x.What == "heating" {
		v.Do += " A nail can plug the hole it makes for months: have it under pressure while you nail, if it can be."
	}
	if len(f.Lay.Pieces) == 0 {
		v.Measured = x.What
		return v
	}
	n := len(x.Meets(f.Lay, Places(f.Lay, u), u, f.Paper))
	v.Measured = fmt.Sprintf("%s: %d fasteners of the plan fall there", x.What, n)
	if n == 1 {
		v.Measured = x.What + ": one fastener of the plan falls there"
	}
	switch {
	case n == 0 && x.Known && u.Tip(f.Paper) < x.Depth-x.Margin:
		v.Say, v.Do = ready.Go, ""
		v.Measured = fmt.Sprintf("%s, %s down: tips end above it, face nails lie clear of it", x.What, style.Of(x.Depth))
	case n > 0:
		v.Say = ready.Fix
	}
	return v
}

const srcFree = "common practice, no source: what lies in or under the subfloor is found, marked and kept free"

// heads says whether what covers the gap hides nails through the face.
func (f Floor) heads(u Use, style tape.Style) []ready.Verdict {
	if f.Cover == 0 || u.Hidden(f.Gap, f.Cover) {
		return nil
	}
	return []ready.Verdict{{Say: ready.Look, Rule: "face nails in sight", Where: "first and last rows", Measured: fmt.Sprintf("%s of cover over a gap of %s", style.Of(f.Cover), style.Of(f.Gap)),
		Limit: "nails " + style.Of(u.Edge) + " from the board's edge", Source: SrcFace,
		Do: "Base and shoe do not hide them: nail as near to the edge as a pilot hole allows, set and fill, or take a wider shoe."}}
}
