package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// A reason is a row of a table in .ci/constants/left: why no test need notice a literal.
type reason struct {
	file, decl, literal string
	why                 string
	line                int
}

const leftDir = ".ci/constants/left"

// grounds are what a reason may begin with: first those of a setting, which says how a search goes and not what comes of
// it, and of a mark, which stands for none.
var grounds = []string{"tolerance", "cap of steps", "start of a search", "speed only", "mark", "same result", "too small to see"}

// setsNoFigure reports that a literal is a setting of a search, or a mark.
func (r *reason) setsNoFigure() bool {
	ground, _, _ := strings.Cut(r.why, ": ")
	return slices.Index(grounds, ground) < 5
}

// reasonsOf reads the table of a package, named after its path with - for /. No table is no reasons.
func reasonsOf(dir string) (table string, rows []*reason, err error) {
	table = leftDir + "/" + strings.ReplaceAll(filepath.ToSlash(filepath.Clean(dir)), "/", "-") + ".tsv"
	text, err := os.ReadFile(table)
	if errors.Is(err, fs.ErrNotExist) {
		return table, nil, nil
	}
	if err != nil {
		return table, nil, err
	}
	lines := strings.Split(strings.TrimSuffix(string(text), "\n"), "\n")
	if lines[0] != "file\tdecl\tliteral\treason" {
		return table, nil, fmt.Errorf("%s:1: the head is %q, not file, decl, literal, reason", table, lines[0])
	}
	for i, line := range lines[1:] {
		cells := strings.Split(line, "\t")
		if len(cells) != 4 {
			return table, nil, fmt.Errorf("%s:%d: %d cells, not four", table, i+2, len(cells))
		}
		ground, why, ok := strings.Cut(cells[3], ": ")
		if !ok || why == "" || !slices.Contains(grounds, ground) {
			return table, nil, fmt.Errorf("%s:%d: %q does not begin with one of: %s; then a colon and why", table, i+2, cells[3], strings.Join(grounds, ", "))
		}
		rows = append(rows, &reason{cells[0], cells[1], cells[2], cells[3], i + 2})
	}
	return table, rows, nil
}

// withTable are the packages that have a table. No folder of the project has a - in its name.
func withTable() (dirs []string) {
	tables, _ := filepath.Glob(leftDir + "/*.tsv")
	for _, t := range tables {
		dirs = append(dirs, "./"+strings.ReplaceAll(strings.TrimSuffix(filepath.Base(t), ".tsv"), "-", "/"))
	}
	return dirs
}

// give hands each literal its reason. Every row must fit a literal, and no two the same.
func give(table string, rows []*reason, all []*literal) error {
	var bad []error
	for _, r := range rows {
		fits := 0
		for _, l := range all {
			if filepath.Base(l.file) != r.file || l.decl != r.decl || l.old != r.literal {
				continue
			}
			fits++
			if l.reason != nil {
				bad = append(bad, fmt.Errorf("%s:%d: %s in %s of %s has a reason in line %d", table, r.line, r.literal, r.decl, r.file, l.reason.line))
				break
			}
			l.reason = r
		}
		if fits == 0 {
			bad = append(bad, fmt.Errorf("%s:%d: no %s in %s of %s", table, r.line, r.literal, r.decl, r.file))
		}
	}
	return errors.Join(bad...)
}

// stale are the rows whose every literal was noticed.
func stale(rows []*reason, all []*literal) []*reason {
	return slices.DeleteFunc(slices.Clone(rows), func(r *reason) bool {
		return slices.ContainsFunc(all, func(l *literal) bool { return l.reason == r && l.verdict != "killed" })
	})
}
