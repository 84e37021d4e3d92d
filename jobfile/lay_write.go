package jobfile

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"

	"strake/lay"
)

// WriteLay writes a lay as JSON: exact, the same bytes for the same lay, and
// one line for each zone, run, piece and board, so that two plans can be
// compared line by line. A lay that ReadLay would refuse is not written.
func WriteLay(w io.Writer, l lay.Lay) error {
	wire := toWire(l)
	if err := wire.valid(); err != nil {
		return fmt.Errorf("this lay cannot be written: %w", err)
	}
	line, err := compact(wire)
	if err != nil {
		return err
	}
	_, err = w.Write(lines(line))
	return err
}

// compact is v as JSON on one line.
func compact(v any) ([]byte, error) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	if err := e.Encode(v); err != nil {
		return nil, fmt.Errorf("this lay cannot be written: %w", err)
	}
	return bytes.TrimRight(b.Bytes(), "\n"), nil
}

// lines breaks compact JSON into lines: one for each key of the outer object,
// and one for each element of a list right under it. Nothing else changes.
func lines(in []byte) []byte {
	out := make([]byte, 0, len(in)+len(in)/16)
	depth := 0
	for i := 0; i < len(in); i++ {
		switch c := in[i]; c {
		case '"':
			n := quoted(in[i:])
			out = append(out, in[i:i+n]...)
			i += n - 1
		case '{', '[':
			depth++
			out = append(out, c)
			if broken(depth, c) && in[i+1] != ']' {
				out = append(out, '\n')
			}
		case '}', ']':
			if broken(depth, c-2) && in[i-1] != '[' {
				out = append(out, '\n')
			}
			depth--
			out = append(out, c)
		case ',':
			out = append(out, c)
			if depth <= 2 {
				out = append(out, '\n')
			}
		default:
			out = append(out, c)
		}
	}
	return append(out, '\n')
}

// broken tells whether what opens with c at this depth is broken into lines:
// the object itself, and the lists in it.
func broken(depth int, c byte) bool { return depth == 1 && c == '{' || depth == 2 && c == '[' }

// quoted is the length of the JSON string that s starts with, quotes counted.
func quoted(s []byte) int {
	for i := 1; i < len(s); i++ {
		switch s[i] {
		case '\\':
			i++
		case '"':
			return i + 1
		}
	}
	return len(s)
}
