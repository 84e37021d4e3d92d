package lay

import "strake/tape"

// Courses are the lines between rows: one at Offset, and from it on toward +Y
// one after each of the widths in turn, over and over, and likewise the other
// way. Widths [2, 4, 3] from 0 have lines at 0, 2, 6, 9, 11 ..., and at -3, -7,
// -9. Rows of one width are the pattern of that one.
type Courses struct {
	Offset tape.Length
	Widths []tape.Length // one at least, each above 0
}

// CoursesOf are rows from a line at offset that follow a pattern; with no
// pattern they are all of one width.
func CoursesOf(offset, width tape.Length, pattern []tape.Length) Courses {
	if len(pattern) == 0 {
		pattern = []tape.Length{width}
	}
	return Courses{offset, pattern}
}

// Courses are the lines between the rows of a zone.
func (z Zone) Courses() Courses { return CoursesOf(z.Offset, z.Width, z.Pattern) }

// Period is what the pattern takes up before it begins again.
func (c Courses) Period() tape.Length {
	var sum tape.Length
	for _, w := range c.Widths {
		sum += w
	}
	return sum
}

// Row is the row that holds height y, its low line counted in: 0 is the one on
// the line at Offset, those below it are counted down from -1.
func (c Courses) Row(y tape.Length) int {
	period := c.Period()
	over := (y - c.Offset) % period
	if over < 0 {
		over += period
	}
	n := int((y - c.Offset - over) / period * tape.Length(len(c.Widths)))
	for _, w := range c.Widths {
		if over < w {
			break
		}
		over -= w
		n++
	}
	return n
}

// Line is the low line of row n.
func (c Courses) Line(n int) tape.Length {
	k := n % len(c.Widths)
	if k < 0 {
		k += len(c.Widths)
	}
	y := c.Offset + tape.Length((n-k)/len(c.Widths))*c.Period()
	for _, w := range c.Widths[:k] {
		y += w
	}
	return y
}

// Width is how wide row n is.
func (c Courses) Width(n int) tape.Length {
	if n %= len(c.Widths); n < 0 {
		n += len(c.Widths)
	}
	return c.Widths[n]
}

// Below is the last line at or below y.
func (c Courses) Below(y tape.Length) tape.Length { return c.Line(c.Row(y)) }

// Above is the first line at or above y.
func (c Courses) Above(y tape.Length) tape.Length { return c.Line(c.Row(y-1) + 1) }

// Widest is the width of the widest row.
func (c Courses) Widest() tape.Length {
	var w tape.Length
	for _, v := range c.Widths {
		w = max(w, v)
	}
	return w
}
