package jobfile

import (
	"github.com/goccy/go-yaml/ast"

	"strake/order"
)

// percent is a key whose value is a figure in percent, kept as a share.
func percent[T any](key, doc string, most float64, to func(*T) *float64, told func(*T) *bool) field[T] {
	return percentFrom(key, doc, 0, most, to, told)
}

// percentFrom is percent with a least figure.
func percentFrom[T any](key, doc string, least, most float64, to func(*T) *float64, told func(*T) *bool) field[T] {
	f := figure(key, doc, least, most, to)
	read := f.read
	f.read = func(d *decoder, n ast.Node, t *T) {
		before := len(d.errs)
		read(d, n, t)
		if len(d.errs) == before {
			*to(t) /= 100
			*told(t) = true
		}
	}
	return f
}

func orderField() field[draft] {
	tb := table[order.Wants]{fields: []field[order.Wants]{
		percentFrom("risk", "The chance of running short that you accept, in percent.", 0.1, 50, func(w *order.Wants) *float64 { return &w.Risk }, func(*order.Wants) *bool { return new(bool) }).or("1: " + order.SrcRisk),
		choice("layer", "Who lays: strict takes boards as they come and throws rests away; careful keeps a pile of rests and has boards to choose from; planned lays by a plan of the boards that are there.", order.Layers, func(w *order.Wants) *order.Layer { return &w.Layer }).or("careful"),
		percent("culls", "Of the boards, so many cannot be laid, in percent, as a mean over lots.", 50, func(w *order.Wants) *float64 { return &w.Culls }, func(w *order.Wants) *bool { return &w.CullsTold }).or("5: " + order.SrcCulls),
		percent("lots_differ", "How far lots differ in that, as a standard deviation in percent of it; 0 where all are alike.", 200, func(w *order.Wants) *float64 { return &w.Varies }, func(w *order.Wants) *bool { return &w.VariesTold }).or("60: " + order.SrcVaries),
		percent("spoiled", "Of the cuts, so many go wrong, in percent.", 50, func(w *order.Wants) *float64 { return &w.Spoiled }, func(w *order.Wants) *bool { return &w.SpoiledTold }).or("1: " + order.SrcSpoiled),
		whole("spares", "Cartons kept for repairs.", 0, 100, func(w *order.Wants) *int { return &w.Spares }).or("1: " + order.SrcSpares),
		whole("lead_days", "Days from ordering a further carton to having it here.", 0, 365, func(w *order.Wants) *int { return &w.Lead }).or("not known"),
		figure("rows_a_day", "Rows that are laid in a day: says by which row a further carton has to be ordered.", 0.1, 1000, func(w *order.Wants) *float64 { return &w.RowsADay }).or("about 90 sq ft a day: " + order.SrcPersonDay),
		figure("trip", "What a second trip or delivery costs, in the currency of the boards.", 0, 1e6, func(w *order.Wants) *float64 { return &w.Trip }).or("not counted"),
		percent("refund", "What comes back of the price of a whole carton that is returned, in percent.", 100, func(w *order.Wants) *float64 { return &w.Refund }, func(w *order.Wants) *bool { return &w.RefundTold }).or("cartons cannot go back"),
	}}
	return told(sub("order", "How many cartons are bought: the risk you accept, who lays, how good the boards are. strake order answers.", tb, func(j *draft) *order.Wants { return &j.Order }), func(j *draft) { j.Order.Told = true })
}
