package paper

import (
	"bytes"
	"context"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"strake/jobfile"
	"strake/plan"
	"strake/plane"
	"strake/room"
	"strake/stock"
	"strake/tape"
	"strake/words"
)

// What stands in lines.txt is read here as a person with a tape reads it, and
// taped out again on the walls: nothing of package setout is used.

// tapedJobs are the shipped jobs, and each with its rows turned.
func tapedJobs(t *testing.T) map[string][]byte {
	out := map[string][]byte{}
	var files []string
	for _, g := range []string{"../examples/*.yaml", "../examples/cases/*.yaml"} {
		fs, err := filepath.Glob(g)
		if err != nil || len(fs) < 3 {
			t.Fatalf("%s: %d jobs, %v", g, len(fs), err)
		}
		files = append(files, fs...)
	}
	turns := []int{20, 30, 45, 70}
	if testing.Short() {
		turns = []int{45}
	}
	alone, line := regexp.MustCompile(`(?m)^wishes: \{.*\}`), regexp.MustCompile(`(?m)^  rows_along: .*`)
	for _, f := range files {
		data, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		name := filepath.Base(f)
		out[name] = data
		for _, a := range turns {
			turned := fmt.Sprintf("turned_by: %d", a)
			out[fmt.Sprintf("%s turned by %d", name, a)] = line.ReplaceAll(alone.ReplaceAll(data, []byte("wishes: {"+turned+"}")), []byte("  "+turned))
		}
		if name == "ferry-parlour.yaml" {
			for _, b := range []string{"none", "all"} {
				out[name+" backwards "+b] = line.ReplaceAll(data, []byte("  rows_along: A-B\n  backwards: "+b))
			}
		}
	}
	return out
}

// taped is a floor to tape things out on.
type taped struct {
	t    *testing.T
	name string
	plan plan.Plan
	half float64 // half the step that distances along walls are printed to, mm
	far  float64 // half the step of those across the room
}

func TestLinesByTheTape(t *testing.T) {
	marks, doors, sets := 0, 0, 0
	for name, data := range tapedJobs(t) {
		j, _, err := jobfile.ReadJob(name, data)
		if err != nil {
			t.Fatal(err)
		}
		j.Boards.Known = stock.Unknown // lines keep to rows, whatever their boards
		p := plan.MakeWithin(context.Background(), j, 0)
		var b bytes.Buffer
		if err := Lines(&b, p); err != nil {
			t.Fatal(err)
		}
		f := taped{t: t, name: name, plan: p, half: 25.4 / 64, far: 25.4 / 32}
		if !p.Job.Unit.Imperial() {
			f.half, f.far = 0.25, 0.5
		}
		m, d, s := f.read(b.String())
		marks, doors, sets = marks+m, doors+d, sets+s
		if l, ok := words.Line(p); !ok || !regexp.MustCompile(`row `+strings.TrimRight(l.Row, "abcdefgh")+`[a-h]? start`).MatchString(b.String()) {
			t.Errorf("%s: the working line is that of row %s, which is not marked", name, l.Row)
		}
		if len(p.Built.Doorways) != d {
			t.Errorf("%s: %d doorways, %d told", name, len(p.Built.Doorways), d)
		}
	}
	if marks < 500 || doors < 20 || sets < 5 {
		t.Errorf("only %d marks, %d doorways, %d rows set from afar read", marks, doors, sets)
	}
}

var (
	rowHead  = regexp.MustCompile(`^row (\d+)([a-z]*) (start)? *(.*)$`)
	markWant = regexp.MustCompile(`^(.+?) from (.+), (on .+|in the opening of .+); check (.+?) from (.+)$`)
	setWant  = regexp.MustCompile(`^row (\d+), with none to go on from, is set by this line: its front lies (.+) (behind|ahead of) it$`)
	doorOver = regexp.MustCompile(`^\[ \] (.+): the front of row (\d+) lies (.+) from the jamb nearer to (\w+) on the (?:near )?face of the wall, (.+) (on the far face|where the floor ends); check (.+) from the other jamb on the (?:near )?face of the wall$`)
	doorPast = regexp.MustCompile(`^\[ \] (.+): the front of row (\d+) lies along the opening; measured from the face of the wall: (.+) (before|in from) it at the jamb nearer to (\w+), (.+) (before|in from) it at the one nearer to (\w+)$`)
)

