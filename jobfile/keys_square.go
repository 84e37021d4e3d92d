package jobfile

import (
	"strconv"

	"github.com/goccy/go-yaml/ast"

	"strake/room"
	"strake/survey"
)

// squareReading is a reading that a wall takes part in.
type squareReading struct {
	from, to string
	wall     room.Wall
	value    trusted
}

// offsetTable, alongTable and widthTable are the readings taken square to a
// wall or along it.
var (
	offsetTable = table[squareReading]{fields: []field[squareReading]{
		corner("of", "The corner or point that is measured to.", func(s *squareReading) *string { return &s.from }).must(),
		wall("wall", "The wall whose line it is measured from, square.", func(s *squareReading) *room.Wall { return &s.wall }).must(),
		squareIs(),
	}}
	alongTable = table[squareReading]{fields: []field[squareReading]{
		wall("wall", "The wall it is measured along.", func(s *squareReading) *room.Wall { return &s.wall }).must(),
		corner("from", "The corner of that wall where the tape starts.", func(s *squareReading) *string { return &s.from }).must(),
		corner("to", "The corner or point that lies square off the place read.", func(s *squareReading) *string { return &s.to }).must(),
		squareIs(),
	}}
	widthTable = table[squareReading]{fields: []field[squareReading]{
		corner("from", "The point on a wall where the tape starts, square to that wall.", func(s *squareReading) *string { return &s.from }).must(),
		wall("wall", "The wall across.", func(s *squareReading) *room.Wall { return &s.wall }).must(),
		squareIs(),
	}}
)

func squareIs() field[squareReading] {
	s := shape{words: "a length, or {is: , doubt: }", schema: map[string]any{"anyOf": []any{lengthSchema(false), trustedTable.shape().schema}}}
	return custom("is", "What the tape said.", s, func(d *decoder, n ast.Node, q *squareReading) {
		q.value = d.trust(n)
	}).must()
}

func addSquare(k survey.Kind) func(*decoder, ast.Node, *draft, squareReading) {
	return func(d *decoder, n ast.Node, j *draft, q squareReading) {
		r := q.value.as(d, n)
		r.Kind, r.From, r.To, r.Wall = k, q.from, q.to, q.wall
		j.Readings = append(j.Readings, r)
	}
}

// squares checks that the places and walls of such readings exist, and that a
// width starts at a point on a wall.
func (n *names) squares() {
	count := map[survey.Kind]int{}
	for _, r := range n.j.Readings {
		key, ok := map[survey.Kind]string{survey.Off: "offsets", survey.Along: "along", survey.Width: "widths"}[r.Kind]
		if !ok {
			continue
		}
		path := at(key, strconv.Itoa(count[r.Kind]))
		count[r.Kind]++
		n.wall(at(path, "wall"), r.Wall)
		switch r.Kind {
		case survey.Off:
			n.place(at(path, "of"), r.From)
		case survey.Along:
			n.end(at(path, "from"), r.From, r.Wall)
			n.place(at(path, "to"), r.To)
		case survey.Width:
			n.place(at(path, "from"), r.From)
			if _, corner := n.roomOf[r.From]; corner {
				n.d.failPath(at(path, "from"), "a width starts at a point on a wall, not at a corner", r.From, "a name under “points”")
			}
		}
	}
}
