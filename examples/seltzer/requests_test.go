package main

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
)

// requestsToTry are the requests of testdata/requests by name, each of one kind.
func requestsToTry(t *testing.T) map[string]plan.Request {
	t.Helper()
	files, err := filepath.Glob("testdata/requests/*.json")
	if err != nil || len(files) < 11 {
		t.Fatalf("%v: %q", err, files)
	}
	all := map[string]plan.Request{}
	for _, f := range files {
		text, err := os.ReadFile(f)
		if err != nil {
			t.Fatal(err)
		}
		r, err := plan.ParseRequest(text)
		if err != nil {
			t.Fatalf("%s: %v", f, err)
		}
		all[strings.TrimSuffix(filepath.Base(f), ".json")] = r
	}
	return all
}

// Each kind of request has a plan, the same after its way through JSON, and a page.
func TestEachKindOfRequest(t *testing.T) {
	for name, r := range requestsToTry(t) {
		p, _, err := plan.MakeWithCurves(r)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		text, err := json.Marshal(r)
		if err != nil {
			t.Fatal(err)
		}
		back, err := plan.ParseRequest(text)
		if err != nil {
			t.Errorf("%s: read back: %v", name, err)
			continue
		}
		again, err := plan.Make(back)
		if err != nil {
			t.Errorf("%s: again: %v", name, err)
			continue
		}
		var one, two bytes.Buffer
		printText(&one, sheet(p, style{}), true)
		printText(&two, sheet(again, style{}), true)
		if one.String() != two.String() {
			t.Errorf("%s: another plan after JSON", name)
		}
		if _, err := plan.Draw(r, 10); err != nil {
			t.Errorf("%s: drawn: %v", name, err)
		}
	}
}
