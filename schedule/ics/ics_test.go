package ics

import (
	"bytes"
	"fmt"
	"regexp"
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/emersion/go-ical"
	"pgregory.net/rapid"

	"strake/schedule"
)

// rules holds a calendar to the line rules of RFC 5545: 3.1 (content lines, CR LF,
// at most 75 octets, no octet of a rune parted from it), 3.3.11 (text is escaped),
// 3.4 (one VCALENDAR round all), 3.6 (VERSION and PRODID once), 3.6.1 (UID and
// DTSTAMP once in each event), 3.3.4 and 3.3.5 (dates of eight digits that there are,
// the stamp in UTC), 3.8.2.2 and 3.6.1 (an end once, of the kind of its start and later
// than it: a day's event ends with the day after), 3.8.4.7 (no two events of one UID).
func rules(data []byte) error {
	if !bytes.HasSuffix(data, []byte("\r\n")) {
		return fmt.Errorf("the last line has no end")
	}
	lines := strings.Split(strings.TrimSuffix(string(data), "\r\n"), "\r\n")
	var whole []string
	for i, l := range lines {
		switch {
		case len(l) > 75:
			return fmt.Errorf("line %d has %d octets", i+1, len(l))
		case strings.ContainsAny(l, "\r\n") || strings.ContainsFunc(l, func(r rune) bool { return r < ' ' && r != '\t' || r == 0x7f }):
			return fmt.Errorf("line %d holds a control character: %q", i+1, l)
		case !utf8.ValidString(l):
			return fmt.Errorf("line %d parts a rune: %q", i+1, l)
		case l == "":
			return fmt.Errorf("line %d is empty", i+1)
		case l[0] == ' ':
			whole[len(whole)-1] += l[1:]
		default:
			whole = append(whole, l)
		}
	}
	content := regexp.MustCompile(`^[A-Z-]+(;[A-Z-]+=[^:;,"]+)*:.*$`)
	text := regexp.MustCompile(`^([^\\,;]|\\[\\;,nN])*$`)
	day := func(value, form string) (time.Time, error) {
		at, err := time.Parse(form, value)
		if err == nil && at.Format(form) != value {
			err = fmt.Errorf("%q is written otherwise", value)
		}
		return at, err
	}
	var from, to time.Time
	seen, count, depth := map[string]bool{}, map[string]int{}, []string{}
	for i, l := range whole {
		if !content.MatchString(l) {
			return fmt.Errorf("no content line: %q", l)
		}
		name, value, _ := strings.Cut(l, ":")
		name, of, _ := strings.Cut(name, ";")
		var err error
		count[name]++
		switch name {
		case "BEGIN":
			depth = append(depth, value)
			if value == "VEVENT" {
				count["UID"], count["DTSTAMP"], count["DTSTART"], count["DTEND"], count["DURATION"] = 0, 0, 0, 0, 0
			}
		case "END":
			if len(depth) == 0 || depth[len(depth)-1] != value {
				return fmt.Errorf("END:%s closes %v", value, depth)
			}
			depth = depth[:len(depth)-1]
			if value == "VEVENT" && (count["DTEND"] != 1 || count["DURATION"] > 0 || !to.After(from)) {
				return fmt.Errorf("an event from %s to %s: %d DTEND, %d DURATION", from, to, count["DTEND"], count["DURATION"])
			}
			if value == "VEVENT" && (count["UID"] != 1 || count["DTSTAMP"] != 1 || count["DTSTART"] != 1) {
				return fmt.Errorf("an event with %d UID, %d DTSTAMP, %d DTSTART", count["UID"], count["DTSTAMP"], count["DTSTART"])
			}
		case "DTSTAMP":
			_, err = day(value, "20060102T150405Z")
		case "DTSTART":
			from, err = day(value, "20060102")
		case "DTEND":
			to, err = day(value, "20060102")
		case "UID":
			if seen[value] {
				return fmt.Errorf("two events of UID %s", value)
			}
			seen[value] = true
		case "SUMMARY", "DESCRIPTION":
			if !text.MatchString(value) {
				return fmt.Errorf("not escaped: %q", value)
			}
		}
		if dated := name == "DTSTART" || name == "DTEND"; err != nil || dated && of != "VALUE=DATE" {
			return fmt.Errorf("%s: %v", l, err)
		}
		if len(depth) == 0 && i < len(whole)-1 || i == 0 && l != "BEGIN:VCALENDAR" {
			return fmt.Errorf("line %q lies outside of the calendar", l)
		}
	}
	if len(depth) > 0 || count["VERSION"] != 1 || count["PRODID"] != 1 {
		return fmt.Errorf("open %v, %d VERSION, %d PRODID", depth, count["VERSION"], count["PRODID"])
	}
	return nil
}

