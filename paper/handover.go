package paper

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"strake/caution"
	"strake/fasten"
	"strake/order"
	"strake/plan"
	"strake/schedule"
	"strake/site"
	"strake/subfloor"
	"strake/tape"
	"strake/words"
)

const habit = "common practice, no source"

// Handover is what whoever lives with the floor should know of it: the air it is made
// for, gaps to expect, spare boards, what lies under it, how it is held, care. What the
// job does not know is left blank. Boards are those bought; none where nothing was
// counted.
func Handover(p plan.Plan, boards []plan.Purchase) Form {
	h := hander{p, boards, words.In(p.Job.Unit)}
	f := Form{Name: p.Job.Name, Title: "for whoever lives with this floor", Lead: []string{
		"What the makers of the boards and of their finish say goes before this sheet, and local law before both. Keep it with the papers of the house, and hand it on."}}
	f.add(FormPart{Head: "The floor", Lines: h.floor()})
	f.add(FormPart{Head: "The air it is made for", Lines: h.air()})
	f.add(FormPart{Head: "Gaps to expect between boards", Lines: h.gaps()})
	f.add(FormPart{Head: "Spare boards", Lines: h.spares()})
	f.add(FormPart{Head: "Pipes, cables and heating under it", Lines: h.under()})
	f.add(FormPart{Head: "How it is held", Lines: h.held()})
	f.add(FormPart{Head: "What it meets", Lines: h.meets()})
	f.add(FormPart{Head: "Care", Lines: care(p)})
	f.add(FormPart{Head: "Readings on the day it is handed over", Lines: readingsOf()})
	f.add(FormPart{Head: "Besides", Lines: said(p.Job.Handover.Remarks...)})
	f.add(FormPart{Head: "Signed", Lines: signatures("Handed over by", "Taken over by")})
	return f
}

type hander struct {
	p      plan.Plan
	boards []plan.Purchase
	say    words.Lengths
}

func (h hander) floor() []FormLine {
	s := &summary{p: h.p, say: h.say}
	j := h.p.Job
	var out []FormLine
	for _, r := range h.p.Floor.Rooms {
		out = append(out, FormLine{What: "Room", Says: s.room(r)})
	}
	out = append(out, FormLine{What: "Boards", Says: boardsWords(h.p)}, filled("Laid by", j.Quote.By), filled("Last board laid on", saidDay(j.Handover.Laid)))
	finish := j.Handover.Finish
	switch {
	case finish != "":
		return append(out, filled("Finished with", finish))
	case j.Hazards.Finish == caution.Factory:
		return append(out, FormLine{What: "Finished", Says: "in the factory; maker and name of the finish, for care and repairs:", Blanks: 1})
	}
	return append(out, filled("Finished with, and when", ""))
}

func saidDay(d schedule.Day) string {
	if d == 0 {
		return ""
	}
	return d.Said()
}

// air is the band that the boards are made for, and what they do outside of it.
func (h hander) air() []FormLine {
	m := h.p.Job.Moisture
	s := m.Service()
	by, sources := s.Whose()
	out := []FormLine{{What: "Humidity", Says: fmt.Sprintf("%g to %g %%RH, all year, at %s to %s (%s)", s.Dry.Is, s.Humid.Is, m.Like(s.Cold.Is), m.Like(s.Warm.Is), by), Sources: sources},
		{What: "Drier", Says: "boards shrink: gaps open, and in very dry air ends and faces may crack. A humidifier in the heating season keeps them small.", Sources: []string{habit}},
		{What: "More humid", Says: "boards swell: they press on each other, edges stand up, and if it goes on the floor may lift off what it is fastened to. Air and dehumidify; look for a leak if it is one place alone.", Sources: []string{habit}},
		{What: "A thermo-hygrometer", Says: "costs little: hang one in the room, and look at it when the heating is turned on and off.", Sources: []string{habit}}}
	if y, ok := h.p.Yearly(); ok {
		out = append(out, FormLine{What: "As told of this house", Says: fmt.Sprintf("winter %s, summer %s: wood at %.1f to %.1f %%", m.Climate.Winter, m.Climate.Summer, y.Season.Low, y.Season.High)})
	}
	return out
}

