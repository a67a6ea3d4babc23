// Package newfile writes a file that appears whole or not at all.
//
//	f, err := newfile.Create("out.csv", false)
//	defer f.Abort() // nothing once it is committed
//	… write to f …
//	err = f.Commit()
//
// Until Commit the bytes are in a file beside it, so a program that fails or is
// killed leaves what was there before.
package newfile

import (
	"errors"
	"fmt"
	"io/fs"
	"math/rand/v2"
	"os"
	"path/filepath"
)

// ErrExists reports that the file is there already and was not to be replaced.
// It is an fs.ErrExist.
var ErrExists = fmt.Errorf("%w; use -force to replace it", fs.ErrExist)

// File is a file that is being written. It is not safe for concurrent use.
type File struct {
	*os.File
	name    string
	replace bool
	ended   bool
}

// mostTries is how often another name is tried for the file beside.
const mostTries = 100

// Create starts a file of that name. If there is one already, the error is
// ErrExists unless replace is set; what is not a plain file is never replaced.
func Create(name string, replace bool) (*File, error) {
	mode := fs.FileMode(0o666) // less what the user's umask takes away
	if replace {
		if target, err := filepath.EvalSymlinks(name); err == nil {
			name = target // replace what a link points to, not the link
		}
	}
	switch info, err := os.Lstat(name); {
	case err == nil && !replace:
		return nil, &fs.PathError{Op: "create", Path: name, Err: ErrExists}
	case err == nil && !info.Mode().IsRegular():
		return nil, &fs.PathError{Op: "replace", Path: name, Err: errors.New("it is not a plain file")}
	case err == nil:
		mode = info.Mode().Perm()
	case !errors.Is(err, fs.ErrNotExist):
		return nil, err
	}
	var f *os.File
	err := fs.ErrExist
	for i := 0; errors.Is(err, fs.ErrExist) && i < mostTries; i++ {
		beside := fmt.Sprintf(".%s.%08x.part", filepath.Base(name), rand.Uint32())
		f, err = os.OpenFile(filepath.Join(filepath.Dir(name), beside), os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
	}
	if err != nil {
		return nil, err
	}
	return &File{File: f, name: name, replace: replace}, nil
}

// Write writes, as os.File does. An error names the file that was asked for, not
// the one beside it.
func (f *File) Write(b []byte) (int, error) {
	n, err := f.File.Write(b)
	return n, f.named(err)
}

func (f *File) named(err error) error {
	if e, ok := errors.AsType[*fs.PathError](err); ok {
		return &fs.PathError{Op: e.Op, Path: f.name, Err: e.Err}
	}
	if e, ok := errors.AsType[*os.LinkError](err); ok {
		return &fs.PathError{Op: "create", Path: f.name, Err: e.Err}
	}
	return err
}

// Commit gives the file its name, once all is on the disk. If a file of that
// name has come up since Create, and replace is not set, the error is ErrExists
// and nothing is changed.
func (f *File) Commit() error {
	if f.ended {
		return fs.ErrClosed
	}
	defer f.Abort()
	if err := f.Sync(); err != nil {
		return f.named(err)
	}
	if err := f.File.Close(); err != nil {
		return f.named(err)
	}
	if f.replace {
		return f.named(os.Rename(f.File.Name(), f.name))
	}
	err := os.Link(f.File.Name(), f.name) // fails if the name is taken, unlike Rename
	if err == nil || errors.Is(err, fs.ErrExist) {
		if err != nil {
			err = &fs.PathError{Op: "create", Path: f.name, Err: ErrExists}
		}
		return err
	}
	// A file system without links: look, then rename.
	if _, err := os.Lstat(f.name); !errors.Is(err, fs.ErrNotExist) {
		return &fs.PathError{Op: "create", Path: f.name, Err: ErrExists}
	}
	return f.named(os.Rename(f.File.Name(), f.name))
}

// Abort takes the bytes away, unless the file was committed.
func (f *File) Abort() {
	if f.ended {
		return
	}
	f.ended = true
	f.File.Close()
	os.Remove(f.File.Name())
}
