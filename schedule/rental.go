package schedule

// Rental is when floor nailer and compressor are in the house.
type Rental struct {
	From, To  Day // 0: they have no date
	First, No int // without dates: the first day of laying, and the last
	Worked    int // days that rows are laid with them
	Off       int // days in between on which nobody works
	Needed    bool
}

// Days is how many days are paid, from the day of pick-up to that of return.
func (r Rental) Days() int {
	if r.From > 0 {
		return int(r.To-r.From) + 1
	}
	return r.No - r.First + 1
}

// Start is the day of pick-up as it is said, Return that of return.
func (r Rental) Start() string { return Workday{Day: r.From, Number: r.First}.When() }

// Return is the day of return as it is said.
func (r Rental) Return() string { return Workday{Day: r.To, Number: r.No}.When() }

// rental are the days from the first row that the nailer reaches to the last.
func (c Calendar) rental() Rental {
	var r Rental
	for _, d := range c.Days {
		if !c.nailed(d) {
			continue
		}
		r.Worked++
		if !r.Needed {
			r.From, r.First = d.Day, d.Number
		}
		r.Needed, r.To, r.No = true, d.Day, d.Number
	}
	for d := r.From; r.From > 0 && d <= r.To; d++ {
		if c.Job.free(d) {
			r.Off++
		}
	}
	return r
}

func (c Calendar) nailed(d Workday) bool {
	for _, s := range d.Slots {
		rows := c.Steps[s.Step].rows
		for _, r := range rows[s.from:min(len(rows), s.rows+1)] { // with one begun, too
			if r.SqFt[FieldRows] > 0 {
				return true
			}
		}
	}
	return false
}
