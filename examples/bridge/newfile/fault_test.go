package newfile

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// A fault at any step leaves what was there, nothing beside it, and an error
// that names the file asked for.
func TestFaults(t *testing.T) {
	for _, c := range []struct {
		name  string
		fault func(t *testing.T, f *File) error
	}{
		{"writing", func(t *testing.T, f *File) error {
			f.File.Close()
			_, err := f.Write([]byte("more"))
			f.Abort()
			return err
		}},
		{"bringing it to the disk", func(t *testing.T, f *File) error {
			f.File.Close()
			return f.Commit()
		}},
		{"giving the name", func(t *testing.T, f *File) error {
			if err := os.Remove(f.File.Name()); err != nil {
				t.Skip("an open file cannot be taken away here")
			}
			return f.Commit()
		}},
	} {
		for _, replace := range []bool{false, true} {
			t.Run(c.name, func(t *testing.T) {
				dir := t.TempDir()
				name := filepath.Join(dir, "a.csv")
				if replace {
					os.WriteFile(name, []byte("old"), 0o666)
				}
				f, err := Create(name, replace)
				if err != nil {
					t.Fatal(err)
				}
				f.Write([]byte("half"))
				if err := c.fault(t, f); err == nil || !strings.Contains(err.Error(), name) || strings.Contains(err.Error(), ".part") {
					t.Errorf("error %v", err)
				}
				if !replace {
					only(t, dir)
				} else if only(t, dir, "a.csv"); read(t, name) != "old" {
					t.Errorf("the file holds %q", read(t, name))
				}
				if err := f.Commit(); !errors.Is(err, fs.ErrClosed) {
					t.Errorf("a second try: %v", err)
				}
			})
		}
	}
}

// A directory that has come up in place of the file is left alone.
func TestDirectoryMeanwhile(t *testing.T) {
	for _, replace := range []bool{false, true} {
		dir := t.TempDir()
		name := filepath.Join(dir, "a.csv")
		f, err := Create(name, replace)
		if err != nil {
			t.Fatal(err)
		}
		if err := os.Mkdir(name, 0o777); err != nil {
			t.Fatal(err)
		}
		if err := f.Commit(); err == nil {
			t.Error("a directory is replaced")
		}
		only(t, dir, "a.csv")
	}
}
