package takeoff_test

import (
	"math"
	"strings"
	"testing"

	"strake/jobfile"
	"strake/plan"
	"strake/schedule"
	"strake/schedule/takeoff"
)

// bigRoom is a made-up room of 400 sq ft under carpet, laid by one person for the
// first time.
const bigRoom = `strake: 1
name: a room of 400 sq ft
unit: ft
rooms: {living: {corners: [A, B, C, D]}}
readings: {A-B: 20, B-C: 20, C-D: 20, D-A: 20, A-C: 28' 3-7/16", B-D: 28' 3-7/16"}
boards: {species: red oak, face: 5 in, thickness: 3/4 in, side_tongue: 1/4 in, end_tongue: 1/4 in, lengths: unknown, carton: {area: 20 sq ft}}
base: 1/2 in
shoe: 3/4 in
doorways:
  hall: {wall: A-B, from: A, at: 3, width: 32 in, thickness: 5 in, undercut: yes, beyond: transition, ends: 2 in}
  study: {wall: C-D, from: C, at: 3, width: 32 in, thickness: 5 in, undercut: yes, beyond: transition, ends: 2 in}
joists: {along: B-C, spacing: 16 in}
subfloor:
  on: wood
  built: 1994
  layers: [{what: carpet, thickness: 1/2 in}, {what: foam, thickness: 3/8 in}, {what: plywood, thickness: 3/4 in}]
site: {level: above, subfloor: wood, sheet: {kind: felt, perm: 5}}
heights:
  openings:
    hall: {covering: tile, height: 3/4 in, leaf: {of: hollow-core, clear: 1 in}, jambs: {of: wood}}
    study: {covering: carpet, height: 1/2 in, leaf: {of: hollow-core, clear: 1 in}, jambs: {of: wood}}
schedule: {start: 2027-03-01}
`

func work(t *testing.T, text string) (schedule.Work, schedule.Job) {
	t.Helper()
	j, _, err := jobfile.ReadJob("job.yaml", []byte(text))
	if err != nil {
		t.Fatal(err)
	}
	return takeoff.Of(plan.Rows(j)), j.Schedule
}

// The quantities of a room are those of its readings.
func TestQuantities(t *testing.T) {
	w, _ := work(t, bigRoom)
	if math.Abs(w.SqFt-400) > 8 {
		t.Errorf("%.1f sq ft, 20 ft by 20 ft less the gaps", w.SqFt)
	}
	// two doors of 32 in, casings out to 2-1/2 in
	if want := 80 - (64+4*2.5)/12; math.Abs(w.Walls-want) > 0.3 {
		t.Errorf("%.2f ft of wall, want %.2f", w.Walls, want)
	}
	if len(w.Jambs) != 2 || len(w.Openings) != 2 || len(w.Doors) != 2 || !w.Sheet || w.Panel || w.ReadUnder != 10 || w.ReadBoards != 20 {
		t.Errorf("%+v", w)
	}
	if len(w.Layers) != 2 || w.Layers[0].Rate != "carpet_out" || w.Layers[1].Rate != "" || w.Cartons != 22 {
		t.Errorf("layers %+v, %d cartons", w.Layers, w.Cartons)
	}
	zones := [3]int{}
	for i, r := range w.Rows {
		z := schedule.FirstRows
		for k, a := range r.SqFt {
			if a > r.SqFt[z] {
				z = schedule.Zone(k)
			}
		}
		zones[z]++
		if first := i < 8; z == schedule.FirstRows && !first || z == schedule.LastRows && first {
			t.Errorf("row %s, place %d, is %v", r.Name, i, z)
		}
		if len(r.Rooms) != 1 || r.Rooms[0] != "living" {
			t.Errorf("row %s lies in %v", r.Name, r.Rooms)
		}
	}
	if n := len(w.Rows); n < 46 || n > 52 || zones[0] < 1 || zones[0] > 5 || zones[2] < 1 || zones[2] > 6 {
		t.Errorf("%d rows: %d first, %d field, %d last", n, zones[0], zones[1], zones[2])
	}
}

// Common practice, no source: three to five days in all for a first time alone, one
// to strip and prepare and three to lay; some 90 sq ft a person-day.
func TestFourHundredSquareFeet(t *testing.T) {
	w, j := work(t, bigRoom)
	c := schedule.Make(w, j)
	days := c.Hours() / schedule.UsualHours
	t.Logf("%.2f h: %.2f days of %d h, %.0f sq ft a person-day", c.Hours(), days, schedule.UsualHours, w.SqFt/days)
	if days < 3 || days > 5 {
		t.Errorf("%.2f days, three to five", days)
	}
}

