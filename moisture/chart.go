package moisture

// Chart is the acclimation log as it is drawn: what was read day by day, the
// course through it, and the contents that boards are within limits in.
type Chart struct {
	Days        []Point // by the day, contents put right
	Course      Course
	Fitted      bool // enough days for a course
	Least, Most float64
	Known       bool   // there is a band from Least to Most
	Band        string // its limits, and whose they are
	Within      Span   // when the course comes into the band
	Reaches     bool
}

// Chart is what the log comes to; not ok where nothing was logged.
func (j Job) Chart(f Floor) (Chart, bool) {
	c := Chart{Days: j.days()}
	if len(c.Days) == 0 {
		return Chart{}, false
	}
	b, known := j.band(j.Meter.Look(j.Subfloor), f)
	c.Least, c.Most, c.Band = b.least, b.most, b.words
	c.Known = known && b.least <= b.most
	course, err := Fit(c.Days)
	c.Course, c.Fitted = course, err == nil
	last := c.Days[len(c.Days)-1]
	if c.Fitted && c.Known && !b.holds(last.Content) {
		c.Within, c.Reaches = course.Reaches(b.near(last.Content))
	}
	return c, true
}
