package check

import (
	"slices"
	"strings"
	"testing"

	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/limits"
	"strake/plane"
	"strake/stock"
	"strake/tape"
)

// laidBench is a room of 100 in along the rows and rows of 5 in that fill it
// from 0 to 100 in, with 1/4 in of play at each end, and three rows laid there
// that keep every rule.
type laidBench struct {
	floor LaidFloor
	lim   limits.Limits
	stock stock.Boards
}

func newLaidBench(reach plane.Region) *laidBench {
	b := &laidBench{lim: limits.Default(in(5), in(0.75))}
	b.stock = stock.Boards{Face: in(5), EndTongue: in(0.25), Hand: stock.RightHand, Known: stock.Tallied, Tally: []stock.Class{{Length: in(84), Count: 9}}}
	at := around(plane.Dir{X: 1}, rc(0, 0, 100, 60))
	if reach != nil {
		at.Reach = reach
	}
	b.floor.Zones = []lay.Zone{{ID: 0, Kind: lay.Field, Dir: at.Dir, Width: in(5), Ahead: 1, Hand: stock.RightHand}, {ID: 1, Kind: lay.Frame, Dir: at.Dir, Width: in(5), Ahead: 1}}
	b.floor.At = map[int]floor.Aligned{0: at, 1: at}
	for k := range 8 {
		low := in(float64(5 * k))
		b.floor.Runs = append(b.floor.Runs, lay.Run{ID: k, Row: k + 1, Low: low, High: low + in(5), Order: k + 1,
			LeftEnd:  lay.EndRange{Edge: "wall D-A", Reach: 0, Need: in(0.25)},
			RightEnd: lay.EndRange{Edge: "wall B-C", Reach: in(100), Need: in(99.75)}})
	}
	b.floor.Runs = append(b.floor.Runs, lay.Run{ID: 8, Zone: 1, Row: 9, Order: 9})
	b.lay(1, 0, 50, 49.75)
	b.lay(2, 0, 30, 40, 29.75)
	b.lay(3, 0, 45, 54.75)
	return b
}

// lay lays a row from a place on, in inches.
func (b *laidBench) lay(row int, from float64, pieces ...float64) *LaidRow {
	r := LaidRow{Name: b.name(row), Run: row - 1, From: in(from), Told: true}
	for _, l := range pieces {
		r.Pieces = append(r.Pieces, in(l))
	}
	b.floor.Rows = append(b.floor.Rows, r)
	return &b.floor.Rows[len(b.floor.Rows)-1]
}

func (b *laidBench) name(row int) string { return rowName(lay.Run{Row: row}, "")[len("row "):] }

func (b *laidBench) held() []finding.Finding {
	return Laid(b.floor, b.lim, b.stock, tape.Style{Unit: tape.UnitInch, Step: tape.Sixteenth})
}

