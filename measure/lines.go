package measure

import (
	"fmt"
	"slices"

	"strake/room"
	"strake/survey"
	"strake/tape"
)

// sections are the lines of the sheet: the walk first, as the plan has it.
func (s *Sheet) sections() {
	fixes := Section{Title: "What fixes the shape", Note: "Take these first. With fewer, the shape rests on corners taken for square."}
	marked := Section{Title: "What fixes the shape, from marks", Note: "What would fix it from corner to corner, no tape can read."}
	rest := Section{Title: "Widths where rows close, and checks"}
	again := Section{Title: "The widths again, at floor level, once the base is off", Note: "These say how wide the last row is."}
	number := s.numbers()
	for _, k := range s.plan.Walk {
		it := s.plan.Items[k]
		l := Line{What: s.what(it), Why: s.why(it, number[k]), Hook: it.Hook}
		switch it.Purpose {
		case survey.Fixes, survey.Ties:
			if len(it.Ask.Marks) > 0 {
				marked.Lines = append(marked.Lines, l)
				continue
			}
			fixes.Lines = append(fixes.Lines, l)
			continue
		case survey.Closes:
			again.Lines = append(again.Lines, Line{What: l.What, Why: "at floor level", Hook: l.Hook})
		}
		rest.Lines = append(rest.Lines, l)
	}
	for _, r := range s.Ask.Have {
		if r.Kind == survey.Width {
			again.Lines = append(again.Lines, Line{What: r.Name(), Why: "at floor level", Hook: r.From})
		}
	}
	for _, sec := range []Section{fixes, s.toMark(), marked, rest, s.openings(), s.stays(), again} {
		if len(sec.Lines) > 0 {
			s.Sections = append(s.Sections, sec)
		}
	}
}

// numbers are the checks by their item, from 1 in the order chosen.
func (s *Sheet) numbers() map[int]int {
	out := map[int]int{}
	for k, it := range s.plan.Items {
		if it.Purpose == survey.Proves {
			out[k] = len(out) + 1
		}
	}
	return out
}

// what names the reading.
func (s *Sheet) what(it survey.Item) string {
	r := it.Ask.Reading
	if r.Kind == survey.Width {
		return r.From + " square across to wall " + r.Wall.String()
	}
	return r.Name()
}

// why says what the reading is, and what it is for.
func (s *Sheet) why(it survey.Item, number int) string {
	out := "diagonal"
	switch r := it.Ask.Reading; {
	case r.Kind == survey.Width && it.Ask.Through != "":
		out = string(survey.Closes) + ", through “" + it.Ask.Through + "”"
	case r.Kind == survey.Width:
		out = string(survey.Closes)
	case it.Ask.Through != "":
		out = "through “" + it.Ask.Through + "”"
	default:
		if _, _, ok := s.Ask.Sketch.FindWall(room.Wall{r.From, r.To}); ok {
			out = "wall"
		} else if s.onWall(r.From) || s.onWall(r.To) {
			out = "across"
		}
	}
	if it.Ask.Past != "" {
		out += ", past “" + it.Ask.Past + "”"
	}
	if number > 0 {
		out = fmt.Sprintf("check %d, %s", number, out)
	}
	if len(s.Ask.Sketch.Rooms) > 1 && it.Ask.Through == "" {
		out = it.Room + ", " + out
	}
	return out
}

// onWall tells whether a name is a place on a wall.
func (s *Sheet) onWall(name string) bool {
	return slices.ContainsFunc(s.Built.Points, func(p room.Point) bool { return p.Name == name })
}

// toMark are the places to mark on the walls before the widths and checks.
func (s *Sheet) toMark() Section {
	sec := Section{Title: "Mark these places on the walls", Note: "Whole figures are easy to find again. Where one is in the way of something, mark beside it and write down where."}
	for _, p := range s.Marks {
		sec.Lines = append(sec.Lines, Line{What: fmt.Sprintf("%s on wall %s, %s from %s", p.Name, p.Wall, s.Ask.style().Of(p.At), p.From), Why: "pencil mark; write where it is, if not there"})
	}
	return sec
}

// known tells whether readings were taken and this figure with them: it is not
// asked for again.
func (s *Sheet) known(figure tape.Length) bool { return len(s.Ask.Have) > 0 && figure > 0 }

// openings asks for the doorways, all figures of those that lack one.
func (s *Sheet) openings() Section {
	sec := Section{Title: "Doorways"}
	for _, d := range s.Ask.Sketch.Doorways {
		if s.known(d.Width) && !slices.Contains(s.Ask.Unplaced, d.Name) {
			continue
		}
		why := fmt.Sprintf("%s, wall %s", d.Name, d.Wall)
		sec.Lines = append(sec.Lines,
			Line{What: "from " + d.From + " to the near jamb", Why: why},
			Line{What: "between the jambs", Why: why},
			Line{What: "thickness of the wall there", Why: why + "; plaster or drywall included, casing not"})
		if d.Beyond == room.BeyondRoom {
			sec.Lines = append(sec.Lines, Line{What: "from " + d.OtherFrom + " to the near jamb", Why: fmt.Sprintf("%s, its other side, wall %s", d.Name, d.OtherWall)})
		}
	}
	return sec
}

// stays asks for what stays where it is.
func (s *Sheet) stays() Section {
	sec := Section{Title: "What stays"}
	for _, st := range s.Ask.Sketch.Stays {
		if s.known(st.Width) && s.known(st.Depth) && !slices.Contains(s.Ask.Floating, st.Name) || len(st.Corners) > 0 && !s.unreached(st) {
			continue
		}
		for _, c := range st.Corners {
			for _, from := range []string{"one room corner", "another"} {
				sec.Lines = append(sec.Lines, Line{What: c + " from " + from + " (write which)", Why: "a corner of the " + st.Name})
			}
		}
		if len(st.Corners) == 0 {
			why := fmt.Sprintf("%s, wall %s", st.Name, st.Wall)
			sec.Lines = append(sec.Lines, Line{What: "from " + st.From + " along the wall to its near side", Why: why},
				Line{What: "its width along the wall", Why: why})
			if st.Off > 0 || st.Kind == room.Column || st.Kind == room.Register || st.Kind == room.Pipe {
				sec.Lines = append(sec.Lines, Line{What: "from the wall to its near edge", Why: why + "; 0 where it stands against it"})
			}
			sec.Lines = append(sec.Lines, Line{What: "its depth, square to the wall", Why: why})
		}
	}
	return sec
}
