package jobfile

import (
	"strake/finding"
	"strake/lay"
	"strake/plane"
	"strake/room"
	"strake/stock"
)

// toWire is a lay as it is written.
func toWire(l lay.Lay) wireLay {
	return wireLay{
		Version: LayVersion, Unit: layUnit,
		Example: l.Example, Known: l.Known, Seed: l.Seed, Kerf: l.Kerf,
		Zones: turn(l.Zones, toZone), Runs: turn(l.Runs, toRun), Pieces: turn(l.Pieces, toPiece), Boards: turn(l.Boards, toBoard),
		Spare:    turn(l.Spare, toClass),
		Relaxed:  turn(l.Relaxed, func(r lay.Relaxation) wireRelaxation { return wireRelaxation(r) }),
		Exempt:   turn(l.Exempt, func(e lay.Exemption) wireExemption { return wireExemption(e) }),
		Pins:     turn(l.Pins, toPin),
		Findings: turn(l.Findings, toFinding),
	}
}

// fromWire is a lay from what was written.
func fromWire(w wireLay) lay.Lay {
	return lay.Lay{
		Example: w.Example, Known: w.Known, Seed: w.Seed, Kerf: w.Kerf,
		Zones: turn(w.Zones, fromZone), Runs: turn(w.Runs, fromRun), Pieces: turn(w.Pieces, fromPiece), Boards: turn(w.Boards, fromBoard),
		Spare:    turn(w.Spare, fromClass),
		Relaxed:  turn(w.Relaxed, func(r wireRelaxation) lay.Relaxation { return lay.Relaxation(r) }),
		Exempt:   turn(w.Exempt, func(e wireExemption) lay.Exemption { return lay.Exemption(e) }),
		Pins:     turn(w.Pins, fromPin),
		Findings: turn(w.Findings, fromFinding),
	}
}

func toPin(p lay.Pin) wirePin {
	w := wirePin{Kind: p.Kind, Where: p.Where, Width: p.Width}
	if p.At != (plane.XY{}) {
		w.At = []float64{p.At.X, p.At.Y}
	}
	if p.Wall != (room.Wall{}) {
		w.Wall = p.Wall[:]
	}
	return w
}

func fromPin(w wirePin) lay.Pin {
	p := lay.Pin{Kind: w.Kind, Where: w.Where, Width: w.Width}
	if len(w.At) == 2 {
		p.At = plane.XY{X: w.At[0], Y: w.At[1]}
	}
	if len(w.Wall) == 2 {
		p.Wall = room.Wall{w.Wall[0], w.Wall[1]}
	}
	return p
}

func toZone(z lay.Zone) wireZone {
	return wireZone{z.ID, z.Kind, []float64{z.Dir.X, z.Dir.Y}, z.Width, z.Offset, z.Ahead, z.Hand, turn(z.Outline, toRing), z.Butt, z.Pattern}
}

func fromZone(w wireZone) lay.Zone {
	return lay.Zone{
		ID: w.ID, Kind: w.Kind, Dir: plane.Dir{X: w.Dir[0], Y: w.Dir[1]}, Width: w.Width, Offset: w.Offset,
		Ahead: w.Ahead, Hand: w.Hand, Outline: turn(w.Outline, fromRing), Butt: w.Butt, Pattern: w.Pattern,
	}
}

func toRun(r lay.Run) wireRun {
	return wireRun{
		ID: r.ID, Zone: r.Zone, Row: r.Row, Part: r.Part, Low: r.Low, High: r.High, Outline: toRing(r.Outline),
		Pieces: r.Pieces, Order: r.Order, Nailing: turn(r.Nailing, toStretch), Left: wireEnd(r.LeftEnd), Right: wireEnd(r.RightEnd), Unfilled: r.Unfilled,
	}
}

func fromRun(w wireRun) lay.Run {
	return lay.Run{
		ID: w.ID, Zone: w.Zone, Row: w.Row, Part: w.Part, Low: w.Low, High: w.High, Outline: fromRing(w.Outline),
		Pieces: w.Pieces, Order: w.Order, Nailing: turn(w.Nailing, fromStretch), LeftEnd: lay.EndRange(w.Left), RightEnd: lay.EndRange(w.Right), Unfilled: w.Unfilled,
	}
}

func toStretch(s lay.Stretch) wireStretch {
	return wireStretch{By: s.By, From: s.Along.From, To: s.Along.To}
}

func fromStretch(w wireStretch) lay.Stretch {
	return lay.Stretch{Along: plane.Span{From: w.From, To: w.To}, By: w.By}
}

func toPiece(p lay.Piece) wirePiece {
	return wirePiece{
		ID: p.ID, Run: p.Run, Board: p.Board, Outline: toRing(p.Outline), InBoard: toRing(p.InBoard), Turned: p.Turned,
		Left: p.Left, Right: p.Right, Behind: p.Behind, Ahead: p.Ahead,
		Off: toSpans(p.Off), Slip: toSpans(p.Slip), Routed: turn(p.Routed, toRouted), How: p.How,
	}
}

func fromPiece(w wirePiece) lay.Piece {
	return lay.Piece{
		ID: w.ID, Run: w.Run, Board: w.Board, Outline: fromRing(w.Outline), InBoard: fromRing(w.InBoard), Turned: w.Turned,
		Left: w.Left, Right: w.Right, Behind: w.Behind, Ahead: w.Ahead,
		Off: fromSpans(w.Off), Slip: fromSpans(w.Slip), Routed: turn(w.Routed, fromRouted), How: w.How,
	}
}

func toRouted(r lay.Routed) wireRouted {
	return wireRouted{Line: wireRing{r.From.X, r.From.Y, r.To.X, r.To.Y}, As: r.As}
}

func fromRouted(w wireRouted) lay.Routed {
	return lay.Routed{From: plane.Pt{X: w.Line[0], Y: w.Line[1]}, To: plane.Pt{X: w.Line[2], Y: w.Line[3]}, As: w.As}
}

func toClass(c stock.Class) wireClass {
	return wireClass{c.Length, c.Count, c.Width, wireMarks(c.Marks)}
}

func fromClass(w wireClass) stock.Class {
	return stock.Class{Length: w.Length, Count: w.Count, Width: w.Width, Marks: stock.Marks(w.wireMarks)}
}

func toBoard(b lay.Board) wireBoard {
	return wireBoard{b.ID, b.Length, b.Width, wireMarks(b.Marks), turn(b.Parts, func(p lay.Part) wirePart { return wirePart{p.Kind, p.Piece, toRing(p.Outline)} })}
}

func fromBoard(w wireBoard) lay.Board {
	return lay.Board{ID: w.ID, Length: w.Length, Width: w.Width, Marks: stock.Marks(w.wireMarks), Parts: turn(w.Parts, func(p wirePart) lay.Part {
		return lay.Part{Kind: p.Kind, Piece: p.Piece, Outline: fromRing(p.Outline)}
	})}
}

func toFinding(f finding.Finding) wireFinding {
	return wireFinding{string(f.Level), f.Rule, f.Where, f.Measured, f.Limit, f.Do, f.Source, f.Pieces}
}

func fromFinding(w wireFinding) finding.Finding {
	return finding.Finding{Level: finding.Level(w.Level), Rule: w.Rule, Where: w.Where, Measured: w.Measured, Limit: w.Limit, Do: w.Do, Source: w.Source, Pieces: w.Pieces}
}
