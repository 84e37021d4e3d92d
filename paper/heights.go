package paper

import (
	"fmt"
	"io"
	"strings"

	"strake/plan"
	"strake/ready"
	"strake/tape"
	"strake/trim"
)

// Heights writes heights.txt: the floor's layers, what goes in each opening, what
// is cut off leaves and jambs, the risers of stairs, appliances, all build-ups
// compared, and what covers the gap at each wall.
func Heights(w io.Writer, p plan.Plan) error {
	var b strings.Builder
	b.WriteString(head(p.Job.Name, "heights", p.Lay.Example))
	wrap(&b, "Local code and licensed practice come first, then the makers' instructions, then this. Heights are over the subfloor, once what comes out is out. Measure again in place before you cut.", "", "")
	s, _ := p.HeightSheet()
	l := heightLister{&b, heightStyle(p.Job.Unit), s}
	l.floor(p)
	l.meetings()
	l.leaves()
	l.jambs()
	l.flights()
	l.appliances()
	l.builds()
	l.covers(p)
	l.verdicts(trim.Verdicts(p.Job.Trim, p.HeightsFloor()))
	_, err := io.WriteString(w, b.String())
	return err
}

// heightLister writes the parts of heights.txt.
type heightLister struct {
	b     *strings.Builder
	style tape.Style
	s     trim.Sheet
}

// heightStyle prints heights: felt is 1/32 in.
func heightStyle(u tape.Unit) tape.Style {
	if u.Imperial() {
		return tape.Style{Unit: tape.UnitInch, Step: tape.Inch / 32}
	}
	return tape.Style{Unit: tape.UnitMillimetre, Step: tape.Millimetre / 10}
}

func (l heightLister) say(x tape.Length) string { return l.style.Of(x) }

// title begins a part.
func (l heightLister) title(s string) { l.b.WriteString("\n" + s + "\n") }

// item is a line of a part, wrapped under itself.
func (l heightLister) item(s string) { wrap(l.b, s, "  ", "      ") }

// layers are a stack from the subfloor up.
func (l heightLister) layers(s trim.Stack) string {
	var out []string
	for _, x := range s {
		out = append(out, x.What+" "+l.say(x.Thickness))
	}
	return strings.Join(out, " + ")
}

func (l heightLister) floor(p plan.Plan) {
	l.title("The floor")
	l.item(fmt.Sprintf("%s = %s over the subfloor", l.layers(l.s.Floor), l.say(l.s.Floor.Height())))
	if l.s.SheetGuess {
		l.item("The sheet is taken for " + l.say(tape.Inch/32) + ", number 15 felt, from memory: write sheet under heights for yours.")
	}
	if old := p.HeightsFloor().Old; old > 0 {
		l.item(fmt.Sprintf("Comes out: %s; the floor then comes %s against what lies there now", l.say(old), l.change(l.s.Floor.Height()-old)))
	}
}

// change is up or down by so much.
func (l heightLister) change(x tape.Length) string {
	switch {
	case x < 0:
		return l.say(-x) + " down"
	case x > 0:
		return l.say(x) + " up"
	}
	return "out at the same height"
}

func (l heightLister) meetings() {
	if len(l.s.Meetings) == 0 {
		return
	}
	l.title("Openings, and what stays")
	for _, m := range l.s.Meetings {
		s := fmt.Sprintf("%s: %s = %s", m.Name, l.layers(m.Stack), l.say(m.Stack.Height()))
		if m.Strip != trim.Nosing {
			s += fmt.Sprintf("; beyond (%s) %s: this floor %s", beyondName(m.Covering), l.say(m.Beyond), l.higher(m.Diff))
		}
		l.item(s)
		wrap(l.b, m.How, "    ", "      ")
		wrap(l.b, "Gap: "+m.Gap, "    ", "      ")
		if m.Wide > 0 && m.Strip != trim.None {
			s := "Length of the strip: " + l.say(m.Wide) + " between the jambs, in one piece"
			if m.Wide > trim.Sold {
				s = "Length of the strip: " + l.say(m.Wide) + " between the jambs: longer than most are sold (" + l.say(trim.Sold) + "), so made to length, or joined where it shows least"
			}
			wrap(l.b, s, "    ", "      ")
		}
	}
}

func beyondName(c string) string {
	if c == "" {
		return "other"
	}
	return c
}

func (l heightLister) higher(d tape.Length) string {
	switch {
	case d > 0:
		return l.say(d) + " higher"
	case d < 0:
		return l.say(-d) + " lower"
	}
	return "alike"
}

func (l heightLister) leaves() {
	if len(l.s.Swings)+len(l.s.Hung) == 0 {
		return
	}
	l.title("Door leaves")
	for _, x := range l.s.Swings {
		switch no := x.Leaf.Uncut(); {
		case !x.Known:
			l.item(x.Name + ": the height that it opens over is not told")
		case x.Cut == 0:
			l.item(fmt.Sprintf("%s (%s): nothing to cut, %s left under it", x.Name, x.Leaf.Of, l.say(x.Left)))
		case no != "":
			l.item(fmt.Sprintf("%s (%s): wants %s and is not cut. %s", x.Name, x.Leaf.Of, l.style.Up(x.Cut), no))
		default:
			l.item(fmt.Sprintf("%s (%s): cut %s off; %s over the floor then", x.Name, x.Leaf.Of, l.style.Up(x.Cut), l.say(x.Left+x.Cut)))
		}
	}
	for _, h := range l.s.Hung {
		s := fmt.Sprintf("%s (%s): %s left over the new floor, wants %s", h.Name, h.Track.Of, l.say(h.Left), l.say(h.Need))
		if h.Lift > 0 {
			s += fmt.Sprintf("; lift it by %s, of %s that it turns up", l.style.Up(h.Lift), l.say(h.Track.Lifts))
		}
		l.item(s)
	}
}

