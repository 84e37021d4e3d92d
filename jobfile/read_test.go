package jobfile_test

import (
	"errors"
	"os"
	"reflect"
	"strings"
	"testing"

	"strake/finding"
	"strake/job"
	"strake/jobfile"
	"strake/limits"
	"strake/room"
	"strake/stock"
	"strake/survey"
	"strake/tape"
)

const in, mm = tape.Inch, tape.Millimetre

// whole is a job that uses every key.
const whole = `strake: 1
name: The whole form
unit: in
rooms:
  den:
    corners: [A, B, C, D, E]
    walk: clockwise
    into: [E]
    angles: {C: 91.5, E: 225}
    bows: [{wall: A-B, from: B, at: 60, out: -3/8}]
  nook:
    corners: [K, L, M]
points:
  P: {wall: A-B, from: B, at: 12}
readings:
  A-B: 144
  B-C: [120-1/2, 10' 0-5/8"]
  C - P: {is: 3.2 m, doubt: 3 mm}
  K-L: 100
  H1-A: 20
  H1-B: 130
  H2-A: 40
  H2-B: 110
  H3-A: 41
  H3-B: 111
doorways:
  arch:
    wall: A-B
    from: A
    at: 20
    width: 30
    thickness: 4-1/2
    undercut: yes
    beyond: {wall: K-L, from: L, at: 8}
  way out:
    wall: B-C
    from: C
    at: 10
    width: 32
    thickness: 6
    beyond: stair
  patio door:
    wall: D-C
    from: D
    at: 10
    width: 72
    thickness: 6
    beyond: flush
    ends: 1
stays:
  hearth: {kind: hearth, past: round, corners: [H1, H2, H3]}
  vent: {kind: register, cover: 1, wall: C-D, from: D, at: 90, off: 3, width: 10, depth: 4}
  slate: {kind: tile, meets: transition, wall: C-D, from: D, at: 5, width: 10, depth: 4}
boards:
  name: ash
  species: white ash
  face: 5
  ten_boards: 50.3
  thickness: 3/4
  side_tongue: 5/16
  end_tongue: 0
  hand: left
  lengths: {tally: [24 x 36 in, 3 x 7' 0", 61-1/2]}
  carton: {area: 20 sq ft, count: 12, price: 99.5}
  cartons: 6
  lot: 0417
  currency: USD
base: 1/2
shoe: 3/4
joists: {along: C-B, spacing: 16}
offsets:
  - {of: D, wall: A-B, is: 101}
along:
  - {wall: A-B, from: A, to: D, is: {is: 5, doubt: 1/2}}
widths:
  - {from: P, wall: D-E, is: 99-1/2}
tape: {hook: 1 mm, square_corner: 1, must_show: 1/4}
limits:
  mill_rule: yes
  joint_min: 7
  joint_preferred: {is: 12, source: the maker}
  jamb_least: -5/8
wishes:
  rows_across: A-B
  start_wall: C-D
  run_through: arch
  edge_on: P
  wood_first: yes
laid:
  1: [58, 71", 44-1/2]
  2a: {pieces: [40, 33-1/4], start: -1/4, cut: both, tongue: 10-1/8}
  3: {pieces: [60], start: 3' 2" from E-A, tongue: 9' 4-1/2" from A-B}
seed: 18446
`