// read goes through the list; it counts marks, doorways and rows set from afar.
func (f taped) read(text string) (marks, doors, sets int) {
	var paras []string // each with the white it began with
	for _, l := range strings.Split(text, "\n") {
		in := len(l) - len(strings.TrimLeft(l, " "))
		if n := len(paras) - 1; in >= 24 || in == 6 && n >= 0 && strings.HasPrefix(paras[n], "  [ ]") {
			paras[n] += " " + strings.TrimSpace(l)
			continue
		}
		paras = append(paras, l)
	}
	where, row, part := "", 0, ""
	for _, l := range paras {
		body := strings.TrimSpace(l)
		switch {
		case strings.HasPrefix(l, "Story stick"):
			return
		case l != "" && l[0] != ' ':
			where = l
		case where == "Through the doorways" && body != "":
			f.door(body)
			doors++
		case strings.HasPrefix(l, "  [ ] row "):
			m := rowHead.FindStringSubmatch(strings.TrimPrefix(body, "[ ] "))
			row, part = number(f.t, m[1]), m[2]
			f.mark(where, row, part, m[4])
			marks++
		case strings.HasPrefix(l, strings.Repeat(" ", 20)) && setWant.MatchString(body):
			f.set(row, setWant.FindStringSubmatch(body))
			sets++
		case strings.HasPrefix(l, strings.Repeat(" ", 20)):
			f.mark(where, row, part, body)
			marks++
		}
	}
	f.t.Errorf("%s: no story stick", f.name)
	return
}

func number(t *testing.T, s string) int {
	n, err := strconv.Atoi(s)
	if err != nil {
		t.Fatal(err)
	}
	return n
}

// taken reads a length as printed: 5' 4-3/16", 58-13/32", 847.5 mm.
func taken(t *testing.T, s string) float64 {
	if v, ok := strings.CutSuffix(s, " mm"); ok {
		x, err := strconv.ParseFloat(v, 64)
		if err != nil {
			t.Fatal(err)
		}
		return x
	}
	m := regexp.MustCompile(`^(?:(\d+)')? ?(?:(\d+)(?:-(\d+)/(\d+))?"|(\d+)/(\d+)")?$`).FindStringSubmatch(s)
	if m == nil {
		t.Fatalf("%q is no length", s)
	}
	n := func(i int) float64 { v, _ := strconv.ParseFloat("0"+m[i], 64); return v }
	in := 12*n(1) + n(2)
	if m[3] != "" {
		in += n(3) / n(4)
	}
	if m[5] != "" {
		in += n(5) / n(6)
	}
	return in * 25.4
}

// mark tapes a mark out: along the wall or side from the place named, whichever
// way the check says, and holds it against the front of its row.
func (f taped) mark(where string, row int, part, s string) {
	m := markWant.FindStringSubmatch(s)
	if m == nil {
		f.t.Errorf("%s row %d: %q is no mark with a check", f.name, row, s)
		return
	}
	at, check := taken(f.t, m[1]), taken(f.t, m[4])
	from, to := f.place(where, m[2]), f.place(where, m[5])
	var spots []plane.XY
	for _, u := range f.ways(where, m[2], m[3]) {
		foot, h := from, 0.0
		if w, ok := strings.CutPrefix(m[3], "on wall "); ok { // a corner of what stays stands a little off the wall
			a, _, _ := strings.Cut(w, "-")
			h = u.Cross(f.plan.Built.At[a].Sub(from))
			foot = from.Add(u.Left().Times(h))
		}
		spots = append(spots, foot.Add(u.Times(math.Sqrt(max(0, at*at-h*h)))))
	}
	best, off := plane.XY{}, math.Inf(1)
	for _, q := range spots {
		if d := math.Abs(q.Sub(to).Len() - check); d < off {
			best, off = q, d
		}
	}
	bow := f.bow(m[3])
	if off > f.half+f.far+0.02+bow {
		f.t.Errorf("%s row %d: %q: the check is off by %.2f mm", f.name, row, s, off)
	}
	if d := f.offRow(row, part, best); d > f.half+0.02+bow {
		f.t.Errorf("%s row %d: %q lies %.2f mm off the front of the row", f.name, row, s, d)
	}
}

// bow is how much a wall bows: places are taped here along its straight line.
func (f taped) bow(on string) float64 {
	most := 0.0
	for _, r := range f.plan.Built.Rooms {
		for _, b := range r.Bows {
			if on == "on wall "+b.Wall.String() {
				most = max(most, b.Out.Abs().Millimetres())
			}
		}
	}
	return most
}

// offRow is how far a place lies from the front of a row, mm.
func (f taped) offRow(row int, part string, at plane.XY) float64 {
	best := math.Inf(1)
	for _, z := range f.plan.AllFields() {
		u := plane.XY(z.Layout.Dir).Unit()
		for _, r := range z.Layout.Runs {
			front := r.High
			if r.Ahead < 0 {
				front = r.Low
			}
			if r.Row == row && (part == "" || words.RowPart(r.Row, r.Part) == fmt.Sprint(row)+part) {
				best = min(best, math.Abs(u.Cross(at)-front.Millimetres()))
			}
		}
	}
	return best
}

