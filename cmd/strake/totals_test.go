package main

import (
	"fmt"
	"maps"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// Totals of every list, worked out again from the corners in plan.json by other means:
// pieces, rows and lengths of rows.csv, each line of cuts.csv, the passes of the blade,
// the boards, the shares that go to waste.
func TestTotalsFromPlanJSON(t *testing.T) {
	cuts := map[string]int{}
	figures := 0
	for _, p := range shipped(t) {
		t.Run(p.name, func(t *testing.T) {
			p.holdRows(t)
			for k, n := range p.holdCuts(t) {
				cuts[k] += n
			}
			p.holdPasses(t)
			figures += p.holdRips(t)
			p.holdSummary(t)
			p.holdFasteners(t)
		})
	}
	for kind, least := range map[string]int{"crosscut": 300, "mitre": 100, "rip": 80, "notch": 50, "tongue off": 250} {
		if cuts[kind] < least {
			t.Errorf("%d cuts of the kind %s in all jobs: too few to tell", cuts[kind], kind)
		}
	}
	if figures < 30 {
		t.Errorf("%d figures of rips held to corners", figures)
	}
}

// nameOf is what a run is called: 12, or 12a where its row lies in parts.
func (p shippedPlan) nameOf(run int) string {
	for _, r := range p.lay.Runs {
		if r.ID == run {
			if r.Part > 0 {
				return fmt.Sprintf("%d%c", r.Row, 'a'+r.Part-1)
			}
			return strconv.Itoa(r.Row)
		}
	}
	return "?"
}

// numberOf is a piece's place in its row, from 1.
func (p shippedPlan) numberOf(q layPiece) int {
	for _, r := range p.lay.Runs {
		if r.ID == q.Run {
			return slices.Index(r.Pieces, q.ID) + 1
		}
	}
	return 0
}

func (p shippedPlan) key(q layPiece) string {
	return fmt.Sprintf("row %s piece %d", p.nameOf(q.Run), p.numberOf(q))
}

func keyOf(line map[string]string) string {
	return "row " + line["row"] + " piece " + line["piece"]
}

func number(t *testing.T, s string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// holdRows holds each piece's length, and each row's.
func (p shippedPlan) holdRows(t *testing.T) {
	t.Helper()
	lines := p.csv(t, "rows.csv")
	if len(lines) != len(p.lay.Pieces) {
		t.Fatalf("%d pieces in rows.csv, plan.json has %d", len(lines), len(p.lay.Pieces))
	}
	by := map[string]map[string]string{}
	for _, l := range lines {
		by[keyOf(l)] = l
	}
	for _, q := range p.lay.Pieces {
		l := by[p.key(q)]
		if l == nil {
			t.Errorf("%s is not in rows.csv", p.key(q))
			continue
		}
		if got, want := number(t, l["length, "+p.unit]), float64(span(q.Outline))*p.tick; math.Abs(got-want) > 0.01 && !p.cornersOff(q) {
			t.Errorf("%s is %.4f %s long, plan.json has %.4f", p.key(q), got, p.unit, want)
		}
		if l["board"] != strconv.Itoa(q.Board+1) {
			t.Errorf("%s is of board %s, plan.json has %d", p.key(q), l["board"], q.Board+1)
		}
		for _, r := range p.lay.Runs {
			if r.ID != q.Run {
				continue
			}
			if got, want := number(t, l["row length, "+p.unit]), float64(span(r.Outline))*p.tick; math.Abs(got-want) > 0.01 {
				t.Errorf("row %s is %.4f %s long, plan.json has %.4f", l["row"], got, p.unit, want)
			}
			if l["order"] != strconv.Itoa(r.Order) {
				t.Errorf("row %s is laid as the %s, plan.json has %d", l["row"], l["order"], r.Order)
			}
		}
	}
}

// cornersOff tells whether both ends of a piece slant and neither long side is as long as
// the piece, so that its length is not that of its box.
func (p shippedPlan) cornersOff(q layPiece) bool {
	c := sawnOf(q, p.lay.Boards[q.Board].Length, p.unit == "in")
	return c.mitred[0] && c.mitred[1]
}

// holdCuts holds the lines of cuts.csv piece by piece: none more, none fewer.
func (p shippedPlan) holdCuts(t *testing.T) map[string]int {
	t.Helper()
	got, all := map[string]map[string]int{}, map[string]int{}
	for _, l := range p.csv(t, "cuts.csv") {
		k := keyOf(l)
		if got[k] == nil {
			got[k] = map[string]int{}
		}
		got[k][l["kind"]]++
		all[l["kind"]]++
	}
	for _, q := range p.lay.Pieces {
		want := sawnOf(q, p.lay.Boards[q.Board].Length, p.unit == "in").lines()
		maps.DeleteFunc(want, func(_ string, n int) bool { return n == 0 })
		if is := got[p.key(q)]; !maps.Equal(is, want) {
			t.Errorf("%s: cuts.csv lists %v, its corners say %v", p.key(q), is, want)
		}
		delete(got, p.key(q))
	}
	if len(got) > 0 {
		t.Errorf("cuts.csv lists cuts of no piece: %v", got)
	}
	return all
}

// passes is how often the blade goes across: a cut that makes the ends of two pieces,
// no farther apart on their board than the kerf of a slanted cut, is one.
func (p shippedPlan) passes() int {
	n := 0
	type cut struct {
		piece int
		high  bool
		slant float64
		at    int64
		taken bool
	}
	of := map[int][]cut{}
	for _, q := range p.lay.Pieces {
		c := sawnOf(q, p.lay.Boards[q.Board].Length, p.unit == "in")
		x0, _, x1, _ := box(q.InBoard)
		for k, sawn := range c.ends {
			if !sawn {
				continue
			}
			high := (k == 1) != q.Turned
			at := x0
			if high {
				at = x1
			}
			of[q.Board] = append(of[q.Board], cut{q.ID, high, c.slants[k], at, false})
			n++
		}
	}
	for _, cs := range of {
		for i := range cs {
			for k := range cs {
				a, b := &cs[i], &cs[k]
				if a.high && !b.high && !a.taken && !b.taken && a.piece != b.piece && math.Abs(a.slant-b.slant) < 1 &&
					b.at-a.at <= 2*p.lay.Kerf && b.at > a.at-203200*7 {
					a.taken, b.taken = true, true
					n--
				}
			}
		}
	}
	return n
}

// holdPasses holds the crosscuts told in the summary and marked in cuts.csv.
func (p shippedPlan) holdPasses(t *testing.T) {
	t.Helper()
	n := 0
	for _, l := range p.csv(t, "cuts.csv") {
		if (l["kind"] == "crosscut" || l["kind"] == "mitre") && !strings.Contains(l["remark"], "already listed") {
			n++
		}
	}
	if want := p.passes(); n != want {
		t.Errorf("%d passes across in cuts.csv, the boards of plan.json take %d", n, want)
	}
	if got := p.said(t, `(\d+) crosscuts?`, true); got != n {
		t.Errorf("the summary says %d crosscuts, cuts.csv lists %d", got, n)
	}
}

// said is a whole number of the summary's line of boards, 0 where it is not told.
func (p shippedPlan) said(t *testing.T, pattern string, may bool) int {
	t.Helper()
	m := regexp.MustCompile(pattern).FindStringSubmatch(p.summary)
	if m == nil {
		if !may {
			t.Errorf("the summary does not say %s", pattern)
		}
		return 0
	}
	return int(number(t, m[1]))
}

// holdRips holds what rips are set to against the corners of pieces with four: as they
// lie on the floor, and for the saw less the joint's air where the tongue is kept.
func (p shippedPlan) holdRips(t *testing.T) int {
	t.Helper()
	held := 0
	for _, l := range p.csv(t, "cuts.csv") {
		if l["kind"] != "rip" {
			continue
		}
		for _, q := range p.lay.Pieces {
			if p.key(q) != keyOf(l) {
				continue
			}
			w, ok := widths(q.Outline)
			if !ok {
				continue
			}
			held++
			air := 0.0
			if q.Behind != "groove" && q.Ahead != "groove" {
				air = p.air(t, q)
			}
			for k, side := range []string{"left", "right"} {
				got := number(t, l["rip on saw "+side+", "+p.unit])
				if want := max(0, float64(w[k])*p.tick-air); math.Abs(got-want) > 0.001 {
					t.Errorf("%s: the saw is set to %.4f %s at its %s end, its corners say %.4f", p.key(q), got, p.unit, side, want)
				}
			}
		}
	}
	return held
}

// air is what the row width is over the face of a board, by the job file.
func (p shippedPlan) air(t *testing.T, q layPiece) float64 {
	t.Helper()
	wide := float64(p.lay.Boards[q.Board].Width) * p.tick
	best := math.Inf(1)
	for _, m := range regexp.MustCompile(`face: *"?(\d+)(?:[- ](\d+)/(\d+))?`).FindAllStringSubmatch(p.job, -1) {
		f := number(t, m[1])
		if m[2] != "" {
			f += number(t, m[2]) / number(t, m[3])
		}
		if d := wide - f; d >= -1e-9 && d < best {
			best = d
		}
	}
	if best > 0.1 && p.unit == "in" || best > 2 {
		t.Fatalf("%s: a row of %.4f, no face in the job", p.key(q), wide)
	}
	return best
}

// widths are those of an outline of four corners with square ends, left and right.
func widths(o []int64) ([2]int64, bool) {
	if len(o) != 8 {
		return [2]int64{}, false
	}
	x0, _, x1, _ := box(o)
	var w [2]int64
	for k, x := range []int64{x0, x1} {
		var ys []int64
		for i := 0; i < 8; i += 2 {
			if o[i] == x {
				ys = append(ys, o[i+1])
			}
		}
		if len(ys) != 2 {
			return w, false
		}
		w[k] = max(ys[0]-ys[1], ys[1]-ys[0])
	}
	return w, true
}

// holdSummary holds the boards, the tongues and the shares of area it tells.
func (p shippedPlan) holdSummary(t *testing.T) {
	t.Helper()
	if got := p.said(t, `(\d+) boards used`, false); got != len(p.lay.Boards) {
		t.Errorf("the summary says %d boards, plan.json has %d", got, len(p.lay.Boards))
	}
	tongues := 0
	for _, q := range p.lay.Pieces {
		tongues += sawnOf(q, p.lay.Boards[q.Board].Length, p.unit == "in").tongues
	}
	if got := p.said(t, `(\d+) tongues? taken off`, true); got != tongues {
		t.Errorf("the summary says %d tongues taken off, the corners %d", got, tongues)
	}
	lost, kept, floor, boards := 0.0, 0.0, 0.0, 0.0
	for _, b := range p.lay.Boards {
		parts := 0.0
		for _, x := range b.Parts {
			a := areaOf(x.Outline)
			parts += a
			switch x.Kind {
			case "piece":
				floor += a
			case "scrap", "kerf":
				lost += a
			default:
				kept += a
			}
		}
		boards += float64(b.Length) * float64(b.Width)
		if whole := float64(b.Length) * float64(b.Width); math.Abs(parts-whole) > 1e-9*whole {
			t.Errorf("board %d: its parts come to %.0f of %.0f square ticks", b.ID+1, parts, whole)
		}
	}
	laid := 0.0
	for _, q := range p.lay.Pieces {
		laid += areaOf(q.Outline)
	}
	if math.Abs(laid-floor) > 1e-9*floor || math.Abs(boards-floor-lost-kept) > 1e-9*boards {
		t.Errorf("pieces take %.0f square ticks on the floor, %.0f in their boards", laid, floor)
	}
	m := regexp.MustCompile(`of the floor ([\d.]+) % scrap and kerf, ([\d.]+) % strips and offcuts`).FindStringSubmatch(p.summary)
	if m == nil {
		t.Fatal("the summary tells no waste")
	}
	for k, want := range []float64{lost, kept} {
		if got := number(t, m[k+1]); math.Abs(got-100*want/floor) > 0.06+0.005*got {
			t.Errorf("the summary says %s %%, the boards of plan.json %.2f %%", m[k+1], 100*want/floor)
		}
	}
}

// holdFasteners holds the boards of each row, and what the list in words adds up to.
func (p shippedPlan) holdFasteners(t *testing.T) {
	t.Helper()
	lines := p.csv(t, "fasteners.csv")
	if len(lines) == 0 {
		return // no kind of fastener is known
	}
	boards := map[string]int{}
	for _, q := range p.lay.Pieces {
		boards[p.nameOf(q.Run)]++
	}
	sums := map[string]int{}
	for _, l := range lines {
		if l["boards"] != strconv.Itoa(boards[l["row"]]) {
			t.Errorf("fasteners.csv: row %s has %s boards, plan.json %d", l["row"], l["boards"], boards[l["row"]])
		}
		for _, k := range []string{"boards", "by nailer", "by hand through the tongue", "through the face"} {
			sums[k] += int(number(t, l[k]))
		}
	}
	if len(lines) != len(p.lay.Runs) {
		t.Errorf("%d rows in fasteners.csv, plan.json has %d", len(lines), len(p.lay.Runs))
	}
	all := regexp.MustCompile(`(?m)^all +(\d+) +(\d+) +(\d+) +(\d+)$`).FindSubmatch(p.files["fasteners.txt"])
	if all == nil {
		t.Fatal("fasteners.txt has no total")
	}
	for k, name := range []string{"boards", "by nailer", "by hand through the tongue", "through the face"} {
		if string(all[k+1]) != strconv.Itoa(sums[name]) {
			t.Errorf("fasteners.txt: %s %s in all, fasteners.csv comes to %d", all[k+1], name, sums[name])
		}
	}
}
