package jobfile

import (
	"strake/goods"
	"strake/tape"
)

// The ranges of what is sold: a wrong unit falls out of them.
var (
	aBar  = within{300 * mm, 7500 * mm}
	aRoll = within{1000 * mm, 300_000 * mm}
)

var rollTable = table[goods.Roll]{fields: []field[goods.Roll]{
	length("width", "Its width.", within{300 * mm, 4000 * mm}, func(r *goods.Roll) *tape.Length { return &r.Width }).or("36 in"),
	length("length", "Its length.", aRoll, func(r *goods.Roll) *tape.Length { return &r.Length }).or("144 ft: " + goods.SrcRoll),
	length("lap", "How far each sheet lies over the one before.", within{0, 300 * mm}, func(r *goods.Roll) *tape.Length { return &r.Lap }).or("4 in: " + goods.SrcLap),
}}

var glueTable = table[goods.Glue]{fields: []field[goods.Glue]{
	length("bead", "How thick a bead is.", within{2 * mm, 15 * mm}, func(g *goods.Glue) *tape.Length { return &g.Bead }).or("1/4 in"),
	length("apart", "From one bead to the next; they lie across the rows.", within{30 * mm, 1000 * mm}, func(g *goods.Glue) *tape.Length { return &g.Apart }).or("12 in: " + goods.SrcGlue),
	figure("tube", "What a tube holds, in millilitres.", 50, 20_000, func(g *goods.Glue) *float64 { return &g.Tube }).or("828 (28 fl oz)"),
}}

var toolTable = table[goods.Tool]{fields: []field[goods.Tool]{
	choice("have", "How it comes to the site.", []goods.Have{goods.Own, goods.Rent, goods.Borrow, goods.BuyOne}, func(t *goods.Tool) *goods.Have { return &t.Have }).must(),
	whole("days", "With rent: for so many days.", 1, 365, func(t *goods.Tool) *int { return &t.Days }).or("of floor nailer and compressor those that the schedule has them in the house; else 1"),
	price("daily", "With rent: what a day of it costs.", func(t *goods.Tool) *goods.Money { return &t.Daily }).or("not known"),
	price("price", "With buy: what it costs.", func(t *goods.Tool) *goods.Money { return &t.Price }).or("not known"),
}}

func goodsField() field[draft] {
	ways := []goods.Way{goods.Refit, goods.Buy, goods.NoWay}
	tb := table[goods.Wants]{fields: []field[goods.Wants]{
		choice("base", "What becomes of the base: refit (what is there comes off, numbered by wall, and goes on again), buy, or none.", ways, func(w *goods.Wants) *goods.Way { return &w.Base }).or("refit"),
		choice("shoe", "What becomes of the shoe.", ways, func(w *goods.Wants) *goods.Way { return &w.Shoe }).or("buy"),
		lengths("base_sold", "Lengths that base is sold in.", "[8', 12', 16']", aBar, func(w *goods.Wants) *[]tape.Length { return &w.BaseSold }).or(goods.SrcBase),
		lengths("shoe_sold", "Lengths that shoe is sold in.", "[8', 12']", aBar, func(w *goods.Wants) *[]tape.Length { return &w.ShoeSold }).or("8, 12 and 16 ft"),
		lengths("strip_sold", "Lengths that transition strips are sold in.", "[78 in]", aBar, func(w *goods.Wants) *[]tape.Length { return &w.StripSold }).or("78 in: " + goods.SrcStrip),
		lengths("nosing_sold", "Lengths that nosings are sold in.", "[78 in]", aBar, func(w *goods.Wants) *[]tape.Length { return &w.NosingSold }).or("78 in"),
		yes("joints_in_doorways", "A strip may be joined in a doorway that is wider than a bar; a nosing never.", func(w *goods.Wants) *bool { return &w.DoorJoints }).or("no"),
		told(length("fit", "What every piece is cut longer by, to be fitted.", within{0, 50 * mm}, func(w *goods.Wants) *tape.Length { return &w.Fit }), func(w *goods.Wants) { w.FitTold = true }).or("1/2 in: " + goods.SrcFit),
		told(length("casing", "From a jamb's face to the outer edge of its casing, at doorways that do not say: base and shoe stop there.", within{0, 400 * mm}, func(w *goods.Wants) *tape.Length { return &w.Casing }), func(w *goods.Wants) { w.CasingTold = true }).or("2-1/2 in: " + goods.SrcCasing),
		sub("roll", "The roll that the sheet under the boards comes in.", rollTable, func(w *goods.Wants) *goods.Roll { return &w.Roll }),
		length("staple_every", "From one staple to the next along the edges of a sheet.", within{50 * mm, 2000 * mm}, func(w *goods.Wants) *tape.Length { return &w.StapleEvery }).or("12 in: " + goods.SrcStaple),
		sub("glue", "How adhesive goes on, where boards are glued as well as nailed (glue: yes under site).", glueTable, func(w *goods.Wants) *goods.Glue { return &w.Glue }),
		length("spline_sold", "The length that splines (slip tongues) are sold in.", within{200 * mm, 7500 * mm}, func(w *goods.Wants) *tape.Length { return &w.SplineSold }).or("36 in: " + goods.SrcSpline),
		each("tools", "How tools come to the site, each by its name on the list.", "tool", toolTable, func(w *goods.Wants, name string, t goods.Tool) {
			t.Name = name
			w.Tools = append(w.Tools, t)
		}).or("not told"),
	}}
	return told(sub("goods", "What else has to be on site, and in what it is sold: strake order counts it.", tb, func(j *draft) *goods.Wants { return &j.Goods }), func(j *draft) { j.Goods.Told = true })
}
