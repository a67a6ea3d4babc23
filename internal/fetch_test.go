package internal_test

import (
	"io/fs"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// The module can be fetched: no file has a name that Go refuses to put into a module's archive,
// as some systems cannot hold it (golang.org/x/mod/module, CheckFilePath). One such name, and no
// go get of the whole succeeds.
func TestFileNamesMayStandInAModule(t *testing.T) {
	reserved := strings.Fields("con prn aux nul com1 com2 com3 com4 com5 com6 com7 com8 com9 lpt1 lpt2 lpt3 lpt4 lpt5 lpt6 lpt7 lpt8 lpt9")
	plain := regexp.MustCompile(`^[A-Za-z0-9!#$%&()+,\-.=@\[\]^_{}~ ]+$`)
	names := map[string]string{} // without their case
	err := filepath.WalkDir("..", func(path string, d fs.DirEntry, err error) error {
		if err != nil {
			return err
		}
		name := d.Name()
		if name == ".." || name == ".git" {
			if d.IsDir() && name == ".git" {
				return filepath.SkipDir
			}
			return nil
		}
		stem, _, _ := strings.Cut(strings.ToLower(name), ".")
		if slices.Contains(reserved, stem) || !plain.MatchString(name) || strings.HasSuffix(name, ".") {
			t.Errorf("%s: no module may hold a file of this name", path)
		}
		folded := strings.ToLower(path)
		if twin, ok := names[folded]; ok {
			t.Errorf("%s and %s differ in capitals alone", path, twin)
		}
		names[folded] = path
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
}
