package main

import (
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"example.org/zymase/internal/published"
	"example.org/zymase/internal/published/ledger"
)

// TestLedgerIsWhole holds the ledger and the Go source to each other: no constant without an
// entry, no entry without its constant, and the numbers the same.
func TestLedgerIsWhole(t *testing.T) {
	found, err := ledger.Walk(os.DirFS("../.."))
	if err != nil {
		t.Fatal(err)
	}
	entries, err := ledger.Entries()
	if err != nil {
		t.Fatal(err)
	}
	byKey := map[string]ledger.Entry{}
	for _, e := range entries {
		if _, twice := byKey[e.Key()]; twice {
			t.Errorf("%s stands twice in constants.tsv", e.Key())
		}
		byKey[e.Key()] = e
	}
	for _, f := range found {
		e, ok := byKey[f.Key()]
		if !ok {
			t.Errorf("%s holds %s and has no entry in internal/published/ledger/constants.tsv: say where it comes from", f.Key(), f.Value())
		} else if e.Value != f.Value() {
			t.Errorf("%s: the ledger has %s, the source %s", f.Key(), e.Value, f.Value())
		}
		delete(byKey, f.Key())
	}
	for key := range byKey {
		t.Errorf("the ledger has %s, the source does not", key)
	}
}

// TestLedgerSaysWhy: every entry has a source, and what we fitted or chose names a published
// table or a test that holds it besides, or says that there is none.
func TestLedgerSaysWhy(t *testing.T) {
	entries, err := ledger.Entries()
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if e.Source == "" || e.What == "" {
			t.Errorf("%s: no source, or not said what it is", e.Key())
		}
		ours := e.Status == ledger.Fitted || e.Status == ledger.Chosen
		switch {
		case !ours && e.Check == "", ours && unheld(e):
		case !ours:
			t.Errorf("%s: a check stands with status %s", e.Key(), e.Status)
		case !slices.Contains(published.Names(), e.Check) && !isTest(e.Check):
			t.Errorf("%s: %q is no published table and no test", e.Key(), e.Check)
		}
	}
}

// isTest looks for "gravity.TestX" in the test files of that directory.
func isTest(name string) bool {
	dir, function, ok := strings.Cut(name, ".Test")
	if !ok {
		return false
	}
	files, _ := filepath.Glob(filepath.Join("../..", dir, "*_test.go"))
	want := regexp.MustCompile(`(?m)^func Test` + regexp.QuoteMeta(function) + `\(`)
	for _, file := range files {
		if text, err := os.ReadFile(file); err == nil && want.Match(text) {
			return true
		}
	}
	return false
}

// TestWalkFindsEachKind: what the walk takes for a number of meaning, and what not.
func TestWalkFindsEachKind(t *testing.T) {
	src := `package p
const (
	a = 1.5 // a constant
	b, c = 2, 8.314
)
var table = [...]row{
	{"one", 0.25}, {"two", 7.5}, {"three", 1}, {"four", 4.75},
}
var plain = [...]float64{0: 0.1, 5: 0.2}
var law = limit("0.36")
func f(x float64) float64 {
	if err := limit.Check("f", "x", x, "°C", 0, 99.5, ""); err != nil { panic(5.5) }
	s := make([]float64, 12)
	return s[7] + 17*x + 1e3 + 100 - fmt.Sprint(6.5)
}
func (t *T[D]) g() { h(20) }
`
	found, err := ledger.In("p.go", []byte(src))
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, f := range found {
		got = append(got, f.Name+"="+f.Value())
	}
	want := []string{"a=1.5", "c=8.314", "table[one]=0.25", "table[two]=7.5", "table[four]=4.75", "plain=0.1 0.2", "law=0.36", "f=17", "T.g=20"}
	if !slices.Equal(got, want) {
		t.Errorf("got %q\nwant %q", got, want)
	}
	if many := (&ledger.Found{Numbers: strings.Fields("5 5 5 5 5 5 5 5 5.5")}).Value(); many != "9 numbers: 5 … 5.5, sum 45.5" {
		t.Error(many)
	}
}

// TestLedgerRefuses: a file that was cut, or a status that is none.
func TestLedgerRefuses(t *testing.T) {
	entries, err := ledger.Entries()
	if err != nil {
		t.Fatal(err)
	}
	text := ledger.Format(entries[:2])
	if again, err := ledger.Parse(text); err != nil || !slices.Equal(again, entries[:2]) {
		t.Error(err)
	}
	for _, wrong := range []string{"", strings.Replace(text, "\tmoved\n", "\n", 1), strings.TrimSuffix(text, "\t"+entries[1].Moved+"\n"),
		strings.Replace(text, "\t"+string(entries[0].Status)+"\t", "\tsure\t", 1)} {
		if _, err := ledger.Parse(wrong); err == nil {
			t.Errorf("taken: %q", wrong)
		}
	}
}

func TestConstantsArePrinted(t *testing.T) {
	code, out, problems := verify("-constants")
	if code != 0 || problems != "" {
		t.Fatalf("code %d, %s", code, problems)
	}
	for _, want := range []string{"internal/chemistry/atomic_weight.go C: 12.011 g/mol", "\n  checked by ", " rows: definition "} {
		if !strings.Contains(out, want) {
			t.Errorf("no %q", want)
		}
	}
	if first, last := strings.Index(out, " % of "), strings.LastIndex(out, "was not tried"); first < 0 || last < first {
		t.Error("not sorted by what moves most")
	}
}