// gaps are those of the driest season, board by board.
func (h hander) gaps() []FormLine {
	fine := func(l tape.Length) string {
		if h.p.Job.Unit.Imperial() {
			return fmt.Sprintf("%.3f in", l.Inches())
		}
		return fmt.Sprintf("%.2f mm", l.Millimetres())
	}
	var out []FormLine
	y, ok := h.p.Yearly()
	if !ok {
		for _, b := range h.p.Job.Boards.Each() {
			if a, known := h.p.APoint(b.Face); known {
				out = append(out, FormLine{What: "Boards of " + h.say.Rip(b.Face), Says: fmt.Sprintf("%s for each point of moisture content that they lose", fine(a))})
			}
		}
		out = append(out, FormLine{What: "Winter gaps", Says: "not known: the air of winter and summer, or the kind of wood, was not told. What was seen in the first winter:", Blanks: 1})
	} else {
		laid := fmt.Sprintf("laid at %.1f %%, halfway between the seasons (no readings are told)", y.Laid)
		if y.Read {
			laid = fmt.Sprintf("laid at %.1f %% by their readings", y.Laid)
		}
		for _, m := range y.Moves {
			says := fmt.Sprintf("up to %s beside each board at the driest, %s", fine(m.Gap), laid)
			if m.Press > 0 {
				says += fmt.Sprintf("; in the humid season a board wants to be %s wider, and presses", fine(m.Press))
			}
			out = append(out, FormLine{What: "Boards of " + h.say.Rip(m.Face), Says: says, Sources: []string{m.By, y.Source}})
		}
		out = append(out, h.across(y.Moves[0].Gap, fine)...)
	}
	return append(out, FormLine{Says: "Boards do not share it out evenly: a few joints open by more, most by less. A gap that comes in the heating season and goes in summer is the wood at work. Do not fill it: what is filled is pressed out, or pushes the boards apart.", Sources: []string{habit}})
}

// across is what the gaps of all rows of a field come to.
func (h hander) across(gap tape.Length, fine func(tape.Length) string) []FormLine {
	if len(h.p.Job.Boards.Widths) > 0 || gap == 0 {
		return nil
	}
	var out []FormLine
	for _, f := range h.p.Fields {
		if n := f.Layout.Rows; n > 1 {
			name := "All rows"
			if len(h.p.Fields) > 1 && f.Name != "" {
				name = "All rows of " + f.Name
			}
			out = append(out, FormLine{What: name, Says: fmt.Sprintf("%d rows: %s in all, if nothing held them", n, fine(gap*tape.Length(n)))})
		}
	}
	return out
}

// spares are the boards kept, with their lots.
func (h hander) spares() []FormLine {
	j := h.p.Job
	var out []FormLine
	kept := false
	for _, x := range h.boards {
		if x.Advised == 0 {
			continue
		}
		kept = true
		out = append(out, FormLine{What: "Meant to be kept", Says: fmt.Sprintf("%s of boards of %s, and what is left over of the others", cartons(x.Wants.Spares), h.say.Rip(x.Boards.Face))})
	}
	if !kept {
		n := order.Spares
		if j.Order.SparesTold {
			n = j.Order.Spares
		}
		out = append(out, FormLine{What: "Meant to be kept", Says: cartons(n) + " for repairs, and what is left over"})
	}
	out = append(out, filled("Really kept", ""), filled("Lots", strings.Join(h.lots(), ", ")), filled("Where they are", j.Handover.Spares))
	return append(out, FormLine{Says: "Flat, in a room that is lived in: boards from a cellar or a garage have another content and another shade. Write room, lot and day on the carton.", Sources: []string{habit}})
}

// lots are those printed on the cartons, each once.
func (h hander) lots() []string {
	var out []string
	add := func(s string) {
		if s != "" && !slices.Contains(out, s) {
			out = append(out, s)
		}
	}
	add(h.p.Job.Boards.Lot)
	for _, c := range h.p.Job.Received.Cartons {
		add(c.Lot)
	}
	return out
}

// under is what fasteners were kept out of, and what nobody told of.
func (h hander) under() []FormLine {
	j := h.p.Job
	var out []FormLine
	for _, k := range j.KeepFree {
		says := fmt.Sprintf("%s: from corner %s along wall %s %s, and %s off that wall, %s along it by %s", k.What, k.From, k.Wall, h.say.Of(k.At), h.say.Of(k.Off), h.say.Of(k.Width), h.say.Of(k.Depth))
		if k.Known {
			says += ", its top " + h.say.Of(k.Below+j.Trim.Panel) + " under the subfloor's top"
		} else {
			says += "; nobody knows how deep"
		}
		out = append(out, FormLine{What: strings.ToUpper(k.Name[:1]) + k.Name[1:], Says: says})
	}
	switch j.Site.Heated {
	case site.Yes:
		s := "there is heating in the floor: nothing is nailed, screwed or drilled into it anywhere"
		if j.Site.Surface > 0 {
			s += ", and its surface stays under " + j.Moisture.Like(j.Site.Surface)
		}
		out = append(out, FormLine{What: "Heating", Says: s})
	case site.No:
		out = append(out, FormLine{What: "Heating", Says: "none in the floor, as told"})
	default:
		out = append(out, filled("Heating in the floor", ""))
	}
	looked := "they were not looked for, or nobody wrote that they were. What is known of others:"
	if j.Hazards.Services == site.Yes {
		looked = "they were looked for before the floor was nailed; what is not listed may be there all the same. Others:"
	}
	out = append(out, FormLine{What: "Pipes, tubes and cables", Says: looked, Blanks: 2})
	return append(out, FormLine{Says: "Find them again before anything longer than a board is thick is driven into the floor."})
}

