package main

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// moved is a file that was not overwritten but given another name.
type moved struct{ name, as string }

// aside is what was put out of the way of a plan's papers.
type aside struct {
	changed []moved // not as strake wrote them: somebody's work
	earlier []moved // papers of an earlier plan that this one does not have
}

// folderOf is an output folder being written to.
type folderOf struct {
	dir string
	ledger
	aside
}

// writeAll writes the files to a folder and tells what it moved. What strake
// wrote itself and nobody touched is replaced; anything else under such a name
// is kept first. Papers in others that this plan does not have are set aside:
// nobody shall saw to a drawing that no longer goes with the findings beside it.
func writeAll(dir string, files []file, others ...writer) (aside, error) {
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return aside{}, err
	}
	f := folderOf{dir: dir, ledger: readLedger(dir)}
	err := f.writeAll(files, others)
	// The ledger goes last: what it does not list is kept the next time. After an
	// error it still tells of what was written before.
	return f.aside, errors.Join(err, f.write(dir))
}

func (f *folderOf) writeAll(files []file, others []writer) error {
	now := names(files)
	for _, w := range others {
		if slices.Contains(now, w.name) {
			continue
		}
		if err := f.setAside(w.name); err != nil {
			return err
		}
	}
	for _, p := range files {
		if err := f.put(p); err != nil {
			return err
		}
	}
	return nil
}

// put writes one file. An earlier one that was set aside goes, if nobody
// touched it: its place is filled again.
func (f *folderOf) put(p file) error {
	old, err := os.ReadFile(f.path(p.name))
	switch {
	case err == nil && bytes.Equal(old, p.data):
	case errors.Is(err, os.ErrNotExist), err == nil && f.ours(p.name, old):
		err = os.WriteFile(f.path(p.name), p.data, 0o644)
	default:
		if err = f.keep(p.name); err == nil {
			err = os.WriteFile(f.path(p.name), p.data, 0o644)
		}
	}
	if err != nil {
		return err
	}
	f.ledger[p.name] = hashOf(p.data)
	return f.drop(earlierName(p.name))
}

// setAside takes a paper of an earlier plan out of the way.
func (f *folderOf) setAside(name string) error {
	old, err := os.ReadFile(f.path(name))
	if errors.Is(err, os.ErrNotExist) {
		return nil
	}
	if err != nil || !f.ours(name, old) {
		return f.keep(name)
	}
	to := earlierName(name)
	if err := f.drop(to); err != nil {
		return err
	}
	if _, err := os.Lstat(f.path(to)); err == nil { // somebody's, or touched
		if err := f.keep(to); err != nil {
			return err
		}
	}
	if err := os.Rename(f.path(name), f.path(to)); err != nil {
		return err
	}
	f.earlier = append(f.earlier, moved{name, to})
	f.ledger[to] = f.ledger[name]
	delete(f.ledger, name)
	return nil
}

// drop takes away a file that is still as strake wrote it.
func (f *folderOf) drop(name string) error {
	old, err := os.ReadFile(f.path(name))
	if err != nil || !f.ours(name, old) {
		return nil // not there, or not ours to take away
	}
	delete(f.ledger, name)
	return os.Remove(f.path(name))
}

// keep gives a file the first name of its kind that is free.
func (f *folderOf) keep(name string) error {
	for n := 1; ; n++ {
		to := keptName(name, n)
		if _, err := os.Lstat(f.path(to)); err == nil {
			continue
		} else if !errors.Is(err, os.ErrNotExist) {
			return err
		}
		if err := os.Rename(f.path(name), f.path(to)); err != nil {
			return err
		}
		f.changed = append(f.changed, moved{name, to})
		delete(f.ledger, name)
		return nil
	}
}

func (f *folderOf) path(name string) string { return filepath.Join(f.dir, name) }

// keptName is rows.kept-1.txt for rows.txt: it opens with what rows.txt does.
func keptName(name string, n int) string {
	ext := filepath.Ext(name)
	return fmt.Sprintf("%s.kept-%d%s", strings.TrimSuffix(name, ext), n, ext)
}

func earlierName(name string) string { return name + ".before" }

// String tells what was moved, a line for each kind; nothing when nothing was.
func (a aside) String() string {
	return list("Kept, as it is not what strake last wrote: ", a.changed) +
		list("Set aside, as there is no such paper now: ", a.earlier)
}

func list(title string, ms []moved) string {
	if len(ms) == 0 {
		return ""
	}
	var out []string
	for _, m := range ms {
		out = append(out, m.name+" is now "+m.as)
	}
	return title + strings.Join(out, ", ") + "\n"
}
