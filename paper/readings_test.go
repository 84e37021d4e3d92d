package paper

import (
	"bytes"
	"encoding/csv"
	"math"
	"strconv"
	"strings"
	"testing"

	"strake/floor"
	"strake/plan"
	"strake/room"
	"strake/survey"
	"strake/tape"
)

// crooked is a fitted room of ours, 180 by 144 in with corner C out by 3 in:
// true corners A(0,0) B(180,0) C(183,144) D(-1,144.5).
func crooked() plan.Plan {
	var p plan.Plan
	p.Job.Name, p.Job.Unit = "Shed", tape.UnitInch
	s := room.Sketch{Rooms: []room.Room{{Name: "shed", Corners: []string{"A", "B", "C", "D"}}}}
	for _, r := range []struct {
		a, b string
		in   float64
	}{{"A", "B", 180}, {"B", "C", 144}, {"C", "D", 184}, {"D", "A", 144.5}, {"A", "C", 232.875}, {"B", "D", 231.625}} {
		p.Job.Readings = append(p.Job.Readings, survey.Reading{From: r.a, To: r.b, Value: tape.Length(r.in * float64(tape.Inch)), Step: tape.Sixteenth})
	}
	p.Survey = survey.Adjust(s, p.Job.Readings, survey.Tape())
	p.Built = p.Survey.Built
	for _, c := range []string{"A", "B", "C", "D"} {
		if len(p.Floor.Rooms) == 0 {
			p.Floor.Rooms = append(p.Floor.Rooms, floor.RoomOutline{Name: "shed"})
		}
		p.Floor.Rooms[0].Names = append(p.Floor.Rooms[0].Names, c)
		p.Floor.Rooms[0].Corners = append(p.Floor.Rooms[0].Corners, p.Built.At[c])
	}
	return p
}

func TestReadingsText(t *testing.T) {
	var b bytes.Buffer
	if err := Readings(&b, crooked()); err != nil {
		t.Fatal(err)
	}
	text := b.String()
	for _, want := range []string{"A-C", `232-7/8"`, "to spare", "They agree", "corner B", "along its walls read"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is missing in\n%s", want, text)
		}
	}
	// Corner B opens by about 3 in over 144: the 9-12-15 ft check reads long.
	for _, line := range strings.Split(text, "\n") {
		if strings.Contains(line, "corner B") && (!strings.Contains(line, "opens by 3") || !strings.Contains(line, `108" and 144"`) || strings.Contains(line, `read 180" across`)) {
			t.Errorf("corner B: %s", line)
		}
	}
}

// Written plus the misfit is what the fitted room has, to the last figure.
func TestReadingsCSVAddsUp(t *testing.T) {
	var b bytes.Buffer
	if err := ReadingsCSV(&b, crooked()); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(&b).ReadAll()
	if err != nil || len(rows) != 7 {
		t.Fatalf("%d rows, %v", len(rows), err)
	}
	for _, r := range rows[1:] {
		f := func(i int) float64 { v, _ := strconv.ParseFloat(r[i], 64); return v }
		if math.Abs(f(1)+f(3)-f(2)) > 0.002 {
			t.Errorf("%s: %s + %s is not %s", r[0], r[1], r[3], r[2])
		}
	}
}
