package row

import (
	"fmt"
	"math"
	"slices"

	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// Continuous asks that rows go on through a doorway without a break.
type Continuous struct {
	Doorway string // empty: no such wish
	From    string // the room or doorway, as the job names it
	Pinned  bool   // kept even where it breaks a limit
}

// continuousBasis takes the direction from the doorway that rows are to go on
// through: always where that is pinned, else where nothing else gives one.
func continuousBasis(b room.Built, w Wishes) (basis, bool) {
	c := w.Continuous
	if c.Doorway == "" || !c.Pinned && (w.Direction != (room.Wall{}) || w.RunThrough != "" || w.Between != [2]room.Wall{} || w.TaperAt != (room.Wall{})) {
		return basis{}, false
	}
	k := slices.IndexFunc(b.Doorways, func(d room.Doorway) bool { return d.Name == c.Doorway })
	if k < 0 {
		return basis{}, false
	}
	_, ok := wallDir(b, b.Doorways[k].Wall)
	return basis{wall: b.Doorways[k].Wall, across: true, why: fmt.Sprintf("rows through %s, so that they go on from %s", room.DoorwaySaid(c.Doorway), c.From)}, ok
}

// weighed drops a soft wish that gives the direction, rows that go on or a wall
// that takes the taper, where it leaves a sliver that the direction without it
// would not. lost is what it would have left.
func (p Place) weighed() (q Place, lost string) {
	q = p
	b, ok := continuousBasis(p.Built, p.Wishes)
	switch {
	case ok && !p.Wishes.Continuous.Pinned:
		q.Wishes.Continuous = Continuous{}
	case !ok && p.Wishes.TaperSoft && p.Wishes.TaperAt != room.Wall{}:
		b.why = fmt.Sprintf("all of the taper at wall %s", p.Wishes.TaperAt)
		q.Wishes.TaperAt, q.Wishes.TaperSoft = room.Wall{}, false
	default:
		return p, ""
	}
	with, free := p.narrowest(p.Wishes), q.narrowest(q.Wishes)
	if limit := p.Limits.NarrowestRip.Value; with.Narrowest >= limit || free.Narrowest < limit {
		return p, ""
	}
	fine := p.Style
	fine.Step = p.Style.Step / 2
	return q, fmt.Sprintf("%s would leave a rip of %s at %s", b.why, fine.Of(with.Narrowest), with.At)
}

// narrowest is the score of the first way that some wishes give.
func (p Place) narrowest(w Wishes) Score {
	p.Wishes = w
	d, from, fs := direction(p.Built, w)
	return p.scoreOf(p.fields(d, from, fs), room.Wall{})
}

// goesOn tells whether the rows of fields go on through a doorway, else why not.
func goesOn(b room.Built, fs []Field, name string) (why string, ok bool) {
	k := slices.IndexFunc(b.Doorways, func(d room.Doorway) bool { return d.Name == name })
	if k < 0 {
		return "there is no such doorway", false
	}
	d := b.Doorways[k]
	s, e, ok1 := floor.Jambs(b, d.Wall, d.From, d.At, d.Width)
	farE, farS, ok2 := floor.Jambs(b, d.OtherWall, d.OtherFrom, d.OtherAt, d.Width)
	if !ok1 || !ok2 {
		return "no room lies beyond it", false
	}
	seam := floor.Seam{Doorway: d.Name}.Name()
	for _, f := range fs {
		if slices.ContainsFunc(f.Part.Edges, func(e floor.AlignedEdge) bool { return e.Name == seam }) {
			return "rows turn, or a header lies, in " + room.DoorwaySaid(name), false
		}
	}
	for _, f := range fs {
		if f.Kind == lay.Field && f.passes(s, e, farS, farE) {
			return "", true
		}
	}
	for _, f := range fs {
		if w, ok := wallDir(b, d.Wall); ok && f.Kind == lay.Field && math.Abs(plane.XY(w).Dot(plane.XY(f.Layout.Dir))) > math.Sqrt2/2 {
			return "rows lie along the opening of " + room.DoorwaySaid(name), false
		}
	}
	return "no row fits through " + room.DoorwaySaid(name) + " whole", false
}

// passes tells whether a run of a field lies in an opening from face to face.
func (f Field) passes(s, e, farS, farE plane.XY) bool {
	d := f.Layout.Dir
	near, far := d.ToRow(s.Add(e).Times(0.5)), d.ToRow(farS.Add(farE).Times(0.5))
	if (far.X - near.X).Abs() < (far.Y - near.Y).Abs() {
		return false // rows lie along it
	}
	jambs := plane.Ring{d.ToRow(s), d.ToRow(e), d.ToRow(farS), d.ToRow(farE)}
	lo, hi := jambs.Box()
	return slices.ContainsFunc(f.Layout.Runs, func(r Run) bool {
		return r.High > lo.Y && r.Low < hi.Y && r.Left.Reach < min(near.X, far.X)-tape.Inch && r.Right.Reach > max(near.X, far.X)+tape.Inch
	})
}

// continuousFinding tells whether the wish for rows that go on is kept, or that
// the one for the taper was dropped.
func (p Place) continuousFinding(fs []Field, lost string) []finding.Finding {
	c := p.Wishes.Continuous
	if c.Doorway == "" {
		if lost == "" {
			return nil
		}
		return []finding.Finding{{Level: finding.Warn, Rule: "taper at a wall", Where: "wall " + p.Wishes.TaperAt.String(), Measured: lost,
			Do: "The wish is not kept: it would leave a sliver. Pin it to have it all the same."}}
	}
	f := finding.Finding{Level: finding.Note, Rule: "continuous rows", Where: "from " + c.From, Do: "The wish is kept."}
	why, ok := goesOn(p.Built, fs, c.Doorway)
	if ok {
		f.Measured = "rows go on through " + room.DoorwaySaid(c.Doorway) + " without a break"
		return []finding.Finding{f}
	}
	f.Level, f.Measured, f.Do = finding.Warn, why, "Wish for a direction square to the wall of that doorway, or let its rows go through."
	if lost != "" {
		f.Measured, f.Do = lost, "The wish is not kept: it would leave a sliver. Pin it to have it all the same."
	}
	return []finding.Finding{f}
}

// goesOn notes whether the rows of a candidate go on where that is wished.
func (s *Score) goesOn(b room.Built, fs []Field, c Continuous) {
	if c.Doorway != "" {
		s.From = c.From
		s.Breaks, _ = goesOn(b, fs, c.Doorway)
	}
}
