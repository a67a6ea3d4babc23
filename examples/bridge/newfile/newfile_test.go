package newfile

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"testing"
)

// only fails unless dir holds just the named files.
func only(t *testing.T, dir string, names ...string) {
	t.Helper()
	entries, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, e := range entries {
		got = append(got, e.Name())
	}
	if len(got) != len(names) {
		t.Errorf("the directory holds %q, want %q", got, names)
	}
}

func write(t *testing.T, name, text string, replace bool) error {
	t.Helper()
	f, err := Create(name, replace)
	if err != nil {
		return err
	}
	defer f.Abort()
	if _, err := f.WriteString(text); err != nil {
		t.Fatal(err)
	}
	return f.Commit()
}

func read(t *testing.T, name string) string {
	t.Helper()
	b, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return string(b)
}

func TestNewFile(t *testing.T) {
	dir := t.TempDir()
	name := filepath.Join(dir, "a.csv")
	if err := write(t, name, "one", false); err != nil {
		t.Fatal(err)
	}
	if err := write(t, name, "two", false); !errors.Is(err, fs.ErrExist) {
		t.Errorf("replaced without leave: %v", err)
	}
	if got := read(t, name); got != "one" {
		t.Errorf("the file holds %q", got)
	}
	os.Chmod(name, 0o640)
	if err := write(t, name, "three", true); err != nil {
		t.Fatal(err)
	}
	if got := read(t, name); got != "three" {
		t.Errorf("the file holds %q", got)
	}
	if info, _ := os.Stat(name); runtime.GOOS != "windows" && info.Mode().Perm() != 0o640 {
		t.Errorf("the file's mode became %v", info.Mode())
	}
	only(t, dir, "a.csv")
}

func TestAbort(t *testing.T) {
	dir := t.TempDir()
	name := filepath.Join(dir, "a.csv")
	f, err := Create(name, false)
	if err != nil {
		t.Fatal(err)
	}
	f.WriteString("half")
	f.Abort()
	f.Abort()
	if err := f.Commit(); err == nil {
		t.Error("committed after Abort")
	}
	only(t, dir)
}

// A file that comes up in the meantime is kept.
func TestTakenMeanwhile(t *testing.T) {
	dir := t.TempDir()
	name := filepath.Join(dir, "a.csv")
	f, err := Create(name, false)
	if err != nil {
		t.Fatal(err)
	}
	f.WriteString("mine")
	os.WriteFile(name, []byte("theirs"), 0o666)
	if err := f.Commit(); !errors.Is(err, fs.ErrExist) {
		t.Errorf("error %v", err)
	}
	if got := read(t, name); got != "theirs" {
		t.Errorf("the file holds %q", got)
	}
	only(t, dir, "a.csv")
}

func TestWhatIsNoPlainFile(t *testing.T) {
	dir := t.TempDir()
	if _, err := Create(dir, true); err == nil {
		t.Error("a directory is replaced")
	}
	if _, err := Create(filepath.Join(dir, "none", "a.csv"), true); err == nil {
		t.Error("a directory is made")
	}
	if runtime.GOOS == "windows" {
		return
	}
	if _, err := Create("/dev/null", true); err == nil {
		t.Error("a device is replaced")
	}
	target, link := filepath.Join(dir, "target"), filepath.Join(dir, "link")
	os.WriteFile(target, []byte("old"), 0o666)
	if err := os.Symlink(target, link); err != nil {
		t.Skip(err)
	}
	if err := write(t, link, "new", false); !errors.Is(err, fs.ErrExist) {
		t.Errorf("a link is replaced without leave: %v", err)
	}
	if err := write(t, link, "new", true); err != nil {
		t.Fatal(err)
	}
	if info, _ := os.Lstat(link); info.Mode()&fs.ModeSymlink == 0 || read(t, target) != "new" {
		t.Error("the link became a file")
	}
}
