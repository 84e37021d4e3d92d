package sheet

// Moved are items k times as large, their origin moved to at. Widths of pens and
// dashes stay as they are.
func Moved(items []Item, at Pt, k float64) []Item {
	out := make([]Item, len(items))
	for i, it := range items {
		out[i] = moved(it, at, k)
	}
	return out
}

func moved(it Item, at Pt, k float64) Item {
	switch it := it.(type) {
	case Polyline:
		it.Points = movedAll(it.Points, at, k)
		return it
	case Polygon:
		rings := make([][]Pt, len(it.Rings))
		for i, r := range it.Rings {
			rings[i] = movedAll(r, at, k)
		}
		it.Rings = rings
		return it
	case Text:
		it.At = it.At.Times(k).Add(at)
		it.Size *= k
		return it
	}
	return it
}

func movedAll(ps []Pt, at Pt, k float64) []Pt {
	out := make([]Pt, len(ps))
	for i, p := range ps {
		out[i] = p.Times(k).Add(at)
	}
	return out
}
