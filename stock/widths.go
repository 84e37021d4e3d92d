package stock

import (
	"slices"

	"strake/tape"
)

// Several are the boards of a job with several face widths: for the face, the
// ten-board width of all stand those of the widest, for what is known of the
// lengths the least that is known of any.
func Several(b Boards) Boards {
	if len(b.Widths) == 0 {
		return b
	}
	widest := slices.MaxFunc(b.Widths, func(a, c Boards) int { return int(a.Face - c.Face) })
	b.Face, b.TenBoards = widest.Face, widest.TenBoards
	b.Known, b.ReadTo, b.Slip, b.Doubted, b.Shift = OneSize, 0, 0, false, b.Widths[0].Shift
	for _, w := range b.Widths {
		switch {
		case w.Known == MixOnly || b.Known == MixOnly:
			b.Known = MixOnly
		case w.Known == Tallied:
			b.Known = Tallied
		}
		if w.Shift != b.Shift || w.Longest() != b.Widths[0].Longest() {
			b.Shift = Shift{} // joints of a pattern lie a board apart in every row
		}
		b.ReadTo, b.Slip, b.Doubted = max(b.ReadTo, w.ReadTo), max(b.Slip, w.Slip), b.Doubted || w.Doubted
	}
	return b
}

// Each is the boards of each face width, the narrowest first, with what is
// common to all; the boards themselves where all are alike.
func (b Boards) Each() []Boards {
	if len(b.Widths) == 0 {
		return []Boards{b}
	}
	var out []Boards
	for _, w := range b.Widths {
		one := b
		one.Face, one.TenBoards = w.Face, w.TenBoards
		one.Known, one.Tally, one.One, one.OneCount, one.Mix = w.Known, w.Tally, w.One, w.OneCount, w.Mix
		one.ReadTo, one.Slip, one.Doubted, one.Shift = w.ReadTo, w.Slip, w.Doubted, w.Shift
		one.Widths, one.Pattern = nil, nil
		out = append(out, one)
	}
	slices.SortFunc(out, func(a, c Boards) int { return int(a.Face - c.Face) })
	return out
}

// Delivered is the length of all boards, without culls and damaged ends; false
// where it is not known.
func (b Boards) Delivered() (tape.Length, bool) {
	switch b.Known {
	case Tallied:
		var sum tape.Length
		for _, c := range b.Tally {
			if !c.Fault.Cull() {
				sum += (c.Length - c.Spoiled) * tape.Length(c.Count)
			}
		}
		return sum, true
	case OneSize:
		return b.One * tape.Length(b.OneCount), b.OneCount > 0
	}
	return 0, false
}

// Faces are the face widths of the rows in turn, over and over: as the job has
// them, else as proposed from what was delivered; one where all are alike.
func (b Boards) Faces() []tape.Length {
	switch {
	case len(b.Widths) == 0:
		return []tape.Length{b.Face}
	case len(b.Pattern) > 0:
		return b.Pattern
	}
	each := b.Each()
	lengths := make([]tape.Length, len(each))
	for i, w := range each {
		lengths[i], _ = w.Delivered()
	}
	var out []tape.Length
	for _, i := range Propose(lengths) {
		out = append(out, each[i].Face)
	}
	return out
}

// Pitches are the widths that the rows take up in turn, over and over.
func (b Boards) Pitches() []tape.Length {
	if len(b.Widths) == 0 {
		return []tape.Length{b.Pitch()}
	}
	var out []tape.Length
	for _, f := range b.Faces() {
		w, _ := b.OfFace(f)
		out = append(out, w.Pitch())
	}
	return out
}

// OfFace is the boards of a face width; false when there are none.
func (b Boards) OfFace(face tape.Length) (Boards, bool) {
	for _, w := range b.Each() {
		if w.Face == face {
			return w, true
		}
	}
	return b, false
}

// OfPitch is the boards whose rows are so wide; false when there are none.
func (b Boards) OfPitch(pitch tape.Length) (Boards, bool) {
	for _, w := range b.Each() {
		if w.Pitch() == pitch {
			return w, true
		}
	}
	return b, false
}

// NarrowestPitch is what the narrowest rows take up.
func (b Boards) NarrowestPitch() tape.Length {
	least := tape.Longest
	for _, w := range b.Each() {
		least = min(least, w.Pitch())
	}
	return least
}
