package survey

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"strake/finding"
	"strake/plane"
	"strake/tape"
)

// rings names rooms whose list of corners is no ring.
func (r Result) rings() []finding.Finding {
	var out []finding.Finding
	if len(r.net.sketch.Rooms) == 0 {
		out = append(out, finding.Finding{Level: finding.Stop, Rule: "corners of a room", Where: "the job", Measured: "no room", Limit: "one at least", Do: "Sketch a room and name its corners."})
	}
	owner := map[string]bool{}
	for _, rm := range r.net.sketch.Rooms {
		f := finding.Finding{Level: finding.Stop, Rule: "corners of a room", Where: rm.Name, Do: "Give every corner of the job a name of its own, at least three to a room."}
		if len(rm.Corners) < 3 {
			f.Measured, f.Limit = fmt.Sprintf("%d corners", len(rm.Corners)), "3 at least"
			out = append(out, f)
		}
		for _, c := range rm.Corners {
			if owner[c] {
				f.Measured, f.Limit = "the name "+c+" stands for two corners", "one corner a name"
				out = append(out, f)
			}
			owner[c] = true
		}
	}
	return out
}

// twice names corners that lie on one spot.
func (r Result) twice(style tape.Style) []finding.Finding {
	var out []finding.Finding
	names := slices.Sorted(keys(r.net.index))
	for i, a := range names {
		for _, b := range names[:i] {
			if d := r.Built.At[a].Sub(r.Built.At[b]).Len(); d < onSpot {
				out = append(out, finding.Finding{Level: finding.Stop, Rule: "corners apart", Where: b + ", " + a,
					Measured: style.Of(ticks(d)) + " apart", Limit: style.Of(ticks(onSpot)) + " at least",
					Do: "Two corners cannot be on one spot. Measure " + b + "-" + a + ", or leave one of them out."})
			}
		}
	}
	return out
}

// onSpot is how near (mm) two corners are one: no wall is shorter.
const onSpot = 10

func keys(m map[string]int) func(yield func(string) bool) {
	return func(yield func(string) bool) {
		for k := range m {
			if !yield(k) {
				return
			}
		}
	}
}

// detours names readings that are longer than the way round by other readings:
// the straight line is the shortest, so one of them is wrong.
func (r Result) detours(rs []Reading, style tape.Style) []finding.Finding {
	names, dist, via := r.routes(rs)
	var out []finding.Finding
	for i, v := range rs {
		if v.Kind != Between || !r.net.usable(v) {
			continue
		}
		a, b := slices.Index(names, v.From), slices.Index(names, v.To)
		long := v.Value.Millimetres() - dist[a][b]
		if long <= 4*r.trust(v)*math.Sqrt2+1 || via[a][b] < 0 {
			continue
		}
		legs := asWritten(leg(names, via, a, b), rs)
		out = append(out, finding.Finding{Level: finding.Stop, Rule: "readings that can close", Where: strings.Join(append([]string{rs[i].Name()}, legs...), ", "),
			Measured: fmt.Sprintf("%s is %s, and the way round by %s is %s shorter", v.Name(), style.Of(v.Value), strings.Join(legs, " and "), style.Of(ticks(long))),
			Limit:    "a straight line is the shortest way",
			Do:       "One of these was read wrong or written against the wrong corners. Measure " + v.Name() + " first, then the others."})
	}
	return out
}

// trust is the deviation of a reading, mm.
func (r Result) trust(v Reading) float64 { return r.net.trust(v, r.model) }

// routes are the shortest ways between all named places by readings alone, and
// the place each leads through (-1: straight).
func (r Result) routes(rs []Reading) (names []string, dist [][]float64, via [][]int) {
	at := map[string]int{}
	for _, v := range rs {
		for _, name := range []string{v.From, v.To} {
			if _, ok := at[name]; !ok && v.Kind == Between && r.net.usable(v) {
				at[name] = len(names)
				names = append(names, name)
			}
		}
	}
	n := len(names)
	dist, via = make([][]float64, n), make([][]int, n)
	for i := range n {
		dist[i], via[i] = make([]float64, n), make([]int, n)
		for j := range n {
			dist[i][j], via[i][j] = math.Inf(1), -1
		}
	}
	for _, v := range rs {
		if v.Kind == Between && r.net.usable(v) {
			a, b := at[v.From], at[v.To]
			d := math.Min(dist[a][b], v.Value.Millimetres())
			dist[a][b], dist[b][a] = d, d
		}
	}
	shorten(dist, via)
	return names, dist, via
}

