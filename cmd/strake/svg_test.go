package main

import (
	"bytes"
	"encoding/xml"
	"fmt"
	"io"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// drawnPath is a path of an SVG file: its name and its corners.
type drawnPath struct {
	id string
	at [][2]float64
}

// readSVG reads a drawing as any reader of XML would, and holds that nothing in it points
// out of the file.
func readSVG(t *testing.T, name string, data []byte) []drawnPath {
	t.Helper()
	var out []drawnPath
	d := xml.NewDecoder(bytes.NewReader(data))
	for {
		tok, err := d.Token()
		if err == io.EOF {
			return out
		}
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		switch x := tok.(type) {
		case xml.Directive:
			t.Errorf("%s: a directive: %s", name, x)
		case xml.StartElement:
			p := drawnPath{}
			for _, a := range x.Attr {
				if pointsOut(x.Name.Local, a) {
					t.Errorf("%s: %s=%q points out of the file", name, a.Name.Local, a.Value)
				}
				switch a.Name.Local {
				case "id":
					p.id = a.Value
				case "d":
					p.at = corners(t, a.Value)
				}
			}
			if x.Name.Local == "path" {
				out = append(out, p)
			}
		}
	}
}

// pointsOut tells whether an attribute refers to something that is not in the file.
func pointsOut(element string, a xml.Attr) bool {
	if a.Name.Local == "xmlns" || a.Name.Space == "xmlns" {
		return false
	}
	v := strings.ToLower(a.Value)
	switch {
	case element == "image", element == "script", a.Name.Local == "src":
		return true
	case a.Name.Local == "href":
		return !strings.HasPrefix(v, "#")
	}
	return strings.Contains(v, "url(") && !strings.Contains(v, "url(#") || strings.Contains(v, "://") || strings.HasPrefix(v, "data:")
}

var pathStep = regexp.MustCompile(`([MLHVZ])([-0-9. ]*)`)

func corners(t *testing.T, d string) [][2]float64 {
	t.Helper()
	var out [][2]float64
	var at [2]float64
	for _, m := range pathStep.FindAllStringSubmatch(d, -1) {
		var v []float64
		for _, f := range strings.Fields(m[2]) {
			x, err := strconv.ParseFloat(f, 64)
			if err != nil {
				t.Fatal(err)
			}
			v = append(v, x)
		}
		switch m[1] {
		case "Z":
			continue
		case "H":
			at[0] = v[0]
		case "V":
			at[1] = v[0]
		default:
			at = [2]float64{v[0], v[1]}
		}
		out = append(out, at)
	}
	return out
}

var scaleSaid = regexp.MustCompile(`1:([0-9.]+)`)

// The drawings of every shipped job are well-formed and stand alone; every board on the
// plan has its corners where plan.json has them, at the scale that is written beside them.
func TestSVGOfShippedJobs(t *testing.T) {
	for _, p := range shipped(t) {
		for name, data := range p.files {
			if strings.HasSuffix(name, ".svg") {
				readSVG(t, p.name+"/"+name, data)
			}
		}
		for _, f := range offPlan(t, p, readSVG(t, p.name, p.files["plan.svg"])) {
			t.Error(f)
		}
	}
}

// offPlan holds the boards drawn to those of plan.json.
func offPlan(t *testing.T, p shippedPlan, paths []drawnPath) []string {
	t.Helper()
	drawn := map[string][][2]float64{}
	for _, x := range paths {
		drawn[x.id] = x.at
	}
	said := scaleSaid.FindSubmatch(p.files["plan.svg"])
	if said == nil {
		return []string{p.name + ": the plan says no scale"}
	}
	one, _ := strconv.ParseFloat(string(said[1]), 64)
	zone := map[int]int{} // of each run, its zone's place
	for _, r := range p.lay.Runs {
		for i, z := range p.lay.Zones {
			if z.ID == r.Zone {
				zone[r.ID] = i
			}
		}
	}
	var out []string
	var from, on [2]float64
	for n, q := range p.lay.Pieces {
		ring := drawn[fmt.Sprintf("piece-%d", q.ID)]
		if len(ring) != len(q.Outline)/2 {
			return append(out, fmt.Sprintf("%s: piece %d has %d corners of %d", p.name, q.ID, len(ring), len(q.Outline)/2))
		}
		for i := range ring {
			at := p.inMain(zone[q.Run], q.Outline[2*i], q.Outline[2*i+1])
			if n == 0 && i == 0 {
				from, on = at, ring[0]
			}
			x, y := on[0]+(at[0]-from[0])/one, on[1]-(at[1]-from[1])/one
			if math.Hypot(ring[i][0]-x, ring[i][1]-y) > 0.003 {
				out = append(out, fmt.Sprintf("%s: corner %d of piece %d is drawn at %.3f, %.3f and belongs at %.3f, %.3f", p.name, i, q.ID, ring[i][0], ring[i][1], x, y))
			}
		}
	}
	return out
}

// inMain is a place of a zone's frame in the frame of the first, mm.
func (p shippedPlan) inMain(zone int, x, y int64) [2]float64 {
	mmX, mmY := float64(x)*125e-6, float64(y)*125e-6
	d, m := p.lay.Zones[zone].Dir, p.lay.Zones[0].Dir
	fx, fy := d[0]*mmX-d[1]*mmY, d[1]*mmX+d[0]*mmY
	return [2]float64{m[0]*fx + m[1]*fy, m[0]*fy - m[1]*fx}
}

// The check can fail: a drawing turned over, one moved in part, one that points out.
func TestSVGFaultsAreSeen(t *testing.T) {
	p := shipped(t)[0]
	paths := readSVG(t, p.name, p.files["plan.svg"])
	for i := range paths {
		if paths[i].id == "piece-3" {
			paths[i].at[0][0] += 0.1
		}
	}
	if len(offPlan(t, p, paths)) != 1 {
		t.Error("a corner moved by 0.1 mm is not seen")
	}
	for i := range paths {
		for k := range paths[i].at {
			paths[i].at[k][0] *= -1
		}
	}
	if len(offPlan(t, p, paths)) < 100 {
		t.Error("a plan turned over is not seen")
	}
	for _, a := range []xml.Attr{{Name: xml.Name{Local: "href"}, Value: "https://example.org/a.svg"}, {Name: xml.Name{Local: "fill"}, Value: "url(other.svg#a)"}} {
		if !pointsOut("use", a) {
			t.Errorf("%s=%q passes", a.Name.Local, a.Value)
		}
	}
}
