package drawing

import (
	"bytes"
	"math"
	"strconv"
	"strings"
	"testing"

	"strake/internal/sample"
	"strake/plan"
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
	for name, p := range map[string]plan.Plan{"rectangle": sample.Rectangle(), "hearth": sample.Hearth(), "rooms": sample.TwoRooms()} {
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
			units := map[tape.Unit]string{tape.UnitInch: "$INSUNITS\n 70\n1\n", tape.UnitMillimetre: "$INSUNITS\n 70\n4\n"}[unit]
			if !strings.Contains(a.String(), units) {
				t.Errorf("%s: its units are not stated", name)
			}
		}
	}
}