// The rules must see what breaks them.
func TestRulesSee(t *testing.T) {
	var b bytes.Buffer
	if err := Write(&b, "x", 20000, []Event{{ID: "a", Summary: strings.Repeat("long, ", 20), From: 1, To: 2}}); err != nil {
		t.Fatal(err)
	}
	good := b.String()
	if err := rules(b.Bytes()); err != nil {
		t.Fatal(err)
	}
	for from, to := range map[string]string{
		"\r\n ":                       "",             // an unfolded line is too long
		"\r\nUID":                     "\nUID",        // a line feed alone
		`\,`:                          ",",            // not escaped
		"UID:a":                       "X-NO:a",       // no UID
		"END:VEVENT":                  "END:VTODO",    // closed by another
		"VERSION:2.0":                 "VERSION2.0",   // no content line
		"PRODID":                      "X-PRODID",     // none
		"END:VCALENDAR\r\n":           "",             // never closed
		"STATUS:CONFIRMED":            "STATUS:\x07",  // a bell
		"DTSTAMP":                     "UID:b\r\nUID", // twice
		"BEGIN:VCALENDAR":             "BEGIN:VCARD",
		"DTEND;VALUE=DATE:19700104":   "DTEND;VALUE=DATE:19700102", // ends with its own day
		"DTSTART;VALUE=DATE:":         "DTSTART:",                  // a date that says it is a time
		"DTSTART;VALUE=DATE:19700102": "DTSTART;VALUE=DATE:19701301",
		"T000000Z":                    "", // a stamp without a time
		"DTEND;":                      "X-END;",
		"TRANSP:TRANSPARENT":          "DURATION:P1D", // an end and a length
	} {
		if bad := strings.ReplaceAll(good, from, to); bad == good || rules([]byte(bad)) == nil {
			t.Errorf("%q for %q is not seen", to, from)
		}
	}
}

// read is a calendar read by another program's parser (github.com/emersion/go-ical).
func read(t interface{ Fatal(...any) }, data []byte) []ical.Event {
	c, err := ical.NewDecoder(bytes.NewReader(data)).Decode()
	if err != nil {
		t.Fatal(err)
	}
	return c.Events()
}

// Whatever text an event holds comes back as it was, days too, and every line keeps
// the rules.
func TestReadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`([a-zA-Z0-9 ,;:\\"äöü€𝄞½-]|\n){0,200}`)
		var events []Event
		for i := range rapid.IntRange(1, 5).Draw(t, "events") {
			from := schedule.Day(rapid.IntRange(1, 80000).Draw(t, "from"))
			events = append(events, Event{ID: fmt.Sprintf("e-%d", i), Summary: "S" + text.Draw(t, "summary"), Description: text.Draw(t, "description"),
				From: from, To: from + schedule.Day(rapid.IntRange(0, 40).Draw(t, "days")), Tentative: rapid.Bool().Draw(t, "tentative")})
		}
		var b bytes.Buffer
		if err := Write(&b, text.Draw(t, "name"), 20000, events); err != nil {
			t.Fatal(err)
		}
		if err := rules(b.Bytes()); err != nil {
			t.Fatal(err)
		}
		got := read(t, b.Bytes())
		if len(got) != len(events) {
			t.Fatalf("%d events of %d", len(got), len(events))
		}
		for i, e := range events {
			same(t, got[i], e)
		}
	})
}

