package jobfile

import (
	"strconv"

	"github.com/goccy/go-yaml/ast"

	"strake/job"
	"strake/limits"
	"strake/room"
	"strake/stock"
	"strake/survey"
	"strake/tape"
)

// Version is the version of the job file that is read here.
const Version = 1

// draft is a job while it is read, with what is only settled at the end.
type draft struct {
	job.Job
	figures map[string]limits.Figure // limits given, by key
	mill    bool
	rough   []survey.Reading // guesses, for strake measure
}

const (
	mm = tape.Millimetre
	in = tape.Inch
)

var jobTable = table[draft]{
	doc: "One floor to plan: rooms, tape readings, boards, limits and wishes.",
	fields: []field[draft]{
		versionField().must(),
		text("name", "What the job is called on paper.", func(j *draft) *string { return &j.Name }).or("the file's name without its ending"),
		unitField().or("in"),
		choice("paper", "What is printed on: a4 or letter. --paper is heard before it.", job.Papers, func(j *draft) *string { return &j.Paper }).or("letter for jobs in feet and inches, else a4"),
		each("rooms", "The rooms and closets that get this floor.", "room", roomTable, addRoom).must(),
		each("points", "Named places on walls, to read distances to.", "point", pointTable, addPoint),
		readingsField().or("none yet: strake measure says which to take"),
		roughField(),
		list("offsets", "Distances of a corner or point from the line of a wall, square to it. It may lie in another room: then on the side of the wall where the doorways put it, and a corner of something that stays where its other readings do.", "reading", offsetTable, addSquare(survey.Off)),
		list("along", "Distances along a wall to the place square below a corner or point.", "reading", alongTable, addSquare(survey.Along)),
		list("widths", "Distances from a point on a wall, square to that wall, across to another.", "reading", widthTable, addSquare(survey.Width)),
		sub("tape", "How far the tape and the assumptions are trusted, as standard deviations.", tapeTable, func(j *draft) *survey.Model { return &j.Tape }).or("a class II tape"),
		each("doorways", "Openings in the walls of the rooms.", "doorway", doorwayTable, addDoorway),
		each("stays", "What stays where it is: hearths, tiles, columns, registers, cabinets, pipes.", "thing that stays", stayTable, addStay),
		sub("boards", "The boards on the pallet.", boardsTable, func(j *draft) *stock.Boards { return &j.Boards }).must().written(boardsLike),
		length("base", "Thickness of the baseboard that covers the gap at the walls.", within{0, 60 * mm}, func(j *draft) *tape.Length { return &j.Base }).or("no baseboard"),
		length("shoe", "Thickness of the shoe or quarter round in front of the baseboard.", within{0, 60 * mm}, func(j *draft) *tape.Length { return &j.Shoe }).or("no shoe"),
		sub("joists", "What the subfloor lies on.", joistTable, func(j *draft) *job.Joists { return &j.Joists }).or("not known"),
		sub("subfloor", "What was found under the boards: its layers, how flat it is, what squeaks. Joists are told under joists.", subfloorTable, func(j *draft) *job.Subfloor { return &j.Subfloor }).or("not looked at"),
		sub("fasteners", "What boards are nailed with, where it is not what the schedule says.", fastenersTable, func(j *draft) *job.Fasteners { return &j.Nails }).or("the schedule's usual choice, with its source"),
		each("keep_free", "Parts of the floor that fasteners keep out of: pipes, heating, cables, ducts.", "part to keep free", keepFreeTable, addKeepFree),
		heightsField().or("nothing was measured of heights"),
		limitsField().or("the defaults, each with its source"),
		sub("wishes", "What you would like; a plan that cannot have it says so.", wishTable, func(j *draft) *job.Wishes { return &j.Wishes }).or("strake's choice"),
		sub("pins", "Wishes that are kept even where they break a limit; the plan then says so. Each stands alone and goes by its content.", pinTable, func(j *draft) *job.Pins { return &j.Pins }).or("nothing is pinned"),
		laidField().or("nothing is laid"),
		orderField().or("the defaults, each with its source"),
		goodsField().or("the defaults, each with its source"),
		pricesField().or("nothing is priced but cartons"),
		siteField().or("nothing is known of the site"),
		hazardsField().or("nothing is known of them"),
		receivedField().or("nothing was opened yet"),
		climateField().or("not known"),
		moistureField().or("nothing was read yet"),
		scheduleField().or("strake schedule tells hours, and no days"),
		quoteField().or("strake quote leaves blanks for what it does not know"),
		handoverField().or("strake handover leaves blanks for what it does not know"),
		seedField().or("1"),
	},
}

