package jobfile

import (
	"slices"

	"github.com/goccy/go-yaml/ast"

	"strake/room"
	"strake/tape"
)

var roomTable = table[room.Room]{fields: []field[room.Room]{
	corners("corners", "The corners in order round the room; each has a name of its own in the whole job.", func(r *room.Room) *[]string { return &r.Corners }).must(),
	walkField().or("counter-clockwise"),
	corners("into", "Those of them that stand into the room, such as the inner corner of an L.", func(r *room.Room) *[]string { return &r.Into }).or("none"),
	anglesField().or("every corner is taken for square unless the readings say otherwise"),
	list("bows", "Where a wall leaves the straight line between its corners, measured against a string.", "place", bowTable, addBow).or("walls are straight"),
}}

// The two ways to go round a room. Distances alone fit a room and its mirror
// image equally well, so the job has to say which it is.
const (
	clockwise        = "clockwise"
	counterClockwise = "counter-clockwise"
)

func walkField() field[room.Room] {
	ways := []string{counterClockwise, clockwise}
	s := shape{words: "one of counter-clockwise, clockwise", schema: map[string]any{"enum": []any{counterClockwise, clockwise}}}
	const doc = "The way round, seen from above: counter-clockwise goes round the room with the walls at your right hand, clockwise with the walls at your left. The wrong one gives a mirror image of the room."
	return custom("walk", doc, s, func(d *decoder, n ast.Node, r *room.Room) {
		v, ok := d.text(n, s.words)
		switch {
		case !ok:
		case slices.Contains(ways, v):
			r.Clockwise = v == clockwise
		default:
			d.notOne(n.GetToken(), v, ways)
		}
	})
}

func anglesField() field[room.Room] {
	angle := map[string]any{"type": "number", "exclusiveMinimum": 0, "exclusiveMaximum": 360}
	s := shape{words: "a corner and its inside angle in degrees, such as {C: 135}", schema: map[string]any{"type": "object", "additionalProperties": angle}}
	return custom("angles", "Inside angles in degrees of corners that are not square, seen from the room.", s, func(d *decoder, n ast.Node, r *room.Room) {
		entries, _ := d.entries(n, s.words)
		for _, e := range entries {
			d.at[d.path+sep+e.key+keyOf] = e.token
			d.under(e.key, e.value, func(n ast.Node) {
				v, ok := d.figure(n, 1, 359)
				if !ok || !d.dot(e.token, e.key) {
					return
				}
				if r.Angles == nil {
					r.Angles = map[string]float64{}
				}
				r.Angles[e.key] = v
			})
		}
	})
}

func addRoom(j *draft, name string, r room.Room) {
	r.Name = name
	j.Sketch.Rooms = append(j.Sketch.Rooms, r)
}

// anywhere is the range of a distance along a wall.
var anywhere = within{0, tape.Longest}

var pointTable = table[room.Point]{fields: []field[room.Point]{
	wall("wall", "The wall it lies on.", func(p *room.Point) *room.Wall { return &p.Wall }).must(),
	corner("from", "The corner of that wall it is measured from.", func(p *room.Point) *string { return &p.From }).must(),
	length("at", "The distance from there.", anywhere, func(p *room.Point) *tape.Length { return &p.At }).must(),
}}

func addPoint(j *draft, name string, p room.Point) {
	p.Name = name
	j.Sketch.Points = append(j.Sketch.Points, p)
}
