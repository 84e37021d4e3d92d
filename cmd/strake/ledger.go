package main

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// ledgerName is the file in an output folder that says what strake wrote there.
const ledgerName = "strake-files.txt"

const ledgerHead = `# What strake last wrote to this folder, each file with the SHA-256 of it. A file
# that is no longer so was changed by somebody: it is kept under another name
# before strake writes it again. Without this file every one is taken for changed.
`

// ledger is what strake wrote to a folder: hashes by name.
type ledger map[string]string

// readLedger is the ledger of a folder. One that is missing or spoilt lists
// less, and so more is kept than need be.
func readLedger(dir string) ledger {
	l := ledger{}
	data, err := os.ReadFile(filepath.Join(dir, ledgerName))
	if err != nil {
		return l
	}
	for _, line := range strings.Split(string(data), "\n") {
		if hash, name, ok := strings.Cut(line, "  "); ok && len(hash) == 2*sha256.Size {
			l[name] = hash
		}
	}
	return l
}

func (l ledger) write(dir string) error {
	var b bytes.Buffer
	b.WriteString(ledgerHead)
	for _, name := range slices.Sorted(maps.Keys(l)) {
		fmt.Fprintf(&b, "%s  %s\n", l[name], name)
	}
	path := filepath.Join(dir, ledgerName)
	if old, err := os.ReadFile(path); err == nil && bytes.Equal(old, b.Bytes()) {
		return nil
	}
	return os.WriteFile(path, b.Bytes(), 0o644)
}

func hashOf(data []byte) string {
	sum := sha256.Sum256(data)
	return hex.EncodeToString(sum[:])
}

// ours tells whether a file of the folder is still as strake wrote it.
func (l ledger) ours(name string, data []byte) bool { return l[name] == hashOf(data) }
