package tape

import (
	"strings"
	"unicode/utf8"
)

// maxText is the longest text, in bytes, that is read as a length or an area.
const maxText = 64

// kind is the kind of a token.
type kind int

const (
	number  kind = iota // 12, 3.84, .5
	glyph               // a fraction in one sign: ⅜, kept as 3/8
	slash               // between the two numbers of a fraction
	dash                // a minus, or the joint in 7-3/8
	comma               // never accepted, but read so that it can be asked about
	word                // a unit: ', ", ft, mm
	unknown             // anything else
)

type token struct {
	kind  kind
	text  string
	space bool // there was space before it
}

// glyphs are the fractions that exist as one sign.
var glyphs = map[rune]string{
	'½': "1/2", '⅓': "1/3", '⅔': "2/3", '¼': "1/4", '¾': "3/4", '⅕': "1/5", '⅖': "2/5", '⅗': "3/5", '⅘': "4/5",
	'⅙': "1/6", '⅚': "5/6", '⅐': "1/7", '⅛': "1/8", '⅜': "3/8", '⅝': "5/8", '⅞': "7/8", '⅑': "1/9", '⅒': "1/10",
}

// alike maps the signs that stand for a plain one on paper and screens.
var alike = strings.NewReplacer(
	"′", "'", "’", "'", "‘", "'", "´", "'", "`", "'",
	"″", `"`, "”", `"`, "“", `"`, "''", `"`,
	"−", "-", "–", "-", "‐", "-", "‑", "-",
	"⁄", "/", "∕", "/", "\u00a0", " ", "\u202f", " ", "\u2009", " ", "\t", " ",
	"²", "2",
)

// scan cuts s into tokens.
func scan(s string) []token {
	if !plain(s) {
		s = alike.Replace(alike.Replace(s)) // twice: two typographic apostrophes make one inch mark
	}
	var out []token
	space := false
	for len(s) > 0 {
		r, n := utf8.DecodeRuneInString(s)
		if r == ' ' {
			space, s = true, s[n:]
			continue
		}
		t := token{unknown, s[:n], space}
		if frac, ok := glyphs[r]; ok {
			t.kind, t.text = glyph, frac
		} else {
			t.kind, n = classify(s, n)
			t.text = s[:n]
		}
		out, s, space = append(out, t), s[n:], false
	}
	return out
}

// plain tells whether s holds no sign that alike has a plain one for.
func plain(s string) bool {
	for i := 0; i < len(s); i++ {
		if c := s[i]; c >= utf8.RuneSelf || c == '\t' || c == '`' || c == '\'' && i+1 < len(s) && s[i+1] == '\'' {
			return false
		}
	}
	return true
}

// classify tells the kind of the token that s starts with and its length in
// bytes; one is the length of its first sign.
func classify(s string, one int) (kind, int) {
	switch c := s[0]; {
	case c == '/':
		return slash, 1
	case c == '-':
		return dash, 1
	case c == ',':
		return comma, 1
	case c == '\'' || c == '"':
		return word, 1
	case digit(c) || c == '.' && len(s) > 1 && digit(s[1]):
		return number, numeral(s)
	case letter(c):
		n := 1
		for n < len(s) && letter(s[n]) {
			n++
		}
		return word, n
	}
	return unknown, one
}

// numeral is the length of the number that s starts with: digits, at most one
// point, and a digit on each side of it (on the right side at least).
func numeral(s string) int {
	n := 0
	for n < len(s) && digit(s[n]) {
		n++
	}
	if n+1 < len(s) && s[n] == '.' && digit(s[n+1]) {
		n++
		for n < len(s) && digit(s[n]) {
			n++
		}
	}
	return n
}

func digit(c byte) bool  { return '0' <= c && c <= '9' }
func letter(c byte) bool { return 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z' }
