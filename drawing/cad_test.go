package drawing

import (
	"bytes"
	"context"
	"math"
	"strconv"
	"strings"
	"testing"

	"strake/examples"
	"strake/internal/sample"
	"strake/jobfile"
	"strake/plan"
	"strake/plane"
	"strake/setout"
	"strake/sheet/dxf"
	"strake/tape"
)

// polylines reads the polylines of a DXF file back, by layer.
func polylines(t *testing.T, data []byte) map[string][][]dxf.Pt {
	t.Helper()
	lines := strings.Split(strings.TrimSpace(string(data)), "\n")
	if len(lines)%2 != 0 {
		t.Fatal("groups are two lines each")
	}
	out := map[string][][]dxf.Pt{}
	kind, layer := "", ""
	for i := 0; i < len(lines); i += 2 {
		code, value := strings.TrimSpace(lines[i]), lines[i+1]
		switch {
		case code == "0":
			kind = value
		case code == "8":
			layer = value
			if kind == "POLYLINE" {
				out[layer] = append(out[layer], nil)
			}
		case kind == "VERTEX" && (code == "10" || code == "20"):
			v, err := strconv.ParseFloat(value, 64)
			if err != nil {
				t.Fatal(err)
			}
			all := out[layer]
			last := &all[len(all)-1]
			if code == "10" {
				*last = append(*last, dxf.Pt{X: v})
			} else {
				(*last)[len(*last)-1].Y = v
			}
		}
	}
	return out
}

func areaOf(ps []dxf.Pt) float64 {
	var sum float64
	for i, a := range ps {
		b := ps[(i+1)%len(ps)]
		sum += a.X*b.Y - b.X*a.Y
	}
	return math.Abs(sum) / 2
}

// What is read back from the file has the area of the plan's boards and floor, in
// the units that it states.
func TestRealUnits(t *testing.T) {
	for name, p := range map[string]plan.Plan{"rectangle": sample.Rectangle(), "hearth": sample.Hearth(), "rooms": sample.TwoRooms(), "parlour": shippedPlan(t, "ferry-parlour")} {
		for unit, mm := range map[tape.Unit]float64{tape.UnitInch: 25.4, tape.UnitMillimetre: 1} {
			p.Job.Unit = unit
			var a, b bytes.Buffer
			for _, w := range []*bytes.Buffer{&a, &b} {
				if err := dxf.Write(w, CAD(p)); err != nil {
					t.Fatal(err)
				}
			}
			if !bytes.Equal(a.Bytes(), b.Bytes()) {
				t.Errorf("%s: the same plan gives other bytes", name)
			}
			read := polylines(t, a.Bytes())
			if got := len(read[layerBoards]); got != len(p.Lay.Pieces) {
				t.Errorf("%s: %d boards, the plan has %d pieces", name, got, len(p.Lay.Pieces))
			}
			var sum, want float64
			for _, r := range read[layerBoards] {
				sum += areaOf(r) * mm * mm
			}
			for _, q := range p.Lay.Pieces {
				want += tape.Area(q.Outline.Area2()/2).SquareMetres() * 1e6
			}
			if math.Abs(sum-want) > 1e-6*want {
				t.Errorf("%s in %s: boards cover %.1f mm2, by the plan %.1f", name, unit, sum, want)
			}
			held(t, name, read, p, mm)
			units := map[tape.Unit]string{tape.UnitInch: "$INSUNITS\n 70\n1\n", tape.UnitMillimetre: "$INSUNITS\n 70\n4\n"}[unit]
			if !strings.Contains(a.String(), units) {
				t.Errorf("%s: its units are not stated", name)
			}
		}
	}
}

// held holds every corner of walls and boards, and every line to snap, to where it lies on
// the floor plan: nothing is mirrored or moved.
func held(t *testing.T, name string, read map[string][][]dxf.Pt, p plan.Plan, unit float64) {
	t.Helper()
	off := func(a dxf.Pt, b plane.XY) bool { return math.Hypot(a.X*unit-b.X, a.Y*unit-b.Y) > 1e-3 }
	for i, r := range p.Floor.Rooms {
		for k, at := range r.Corners {
			if off(read[layerWalls][i][k], at) {
				t.Errorf("%s: corner %s of %s is drawn at %v, it lies at %v mm", name, r.Names[k], r.Name, read[layerWalls][i][k], at)
			}
		}
	}
	n := 0
	for _, r := range p.Lay.Runs {
		d := p.Lay.Zones[r.Zone].Dir
		for _, id := range r.Pieces {
			for k, at := range p.Lay.Pieces[id].Outline {
				if off(read[layerBoards][n][k], d.FromRow(at)) {
					t.Errorf("%s: corner %d of piece %d is drawn at %v, it lies at %v mm", name, k, id, read[layerBoards][n][k], d.FromRow(at))
				}
			}
			n++
		}
	}
	lines, _ := setout.Lines(p)
	if len(read[layerLines]) != len(lines) || name == "parlour" && len(lines) == 0 {
		t.Fatalf("%s: %d lines to snap, %d are drawn", name, len(lines), len(read[layerLines]))
	}
	for i, l := range lines {
		if off(read[layerLines][i][0], l.Left.Place()) || off(read[layerLines][i][1], l.Right.Place()) {
			t.Errorf("%s: the line of row %d is drawn from %v to %v", name, l.Row, read[layerLines][i][0], read[layerLines][i][1])
		}
	}
	if len(read[layerDoors]) != len(p.Built.Doorways) {
		t.Errorf("%s: %d openings of %d", name, len(read[layerDoors]), len(p.Built.Doorways))
	}
	for i, d := range p.Built.Doorways {
		a, b := read[layerDoors][i][0], read[layerDoors][i][1]
		if w := math.Hypot(b.X-a.X, b.Y-a.Y) * unit; math.Abs(w-d.Width.Millimetres()) > 1e-3 {
			t.Errorf("%s: %s is %.2f mm wide", name, d.Name, w)
		}
	}
}

// The length of a wall stands outside of its room.
func TestSizesStandOutside(t *testing.T) {
	p := sample.Hearth()
	c := CAD(p)
	n := 0
	for _, x := range c.Texts {
		if x.Layer != layerSizes {
			continue
		}
		n++
		for _, r := range p.Floor.Rooms {
			if enclosed(plane.XY{X: x.At.X * 25.4, Y: x.At.Y * 25.4}, r.Corners) {
				t.Errorf("%q stands in %s", x.Text, r.Name)
			}
		}
	}
	if n != len(p.Floor.Rooms[0].Corners) {
		t.Errorf("%d lengths of walls", n)
	}
}

// enclosed tells by crossings of a ray.
func enclosed(p plane.XY, ring []plane.XY) bool {
	in := false
	for i, a := range ring {
		b := ring[(i+1)%len(ring)]
		if (a.Y <= p.Y) != (b.Y <= p.Y) && a.X+(b.X-a.X)*(p.Y-a.Y)/(b.Y-a.Y) > p.X {
			in = !in
		}
	}
	return in
}

// shippedPlan is an example, planned.
func shippedPlan(t *testing.T, name string) plan.Plan {
	t.Helper()
	data, err := examples.Read(name)
	if err != nil {
		t.Fatal(err)
	}
	j, _, err := jobfile.ReadJob(name, data)
	if err != nil {
		t.Fatal(err)
	}
	return plan.Make(context.Background(), j)
}
