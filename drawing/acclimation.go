package drawing

import (
	"fmt"
	"math"

	"strake/moisture"
	"strake/plan"
	"strake/sheet"
)

// The page of the acclimation log, half of A3 across.
const logW, logH = 297.0, 210.0

// Acclimation draws the log of the boards: the mean of each day, the course
// through them, what is within limits, and the day on which it gets there with its
// doubt.
func Acclimation(p plan.Plan) sheet.Sheet {
	s := sheet.Sheet{Title: p.Job.Name + ": boards coming to rest", W: logW, H: logH}
	say := func(text string, y, size float64, bold bool) float64 {
		for _, l := range sheet.Wrap(text, size, logW-2*margin-20) {
			s.Put(sheet.Text{Text: l, At: sheet.Pt{X: margin + 10, Y: y}, Size: size, Bold: bold, Ink: sheet.Black})
			y += size * 1.4
		}
		return y
	}
	y := say(p.Job.Name+": boards coming to rest", margin+8, title, true)
	c, ok := p.Acclimation()
	if !ok {
		say("Nothing was logged.", y, middling, false)
		return s
	}
	y = say("Dots: the mean of each day's readings. Line: the course through them. Grey: within limits. Upright line: the day it gets there, with the days it may be, nine times in ten.", y, small, false)
	if c.Known {
		y = say("Limits: "+c.Band+".", y, small, false)
	}
	for _, v := range p.Ready() {
		if v.Rule == moisture.RestRule {
			y = say(v.Measured+". "+v.Do, y, small, false)
		}
	}
	drawLog(&s, c, box{sheet.Pt{X: margin + 20, Y: y + 4}, sheet.Pt{X: logW - margin - 8, Y: logH - margin - 12}})
	return s
}

// drawLog draws the axes and what was logged.
func drawLog(s *sheet.Sheet, c moisture.Chart, b box) {
	first, last := c.Days[0].Day, c.Days[len(c.Days)-1].Day
	end := last + math.Max(2, (last-first)/4)
	if c.Reaches {
		end = math.Max(end, c.Within.Day+2)
		if late := c.Within.Late; !math.IsInf(late, 1) && late < last+4*(last-first) {
			end = math.Max(end, late+1)
		}
	}
	lo, hi := math.Inf(1), math.Inf(-1)
	reach := func(x float64) { lo, hi = math.Min(lo, x), math.Max(hi, x) }
	for _, p := range c.Days {
		reach(p.Content)
	}
	if c.Known {
		reach(math.Max(c.Least, lo-3))
		reach(math.Min(c.Most, hi+3))
	}
	if c.Fitted {
		reach(c.Course.At(end))
	}
	g := newChart(s, b, first-0.5, end, math.Floor(lo-0.3), math.Ceil(hi+0.3))
	if c.Known {
		g.band(c.Least, c.Most)
	}
	g.across(8, " %")
	g.down(math.Max(1, math.Round(roundStep(end-first, 12))), func(x float64) string { return moisture.Date(x)[5:] })
	g.frame()
	s.Put(sheet.Text{Text: fmt.Sprintf("month and day, from %s", moisture.Date(first)), At: sheet.Pt{X: b.b.X, Y: b.b.Y + 8.5}, Size: small, Anchor: sheet.End, Ink: sheet.Black})
	if c.Fitted {
		g.curve("course", first, end, c.Course.At, sheet.Pen{Width: 0.35, Ink: sheet.Black})
	}
	if c.Reaches && c.Within.Day <= end {
		g.when(c.Within)
	}
	for _, p := range c.Days {
		s.Put(sheet.Polygon{Rings: [][]sheet.Pt{disc(g.at(p.Day, p.Content), 0.9)}, Fill: sheet.Black})
	}
}

// when marks a day with its doubt along the foot of the chart.
func (c chart) when(w moisture.Span) {
	foot, top := c.at(w.Day, c.y0), c.at(w.Day, c.y1)
	c.s.Put(sheet.Polyline{Name: "within limits on", Points: []sheet.Pt{foot, top}, Pen: sheet.Pen{Width: 0.35, Ink: sheet.Black, Dash: []float64{2, 1}}})
	late := math.Min(w.Late, c.x1)
	a, b := c.at(math.Max(w.Early, c.x0), c.y0), c.at(late, c.y0)
	c.s.Put(sheet.Polyline{Name: "may be", Points: []sheet.Pt{a, b}, Pen: sheet.Pen{Width: 1.2, Ink: sheet.Black}})
	t := sheet.Text{Text: moisture.Date(w.Day), At: sheet.Pt{X: top.X + 1, Y: top.Y + middling}, Size: middling, Bold: true, Ink: sheet.Black}
	if t.At.X+t.Width() > c.box.b.X {
		t.At.X, t.Anchor = top.X-1, sheet.End
	}
	c.s.Put(t)
}