// held is how the boards are fastened, and to what.
func (h hander) held() []FormLine {
	j := h.p.Job
	var out []FormLine
	if _, u, ok := h.p.Nailing().Use(); ok {
		out = append(out, FormLine{What: "Nailed", Says: fmt.Sprintf("%s of %s, at most %s apart, through the tongue; first and last rows and some ends through the face, heads filled", plural(u.Kind), h.say.Of(u.Length), h.say.Of(u.Spacing)), Sources: []string{u.Source}})
		if u.Kind == fasten.Staple {
			out[0].What = "Stapled"
		}
	} else {
		out = append(out, filled("Nailed with", ""))
	}
	g := h.p.UnderBoards()
	switch {
	case g.Glued():
		out = append(out, FormLine{What: "Glued besides", Says: "with beads of adhesive, which makes boards hard to take up. Maker and name of it:", Blanks: 1})
	case g.Sheet != "":
		out = append(out, FormLine{What: "Under the boards", Says: g.Sheet})
	default:
		out = append(out, filled("Under the boards", ""))
	}
	if j.Trim.Panel > 0 {
		out = append(out, FormLine{What: "Panel over the subfloor", Says: heightStyle(j.Unit).Of(j.Trim.Panel)})
	}
	for _, f := range subfloor.Fates(j.Subfloor.Layers, j.Subfloor.Built) {
		if f.Out {
			continue
		}
		s := string(f.Material)
		if f.Thickness > 0 {
			s += ", " + heightStyle(j.Unit).Of(f.Thickness)
		}
		if f.Test {
			s += "; it may hold asbestos: leave it whole, and have it tested before it is touched"
		}
		out = append(out, FormLine{What: "Stays under it", Says: s})
	}
	if j.Joists.Spacing > 0 {
		s := h.say.Of(j.Joists.Spacing) + " apart"
		if j.Joists.Along[0] != "" {
			s += ", along wall " + j.Joists.Along.String()
		}
		out = append(out, FormLine{What: "Joists", Says: s})
	}
	return out
}

// meets are the openings and what stays, with the gap that has to stay free.
func (h hander) meets() []FormLine {
	out := openingWords(h.p)
	gap := h.p.Job.Limits.GapLeast.Value
	return append(out, FormLine{What: "Gap at the walls", Says: fmt.Sprintf("%s or more, under base and shoe: it is what the floor moves into. Base and shoe are nailed to the wall and never to the floor; nothing heavy is built in on the boards.", h.say.Rip(gap)), Sources: []string{cmp.Or(h.p.Job.Limits.GapLeast.Source, habit)}})
}

// care is what keeps a floor, and what spoils it.
func care(p plan.Plan) []FormLine {
	out := []FormLine{
		{What: "Clean", Says: "with a broom, a soft vacuum brush, or a cloth that is wrung out until it is no more than damp, with what the finish's maker names.", Sources: []string{habit}},
		{What: "Never", Says: "wet mopping, standing water, steam: water goes into the joints and lifts the edges. Wipe up at once what is spilt. No oil soap, wax or polish that the finish's maker does not name: a new coat may not hold on it.", Sources: []string{habit}},
		{What: "Loads", Says: "felt under the feet of furniture, wide soft wheels under chairs. Appliances and pianos are moved over panels laid out for them; nothing that rolls on hard narrow wheels.", Sources: []string{habit}},
		{What: "Grit and heels", Says: "mats at the doors that let air through, without a rubber back; small stones and worn heels dent any wood.", Sources: []string{habit}},
		{What: "Sun", Says: "changes the shade: move rugs and furniture now and then in the first year.", Sources: []string{habit}},
	}
	if p.Job.Hazards.Finish == caution.OnSite {
		out = append(out, FormLine{What: "The first weeks", Says: "socks after a day, furniture after two or three, rugs after two to four weeks; the label of the finish goes before that.", Sources: []string{habit}})
	}
	return append(out,
		FormLine{What: "When it is worn", Says: "have it coated anew before bare wood shows; sanding takes some of the board each time. Old finish and dust may hold what is not to be breathed: see the local rules.", Sources: []string{habit}},
		FormLine{What: "A leak or a flood", Says: "shut the water off, take it up, air, and have subfloor and boards read before anything is closed up or sanded: boards that stand up may lie down again once they are dry.", Sources: []string{habit}})
}

// readingsOf are lines for the readings of the last day.
func readingsOf() []FormLine {
	return []FormLine{filled("Day", ""), filled("Air: temperature, humidity", ""), filled("Boards, % (how many read)", ""), filled("Subfloor, % (how many read)", ""), filled("Meter, and set to", "")}
}
