package moisture

import (
	"fmt"
	"math"
	"sort"
	"time"

	"strake/ready"
)

// Date says a day, counted from 1 January 1970, as a calendar does. A day with
// a part ends in the next one: it is the first whole day.
func Date(day float64) string {
	return time.Unix(int64(math.Ceil(day))*86400, 0).UTC().Format("2006-01-02")
}

// band is the range of contents that boards are within limits in, and whose
// they are: near the aim, near the subfloor, and not over the most.
type band struct {
	least, most float64
	words       string
}

func (j Job) band(sub Looked, f Floor) (band, bool) {
	most, _ := Guides.Rule(j.Limits, BoardsMost)
	b := band{0, most.Is, fmt.Sprintf("at most %g %%, %s", most.Is, most.By)}
	source := false
	if s, ok := j.Climate.Season(); ok {
		r, _ := Guides.Rule(j.Limits, AimWithin)
		b.least, b.most, source = max(b.least, s.Aim-r.Is), min(b.most, s.Aim+r.Is), true
		b.words += fmt.Sprintf("; within %g points of the aim %.1f %%, %s", r.Is, s.Aim, r.By)
	}
	if len(sub.Contents) > 0 {
		r, _ := DifferenceOf(j.Limits, f.widest())
		b.least, b.most, source = max(b.least, sub.Mean-r.Is), min(b.most, sub.Mean+r.Is), true
		b.words += fmt.Sprintf("; within %g points of the subfloor's %.1f %%, %s", r.Is, sub.Mean, r.By)
	}
	return b, source
}

func (b band) holds(x float64) bool { return x >= b.least && x <= b.most }

// near is the edge of the band that a content outside of it comes to first.
func (b band) near(x float64) float64 {
	if x > b.most {
		return b.most
	}
	return b.least
}

// days are the means of the log's days, by the day, readings put right.
func (j Job) days() []Point {
	var out []Point
	for _, e := range j.Log {
		l := j.Meter.Look(Sample{Reads: e.Reads, Table: j.Boards.Table, Wood: j.Boards.Wood})
		if n := len(l.Contents); n > 0 {
			out = append(out, Point{Day: float64(e.Day), Content: l.Mean, Count: n})
		}
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].Day < out[j].Day })
	return out
}

// RestRule is the name of the rule that the log is held to.
const RestRule = "boards coming to rest"

// still is the change between a log's days, in points, below which boards have
// come to rest. Common practice, no source.
const still = 0.3

// log tells when the boards will be within limits.
func (j Job) log(sub Looked, f Floor) []ready.Verdict {
	ps := j.days()
	if len(ps) == 0 {
		return nil
	}
	first, last := ps[0], ps[0]
	least, most := ps[0].Content, ps[0].Content
	for _, p := range ps {
		if p.Day < first.Day {
			first = p
		}
		if p.Day >= last.Day {
			last = p
		}
		least, most = min(least, p.Content), max(most, p.Content)
	}
	v := ready.Verdict{Rule: RestRule, Where: "log, " + Date(first.Day) + " to " + Date(last.Day), Source: "least squares on the log; limits as said with the readings"}
	v.Measured = fmt.Sprintf("%.1f %% at first, %.1f %% at last", first.Content, last.Content)
	b, known := j.band(sub, f)
	v.Limit = b.words
	switch {
	case !known:
		v.Say, v.Do = ready.Wait, "Write winter and summer air under climate, or readings of the subfloor: without them there is no content to wait for."
		return []ready.Verdict{v}
	case b.least > b.most:
		v.Say, v.Holds, v.Do = ready.Fix, true, "The limits leave nothing between them: the subfloor is too far from what the boards should have. Dry or condition the building first."
		return []ready.Verdict{v}
	}
	c, err := Fit(ps)
	switch {
	case b.holds(last.Content):
		v.Say = ready.Go
		if err == nil && !b.holds(c.Ends) && c.Noise < still && most-least > still {
			v.Say, v.Do = ready.Look, fmt.Sprintf("Within limits now, but the boards head for %.1f %%: look at the air.", c.Ends)
		}
	case err != nil:
		v.Say, v.Do = ready.Wait, fmt.Sprintf("Readings of %d days tell no date; take them on at least %d, the same boards each time.", len(ps), LeastDays)
	case most-least < still:
		v.Say, v.Do = ready.Fix, "The boards have come to rest outside the limits: this air does not bring them there. Condition the room."+j.toAim()
	default:
		v.Say, v.Do = j.date(c, b, last)
	}
	return []ready.Verdict{v}
}

// date says on which day a course comes within limits, and what to do till then.
func (j Job) date(c Course, b band, last Point) (ready.Say, string) {
	s, ok := c.Reaches(b.near(last.Content))
	if !ok {
		return ready.Fix, fmt.Sprintf("The boards head for %.1f %%, which is outside the limits: waiting does not help. Condition the room.%s", c.Ends, j.toAim())
	}
	say := fmt.Sprintf("Wait until about %s", Date(s.Day))
	switch {
	case math.IsInf(s.Late, 1):
		say += fmt.Sprintf("; not before %s by these readings, and they allow no latest day. Read again, the same boards, and it will be surer.", Date(max(s.Early, last.Day)))
	default:
		say += fmt.Sprintf(" (nine times in ten between %s and %s); then read again before anything is laid.", Date(max(s.Early, last.Day)), Date(s.Late))
	}
	return ready.Wait, say + fmt.Sprintf(" They head for %.1f %%, two thirds of the way in %.1f days.", c.Ends, c.Rate)
}

// toAim is the air to condition the room to, where the aim is known.
func (j Job) toAim() string {
	s, ok := j.Climate.Season()
	if _, now := j.Climate.Now.content(); !ok || !now {
		return ""
	}
	return j.airForAim(s)
}
