package method

import (
	"strake/section"
	"strake/sheet"
)

// Tools are plain outlines, in real mm, each with the place that does its work at
// the origin: they are sized, turned and moved from there.

// tool draws an outline in white with a strong edge.
func (c pic) tool(ring []section.XY, degrees float64, at section.XY) {
	c.Area("", sheet.White, section.Heavy, turned(ring, degrees, at)...)
}

// dark draws an outline filled with black.
func (c pic) dark(ring []section.XY, degrees float64, at section.XY) {
	c.Area("", sheet.Black, section.Visible, turned(ring, degrees, at)...)
}

// sized is a ring k times as large.
func sized(ring []section.XY, k float64) []section.XY {
	out := make([]section.XY, len(ring))
	for i, p := range ring {
		out[i] = section.At(float64(k*p.X), float64(k*p.Y))
	}
	return out
}

// flipped is a ring turned over, top to bottom.
func flipped(ring []section.XY) []section.XY {
	out := make([]section.XY, len(ring))
	for i, p := range ring {
		out[len(ring)-1-i] = section.At(p.X, -p.Y)
	}
	return out
}

// hammer strikes to the left at the origin, its handle hanging down; over: up.
func (c pic) hammer(k, degrees float64, at section.XY, over bool) {
	handle := ring(46, -8, 60, -8, 63, -110, 43, -110)
	head := ring(0, -13, 7, -13, 12, -9, 34, -9, 38, -13, 66, -13, 84, -2, 94, 8, 80, 6, 66, 12, 38, 12, 34, 8, 12, 8, 7, 13, 0, 13)
	if over {
		handle, head = flipped(handle), flipped(head)
	}
	c.tool(sized(handle, k), degrees, at)
	c.dark(sized(head, k), degrees, at)
}

// nailSet points to the left at the origin.
func (c pic) nailSet(k, degrees float64, at section.XY) {
	c.tool(sized(ring(0, -1.5, 24, -4.5, 72, -4.5, 72, -6.5, 80, -6.5, 80, 6.5, 72, 6.5, 72, 4.5, 24, 4.5, 0, 1.5), k), degrees, at)
}

// drill is a bit so long that points to the left at the origin, in its chuck.
func (c pic) drill(degrees float64, at section.XY, long float64) {
	c.dark(ring(0, 0, 1.6, -0.9, long, -0.9, long, 0.9, 1.6, 0.9), degrees, at)
	c.tool(ring(long, -2, long+6, -6, long+18, -6.5, long+18, 6.5, long+6, 6, long, 2), degrees, at)
	c.tool(ring(long+18, -9, long+26, -9, long+26, 9, long+18, 9), degrees, at)
}

// pullBar lies on y 0 from its anvil at x -long to its hook, which reaches down
// over an edge at x 0.
func (c pic) pullBar(at section.XY, long, down float64) {
	const t = 3.5
	c.dark(ring(t, -down, 0, -down, 0, 0, -long, 0, -long, 26, -long+6, 26, -long+6, t, t, t), 0, at)
}

// screwHead is a screw seen from above.
func (c pic) screwHead(at section.XY) {
	c.Area("", sheet.White, section.Visible, circle(at, 1.3)...)
	c.Line(section.Light, at.Add(section.At(-0.9, -0.9)), at.Add(section.At(0.9, 0.9)))
	c.Line(section.Light, at.Add(section.At(-0.9, 0.9)), at.Add(section.At(0.9, -0.9)))
}

// dot is a nail seen from above.
func (c pic) dot(at section.XY) { c.Area("", sheet.Black, section.Light, circle(at, 0.7)...) }
