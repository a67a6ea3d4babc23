package documents

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// CO2 collects low. Whatever the module says about a CO2 alarm gives one height for its
// sensor: no more than 12 inches (305 mm) above the floor (International Fire Code 2018,
// 5307.3.2, read).
func TestOneHeightOfTheAlarm(t *testing.T) {
	alarm := regexp.MustCompile(`(?i)CO2[^".]{0,20}\balarm`)
	found := 0
	err := filepath.WalkDir("../..", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || strings.Contains(path, "/.git/") {
			return err
		}
		if ext := filepath.Ext(path); ext != ".go" && ext != ".md" && ext != ".html" && ext != ".tmpl" || strings.HasSuffix(path, "_test.go") {
			return nil
		}
		text, err := os.ReadFile(path)
		for i, line := range strings.Split(string(text), "\n") {
			if !alarm.MatchString(line) {
				continue
			}
			found++
			if !strings.Contains(line, "no more than 30 cm above the floor") {
				t.Errorf("%s:%d: another height, or none: %s", path, i+1, strings.TrimSpace(line))
			}
		}
		return err
	})
	if err != nil || found < 2 {
		t.Errorf("%d alarms, %v", found, err)
	}
}
