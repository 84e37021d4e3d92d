package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"strake/jobfile"
)

type newCmd struct {
	File string `arg:"" default:"floor.yaml" help:"Where to write it (default: floor.yaml in this folder). Without an extension, .yaml is added."`
}

// Help says what the file is.
func (newCmd) Help() string {
	return `The file is a small job that works as it is: a bedroom in inches, with remarks on what to write where. Change the figures to yours; "unit:" near the top says what a number without a unit means (ft, in, mm, cm or m).

A file that is there already is never overwritten.`
}

func (c *newCmd) Run(r rim) error {
	if filepath.Ext(c.File) == "" {
		c.File += ".yaml"
	}
	f, err := os.OpenFile(r.path(c.File), os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if errors.Is(err, fs.ErrExist) {
		return fmt.Errorf("%s is there already and was left as it is; name another file", c.File)
	}
	if errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("the folder %s is not there; make it first", filepath.Dir(c.File))
	}
	if err != nil {
		return err
	}
	_, err = f.Write(jobfile.Starter())
	if err = errors.Join(err, f.Close()); err != nil {
		return err
	}
	r.tell(func(a *answer) { a.Files = []string{c.File} })
	fmt.Fprintf(r.out, "%s is a small job that works as it is. Fill in your own readings, then:\n  strake check %s   looks the readings over\n  strake plan %s    writes the plan to the folder %s\n", c.File, c.File, c.File, folder(c.File))
	return nil
}
