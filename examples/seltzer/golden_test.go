package main

import (
	"bytes"
	"encoding/json"
	"flag"
	"math"
	"os"
	"sort"
	"strconv"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "write the golden files anew")

// The JSON of the built-in plan keeps its form: every field, in words and numbers. This
// is a regression test of the form (version 1), no evidence for the numbers; they may
// differ in the last digits between processors.
func TestGoldenPlan(t *testing.T) {
	const name = "testdata/plan.golden.json"
	code, out, complaint := seltzerRun(t, "", "-json")
	if code != 0 {
		t.Fatal(complaint)
	}
	if *update {
		if err := os.WriteFile(name, []byte(out), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	golden, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	var want, got any
	if err := json.Unmarshal(golden, &want); err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal([]byte(out), &got); err != nil {
		t.Fatal(err)
	}
	for _, d := range differences("plan", got, want) {
		t.Error(d)
	}
	if !bytes.Contains(golden, []byte(`"version": 1`)) {
		t.Error("no version")
	}
}

// differences names the paths at which two JSON values differ.
func differences(path string, got, want any) []string {
	switch w := want.(type) {
	case map[string]any:
		g, ok := got.(map[string]any)
		if !ok {
			return []string{path + ": not an object"}
		}
		keys := map[string]bool{}
		for k := range w {
			keys[k] = true
		}
		for k := range g {
			keys[k] = true
		}
		var out []string
		for k := range keys {
			a, inGot := g[k]
			b, inWant := w[k]
			if inGot != inWant {
				out = append(out, path+"."+k+": only in one")
				continue
			}
			out = append(out, differences(path+"."+k, a, b)...)
		}
		sort.Strings(out)
		return out
	case []any:
		g, ok := got.([]any)
		if !ok || len(g) != len(w) {
			return []string{path + ": not as long"}
		}
		var out []string
		for i := range w {
			out = append(out, differences(path+"["+strconv.Itoa(i)+"]", g[i], w[i])...)
		}
		return out
	case float64:
		if g, ok := got.(float64); !ok || !nearly(g, w) {
			return []string{path + ": a number differs"}
		}
		return nil
	case string:
		g, ok := got.(string)
		if ok && g != w { // a quantity: the number may differ in its last digits
			a, unitA, _ := strings.Cut(g, " ")
			b, unitB, _ := strings.Cut(w, " ")
			x, errA := strconv.ParseFloat(a, 64)
			y, errB := strconv.ParseFloat(b, 64)
			ok = errA == nil && errB == nil && unitA == unitB && nearly(x, y)
		}
		if !ok {
			return []string{path + ": " + g + ", want " + w}
		}
		return nil
	}
	if got != want {
		return []string{path + ": differs"}
	}
	return nil
}

func nearly(a, b float64) bool {
	return math.Abs(a-b) <= 1e-7*math.Max(1e-3, math.Max(math.Abs(a), math.Abs(b)))
}
