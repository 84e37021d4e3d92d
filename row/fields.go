package row

import (
	"maps"
	"slices"

	"strake/finding"
	"strake/floor"
	"strake/lay"
	"strake/limits"
	"strake/plane"
	"strake/room"
	"strake/tape"
)

// Change is what the rows do at a doorway between two rooms of the floor.
type Change string

// The ways.
const (
	Through Change = ""       // rows go on
	Turn    Change = "turn"   // beyond it rows lie along the doorway; their first row meets the ends of these
	AHeader Change = "header" // a board across it parts two fields, each with rows of its own
)

// Field is a part of the floor whose rows share one direction, or a header.
type Field struct {
	Kind    lay.ZoneKind
	Rooms   []string
	Name    string // "rooms hall, study", "header in doorway study"; empty: all of the floor
	Layout  Layout
	Part    floor.Aligned // its own share of the floor: rows and racking start from it
	Aligned floor.Aligned // all of the floor in its frame; Layout.Rips and Odd point into it
}

// Place is where rows are laid out, and how.
type Place struct {
	Floor   floor.Floor
	Built   room.Built
	Trim    floor.Trim
	Pitch   tape.Length
	Face    tape.Length // a header is so wide
	Longest tape.Length // the longest board; 0 not known
	// Pattern is the widths of the rows in turn, over and over; none: all are
	// Pitch. Fields that part at doorways, headers and frames are for rows of
	// one width.
	Pattern []tape.Length
	Limits  limits.Limits
	Wishes  Wishes
	Style   tape.Style

	whole map[plane.Dir]floor.Aligned // the floor in the directions tried so far; nil: not kept
}

// widths are those of the rows, over and over.
func (p Place) widths() []tape.Length { return lay.CoursesOf(0, p.Pitch, p.Pattern).Widths }

// turned is the whole floor in the frame of a direction: most ways of laying the
// rows that are compared share a few.
func (p Place) turned(d plane.Dir) floor.Aligned {
	if a, ok := p.whole[d]; ok {
		return a
	}
	a := p.Floor.In(d)
	if p.whole != nil {
		p.whole[d] = a
	}
	return a
}

// Fields lays out all rows: one field for the whole floor, or several where
// the wishes part it at doorways. The first is the one that gives the floor
// its direction. A change that cannot be made at a doorway is reported, and
// rows go on through it.
func Fields(p Place) []Field {
	q, lost := p.weighed()
	d, from, fs := direction(q.Built, q.Wishes)
	out := q.fields(d, from, fs)
	out[0].Layout.Findings = append(out[0].Layout.Findings, p.continuousFinding(out, lost)...)
	out[0].Layout.Findings = append(out[0].Layout.Findings, q.lostFindings(d, out)...)
	q.leaveOut(d, out)
	tellOnce(out)
	return out
}

// tellOnce keeps of findings on an edge that is too slanted for the rows of
// several fields the first.
func tellOnce(fs []Field) {
	told := map[string]bool{}
	for i := range fs {
		l := &fs[i].Layout
		l.Findings = slices.DeleteFunc(slices.Clone(l.Findings), func(f finding.Finding) bool {
			was := told[f.Where]
			told[f.Where] = was || f.Rule == slantedRule
			return was && f.Rule == slantedRule
		})
	}
}

// fields is Fields with the direction of the first one given.
func (p Place) fields(d plane.Dir, from basis, fs []finding.Finding) []Field {
	changes := maps.Clone(p.Wishes.Doorways)
	for {
		g := groupsOf(p.Built, changes)
		frames := p.frames()
		if len(g.rooms) < 2 && len(frames) == 0 {
			l, a := layIn(p.turned(d), p.Floor, p.Built, from, p.widths(), p.Limits, p.Wishes, p.Style)
			l.Findings = append(fs, l.Findings...)
			return []Field{{Kind: lay.Field, Layout: l, Part: a, Aligned: a}}
		}
		s := &split{Place: p, around: frames, changes: changes, groups: g, dirs: make([]plane.Dir, len(g.rooms)), lines: make([]*plane.XY, len(g.rooms)), why: make([]string, len(g.rooms))}
		first := g.of(p.Built, from.wall)
		s.dirs[first] = d
		if bad, f := s.spread(first); bad != "" {
			delete(changes, bad)
			fs = append(fs, f)
			continue
		}
		out := s.fields(first, from)
		out[0].Layout.Findings = append(fs, out[0].Layout.Findings...)
		return out
	}
}
