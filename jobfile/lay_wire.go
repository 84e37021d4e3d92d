package jobfile

import (
	"strake/lay"
	"strake/plane"
	"strake/stock"
	"strake/tape"
)

// LayVersion is the version of the written lay.
const LayVersion = 1

// layUnit is the unit of every length in a written lay.
const layUnit = "125 nm"

// The wire types are a lay as it stands in plan.json. A ring is a flat list
// x, y, x, y ...; a list that is absent is nil, one that is empty is empty.
type (
	wireLay struct {
		Version  int              `json:"strake_lay"`
		Unit     string           `json:"unit"`
		Example  bool             `json:"example"`
		Known    stock.Known      `json:"known"`
		Seed     uint64           `json:"seed"`
		Kerf     tape.Length      `json:"kerf"`
		Zones    []wireZone       `json:"zones,omitzero"`
		Runs     []wireRun        `json:"runs,omitzero"`
		Pieces   []wirePiece      `json:"pieces,omitzero"`
		Boards   []wireBoard      `json:"boards,omitzero"`
		Spare    []wireClass      `json:"spare,omitzero"`
		Relaxed  []wireRelaxation `json:"relaxed,omitzero"`
		Exempt   []wireExemption  `json:"exempt,omitzero"`
		Pins     []wirePin        `json:"pins,omitzero"`
		Findings []wireFinding    `json:"findings,omitzero"`
	}
	wireRing []tape.Length
	wireZone struct {
		ID      int           `json:"id"`
		Kind    lay.ZoneKind  `json:"kind"`
		Dir     []float64     `json:"dir"`
		Width   tape.Length   `json:"width"`
		Offset  tape.Length   `json:"offset"`
		Ahead   int           `json:"ahead"`
		Hand    stock.Hand    `json:"hand"`
		Outline []wireRing    `json:"outline,omitzero"`
		Butt    tape.Length   `json:"butt,omitzero"`
		Pattern []tape.Length `json:"pattern,omitzero"`
	}
	wireRun struct {
		ID       int           `json:"id"`
		Zone     int           `json:"zone"`
		Row      int           `json:"row"`
		Part     int           `json:"part,omitzero"`
		Low      tape.Length   `json:"low"`
		High     tape.Length   `json:"high"`
		Outline  wireRing      `json:"outline,omitzero"`
		Pieces   []int         `json:"pieces,omitzero"`
		Order    int           `json:"order"`
		Nailing  []wireStretch `json:"nailing,omitzero"`
		Left     wireEnd       `json:"left"`
		Right    wireEnd       `json:"right"`
		Unfilled bool          `json:"unfilled,omitzero"`
	}
	wireStretch struct {
		By   lay.Fasten  `json:"by"`
		From tape.Length `json:"from"`
		To   tape.Length `json:"to"`
	}
	wireEnd struct {
		Edge    string      `json:"edge,omitzero"`
		Reach   tape.Length `json:"reach"`
		Need    tape.Length `json:"need"`
		Mitred  bool        `json:"mitred,omitzero"`
		InPlace bool        `json:"in_place,omitzero"`
	}
	wirePiece struct {
		ID      int          `json:"id"`
		Run     int          `json:"run"`
		Board   int          `json:"board"`
		Outline wireRing     `json:"outline,omitzero"`
		InBoard wireRing     `json:"in_board,omitzero"`
		Turned  bool         `json:"turned,omitzero"`
		Left    lay.Profile  `json:"left"`
		Right   lay.Profile  `json:"right"`
		Behind  lay.Profile  `json:"behind"`
		Ahead   lay.Profile  `json:"ahead"`
		Off     wireRing     `json:"off,omitzero"`  // from, to, from, to ...
		Slip    wireRing     `json:"slip,omitzero"` // likewise
		Routed  []wireRouted `json:"routed,omitzero"`
		How     lay.How      `json:"how,omitzero"`
	}
	wireRouted struct {
		Line wireRing    `json:"line"` // x, y to x, y
		As   lay.Profile `json:"as"`
	}
	wireBoard struct {
		ID     int         `json:"id"`
		Length tape.Length `json:"length"`
		Width  tape.Length `json:"width"`
		wireMarks
		Parts []wirePart `json:"parts,omitzero"`
	}
	wireMarks struct {
		Fault   stock.Fault `json:"fault,omitzero"`
		Spoiled tape.Length `json:"spoiled,omitzero"`
		Carton  string      `json:"carton,omitzero"`
		Shade   string      `json:"shade,omitzero"`
	}
	wirePart struct {
		Kind    lay.PartKind `json:"kind"`
		Piece   int          `json:"piece"`
		Outline wireRing     `json:"outline,omitzero"`
	}
	wireClass struct {
		Length tape.Length `json:"length"`
		Count  int         `json:"count"`
		Width  tape.Length `json:"width,omitzero"`
		wireMarks
	}
	wireRelaxation struct {
		Rule string      `json:"rule"`
		Run  int         `json:"run"`
		From tape.Length `json:"from"`
		To   tape.Length `json:"to"`
		Why  string      `json:"why,omitzero"`
	}
	wireExemption struct {
		Rule string      `json:"rule"`
		Run  int         `json:"run"`
		Edge string      `json:"edge,omitzero"`
		To   tape.Length `json:"to,omitzero"`
		Pin  string      `json:"pin,omitzero"`
		Why  string      `json:"why,omitzero"`
	}
	wirePin struct {
		Kind  lay.PinKind `json:"kind"`
		Where string      `json:"where,omitzero"`
		At    []float64   `json:"at_mm,omitzero"` // x, y on the floor plan
		Wall  []string    `json:"wall,omitzero"`
		Width tape.Length `json:"width,omitzero"`
	}
	wireFinding struct {
		Level    string `json:"level"`
		Rule     string `json:"rule"`
		Where    string `json:"where,omitzero"`
		Measured string `json:"measured,omitzero"`
		Limit    string `json:"limit,omitzero"`
		Do       string `json:"do,omitzero"`
		Source   string `json:"source,omitzero"`
		Pieces   []int  `json:"pieces,omitzero"`
	}
)

// turn turns every element of a list, keeping the difference between no list
// and an empty one.
func turn[A, B any](in []A, f func(A) B) []B {
	if in == nil {
		return nil
	}
	out := make([]B, len(in))
	for i, a := range in {
		out[i] = f(a)
	}
	return out
}

func toRing(r plane.Ring) wireRing {
	if r == nil {
		return nil
	}
	out := make(wireRing, 0, 2*len(r))
	for _, p := range r {
		out = append(out, p.X, p.Y)
	}
	return out
}

func fromRing(w wireRing) plane.Ring {
	if w == nil {
		return nil
	}
	out := make(plane.Ring, len(w)/2)
	for i := range out {
		out[i] = plane.Pt{X: w[2*i], Y: w[2*i+1]}
	}
	return out
}

func toSpans(in []plane.Span) wireRing {
	if in == nil {
		return nil
	}
	out := make(wireRing, 0, 2*len(in))
	for _, s := range in {
		out = append(out, s.From, s.To)
	}
	return out
}

func fromSpans(w wireRing) []plane.Span {
	if w == nil {
		return nil
	}
	out := make([]plane.Span, len(w)/2)
	for i := range out {
		out[i] = plane.Span{From: w[2*i], To: w[2*i+1]}
	}
	return out
}