func (l heightLister) jambs() {
	if len(l.s.Undercuts) == 0 {
		return
	}
	l.title("Jambs and casings")
	for _, u := range l.s.Undercuts {
		if u.Not != "" {
			l.item(fmt.Sprintf("%s: not cut; %s", u.Name, u.Not))
			continue
		}
		s := fmt.Sprintf("%s: saw %s over the subfloor there = %s + %s to slide in", u.Name, l.say(u.Height), l.layers(u.Stack), l.say(l.s.JambClear))
		if u.Deep > 0 {
			s += fmt.Sprintf("; only %s deep from this side, the floor stops there", l.say(u.Deep))
		}
		if !u.Plan {
			s += "; the plan has boards end before them"
		}
		l.item(s)
	}
	l.item("A scrap of flooring laid on what goes under it is the guide for the saw (common practice, no source). Look for cables and alarm contacts first.")
}

func (l heightLister) flights() {
	for _, f := range l.s.Flights {
		at := "foot"
		if f.Head {
			at = "head"
		}
		l.title(fmt.Sprintf("Risers of %s, from the foot up (this floor at its %s, %s)", f.Name, at, l.change(f.Rise)))
		l.b.WriteString("  riser        now       then\n")
		for i, r := range f.Risers {
			fmt.Fprintf(l.b, "  %5d %10s %10s\n", i+1, l.say(r), l.say(f.Then[i]))
		}
		keeps := "kept"
		if !f.Even {
			keeps = "NOT kept"
		}
		l.item(fmt.Sprintf("largest and smallest %s apart; at most %s: %s [%s]", l.say(f.Apart()), l.s.Riser, keeps, l.s.RiserFrom))
	}
}

func (l heightLister) appliances() {
	if len(l.s.Fits) == 0 {
		return
	}
	l.title("Appliances")
	for _, f := range l.s.Fits {
		pass := "passes"
		if !f.Pass {
			pass = "DOES NOT PASS"
		}
		where := "boards under it"
		if f.Boards == trim.Front {
			where = "boards end in front of it"
		}
		l.item(fmt.Sprintf("%s: %s; %s from the new floor up, %s high with its feet in: %s %s", f.Name, where, l.say(f.Room), l.say(f.Height), l.spare(f.Left), pass))
	}
}

func (l heightLister) spare(x tape.Length) string {
	if x < 0 {
		return l.say(-x) + " too high,"
	}
	return l.say(x) + " left,"
}

// builds is the table of build-ups, where there is more than one.
func (l heightLister) builds() {
	if len(l.s.Builds) < 2 {
		return
	}
	l.title("Build-ups of what is stocked (* the job's)")
	for _, c := range l.s.Builds {
		mark := " "
		if c.Chosen {
			mark = "*"
		}
		panel := "no panel"
		if c.Panel > 0 {
			panel = "panel " + l.say(c.Panel)
		}
		s := fmt.Sprintf("boards %s, %s: %s high", l.say(c.Board), panel, l.say(c.Height))
		n := 0
		for _, m := range l.s.Meetings {
			if m.Strip == trim.Nosing {
				continue
			}
			s += fmt.Sprintf("; %s %s", m.Name, c.Strips[n])
			n++
		}
		for i, f := range l.s.Flights {
			s += fmt.Sprintf("; %s %s", f.Name, kept(c.Stairs[i]))
		}
		for i, f := range l.s.Fits {
			s += fmt.Sprintf("; %s %s", f.Name, passes(c.Fits[i]))
		}
		for i, x := range l.s.Swings {
			if c.Cut[i] > 0 {
				s += fmt.Sprintf("; %s cut by %s", x.Name, l.style.Up(c.Cut[i]))
			}
		}
		wrap(l.b, s, " "+mark, "      ")
	}
}

func kept(ok bool) string {
	if ok {
		return "risers even"
	}
	return "risers NOT even"
}

func passes(ok bool) string {
	if ok {
		return "passes"
	}
	return "does NOT pass"
}

// covers is the table of what covers the gap at each wall.
func (l heightLister) covers(p plan.Plan) {
	if len(l.s.Covered) == 0 {
		return
	}
	what := "as the boards leave it"
	if len(p.Lay.Pieces) == 0 {
		what = "as the gap ranges allow it"
	}
	l.title("Base and shoe over the gap, " + what)
	fmt.Fprintf(l.b, "  %-10s %10s %10s %10s %10s %10s %10s\n", "wall", "least", "greatest", "varies by", "by winter", "cover", "laps")
	for _, c := range l.s.Covered {
		fmt.Fprintf(l.b, "  %-10s %10s %10s %10s %10s %10s %10s\n", c.Wall, l.say(c.Least), l.say(c.Greatest), l.say(c.Greatest-c.Least), l.say(c.Winter), l.say(c.Cover), l.say(c.Laps))
	}
	l.item("Varies by: beside rows that is the taper, at row ends how the boards came out. By winter: one board's movement at walls beside the rows, which shrinks towards its nails; along the boards wood hardly moves (common practice, no source). It is 0 where climate or species is not told.")
}

// verdicts are what to look at, all but go.
func (l heightLister) verdicts(vs []ready.Verdict) {
	l.title("What to look at")
	none := true
	for _, v := range vs {
		if v.Say != ready.Go {
			none = false
			findingText(l.b, v.Finding())
		}
	}
	if none {
		l.b.WriteString("  Nothing stands out.\n")
	}
}
