package schedule

import "time"

// Crew is who does the work.
type Crew string

// The crews.
const (
	Alone       Crew = "alone"       // one person, for the first time
	Helped      Crew = "with helper" // the same with a second pair of hands
	Experienced Crew = "experienced" // one person who has laid floors before
)

// Job is what the job says of time; zero where nothing was told.
type Job struct {
	Told         bool
	Start        Day // the first day of work
	Delivery     Day // of the boards, 0 not settled
	ClimateSince Day // the house is at living climate since, 0: from the start on
	Crew         Crew
	Hours        float64 // worked a day
	DaysOff      []time.Weekday
	Off          []Day
	ClimateDays  int
	RestDays     int // boards lie in the room for so many days before they are read again
	LabDays      int // a laboratory takes so many
	CureDays     int // nobody walks on a finish, or on glue
	Cure         bool
	Own          map[string]Own // rates of the job's own, by their keys
	Done         []Done
}

// Own is a rate of the job's own, in hours for the unit of that rate as the job
// measures (see Unit).
type Own struct {
	Hours  float64
	Source string
}

// Done are rows really laid, and the hours they took.
type Done struct {
	First, Last int
	Hours       float64
}

// The figures that hold where the job has none. All are common practice, no
// source.
const (
	UsualHours   = 8
	UsualClimate = 5
	UsualRest    = 7
	UsualLab     = 5
	GlueDays     = 1
	FinishDays   = 3
)

// quarters is how many quarters of an hour a day of work has.
func (j Job) quarters() int {
	h := j.Hours
	if h == 0 {
		h = UsualHours
	}
	return max(1, int(h*4))
}

// or is a number of days, or the usual one where none is told.
func or(days, usual int) int {
	if days == 0 {
		return usual
	}
	return days
}

// LeastWait stands for a wait of no days that the job asks for, as 0 is none told.
const LeastWait = -1

func waitDays(days, usual int) Day {
	if days == LeastWait {
		return 0
	}
	return Day(or(days, usual))
}
