package jobfile

import (
	"strake/room"
	"strake/tape"
)

var stayTable = table[room.Stay]{fields: []field[room.Stay]{
	choice("kind", "What it is.", []room.StayKind{room.Hearth, room.Tile, room.Column, room.Register, room.Cabinet, room.Pipe}, func(s *room.Stay) *room.StayKind { return &s.Kind }).must(),
	choice("meets", "How the floor meets it: flush (a fine joint at row ends, a soft joint beside), gap (like a wall, under a cover) or transition (a strip overlaps the edge).", []room.Meets{room.MeetsFlush, room.MeetsGap, room.MeetsTransition}, func(s *room.Stay) *room.Meets { return &s.Meets }).or("flush for hearth and tile, gap for the rest"),
	choice("past", "How a tape gets past it: over (it is low: the tape is pulled over it) or round (it stands up, such as a raised hearth or a chimney breast: no reading across it is asked for).", []room.Past{room.PastOver, room.PastRound}, func(s *room.Stay) *room.Past { return &s.Past }).or("round for column, cabinet and pipe, over for hearth, tile and register"),
	length("cover", "What covers the gap round it: the flange of a register, a pipe's collar, a toe-kick.", within{0, 300 * mm}, func(s *room.Stay) *tape.Length { return &s.Cover }).or("the base and shoe"),
	corners("corners", "Its corners in order round it, when readings reach them; else give wall, from, at, width and depth.", func(s *room.Stay) *[]string { return &s.Corners }),
	wall("wall", "The wall it is set out from, into the room of that wall. Read from another room, it is given by its corners.", func(s *room.Stay) *room.Wall { return &s.Wall }),
	corner("from", "The corner of that wall it is measured from.", func(s *room.Stay) *string { return &s.From }),
	length("at", "From that corner along the wall to its near side.", anywhere, func(s *room.Stay) *tape.Length { return &s.At }),
	length("off", "From the wall to its near edge.", anywhere, func(s *room.Stay) *tape.Length { return &s.Off }).or("it stands against the wall"),
	length("width", "Along the wall.", within{5 * mm, tape.Longest}, func(s *room.Stay) *tape.Length { return &s.Width }),
	choice("frame", "Boards round it: mitred or butted at the corners, their grooves to the rows. Round the three sides off the wall it is set out from, or round all of something that stands free.", []room.FrameKind{room.Mitred, room.Butted}, func(s *room.Stay) *room.FrameKind { return &s.Frame }).or("none"),
	length("depth", "Square to the wall.", within{5 * mm, tape.Longest}, func(s *room.Stay) *tape.Length { return &s.Depth }),
}}

func addStay(j *draft, name string, s room.Stay) {
	s.Name = name
	if s.Meets == "" {
		s.Meets = room.MeetsGap
		if s.Kind == room.Hearth || s.Kind == room.Tile {
			s.Meets = room.MeetsFlush
		}
	}
	j.Sketch.Stays = append(j.Sketch.Stays, s)
}
