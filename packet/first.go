package packet

import (
	"slices"
	"strings"

	"strake/lay"
	"strake/paper"
	"strake/saw"
)

// first is what of a piece is measured before it is cut, once the row beside it is
// nailed: its planned figure stands in brackets beside an empty box. What is loose ends a
// row at a wall whose gap base and shoe cover: it is marked when the row lies there loose,
// with those of the other rows of its card, for one walk to the saw.
type first struct{ length, rip, notch, loose bool }

func (f first) any() bool { return f.length || f.rip || f.notch || f.loose }

// boxes are what is written into empty boxes, in order.
func (f first) boxes() []string {
	var out []string
	for _, x := range []struct {
		is   bool
		name string
	}{{f.length, "length"}, {f.loose, "loose"}, {f.rip, "rip"}, {f.notch, "notch"}} {
		if x.is {
			out = append(out, x.name)
		}
	}
	return out
}

// first tells what of a piece is measured first: its length where it ends at something
// that is there already and whose joint shows, its rip where it closes a
// floor or starts one, its notches always.
func (d *desk) first(r paper.Row, p paper.Piece) first {
	f := first{length: d.lengthFirst(r, p), rip: p.Cuts.Rip.Done, notch: d.notched(p)}
	f.loose = !f.length && strings.Contains(r.Closes, "cut to measure") && d.lastLaid(r, p, d.zoneOf(p))
	return f
}

// notched tells whether a piece has a notch to be measured: one that can be, and is not
// the mitre of an end at a wall.
func (d *desk) notched(p paper.Piece) bool {
	lo, hi := p.Lay.Outline.Box()
	return slices.ContainsFunc(p.Cuts.Notches, func(n saw.Notch) bool {
		return n.Sawn(d.in.Plan.Job.Unit) && !n.Mitres(hi.Y-lo.Y)
	})
}

// lengthFirst tells whether a piece is cut to length only when its neighbours lie: it
// is cut in place, ends at what stays, or belongs to a frame or meets one.
func (d *desk) lengthFirst(r paper.Row, p paper.Piece) bool {
	z := d.zoneOf(p)
	if p.InPlace || z.Kind == lay.Frame && (p.Sawn[0] || p.Sawn[1]) {
		return true
	}
	for k, e := range []paper.End{r.Left, r.Right} {
		at := 1
		if k == 1 {
			at = len(r.Pieces)
		}
		if p.No == at && p.Sawn[k] && (d.kept[e.Edge] || strings.Contains(e.Edge, "frame")) {
			return true
		}
	}
	return false
}

// lastLaid tells whether a piece ends its row as the row is laid, and is sawn there.
func (d *desk) lastLaid(r paper.Row, p paper.Piece, z lay.Zone) bool {
	if z.TongueRight() {
		return p.No == len(r.Pieces) && p.Sawn[1]
	}
	return p.No == 1 && p.Sawn[0]
}

// zoneOf is the zone that a piece lies in.
func (d *desk) zoneOf(p paper.Piece) lay.Zone {
	l := d.in.Plan.Lay
	for _, r := range l.Runs {
		if r.ID != p.Lay.Run {
			continue
		}
		if i := slices.IndexFunc(l.Zones, func(z lay.Zone) bool { return z.ID == r.Zone }); i >= 0 {
			return l.Zones[i]
		}
	}
	return lay.Zone{}
}

// work is what is done to a piece, planned figures of what is measured first in
// brackets.
func (d *desk) work(r paper.Row, p paper.Piece) []string {
	f := d.first(r, p)
	out := paper.Work(p, d.saw)
	for i, s := range out {
		rip := strings.HasPrefix(s, "rip to") || strings.HasPrefix(s, "taper from")
		switch {
		case rip && f.rip && d.starter(r):
			out[i] = "(" + s + ")" // the head of the row says when
		case rip && f.rip, paper.IsNotch(s) && f.notch:
			out[i] = "MEASURE FIRST (" + s + ")"
		}
	}
	return out
}
