package jobfile_test

import (
	"bytes"
	"math"
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"strake/finding"
	"strake/jobfile"
	"strake/lay"
	"strake/plane"
	"strake/stock"
	"strake/tape"
)

// ticks draws a length; small ones are drawn more often.
func ticks(t *rapid.T) tape.Length {
	return tape.Length(rapid.Int64Range(-int64(tape.Longest)/2, int64(tape.Longest)/2).Draw(t, "ticks"))
}

// some draws a list of up to n, which may also be absent or empty.
func some[T any](t *rapid.T, n int, one func() T) []T {
	switch rapid.IntRange(0, 4).Draw(t, "list") {
	case 0:
		return nil
	case 1:
		return []T{}
	}
	out := make([]T, rapid.IntRange(1, n).Draw(t, "n"))
	for i := range out {
		out[i] = one()
	}
	return out
}

func ring(t *rapid.T) plane.Ring {
	if rapid.IntRange(0, 5).Draw(t, "no ring") == 0 {
		return nil
	}
	out := make(plane.Ring, rapid.IntRange(3, 6).Draw(t, "corners"))
	for i := range out {
		out[i] = plane.P(ticks(t), ticks(t))
	}
	return out
}

func oneOf[T any](t *rapid.T, of ...T) T { return rapid.SampledFrom(of).Draw(t, "word") }

// anyLay draws a lay whose numbers point at something; it is no floor.
func anyLay(t *rapid.T) lay.Lay {
	text := rapid.StringMatching(`[ -~äé<>&"\\]{0,12}`)
	word := func() string { return text.Draw(t, "text") }
	yes := func() bool { return rapid.Bool().Draw(t, "yes") }
	zones, runs := rapid.IntRange(1, 3).Draw(t, "zones"), rapid.IntRange(1, 4).Draw(t, "runs")
	pieces, boards := rapid.IntRange(1, 6).Draw(t, "pieces"), rapid.IntRange(1, 4).Draw(t, "boards")
	below := func(n int) int { return rapid.IntRange(0, n-1).Draw(t, "number") }
	piece := func() int { return below(pieces) }
	profile := func() lay.Profile {
		return oneOf(t, lay.Groove, lay.Tongue, lay.TongueOff, lay.Cut, lay.Ripped, lay.Plain, lay.Spline)
	}
	end := func() lay.EndRange {
		return lay.EndRange{Edge: word(), Reach: ticks(t), Need: ticks(t), Mitred: yes(), InPlace: yes()}
	}

	l := lay.Lay{
		Example: yes(), Known: oneOf(t, stock.Tallied, stock.OneSize, stock.MixOnly), Seed: rapid.Uint64().Draw(t, "seed"), Kerf: ticks(t),
		Spare: some(t, 3, func() stock.Class { return stock.Class{Length: ticks(t), Count: below(99)} }),
		Relaxed: some(t, 3, func() lay.Relaxation {
			return lay.Relaxation{Rule: word(), Run: below(runs), From: ticks(t), To: ticks(t), Why: word()}
		}),
		Exempt: some(t, 3, func() lay.Exemption {
			return lay.Exemption{Rule: word(), Run: below(runs+1) - 1, Edge: word(), Why: word()}
		}),
		Findings: some(t, 3, func() finding.Finding {
			return finding.Finding{Level: oneOf(t, finding.Note, finding.Warn, finding.Stop), Rule: word(), Where: word(), Measured: word(), Limit: word(), Do: word(), Source: word(), Pieces: some(t, 3, piece)}
		}),
	}
	for i := range zones {
		turn := rapid.Float64Range(0, 2*math.Pi).Draw(t, "angle")
		l.Zones = append(l.Zones, lay.Zone{
			ID: i, Kind: oneOf(t, lay.Field, lay.Header, lay.Frame), Dir: plane.Dir{X: math.Cos(turn), Y: math.Sin(turn)},
			Width: 1 + ticks(t).Abs(), Offset: ticks(t), Ahead: oneOf(t, 1, -1), Hand: oneOf(t, stock.LeftHand, stock.RightHand),
			Outline: plane.Region(some(t, 2, func() plane.Ring { return ring(t) })), Butt: ticks(t),
		})
	}
	order := rapid.Permutation(numbers(runs)).Draw(t, "order") // runs stand in the order of laying
	for i := range runs {
		l.Runs = append(l.Runs, lay.Run{
			ID: order[i], Zone: below(zones), Row: i + 1, Part: below(3), Low: ticks(t), High: ticks(t), Outline: ring(t),
			Pieces: some(t, 4, piece), Order: i + 1, Nailing: some(t, 3, func() lay.Stretch {
				return lay.Stretch{Along: plane.Span{From: ticks(t), To: ticks(t)}, By: oneOf(t, lay.Nailer, lay.HandNail, lay.FaceNail)}
			}), LeftEnd: end(), RightEnd: end(), Unfilled: yes(),
		})
	}
	for i := range pieces {
		l.Pieces = append(l.Pieces, lay.Piece{
			ID: i, Run: below(runs), Board: below(boards), Outline: ring(t), InBoard: ring(t), Turned: yes(),
			Left: profile(), Right: profile(), Behind: profile(), Ahead: profile(),
			Off: some(t, 2, func() plane.Span { return plane.Span{From: ticks(t), To: ticks(t)} }), How: oneOf(t, lay.Slid, lay.Dropped, lay.Angled),
		})
	}
	for i := range boards {
		l.Boards = append(l.Boards, lay.Board{ID: i, Length: ticks(t), Width: ticks(t), Parts: some(t, 4, func() lay.Part {
			if yes() {
				return lay.Part{Kind: lay.IsPiece, Piece: piece(), Outline: ring(t)}
			}
			return lay.Part{Kind: oneOf(t, lay.IsOffcut, lay.IsStrip, lay.IsScrap, lay.IsKerf), Piece: -1, Outline: ring(t)}
		})})
	}
	return l
}

