// Package schedule is how long a floor takes and on which days: the steps of the
// job in order, each with its hours, laid over the days that a person works.
//
// A room of 400 sq ft under carpet, laid by one person for the first time, takes
// about seven hours to strip and prepare and twenty-four to lay; at 8 hours a day
// that is four to five days' work. Boards that came on 3 March are not laid before
// readings say so, whatever the calendar would like: a log that comes within limits
// on 14 March moves the first row there, and where no date can be told, the days of
// laying have none.
//
// Nothing here reads a clock: all days are those of the job. Time is counted in
// quarters of an hour, so that a day never holds more than its hours.
package schedule
