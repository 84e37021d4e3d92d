package goods

import (
	"fmt"

	"strake/fasten"
	"strake/plane"
	"strake/site"
	"strake/tape"
)

// Field is a part of the floor in the frame of its rows.
type Field struct{ Area plane.Region }

// UnderFloor is what lies between boards and subfloor.
type UnderFloor struct {
	Fields []Field
	Sheet  string // kind as told, "" none
	Slab   bool   // no wood between boards and slab is known of
	Glue   site.Answer
	Both   bool // the adhesive's maker allows it over the sheet
	Face   tape.Length
}

// Glued tells whether boards are glued as well, and Sheeted whether a sheet is
// rolled out; one of the two unless the adhesive's maker allows both.
func (u UnderFloor) Glued() bool {
	return u.Glue == site.Yes || u.Glue == "" && u.Sheet == "" && fasten.Glue(u.Face)
}

// Sheeted tells whether a sheet is rolled out.
func (u UnderFloor) Sheeted() bool { return !u.Glued() || u.Both && u.Sheet != "" }

// under is the sheet or the adhesive.
func (k *work) under() {
	u := k.f.Under
	if len(u.Fields) == 0 {
		return
	}
	if u.Glued() {
		k.adhesive()
	}
	switch {
	case u.Sheeted() && barrier(u.Sheet) && !u.Slab:
		k.add(Line{Group: Under, What: "no " + u.Sheet, From: "a wood subfloor", Source: site.Guides[len(site.Guides)-1].Source,
			Do: "It lets no vapour through. Take felt or paper of 0.7 to 10 perm instead, write it under site, sheet, and this list counts its rolls."})
	case u.Sheeted():
		k.sheet()
	default:
		k.add(Line{Group: Under, What: "no sheet under glued boards", From: "adhesive is listed instead",
			Do: "Adhesive and a rolled sheet exclude each other, unless the adhesive's maker allows both (glue_over_sheet: yes under site)."})
	}
}

// barrier tells whether a sheet lets no vapour through.
func barrier(kind string) bool { return kind == "polyethylene" }

// sheet rolls sheets out across the rows and counts rolls and staples.
func (k *work) sheet() {
	kind := k.f.Under.Sheet
	if kind == "" || kind == "none" {
		kind = "felt"
	}
	if k.f.Under.Sheet == "none" {
		return
	}
	r := k.w.Roll
	n := Unroll(k.f.Under.Fields, r)
	l := Line{Group: Under, What: fmt.Sprintf("%s, roll of %s by %s", kind, k.say(r.Width), k.long(r.Length)), Item: SheetItem, Count: n.Rolls, Unit: "roll",
		From:   fmt.Sprintf("%s in %d sheets across the rows, laps of %s, %d of them where a roll ends", k.long(n.Length), n.Sheets, k.say(r.Lap), n.Joined),
		Source: SrcRoll + "; " + SrcLap}
	switch {
	case k.f.Under.Both && k.f.Under.Glued():
		l.Do = "Together with adhesive, since its maker allows both."
	case fasten.Glue(k.f.Under.Face) && k.f.Under.Glue != site.No:
		l.Do = "Boards so wide are better glued as well: then adhesive goes on the list instead (glue: yes under site)."
	}
	k.add(l)
	staples := 0
	for _, s := range n.Each {
		staples += 2 * (int((s+k.w.StapleEvery-1)/k.w.StapleEvery) + 1)
	}
	k.add(Line{Group: Under, What: "staples for a hand tacker, box of 1,000", Item: Staples, Count: (staples + 999) / 1000, Unit: "box",
		From: fmt.Sprintf("%d staples along both edges of each sheet", staples), Source: SrcStaple})
}

// Unrolled is what sheets laid out take.
type Unrolled struct {
	Sheets, Joined, Rolls int
	Length                tape.Length // of all sheets, laps where rolls end too
	Each                  []tape.Length
}

// Unroll lays sheets of a roll across the rows of each field, side by side with
// laps; one that a roll does not reach the end of goes on with a lap.
func Unroll(fs []Field, r Roll) Unrolled {
	var out Unrolled
	left := tape.Length(0)
	for _, f := range fs {
		lo, hi := f.Area.Box()
		for x := lo.X; x < hi.X; x += r.Width - r.Lap {
			for _, part := range f.Area.RightOf(x).LeftOf(min(x+r.Width, hi.X)).Parts() {
				a, b := part.Box()
				l := b.Y - a.Y
				if l <= 0 {
					continue
				}
				out.Sheets++
				out.Each = append(out.Each, l)
				for {
					if left <= r.Lap { // nothing useful is left on the roll
						out.Rolls++
						left = r.Length
					}
					cut := min(l, left)
					out.Length += cut
					left -= cut
					if l -= cut; l <= 0 {
						break
					}
					l += r.Lap
					out.Joined++
				}
			}
			if x+r.Width >= hi.X {
				break
			}
		}
	}
	return out
}
