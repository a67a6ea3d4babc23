package published

import (
	"embed"
	"fmt"
	"path"
	"strings"
)

//go:embed tables/*.csv
var files embed.FS

// Names returns the names of the tables of this package, in order.
func Names() []string {
	entries, err := files.ReadDir("tables")
	if err != nil {
		return nil // the directory is compiled in
	}
	var names []string
	for _, e := range entries {
		names = append(names, strings.TrimSuffix(e.Name(), ".csv"))
	}
	return names
}

// Find reads a table of this package. The error is a [*FileError].
func Find(name string) (*Table, error) {
	f, err := files.Open(path.Join("tables", name+".csv"))
	if err != nil {
		return nil, &FileError{File: name, Reason: "no such table"}
	}
	defer f.Close()
	t, err := Parse(name, f)
	if err == nil && !t.Guarded() {
		return nil, &FileError{File: name, Reason: "want the guards \"# rows: …\" and \"# sum NAME: …\""}
	}
	return t, err
}

// All reads every table of this package, in the order of their names. The error
// is the first [*FileError]; no table is left out.
func All() ([]*Table, error) {
	var all []*Table
	for _, name := range Names() {
		t, err := Find(name)
		if err != nil {
			return nil, err
		}
		all = append(all, t)
	}
	for _, t := range all {
		if t.Rival != "" {
			if _, err := Find(t.Rival); err != nil {
				return nil, fmt.Errorf("the rival of %s: %w", t.Name, err)
			}
		}
		if t.Again == "" {
			continue
		}
		if first, err := Find(t.Again); err != nil {
			return nil, fmt.Errorf("the first of %s: %w", t.Name, err)
		} else if first.Source != t.Source || first.Again != "" {
			return nil, &FileError{File: t.Name, Reason: "again names a table of another source, or one that is itself again"}
		}
	}
	return all, nil
}