func numbers(n int) []int {
	out := make([]int, n)
	for i := range out {
		out[i] = i
	}
	return out
}

// A lay that is written and read back is the same to the last bit, and the
// same lay gives the same bytes.
func TestLayRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want := anyLay(t)
		var a, b bytes.Buffer
		if err := jobfile.WriteLay(&a, want); err != nil {
			t.Fatal(err)
		}
		got, err := jobfile.ReadLay(a.Bytes())
		if err != nil {
			t.Fatalf("%v\n%s", err, a.Bytes())
		}
		if !reflect.DeepEqual(got, want) {
			t.Fatalf("read back %#v\nwritten  %#v", got, want)
		}
		if err := jobfile.WriteLay(&b, got); err != nil || !bytes.Equal(a.Bytes(), b.Bytes()) {
			t.Fatalf("written again it differs (%v)", err)
		}
	})
}

// smallLay is one board in one run.
func smallLay() lay.Lay {
	r := plane.Rect(plane.P(0, 0), plane.P(40*tape.Inch, 5*tape.Inch))
	return lay.Lay{
		Known: stock.Tallied, Seed: 7, Kerf: tape.Eighth,
		Zones: []lay.Zone{{Kind: lay.Field, Dir: plane.Dir{X: 1}, Width: 5 * tape.Inch, Ahead: 1, Hand: stock.RightHand}},
		Runs: []lay.Run{{Row: 1, High: 5 * tape.Inch, Outline: r, Pieces: []int{0}, Order: 1,
			Nailing: []lay.Stretch{{Along: plane.Span{To: 40 * tape.Inch}, By: lay.FaceNail}}, LeftEnd: lay.EndRange{Edge: "wall A-B"}}},
		Pieces: []lay.Piece{{Outline: r, InBoard: r, Left: lay.Groove, Right: lay.Tongue, Behind: lay.Groove, Ahead: lay.Tongue, How: lay.Slid}},
		Boards: []lay.Board{{Length: 40 * tape.Inch, Width: 5 * tape.Inch, Parts: []lay.Part{{Kind: lay.IsPiece, Outline: r}}}},
	}
}

