package lang

import (
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"

	"example.org/zymase/examples/bridge/newfile"
)

// pyCache is where Python keeps what it has compiled of a package.
const pyCache = "__pycache__"

// files are what goes into a directory, by name.
type files map[string][]byte

// mayGo reports why they may not be written into a directory: it holds something that is none of
// them. One that does not exist may be made.
func (f files) mayGo(dir string) error {
	entries, err := os.ReadDir(dir)
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return err
	}
	for _, e := range entries {
		if _, ours := f[e.Name()]; !ours || !e.Type().IsRegular() && e.Name() != pyCache {
			return fmt.Errorf("%s holds %s, which is not what is written there: name a directory of its own", dir, e.Name())
		}
	}
	return nil
}

// write writes them, each whole or not at all.
func (f files) write(dir string) error {
	if err := f.mayGo(dir); err != nil {
		return err
	}
	if err := os.MkdirAll(dir, 0o777); err != nil {
		return err
	}
	for _, name := range slices.Sorted(maps.Keys(f)) {
		if name == pyCache {
			continue
		}
		if err := writeFile(filepath.Join(dir, name), f[name]); err != nil {
			return err
		}
	}
	return nil
}

func writeFile(name string, text []byte) error {
	f, err := newfile.Create(name, true)
	if err != nil {
		return err
	}
	defer f.Abort()
	if _, err := f.Write(text); err != nil {
		return err
	}
	return f.Commit()
}