// wantWhole is that job.
func wantWhole() job.Job {
	l := limits.Default(5*in, 3*in/4)
	l.ShortestPiece = limits.Figure{Value: 9 * in, Source: "MFMA grading rules: the mill bundles nothing shorter (chosen by mill_rule)"}
	l.JointMin = limits.Figure{Value: 7 * in, Source: "job file"}
	l.JointPreferred = limits.Figure{Value: 12 * in, Source: "the maker"}
	l.JambLeast = limits.Figure{Value: -5 * in / 8, Source: "job file"}
	read := func(a, b string, v, _ tape.Length, line int) survey.Reading { // all to the finest step
		return survey.Reading{From: a, To: b, Value: v, Step: in / 8, Line: line + 1, Unit: tape.UnitInch, Text: strings.TrimSuffix(v.String(), "\"")}
	}
	doubtful := read("C", "P", 3200*mm, 100*mm, 17)
	doubtful.SD, doubtful.Text = 3, "3.2 m"
	twice := read("B", "C", 120*in+5*in/8, in/8, 16)
	twice.Text = "10' 0-5/8\""
	square := func(k survey.Kind, from, to string, w room.Wall, v, step tape.Length, line int) survey.Reading {
		r := read(from, to, v, step, line)
		r.Kind, r.Wall = k, w
		return r
	}
	along := square(survey.Along, "A", "D", room.Wall{"A", "B"}, 5*in, in, 73)
	along.SD = 12.7
	trust := survey.Tape()
	trust.HookMM, trust.SquareDeg, trust.ShowMM = 1, 1, 6.35
	return job.Job{
		Name: "The whole form", Unit: tape.UnitInch, Seed: 18446, Base: in / 2, Shoe: 3 * in / 4, Limits: l,
		Joists: job.Joists{Along: room.Wall{"C", "B"}, Spacing: 16 * in},
		Wishes: job.Wishes{Direction: room.Wall{"A", "B"}, Across: true, StartWall: room.Wall{"C", "D"}, RunThrough: "arch", EdgeOn: "P", WoodFirst: true},
		Laid: []job.Laid{
			{Row: "1", Pieces: []tape.Length{58 * in, 71 * in, 89 * in / 2}},
			{Row: "2a", Pieces: []tape.Length{40 * in, 133 * in / 4}, Start: job.Read{Told: true, At: -in / 4}, Cut: job.CutBoth, Tongue: job.Read{Told: true, At: 81 * in / 8}},
			{Row: "3", Pieces: []tape.Length{60 * in}, Start: job.Read{Told: true, At: 38 * in, From: room.Wall{"E", "A"}}, Tongue: job.Read{Told: true, At: 225 * in / 2, From: room.Wall{"A", "B"}}},
		},
		Readings: []survey.Reading{
			read("A", "B", 144*in, in, 15), read("B", "C", 120*in+in/2, in/2, 16), twice, doubtful,
			read("K", "L", 100*in, in, 18), read("H1", "A", 20*in, in, 19), read("H1", "B", 130*in, in, 20), read("H2", "A", 40*in, in, 21),
			read("H2", "B", 110*in, in, 22), read("H3", "A", 41*in, in, 23), read("H3", "B", 111*in, in, 24),
			square(survey.Off, "D", "", room.Wall{"A", "B"}, 101*in, in, 71), along,
			square(survey.Width, "P", "", room.Wall{"D", "E"}, 99*in+in/2, in/2, 75),
		},
		Tape: trust,
		Sketch: room.Sketch{
			Rooms: []room.Room{
				{Name: "den", Corners: []string{"A", "B", "C", "D", "E"}, Clockwise: true, Into: []string{"E"}, Angles: map[string]float64{"C": 91.5, "E": 225},
					Bows: []room.Bow{{Wall: room.Wall{"A", "B"}, From: "B", At: 60 * in, Out: -3 * in / 8}}},
				{Name: "nook", Corners: []string{"K", "L", "M"}},
			},
			Points: []room.Point{{Name: "P", Wall: room.Wall{"A", "B"}, From: "B", At: 12 * in}},
			Doorways: []room.Doorway{
				{Name: "arch", Wall: room.Wall{"A", "B"}, From: "A", At: 20 * in, Width: 30 * in, Thickness: 9 * in / 2, Undercut: true, Beyond: room.BeyondRoom, OtherWall: room.Wall{"K", "L"}, OtherFrom: "L", OtherAt: 8 * in},
				{Name: "way out", Wall: room.Wall{"B", "C"}, From: "C", At: 10 * in, Width: 32 * in, Thickness: 6 * in, Beyond: room.BeyondStair, Ends: 3 * in},
				{Name: "patio door", Wall: room.Wall{"D", "C"}, From: "D", At: 10 * in, Width: 72 * in, Thickness: 6 * in, Beyond: room.BeyondFlush, Ends: in},
			},
			Stays: []room.Stay{
				{Name: "hearth", Kind: room.Hearth, Meets: room.MeetsFlush, Past: room.PastRound, Corners: []string{"H1", "H2", "H3"}},
				{Name: "vent", Kind: room.Register, Meets: room.MeetsGap, Cover: in, Wall: room.Wall{"C", "D"}, From: "D", At: 90 * in, Off: 3 * in, Width: 10 * in, Depth: 4 * in},
				{Name: "slate", Kind: room.Tile, Meets: room.MeetsTransition, Wall: room.Wall{"C", "D"}, From: "D", At: 5 * in, Width: 10 * in, Depth: 4 * in},
			},
		},
		Boards: stock.Boards{
			Name: "ash", Species: "white ash", Face: 5 * in, TenBoards: 503 * in / 10, Thickness: 3 * in / 4, SideTongue: 5 * in / 16, Hand: stock.LeftHand,
			Known: stock.Tallied, Tally: []stock.Class{{Length: 36 * in, Count: 24}, {Length: 84 * in, Count: 3}, {Length: 123 * in / 2, Count: 1}}, ReadTo: in / 4, Slip: in / 16,
			Carton: stock.Carton{Area: 20 * tape.Area(tape.Foot) * tape.Area(tape.Foot), Count: 12, Price: 99.5}, Cartons: 6, Lot: "0417", Currency: "USD",
		},
	}
}

