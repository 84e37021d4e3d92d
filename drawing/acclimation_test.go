package drawing

import (
	"math"
	"testing"

	"strake/examples"
	"strake/jobfile"
	"strake/moisture"
	"strake/plan"
	"strake/sheet"
)

const logged = `climate:
  winter: {temperature: 68 F, humidity: 30}
  summer: {temperature: 78 F, humidity: 55}
moisture:
  log: {2026-03-06: 11.3, 2026-03-01: 12.8, 2026-03-03: 12.0, 2026-03-09: 10.7, 2026-03-12: 10.2}
`

// Each day is a dot where its figures put it, the course meets the edge of the
// limits where the upright line stands, and all of it lies within the page.
func TestAcclimationSheet(t *testing.T) {
	data, err := examples.Read("ferry-parlour")
	if err != nil {
		t.Fatal(err)
	}
	j, _, err := jobfile.ReadJob("ferry-parlour", append(data, logged...))
	if err != nil {
		t.Fatal(err)
	}
	p := plan.Rows(j)
	c, ok := p.Acclimation()
	if !ok || !c.Reaches {
		t.Fatalf("%+v", c)
	}
	var dots, course, upright, band []sheet.Pt
	var words []sheet.Text
	for _, it := range Acclimation(p).Items {
		var ps []sheet.Pt
		switch v := it.(type) {
		case sheet.Polygon:
			ps = v.Rings[0]
			if v.Fill == sheet.Black {
				dots = append(dots, centre(ps))
			} else {
				band = ps
			}
		case sheet.Polyline:
			ps = v.Points
			switch v.Name {
			case "course":
				course = ps
			case "within limits on":
				upright = ps
			}
		case sheet.Text:
			words = append(words, v)
		}
		for _, q := range ps {
			if q.X < 0 || q.Y < 0 || q.X > logW || q.Y > logH {
				t.Errorf("%v lies off the page", q)
			}
		}
	}
	if len(dots) != 5 || len(band) != 4 || len(upright) != 2 {
		t.Fatalf("%d dots, %d corners of the band, %d ends of the upright line", len(dots), len(band), len(upright))
	}
	perDay := (dots[4].X - dots[0].X) / (c.Days[4].Day - c.Days[0].Day)
	perPoint := (dots[4].Y - dots[0].Y) / (c.Days[4].Content - c.Days[0].Content)
	for i, d := range dots {
		x, y := dots[0].X+perDay*(c.Days[i].Day-c.Days[0].Day), dots[0].Y+perPoint*(c.Days[i].Content-c.Days[0].Content)
		if math.Hypot(d.X-x, d.Y-y) > 1e-6 {
			t.Errorf("%s lies at %v, not at %g, %g", moisture.Date(c.Days[i].Day), d, x, y)
		}
	}
	edge := math.Min(band[2].Y, band[0].Y)
	for i := 1; i < len(course); i++ {
		if a, b := course[i-1], course[i]; a.X <= upright[0].X && upright[0].X <= b.X {
			y := a.Y + (b.Y-a.Y)*(upright[0].X-a.X)/(b.X-a.X)
			if math.Abs(y-edge) > 0.2 {
				t.Errorf("on that day the course is %.2f mm from the limit", y-edge)
			}
		}
	}
	for i, a := range words {
		for _, b := range words[:i] {
			if p, q := a.Box(), b.Box(); sheet.Overlap(p[:], q[:]) {
				t.Errorf("%q lies on %q", a.Text, b.Text)
			}
		}
	}
}

func centre(ps []sheet.Pt) sheet.Pt {
	var c sheet.Pt
	for _, p := range ps {
		c = c.Add(p)
	}
	return c.Times(1 / float64(len(ps)))
}
