package jobfile

import (
	"bytes"
	"fmt"
	"strings"
)

// keyFault is what is wrong with the keys of a JSON text that is otherwise
// sound: one written twice in an object, of which the reader would quietly
// take the last, or one that is not spelled as a key of a lay, which it would
// take for another in small letters. Which keys there are it does not know.
func keyFault(data []byte) error {
	var open []map[string]int // keys of the objects around, with their lines; nil for a list
	line := 1
	for i := 0; i < len(data); i++ {
		switch data[i] {
		case '\n':
			line++
		case '{':
			open = append(open, map[string]int{})
		case '[':
			open = append(open, nil)
		case '}', ']':
			open = open[:len(open)-1]
		case '"':
			end := stringEnd(data, i)
			text := string(data[i+1 : end])
			i = end
			if !isKey(data[end+1:]) {
				continue
			}
			if err := note(open[len(open)-1], text, line); err != nil {
				return err
			}
		}
	}
	return nil
}

// note enters a key among those of its object.
func note(keys map[string]int, key string, line int) error {
	if strings.Trim(key, "abcdefghijklmnopqrstuvwxyz_") != "" {
		return fmt.Errorf("this lay cannot be read: line %d: the key %q is not known; keys are small letters", line, key)
	}
	if before, twice := keys[key]; twice {
		return fmt.Errorf("this lay cannot be read: line %d: the key %q is written twice, on line %d before; keep one", line, key, before)
	}
	keys[key] = line
	return nil
}

// stringEnd is where the string that begins at from has its closing mark.
func stringEnd(data []byte, from int) int {
	for i := from + 1; ; i++ {
		switch data[i] {
		case '\\':
			i++
		case '"':
			return i
		}
	}
}

// isKey tells whether a colon comes next: a string before it is a key.
func isKey(rest []byte) bool {
	rest = bytes.TrimLeft(rest, " \t\r\n")
	return len(rest) > 0 && rest[0] == ':'
}
