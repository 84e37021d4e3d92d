package rack

import (
	"context"
	"reflect"
	"testing"

	"strake/lay"
	"strake/limits"
	"strake/row"
	"strake/stock"
	"strake/tape"
)

// nextAsk is the bench room without its outlines.
func nextAsk(seed uint64) Ask {
	a := Ask{Seed: seed, Limits: limits.Default(5*inch, 3*inch/4), Boards: stock.Boards{Face: 5 * inch, EndTongue: inch / 4, Hand: stock.RightHand, Known: stock.Tallied}}
	f := row.Field{Kind: lay.Field}
	f.Layout.Pitch = 5 * inch
	for i := range 40 {
		f.Layout.Runs = append(f.Layout.Runs, row.Run{Row: i + 1, Low: tape.Length(i) * 5 * inch, Ahead: 1,
			Left: lay.EndRange{Need: inch / 4}, Right: lay.EndRange{Reach: 276*inch + inch/4, Need: 276 * inch}})
	}
	a.Fields = []row.Field{f}
	for _, b := range benchEngine(seed, 1.03, 1.6, 2.2, 12, 84).stock.boards {
		a.Boards.Tally = append(a.Boards.Tally, stock.Class{Length: b.length(), Count: 1})
	}
	return a
}

// What is laid is held to: the next rows keep off its joints, its boards are
// not used again, and the same question has the same answer.
func TestNextGoesOnFromWhatIsLaid(t *testing.T) {
	a := nextAsk(1)
	all := Next(context.Background(), a, nil, 40)
	if len(all) != 40 {
		t.Fatalf("%d runs proposed, want 40", len(all))
	}
	var laid []Laid
	gone := map[int]bool{}
	for _, p := range all[:20] {
		l := Laid{Run: p.Run}
		for i, q := range p.Pieces {
			gone[q.Board] = true
			if i > 0 {
				l.Joints = append(l.Joints, q.Start)
			}
		}
		laid = append(laid, l)
	}
	rest := a
	rest.Boards.Tally = nil
	for i, c := range a.Boards.Tally {
		if !gone[i] {
			rest.Boards.Tally = append(rest.Boards.Tally, c)
		}
	}
	rest.Boards.Tally = rest.Boards.Tally[1:] // one split
	rest.Polishing = Polishing / 10
	got := Next(context.Background(), rest, laid, 40)
	if len(got) != 20 || got[0].Run != 20 {
		t.Fatalf("%d runs proposed from %d on, want 20 from 20 on", len(got), got[0].Run)
	}
	for _, p := range got {
		if !p.Filled {
			t.Errorf("run %d is not filled", p.Run)
		}
	}
	for _, q := range got[0].Pieces[1:] {
		if d := nearest(laid[19].Joints, q.Start); d < a.Limits.JointMin.Value {
			t.Errorf("a joint lies %v from one laid", d)
		}
	}
	if again := Next(context.Background(), rest, laid, 40); !reflect.DeepEqual(got, again) {
		t.Error("the same question has two answers")
	}
	if few := Next(context.Background(), rest, laid, 3); len(few) != 3 || few[2].Run != 22 {
		t.Errorf("three runs asked for: %v", few)
	}
}
