package drawing

import (
	"fmt"
	"testing"

	"strake/internal/sample"
	"strake/plan"
	"strake/room"
	"strake/sheet"
	"strake/tape"
)

// texts are the texts on a sheet.
func texts(s sheet.Sheet) []sheet.Text {
	var out []sheet.Text
	for _, it := range s.Items {
		if t, ok := it.(sheet.Text); ok {
			out = append(out, t)
		}
	}
	return out
}

// sizes are the sample plans and the same rooms many times as large and as
// narrow boards as there are.
func sizes() map[string]plan.Plan {
	out := plans()
	for _, face := range []tape.Length{tape.Inch * 3 / 2, 2 * tape.Inch, 3 * tape.Inch, 8 * tape.Inch} {
		for _, k := range []float64{0.5, 1, 2, 4} {
			out[fmt.Sprintf("hearth times %v, boards of %v", k, face)] = sample.Sized(k, face)
		}
	}
	return out
}

// No two texts stand in each other's place, and none leaves the sheet.
func TestTextsApart(t *testing.T) {
	for name, p := range sizes() {
		s := Floor(p)
		ts := texts(s)
		if len(p.Lay.Runs) > 0 && len(ts) < 30 {
			t.Errorf("%s: only %d texts", name, len(ts))
		}
		edge := box{sheet.Pt{}, sheet.Pt{X: s.W, Y: s.H}}
		for i, a := range ts {
			x := a.Box()
			if !edge.holds(x[:]) {
				t.Errorf("%s: %q leaves the sheet at %v", name, a.Text, a.At)
			}
			for _, b := range ts[i+1:] {
				if y := b.Box(); sheet.Overlap(x[:], y[:]) {
					t.Errorf("%s: %q at %v and %q at %v overlap", name, a.Text, a.At, b.Text, b.At)
				}
			}
		}
	}
}

// The test above can fail: a text put in another's place is seen.
func TestTextsApartSees(t *testing.T) {
	a := texts(Floor(sample.Rectangle()))[3]
	b := a
	b.At.X += a.Width() / 2
	x, y := a.Box(), b.Box()
	if !sheet.Overlap(x[:], y[:]) {
		t.Error("half over each other, and apart?")
	}
}

// Every row is numbered, every wall has its length and every corner its letter.
func TestNothingNeededIsMissing(t *testing.T) {
	for name, p := range map[string]plan.Plan{"rectangle": sample.Rectangle(), "hearth": sample.Hearth(), "short": sample.ShortOfBoards(), "rooms": sample.TwoRooms(), "narrow": sample.Sized(1, 2*tape.Inch)} {
		d := newDraw(p, usual)
		have := map[string]int{}
		for _, x := range texts(Floor(p)) {
			have[x.Text]++
		}
		for _, r := range p.Lay.Runs {
			if have[fmt.Sprint(r.Row)] == 0 && have[fmt.Sprintf("%da", r.Row)] == 0 {
				t.Errorf("%s: row %d has no number", name, r.Row)
			}
		}
		for _, r := range p.Floor.Rooms {
			for i, c := range r.Names {
				a, b := r.Corners[i], r.Corners[(i+1)%len(r.Names)]
				long := d.say.Of(tape.Length(b.Sub(a).Len()*float64(tape.Millimetre) + 0.5))
				want := (room.Wall{c, r.Names[(i+1)%len(r.Names)]}).String() + "  " + long
				if have[want] == 0 {
					t.Errorf("%s: no dimension %q", name, want)
				}
				if have[c] == 0 {
					t.Errorf("%s: corner %s has no letter", name, c)
				}
			}
		}
	}
}