// A larger room never takes less time, by its real rows.
func TestLargerRoomsTakeLonger(t *testing.T) {
	last := 0.0
	for _, side := range []string{"12", "13", "14", "15", "16", "17", "18"} {
		w, j := work(t, "strake: 1\nunit: ft\nrooms: {den: {corners: [A, B, C, D]}}\nreadings: {A-B: "+side+", B-C: "+side+", C-D: "+side+", D-A: "+side+"}\n"+
			"boards: {species: red oak, face: 5 in, thickness: 3/4 in, lengths: unknown}\nschedule: {start: 2027-03-01}\n")
		if h := schedule.Make(w, j).Hours(); h < last {
			t.Errorf("%s ft a side: %g h, less than %g h of a smaller room", side, h, last)
		} else {
			last = h
		}
	}
}

const dry = `climate:
  winter: {temperature: 68 F, humidity: 30}
  summer: {temperature: 78 F, humidity: 55}
moisture:
  subfloor: {setting: plywood, readings: [8.8, 9.1, 9, 9.2, 8.9, 9.0, 9.1, 8.8, 9.0, 9.1]}
  boards: {setting: red oak, readings: [8, 8.1, 7.9, 8, 8.2, 8, 8.1, 7.9, 8, 8.2, 8, 8.1, 7.9, 8, 8.2, 8, 8.1, 7.9, 8, 8.2]}
`

// What strake ready holds for, the schedule waits for.
func TestHolds(t *testing.T) {
	start, _ := schedule.ParseDay("2027-03-01")
	log := "  log: {2027-03-01: 11.70, 2027-03-02: 11.35, 2027-03-03: 11.10, 2027-03-04: 10.85, 2027-03-05: 10.70, 2027-03-06: 10.50, 2027-03-07: 10.40, 2027-03-08: 10.30}\n"
	for name, c := range map[string]struct {
		keys string
		kind schedule.HoldKind
	}{
		"nothing read":        {"", schedule.Unread},
		"all dry":             {dry, schedule.Free},
		"wet subfloor":        {strings.NewReplacer("8.8, 9.1, 9, 9.2", "16, 17, 16, 17").Replace(dry), schedule.Open},
		"wet boards":          {strings.Replace(dry, "[8, 8.1, 7.9, 8,", "[18, 18.1, 17.9, 18, 18, 18, 18, 18, 18,", 1), schedule.Open},
		"too few readings":    {strings.Replace(dry, ", 8.8, 9.0, 9.1]", "]", 1), schedule.Unread},
		"a log tells the day": {dry + log, schedule.Until},
		"boards head beyond":  {dry + "  log: {2027-03-01: 13, 2027-03-02: 12.6, 2027-03-03: 12.4, 2027-03-04: 12.28, 2027-03-05: 12.2, 2027-03-06: 12.15}\n", schedule.Open},
	} {
		t.Run(name, func(t *testing.T) {
			w, j := work(t, bigRoom+c.keys)
			if w.Hold.Kind != c.kind {
				t.Fatalf("hold %v, want %v: %+v", w.Hold.Kind, c.kind, w.Hold.Why)
			}
			if (c.kind == schedule.Free) != (len(w.Hold.Why) == 0) {
				t.Errorf("why: %+v", w.Hold.Why)
			}
			if c.kind == schedule.Until && (w.Hold.Day <= start+7 || w.Hold.Early > w.Hold.Day || w.Hold.Late > 0 && w.Hold.Late < w.Hold.Day) {
				t.Errorf("%s, from %s to %s", w.Hold.Day, w.Hold.Early, w.Hold.Late)
			}
			cal := schedule.Make(w, j)
			for _, d := range cal.Days {
				for _, s := range d.Slots {
					if st := cal.Steps[s.Step]; st.Lays() && (c.kind == schedule.Open && d.Day != 0 || d.Day != 0 && d.Day < w.Hold.Day) {
						t.Errorf("%s on %s", st.What, d.When())
					}
				}
			}
		})
	}
}

// A layer that may hold asbestos is tested first, one that is glued takes longer
// than one that lies loose, and squeaks take screws.
func TestUnder(t *testing.T) {
	old := strings.NewReplacer("1994", "1962", "joists: {along: B-C, spacing: 16 in}\n", "", "{what: foam, thickness: 3/8 in}", "{what: sheet vinyl, thickness: 1/8 in}, {what: particleboard, thickness: 5/8 in}",
		"layers:", "squeaks: [{place: by the door, long: 32 in, wide: 24 in}]\n  layers:").Replace(bigRoom)
	w, j := work(t, old)
	c := schedule.Make(w, j)
	w2, _ := work(t, bigRoom)
	if !w.Paint || w2.Paint || w2.AgeUnknown {
		t.Errorf("paint of 1962 tested: %v, of 1994: %v", w.Paint, w2.Paint)
	}
	if len(w.Layers) != 3 || !w.Layers[1].Test || w.Screws == 0 || c.Hours() < schedule.Make(w2, j).Hours()+15 {
		t.Errorf("%+v, %d screws, %g h", w.Layers, w.Screws, c.Hours())
	}
}
