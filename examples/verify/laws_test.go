package main

import (
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.org/zymase/internal/published"
	"example.org/zymase/internal/published/ledger"
	"example.org/zymase/nutrient/law"
)

// TestLawsAreListed: every article that the source or a published table names stands in the list,
// and nothing else does.
func TestLawsAreListed(t *testing.T) {
	named := map[string]string{}
	for _, room := range ledger.Rooms {
		err := filepath.WalkDir(filepath.Join("../..", room), func(path string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
				return err
			}
			text, err := os.ReadFile(path)
			// A comment may break an article over two lines.
			whole := regexp.MustCompile(`\n\s*//\s*`).ReplaceAllString(string(text), " ")
			for _, a := range articles(whole) {
				named[a] = path
			}
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	tables, err := published.All()
	if err != nil {
		t.Fatal(err)
	}
	for _, table := range tables {
		for _, a := range articles(strings.ReplaceAll(table.Source, "Council Directive", "Directive")) {
			named[a] = table.Name
		}
	}
	listed := map[string]bool{}
	for _, l := range laws() {
		listed[l.article] = true
		if l.changes != "often" && l.changes != "seldom" || l.what == "" || l.edition == "" || l.since == "" {
			t.Errorf("%s: %+v", l.article, l)
		}
		if named[l.article] == "" {
			t.Errorf("%s is listed, but nothing is from it", l.article)
		}
	}
	for a, where := range named {
		if !listed[a] {
			t.Errorf("%s names %s, which is not in laws.tsv", where, a)
		}
	}
}

// TestLimitsHaveTheListedYear: the year that a limit's article says is one of its text in the list.
func TestLimitsHaveTheListedYear(t *testing.T) {
	year := regexp.MustCompile(`\b(19|20)[0-9]{2}\b`)
	for _, j := range []law.Jurisdiction{law.US, law.EU} {
		limits, err := j.Limits(law.Unlisted)
		if err != nil {
			t.Fatal(err)
		}
		for _, l := range limits {
			for _, a := range articles(l.Article) {
				at := slices.IndexFunc(laws(), func(x lawText) bool { return x.article == a })
				if at < 0 {
					t.Errorf("%s is not listed", a)
					continue
				}
				text := laws()[at].edition + " " + laws()[at].since
				_, dated, _ := strings.Cut(l.Article, "(") // (EU) goes with it
				for _, y := range year.FindAllString(regexp.MustCompile(`[0-9]+/[0-9]+`).ReplaceAllString(dated, ""), -1) {
					if !strings.Contains(text, y) {
						t.Errorf("%v says %s; the list has %q", l, y, text)
					}
				}
			}
		}
	}
}

func TestLawsArePrinted(t *testing.T) {
	code, out, problems := verify("-laws")
	if code != 0 || problems != "" || !strings.Contains(out, "changes often:\n") || !strings.Contains(out, "27 CFR 24.246: materials for wine") ||
		strings.Count(out, "\n") < 40 {
		t.Errorf("code %d, %s\n%s", code, problems, out)
	}
}
