package jobfile

import (
	"strings"

	"github.com/goccy/go-yaml/ast"

	"strake/limits"
	"strake/tape"
)

// limitKeys are the figures of limits.Limits by their keys.
var limitKeys = []struct {
	key, doc string
	within   within
	to       func(*limits.Limits) *limits.Figure
}{
	{"joint_min", "End joints of neighbouring runs lie at least this far apart.", within{0, 1000 * mm}, func(l *limits.Limits) *limits.Figure { return &l.JointMin }},
	{"joint_preferred", "End joints of neighbouring runs better lie this far apart.", within{0, 1500 * mm}, func(l *limits.Limits) *limits.Figure { return &l.JointPreferred }},
	{"shortest_piece", "No piece at an end of a run is shorter.", within{0, 1500 * mm}, func(l *limits.Limits) *limits.Figure { return &l.ShortestPiece }},
	{"narrowest_rip", "No rip along a closing edge is narrower.", within{0, 400 * mm}, func(l *limits.Limits) *limits.Figure { return &l.NarrowestRip }},
	{"kerf", "What the saw blade takes.", within{0, 10 * mm}, func(l *limits.Limits) *limits.Figure { return &l.Kerf }},
	{"gap", "The least expansion gap at an edge that cannot move.", within{0, 60 * mm}, func(l *limits.Limits) *limits.Figure { return &l.GapLeast }},
	{"lap", "What covers an edge laps over the boards by this.", within{0, 60 * mm}, func(l *limits.Limits) *limits.Figure { return &l.Lap }},
	{"end_fit", "How far row ends at walls may vary where the cover leaves no play.", within{0, 20 * mm}, func(l *limits.Limits) *limits.Figure { return &l.EndFit }},
	{"jamb_least", "The farthest that boards reach under an undercut jamb, from its face: negative, as it is behind the face.", within{-100 * mm, 0}, func(l *limits.Limits) *limits.Figure { return &l.JambLeast }},
	{"jamb_greatest", "The least that boards reach under an undercut jamb, from its face: negative, as it is behind the face.", within{-100 * mm, 0}, func(l *limits.Limits) *limits.Figure { return &l.JambGreatest }},
	{"flush_end", "The fine joint where a row ends flush against tile or stone.", within{0, 30 * mm}, func(l *limits.Limits) *limits.Figure { return &l.FlushEnd }},
	{"flush_side", "The soft joint where a row lies flush beside tile or stone.", within{0, 30 * mm}, func(l *limits.Limits) *limits.Figure { return &l.FlushSide }},
	{"transition_least", "The least gap under a transition.", within{0, 60 * mm}, func(l *limits.Limits) *limits.Figure { return &l.TransitionLeast }},
	{"nailer_behind", "How much floor a nailer wants behind the tongue edge.", within{0, 1000 * mm}, func(l *limits.Limits) *limits.Figure { return &l.NailerBehind }},
	{"nailer_ahead", "How much room a nailer and its mallet want ahead of the tongue edge.", within{0, 1000 * mm}, func(l *limits.Limits) *limits.Figure { return &l.NailerAhead }},
	{"h_reach", "An H-joint lies in line, within this, with a joint two rows back.", within{0, 300 * mm}, func(l *limits.Limits) *limits.Figure { return &l.HReach }},
	{"stair_reach", "A stair-step is the same shift of joints twice running, within this.", within{0, 300 * mm}, func(l *limits.Limits) *limits.Figure { return &l.StairReach }},
	{"stair_farthest", "Larger shifts than this make no stair-step.", within{0, 1500 * mm}, func(l *limits.Limits) *limits.Figure { return &l.StairFarthest }},
	{"wide_floor", "Across more boards than this a start in the middle is offered.", within{1000 * mm, 100000 * mm}, func(l *limits.Limits) *limits.Figure { return &l.WideFloor }},
	{"transition_greatest", "The greatest gap that a transition covers.", within{0, 60 * mm}, func(l *limits.Limits) *limits.Figure { return &l.TransitionGreatest }},
}

// fromJob is the source of a limit that the job gives without one.
const fromJob = "job file"

// limitsField reads the limits that replace the defaults.
func limitsField() field[draft] {
	tb := table[draft]{fields: []field[draft]{
		yes("mill_rule", "Take the mill's shortest piece, 9 in, for the shortest piece at an end of a run.", func(j *draft) *bool { return &j.mill }).or("no"),
	}}
	for _, k := range limitKeys {
		tb.fields = append(tb.fields, limitField(k.key, k.doc, k.within))
	}
	return sub("limits", "What a lay must keep, where the defaults do not suit; the maker's figure goes first. Each is a length, or {is: , source: }.", tb, func(j *draft) *draft { return j })
}

func limitField(key, doc string, w within) field[draft] {
	tb := table[limits.Figure]{fields: []field[limits.Figure]{
		length("is", "The figure.", w, func(f *limits.Figure) *tape.Length { return &f.Value }).must(),
		text("source", "Where it comes from, such as the maker's instructions.", func(f *limits.Figure) *string { return &f.Source }).or(fromJob),
	}}
	s := shape{words: "a length, or {is: , source: }", schema: map[string]any{"anyOf": []any{lengthSchema(w.least < 0), tb.shape().schema}}}
	return custom(key, doc, s, func(d *decoder, n ast.Node, j *draft) {
		f := limits.Figure{}
		switch n.(type) {
		case *ast.MappingNode, *ast.MappingValueNode:
			tb.read(d, n, &f)
		default:
			r, ok := d.reading(n, w)
			if !ok {
				return
			}
			f.Value = r.Value
		}
		f.Source = strings.TrimSpace(f.Source)
		if f.Source == "" {
			f.Source = fromJob
		}
		if j.figures == nil {
			j.figures = map[string]limits.Figure{}
		}
		j.figures[key] = f
	})
}

// settle gives the job its limits: the defaults for its boards, with the
// figures that were given in their place.
func (j *draft) settle() {
	l := limits.Default(j.Boards.Face, j.Boards.Thickness)
	if j.mill {
		l.ShortestPiece = limits.Figure{Value: limits.MillShortest, Source: "MFMA grading rules: the mill bundles nothing shorter (chosen by mill_rule)"}
	}
	for _, k := range limitKeys {
		if f, ok := j.figures[k.key]; ok {
			*k.to(&l) = f
		}
	}
	if len(j.Boards.Widths) > 0 {
		l.Widest = j.Boards.Pitch()
	}
	j.Limits = l
}
