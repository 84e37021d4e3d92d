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

func readingsText(t *testing.T, p plan.Plan) string {
	t.Helper()
	var b bytes.Buffer
	if err := Readings(&b, p); err != nil {
		t.Fatal(err)
	}
	return strings.Join(strings.Fields(b.String()), " ")
}

// Corner B opens by about 3 in over 144, so the 9-12-15 ft check reads long;
// its walls B-C and D-A spread by about 4 in towards C and D.
func TestReadingsText(t *testing.T) {
	text := readingsText(t, crooked())
	for _, want := range []string{
		"A-C 232-7/8\"", "1 reading to spare", "So they agree.", "not always in which. To tell that better, take next: from A to the mark on wall B-C at 72",
		`shed, corner B: opens by 3" over 144"; 108" and 144" along its walls read 181`, "which: A-B, B-C",
		`walls B-C and D-A: 4" over 144" out of parallel, nearer at B and A`,
	} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is missing in\n%s", want, text)
		}
	}
}

// An inch too much in one diagonal: with one reading to spare all are
// suspects, and are told first, the diagonal that a burnt inch explains ahead.
func TestReadingsTextWrong(t *testing.T) {
	p := crooked()
	p.Job.Readings[4].Value += tape.Inch
	p.Survey = survey.Adjust(p.Survey.Built.Sketch, p.Job.Readings, survey.Tape())
	text := readingsText(t, p)
	for _, want := range []string{"So a reading is wrong; it pulls the others", "suspect", "burnt inch", "Take next: ", "tells the suspects apart"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is missing in\n%s", want, text)
		}
	}
	rows, rep := ReadingTable(p)
	for i, k := range rep.Suspects {
		if rows[i].Name != p.Job.Readings[rep.Verdicts[k].Reading].Name() {
			t.Errorf("line %d is %s", i, rows[i].Name)
		}
	}
}

// Without diagonals nothing is checked, and a diagonal is what to read next.
func TestReadingsTextUnchecked(t *testing.T) {
	p := crooked()
	p.Job.Readings = p.Job.Readings[:4]
	p.Survey = survey.Adjust(p.Survey.Built.Sketch, p.Job.Readings, survey.Tape())
	text := readingsText(t, p)
	for _, want := range []string{"A-B 180\"", "unchecked", "nothing unchecked", "rests on square corners in place of 1 reading", "Take next: "} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is missing in\n%s", want, text)
		}
	}
}

// The largest 3-4-5 triangle that fits: by feet or 20 cm, in a closet by less.
func TestLegs(t *testing.T) {
	const ft, cm = tape.Foot, tape.Centimetre
	for _, tt := range []struct {
		imperial          bool
		short, long, a, b tape.Length
	}{
		{true, 10 * ft, 16 * ft, 9 * ft, 12 * ft}, {true, 3 * ft, 4 * ft, 3 * ft, 4 * ft}, {true, 2 * ft, 5 * ft, 3 * ft / 2, 2 * ft},
		{true, ft, 2 * ft, 3 * ft / 4, ft}, {true, ft / 2, 9 * ft, 0, 0},
		{false, 130 * cm, 400 * cm, 120 * cm, 160 * cm}, {false, 60 * cm, 80 * cm, 60 * cm, 80 * cm}, {false, 40 * cm, 80 * cm, 30 * cm, 40 * cm},
	} {
		if a, b := legs(tt.imperial, tt.short, tt.long); a != tt.a || b != tt.b {
			t.Errorf("%v by %v: %v and %v", tt.short, tt.long, a, b)
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
