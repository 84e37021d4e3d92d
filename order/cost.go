package order

import "strake/tape"

// Terms are what buying costs: a carton, a second trip or delivery for more, and
// what share of its price comes back with a whole carton that is returned.
type Terms struct{ Price, Trip, Refund float64 }

// Cost is what a number of cartons costs on average over lays, those included that
// they do not do for: further cartons are fetched in one more trip. Whole cartons
// left over go back for what is refunded.
func Cost(ns []Need, carton tape.Length, cartons int, t Terms) float64 {
	if len(ns) == 0 || carton <= 0 {
		return 0
	}
	var sum float64
	for _, n := range ns {
		takes := int((n.Taken + carton - 1) / carton)
		sum += float64(cartons) * t.Price
		if takes > cartons {
			sum += t.Trip + float64(takes-cartons)*t.Price
		} else {
			sum -= float64(cartons-takes) * t.Price * t.Refund
		}
	}
	return sum / float64(len(ns))
}

// PersonDay is the area that one person lays in a day, in square feet, where the job
// gives no rows a day.
const PersonDay = 90.0

// SrcPersonDay is where it comes from.
const SrcPersonDay = "common practice, no source: one person lays about 90 sq ft a day"

// Deadline is the last row before which a further carton is ordered to be here when
// the last row is laid: so many rows, at a rate, with days from order to delivery.
// Below 1 it is too late once the first row is begun.
func Deadline(rows int, aDay float64, lead int) int {
	taken := int(float64(lead) * aDay)
	if float64(taken) < float64(lead)*aDay {
		taken++
	}
	return rows - taken
}
