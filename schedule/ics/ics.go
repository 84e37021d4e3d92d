// Package ics writes days of work as a calendar that other programs read, after
// RFC 5545: lines end in CR and LF, none is longer than 75 octets, commas,
// semicolons and backslashes in text are escaped.
//
// A day of work on 1 March 2027 is an event that lasts all of it: DTSTART is
// 20270301, DTEND 20270302, which does not belong to it any more. Nothing reads a
// clock: the stamp is the first day of the job, and the names of events are made
// of the job's name and what they are, so that a calendar taken in again replaces
// them.
package ics

import (
	"bytes"
	"fmt"
	"io"
	"strings"
	"unicode/utf8"

	"strake/schedule"
)

// Event lasts some whole days.
type Event struct {
	ID          string // unique in its calendar
	Summary     string
	Description string // lines parted by line feeds
	From, To    schedule.Day
	Tentative   bool
}

// width is the most octets of a line without its end.
const width = 75

// Write writes events as one calendar.
func Write(w io.Writer, name string, stamp schedule.Day, events []Event) error {
	var b bytes.Buffer
	line(&b, "BEGIN:VCALENDAR")
	line(&b, "VERSION:2.0")
	line(&b, "PRODID:-//strake//schedule//EN")
	line(&b, "CALSCALE:GREGORIAN")
	for _, e := range events {
		line(&b, "BEGIN:VEVENT")
		line(&b, "UID:"+e.ID+"-"+digest(name)+"@strake.invalid")
		line(&b, "DTSTAMP:"+stamp.Compact()+"T000000Z")
		line(&b, "DTSTART;VALUE=DATE:"+e.From.Compact())
		line(&b, "DTEND;VALUE=DATE:"+(e.To+1).Compact())
		line(&b, "SUMMARY:"+escape(e.Summary))
		if e.Description != "" {
			line(&b, "DESCRIPTION:"+escape(e.Description))
		}
		status := "CONFIRMED"
		if e.Tentative {
			status = "TENTATIVE"
		}
		line(&b, "STATUS:"+status)
		line(&b, "TRANSP:TRANSPARENT")
		line(&b, "END:VEVENT")
	}
	line(&b, "END:VCALENDAR")
	_, err := w.Write(b.Bytes())
	return err
}

// line writes a line, folded before an octet too many and never within a rune.
func line(b *bytes.Buffer, s string) {
	room := width
	for len(s) > room {
		cut := room
		for !utf8.RuneStart(s[cut]) {
			cut--
		}
		b.WriteString(s[:cut] + "\r\n ")
		s, room = s[cut:], width-1
	}
	b.WriteString(s + "\r\n")
}

var escapes = strings.NewReplacer(`\`, `\\`, ";", `\;`, ",", `\,`, "\r\n", `\n`, "\n", `\n`)

// escape makes text of s. Control characters have no place in one.
func escape(s string) string {
	s = strings.Map(func(r rune) rune {
		if r < ' ' && r != '\n' || r == 0x7f {
			return -1
		}
		return r
	}, strings.ToValidUTF8(s, "?"))
	return escapes.Replace(s)
}

// digest is a name in 16 hexadecimal digits (FNV-1a).
func digest(name string) string {
	h := uint64(14695981039346656037)
	for _, c := range []byte(name) {
		h = (h ^ uint64(c)) * 1099511628211
	}
	return fmt.Sprintf("%016x", h)
}