// laidSlips are single things wrong, each with a finding that it gives.
var laidSlips = []struct {
	name string
	slip func(*laidBench)
	want string // the finding as one line, in part
}{
	{"a joint on its neighbour", func(b *laidBench) { b.floor.Rows[2].Pieces = []tape.Length{in(32), in(67.75)} },
		`stop: joint distance (row 2 and row 3): end joints 2" apart, at 30-3/4" and 32-3/4" from wall D-A; limit at least 6"`},
	{"a joint nearer than preferred", func(b *laidBench) { b.floor.Rows[2].Pieces = []tape.Length{in(37), in(62.75)} },
		`warn: preferred joint distance (row 2 and row 3): end joints 7" apart, at 30-3/4" and 37-3/4" from wall D-A; limit better 8"`},
	{"in line over one row", func(b *laidBench) { b.floor.Rows[2].Pieces = []tape.Length{in(51), in(48.75)} },
		`warn: H-joint (row 1 and row 3): joints 1" out of line with row 2 between, at 50-3/4" and 51-3/4" from wall D-A`},
	{"steps", func(b *laidBench) {
		b.floor.Rows[2].Pieces = []tape.Length{in(20), in(39.5), in(40.25)}
		b.floor.Rows[0].Pieces = []tape.Length{in(40.5), in(59.25)}
	},
		`warn: stair-step (row 1, row 2 and row 3): joints go on by 10-1/2" and 10", from 41-1/4" from wall D-A on`},
	{"a cluster", func(b *laidBench) {
		b.lim.JointMin.Value = 0
		b.floor.Rows[2].Pieces = []tape.Length{in(62.5), in(12), in(25.25)}
	}, `warn: cluster of joints (row 2 and row 3): 3 joints each near the next, at 70-3/4", 63-1/4", 75-1/4" from wall D-A`},
	{"too long", func(b *laidBench) { b.floor.Rows[2].Pieces[1] = in(55.5) },
		`stop: length of a row (row 3 at wall B-C): 1/2" too long, gap 1/4"; limit at least 3/4". All of it is 1/2" too long for both ends: take`},
	{"too short", func(b *laidBench) { b.floor.Rows[2].Pieces[1] = in(54) },
		`stop: length of a row (row 3 at wall B-C): 3/4" too short, gap 1-3/4"; limit at most 1", which what covers it hides. All of it is 1/2" too short`},
	{"too short by less than anybody cuts", func(b *laidBench) { b.floor.Rows[2].Pieces[1] = in(54.6875) },
		`warn: length of a row (row 3 at wall B-C): 1/16" too short, gap 1-1/16"; limit at most 1", which what covers it hides. Slide the row 1/16" to the right: it then fits at both ends.`},
	{"begun too far out", func(b *laidBench) { b.floor.Rows[2].From = in(-0.5) },
		`stop: gap at the start of a row (row 3 at wall D-A): gap 1/4"; limit at least 3/4". Slide the row 1/2" to the right`},
	{"begun too far in", func(b *laidBench) { b.floor.Rows[2].From = in(0.5); b.floor.Rows[2].Pieces[1] = in(54.25) },
		`stop: gap at the start of a row (row 3 at wall D-A): gap 1-1/4"; limit at most 1"`},
	{"a short end", func(b *laidBench) { b.floor.Rows[2].Pieces = []tape.Length{in(5), in(40), in(54.75)} },
		`stop: shortest piece (row 3, piece 1 at wall D-A): 5" long; limit at least 8"`},
	{"longer than any board", func(b *laidBench) { b.floor.Rows[2].Pieces = []tape.Length{in(10), in(89.75)} },
		`stop: length of a piece (row 3, piece 2, which begins 10-3/4" from wall D-A): 89-3/4" long; limit the longest board on the pallet is 84"`},
	{"a tongue in the gap", func(b *laidBench) {
		b.floor.Rows[2].Pieces[1] = in(55)
		b.floor.Rows[2].CutTold = true
	}, `stop: end tongue (row 3 at wall B-C): the end tongue comes to within 1/2"; limit at least 3/4"`},
	{"drift", func(b *laidBench) {
		b.floor.Rows[2].Front = &LaidFront{Read: in(10.25), From: "the front of row 1", Least: in(10), Most: in(10), Rows: 2}
	}, `warn: drift (row 3, tongue edge): 10-1/4" from the front of row 1, 1/4" beyond its place; limit within 1/8" of 10". At this rate ten boards take up 51-1/4" instead of 50"`},
	{"drift from a wall out of parallel", func(b *laidBench) {
		b.floor.Rows[2].Front = &LaidFront{Read: in(15.5), From: "wall A-B", Least: in(15.75), Most: in(16)}
	}, `warn: drift (row 3, tongue edge): 15-1/2" from wall A-B, 1/4" short of its place; limit within 1/8" of 15-3/4" to 16". Read it at both ends`},
	{"a joint between jambs", func(b *laidBench) {
		at := b.floor.At[0]
		for _, y := range []float64{10, 40} {
			at.Edges = append(at.Edges, floor.AlignedEdge{Name: "jamb of doorway hall", Kind: floor.Jamb, From: pt(43, y), To: pt(48, y), Beside: true})
		}
		b.floor.At[0] = at
	}, `warn: joint in a doorway (row 3, doorway hall): a joint 45-3/4" from wall D-A, between the jambs; limit better none there`},
	{"no such row", func(b *laidBench) { b.floor.Rows[0].Name, b.floor.Rows[0].Run = "99", -1 },
		`stop: rows as laid (row 99): the plan has no row of that name. Name it as the row list does: rows 1 to 8`},
	{"named twice", func(b *laidBench) { b.floor.Rows[0] = b.floor.Rows[1] }, `stop: rows as laid (row 2): named twice`},
	{"no pieces", func(b *laidBench) { b.floor.Rows[0].Pieces = nil }, `stop: rows as laid (row 1): no pieces`},
	{"a frame", func(b *laidBench) { b.floor.Rows[0].Run, b.floor.Rows[0].Name = 8, "9" }, `stop: rows as laid (row 9): a board of a frame`},
	{"a row missing between", func(b *laidBench) { b.floor.Rows = slices.Delete(b.floor.Rows, 1, 2) }, `stop: rows between (row 2): not written as laid, though rows on both sides of it are`},
	{"two rows missing between", func(b *laidBench) {
		b.floor.Rows[1].Run, b.floor.Rows[2].Run = 3, 4
		b.floor.Rows[1].Name, b.floor.Rows[2].Name = "4", "5"
	}, `stop: rows between (row 3): not written as laid`},
}

