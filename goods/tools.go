package goods

import (
	"fmt"
	"math"
	"slices"

	"strake/tape"
)

// Saws is what the saws have to do, read off the cuts of the plan; zero where no
// boards are laid.
type Saws struct {
	Face      tape.Length // of the widest board
	Steepest  float64     // degrees off square of the steepest crosscut
	Rips      int         // pieces sawn along
	Narrowest tape.Length // of what they leave
	Tapers    int         // of those, not of one width
	Longest   tape.Length // of the tapered ones
	Notches   int
}

// SiteFloor is what the site asks of tools and gear.
type SiteFloor struct {
	Undercut []string // openings whose jambs are sawn off
	Tasks    []string // with something to mind
}

// Rental is when floor nailer and compressor are in the house, by the schedule.
type Rental struct {
	Days   int    // from pick-up to return, 0 not known
	Worked int    // of those with rows to nail
	Span   string // Mon 2027-03-15 to Wed 2027-03-17
	Firm   bool   // nothing keeps the rows from being laid then
}

// The tools by their names in a job.
const (
	MitreSaw   = "mitre saw"
	TableSaw   = "table saw"
	Jigsaw     = "jigsaw"
	Nailer     = "floor nailer"
	Compressor = "compressor"
	FinishGun  = "finish nailer"
	JambSaw    = "jamb saw"
	Meter      = "moisture meter"
	Hygrometer = "thermo-hygrometer"
	Straight   = "straightedge"
	Marking    = "marking tools"
	Driving    = "driving tools"
	Tacker     = "hand tacker"
	Gun        = "caulking gun"
	Stripping  = "stripping tools"
	Vacuum     = "vacuum"
)

// ToolNames are all of them.
var ToolNames = []string{MitreSaw, TableSaw, Jigsaw, Nailer, Compressor, FinishGun, JambSaw, Meter, Hygrometer, Straight, Marking, Driving, Tacker, Gun, Stripping, Vacuum}

// tools are what the work takes, each with what it must do.
func (k *work) tools() {
	s := k.f.Saws
	if s.Face > 0 {
		k.tool(MitreSaw, k.crosscuts())
	} else {
		k.tool(MitreSaw, "crosscuts of the boards, square and at an angle")
	}
	if s.Rips > 0 {
		k.tool(TableSaw, k.rips())
	}
	if s.Notches > 0 {
		k.tool(Jigsaw, fmt.Sprintf("%d notches", s.Notches))
	}
	x := k.f.Fixed
	if x.Use.Length > 0 {
		k.tool(Nailer, fmt.Sprintf("drives flooring %ss of %s; shoe for boards of this thickness and finish", x.Use.Kind, k.say(x.Use.Length)))
		k.tool(Compressor, "for the nailers, unless they are driven by a mallet")
	}
	k.tool(FinishGun, "nails of first and last rows; or hammer, drill and nail set")
	if len(k.f.Site.Undercut) > 0 {
		k.tool(JambSaw, "jambs and casings of "+listed(k.f.Site.Undercut)+", flush with an offcut laid on the sheet")
	}
	k.tool(Meter, "readings of boards and subfloor, with its table for this wood")
	k.tool(Hygrometer, "air of the rooms before, during and after")
	long := "6 to 10 ft"
	if !k.f.Unit.Imperial() {
		long = "2 to 3 m"
	}
	k.tool(Straight, long+": flatness of the subfloor")
	k.tool(Marking, "chalk line, string, tape, framing square, pencil")
	k.tool(Driving, "tapping block, mallet, pull bar, flat bar, wedges, spacers")
	if u := k.f.Under; u.Sheeted() && u.Sheet != "none" {
		k.tool(Tacker, "staples of the sheet")
	}
	if k.f.Under.Glued() {
		k.tool(Gun, "tubes of adhesive")
	}
	if len(k.f.Out.Layers) > 0 || k.f.Base > 0 {
		k.tool(Stripping, "wide blade and flat bar for the base; knife, pliers and scraper for what lies there; buckets")
	}
	k.tool(Vacuum, "with a fine filter: before the sheet, before the boards, and at the saws")
}

// crosscuts says what the mitre saw must reach.
func (k *work) crosscuts() string {
	s := k.f.Saws
	if s.Steepest < 0.5 && k.f.Fixed.Example {
		return "crosscuts boards of " + k.say(s.Face) + ", square; at an angle where walls slant, which shows once the boards are known"
	}
	if s.Steepest < 0.5 {
		return "crosscuts boards of " + k.say(s.Face) + ", square"
	}
	reach := tape.Length(math.Ceil(float64(s.Face) / math.Cos(s.Steepest*math.Pi/180)))
	return fmt.Sprintf("crosscuts boards of %s at up to %.0f degrees off square: %s of cut", k.say(s.Face), math.Ceil(s.Steepest), k.f.Style.Up(reach))
}

// rips says what the table saw or a guide must do.
func (k *work) rips() string {
	s := k.f.Saws
	out := fmt.Sprintf("%s ripped, the narrowest to %s", many(s.Rips, "piece"), k.fine(s.Narrowest))
	if s.Rips > s.Tapers {
		out += "; straight ones by the fence"
	}
	if s.Tapers > 0 {
		out += fmt.Sprintf("; %s, up to %s long, by a taper jig, or a circular saw along a guide", many(s.Tapers, "taper"), k.say(s.Longest))
	}
	return out
}

func many(n int, of string) string {
	if n == 1 {
		return "1 " + of
	}
	return fmt.Sprintf("%d %ss", n, of)
}

// tool is a line for one tool, with how it comes.
func (k *work) tool(name, must string) {
	l := Line{Group: Tools, What: name, From: must}
	i := slices.IndexFunc(k.w.Tools, func(t Tool) bool { return t.Name == name })
	if i < 0 {
		k.add(l)
		return
	}
	switch t := k.w.Tools[i]; t.Have {
	case Rent:
		l.Count, l.Do = k.rented(t)
		l.Unit, l.Each = "day", t.Daily
	case BuyOne:
		l.Count, l.Unit, l.Each = 1, "piece", t.Price
	case Own, Borrow:
		l.Do = map[Have]string{Own: "Owned.", Borrow: "Borrowed."}[t.Have]
	}
	k.add(l)
}

// rented is for how many days a tool is rented: as the job says, else by the schedule
// where that knows, else one.
func (k *work) rented(t Tool) (days int, do string) {
	const first = "Rented: get ready first what can be done without it."
	r := k.f.Rental
	known := (t.Name == Nailer || t.Name == Compressor) && r.Days > 0
	switch {
	case !known && t.Days > 0:
		return t.Days, first
	case !known:
		return 1, first + " One day is taken; write days, or start under schedule."
	}
	do = fmt.Sprintf("%s By the schedule %s: %s, rows on %d of them.", first, r.Span, many(r.Days, "day"), r.Worked)
	if !r.Firm {
		do += " Readings do not say go yet: reserve, and do not fetch."
	}
	if t.Days > 0 && t.Days != r.Days {
		return t.Days, do + fmt.Sprintf(" The job says %s, which is taken.", many(t.Days, "day"))
	}
	return r.Days, do
}
