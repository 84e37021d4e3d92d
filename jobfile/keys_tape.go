package jobfile

import (
	"github.com/goccy/go-yaml/ast"

	"strake/room"
	"strake/survey"
	"strake/tape"
)

// bowTable is one place where a wall was measured against a string.
var bowTable = table[room.Bow]{fields: []field[room.Bow]{
	wall("wall", "The wall, by its two corners.", func(b *room.Bow) *room.Wall { return &b.Wall }).must(),
	corner("from", "The corner of it that the place is measured from.", func(b *room.Bow) *string { return &b.From }).must(),
	length("at", "How far along the wall from there.", anywhere, func(b *room.Bow) *tape.Length { return &b.At }).must(),
	length("out", "How far the wall lies behind the straight line from corner to corner; negative where it stands into the room.", within{-300 * mm, 300 * mm}, func(b *room.Bow) *tape.Length { return &b.Out }).must(),
}}

func addBow(_ *decoder, _ ast.Node, r *room.Room, b room.Bow) { r.Bows = append(r.Bows, b) }

// tapeTable is how far readings and assumptions are trusted, as standard
// deviations.
var tapeTable = table[survey.Model]{fields: []field[survey.Model]{
	millimetres("constant", "The constant part of the tape's error.", 0.01, 50, func(m *survey.Model) *float64 { return &m.ReadingMM }).or("0.17 mm: a class II tape"),
	millimetres("per_metre", "The scale error of the whole tape over a metre.", 0.001, 10, func(m *survey.Model) *float64 { return &m.ScalePerM }).or("0.115 mm: a class II tape"),
	millimetres("hook", "Hook and corner, each reading.", 0.01, 50, func(m *survey.Model) *float64 { return &m.HookMM }).or("0.8 mm"),
	figure("square_corner", "Degrees that a corner taken for square may well be off.", 0.01, 20, func(m *survey.Model) *float64 { return &m.SquareDeg }).or("0.5"),
	figure("given_angle", "Degrees that a given angle may well be off.", 0.01, 20, func(m *survey.Model) *float64 { return &m.AngleDeg }).or("0.25"),
	millimetres("doorway", "Jamb against jamb through a wall.", 0.01, 100, func(m *survey.Model) *float64 { return &m.DoorMM }).or("1.5 mm"),
	millimetres("straight_wall", "A wall off its straight line in mid-wall, where no bow was read.", 0.01, 100, func(m *survey.Model) *float64 { return &m.WallMM }).or("1.5 mm"),
	millimetres("must_show", "A reading is unchecked when an error of this size in it would not show.", 0.1, 500, func(m *survey.Model) *float64 { return &m.ShowMM }).or("1/2 in"),
	figure("alike", "Readings whose tests correlate above this cannot be told apart.", 0.1, 1, func(m *survey.Model) *float64 { return &m.Alike }).or("0.8"),
}}

// millimetres is a key whose value is a length, kept in mm.
func millimetres[T any](key, doc string, least, most float64, to func(*T) *float64) field[T] {
	w := within{tape.Length(least * float64(mm)), tape.Length(most * float64(mm))}
	return custom(key, doc, shape{words: "a length", schema: lengthSchema(false)}, func(d *decoder, n ast.Node, t *T) {
		if r, ok := d.reading(n, w); ok {
			*to(t) = r.Value.Millimetres()
		}
	})
}