// wall gives the two corners of a wall.
func (f taped) wall(w room.Wall) (a, b plane.XY) { return f.plan.Built.At[w[0]], f.plan.Built.At[w[1]] }

// along is the place on a wall so far from one of its corners.
func (f taped) along(w room.Wall, from string, d tape.Length) plane.XY {
	a, b := f.wall(w)
	if from != w[0] {
		a, b = b, a
	}
	return a.Add(b.Sub(a).Unit().Times(d.Millimetres()))
}

// jambs are those of the doorway named in the room named, with the wall.
func (f taped) jambs(where, name string) (w room.Wall, near, far plane.XY) {
	for _, d := range f.plan.Built.Doorways {
		if d.Name != name {
			continue
		}
		for _, r := range f.plan.Built.Rooms {
			has := func(w room.Wall) bool { return strings.Contains(" "+strings.Join(r.Corners, " ")+" ", " "+w[0]+" ") }
			if r.Name == where && has(d.Wall) {
				return d.Wall, f.along(d.Wall, d.From, d.At), f.along(d.Wall, d.From, d.At+d.Width)
			}
			if r.Name == where && d.Beyond == room.BeyondRoom && has(d.OtherWall) {
				return d.OtherWall, f.along(d.OtherWall, d.OtherFrom, d.OtherAt), f.along(d.OtherWall, d.OtherFrom, d.OtherAt+d.Width)
			}
		}
	}
	f.t.Fatalf("%s: no doorway %q in %s", f.name, name, where)
	return
}

// stay is the outline of something that stays: its ends nearer to each corner of
// its wall, at the wall and away from it.
func (f taped) stay(s room.Stay, corner string, away bool) plane.XY {
	a, b := f.wall(s.Wall)
	u := b.Sub(a).Unit()
	in := u.Left()
	for _, r := range f.plan.Built.Rooms { // the room lies on the left of a wall run round counter-clockwise
		var area float64
		for i, c := range r.Corners {
			area += f.plan.Built.At[c].Cross(f.plan.Built.At[r.Corners[(i+1)%len(r.Corners)]])
		}
		for i, c := range r.Corners {
			n := r.Corners[(i+1)%len(r.Corners)]
			if (c == s.Wall[0] && n == s.Wall[1]) != (area > 0) && (c == s.Wall[0] && n == s.Wall[1] || c == s.Wall[1] && n == s.Wall[0]) {
				in = u.Left().Times(-1)
			}
		}
	}
	near, far := f.along(s.Wall, s.From, s.At), f.along(s.Wall, s.From, s.At+s.Width)
	q := near
	if corner != s.From {
		q = far
	}
	off := s.Off
	if away {
		off += s.Depth
	}
	return q.Add(in.Times(off.Millimetres()))
}

// place is what a name stands for: "C", "hall door, jamb nearer B", "hearth,
// front corner nearer F".
func (f taped) place(where, name string) plane.XY {
	if at, ok := f.plan.Built.At[name]; ok {
		return at
	}
	thing, which, _ := strings.Cut(name, ", ")
	fields := strings.Fields(which)
	corner := fields[len(fields)-1]
	if strings.HasPrefix(which, "jamb") {
		_, near, far := f.jambs(where, thing)
		if at := f.plan.Built.At[corner]; at.Sub(far).Len() < at.Sub(near).Len() {
			return far
		}
		return near
	}
	for _, s := range f.plan.Built.Stays {
		if s.Name == thing {
			return f.stay(s, corner, strings.HasPrefix(which, "front") || strings.HasPrefix(which, "corner away"))
		}
	}
	f.t.Fatalf("%s: what is %q?", f.name, name)
	return plane.XY{}
}

// ways are the directions that a tape may be pulled from a place along what a
// mark lies on.
func (f taped) ways(where, from, on string) []plane.XY {
	if s, ok := strings.CutPrefix(on, "on "); ok && !strings.HasPrefix(s, "wall ") {
		thing, toward, ok := strings.Cut(s, " toward its ")
		if !ok {
			f.t.Fatalf("%s: %q does not say which way", f.name, on)
		}
		return []plane.XY{f.place(where, thing+", "+toward).Sub(f.place(where, from)).Unit()}
	}
	thing, which, _ := strings.Cut(from, ", ")
	var w room.Wall
	opening := strings.HasPrefix(on, "in the opening of ")
	if opening {
		w, _, _ = f.jambs(where, strings.TrimPrefix(on, "in the opening of "))
	} else {
		a, b, _ := strings.Cut(strings.TrimPrefix(on, "on wall "), "-")
		w = room.Wall{a, b}
	}
	a, b := f.wall(w)
	u := b.Sub(a).Unit()
	switch from {
	case w[0]:
		return []plane.XY{u}
	case w[1]:
		return []plane.XY{u.Times(-1)}
	}
	if strings.HasPrefix(which, "jamb") { // into the opening, or along the wall beside it
		_, near, far := f.jambs(where, thing)
		if f.place(where, from) == far {
			near, far = far, near
		}
		in := far.Sub(near).Unit()
		if !opening {
			in = in.Times(-1)
		}
		return []plane.XY{in}
	}
	var out []plane.XY
	for _, u := range []plane.XY{u, u.Times(-1)} { // not behind what stands there
		behind := false
		for _, s := range f.plan.Built.Stays {
			behind = behind || s.Name == thing && f.under(s, f.place(where, from).Add(u.Times(20)))
		}
		if !behind {
			out = append(out, u)
		}
	}
	return out
}