func TestWholeForm(t *testing.T) {
	j, _, err := jobfile.ReadJob("whole.yaml", []byte(whole))
	if err != nil {
		t.Fatal(err)
	}
	if want := wantWhole(); !reflect.DeepEqual(j, want) {
		t.Errorf("read\n%+v\nwant\n%+v", j, want)
	}
	for _, text := range []string{strings.ReplaceAll(whole, "\n", "\r\n"), "\ufeff" + whole} {
		if again, _, err := jobfile.ReadJob("whole.yaml", []byte(text)); err != nil || !reflect.DeepEqual(again, j) {
			t.Errorf("with %q at a line's end or a mark at the start it reads otherwise: %v", text[:8], err)
		}
	}
}

// mistakes are single changes to the whole form, each with the error it gives.
var mistakes = []struct {
	old, new string // what is changed in the whole form
	at       string // the caret stands at this text ...
	what     string // ... and says this
	accept   string // and this would be accepted
}{
	{"1: [58, 71\", 44-1/2]", "1: 58", "58", "something else belongs here", "pieces of row 2 from left to right"},
	{"1: [58, 71\", 44-1/2]", "1: []", "[]", "the row has no pieces", "pieces of row 2"},
	{"1: [58, 71\", 44-1/2]", "first: [58]", "first", "not how the row list names a row", "such as 12 or 12a"},
	{"1: [58, 71\", 44-1/2]", "2a: [58]", "2a: {", "written twice, first on line", "each key once"},
	{"1: [58, 71\", 44-1/2]", "1: [58, 7100]", "7100", "out of range", "from 7/16"},
	{"1: [58, 71\", 44-1/2]", "1: {start: 3/4}", "{start", "“pieces” is missing", "a list of lengths"},
	{"cut: both", "cut: rigth", "rigth", "is not known here", "did you mean “right”"},
	{"3' 2\" from E-A", "3' 2\" from E", "3' 2\" from E", "not two names with a dash", "a distance, such as"},
	{"3' 2\" from E-A", "3' 2\" from E-B", "3' 2\" from E-B", "not neighbours", "one of the walls A-B"},
	{"3' 2\" from E-A", "3' 13\" from E-A", "3' 13\" from E-A", "a foot or more", "1\""},
	{"tongue: 10-1/8", "tongue: -1", "-1", "a minus has no meaning here", "the length without it"},
	{"tally: [24 x 36 in, 3 x 7' 0\", 61-1/2]", "one: 36, shift: 4/3", "4/3", "no part of a board", "such as 1/3"},
	{"tally: [24 x 36 in, 3 x 7' 0\", 61-1/2]", "one: 36, shift: 36 in", "36 in}", "the shift is no less than a board", "less than 36\""},
	{"tally: [24 x 36 in, 3 x 7' 0\", 61-1/2]", "one: 36, shift: 1/2 in", "1/2 in", "out of range", "a length from 1\" to"},
	{"tally: [24 x 36 in,", "shift: 1/3, tally: [24 x 36 in,", "1/3, tally", "a shift goes with boards of one length", "lengths: {one: 48 in, shift: 1/3}"},
	{"A-B: 144", "A-B: 12' 13\"", "12' 13\"", `13" is a foot or more`, `13' 1"`},
	{"A-B: 144", "A-B: 3,84 m", "3,84 m", "comma", "3.84 m"},
	{"A-B: 144", "A-B: [144, 12' 7]", "12' 7", "unit of 7 is missing", `12' 7"`},
	{"A-B: 144", "A-B: 300 m", "300 m", "farther than any floor", "shorter"},
	{"A-B: 144", "A-B: 1/8", "1/8", "out of range", "from"},
	{"A-B: 144", "A-B: {is: 144}", "{is: 144", "“doubt” is missing", "doubt"},
	{"A-B: 144", "A-B: {doubt: 1/8}", "{doubt", "“is” is missing", "is:"},
	{"K-L: 100", "K-L:", "", "", ""},
	{"K-L: 100", "K-K: 100", "K-K", "from a point to itself", "two names"},
	{"K-L: 100", "K-LL: 100", "K-LL", "“LL” is not a corner or point", "did you mean “L”"},
	{"K-L: 100", "K: 100", "K: 100", "not two names", "A-B"},
	{"name: The", "nam: The", "nam", "“nam” is not a key", "did you mean “name”"},
	{"strake: 1", "strake: 2", "2", "version", "number 1"},
	{"unit: in", "unit: in\npaper: a3", "a3", "“a3” is not known", "Known here: a4, letter"},
	{"unit: in", "unit: inch", "inch", "“inch” is not known", "did you mean “in”"},
	{"corners: [K, L, M]", "corners: [K, L, A]", "A]", "taken by a corner of den", "name of its own"},
	{"corners: [K, L, M]", "corners: [K, L, K]", "K]", "taken by a corner of nook", "name of its own"},
	{"corners: [K, L, M]", "corners: [K, L, M-1]", "M-1", "no dash", "a name such as"},
	{"walk: clockwise", "walk: clockwize", "clockwize", "“clockwize” is not known", "did you mean “clockwise”"},
	{"into: [E]", "into: [E, Z]", "Z", "“Z” is not a corner of den", "A, B, C, D, E"},
	{"E: 225", "D: 225", "225", "stands into the room", "“into”"},
	{"E: 225", "E: 135", "135", "over 180", "225"},
	{"C: 91.5", "C: 0", "0, E", "not such a number", "from 1 to 359"},
	{"P: {wall: A-B", "P: {wall: A-C", "A-C", "not neighbours", "A-B, B-C, C-D, D-E, E-A"},
	{"from: B, at: 12", "from: C, at: 12", "C, at", "not a corner of wall A-B", "A or B"},
	{"from: B, at: 12", "from: B, at: 150", "150", "goes past the end of wall A-B", `144"`},
	{"    from: A\n", "", "wall: A-B\n    at: 20", "“from” is missing", "from"},
	{"at: 20\n", "at: 120\n", "30\n", "goes past the end of wall A-B", "at most"},
	{"wall: K-L, from: L", "wall: B-C, from: C", "B-C, from", "same room", "another room"},
	{"wall: K-L, from: L, at: 8", "wall: K-L, from: L, at: 80", "80}", "goes past the end of wall K-L", "at most"},
	{"wall: K-L, from: L", "wall: K-B, from: K", "K-B", "two rooms", "K-L, L-M, M-K"},
	{"beyond: stair", "beyond: stairs", "stairs", "not known", "did you mean “stair”"},
	{"ends: 1\n", "ends: 7\n", "7\n", "beyond the wall", `at most 6"`},
	{"beyond: stair", "beyond: stair\n    rows: turn", "turn", "no room of this job lies beyond", "another room"},
	{"undercut: yes", "undercut: yes\n    old_floor: {offers: tongue, row_width: 5}", "{offers", "its floor is laid with this one", "an old floor"},
	{"undercut: yes", "undercut: yes\n    ends: 1", "1\n", "does not end in the wall", "left out"},
	{"kind: tile", "kind: tyle", "tyle", "not known", "did you mean “tile”"},
	{"corners: [H1, H2, H3]", "corners: [H1, H2, H2, H3]", "[H1, H2", "named twice", "once"},
	{"H3-A: 41", "A-D: 41", "[H1, H2, H3]", "too few readings reach corner “H3”", "two readings"},
	{"corners: [H1, H2, H3]}", "corners: [H1, H2, H3], wall: A-B}", "A-B}", "by its corners and from a wall", "one of the two"},
	{", width: 10, depth: 4}\nboards", ", width: 10}\nboards", "slate", "“depth” is missing", "depth"},
	{"meets: transition, wall: C-D, from: D, at: 5, width: 10, depth: 4}", "corners: [A, B]}", "[A, B]", "three corners at least", "in order"},
	{"meets: transition, wall: C-D, from: D, at: 5, width: 10, depth: 4}", "meets: flush}", "slate", "nothing says where", "wall, from, at"},
	{"face: 5", "face: 5 ft", "5 ft", "out of range", "from"},
	{"ten_boards: 50.3", "ten_boards: 60.3", "60.3", "cannot measure this", `near 50"`},
	{"side_tongue: 5/16", "side_tongue: -1/4", "-1/4", "minus", "without it"},
	{"tally: [24 x 36 in, 3 x 7' 0\", 61-1/2]", "tally: []", "[]", "tally is empty", "24 x 36 in"},
	{"24 x 36 in", "36 in x 24", "36 in x 24", "number of boards comes first", "24 boards"},
	{"24 x 36 in", "24 x 36 ft 1/3", "24 x 36 ft 1/3", "1/3 is no mark", ""},
	{"24 x 36 in", "24 x 1", "24 x 1", "no length of a board", "from"},
	{"lengths: {tally: [24 x 36 in, 3 x 7' 0\", 61-1/2]}", "lengths: {}", "{}", "nothing says how long", "lengths: {one: 48 in}"},
	{"61-1/2]}", "61-1/2], one: 36}", "36}", "more than one way", "one of"},
	{"61-1/2]}", "61-1/2], count: 36}", "36}", "a count goes with one length", "one"},
	{"tally: [24 x 36 in, 3 x 7' 0\", 61-1/2]", "mix: {least: 12, most: 84, mean: 90}", "90", "mean lies outside", `84"`},
	{"tally: [24 x 36 in, 3 x 7' 0\", 61-1/2]", "mix: {least: 90, most: 84, mean: 90}", "84", "shorter than the shortest", `90"`},
	{"tally: [24 x 36 in, 3 x 7' 0\", 61-1/2]", "one: 36, slip: 1/32", "1/32", "goes with a tally", "leave slip out"},
	{"61-1/2]}", "{boards: 61-1/2, fault: bent}]}", "bent", "“bent” is not known here", "crooked"},
	{"61-1/2]}", "{fault: crooked}]}", "{fault: crooked}", "“boards” is missing", "boards"},
	{"61-1/2]}", "{boards: 61-1/2, fault: damaged groove end}]}", "{boards: 61", "nothing says how much", "spoiled: with a length"},
	{"61-1/2]}", "{boards: 61-1/2, spoiled: 3}]}", "", "spoiled goes with a damaged end", "damaged tongue end"},
	{"61-1/2]}", "{boards: 61-1/2, fault: damaged groove end, spoiled: 62}]}", "{boards: 61", "nothing of the board is left", "kept out"},
	{"61-1/2]}", "61-1/2], trusted: perhaps}", "perhaps", "neither yes nor no", "yes or no"},
	{"20 sq ft", "20 sq in", "20 sq in", "no unit of area", "sq ft"},
	{"price: 99.5", "price: $99", "$99", "not such a number", "number"},
	{"cartons: 6", "cartons: 6.5", "6.5", "not such a number", "whole"},
	{"along: C-B", "along: C-E", "C-E", "not neighbours", "A-B"},
	{"mill_rule: yes", "mill_rule: maybe", "maybe", "neither yes nor no", "yes or no"},
	{"joint_min: 7", "joint_min: 14", "{is: 12, source", "joint_preferred is below joint_min", `14"`},
	{"jamb_least: -5/8", "jamb_least: -1/8", "-1/8", "jamb_least is above jamb_greatest", `-1/4"`},
	{"jamb_least: -5/8", "jamb_least: 5/8", "5/8", "out of range", "from"},
	{"rows_across: A-B", "rows_across: A-B\n  rows_along: A-B", "A-B\n  rows_along", "cannot both hold", "one of the two"},
	{"run_through: arch", "run_through: arc", "arc", "not known", "did you mean “arch”"},
	{"run_through: arch", "run_through: way out", "way out", "ends in the way out", "another room"},
	{"edge_on: P", "continuous_from: way out", "way out", "no doorway between two rooms", "one of arch"},
	{"seed: 18446", "pins: {continuous_from: attic}\nseed: 18446", "attic", "no doorway between two rooms", "one of arch"},
	{"edge_on: P", "edge_on: Q", "Q", "not a corner or point", "one of"},
	{"edge_on: P", "edge_on: way out", "way out", "no old floor beyond", "row_edge_at"},
	{"seed: 18446", "pins: {row_edge_on: way out}\nseed: 18446", "way out}", "no old floor beyond", "row_edge_at"},
	{"seed: 18446", "pins: {stepped_at: A-Q}\nseed: 18446", "A-Q", "is not a corner", "A-B"},
	{"seed: 18446", "pins: {rip: {at: A-B, width: 5-1/8}}\nseed: 18446", "5-1/8", "no row is that wide", "full_board_at"},
	{"seed: 18446", "pins: {taper_at: A-B}\nseed: 18446", "A-B", "another direction", "rows_along"},
	{"rows_across: A-B", "rows_between: [A-B, C-D]\n  taper_at: C-D", "C-D\n  start", "shares the taper", "one of the two"},
	{"seed: 18446", "seed: -1", "-1", "not such a number", "whole number"},
	{"name: The whole form", "name: The whole form\nname: Twice", "name: Twice", "", ""},
	{"name: The whole form", "name: &a The whole form", "&a", "an anchor", "written out"},
	{"name: The whole form", "name: *a", "*a", "an alias", "written out"},
	{"name: The whole form", "name: !!str The whole form", "!!str", "a tag", "written out"},
	{"name: The whole form", "name: [The, whole]", "[The", "something else belongs here", "text"},
	{"name: The whole form", "name: \"a\\tb\"", "\"a", "does not print", "plain text"},
	{"name: The whole form", "name: {", "", "", ""},
	{"strake: 1\n", "", "name: The whole form\nunit", "“strake” is missing", "number 1"},
	{"points:\n", "points:\n  A: {wall: A-B, from: B, at: 12}\n", "A: {wall", "name of a corner", "no corner has"},
	{"  P: {wall: A-B, from: B, at: 12}", "  P: {wall: A-B, from: B, at: 120}", "120}", "in the opening of “arch”", "beside its jambs"},
	{"  P: {wall: A-B, from: B, at: 12}", "  P: {wall: L-K, from: L, at: 30}", "30}", "in the opening of “arch”", "beside its jambs"},
	{"points:\n", "points:\n  P-1: {wall: A-B, from: B, at: 12}\n", "P-1", "no dash", "P1"},
	{"nook:", "a room with a name that no list and no drawing has space for:", "a room with", "no name for a room", "1 to 40"},
	{"A-B: 144", "A-B: 144\n  A-B: 145", "A-B: 145", "“A-B” is written twice, first on line", "each key once"},
	{"  A-B: 144", "\tA-B: 144", "\tA-B", "a tab stands here", "spaces"},
	{"A-B: 144", "A-B: 144\n  ? [x]\n  : 3", ": 3", "not a job file's form", "key: value"},
	{"    at: 10\n    width: 32", "    at: 10\n    width: 32\n    thicknes: 6", "thicknes:", "not a key", "did you mean “thickness”"},
	{"wall: D-C\n    from: D\n    at: 10", "wall: B-C\n    from: B\n    at: 20", "20\n    width: 72", "lies over the doorway “way out”", "beside each other"},
	{"wall: D-C\n    from: D\n    at: 10", "wall: C-B\n    from: C\n    at: 41", "41", "lies over the doorway “way out”", "beside each other"},
	{"tally: [24 x 36 in, 3 x 7' 0\", 61-1/2]", "mix: {least: 12, most: 48, mean: 40, step: 38}", "38", "more than the spread", "at most"},
	{"name: The whole form", "name: " + strings.Repeat("x", 201), "xxx", "too long", "200"},
	{"seed: 18446", "seed: 18446\n---\nseed: 2", "", "second document", "one job"},
	{"tally: [24 x 36 in, 3 x 7' 0\", 61-1/2]", "tally: {a: 3}", "{a", "something else belongs here", "24 x 36"},
	{"rooms:\n  den:", "rooms:\n  - den:", "", "", ""},
}

