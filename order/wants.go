package order

// Wants is what the person says of the buying; zero figures are the defaults.
type Wants struct {
	Told     bool
	Risk     float64 // chance of running short that is accepted
	Layer    Layer
	Culls    float64 // mean share of culls
	Varies   float64 // standard deviation over mean from lot to lot
	Spoiled  float64 // share of the cuts that go wrong
	Spares   int     // cartons kept for repairs
	Lead     int     // days from ordering a further carton to having it
	Trip     float64 // what a second trip or delivery costs
	RowsADay float64 // laid, 0 not told
	Refund   float64 // share of its price that comes back with a whole carton

	CullsTold, VariesTold, SpoiledTold, SparesTold, RefundTold bool
}

// The defaults, with their sources.
const (
	Risk   = 0.01
	Culls  = 0.05
	Spares = 1

	SrcRisk    = "common practice, no source: one in a hundred"
	SrcCulls   = "makers' instructions and grading rules (MFMA among them): up to 5 % of defects are within grade"
	SrcVaries  = "common practice, no source: lots differ, 5 % in one is 2 or 8 in another"
	SrcSpoiled = "common practice, no source: one cut in a hundred goes wrong"
	SrcSpares  = "an installer's published guide: part of a carton is kept for repairs"
)

// Filled is w with the defaults where nothing was told.
func (w Wants) Filled() Wants {
	if w.Risk == 0 {
		w.Risk = Risk
	}
	if w.Layer == "" {
		w.Layer = Careful
	}
	for _, x := range []struct {
		told bool
		to   *float64
		is   float64
	}{{w.CullsTold, &w.Culls, Culls}, {w.VariesTold, &w.Varies, LotVaries}, {w.SpoiledTold, &w.Spoiled, Spoiled}} {
		if !x.told {
			*x.to = x.is
		}
	}
	if !w.SparesTold {
		w.Spares = Spares
	}
	return w
}