// under tells whether a place lies under something that stays, or on its side.
func (f taped) under(s room.Stay, q plane.XY) bool {
	a, b, c := f.stay(s, s.Wall[0], false), f.stay(s, s.Wall[1], false), f.stay(s, s.Wall[0], true)
	u, v := b.Sub(a), c.Sub(a)
	x, y := q.Sub(a).Dot(u)/u.Dot(u), q.Sub(a).Dot(v)/v.Dot(v)
	nx, ny := 1/u.Len(), 1/v.Len() // within a millimetre
	return x > -nx && x < 1+nx && y > -ny && y < 1+ny
}

// set holds the distance of a row that is set from afar against the two fronts.
func (f taped) set(by int, m []string) {
	back := taken(f.t, m[2])
	for _, z := range f.plan.AllFields() {
		for _, r := range z.Layout.Runs {
			for _, q := range z.Layout.Runs {
				if r.Row == number(f.t, m[1]) && q.Row == by {
					d := (q.Front() - r.Front()).Millimetres() * float64(r.Ahead)
					if (d > 0) == (m[3] == "behind") && math.Abs(math.Abs(d)-back) < f.half+0.02 {
						return
					}
				}
			}
		}
	}
	f.t.Errorf("%s: row %d does not lie %s from row %s", f.name, by, m[2], m[1])
}

// door tapes out a line through a doorway, or past it.
func (f taped) door(s string) {
	over, past := doorOver.FindStringSubmatch(s), doorPast.FindStringSubmatch(s)
	var name string
	var row int
	switch {
	case over != nil:
		name, row = over[1], number(f.t, over[2])
	case past != nil:
		name, row = past[1], number(f.t, past[2])
	default:
		f.t.Errorf("%s: %q is no line through a doorway", f.name, s)
		return
	}
	for _, d := range f.plan.Built.Doorways {
		if d.Name != name {
			continue
		}
		near := [2]plane.XY{f.along(d.Wall, d.From, d.At), f.along(d.Wall, d.From, d.At+d.Width)}
		var far [2]plane.XY
		if d.Beyond == room.BeyondRoom {
			far = [2]plane.XY{f.along(d.OtherWall, d.OtherFrom, d.OtherAt), f.along(d.OtherWall, d.OtherFrom, d.OtherAt+d.Width)}
			if far[0].Sub(near[0]).Len() > far[1].Sub(near[0]).Len() {
				far[0], far[1] = far[1], far[0]
			}
		} else {
			_, ccw, _ := f.plan.Built.FindWall(d.Wall)
			out := f.plan.Built.At[ccw[1]].Sub(f.plan.Built.At[ccw[0]]).Unit().Left().Times(-d.Ends.Millimetres())
			far = [2]plane.XY{near[0].Add(out), near[1].Add(out)}
		}
		var spots []plane.XY
		if over != nil {
			if over[4] != d.From {
				f.t.Errorf("%s: %q goes by another corner than the job", f.name, s)
			}
			spots = append(spots, near[0].Add(near[1].Sub(near[0]).Unit().Times(taken(f.t, over[3]))),
				far[0].Add(far[1].Sub(far[0]).Unit().Times(taken(f.t, over[5]))))
			if rest := near[1].Sub(near[0]).Len() - taken(f.t, over[3]) - taken(f.t, over[7]); math.Abs(rest) > 2*f.half+0.02 {
				f.t.Errorf("%s: %q: the jambs are %.2f mm apart from that", f.name, s, rest)
			}
		} else {
			for k := range 2 {
				v := taken(f.t, past[3+3*k])
				if past[4+3*k] == "before" {
					v = -v
				}
				spots = append(spots, near[k].Add(far[k].Sub(near[k]).Unit().Times(v)))
			}
		}
		for _, q := range spots {
			if off := f.offRow(row, "", q); off > f.half+0.02 {
				f.t.Errorf("%s: %q lies %.2f mm off the front of the row", f.name, s, off)
			}
		}
	}
}