// Each single mistake gives exactly one error, at its place.
func TestOneMistake(t *testing.T) {
	for _, tt := range mistakes {
		text := strings.Replace(whole, tt.old, tt.new, 1)
		if text == whole {
			t.Fatalf("%q is not in the whole form", tt.old)
		}
		_, _, err := jobfile.ReadJob("job.yaml", []byte(text))
		var errs jobfile.Errors
		if !errors.As(err, &errs) || len(errs) != 1 {
			t.Errorf("%q: %v; want one error", tt.new, err)
			continue
		}
		e := errs[0]
		if tt.at != "" && !strings.HasPrefix(rest(text, e.Line, e.Column), tt.at) {
			t.Errorf("%q: the caret is not at %q\n%v", tt.new, tt.at, e)
		}
		if !strings.Contains(e.What, tt.what) || !strings.Contains(e.Accept, tt.accept) || e.Accept == "" || e.Source == "" {
			t.Errorf("%q: want %q and to accept %q\n%v", tt.new, tt.what, tt.accept, e)
		}
	}
}

// rest is the text from a line and column on.
func rest(text string, line, column int) string {
	lines := strings.SplitAfter(text, "\n")
	if line > len(lines) {
		return ""
	}
	r := []rune(strings.Join(lines[line-1:], ""))
	if column > len(r) {
		return ""
	}
	return string(r[column-1:])
}

