package jobfile

import (
	"bytes"
	"encoding/json"
)

// Schema is the JSON Schema (draft 2020-12) of a job file, for editors. It is
// made from the same keys that ReadJob reads by. What an editor accepts,
// ReadJob may still refuse: lengths and names are read more strictly there.
func Schema() []byte {
	s := jobTable.shape().schema
	out := map[string]any{
		"$schema": "https://json-schema.org/draft/2020-12/schema",
		"title":   "strake job file, version 1",
	}
	for k, v := range s {
		out[k] = v
	}
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent("", "  ")
	if err := e.Encode(out); err != nil {
		panic("jobfile: the table of keys holds a value that is no JSON: " + err.Error()) // a mistake in this package
	}
	return b.Bytes()
}
