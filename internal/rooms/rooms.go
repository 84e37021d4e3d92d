// Package rooms writes random jobs as a person would, for tests that want many floors:
// an L of 4, 6 or 8 corners read to 1/16 in, a doorway, a hearth, a wish.
package rooms

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
)

// Job is a job file that source tells.
func Job(source *rand.Rand) string { return maker{source}.job() }

// maker makes up corners, readings between all of them, doorways, things that stay,
// wishes.
type maker struct{ *rand.Rand }

func (m maker) of(all ...string) string { return all[m.IntN(len(all))] }

func (m maker) between(lo, hi float64) float64 { return lo + (hi-lo)*m.Float64() }

// spot is a corner, in inches.
type spot struct {
	name string
	x, y float64
}

// shape is an outline of 4, 6 or 8 corners, its inner corners named.
func (m maker) shape() (at []spot, into []string) {
	w, h := m.between(90, 260), m.between(80, 200)
	a, b := w*m.between(0.35, 0.65), h*m.between(0.35, 0.65)
	switch m.IntN(4) {
	case 0:
		at, into = []spot{{"A", 0, 0}, {"B", w, 0}, {"C", w, b}, {"D", a, b}, {"E", a, h}, {"F", 0, h}}, []string{"D"}
	case 1:
		at, into = []spot{{"A", 0, 0}, {"B", w, 0}, {"C", w, h}, {"D", a + 40, h}, {"E", a + 40, b}, {"F", a, b}, {"G", a, h}, {"H", 0, h}}, []string{"E", "F"}
	default:
		at = []spot{{"A", 0, 0}, {"B", w, 0}, {"C", w, h}, {"D", 0, h}}
	}
	for i := range at {
		at[i].x += m.between(-0.7, 0.7)
		at[i].y += m.between(-0.7, 0.7)
	}
	return at, into
}

// job is a whole job file.
func (m maker) job() string {
	at, into := m.shape()
	var b strings.Builder
	fmt.Fprintf(&b, "strake: 1\nname: %s\nunit: in\nrooms:\n  %s:\n    corners: [%s]\n    walk: counter-clockwise\n",
		m.of("Loft", "The long room over the cooper's shop", "Mess"), "main room", names(at))
	if len(into) > 0 {
		fmt.Fprintf(&b, "    into: [%s]\n", strings.Join(into, ", "))
	}
	other := m.Float64() < 0.3
	all := at
	doors := ""
	if other { // a second room under wall A-B
		w := at[1].x - at[0].x
		x, wide := at[0].x+m.between(2, w/4), m.between(60, w*0.7)
		two := []spot{{"P", x, -5 - m.between(70, 120)}, {"Q", x + wide, -75 - m.between(0, 3)}, {"R", x + wide, -5}, {"S", x, -5}}
		two[1].y = two[0].y + m.between(-0.5, 0.5)
		fmt.Fprintf(&b, "  side room:\n    corners: [%s]\n    walk: counter-clockwise\n", names(two))
		all = append(append([]spot(nil), at...), two...)
		near := x - at[0].x + m.between(4, wide-40)
		doors = fmt.Sprintf("  door between: {wall: A-B, from: A, at: %.4g, width: 32, thickness: 5, undercut: %s, beyond: {wall: R-S, from: S, at: %.4g}}\n", near, m.of("yes", "no"), near-(x-at[0].x))
	}
	if m.Float64() < 0.6 {
		i := 1 + m.IntN(len(at)-1)
		p, q := at[i], at[(i+1)%len(at)]
		long := math.Hypot(q.x-p.x, q.y-p.y)
		if long > 50 {
			doors += fmt.Sprintf("  %s: {wall: %s-%s, from: %s, at: %.4g, width: 30, thickness: 5, undercut: %s, ends: 2-1/2, beyond: %s}\n",
				m.of("way in", "door to the landing"), p.name, q.name, p.name, m.between(4, long-36), m.of("yes", "no"), m.of("transition", "flush"))
		}
	}
	b.WriteString("readings: {")
	for i, p := range all {
		for j, q := range all[:i] {
			if i > 0 && (i > 1 || j > 0) {
				b.WriteString(", ")
			}
			fmt.Fprintf(&b, "%s-%s: %s", q.name, p.name, sixteenths(math.Hypot(p.x-q.x, p.y-q.y)))
		}
	}
	b.WriteString("}\n")
	if doors != "" {
		b.WriteString("doorways:\n" + doors)
	}
	b.WriteString(m.stays(at))
	face := m.of("2-1/4", "3-1/4", "4", "5", "5", "6", "8")
	fmt.Fprintf(&b, "wishes: {%s}\n", m.wish(at))
	fmt.Fprintf(&b, "boards: {face: %s, thickness: 3/4, side_tongue: 1/4, end_tongue: 1/4, hand: %s, species: red oak, lengths: {mix: {least: 12, most: 84, mean: 42}}}\nbase: 1/2\nshoe: 3/4\n",
		face, m.of("left", "right"))
	return b.String()
}

// stays are a hearth, a column or a cabinet, or nothing.
func (m maker) stays(at []spot) string {
	long := at[1].x - at[0].x
	last := at[len(at)-1]
	side := math.Hypot(last.x-at[0].x, last.y-at[0].y)
	wall := last.name + "-A"
	switch m.IntN(5) {
	case 0:
		return fmt.Sprintf("stays: {hearth: {kind: hearth, wall: %s, from: A, at: %.4g, width: %.4g, depth: 18, frame: %s}}\n", wall, side*0.25, side*m.between(0.2, 0.4), m.of("mitred", "butted"))
	case 1:
		return fmt.Sprintf("stays: {stove plate: {kind: hearth, wall: %s, from: A, at: %.4g, width: %.4g, depth: 16}}\n", wall, side*0.3, side*0.3)
	case 2:
		return fmt.Sprintf("stays: {post: {kind: column, meets: gap, wall: %s, from: A, at: %.4g, off: %.4g, width: 9, depth: 9}}\n", wall, side*0.3, min(40, long*0.2))
	case 3:
		return fmt.Sprintf("stays: {tall press: {kind: cabinet, meets: gap, wall: %s, from: A, at: 0, width: %.4g, depth: 22}}\n", wall, side*0.4)
	}
	return ""
}

func (m maker) wish(at []spot) string {
	i := m.IntN(len(at))
	along := fmt.Sprintf("rows_along: %s-%s", at[i].name, at[(i+1)%len(at)].name)
	switch m.IntN(6) {
	case 0:
		return fmt.Sprintf("turned_by: %d", 5*(1+m.IntN(17)))
	case 1:
		return "turned_by: 45"
	case 2:
		return along + ", start_middle: yes"
	case 3:
		return along + ", backwards: " + m.of("all", "none")
	}
	return along
}

func names(at []spot) string {
	var out []string
	for _, s := range at {
		out = append(out, s.name)
	}
	return strings.Join(out, ", ")
}

func sixteenths(in float64) string {
	n := int(math.Round(in * 16))
	if n%16 == 0 {
		return fmt.Sprint(n / 16)
	}
	return fmt.Sprintf("%d-%d/16", n/16, n%16)
}