// same holds an event that was read to the one that was written.
func same(t *rapid.T, got ical.Event, e Event) {
	say := func(name string) string {
		s, err := got.Props.Text(name)
		if err != nil {
			t.Fatal(err)
		}
		return s
	}
	from, err := got.DateTimeStart(time.UTC)
	to, err2 := got.DateTimeEnd(time.UTC)
	status, err3 := got.Status()
	if err != nil || err2 != nil || err3 != nil {
		t.Fatal(err, err2, err3)
	}
	if say("SUMMARY") != e.Summary || say("DESCRIPTION") != e.Description {
		t.Fatalf("read %q, %q, want %q, %q", say("SUMMARY"), say("DESCRIPTION"), e.Summary, e.Description)
	}
	if from.Format("2006-01-02") != e.From.String() || to.AddDate(0, 0, -1).Format("2006-01-02") != e.To.String() || (status == ical.EventTentative) != e.Tentative {
		t.Fatalf("read %s to %s, %s, want %+v", from, to, status, e)
	}
}

// calendar is a job with a hold, a delivery and a rental.
func calendar(t *testing.T, kind schedule.HoldKind) schedule.Calendar {
	t.Helper()
	start, err := schedule.ParseDay("2027-03-01")
	if err != nil {
		t.Fatal(err)
	}
	w := schedule.Work{Name: "Gate house; hall, stairs", Imperial: true, SqFt: 400, Rooms: []string{"hall"}, Cartons: 22, ReadUnder: 10, ReadBoards: 20,
		Hold: schedule.Hold{Kind: kind, Day: start + 20}}
	for i := range 40 {
		r := schedule.Row{Name: fmt.Sprint(i + 1), Number: i + 1, Rooms: w.Rooms}
		r.SqFt[schedule.FieldRows] = 10
		w.Rows = append(w.Rows, r)
	}
	return schedule.Make(w, schedule.Job{Start: start, Delivery: start + 7, DaysOff: []time.Weekday{time.Sunday}})
}

// The calendar of a job has its days of work, waits, delivery and rental; the same
// job gives the same octets; days of laying wait for readings, and where nobody
// knows a day there are none.
func TestEventsOfAJob(t *testing.T) {
	write := func(c schedule.Calendar) []byte {
		var b bytes.Buffer
		if err := Write(&b, c.Work.Name, c.Job.Start, Events(c)); err != nil {
			t.Fatal(err)
		}
		if err := rules(b.Bytes()); err != nil {
			t.Fatal(err)
		}
		return b.Bytes()
	}
	c := calendar(t, schedule.Until)
	data := write(c)
	if !bytes.Equal(data, write(calendar(t, schedule.Until))) {
		t.Error("the same job gives other octets")
	}
	got := read(t, data)
	if want := len(c.Days) + len(c.Waits) + 2; len(got) != want {
		t.Errorf("%d events, want %d", len(got), want)
	}
	tentative := 0
	for _, e := range got {
		from, _ := e.DateTimeStart(time.UTC)
		text, _ := e.Props.Text("SUMMARY")
		switch status, _ := e.Status(); {
		case status != ical.EventTentative:
			if strings.Contains(text, "Field") {
				t.Errorf("%s is firm", text)
			}
		case from.Format("2006-01-02") < c.Work.Hold.Day.String():
			t.Errorf("%s on %s, before %s", text, from, c.Work.Hold.Day)
		default:
			tentative++
		}
	}
	if tentative == 0 {
		t.Error("no day waits for readings")
	}
	for _, e := range read(t, write(calendar(t, schedule.Open))) {
		if text, _ := e.Props.Text("SUMMARY"); strings.Contains(text, "Field") || strings.Contains(text, "nailer") {
			t.Errorf("%s has a date, and nobody knows one", text)
		}
	}
}