func written(t testing.TB, l lay.Lay) string {
	t.Helper()
	var b bytes.Buffer
	if err := jobfile.WriteLay(&b, l); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

func TestLayAsWritten(t *testing.T) {
	const want = `{
"strake_lay":1,
"unit":"125 nm",
"example":false,
"known":"tallied",
"seed":7,
"kerf":25400,
"zones":[
{"id":0,"kind":"field","dir":[1,0],"width":1016000,"offset":0,"ahead":1,"hand":"right"}
],
"runs":[
{"id":0,"zone":0,"row":1,"low":0,"high":1016000,"outline":[0,0,8128000,0,8128000,1016000,0,1016000],"pieces":[0],"order":1,"nailing":[{"by":"face","from":0,"to":8128000}],"left":{"edge":"wall A-B","reach":0,"need":0},"right":{"reach":0,"need":0}}
],
"pieces":[
{"id":0,"run":0,"board":0,"outline":[0,0,8128000,0,8128000,1016000,0,1016000],"in_board":[0,0,8128000,0,8128000,1016000,0,1016000],"left":"groove","right":"tongue","behind":"groove","ahead":"tongue","how":"slid"}
],
"boards":[
{"id":0,"length":8128000,"width":1016000,"parts":[{"kind":"piece","piece":0,"outline":[0,0,8128000,0,8128000,1016000,0,1016000]}]}
]
}
`
	if got := written(t, smallLay()); got != want {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
}

// Each way to break a written lay is refused with words that name it.
func TestLayRefused(t *testing.T) {
	good := written(t, smallLay())
	tests := []struct{ name, old, new, says string }{
		{"another version", `"strake_lay":1`, `"strake_lay":2`, "version 2"},
		{"no version", `"strake_lay":1`, `"strake_log":1`, "no written lay"},
		{"another unit", "125 nm", "1 nm", `"1 nm"`},
		{"unknown key", `"seed":7`, `"seeds":7`, `"seeds"`},
		{"unknown key deep", `"width":1016000,"offset"`, `"breadth":1016000,"offset"`, `"breadth"`},
		{"a key twice", `"kerf":25400`, `"kerf":25400,
"kerf":25400`, `line 8: the key "kerf" is written twice, on line 7 before`},
		{"a key twice in a piece", `"run":0,`, `"run":0,"run":0,`, `line 15: the key "run" is written twice`},
		{"the version twice", `"strake_lay":1`, `"strake_lay":1,"strake_lay":1`, `line 2: the key "strake_lay" is written twice`},
		{"a key in capitals", `"seed":7`, `"Seed":7`, `line 6: the key "Seed" is not known`},
		{"a key twice, once in capitals", `"seed":7`, `"seed":7,"SEED":8`, `the key "SEED" is not known`},
		{"a key twice, once in disguise", `"seed":7`, `"seed":7,"se\u0065d":8`, `is not known`},
		{"more text after the end", "]\n}\n", "]\n}\nplan", "line 21"},
		{"a length that is no whole number", `"kerf":25400`, `"kerf":25400.5`, "line 7"},
		{"text after the end", "]\n}\n", "]\n}\n{}", "after top-level value"},
		{"half a file", "]\n}\n", "", "cannot be read"},
		{"piece of no run", `"run":0`, `"run":1`, "piece 0: run 1 does not exist"},
		{"piece of no board", `"board":0`, `"board":-1`, "piece 0: board -1 does not exist"},
		{"run of no zone", `"zone":0`, `"zone":9`, "run 0: zone 9 does not exist"},
		{"run of no piece", `"pieces":[0]`, `"pieces":[3]`, "run 0: piece 3 does not exist"},
		{"board of no piece", `"piece":0`, `"piece":4`, "board 0: piece 4 does not exist"},
		{"piece number", `{"id":0,"run"`, `{"id":5,"run"`, "piece 5"},
		{"unknown profile", `"left":"groove"`, `"left":"grove"`, `"grove"`},
		{"unknown kind", `"kind":"field"`, `"kind":"fold"`, `"fold"`},
		{"sense of laying", `"ahead":1,`, `"ahead":0,`, "ahead is 0"},
		{"direction", `"dir":[1,0]`, `"dir":[1,1]`, "direction"},
		{"direction of three", `"dir":[1,0]`, `"dir":[1,0,0]`, "3 numbers"},
		{"odd outline", `"outline":[0,0,`, `"outline":[0,`, "7 numbers"},
		{"two corners", `"in_board":[0,0,8128000,0,8128000,1016000,0,1016000]`, `"in_board":[0,0,8128000,0]`, "three corners"},
		{"far away", `"low":0`, `"low":99999999999999`, "farther than any floor"},
		{"too large", `"in_board":[0,0,8128000,0,`, `"in_board":[0,0,1600000001,0,`, "larger than any floor"},
		{"no width", `"width":1016000,"offset"`, `"width":0,"offset"`, "width 0"},
	}
	for _, tt := range tests {
		broken := strings.Replace(good, tt.old, tt.new, 1)
		if broken == good {
			t.Fatalf("%s: nothing was broken", tt.name)
		}
		if _, err := jobfile.ReadLay([]byte(broken)); err == nil || !strings.Contains(err.Error(), tt.says) {
			t.Errorf("%s: %v; want it to say %s", tt.name, err, tt.says)
		}
	}
}

func TestBadLayIsNotWritten(t *testing.T) {
	l := smallLay()
	l.Pieces[0].Run = 3
	var b bytes.Buffer
	if err := jobfile.WriteLay(&b, l); err == nil || b.Len() != 0 {
		t.Errorf("wrote %d bytes of a lay with a run that is not there (%v)", b.Len(), err)
	}
	l = smallLay()
	l.Zones[0].Dir.X = math.NaN()
	if err := jobfile.WriteLay(&b, l); err == nil {
		t.Error("wrote a direction that is no number")
	}
}

// What can be read can be written, and then reads as the same lay.
func FuzzReadLay(f *testing.F) {
	f.Add(written(f, smallLay()))
	f.Add(`{"strake_lay":1,"unit":"125 nm"}`)
	f.Add(`{"strake_lay":1}{}`)
	f.Add(`{"strake_lay":1,"unit":"125 nm","seed":1,"seed":2}`)
	f.Add(`{"strake_lay":1,"unit":"125 nm","Seed":1,"se\u0065d":2}`)
	f.Add(`{"strake_lay":1,"unit":"\\\"{:","findings":[{"rule":"\":"}]}`)
	f.Add(`[`)
	f.Fuzz(func(t *testing.T, s string) {
		l, err := jobfile.ReadLay([]byte(s))
		if err != nil {
			return
		}
		again, err := jobfile.ReadLay([]byte(written(t, l)))
		if err != nil || !reflect.DeepEqual(again, l) {
			t.Errorf("%q reads as %+v, then as %+v (%v)", s, l, again, err)
		}
	})
}