func versionField() field[draft] {
	s := shape{words: "the number 1, the version of this form", schema: map[string]any{"const": Version}}
	return custom("strake", "The version of this file's form.", s, func(d *decoder, n ast.Node, j *draft) {
		v, ok := d.text(n, s.words)
		if ok && v != strconv.Itoa(Version) {
			d.fail(n.GetToken(), "this version of the job file is not known", v, s.words)
		}
	})
}

// unitField is read before all lengths, so that bare numbers are read in it.
func unitField() field[draft] {
	units := []tape.Unit{tape.UnitInch, tape.UnitFoot, tape.UnitMillimetre, tape.UnitCentimetre, tape.UnitMetre}
	f := choice("unit", "The unit of numbers without one. It also sets what is printed: ft as feet and inches, in as inches, the others as mm.", units, func(j *draft) *tape.Unit { return &j.Unit })
	read := f.read
	f.read = func(d *decoder, n ast.Node, j *draft) {
		read(d, n, j)
		d.unit = j.Unit
	}
	return f
}

func seedField() field[draft] {
	s := shape{words: "a whole number", schema: map[string]any{"type": "integer", "minimum": 0}}
	return custom("seed", "Another seed gives another layout of the same boards; the same seed gives the same one.", s, func(d *decoder, n ast.Node, j *draft) {
		v, ok := d.text(n, s.words)
		if !ok {
			return
		}
		x, err := strconv.ParseUint(v, 10, 63)
		if err != nil {
			d.fail(n.GetToken(), "this is not such a number", v, "a whole number from 0 up, such as 7")
		}
		j.Seed = x
	})
}

var joistTable = table[job.Joists]{fields: []field[job.Joists]{
	wall("along", "The wall that the joists run along.", func(j *job.Joists) *room.Wall { return &j.Along }),
	length("spacing", "Joist spacing, on centre.", within{150 * mm, 1500 * mm}, func(j *job.Joists) *tape.Length { return &j.Spacing }),
	length("first", "From that wall, square to it into its room, to the centre line of a joist: nails through the face then stand over joists.", within{0, 1500 * mm}, func(j *job.Joists) *tape.Length { return &j.First }).or("not known where they lie"),
}}

var wishTable = table[job.Wishes]{fields: []field[job.Wishes]{
	wall("rows_along", "Rows run along this wall.", func(w *job.Wishes) *room.Wall { return &w.Direction }).or("along the longest wall"),
	custom("rows_across", "Rows run square to this wall (instead of rows_along).", wallShape, func(d *decoder, n ast.Node, w *job.Wishes) {
		if w.Direction != (room.Wall{}) {
			d.fail(n.GetToken(), "rows_along and rows_across cannot both hold", "", "one of the two")
			return
		}
		wallField.read(d, n, w)
		w.Across = w.Direction != (room.Wall{})
	}),
	betweenField(),
	angleField(),
	choice("shades", "How boards of several shades are laid: spread (neighbours of another shade where it can be) or apart (each shade has its part of the floor, in the order of the tally).", []stock.Shades{stock.SpreadShades, stock.ShadesApart}, func(w *job.Wishes) *stock.Shades { return &w.Shades }).or("spread"),
	wall("start_wall", "The first row lies along this wall.", func(w *job.Wishes) *room.Wall { return &w.StartWall }).or("strake's choice"),
	custom("run_through", "Rows run through this doorway without a break.", nameShape, func(d *decoder, n ast.Node, w *job.Wishes) {
		if v, ok := d.text(n, nameShape.words); ok && d.named(n.GetToken(), v, "doorway") {
			w.RunThrough = v
		}
	}),
	from("continuous_from", "Rows of this room, or through this doorway, go on without a break: the direction follows where nothing else gives it, unless that leaves a sliver.", func(w *job.Wishes) *string { return &w.From }),
	corner("edge_on", "A row edge falls on this corner or point, or on the row edge of the old floor beyond this doorway.", func(w *job.Wishes) *string { return &w.EdgeOn }),
	edge("full_board_at", "The row along this edge is a full board.", func(w *job.Wishes) *string { return &w.FullBoard }),
	wall("taper_at", "This wall takes all of the taper: rows run along the one that faces it, unless that leaves a sliver.", func(w *job.Wishes) *room.Wall { return &w.Taper }),
	seenField(),
	yes("start_middle", "The first two rows lie in the middle of the floor, groove to groove on a spline, and rows are laid from them both ways.", func(w *job.Wishes) *bool { return &w.Middle }).or("no"),
	choice("backwards", "What lies behind the start row and is laid backwards from a spline: short (what has no long row of its own to start from, such as closets), all, or none (each such place starts from a carried line).", []string{"short", "all", "none"}, func(w *job.Wishes) *string { return &w.Backwards }).or("short"),
	yes("wood_first", "Saving wood comes before looks.", func(w *job.Wishes) *bool { return &w.WoodFirst }).or("no"),
}}