// shorten is the method of Floyd and Warshall.
func shorten(dist [][]float64, via [][]int) {
	for k := range dist {
		for i := range dist {
			for j := range dist {
				if d := dist[i][k] + dist[k][j]; i != j && k != i && k != j && d < dist[i][j]-1e-9 {
					dist[i][j], via[i][j] = d, k
				}
			}
		}
	}
}

// asWritten names legs as their readings do: C-A for A-C.
func asWritten(legs []string, rs []Reading) []string {
	for i, l := range legs {
		for _, v := range rs {
			if v.Kind == Between && v.To+"-"+v.From == l {
				legs[i] = v.Name()
			}
		}
	}
	return legs
}

func leg(names []string, via [][]int, a, b int) []string {
	if k := via[a][b]; k >= 0 {
		return append(leg(names, via, a, k), leg(names, via, k, b)...)
	}
	return []string{names[a] + "-" + names[b]}
}

// loose names walls whose length nothing fixes, square corners or not.
func (r Result) loose(rs []Reading, style tape.Style) []finding.Finding {
	var walls []string
	for _, rm := range r.Built.Rooms {
		ring := rm.Ring()
		for i, c := range ring {
			d := ring[(i+1)%len(ring)]
			if c != d && math.IsInf(r.DistanceSD(c, d), 1) {
				walls = append(walls, c+"-"+d)
			}
		}
	}
	walls = append(walls, r.looseStays()...)
	if len(walls) == 0 {
		return nil
	}
	return []finding.Finding{{Level: finding.Stop, Rule: "readings that fix the shape", Where: strings.Join(walls, ", "),
		Measured: fmt.Sprintf("no reading fixes these, even with square corners taken for granted (%d readings)", len(rs)),
		Do:       "Measure " + r.firstLoose(rs, walls) + " next."}}
}

// looseStays names what stays by corners that nothing places.
func (r Result) looseStays() []string {
	var out []string
	first := ""
	if len(r.net.sketch.Rooms) > 0 && len(r.net.sketch.Rooms[0].Corners) > 0 {
		first = r.net.sketch.Rooms[0].Corners[0]
	}
	for _, st := range r.net.sketch.Stays {
		for _, c := range st.Corners {
			if first != "" && c != first && math.IsInf(r.SD(func(at func(string) plane.XY) float64 { return at(c).X + 0.618*at(c).Y }), 1) {
				out = append(out, first+"-"+c)
				break
			}
		}
	}
	return out
}

// firstLoose is the wall, not read yet and with nothing in the way, to measure
// first.
func (r Result) firstLoose(rs []Reading, walls []string) string {
	for _, w := range walls {
		a, b, _ := strings.Cut(w, "-")
		if r.inTheWay(r.Built.At[a], r.Built.At[b]) == "" && !slices.ContainsFunc(rs, func(v Reading) bool { return v.From+"-"+v.To == w || v.To+"-"+v.From == w }) {
			return w
		}
	}
	return walls[0]
}

// noShape says that no shape fits, and which readings pull most.
func (r Result) noShape(rs []Reading, rep Report, style tape.Style) []finding.Finding {
	f := finding.Finding{Level: finding.Stop, Rule: "readings that close", Measured: "no shape fits these readings",
		Do: "Look for a reading written against the wrong corners, and check which corners stand into the room."}
	var names []string
	for _, k := range worstFirst(r.Residuals, r.Deviation) {
		if len(names) < 3 && math.Abs(r.Residuals[k]) > 3*r.Deviation[k] {
			names = append(names, rs[k].Name())
		}
	}
	if len(names) > 0 {
		f.Where = strings.Join(names, ", ")
		f.Do = "Measure " + names[0] + " again first. " + f.Do
	}
	return []finding.Finding{f}
}

func worstFirst(v, sd []float64) []int {
	var out []int
	for i := range v {
		if !math.IsNaN(v[i]) && sd[i] > 0 {
			out = append(out, i)
		}
	}
	slices.SortStableFunc(out, func(a, b int) int {
		x, y := math.Abs(v[a])/sd[a], math.Abs(v[b])/sd[b]
		switch {
		case x > y:
			return -1
		case x < y:
			return 1
		}
		return 0
	})
	return out
}
