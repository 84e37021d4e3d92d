package jobfile

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"

	"strake/lay"
)

// maxLay is the most bytes of a written lay: a floor of 200 m by 200 m in
// short boards stays below it.
const maxLay = 256 << 20

// ReadLay reads a lay that WriteLay wrote. It refuses what it does not know:
// another version or unit, keys it has no place for or that are written twice,
// more text after the end, and pieces, boards, runs or zones that do not exist. What it returns can be
// indexed by its numbers without a further look.
func ReadLay(data []byte) (lay.Lay, error) {
	if len(data) > maxLay {
		return lay.Lay{}, fmt.Errorf("this lay is too long: %d bytes, at most %d", len(data), maxLay)
	}
	// The version comes first: another one may have other keys. Unmarshal also
	// refuses text after the end, which a Decoder would leave unread.
	var head struct {
		Version *int `json:"strake_lay"`
	}
	if err := json.Unmarshal(data, &head); err != nil {
		return lay.Lay{}, place(data, err)
	}
	if head.Version == nil {
		return lay.Lay{}, errors.New("this is no written lay: its first key should be \"strake_lay\"")
	}
	if *head.Version != LayVersion {
		return lay.Lay{}, fmt.Errorf("this lay has version %d, and only version %d is known: plan the job again", *head.Version, LayVersion)
	}
	if err := keyFault(data); err != nil {
		return lay.Lay{}, err
	}
	var w wireLay
	dec := json.NewDecoder(bytes.NewReader(data))
	dec.DisallowUnknownFields()
	if err := dec.Decode(&w); err != nil {
		return lay.Lay{}, place(data, err)
	}
	if err := w.valid(); err != nil {
		return lay.Lay{}, err
	}
	return fromWire(w), nil
}

// place adds the line to an error of the JSON reader that knows its offset.
func place(data []byte, err error) error {
	var syntax *json.SyntaxError
	var typed *json.UnmarshalTypeError
	offset := int64(-1)
	switch {
	case errors.As(err, &syntax):
		offset = syntax.Offset
	case errors.As(err, &typed):
		offset = typed.Offset
	}
	if offset < 0 || offset > int64(len(data)) {
		return fmt.Errorf("this lay cannot be read: %w", err)
	}
	return fmt.Errorf("this lay cannot be read: line %d: %w", 1+bytes.Count(data[:offset], []byte("\n")), err)
}
