package tape

import "strings"

// Question is the answer to a reading that can be taken in more than one way,
// or in none: it is asked back instead of guessed. 12' 13" may be a slip for
// 12' 3" or for 13' 1", and only whoever held the tape can tell.
type Question struct {
	Text   string // as written, shortened when it is long
	Read   string // what was understood
	Ask    string // what is in doubt
	Accept string // what would be accepted
}

// Error is the question as one line.
func (q *Question) Error() string {
	var b strings.Builder
	b.WriteString("“" + q.Text + "”")
	if q.Read != "" {
		b.WriteString(" reads as " + q.Read)
	}
	if q.Ask != "" {
		b.WriteString(": " + q.Ask)
	}
	if q.Accept != "" {
		b.WriteString(". Write " + q.Accept)
	}
	return b.String()
}

// forms are the ways to write a length, for questions that can suggest no
// better.
const forms = `a length such as 12' 7-3/8", 151-3/8", 151.375 in, 3844.9 mm, 384 cm or 3.84 m`

func ask(text, read, what, accept string) *Question {
	if len(text) > maxText {
		text = strings.ToValidUTF8(text[:maxText-3], "") + "..."
	}
	return &Question{Text: strings.TrimSpace(text), Read: read, Ask: what, Accept: accept}
}