// seenField reads walls where a taper would show.
func seenField() field[job.Wishes] {
	s := shape{words: "a list of walls, such as [A-B, C-D]", schema: map[string]any{"type": "array", "items": wallShape.schema}}
	return custom("seen_walls", "Walls where a taper would be seen: lit from the side, or along a hall. It is told there whatever it measures; the long walls of a hall are taken for such anyhow.", s, func(d *decoder, n ast.Node, w *job.Wishes) {
		nodes, _ := d.items(n, s.words)
		for i, v := range nodes {
			d.under(strconv.Itoa(i), v, func(n ast.Node) {
				if t, ok := d.text(n, wallShape.words); ok {
					if a, ok := d.pair(n.GetToken(), t, wallShape.words); ok {
						w.Seen = append(w.Seen, a)
					}
				}
			})
		}
	})
}

// angleField reads how far rows are turned from the wall they go by.
func angleField() field[job.Wishes] {
	s := shape{words: "degrees, such as 45", schema: map[string]any{"type": "number", "exclusiveMinimum": -90, "maximum": 90}}
	return custom("turned_by", "Rows are turned by so many degrees, counter-clockwise seen from above, from the direction they would have: 45 lays them diagonally.", s, func(d *decoder, n ast.Node, w *job.Wishes) {
		v, ok := d.text(n, s.words)
		if !ok {
			return
		}
		x, err := strconv.ParseFloat(v, 64)
		if err != nil || x <= -90 || x > 90 || x != x {
			d.fail(n.GetToken(), "this is no such angle", v, "a number of degrees over -90 and up to 90")
			return
		}
		w.Angle = x
	})
}

// betweenField reads two walls that rows are to run halfway between.
func betweenField() field[job.Wishes] {
	s := shape{words: "two walls, such as [A-B, C-D]", schema: map[string]any{"type": "array", "items": wallShape.schema, "minItems": 2, "maxItems": 2}}
	return custom("rows_between", "Rows run halfway between these two walls, which are nearly parallel (instead of rows_along).", s, func(d *decoder, n ast.Node, w *job.Wishes) {
		nodes, ok := d.items(n, s.words)
		if !ok {
			return
		}
		if len(nodes) != 2 || w.Direction != (room.Wall{}) {
			d.fail(n.GetToken(), "this wants two walls, and no rows_along or rows_across beside it", "", s.words)
			return
		}
		for i, v := range nodes {
			d.under(strconv.Itoa(i), v, func(n ast.Node) {
				if t, ok := d.text(n, wallShape.words); ok {
					w.Between[i], _ = d.pair(n.GetToken(), t, wallShape.words)
				}
			})
		}
	})
}

var (
	wallField = wall("", "", func(w *job.Wishes) *room.Wall { return &w.Direction })
	wallShape = wallField.shape
	nameShape = shape{words: "the name of a doorway", schema: map[string]any{"type": []any{"string", "number"}}}
)
