package section

import "strake/sheet"

// The pens of all details and cards, here and nowhere else, in mm.
var (
	Heavy    = sheet.Pen{Width: 0.55, Ink: sheet.Black}                                    // round what is cut
	Visible  = sheet.Pen{Width: 0.35, Ink: sheet.Black}                                    // round what is seen
	Light    = sheet.Pen{Width: 0.25, Ink: sheet.Black}                                    // edges of little weight: ticks, bevels
	Thin     = sheet.Pen{Width: 0.18, Ink: sheet.Black}                                    // dimensions, leaders, break lines
	Hatching = sheet.Pen{Width: 0.13, Ink: sheet.Black}                                    // what a material is made of
	Hidden   = sheet.Pen{Width: 0.25, Ink: sheet.Black, Dash: []float64{2, 1}}             // behind or under something
	Chain    = sheet.Pen{Width: 0.25, Ink: sheet.Black, Dash: []float64{6, 1.2, 0.8, 1.2}} // lines to snap, centres
)

// Sizes of writing, mm of the font. None is under 2.5.
const (
	Small  = 3.2 // notes and dimensions: read at arm's length
	Middle = 3.6 // names in a drawing
	Large  = 4.2 // what has to be found first
)