func TestLaidRowsThatKeepAllRules(t *testing.T) {
	fs := newLaidBench(nil).held()
	if len(fs) != 1 || fs[0].String() != `note: rows as laid (row 2 and row 3): 3 rows looked at, 4 joints; the nearest two of neighbouring rows are 15" apart here, at 30-3/4" and 45-3/4" from wall D-A` {
		t.Errorf("found %v", fs)
	}
}

func TestLaidSlips(t *testing.T) {
	tested := map[string]bool{}
	for _, tt := range laidSlips {
		b := newLaidBench(nil)
		tt.slip(b)
		var got []string
		for _, f := range b.held() {
			if f.Level != finding.Note {
				tested[f.Rule] = true
				got = append(got, f.String())
			}
			if f.Level != finding.Note && (f.Where == "" || f.Measured == "" || f.Do == "") {
				t.Errorf("%s: a finding that says too little: %#v", tt.name, f)
			}
		}
		if !slices.ContainsFunc(got, func(s string) bool { return strings.HasPrefix(s, tt.want) }) {
			t.Errorf("%s: found\n%s\nwant\n%s", tt.name, strings.Join(got, "\n"), tt.want)
		}
	}
	for _, r := range laidRules {
		if !tested[r.Name] && r.Name != "joint at what stays" || !strings.HasSuffix(r.Text, ".") {
			t.Errorf("no slip breaks %q, or its text %q is none", r.Name, r.Text)
		}
	}
}

// Where a hearth stands into a row from its side the row is parted in two
// there, and where a pipe stands in the middle of it a joint has to fall.
func TestLaidAtWhatStays(t *testing.T) {
	parted := plane.Region{{pt(0, 0), pt(100, 0), pt(100, 60), pt(0, 60), pt(0, 14), pt(40, 14), pt(40, 11), pt(0, 11)}}
	b := newLaidBench(parted)
	b.floor.Rows[2].Pieces = []tape.Length{in(20), in(79.75)}
	want := `stop: joint at what stays (row 3): a joint 20-3/4" from wall D-A, where the row is parted in two; limit no joint there`
	if !slices.ContainsFunc(b.held(), func(f finding.Finding) bool { return strings.HasPrefix(f.String(), want) }) {
		t.Errorf("found %v, want %s", b.held(), want)
	}
	piped := plane.Region{rc(0, 0, 100, 60), rc(60, 11, 62, 14).Reverse()}
	b = newLaidBench(piped)
	want = `stop: joint at what stays (row 3, piece 2): something that stays lies inside the piece, 60-3/4" to 62-3/4" from wall D-A; limit a joint there`
	if !slices.ContainsFunc(b.held(), func(f finding.Finding) bool { return strings.HasPrefix(f.String(), want) }) {
		t.Errorf("found %v, want %s", b.held(), want)
	}
	b.floor.Rows[2].Pieces = []tape.Length{in(61), in(38.75)}
	for _, f := range b.held() {
		if f.Rule == "joint at what stays" {
			t.Errorf("with a joint at the pipe still found %v", f)
		}
	}
}
