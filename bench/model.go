package main

import (
	"fmt"
	"io"
	"maps"
	"slices"
	"strings"

	"strake/tape"
)

// model is a small floor as an integer program: arc flow by position (Valério
// de Carvalho 1999, Annals of Operations Research 86:629-659, from memory),
// with the joint distance as cliques. All lengths are in steps of the grid.
//
//	x i p l   a board of length l lies whole from p in run i
//	e i p l   a board of length l is laid from p and cut at the end of run i
//	s i o     run i begins with an offcut of length o, cut in an earlier run
//
// In every run a path leads from 0 to the end; no length is used more often
// than it is in stock; of each offcut length no more are used up to run i than
// were cut before it. In any window narrower than the joint distance at most
// one joint of two neighbouring runs lies (boards are longer than it, so this
// is no more than the rule and much tighter than pairs). The objective is
// scrap in inches and 1 for each crosscut; an offcut of 8 in or more is no
// scrap, used or not. Kerf is 0.
type model struct {
	runs, end   int
	joint, less int // joint distance, shortest end piece
	grid        tape.Length
	stock       map[int]int
	arcs        []arc
}

// arc is one variable.
type arc struct {
	kind        byte // x, e, s as above
	run, at, to int
	board       int // its length; of an s the offcut's
}

func (a arc) name() string {
	if a.kind == 's' {
		return fmt.Sprintf("s_%d_%d", a.run, a.board)
	}
	return fmt.Sprintf("%c_%d_%d_%d", a.kind, a.run, a.at, a.board)
}

// offcut is what an end cut leaves.
func (a arc) offcut() int { return a.board - (a.to - a.at) }

func newModel(s small) *model {
	grid := s.grid
	if s.length%grid != 0 {
		grid = 2 * inch // stepped lengths: the run is on 2 in only
	}
	p := s.place()
	m := &model{runs: s.runs, end: int(s.length / grid), joint: int(p.joint / grid), less: int(p.shortest / grid), grid: grid, stock: map[int]int{}}
	for _, l := range s.stock() {
		m.stock[int(l/grid)]++
	}
	for i := range m.runs {
		m.run(i)
	}
	return m
}

// run adds the arcs of a run: from places that can be reached alone.
func (m *model) run(i int) {
	reached := make([]bool, m.end+1)
	reached[0] = true
	lengths := slices.Sorted(maps.Keys(m.stock))
	if i > 0 {
		for o := m.less; o < lengths[len(lengths)-1]; o++ {
			m.arcs = append(m.arcs, arc{'s', i, 0, o, o})
			reached[o] = true
		}
	}
	for p := range m.end {
		if !reached[p] {
			continue
		}
		for _, l := range lengths {
			if p+l <= m.end {
				m.arcs = append(m.arcs, arc{'x', i, p, p + l, l})
				reached[p+l] = true
			} else if m.end-p >= m.less {
				m.arcs = append(m.arcs, arc{'e', i, p, m.end, l})
			}
		}
	}
}

// write writes the program in the LP format that both solvers read.
func (m *model) write(w io.Writer) error {
	var s strings.Builder
	s.WriteString("Minimize\n obj:")
	for _, a := range m.arcs {
		if a.kind != 'e' {
			continue
		}
		cost := 1.0
		if o := a.offcut(); o < m.less {
			cost += (tape.Length(o) * m.grid).Inches()
		}
		fmt.Fprintf(&s, " + %g %s\n", cost, a.name())
	}
	s.WriteString("Subject To\n")
	m.flow(&s)
	m.supply(&s)
	m.windows(&s)
	s.WriteString("Binaries\n")
	for _, a := range m.arcs {
		s.WriteString(" " + a.name() + "\n")
	}
	s.WriteString("End\n")
	_, err := io.WriteString(w, s.String())
	return err
}

// line writes one row of the program, unless it is empty.
func line(s *strings.Builder, plus, minus []arc, is string) {
	if len(plus)+len(minus) == 0 {
		return
	}
	for _, a := range plus {
		s.WriteString(" + " + a.name() + "\n")
	}
	for _, a := range minus {
		s.WriteString(" - " + a.name() + "\n")
	}
	s.WriteString(" " + is + "\n")
}

// flow: one path from 0 to the end in every run.
func (m *model) flow(s *strings.Builder) {
	for i := range m.runs {
		out, in := m.byPlace(i)
		line(s, out[0], nil, "= 1")
		for p := 1; p < m.end; p++ {
			line(s, out[p], in[p], "= 0")
		}
		line(s, in[m.end], nil, "= 1")
	}
}

// byPlace are the arcs of a run out of and into each place.
func (m *model) byPlace(i int) (out, in map[int][]arc) {
	out, in = map[int][]arc{}, map[int][]arc{}
	for _, a := range m.arcs {
		if a.run == i {
			out[a.at] = append(out[a.at], a)
			in[a.to] = append(in[a.to], a)
		}
	}
	return
}

// supply: boards of each length, and offcuts of each length run by run.
func (m *model) supply(s *strings.Builder) {
	boards, used, made := map[int][]arc{}, map[int][]arc{}, map[int][]arc{}
	for _, a := range m.arcs {
		switch a.kind {
		case 's':
			used[a.board] = append(used[a.board], a)
		case 'e':
			made[a.offcut()] = append(made[a.offcut()], a)
			fallthrough
		default:
			boards[a.board] = append(boards[a.board], a)
		}
	}
	for _, l := range slices.Sorted(maps.Keys(boards)) {
		line(s, boards[l], nil, fmt.Sprintf("<= %d", m.stock[l]))
	}
	for _, o := range slices.Sorted(maps.Keys(used)) {
		for i := 1; i < m.runs; i++ {
			line(s, before(used[o], i+1), before(made[o], i), "<= 0")
		}
	}
}

// before are the arcs of runs before i.
func before(as []arc, i int) []arc {
	var out []arc
	for _, a := range as {
		if a.run < i {
			out = append(out, a)
		}
	}
	return out
}

// windows: no two joints of neighbouring runs closer than the joint distance.
func (m *model) windows(s *strings.Builder) {
	for i := range m.runs - 1 {
		one, _ := m.byPlace(i)
		two, _ := m.byPlace(i + 1)
		for p := 1; p+m.joint <= m.end; p++ {
			var in []arc
			for q := p; q < p+m.joint; q++ {
				in = append(in, one[q]...)
				in = append(in, two[q]...)
			}
			line(s, in, nil, "<= 1")
		}
	}
}