// A file with many mistakes is told all of them, as written down here.
func TestAllMistakesAtOnce(t *testing.T) {
	data, err := os.ReadFile("testdata/refuse_many.yaml")
	if err != nil {
		t.Fatal(err)
	}
	_, _, err = jobfile.ReadJob("refuse_many.yaml", data)
	var errs jobfile.Errors
	if !errors.As(err, &errs) || len(errs) < 15 {
		t.Fatalf("%v; want all errors", err)
	}
	golden(t, "testdata/refuse_many.txt", err.Error()+"\n")
}

func golden(t *testing.T, name, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(name, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(name)
	if err != nil || string(want) != got {
		t.Errorf("%s differs (%v); got\n%s", name, err, got)
	}
}

// What is allowed but odd is found.
func TestOdd(t *testing.T) {
	tests := []struct {
		old, new, rule, where string
		level                 finding.Level
	}{
		{"ten_boards: 50.3", "ten_boards: 49.9", "row width under face width", "boards", finding.Warn},
		{"ten_boards: 50.3", "ten_boards: 51", "much air in the joints", "boards", finding.Warn},
		{"joint_preferred: {is: 12, source: the maker}", "joint_preferred:\n  lap: 1/4", "", "", ""},
		{"joint_min: 7\n  joint_preferred: {is: 12, source: the maker}", "joint_min: 9", "preferred joint distance below the minimum", "limits", finding.Note},
		{"61-1/2]", "3 x 8-1/2]", "boards shorter than the shortest piece", "tally", finding.Note},
		{"10' 0-5/8\"", "11' 0-5/8\"", "two readings of one distance differ", "B-C", finding.Warn},
		{"width: 72", "width: 150", "wide doorway", "patio door", finding.Note},
		{"width: 32", "width: 12", "narrow doorway", "way out", finding.Note},
		{"currency: USD", "", "price without a currency", "boards", finding.Warn},
		{"    walk: clockwise\n", "", "way round the room not given", "den", finding.Note},
		{"cartons: 6", "cartons: 2", "", "", ""},
		{"cartons: 6", "cartons: 1", "tally against cartons", "boards", finding.Warn},
	}
	for _, tt := range tests {
		text := strings.Replace(whole, tt.old, tt.new, 1)
		text = strings.Replace(text, "cartons: 6", "cartons: 2", 1) // the tally is 40.9 sq ft: 2.04 cartons
		_, found, err := jobfile.ReadJob("job.yaml", []byte(text))
		if err != nil {
			t.Errorf("%q: %v", tt.new, err)
			continue
		}
		if tt.rule == "" {
			if len(found) != 0 {
				t.Errorf("%q: found %v; want nothing", tt.new, found)
			}
			continue
		}
		if len(found) != 1 || found[0].Rule != tt.rule || found[0].Where != tt.where || found[0].Level != tt.level || found[0].Do == "" {
			t.Errorf("%q: found %v; want %s", tt.new, found, tt.rule)
		}
	}
}

// A tally of one length may have a shift too.
func TestShiftOfATallyOfOneLength(t *testing.T) {
	text := strings.Replace(whole, "{tally: [24 x 36 in, 3 x 7' 0\", 61-1/2]}", "{tally: [24 x 36 in, 36 in], shift: 1/3}", 1)
	if j, _, err := jobfile.ReadJob("job.yaml", []byte(text)); err != nil || !j.Boards.Shift.Fixed() {
		t.Errorf("read as %+v: %v", j.Boards, err)
	}
}

// A bare fraction is a part of a board, anything else a length.
func TestShiftOfBoardsOfOneLength(t *testing.T) {
	for text, want := range map[string]stock.Shift{"1/3": {Num: 1, Den: 3}, "13-1/2": {Length: 27 * in / 2}, "400 mm": {Length: 400 * mm}, "random": {}} {
		j, _, err := jobfile.ReadJob("job.yaml", []byte(strings.Replace(whole, "{tally: [24 x 36 in, 3 x 7' 0\", 61-1/2]}", "{one: 36, shift: "+text+"}", 1)))
		if err != nil || j.Boards.Shift != want || j.Boards.Known != stock.OneSize {
			t.Errorf("shift: %s reads as %+v, want %+v (%v)", text, j.Boards.Shift, want, err)
		}
	}
}
