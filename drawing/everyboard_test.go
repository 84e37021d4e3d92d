package drawing

import (
	"context"
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"

	"strake/internal/rooms"
	"strake/jobfile"
	"strake/plan"
	"strake/sheet"
	"strake/words"
)

// untold are the pieces of a plan whose board and length are told neither in the piece nor
// in the list of what has no room there. It goes by where the piece is drawn.
func untold(p plan.Plan, s sheet.Sheet, apart []Apart) []string {
	rings := map[string][][]sheet.Pt{}
	for _, it := range s.Items {
		if g, ok := it.(sheet.Polygon); ok && g.Name != "" {
			rings[g.Name] = g.Rings
		}
	}
	say := words.In(p.Job.Unit)
	var out []string
	for _, r := range p.Lay.Runs {
		for i, id := range r.Pieces {
			q := p.Lay.Pieces[id]
			lo, hi := q.Outline.Box()
			no, long := words.Board(q.Board), say.Of(hi.X-lo.X)
			ring := rings[fmt.Sprintf("piece-%d", id)]
			var in []string
			for _, t := range texts(s) {
				if sheet.Holds(ring, middle(t)) {
					in = append(in, t.Text)
				}
			}
			if told(in, no, long) {
				continue
			}
			listed := fmt.Sprintf("piece %d: board %s, %s", i+1, no, long)
			found := false
			for _, a := range apart {
				found = found || a.Of == "row "+words.Row(r) && a.Text == listed && boxed(ring, a.At)
			}
			if !found {
				out = append(out, fmt.Sprintf("row %s, %s", words.Row(r), listed))
			}
		}
	}
	return out
}

// boxed tells whether a place lies in the upright box round an area: the middle of a piece
// that is notched may lie outside it.
func boxed(ring [][]sheet.Pt, p sheet.Pt) bool {
	lo, hi := bounds(ring[0])
	return lo.X <= p.X && p.X <= hi.X && lo.Y <= p.Y && p.Y <= hi.Y
}

// told tells whether writing in a piece says its board and its length, in one line or two.
func told(in []string, no, long string) bool {
	hasNo, hasLong := false, false
	for _, t := range in {
		if t == no+":  "+long || strings.HasPrefix(t, no+":  "+long+", ") {
			return true
		}
		hasNo, hasLong = hasNo || t == no, hasLong || t == long
	}
	return hasNo && hasLong
}

// Every board of the row plan that is cut into tiles has its number and its length, in the
// piece or in the list; few are in the list; nothing of it is smaller than the least size.
func TestEveryBoardIsTold(t *testing.T) {
	jobs := shipped(t)
	for i := range 24 {
		jobs[fmt.Sprintf("random room %d", i)] = []byte(rooms.Job(rand.New(rand.NewPCG(uint64(i), 29))))
	}
	pieces, listed := 0, 0
	for name, data := range jobs {
		j, _, err := jobfile.ReadJob(name, data)
		if err != nil {
			t.Fatal(err)
		}
		p := plan.MakeWithin(context.Background(), j, 0)
		s, apart := LooseFloor(p)
		for _, u := range untold(p, s, apart) {
			t.Errorf("%s: %s: not told", name, u)
		}
		pieces += len(p.Lay.Pieces)
		for _, a := range apart {
			if a.Of != "" {
				listed++
			}
		}
		for _, x := range texts(s) {
			if x.Size < least {
				t.Errorf("%s: %q is %v mm", name, x.Text, x.Size)
			}
		}
	}
	if pieces < 1000 || listed*20 > pieces {
		t.Errorf("%d of %d pieces have no room for their writing", listed, pieces)
	}
	t.Logf("%d of %d pieces have no room for their writing", listed, pieces)
}

// The rule can be broken: a board without its length, and one without a word, are seen.
func TestUntoldIsSeen(t *testing.T) {
	p := plans()["hearth"]
	s, apart := LooseFloor(p)
	if got := untold(p, s, apart); len(got) > 0 || len(p.Lay.Pieces) < 5 {
		t.Fatalf("to begin with: %v of %d", got, len(p.Lay.Pieces))
	}
	whole := s.Items
	for what, left := range map[string]func(sheet.Text) bool{
		"no lengths": func(t sheet.Text) bool { return !strings.Contains(t.Text, ":  ") },
		"one word":   func(t sheet.Text) bool { return !strings.HasPrefix(t.Text, words.Board(0)+":  ") },
	} {
		s.Items = nil
		for _, it := range whole {
			if x, ok := it.(sheet.Text); !ok || left(x) {
				s.Put(it)
			}
		}
		if got := untold(p, s, apart); len(got) == 0 {
			t.Errorf("%s: not seen", what)
		}
	}
}
